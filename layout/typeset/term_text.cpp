#include "layout/typeset/term_text.h"

#include "layout/typeset/composer.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr double kTitleTracking = -0.012; // em
constexpr double kTitleLead = 1.5; // caps
constexpr double kBodyLead = 1.95;
constexpr double kClosingMarkDrawnIn = 0.05; // em
constexpr int kWordCharacters = 62; // a line at most; held in the hand, not read from a wall
constexpr int kBodyCharacters = 75;

} // namespace

TermText::TermText(const TermStyle& style, QString language)
    : m_style(style)
    , m_language(std::move(language))
{
}

TextSpan TermText::span(const QString& text,
    Voice voice,
    TypeRole role,
    Weight weight,
    Mm cap,
    QRgb colour,
    const QString& language) const
{
    TextSpan result;
    result.text = text;
    result.face = {voice, weight, role, cap, language.isEmpty() ? m_language : language};
    result.colour = colour;
    return result;
}

TextBlock TermText::title(const QString& text, int step) const
{
    TextSpan bold = span(text.simplified(),
        Voice::Child,
        TypeRole::Title,
        Weight::Bold,
        m_style.scale.cap(step),
        m_style.palette.ink,
        {});
    bold.trackingEm = kTitleTracking;
    return TextBlock(m_style.pairing, {bold}, m_language);
}

TextBlock TermText::body(const QString& text, const QString& language) const
{
    const QString tongue = language.isEmpty() ? m_language : language;
    std::vector<TextSpan> spans;
    int at = 0;
    const auto add = [&](int end, QRgb colour) {
        if (end > at)
            spans.push_back(span(text.mid(at, end - at),
                Voice::Adult,
                TypeRole::Body,
                Weight::Regular,
                m_style.scale.body,
                colour,
                tongue));
        at = std::max(at, end);
    };
    for (const TextRange& range : quotedWords(text)) {
        add(range.start, m_style.palette.ink);
        add(range.start + range.length, m_style.palette.child);
    }
    add(static_cast<int>(text.size()), m_style.palette.ink);
    return TextBlock(m_style.pairing, std::move(spans), tongue);
}

TextBlock TermText::strong(const QString& text) const
{
    return TextBlock(m_style.pairing,
        {span(text,
            Voice::Adult,
            TypeRole::Body,
            Weight::Bold,
            m_style.scale.body,
            m_style.palette.ink,
            {})},
        m_language);
}

TextBlock TermText::caption(const QString& text, QRgb colour) const
{
    return TextBlock(m_style.pairing,
        {span(text,
            Voice::Adult,
            TypeRole::Caption,
            Weight::Regular,
            m_style.scale.caption(),
            colour,
            {})},
        m_language);
}

TextBlock TermText::label(const QString& text) const
{
    return TextBlock(m_style.pairing,
        {span(text,
            Voice::Adult,
            TypeRole::Caption,
            Weight::Bold,
            m_style.scale.caption(),
            m_style.palette.accent,
            {})},
        m_language);
}

TextBlock TermText::words(
    const QString& paragraph, const QString& language, bool last, bool translated) const
{
    const Palette& palette = m_style.palette;
    std::vector<TextSpan> spans{span(paragraph,
        Voice::Child,
        TypeRole::ChildsWords,
        Weight::Regular,
        m_style.scale.voice(),
        translated ? palette.adult : palette.child,
        language)};
    if (last) {
        TextSpan mark = spans.front();
        mark.text = quoteMarks(language).closing;
        mark.colour = translated ? palette.adult : palette.accent;
        mark.drawnInEm = kClosingMarkDrawnIn;
        spans.push_back(mark);
    }
    return TextBlock(m_style.pairing, std::move(spans), language);
}

TextBlock TermText::openingMark(
    const QString& paragraph, const QString& language, bool translated) const
{
    TextSpan mark = span(quoteMarks(language).opening,
        Voice::Child,
        TypeRole::ChildsWords,
        Weight::Regular,
        m_style.scale.voice(),
        translated ? m_style.palette.adult : m_style.palette.accent,
        language);
    const auto scripts = scriptStretches(paragraph);
    if (!scripts.empty())
        mark.script = scripts.front().script;
    const bool fromRight = directionOf(paragraph, language) == Direction::RightToLeft;
    return TextBlock(
        m_style.pairing, {mark}, fromRight ? QStringLiteral("ar") : QStringLiteral("en"));
}

LineBreaks TermText::lines(const TextBlock& block, Mm width) const
{
    return block.lines(Breaking::Paragraph, width, kBodyCharacters);
}

LineBreaks TermText::wordLines(const TextBlock& block, Mm width) const
{
    return block.lines(Breaking::Sense, width, kWordCharacters);
}

LineBreaks TermText::oneLine(const TextBlock& block) const
{
    return {{static_cast<int>(block.units().size())}, true};
}

Mm TermText::bodyLead() const
{
    return kBodyLead * m_style.scale.body;
}

Mm TermText::captionLead() const
{
    return kCaptionLead * m_style.scale.caption();
}

Mm TermText::wordsLead(const QString& paragraph) const
{
    return kVoiceLead * m_style.scale.voice() * leadFactor(paragraph, TypeRole::ChildsWords);
}

Mm TermText::titleLead(int step) const
{
    return kTitleLead * m_style.scale.cap(step);
}

} // namespace wainscot
