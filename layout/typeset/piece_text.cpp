#include "layout/typeset/piece_text.h"

#include "layout/typeset/composer.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr double kTitleLeadSans = 1.42; // title caps
constexpr double kTitleLeadSerif = 1.50;
constexpr double kFreeBelowTitle = 1.5; // rows
constexpr double kTintPadding = 0.62; // rows
constexpr Mm kWritingPitch{13.6}; // adult handwriting

} // namespace

PieceText Composer::title(int step)
{
    const Mm cap = m_scale.cap(step);
    const bool serif = skeletonOf(m_style.pairing.voiceFamily) == Skeleton::Serif;
    const Mm lead = cap * (serif ? kTitleLeadSerif : kTitleLeadSans);
    for (const QString& line : paragraphs()) {
        TextPart part = make(
            {span(line, Voice::Child, TypeRole::Title, Weight::Bold, cap, m_style.palette.ink)},
            TypeRole::Title);
        part.role = Role::Heading1;
        part.breaking = Breaking::Sense;
        part.cap = cap;
        part.lead = lead * leadFactor(line, TypeRole::Title);
        part.above = m_text.parts.empty() ? Mm() : part.lead - cap;
        add(std::move(part));
    }
    m_text.clearBelow =
        std::max(Mm(), kFreeBelowTitle * m_style.grid.rowUnit - m_style.grid.gutter);
    setSpec({6, 26, 0}, meanCharacter(m_style.pairing.voiceFamily, Weight::Bold, cap), lead);
    return take();
}

PieceText Composer::question()
{
    addBody(m_style.palette.ink, Weight::Bold, Breaking::Sense);
    return take();
}

PieceText Composer::adult(std::optional<QRgb> tint)
{
    const QRgb colour = tint ? m_style.palette.adult : m_style.palette.ink;
    addHeading();
    addBody(colour, Weight::Regular, Breaking::Paragraph);
    m_text.tint = tint;
    if (tint)
        m_text.padding = kTintPadding * m_style.grid.rowUnit;
    return take();
}

PieceText Composer::invitation()
{
    addHeading();
    addBody(m_style.palette.ink, Weight::Regular, Breaking::Paragraph);
    m_text.writing = WritingSpace{kWritingPitch, 1.5 * kWritingPitch, 3};
    return take();
}

PieceText Composer::small(QRgb colour, Weight weight, Role role)
{
    const Mm cap = m_scale.caption();
    for (const QString& paragraph : paragraphs()) {
        TextPart part =
            make(adultSpans(paragraph, TypeRole::Caption, weight, cap, colour), TypeRole::Caption);
        part.role = role;
        part.above = m_text.parts.empty() ? Mm() : part.lead - cap;
        add(std::move(part));
    }
    m_text.atFoot = m_piece.kind == PieceKind::Credits;
    setSpec(kCaptionLimits,
        meanCharacter(m_style.pairing.adultFamily, weight, cap),
        kCaptionLead * cap);
    return take();
}

PieceText pieceText(
    const ClearedPiece& piece, const PanelStyle& style, const QString& language, int titleStep)
{
    const PanelStyle own = styleOf(piece, style);
    Composer composer(piece, own, language);
    const Palette& palette = own.palette;
    switch (piece.kind) {
    case PieceKind::Title:
        return composer.title(titleStep);
    case PieceKind::Quote:
        return composer.quote();
    case PieceKind::Question:
        return composer.question();
    case PieceKind::Context:
        return composer.adult(std::nullopt);
    case PieceKind::Interpretation:
        return composer.adult(palette.tint1);
    case PieceKind::NextStep:
        return composer.adult(palette.tint2);
    case PieceKind::Invitation:
        return composer.invitation();
    case PieceKind::Label:
        return composer.small(palette.accent, Weight::Bold, Role::Heading2);
    case PieceKind::Credits:
        return composer.small(palette.adult, Weight::Regular, Role::Paragraph);
    case PieceKind::Photo:
    case PieceKind::Work:
        return composer.small(palette.adult, Weight::Regular, Role::Caption);
    }
    return {};
}

PanelStyle styleOf(const ClearedPiece& piece, const PanelStyle& style)
{
    PanelStyle own = style;
    if (!piece.pairing.isEmpty())
        own.pairing = pairingByName(piece.pairing);
    if (!piece.palette.isEmpty())
        own.palette = paletteByName(piece.palette);
    return own;
}

PieceText secondCaption(const ClearedPiece& piece, const PanelStyle& style)
{
    if (piece.secondText.isEmpty())
        return {};
    ClearedPiece other = piece;
    other.text = piece.secondText;
    other.language = piece.secondLanguage;
    return pieceText(other, style, piece.secondLanguage, style.scale.titleStep);
}

Mm captionWidth(const ClearedPiece& piece, const PanelStyle& style, Mm width)
{
    return piece.secondText.isEmpty() ? width : (width - style.grid.gutter) / 2;
}

std::vector<int> titleSteps(SizeMm panel)
{
    // ISO 216: the short side of A3 is 297 mm.
    if (std::min(panel.width, panel.height) <= Mm(297))
        return {7, 6, 5, 4};
    return {7, 6, 5};
}

} // namespace wainscot
