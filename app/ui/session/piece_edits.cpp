#include "app/ui/session/piece_edits.h"

#include <QCoreApplication>

#include <algorithm>

#include "core/model/verbatim.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Piece)
};

} // namespace

Edit replacePiece(const Book& book, const Piece& piece, const QString& label, int gesture)
{
    return replacePieces(book, {piece}, label, gesture);
}

Edit replacePieces(
    const Book& book, const std::vector<Piece>& pieces, const QString& label, int gesture)
{
    EditBuilder builder(book, label, gesture);
    for (const Piece& piece : pieces)
        builder.put(piece);
    return builder.take();
}

Edit removePiece(const Book& book, PieceId piece, const QString& label)
{
    EditBuilder builder(book, label);
    builder.remove<Piece>(piece);
    return builder.take();
}

Edit addPiece(const Book& book, Piece piece, const QString& label, PieceId& added)
{
    EditBuilder builder(book, label);
    int last = 0;
    for (const Piece* other : piecesOf(book, piece.panel))
        last = std::max(last, other->order);
    piece.order = last + 1;
    piece.id = builder.newId<Piece>();
    added = piece.id;
    builder.put(piece);
    return builder.take();
}

namespace {

QString labelFor(bool colours, const QString& name)
{
    return (colours ? Words::tr("Colours: %1") : Words::tr("Letters: %1")).arg(name);
}

Edit lookOfDisplay(const Book& book, DisplayId id, QString Display::*what, const QString& name)
{
    EditBuilder builder(book, labelFor(what == &Display::palette, name));
    if (const Display* display = book.displays.find(id)) {
        Display changed = *display;
        changed.*what = name;
        builder.put(changed);
    }
    return builder.take();
}

Edit lookOfPiece(const Book& book,
    PieceId id,
    QString Piece::*what,
    QString Display::*usual,
    const QString& name)
{
    EditBuilder builder(book, labelFor(what == &Piece::palette, name));
    const Piece* piece = book.pieces.find(id);
    const Panel* panel = piece != nullptr ? book.panels.find(piece->panel) : nullptr;
    const Display* display = panel != nullptr ? book.displays.find(panel->display) : nullptr;
    if (display != nullptr) {
        Piece changed = *piece;
        changed.*what = display->*usual == name ? QString() : name;
        builder.put(changed);
    }
    return builder.take();
}

} // namespace

Edit paletteEdit(const Book& book, DisplayId display, const QString& name)
{
    return lookOfDisplay(book, display, &Display::palette, name);
}

Edit paletteEdit(const Book& book, PieceId piece, const QString& name)
{
    return lookOfPiece(book, piece, &Piece::palette, &Display::palette, name);
}

Edit pairingEdit(const Book& book, DisplayId display, const QString& name)
{
    return lookOfDisplay(book, display, &Display::pairing, name);
}

Edit pairingEdit(const Book& book, PieceId piece, const QString& name)
{
    return lookOfPiece(book, piece, &Piece::pairing, &Display::pairing, name);
}

Edit addPanel(const Book& book, DisplayId display, const QString& label, PanelId& added)
{
    EditBuilder builder(book, label);
    Panel panel;
    panel.id = builder.newId<Panel>();
    panel.display = display;
    panel.number = int(panelsOf(book, display).size()) + 1;
    added = panel.id;
    builder.put(panel);
    return builder.take();
}

QString wordFor(PieceKind kind)
{
    switch (kind) {
    case PieceKind::Title:
        return Words::tr("Title");
    case PieceKind::Question:
        return Words::tr("Question");
    case PieceKind::Context:
        return Words::tr("How it came about");
    case PieceKind::Label:
        return Words::tr("Label");
    case PieceKind::Photo:
        return Words::tr("Photo");
    case PieceKind::Work:
        return Words::tr("Work");
    case PieceKind::Quote:
        return Words::tr("Words");
    case PieceKind::Interpretation:
        return Words::tr("What we make of it");
    case PieceKind::NextStep:
        return Words::tr("What comes next");
    case PieceKind::Invitation:
        return Words::tr("Invitation");
    case PieceKind::Credits:
        return Words::tr("Credits");
    }
    return {};
}

QString nameFor(const Book& book, const Piece& piece)
{
    const auto joined = [](const QString& first, const QString& second) {
        return second.isEmpty() ? first : first + QStringLiteral(": ") + second;
    };
    if (piece.kind == PieceKind::Quote) {
        const Quote* quote = book.quotes.find(piece.quote);
        const Child* child = quote != nullptr ? book.children.find(quote->child) : nullptr;
        return joined(child != nullptr ? displayName(*child) : wordFor(piece.kind),
            quote != nullptr ? quote->words : QString());
    }
    QString text = piece.text;
    if (isPicture(piece.kind) && text.isEmpty()) {
        if (const Picture* picture = book.pictures.find(piece.picture))
            text = picture->caption.isEmpty() ? picture->fileName : picture->caption;
    }
    return joined(wordFor(piece.kind), text.simplified());
}

std::set<QString> wordsOfNames(const Book& book)
{
    std::set<QString> words;
    for (const auto& [id, child] : book.children.rows()) {
        const QString all = child.name + QLatin1Char(' ') + displayName(child);
        for (const QString& word : all.split(QLatin1Char(' '), Qt::SkipEmptyParts))
            words.insert(word.toCaseFolded());
    }
    return words;
}

QString writtenText(const Book& book, const Piece& piece)
{
    if (piece.kind != PieceKind::Quote)
        return piece.text;
    const Quote* quote = book.quotes.find(piece.quote);
    return quote == nullptr || !piece.shownWords.isEmpty() ? piece.shownWords : quote->words;
}

bool isWritable(const Book& book, const Piece& piece)
{
    if (piece.kind != PieceKind::Quote)
        return true;
    const Quote* quote = book.quotes.find(piece.quote);
    return quote != nullptr
        && (piece.language.isEmpty() || sameLanguage(piece.language, quote->language));
}

Piece asWritten(const Book& book, const Piece& piece, const QString& typed)
{
    Piece written = piece;
    if (piece.kind != PieceKind::Quote) {
        written.text = typed;
        return written;
    }
    const Quote* quote = book.quotes.find(piece.quote);
    if (quote == nullptr)
        return written;
    const QString traced = withTraces(typed, quote->words);
    written.shownWords = traced.simplified() == quote->words.simplified() ? QString() : traced;
    return written;
}

QString beginningOf(const QString& text, int letters)
{
    if (text.size() <= letters)
        return text;
    const auto space = text.lastIndexOf(QLatin1Char(' '), letters - 1);
    return text.left(space > 0 ? space : letters - 1) + QChar(0x2026);
}

} // namespace wainscot::ui
