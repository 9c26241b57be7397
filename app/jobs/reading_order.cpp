#include "app/jobs/reading_order.h"

#include <algorithm>

namespace wainscot {

namespace {

// The order in which a panel is read.
int rankOf(const Piece& piece)
{
    switch (piece.kind) {
    case PieceKind::Title:
        return 0;
    case PieceKind::Question:
    case PieceKind::Context:
        return 1;
    case PieceKind::Credits:
        return 2;
    case PieceKind::Interpretation:
        return 5;
    case PieceKind::NextStep:
        return 6;
    case PieceKind::Invitation:
        return 7;
    default:
        return piece.dominant ? 3 : 4;
    }
}

// A drawing stands first and its small print last.
int rankBesideDrawing(const Piece& piece)
{
    if (isPicture(piece.kind))
        return 0;
    if (piece.kind == PieceKind::Quote)
        return 1;
    return piece.kind == PieceKind::Credits ? 3 : 2;
}

// How the children were asked, and the small print, come after what they said.
int rankAmongVoices(const Piece& piece)
{
    return piece.kind == PieceKind::Credits ? 8 : rankOf(piece);
}

// The picture lies over both contexts.
int rankOfEvening(const Piece& piece)
{
    if (piece.kind == PieceKind::Context)
        return 3;
    return piece.dominant ? 2 : rankOf(piece);
}

// What belongs to a meeting keeps the order of time, an adult's sentence too.
int rankOnThread(const Piece& piece)
{
    return piece.group > 0 ? 4 : rankOf(piece);
}

// The day before is read as a whole, then the later one.
int rankOfBefore(const Piece& piece)
{
    switch (piece.kind) {
    case PieceKind::Label:
    case PieceKind::Photo:
    case PieceKind::Work:
    case PieceKind::Quote:
        return piece.group > 0 ? 3 : 4;
    default:
        return rankAmongVoices(piece);
    }
}

} // namespace

void sortForReading(std::vector<Piece>& pieces, const QString& plan)
{
    int (*rank)(const Piece&) = rankOf;
    if (plan == QLatin1String("drawing"))
        rank = rankBesideDrawing;
    else if (plan == QLatin1String("voices") || plan == QLatin1String("door")
        || plan == QLatin1String("questions"))
        rank = rankAmongVoices;
    else if (plan == QLatin1String("before"))
        rank = rankOfBefore;
    else if (plan == QLatin1String("evening"))
        rank = rankOfEvening;
    else if (plan == QLatin1String("thread"))
        rank = rankOnThread;
    std::stable_sort(pieces.begin(), pieces.end(), [&](const Piece& a, const Piece& b) {
        return rank(a) < rank(b);
    });
    for (std::size_t i = 0; i < pieces.size(); ++i)
        pieces[i].order = static_cast<int>(i) + 1;
}

} // namespace wainscot
