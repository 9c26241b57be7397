#include "layout/typeset/term_blocks.h"

#include "layout/typeset/hanging_mark.h"

#include <algorithm>
#include <memory>

namespace wainscot {

namespace {

constexpr Mm kBeforeHeading{15}; // last baseline to the cap line
constexpr Mm kBeforeQuestion{9};
constexpr Mm kBeforeProse{5.5};
constexpr Mm kBelowTitle{6}; // more than between other blocks
constexpr Mm kBeforeSaying{5.4};
constexpr Mm kBetweenParagraphs{3.6};
constexpr int kHeadingStep = 2;

using Shared = std::shared_ptr<const TextBlock>;

Shared shared(TextBlock block)
{
    return std::make_shared<const TextBlock>(std::move(block));
}

Mm heightOf(Mm cap, Mm lead, std::size_t lines)
{
    return cap + (lines == 0 ? 0.0 : static_cast<double>(lines - 1)) * lead;
}

// Lines that stay together: two at the beginning and two at the end of a paragraph, else one.
std::vector<LineSpan> portions(std::size_t lines)
{
    if (lines <= 3)
        return {{0, lines}};
    std::vector<LineSpan> spans{{0, 2}};
    for (std::size_t line = 2; line + 2 < lines; ++line)
        spans.push_back({line, line + 1});
    spans.push_back({lines - 2, lines});
    return spans;
}

// Where the lines of a text in the wide column stand.
TextBlock::Place placeIn(Mm left, Mm width, const TextBlock& block, Mm baseline, Mm lead)
{
    const bool fromRight = block.direction() == Direction::RightToLeft;
    return {fromRight ? left + width : left, fromRight, baseline, lead};
}

} // namespace

double aspectOf(const ClearedPicture& picture)
{
    const double width = picture.size.width * picture.visible.width;
    const double height = picture.size.height * picture.visible.height;
    return width > 0 && height > 0 ? width / height : 1;
}

void TermBlocks::headingBlock(
    TextBlock block, int step, Mm before, Role role, std::vector<Bookmark> marks)
{
    const Shared text = shared(std::move(block));
    const LineBreaks breaks = text->lines(Breaking::Sense, m_style.width());
    const Mm cap = m_style.scale.cap(step);
    const Mm lead = m_text.titleLead(step);
    FlowBlock flow;
    flow.before = before;
    flow.height = heightOf(cap, lead, breaks.ends.size());
    flow.keepWithNext = true;
    flow.bookmarks = std::move(marks);
    flow.draw = [this, text, breaks, cap, lead, role](PageDrawing& page, Mm top) {
        page.text(page.add(role, m_text.language()),
            *text,
            breaks,
            placeIn(m_style.side, m_style.width(), *text, top + cap, lead));
    };
    m_flow.add(std::move(flow));
}

void TermBlocks::title(const QString& text, const QString& bookmark)
{
    const int step = m_style.scale.titleStep;
    headingBlock(
        m_text.title(text, step), step, kBeforeHeading, Role::Heading1, {{0, bookmark, Mm()}});
    FlowBlock white;
    white.height = kBelowTitle;
    white.keepWithNext = true;
    m_flow.add(std::move(white));
}

void TermBlocks::heading(const QString& text, const QString& bookmark)
{
    std::vector<Bookmark> marks;
    if (!bookmark.isEmpty())
        marks.push_back({1, bookmark, Mm()});
    headingBlock(m_text.title(text, kHeadingStep),
        kHeadingStep,
        kBeforeHeading,
        Role::Heading2,
        std::move(marks));
}

// A hairline, and the question as it was asked.
void TermBlocks::question(const QString& text)
{
    const Shared block = shared(m_text.strong(text));
    const LineBreaks breaks = m_text.lines(*block, m_style.width());
    const Mm cap = m_style.scale.body;
    const Mm lead = m_text.bodyLead();
    FlowBlock flow;
    flow.before = kBeforeQuestion;
    flow.height = heightOf(cap, lead, breaks.ends.size());
    flow.keepWithNext = true;
    flow.draw = [this, block, breaks, cap, lead](PageDrawing& page, Mm top) {
        constexpr Mm kRule{0.2};
        const RectMm rule{m_style.side, top - 1.4 * cap, m_style.width(), kRule};
        page.fill(rule, m_style.palette.adult);
        page.text(page.add(Role::Heading2, m_text.language()),
            *block,
            breaks,
            placeIn(m_style.side, m_style.width(), *block, top + cap, lead));
    };
    m_flow.add(std::move(flow));
}

void TermBlocks::prose(const QString& label, const QString& text, const QString& language)
{
    const Shared name = shared(m_text.label(label));
    bool first = true;
    for (const QString& paragraph : paragraphsOf(text)) {
        const Shared block = shared(m_text.body(paragraph, language));
        const LineBreaks breaks = m_text.lines(*block, m_style.textWidth());
        const Mm cap = m_style.scale.body;
        const Mm lead = m_text.bodyLead();
        const int key = nextKey();
        const QString tongue = language.isEmpty() ? m_text.language() : language;
        for (const LineSpan& lines : portions(breaks.ends.size())) {
            const bool begins = lines.first == 0;
            const bool labelled = begins && first && !name->isEmpty();
            FlowBlock flow;
            flow.before = !begins ? lead - cap : first ? kBeforeProse : kBetweenParagraphs;
            flow.height = heightOf(cap, lead, lines.end - lines.first);
            flow.draw = [=, this](PageDrawing& page, Mm top) {
                const Mm baseline = top + cap;
                if (labelled) {
                    const LineBreaks broken = m_text.lines(*name, m_style.label);
                    page.text(page.add(Role::Heading2, m_text.language()),
                        *name,
                        broken,
                        {m_style.side, false, baseline, m_text.captionLead()});
                }
                page.text(page.addOnce(key, Role::Paragraph, tongue),
                    *block,
                    breaks,
                    placeIn(m_style.textLeft(), m_style.textWidth(), *block, baseline, lead),
                    lines);
            };
            m_flow.add(std::move(flow));
        }
        first = false;
    }
}

// The words in the wide column, who said them beside their first line.
void TermBlocks::saying(const ClearedPiece& piece)
{
    struct Part {
        Shared block;
        LineBreaks breaks;
        Mm top; // of its cap line below the first one
        Mm lead;
    };
    const Mm cap = m_style.scale.voice();
    const bool translated = !piece.translatedFrom.isEmpty();
    const QStringList told = paragraphsOf(piece.text);
    if (told.isEmpty())
        return;
    std::vector<Part> parts;
    Mm at;
    for (qsizetype i = 0; i < told.size(); ++i) {
        const Shared block =
            shared(m_text.words(told[i], piece.language, i + 1 == told.size(), translated));
        const Mm lead = m_text.wordsLead(told[i]);
        if (i > 0)
            at += lead - cap + 0.25 * lead;
        parts.push_back({block, m_text.wordLines(*block, m_style.textWidth()), at, lead});
        at += heightOf(cap, lead, parts.back().breaks.ends.size());
    }
    const Shared mark = shared(m_text.openingMark(told.front(), piece.language, translated));
    const Shared name = shared(m_text.label(piece.name));
    const Shared status = shared(m_text.caption(piece.status, m_style.palette.adult));
    const LineBreaks nameLines = m_text.lines(*name, m_style.label);
    const LineBreaks statusLines = m_text.lines(*status, m_style.label);
    const std::size_t beside =
        nameLines.ends.size() + (status->isEmpty() ? 0 : statusLines.ends.size());
    FlowBlock flow;
    flow.before = kBeforeSaying;
    flow.height = std::max(at, heightOf(cap, m_text.captionLead(), beside));
    const QString language = piece.language;
    flow.draw = [=, this](PageDrawing& page, Mm top) {
        const int element = page.add(Role::Quote, language);
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const Part& part = parts[i];
            const TextBlock::Place place = placeIn(m_style.textLeft(),
                m_style.textWidth(),
                *part.block,
                top + part.top + cap,
                part.lead);
            if (i == 0)
                page.add(element, hangingMark(*mark, m_style.pairing.voiceFamily, cap, place));
            else
                page.part();
            page.text(element, *part.block, part.breaks, place);
        }
        page.part();
        TextBlock::Place place{m_style.side, false, top + cap, m_text.captionLead()};
        page.text(element, *name, nameLines, place);
        page.part();
        place.firstBaseline += static_cast<double>(nameLines.ends.size()) * m_text.captionLead();
        page.text(element, *status, statusLines, place);
    };
    m_flow.add(std::move(flow));
}

} // namespace wainscot
