#include "layout/typeset/composer.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr double kTitleTracking = -0.012; // em
constexpr double kHeadingDistance = 0.98; // body caps
constexpr double kCaptionDistance = 0.85; // caption caps
constexpr double kParagraphGap = 0.30; // rows

} // namespace

Composer::Composer(const ClearedPiece& piece, const PanelStyle& style, const QString& language)
    : m_piece(piece)
    , m_style(style)
    , m_scale(style.scale)
    , m_language(piece.language.isEmpty() ? language : piece.language)
{
}

QStringList Composer::paragraphs() const
{
    return paragraphsOf(m_piece.text);
}

TextSpan Composer::span(
    const QString& text, Voice voice, TypeRole role, Weight weight, Mm cap, QRgb colour) const
{
    TextSpan result;
    result.text = text;
    result.face = {voice, weight, role, cap, m_language};
    result.colour = colour;
    if (role == TypeRole::Title)
        result.trackingEm = kTitleTracking;
    return result;
}

std::vector<TextSpan> Composer::adultSpans(
    const QString& text, TypeRole role, Weight weight, Mm cap, QRgb colour) const
{
    std::vector<TextSpan> spans;
    int at = 0;
    const auto add = [&](int end, QRgb ink) {
        if (end > at)
            spans.push_back(span(text.mid(at, end - at), Voice::Adult, role, weight, cap, ink));
        at = std::max(at, end);
    };
    for (const TextRange& range : quotedWords(text)) {
        add(range.start, colour);
        add(range.start + range.length, m_style.palette.child);
    }
    add(static_cast<int>(text.size()), colour);
    return spans;
}

TextPart Composer::make(std::vector<TextSpan> spans, TypeRole role) const
{
    TextPart part;
    const FaceQuery face = spans.front().face;
    part.cap = face.capHeight;
    part.block = TextBlock(m_style.pairing, std::move(spans), m_language);
    const QString& family =
        face.voice == Voice::Child ? m_style.pairing.voiceFamily : m_style.pairing.adultFamily;
    const Mm mean = meanCharacter(family, face.weight, part.cap);
    if (role == TypeRole::Body) {
        part.lead = m_style.grid.rowUnit;
        part.widest = kBodyLimits.most * mean;
        part.characters = kBodyLimits.never;
    } else if (role == TypeRole::Caption) {
        part.lead = kCaptionLead * part.cap;
        part.widest = kCaptionLimits.most * mean;
        part.characters = kCaptionLimits.never;
    }
    return part;
}

void Composer::addHeading()
{
    if (m_piece.heading.trimmed().isEmpty())
        return;
    TextPart part = make({span(m_piece.heading.simplified(),
                             Voice::Adult,
                             TypeRole::Caption,
                             Weight::Bold,
                             m_scale.caption(),
                             m_style.palette.ink)},
        TypeRole::Caption);
    part.role = Role::Heading2;
    add(std::move(part));
}

void Composer::addBody(QRgb colour, Weight weight, Breaking breaking)
{
    const Mm cap = m_scale.body;
    bool first = true;
    for (const QString& paragraph : paragraphs()) {
        TextPart part =
            make(adultSpans(paragraph, TypeRole::Body, weight, cap, colour), TypeRole::Body);
        part.breaking = breaking;
        if (!m_text.parts.empty()) {
            part.above = first ? kHeadingDistance * cap
                               : part.lead - cap + kParagraphGap * m_style.grid.rowUnit;
        }
        first = false;
        add(std::move(part));
    }
    setSpec(
        kBodyLimits, meanCharacter(m_style.pairing.adultFamily, weight, cap), m_style.grid.rowUnit);
}

void Composer::add(TextPart part)
{
    if (m_text.parts.empty() || m_text.parts.front().role == Role::Heading2)
        m_text.fromRight = part.block.direction() == Direction::RightToLeft;
    m_text.parts.push_back(std::move(part));
}

void Composer::setSpec(CharacterLimits limits, Mm mean, Mm lead)
{
    m_text.spec.minChars = limits.least;
    m_text.spec.maxChars = limits.most;
    m_text.spec.meanChar = mean;
    m_text.spec.lead = lead;
    m_text.spec.captionGap = isPicture(m_piece.kind) ? kCaptionDistance * m_scale.caption() : Mm();
}

PieceText Composer::take()
{
    m_text.spec.tinted = m_text.tint.has_value();
    return std::move(m_text);
}

Mm Composer::em(const QString& family, Weight weight, Mm cap)
{
    const auto metrics = faceMetrics(family, weight);
    return unitsToMm(emUnits(cap, metrics ? metrics->capHeight : 0.714));
}

Mm Composer::meanCharacter(const QString& family, Weight weight, Mm cap)
{
    const auto metrics = faceMetrics(family, weight);
    return (metrics ? metrics->meanCharacter : 0.47) * em(family, weight, cap);
}

} // namespace wainscot
