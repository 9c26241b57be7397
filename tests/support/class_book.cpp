#include "tests/support/class_book.h"

namespace wainscot {

ClassBook::ClassBook()
{
    Experience happened;
    happened.id = book.experiences.newId();
    happened.title = QStringLiteral("Ice");
    book.experiences.put(happened);
    experience = happened.id;
}

ChildId ClassBook::child(const char* name, Permissions permissions, const char* born)
{
    Child child;
    child.id = book.children.newId();
    child.name = QString::fromUtf8(name);
    child.permissions = permissions;
    if (born)
        child.born = birthDateFromText(QString::fromLatin1(born));
    book.children.put(child);
    return child.id;
}

QuoteId ClassBook::quote(ChildId who, const QString& words)
{
    Quote quote;
    quote.id = book.quotes.newId();
    quote.experience = experience;
    quote.child = who;
    quote.words = words;
    book.quotes.put(quote);
    return quote.id;
}

PictureId ClassBook::picture(PictureKind kind, People people, const char* file)
{
    Picture picture;
    picture.id = book.pictures.newId();
    picture.experience = experience;
    picture.kind = kind;
    picture.people = std::move(people);
    picture.fileName = QString::fromLatin1(file);
    picture.size = {4000, 3000};
    book.pictures.put(picture);
    return picture.id;
}

DisplayId ClassBook::display(Audience audience)
{
    Display display;
    display.id = book.displays.newId();
    display.experience = experience;
    display.name = QStringLiteral("Hall");
    display.audience = audience;
    book.displays.put(display);
    return display.id;
}

const Panel& ClassBook::panelOf(DisplayId display)
{
    if (panelsOf(book, display).empty())
        book.panels.put({book.panels.newId(), display, 1});
    return *panelsOf(book, display).front();
}

PieceId ClassBook::hang(DisplayId display, Piece piece)
{
    piece.id = book.pieces.newId();
    piece.panel = panelOf(display).id;
    piece.order = int(piece.id.number());
    book.pieces.put(piece);
    return piece.id;
}

PieceId ClassBook::hang(DisplayId display, QuoteId quote)
{
    Piece piece;
    piece.kind = PieceKind::Quote;
    piece.quote = quote;
    return hang(display, piece);
}

PieceId ClassBook::hang(DisplayId display, PictureId picture, const QString& caption)
{
    Piece piece;
    const bool isPhoto = book.pictures.find(picture)->kind == PictureKind::Photo;
    piece.kind = isPhoto ? PieceKind::Photo : PieceKind::Work;
    piece.picture = picture;
    piece.text = caption;
    return hang(display, piece);
}

PieceId ClassBook::hang(DisplayId display, PieceKind kind, const QString& text)
{
    Piece piece;
    piece.kind = kind;
    piece.text = text;
    return hang(display, piece);
}

Permissions only(Audience audience, std::initializer_list<Permission> permissions)
{
    Permissions given;
    for (const Permission permission : permissions)
        given.set(permission, audience, true);
    return given;
}

} // namespace wainscot
