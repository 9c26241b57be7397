#include "app/jobs/plan_sentences.h"

#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "core/model/kind_words.h"

#include <algorithm>

namespace wainscot {

namespace {

QString what(const engine::DroppedWish& wish, qsizetype pieces)
{
    switch (wish.what) {
    case engine::WishAbout::Plan:
        return {};
    case engine::WishAbout::Widths:
        return Says::tr("the widths of title and large picture are not those of %1");
    case engine::WishAbout::Places:
        return Says::tr("pieces begin at other columns than in %1");
    case engine::WishAbout::Spans:
        return Says::tr("pieces have other widths than in %1");
    case engine::WishAbout::FixedPlaces:
        return Says::tr("pieces could not stay where %1 fixes them");
    case engine::WishAbout::LargePicture:
        return Says::tr("the large picture is much smaller than in %1");
    case engine::WishAbout::OptionalPieces:
        return pieces == 1 ? Says::tr("%1 can do without %2, so it is left out")
                           : Says::tr("%1 can do without %2, so they are left out");
    }
    return {};
}

QString why(const engine::DroppedWish& wish)
{
    switch (wish.why) {
    case engine::WishReason::NoSuchPlan:
        return Says::tr("there is no template of that name");
    case engine::WishReason::NotTwelveColumns:
        return Says::tr("the panel does not have twelve columns");
    case engine::WishReason::SeveralPages:
        return Says::tr("it lays out one panel at a time");
    case engine::WishReason::TooManyGroups:
        return Says::tr("it holds %1 groups, and here are %2").arg(wish.most).arg(wish.here);
    case engine::WishReason::NoPlace:
        return Says::tr("it has no place for some of the pieces");
    case engine::WishReason::NoRoom:
        return wish.what == engine::WishAbout::Plan ? Says::tr("the pieces do not fit into it")
                                                    : Says::tr("there is not enough room");
    case engine::WishReason::BadPage:
        return Says::tr("too much would be cropped or left white");
    }
    return {};
}

} // namespace

QString sentenceFor(const engine::DroppedWish& wish, const QStringList& pieces)
{
    const QString plan =
        Says::tr("the template \u201c%1\u201d").arg(QString::fromStdString(wish.plan));
    QString sentence;
    if (wish.what == engine::WishAbout::Plan)
        sentence =
            Says::tr("%1 is not kept: %2. The panel is arranged freely.").arg(plan, why(wish));
    else if (wish.what == engine::WishAbout::OptionalPieces)
        sentence = what(wish, pieces.size()).arg(plan, listInWords(pieces));
    else
        sentence = what(wish, 0).arg(plan);
    sentence = capitalised(sentence);
    return wish.what == engine::WishAbout::Plan ? sentence
                                                : sentence + QStringLiteral(": %1.").arg(why(wish));
}

QString calledFor(const Piece& piece, const Book& book)
{
    if (const Quote* quote = book.quotes.find(piece.quote)) {
        const Child* child = book.children.find(quote->child);
        const QString who = child != nullptr ? displayName(*child) : Says::tr("a child");
        return Says::tr("what %1 said").arg(who);
    }
    if (const Picture* picture = book.pictures.find(piece.picture))
        return Says::tr("the picture %1").arg(picture->fileName);
    return inSentence(piece.kind);
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
        return Says::tr("keeps its size: its letters are as large as they must be");
    case engine::UnmetWish::Why::Pinned:
        return Says::tr("keeps its size because it is pinned");
    case engine::UnmetWish::Why::NoRoom:
        return Says::tr("does not get the size you asked for: the rest would not fit, or it "
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
        sentences << Says::tr("no straight cuts go between the pinned pieces, so this is a "
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
        return Says::tr("%1 is pinned beyond the edge; move or unpin it.").arg(names.front());
    return Says::tr("%1 are pinned over each other; move or unpin one.").arg(listInWords(names));
}

} // namespace wainscot
