#include "app/jobs/plan_sentences.h"

#include "app/jobs/sentences.h"

#include <algorithm>

namespace wainscot {

namespace {

QString what(const engine::DroppedWish& wish)
{
    switch (wish.what) {
    case engine::WishAbout::Plan:
        return {};
    case engine::WishAbout::Widths:
        return QStringLiteral("the widths of title and large picture are not those of %1");
    case engine::WishAbout::Places:
        return QStringLiteral("pieces begin at other columns than in %1");
    case engine::WishAbout::Spans:
        return QStringLiteral("pieces have other widths than in %1");
    case engine::WishAbout::FixedPlaces:
        return QStringLiteral("pieces could not stay where %1 fixes them");
    case engine::WishAbout::LargePicture:
        return QStringLiteral("the large picture is much smaller than in %1");
    case engine::WishAbout::OptionalPieces:
        return QStringLiteral("%1 can do without %2, so it is left out");
    }
    return {};
}

QString why(const engine::DroppedWish& wish)
{
    switch (wish.why) {
    case engine::WishReason::NoSuchPlan:
        return QStringLiteral("there is no template of that name");
    case engine::WishReason::NotTwelveColumns:
        return QStringLiteral("the panel does not have twelve columns");
    case engine::WishReason::SeveralPages:
        return QStringLiteral("it lays out one panel at a time");
    case engine::WishReason::TooManyGroups:
        return QStringLiteral("it holds %1 groups, and here are %2").arg(wish.most).arg(wish.here);
    case engine::WishReason::NoPlace:
        return QStringLiteral("it has no place for some of the pieces");
    case engine::WishReason::NoRoom:
        return wish.what == engine::WishAbout::Plan
            ? QStringLiteral("the pieces do not fit into it")
            : QStringLiteral("there is not enough room");
    case engine::WishReason::BadPage:
        return QStringLiteral("too much would be cropped or left white");
    }
    return {};
}

} // namespace

QString sentenceFor(const engine::DroppedWish& wish, const QStringList& pieces)
{
    const QString plan =
        QStringLiteral("the template \u201c%1\u201d").arg(QString::fromStdString(wish.plan));
    if (wish.what == engine::WishAbout::Plan) {
        return QStringLiteral("%1 is not kept: %2. The panel is arranged freely.")
            .arg(QLatin1Char('T') + plan.mid(1), why(wish));
    }
    QString sentence = what(wish).arg(plan);
    if (wish.what == engine::WishAbout::OptionalPieces)
        sentence = sentence.arg(listInWords(pieces));
    sentence[0] = sentence[0].toUpper();
    return sentence + QStringLiteral(": %1.").arg(why(wish));
}

QString calledFor(const Piece& piece, const Book& book)
{
    if (const Quote* quote = book.quotes.find(piece.quote)) {
        const Child* child = book.children.find(quote->child);
        const QString who = child != nullptr ? displayName(*child) : QStringLiteral("a child");
        return QStringLiteral("what %1 said").arg(who);
    }
    if (const Picture* picture = book.pictures.find(piece.picture))
        return QStringLiteral("the picture %1").arg(picture->fileName);
    QString kind = nameOf(piece.kind);
    return QStringLiteral("the %1").arg(kind.replace(QLatin1Char('_'), QLatin1Char(' ')));
}

namespace {

const Piece* pieceOf(engine::ItemId id, const std::vector<Piece>& pieces)
{
    const auto found = std::find_if(
        pieces.begin(), pieces.end(), [&](const Piece& piece) { return piece.id.number() == id; });
    return found == pieces.end() ? nullptr : &*found;
}

QString whyUnmet(engine::UnmetWish::Why why)
{
    switch (why) {
    case engine::UnmetWish::Why::TextKeepsItsSize:
        return QStringLiteral("keeps its size: its letters are as large as they must be");
    case engine::UnmetWish::Why::Pinned:
        return QStringLiteral("keeps its size because it is pinned");
    case engine::UnmetWish::Why::NoRoom:
        return QStringLiteral("does not get the size you asked for: the rest would not fit, or it "
                              "has too few pixels");
    }
    return {};
}

} // namespace

QStringList wishSentences(
    const engine::Arrangement& arrangement, const std::vector<Piece>& pieces, const Book& book)
{
    QStringList sentences;
    for (const engine::UnmetWish& wish : arrangement.unmetWishes) {
        if (const Piece* piece = pieceOf(wish.id, pieces))
            sentences << QStringLiteral("%1 %2.").arg(calledFor(*piece, book), whyUnmet(wish.why));
    }
    if (arrangement.fallback)
        sentences << QStringLiteral("no straight cuts go between the pinned pieces, so this is a "
                                    "good arrangement around them, not the proven best.");
    return sentences;
}

QString whyNoRoom(
    const engine::Failure& failure, const std::vector<Piece>& pieces, const Book& book)
{
    QStringList names;
    for (const engine::ItemId id : failure.items) {
        if (const Piece* piece = pieceOf(id, pieces))
            names << calledFor(*piece, book);
    }
    if (failure.what != engine::Obstacle::PinsOverlap || names.isEmpty())
        return whyNoRoom(failure);
    if (names.size() == 1)
        return QStringLiteral("%1 is pinned beyond the edge; move or unpin it.").arg(names.front());
    return QStringLiteral("%1 are pinned over each other; move or unpin one.")
        .arg(listInWords(names));
}

} // namespace wainscot
