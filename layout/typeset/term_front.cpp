// What stands before the pages of a term's file: the cover and the contents.
#include "layout/typeset/term_pages.h"

#include "core/base/in_words.h"
#include "core/base/wall_text.h"
#include "layout/typeset/term_blocks.h"

#include <algorithm>
#include <memory>

namespace wainscot {

namespace {

constexpr int kCoverStep = 6;
constexpr Mm kCoverTop{58};
constexpr Mm kCoverPicture{124}; // greatest height
constexpr Mm kBeforeExperience{8};
constexpr Mm kBeforePart{3.4};

WallText whoMayRead(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return WallText::ForClassroom;
    case Audience::Building:
        return WallText::ForBuilding;
    case Audience::Families:
        return WallText::ForFamilies;
    case Audience::Public:
        break;
    }
    return WallText::ForPublic;
}

// The second wide photo of the term: the first one opens its experience. The first if there is
// only that one.
const ClearedPiece* coverPicture(const ClearedTerm& term)
{
    const ClearedPiece* first = nullptr;
    for (const ClearedExperience& experience : term.experiences()) {
        for (const ClearedPiece& piece : experience.pictures) {
            if (!piece.picture || piece.kind != PieceKind::Photo || aspectOf(*piece.picture) <= 1)
                continue;
            if (first != nullptr)
                return &piece;
            first = &piece;
        }
    }
    return first;
}

QString whatIsInside(const ClearedTerm& term)
{
    std::size_t meetings = 0;
    std::size_t walls = 0;
    for (const ClearedExperience& experience : term.experiences()) {
        meetings += experience.meetings.size();
        walls += experience.walls.size();
    }
    const auto counted = [&](std::size_t count, WallText one, WallText many) {
        const QString text = wallText(count == 1 ? one : many, term.language());
        return count == 1 ? text : text.arg(count);
    };
    QStringList parts{
        counted(term.experiences().size(), WallText::OneExperience, WallText::SomeExperiences)};
    if (meetings > 0)
        parts.append(counted(meetings, WallText::OneMeeting, WallText::SomeMeetings));
    if (walls > 0)
        parts.append(counted(walls, WallText::OneWall, WallText::SomeWalls));
    return parts.join(QStringLiteral(", "));
}

QString roman(int number)
{
    static const std::array<std::pair<int, const char*>, 9> kParts{{{100, "c"},
        {90, "xc"},
        {50, "l"},
        {40, "xl"},
        {10, "x"},
        {9, "ix"},
        {5, "v"},
        {4, "iv"},
        {1, "i"}}};
    QString text;
    for (const auto& [value, letters] : kParts) {
        for (; number >= value; number -= value)
            text += QLatin1String(letters);
    }
    return text;
}

} // namespace

TermPage TermPages::cover() const
{
    const TermText text(m_style, m_term.language());
    PageDrawing page(m_style.paper, m_term.language());
    const Mm width = m_style.width();
    const TextBlock title = text.title(m_term.title(), kCoverStep);
    const LineBreaks lines = title.lines(Breaking::Sense, width);
    const Mm cap = m_style.scale.cap(kCoverStep);
    const Mm lead = text.titleLead(kCoverStep);
    page.text(page.add(Role::Heading1, m_term.language()),
        title,
        lines,
        {m_style.side, false, kCoverTop + cap, lead});
    // A book may have no title.
    Mm at = kCoverTop + cap
        + static_cast<double>(std::max<std::size_t>(lines.ends.size(), 1) - 1) * lead;
    const auto line = [&](const TextBlock& block, Mm below) {
        if (block.isEmpty())
            return;
        at += below;
        page.text(page.add(Role::Paragraph, m_term.language()),
            block,
            text.oneLine(block),
            {m_style.side, false, at, Mm(1)});
    };
    line(text.strong(daysOfTerm(m_term.from(), m_term.to(), m_term.language())), Mm(13));
    line(text.body(whatIsInside(m_term)), text.bodyLead() * 1.25);
    if (const ClearedPiece* picture = coverPicture(m_term)) {
        const double aspect = aspectOf(*picture->picture);
        const Mm height = std::min(kCoverPicture, width / aspect);
        page.picture(*picture->picture, {m_style.side, at + Mm(14), height * aspect, height});
    }
    at = m_style.bottom();
    line(text.label(wallText(whoMayRead(m_term.audience()), m_term.language())), Mm());
    line(text.caption(wallText(WallText::AskedAgainOn, m_term.language())
                          .arg(dateInWords(m_term.madeOn(), m_term.language())),
             m_style.palette.adult),
        text.captionLead());
    TermPage made;
    made.list = page.take();
    made.list.title = m_term.title();
    return made;
}

std::vector<TermPage> TermPages::contents(const std::vector<ContentsLine>& lines) const
{
    std::vector<TermPage> pages;
    const TermText text(m_style, m_term.language());
    auto links = std::make_shared<std::vector<PageLink>>();
    PageFlow flow(m_style, m_term.language(), [&](TermPage page) {
        page.links.swap(*links);
        pages.push_back(std::move(page));
    });
    flow.setLabels(roman);
    flow.setRunning(m_term.title(), TermPart::Opening);
    TermBlocks blocks(text, flow); // drawn from until the last page is made
    const QString title = wallText(WallText::Contents, m_term.language());
    blocks.title(title, title);
    for (const ContentsLine& line : lines) {
        const bool isTop = line.level == 0;
        auto entry = std::make_shared<const TextBlock>(
            isTop ? text.strong(line.title) : text.body(line.title));
        auto number = std::make_shared<const TextBlock>(text.label(line.label));
        const LineBreaks breaks = text.lines(*entry, m_style.textWidth());
        const Mm cap = m_style.scale.body;
        FlowBlock block;
        block.before = isTop ? kBeforeExperience : kBeforePart;
        block.height = cap
            + static_cast<double>(std::max<std::size_t>(breaks.ends.size(), 1) - 1)
                * text.bodyLead();
        block.keepWithNext = isTop && &line != &lines.back();
        block.draw = [=, this, &text, target = line.page](PageDrawing& page, Mm top) {
            const int element = page.add(Role::Paragraph, m_term.language());
            const Mm baseline = top + cap;
            page.text(
                element, *entry, breaks, {m_style.textLeft(), false, baseline, text.bodyLead()});
            page.part();
            page.text(element,
                *number,
                text.oneLine(*number),
                {m_style.textLeft() - m_style.gutter, true, baseline, Mm(1)});
            links->push_back({{m_style.side, top - Mm(1), m_style.width(), cap + Mm(2)}, target});
        };
        flow.add(std::move(block));
    }
    flow.breakPage();
    return pages;
}

} // namespace wainscot
