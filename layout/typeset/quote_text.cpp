#include "layout/typeset/composer.h"

namespace wainscot {

namespace {

constexpr double kClosingMarkDrawnIn = 0.05; // em
constexpr double kNameDistance = 0.78; // voice caps, last baseline to the name's cap line
constexpr double kColumnInset = 0.15; // em
constexpr double kParagraphGap = 0.35; // rows

bool endsWithFullWidthPoint(const QString& words)
{
    static const QString points = QStringLiteral("。，、！？；：");
    return !words.isEmpty() && points.contains(words.back());
}

bool endsFullWidth(const QString& words)
{
    return !words.isEmpty() && words.back().unicode() >= 0x3000 && words.back().unicode() < 0xFFEF;
}

// A name written the other way would turn its line round: a mark without width (UAX #9) holds it.
QString heldTo(Direction direction, const QString& name, const QString& language)
{
    if (directionOf(name, language) == direction)
        return name;
    return QChar(direction == Direction::RightToLeft ? 0x200F : 0x200E) + name;
}

// Both marks of a quote come from one face: that of the words, but for Chinese and Japanese, whose
// full-width marks would stand half a letter off.
QChar::Script markScript(const QString& words)
{
    const std::vector<ScriptStretch> stretches = scriptStretches(words);
    const QChar::Script script = stretches.empty() ? QChar::Script_Latin : stretches.front().script;
    return endsFullWidth(words) ? QChar::Script_Latin : script;
}

} // namespace

PieceText Composer::quote()
{
    const Mm cap = m_scale.voice();
    const Mm mean = meanCharacter(m_style.pairing.voiceFamily, Weight::Regular, cap);
    const QStringList told = paragraphs();
    const QuoteMarks marks = quoteMarks(m_language);
    for (qsizetype i = 0; i < told.size(); ++i) {
        const bool last = i + 1 == told.size();
        add(words(told[i], last ? marks.closing : QString(), cap));
        if (i == 0)
            m_text.parts.back().mark = openingMark(marks.opening, told[i], cap);
    }
    addName(cap);
    m_text.narrowest = kVoiceLimits.least * mean;
    setSpec(kVoiceLimits, mean, kVoiceLead * cap);
    return take();
}

TextPart Composer::words(const QString& paragraph, const QString& closing, Mm cap) const
{
    std::vector<TextSpan> spans{span(paragraph,
        Voice::Child,
        TypeRole::ChildsWords,
        Weight::Regular,
        cap,
        isTranslation() ? m_style.palette.adult : m_style.palette.child)};
    if (!closing.isEmpty()) {
        TextSpan mark = spans.front();
        mark.text = closing;
        mark.colour = markColour();
        mark.script = markScript(paragraph);
        // A full-width point has nothing in its second half.
        mark.drawnInEm = kClosingMarkDrawnIn + (endsWithFullWidthPoint(paragraph) ? 0.5 : 0);
        spans.push_back(mark);
    }
    TextPart part = make(std::move(spans), TypeRole::ChildsWords);
    part.role = Role::Quote;
    part.breaking = Breaking::Sense;
    part.joins = !m_text.parts.empty();
    part.lead = kVoiceLead * cap * leadFactor(paragraph, TypeRole::ChildsWords);
    part.above =
        m_text.parts.empty() ? Mm() : part.lead - cap + kParagraphGap * m_style.grid.rowUnit;
    part.widest =
        kVoiceLimits.most * meanCharacter(m_style.pairing.voiceFamily, Weight::Regular, cap);
    part.characters = kVoiceLimits.never;
    part.inset = kColumnInset * em(m_style.pairing.voiceFamily, Weight::Regular, cap);
    return part;
}

TextBlock Composer::openingMark(const QString& mark, const QString& words, Mm cap) const
{
    TextSpan opening =
        span(mark, Voice::Child, TypeRole::ChildsWords, Weight::Regular, cap, markColour());
    opening.script = markScript(words);
    const bool fromRight = directionOf(words, m_language) == Direction::RightToLeft;
    return TextBlock(
        m_style.pairing, {opening}, fromRight ? QStringLiteral("ar") : QStringLiteral("en"));
}

void Composer::addName(Mm voiceCap)
{
    if (m_piece.name.isEmpty())
        return;
    const TypeRole role = m_scale.voiceStep >= 3 ? TypeRole::Body : TypeRole::Caption;
    const Mm cap = role == TypeRole::Body ? m_scale.body : m_scale.caption();
    const QString name = heldTo(directionOf(m_piece.text, m_language), m_piece.name, m_language);
    std::vector<TextSpan> spans{span(name, Voice::Adult, role, Weight::Bold, cap, markColour())};
    if (!m_piece.status.isEmpty()) {
        spans.push_back(span(comma() + m_piece.status,
            Voice::Adult,
            role,
            Weight::Regular,
            cap,
            m_style.palette.adult));
    }
    TextPart part = make(std::move(spans), role);
    part.role = Role::Quote;
    part.joins = !m_text.parts.empty();
    part.lead = kCaptionLead * cap;
    part.above = m_text.parts.empty() ? Mm() : kNameDistance * voiceCap;
    add(std::move(part));
}

bool Composer::isTranslation() const
{
    return !m_piece.translatedFrom.isEmpty();
}

// A translation is an adult's wording: all of it, marks and name too, is in the adult's colour.
QRgb Composer::markColour() const
{
    return isTranslation() ? m_style.palette.adult : m_style.palette.accent;
}

QString Composer::comma() const
{
    if (m_language.startsWith(QLatin1String("ar")) || m_language.startsWith(QLatin1String("fa")))
        return QStringLiteral("\u060C ");
    if (m_language.startsWith(QLatin1String("zh")) || m_language.startsWith(QLatin1String("ja")))
        return QStringLiteral("\uFF0C");
    return QStringLiteral(", ");
}

} // namespace wainscot
