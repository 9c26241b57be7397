#include "layout/typeset/piece_text.h"

#include <algorithm>

namespace wainscot {

namespace {

// Distances in cap heights, rows (u) or ems.
constexpr double kVoiceLead = 1.82;
constexpr double kCaptionLead = 1.95;
constexpr double kTitleLeadSans = 1.42;
constexpr double kTitleLeadSerif = 1.50;
constexpr double kTitleTracking = -0.012;
constexpr double kClosingMarkDrawnIn = 0.05;
constexpr double kNameDistance = 0.78; // voice caps, last baseline to the name's cap line
constexpr double kHeadingDistance = 0.98; // body caps
constexpr double kCaptionDistance = 0.85; // caption caps
constexpr double kTintPadding = 0.62; // u
constexpr double kVoiceColumnInset = 0.15; // em
constexpr double kAdultParagraphGap = 0.30; // u
constexpr double kVoiceParagraphGap = 0.35; // u
constexpr double kFreeBelowTitle = 1.5; // u
constexpr Mm kWritingPitch{13.6}; // adult handwriting

// Characters a line.
struct Limits {
    double least;
    double most; // mean characters
    int never; // hard
};
constexpr Limits kVoiceLimits{14, 32, 36};
constexpr Limits kBodyLimits{26, 50, 55};
constexpr Limits kCaptionLimits{20, 52, 52};

QStringList paragraphsOf(const QString& text)
{
    QString plain = text;
    plain.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    plain.replace(QLatin1Char('\r'), QLatin1Char('\n'));
    plain.replace(QChar(QChar::LineSeparator), QLatin1Char('\n'));
    plain.replace(QChar(QChar::ParagraphSeparator), QLatin1Char('\n'));
    QStringList result;
    for (const QString& paragraph : plain.split(QLatin1Char('\n'))) {
        if (!paragraph.trimmed().isEmpty())
            result.push_back(paragraph.trimmed());
    }
    return result;
}

bool endsWithFullWidthPoint(const QString& words)
{
    static const QString points = QStringLiteral("。，、！？；：");
    return !words.isEmpty() && points.contains(words.back());
}

class Composer {
public:
    Composer(const ClearedPiece& piece, const PanelStyle& style, const QString& language)
        : m_piece(piece)
        , m_style(style)
        , m_scale(style.scale)
        , m_language(piece.language.isEmpty() ? language : piece.language)
    {
    }

