// The two usual ways to fill a page, done decently: texts at their own sizes and measures, captions
// under their pictures, works whole on their mats, no picture below its resolution.
#include "layout/engine/piece.h"
#include "tests/support/wall_layouts.h"

#include <algorithm>
#include <cmath>

namespace wainscot::walls {

namespace {

using engine::Item;
using engine::Kind;

class Baseline {
public:
    explicit Baseline(const Sheet& sheet)
        : m_sheet(sheet)
        , m_page(sheet.request().page)
        , m_gutter(m_page.gutter.value())
        , m_left(m_page.margin.value())
        , m_top(m_page.margin.value())
        , m_width(m_page.width(m_page.columns).value())
        , m_bottom(m_top + m_page.height(m_page.rows).value())
    {
    }

    double border(const Item& item) const
    {
        return item.kind == Kind::Work ? engine::kMatBorder * m_gutter : 0;
    }

    // Text or caption at a width; text is never set wider than its measure.
    engine::TextMetrics measure(const Item& item, double width) const
    {
        return m_sheet.text().measure(item.id, Mm(textWidth(item, width)));
    }

    double textWidth(const Item& item, double width) const
    {
        const engine::TextSpec spec = m_sheet.text().spec(item.id);
        const double most = spec.maxChars * spec.meanChar.value()
            + (spec.tinted ? 2 * engine::kTintPadding * m_page.rowUnit.value() : 0);
        return most > 0 && item.kind != Kind::Title ? std::min(width, most) : width;
    }

    double captionRoom(const Item& item, double width) const
    {
        const double height = measure(item, width).height.value();
        return height > 0 ? height + m_sheet.text().spec(item.id).captionGap.value() : 0;
    }

    // Height of a piece that is as wide as this; a picture keeps its shape and its resolution.
    double height(const Item& item, double width) const
    {
        if (!item.picture)
            return measure(item, width).height.value();
        const double shown = std::min(width - 2 * border(item), widest(item));
        return shown / item.picture->size.aspect() + 2 * border(item) + captionRoom(item, width);
    }

    double widest(const Item& item) const
    {
        return item.picture->size.width / m_page.minPpi * kMmPerInch;
    }

    Place place(const Item& item, double x, double y, double width, double slotHeight) const
    {
        Place out;
        out.piece = PieceId(item.id);
        out.slot = {Mm(x), Mm(y), Mm(width), Mm(slotHeight)};
        out.cell = {Mm(x), Mm(y), Mm(width), Mm(height(item, width))};
        if (item.picture) {
            const double edge = border(item);
            const double shown = std::min(width - 2 * edge, widest(item));
            out.picture = {
                Mm(x + edge), Mm(y + edge), Mm(shown), Mm(shown / item.picture->size.aspect())};
        } else {
            out.cell.width = Mm(textWidth(item, width));
        }
        return out;
    }

    // White below a piece: a gutter, and one more row where a title or a name needs to stand alone.
    double gapBelow(const Item& item) const
    {
        const double row = m_page.rowUnit.value();
        const double lead = m_sheet.text().spec(item.id).lead.value();
        const double least = item.kind == Kind::Title ? 1.5 * row
            : item.kind == Kind::Quote                ? 0.86 * lead
                                                      : 0;
        return m_gutter + (least > m_gutter ? row : 0);
    }

protected:
    const Sheet& m_sheet;
    const engine::PageSpec& m_page;
    double m_gutter;
    double m_left;
    double m_top;
    double m_width;
    double m_bottom;
};

class Rows : Baseline {
public:
    Rows(const Sheet& sheet, double rowHeight)
        : Baseline(sheet)
        , m_height(rowHeight)
    {
    }

