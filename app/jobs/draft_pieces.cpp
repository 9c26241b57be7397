#include "app/jobs/draft_pieces.h"

#include "core/base/wall_text.h"

#include <algorithm>

namespace wainscot {

Piece textPiece(PieceKind kind, const QString& text, const QString& heading)
{
    Piece piece;
    piece.kind = kind;
    piece.text = text;
    piece.heading = heading;
    return piece;
}

Piece picturePiece(const Picture& picture, int group, bool dominant)
{
    Piece piece;
    piece.kind = picture.kind == PictureKind::Work ? PieceKind::Work : PieceKind::Photo;
    piece.picture = picture.id;
    piece.text = picture.caption;
    piece.group = group;
    piece.dominant = dominant;
    if (picture.mustStay) {
        const RectFraction& stay = *picture.mustStay;
        piece.framing.focus = {stay.x + stay.width / 2, stay.y + stay.height / 2};
    }
    return piece;
}

Piece quotePiece(const Quote& quote, int group)
{
    Piece piece;
    piece.kind = PieceKind::Quote;
    piece.quote = quote.id;
    piece.group = group;
    return piece;
}

Piece interpretationPiece(const Material& material)
{
    return textPiece(PieceKind::Interpretation,
        material.experience.interpretation,
        wallText(WallText::WhatWeMakeOfIt, material.language()));
}

Piece nextStepPiece(const Material& material)
{
    return textPiece(PieceKind::NextStep,
        material.experience.nextSteps,
        wallText(WallText::Next, material.language()));
}

void addAdultTexts(PanelDraft& draft, const Material& material)
{
    if (!material.experience.interpretation.isEmpty())
        draft.pieces.push_back(interpretationPiece(material));
    if (!material.experience.nextSteps.isEmpty())
        draft.pieces.push_back(nextStepPiece(material));
}

QString creditsLine(const Material& material, const std::vector<const Quote*>& quotes)
{
    const QString& own = material.experience.credits;
    return own.isEmpty() ? creditsFor(material, quotes) : own;
}

double cutByFrame(const Picture& picture, double aspect)
{
    const double own = picture.size.isEmpty() ? 1 : picture.size.aspect();
    return 1 - std::min(own / aspect, aspect / own);
}

} // namespace wainscot
