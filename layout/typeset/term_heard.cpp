// Who was heard: a mark where a child was, an open ring where not yet. No sums, no order of merit.
#include "core/base/wall_text.h"
#include "layout/typeset/term_blocks.h"

#include <algorithm>
#include <memory>

namespace wainscot {

namespace {

constexpr Mm kRow{6.2};
constexpr Mm kWidestColumn{36};
constexpr Mm kMark{1.5}; // radius
constexpr Mm kRing{0.35};
constexpr Mm kHairline{0.15};
constexpr std::size_t kMostTogether = 34; // rows that are kept on one page

} // namespace

Mm TermBlocks::heardColumn(std::size_t count) const
{
    return std::min(kWidestColumn, m_style.textWidth() / static_cast<double>(count));
}

void TermBlocks::heard(const QStringList& columns, const std::vector<HeardRow>& rows)
{
    if (columns.isEmpty() || rows.empty())
        return;
    heardHead(columns);
    for (const HeardRow& row : rows) {
        const bool last = &row == &rows.back();
        heardRow(columns, row, last, !last && rows.size() <= kMostTogether);
    }
}

void TermBlocks::heardHead(const QStringList& columns)
{
    struct Head {
        std::shared_ptr<const TextBlock> text;
        LineBreaks lines;
    };
    const Mm width = heardColumn(static_cast<std::size_t>(columns.size()));
    auto heads = std::make_shared<std::vector<Head>>();
    std::size_t most = 1;
    for (const QString& column : columns) {
        auto text =
            std::make_shared<const TextBlock>(m_text.caption(column, m_style.palette.adult));
        LineBreaks lines = m_text.lines(*text, width - Mm(2));
        most = std::max(most, lines.ends.size());
        heads->push_back({std::move(text), std::move(lines)});
    }
    const Mm cap = m_style.scale.caption();
    const Mm lead = m_text.captionLead();
    FlowBlock flow;
    flow.before = Mm(6);
    flow.height = cap + static_cast<double>(most - 1) * lead;
    flow.keepWithNext = true;
    flow.draw = [this, heads, width, cap, lead, most](PageDrawing& page, Mm top) {
        Mm left = m_style.textLeft();
        for (const Head& head : *heads) {
            const auto above = static_cast<double>(most - head.lines.ends.size());
            page.text(page.add(Role::Paragraph, m_text.language()),
                *head.text,
                head.lines,
                {left, false, top + cap + above * lead, lead});
            left += width;
        }
    };
    m_flow.add(std::move(flow));
}

void TermBlocks::heardRow(const QStringList& columns, const HeardRow& row, bool last, bool keep)
{
    const QString name =
        row.child.isEmpty() ? wallText(WallText::AChild, m_text.language()) : row.child;
    QStringList told;
    for (std::size_t i = 0; i < row.heard.size(); ++i) {
        const WallText was = row.heard[i] ? WallText::Heard : WallText::NotYetHeard;
        told.append(wallText(was, m_text.language()).arg(columns.value(static_cast<qsizetype>(i))));
    }
    const QString alternative = QStringLiteral("%1: %2").arg(name, told.join(QStringLiteral("; ")));
    const Mm width = heardColumn(row.heard.size());
    auto text = std::make_shared<const TextBlock>(
        row.child.isEmpty() ? m_text.caption(name, m_style.palette.adult) : m_text.label(name));
    FlowBlock flow;
    const Mm cap = m_style.scale.caption();
    flow.before = kRow - cap;
    flow.height = cap;
    flow.keepWithNext = keep;
    flow.draw = [=, this, heard = row.heard](PageDrawing& page, Mm top) {
        page.fill({m_style.side, top - (kRow - cap) / 2, m_style.width(), kHairline},
            m_style.palette.tint1);
        page.text(page.add(Role::Paragraph, m_text.language()),
            *text,
            m_text.oneLine(*text),
            {m_style.side, false, top + cap, m_text.captionLead()});
        const Mm middle = top + cap / 2;
        const int marks = page.figure(alternative,
            {m_style.textLeft(),
                middle - kMark,
                width * static_cast<double>(heard.size()),
                2 * kMark});
        Mm left = m_style.textLeft() + kMark;
        for (const bool yes : heard) {
            page.disc({{left, middle}, kMark, yes ? Mm() : kRing, m_style.palette.adult}, marks);
            left += width;
        }
        if (last)
            page.fill({m_style.side, top + cap + (kRow - cap) / 2, m_style.width(), kHairline},
                m_style.palette.tint1);
    };
    m_flow.add(std::move(flow));
}

} // namespace wainscot