    std::vector<std::vector<Place>> make()
    {
        m_pages.emplace_back();
        for (const Item& item : m_sheet.request().items) {
            if (item.kind == Kind::Title) {
                finishRow(false);
                m_row = {{&item, m_width}};
                finishRow(false);
                continue;
            }
            const double width = wanted(item);
            if (!m_row.empty() && used() + m_gutter + width > m_width)
                finishRow(true);
            m_row.emplace_back(&item, std::min(width, m_width));
        }
        finishRow(false);
        return m_possible ? m_pages : std::vector<std::vector<Place>>();
    }

private:
    // The width at which a piece has the height of the rows.
    double wanted(const Item& item) const
    {
        if (item.picture) {
            double width = m_height * item.picture->size.aspect();
            for (int k = 0; k < 3; ++k) // the caption's room depends on the width
                width = std::max(
                            0.25 * m_height, m_height - captionRoom(item, width) - 2 * border(item))
                        * item.picture->size.aspect()
                    + 2 * border(item);
            return std::clamp(width, 4 * m_gutter, m_width);
        }
        const engine::TextSpec spec = m_sheet.text().spec(item.id);
        const double least = std::min(m_width, spec.minChars * spec.meanChar.value());
        const double most = textWidth(item, m_width);
        double width = least;
        while (width < most
            && (!measure(item, width).fits || measure(item, width).height.value() > m_height))
            width += m_page.width(1).value() / 2;
        return std::min(width, m_width);
    }

    double used() const
    {
        double sum = -m_gutter;
        for (const auto& [item, width] : m_row)
            sum += width + m_gutter;
        return sum;
    }

    void finishRow(bool justified)
    {
        if (m_row.empty())
            return;
        double pictures = 0;
        for (const auto& [item, width] : m_row)
            pictures += item->picture ? width : 0;
        if (justified && pictures > 0) {
            const double scale = 1 + (m_width - used()) / pictures;
            for (auto& [item, width] : m_row)
                width *= item->picture ? scale : 1;
        }
        double tall = 0;
        double gap = 0;
        for (const auto& [item, width] : m_row) {
            tall = std::max(tall, height(*item, width));
            gap = std::max(gap, gapBelow(*item));
        }
        if (m_y + tall > m_bottom && !m_pages.back().empty()) {
            m_pages.emplace_back();
            m_y = m_top;
        }
        m_possible = m_possible && m_y + tall <= m_bottom + 1e-6;
        double x = m_left;
        for (const auto& [item, width] : m_row) {
            m_pages.back().push_back(place(*item, x, m_y, width, tall));
            x += width + m_gutter;
        }
        m_y += tall + gap;
        m_row.clear();
    }

    double m_height;
    double m_y = m_top;
    bool m_possible = true;
    std::vector<std::pair<const Item*, double>> m_row;
    std::vector<std::vector<Place>> m_pages;
};

class Masonry : Baseline {
public:
    Masonry(const Sheet& sheet, int columns)
        : Baseline(sheet)
        , m_columns(columns)
        , m_columnWidth((m_width - (columns - 1) * m_gutter) / columns)
    {
    }

    std::vector<std::vector<Place>> make()
    {
        newPage(m_top);
        for (const Item& item : m_sheet.request().items) {
            if (item.kind == Kind::Title) {
                const double tall = height(item, m_width);
                m_pages.back().push_back(place(item, m_left, m_top, m_width, tall));
                m_ends.assign(m_ends.size(), m_top + tall + gapBelow(item));
                continue;
            }
            const double tall = height(item, m_columnWidth);
            auto shortest = std::min_element(m_ends.begin(), m_ends.end());
            if (*shortest + tall > m_bottom + 1e-6) {
                newPage(m_top);
                shortest = m_ends.begin();
            }
            if (m_top + tall > m_bottom + 1e-6)
                return {};
            const auto column = double(shortest - m_ends.begin());
            m_pages.back().push_back(place(item,
                m_left + column * (m_columnWidth + m_gutter),
                *shortest,
                m_columnWidth,
                tall));
            *shortest += tall + gapBelow(item);
            m_fits = m_fits && measure(item, m_columnWidth).fits;
        }
        return m_fits || m_columns == 2 ? m_pages : std::vector<std::vector<Place>>();
    }

private:
    void newPage(double top)
    {
        m_pages.emplace_back();
        m_ends.assign(std::size_t(m_columns), top);
    }

    int m_columns;
    double m_columnWidth;
    bool m_fits = true; // no word is wider than a column
    std::vector<double> m_ends; // of the columns
    std::vector<std::vector<Place>> m_pages;
};

} // namespace

Layout justifiedRows(const Sheet& sheet, Mm rowHeight)
{
    return {QStringLiteral("rows"), Rows(sheet, rowHeight.value()).make(), false};
}

Layout masonry(const Sheet& sheet, int columns)
{
    return {QStringLiteral("masonry"), Masonry(sheet, columns).make(), false};
}

} // namespace wainscot::walls