    PieceText title(int step)
    {
        const Mm cap = m_scale.cap(step);
        const bool serif = skeletonOf(m_style.pairing.voiceFamily) == Skeleton::Serif;
        const Mm lead = cap * (serif ? kTitleLeadSerif : kTitleLeadSans);
        for (const QString& line : paragraphsOf(m_piece.text)) {
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

    PieceText quote()
    {
        const Mm cap = m_scale.voice();
        const Mm mean = meanCharacter(m_style.pairing.voiceFamily, Weight::Regular, cap);
        const QStringList paragraphs = paragraphsOf(m_piece.text);
        const QuoteMarks marks = quoteMarks(m_language);
        for (qsizetype i = 0; i < paragraphs.size(); ++i) {
            const bool last = i + 1 == paragraphs.size();
            add(words(paragraphs[i], last ? marks.closing : QString(), cap, mean));
            if (i == 0)
                m_text.parts.back().mark = openingMark(marks.opening, paragraphs[i], cap);
        }
        addName(cap);
        m_text.narrowest = kVoiceLimits.least * mean;
        setSpec(kVoiceLimits, mean, kVoiceLead * cap);
        return take();
    }

    PieceText adult(std::optional<QRgb> tint)
    {
        const QRgb colour = tint ? m_style.palette.adult : m_style.palette.ink;
        addHeading();
        addBody(colour, Weight::Regular, Breaking::Paragraph);
        m_text.tint = tint;
        if (tint)
            m_text.padding = kTintPadding * m_style.grid.rowUnit;
        return take();
    }

    PieceText question()
    {
        addBody(m_style.palette.ink, Weight::Bold, Breaking::Sense);
        return take();
    }

    PieceText invitation()
    {
        addHeading();
        addBody(m_style.palette.ink, Weight::Regular, Breaking::Paragraph);
        m_text.writing = WritingSpace{kWritingPitch, 1.5 * kWritingPitch, 3};
        return take();
    }

    PieceText small(QRgb colour, Weight weight, Role role)
    {
        const Mm cap = m_scale.caption();
        for (const QString& paragraph : paragraphsOf(m_piece.text)) {
            TextPart part = make(
                adultSpans(paragraph, TypeRole::Caption, weight, cap, colour), TypeRole::Caption);
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

private:
    [[nodiscard]] TextSpan span(
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

    // An adult's text; where it quotes a child, in the child's colour.
    [[nodiscard]] std::vector<TextSpan> adultSpans(
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

    [[nodiscard]] TextPart make(std::vector<TextSpan> spans, TypeRole role) const
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

    [[nodiscard]] TextPart words(
        const QString& paragraph, const QString& closing, Mm cap, Mm mean) const
    {
        std::vector<TextSpan> spans{span(paragraph,
            Voice::Child,
            TypeRole::ChildsWords,
            Weight::Regular,
            cap,
            m_style.palette.child)};
        if (!closing.isEmpty()) {
            TextSpan mark = spans.front();
            mark.text = closing;
            mark.colour = m_style.palette.accent;
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
        part.above = m_text.parts.empty()
            ? Mm()
            : part.lead - cap + kVoiceParagraphGap * m_style.grid.rowUnit;
        part.widest = kVoiceLimits.most * mean;
        part.characters = kVoiceLimits.never;
        part.inset = kVoiceColumnInset * em(m_style.pairing.voiceFamily, Weight::Regular, cap);
        return part;
    }

    // Both marks of a quote come from one face: that of the words, but for Chinese and Japanese,
    // whose full-width marks would stand half a letter off.
    static QChar::Script markScript(const QString& words)
    {
        const std::vector<ScriptStretch> stretches = scriptStretches(words);
        const QChar::Script script =
            stretches.empty() ? QChar::Script_Latin : stretches.front().script;
        return endsFullWidth(words) ? QChar::Script_Latin : script;
    }

    static bool endsFullWidth(const QString& words)
    {
        return !words.isEmpty() && words.back().unicode() >= 0x3000
            && words.back().unicode() < 0xFFEF;
    }

    [[nodiscard]] TextBlock openingMark(const QString& mark, const QString& words, Mm cap) const
    {
        TextSpan opening = span(mark,
            Voice::Child,
            TypeRole::ChildsWords,
            Weight::Regular,
            cap,
            m_style.palette.accent);
        opening.script = markScript(words);
        const bool fromRight = directionOf(words, m_language) == Direction::RightToLeft;
        return TextBlock(
            m_style.pairing, {opening}, fromRight ? QStringLiteral("ar") : QStringLiteral("en"));
    }

    void addName(Mm voiceCap)
    {
        if (m_piece.name.isEmpty())
            return;
        const TypeRole role = m_scale.voiceStep >= 3 ? TypeRole::Body : TypeRole::Caption;
        const Mm cap = role == TypeRole::Body ? m_scale.body : m_scale.caption();
        std::vector<TextSpan> spans{
            span(m_piece.name, Voice::Adult, role, Weight::Bold, cap, m_style.palette.accent)};
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

    [[nodiscard]] QString comma() const
    {
        if (m_language.startsWith(QLatin1String("ar"))
            || m_language.startsWith(QLatin1String("fa")))
            return QStringLiteral("\u060C ");
        if (m_language.startsWith(QLatin1String("zh"))
            || m_language.startsWith(QLatin1String("ja")))
            return QStringLiteral("\uFF0C");
        return QStringLiteral(", ");
    }

    void addHeading()
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

    void addBody(QRgb colour, Weight weight, Breaking breaking)
    {
        const Mm cap = m_scale.body;
        bool first = true;
        for (const QString& paragraph : paragraphsOf(m_piece.text)) {
            TextPart part =
                make(adultSpans(paragraph, TypeRole::Body, weight, cap, colour), TypeRole::Body);
            part.breaking = breaking;
            if (!m_text.parts.empty()) {
                part.above = first ? kHeadingDistance * cap
                                   : part.lead - cap + kAdultParagraphGap * m_style.grid.rowUnit;
            }
            first = false;
            add(std::move(part));
        }
        setSpec(kBodyLimits,
            meanCharacter(m_style.pairing.adultFamily, weight, cap),
            m_style.grid.rowUnit);
    }

    void add(TextPart part)
    {
        if (m_text.parts.empty() || m_text.parts.front().role == Role::Heading2)
            m_text.fromRight = part.block.direction() == Direction::RightToLeft;
        m_text.parts.push_back(std::move(part));
    }

    void setSpec(Limits limits, Mm mean, Mm lead)
    {
        m_text.spec.minChars = limits.least;
        m_text.spec.maxChars = limits.most;
        m_text.spec.meanChar = mean;
        m_text.spec.lead = lead;
        m_text.spec.captionGap =
            isPicture(m_piece.kind) ? kCaptionDistance * m_scale.caption() : Mm();
    }

    static Mm em(const QString& family, Weight weight, Mm cap)
    {
        const auto metrics = faceMetrics(family, weight);
        return unitsToMm(emUnits(cap, metrics ? metrics->capHeight : 0.714));
    }

    static Mm meanCharacter(const QString& family, Weight weight, Mm cap)
    {
        const auto metrics = faceMetrics(family, weight);
        return (metrics ? metrics->meanCharacter : 0.47) * em(family, weight, cap);
    }

    PieceText take()
    {
        m_text.spec.tinted = m_text.tint.has_value();
        return std::move(m_text);
    }

    const ClearedPiece& m_piece;
    const PanelStyle& m_style;
    const TypeScale& m_scale;
    QString m_language;
    PieceText m_text;
};

} // namespace

PieceText pieceText(
    const ClearedPiece& piece, const PanelStyle& style, const QString& language, int titleStep)
{
    Composer composer(piece, style, language);
    const Palette& palette = style.palette;
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

std::vector<int> titleSteps(SizeMm panel)
{
    // ISO 216: the short side of A3 is 297 mm.
    if (std::min(panel.width, panel.height) <= Mm(297))
        return {7, 6, 5, 4};
    return {7, 6, 5};
}

} // namespace wainscot
