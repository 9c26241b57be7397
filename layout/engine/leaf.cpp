#include "layout/engine/leaf.h"

#include <algorithm>
#include <cmath>

namespace wainscot::engine {

namespace {

constexpr double kSmallestPictureGutters = 4; // no picture side below four gutters
constexpr double kLeastPpiShare = 0.55; // a picture may shrink in its cell down to this share
constexpr int kCaptionLines = 2; // more read as running text
constexpr int kTitleLines = 3;
constexpr double kQuietRows = 2; // of white under words; more begins to look like a hole
constexpr double kTouch = 1e-6; // mm; lengths closer than this are the same

double square(double x)
{
    return x * x;
}

void add(std::int64_t& term, double units)
{
    term += toCost(units);
}

} // namespace

Mm indentOf(const Item& item, int x, int w, const PageSpec& page)
{
    const bool atMargin = item.fromRight ? x + w == page.columns : x == 0;
    return atMargin ? Mm(0) : item.indent;
}

double clearBelow(const Piece& piece, const PageSpec& page)
{
    const double gutter = page.gutter.value();
    if (piece.item.wish.lastInColumn)
        return gutter;
    switch (piece.item.kind) {
    case Kind::Title: // one entry: nothing else within a row and a half
        return std::max(gutter, 1.5 * page.rowUnit.value());
    case Kind::Quote: // twice the distance from the words to the name below them
        return std::max(gutter, 0.86 * piece.spec.lead.value());
    case Kind::Label: // a label has exactly one row
        return std::min(gutter, 0.3 * page.rowUnit.value());
    default:
        return gutter;
    }
}

const TextMetrics& TextMemo::measure(ItemId item, Mm width)
{
    const std::pair key(item, width.value());
    if (m_latest != m_metrics.end() && m_latest->first == key)
        return m_latest->second; // asked again for another height
    const auto [at, isNew] = m_metrics.try_emplace(key);
    if (isNew)
        at->second = m_text.measure(item, width);
    m_latest = at;
    return at->second;
}

const TextSpec& TextMemo::spec(ItemId item)
{
    const auto [at, isNew] = m_specs.try_emplace(item);
    if (isNew)
        at->second = m_text.spec(item);
    return at->second;
}

LeafTable::LeafTable(
    const PageSpec& page, std::vector<Piece> pieces, TextMemo& text, const Weights& weights)
    : m_page(page)
    , m_pieces(std::move(pieces))
    , m_text(text)
    , m_weights(weights)
    , m_usable(page.width(page.columns).value() * page.height(page.rows).value())
{
    const auto side = std::size_t(page.columns) + 1;
    m_costs.resize(m_pieces.size() * side * side);
}

bool LeafTable::allowed(const Piece& piece, int x, int w) const
{
    const Wish& wish = piece.item.wish;
    if (wish.minColumns > 0 && w < wish.minColumns)
        return false;
    if (wish.maxColumns > 0 && w > wish.maxColumns)
        return false;
    if (wish.firstColumn >= 0 && x != wish.firstColumn)
        return false;
    if (piece.item.fullWidth && w != m_page.columns)
        return false;
    if (piece.blank || piece.isPicture())
        return true;
    // The narrowest voice column holds its fewest characters; adult text may go a little lower.
    const double narrowest = piece.item.kind == Kind::Quote ? 1.0 : 0.7;
    const bool words = piece.item.kind != Kind::Label && piece.item.kind != Kind::Title;
    return !words
        || m_page.width(w).value()
        >= narrowest * piece.spec.minChars * piece.spec.meanChar.value() - kTouch;
}

// Text is never set wider than its measure; a tint ends on a column as well.
double LeafTable::textWidth(const Piece& piece, double cellWidth) const
{
    const double limit = piece.spec.maxChars * piece.spec.meanChar.value();
    if (limit <= 0)
        return cellWidth;
    if (!piece.spec.tinted || piece.isPicture())
        return std::min(cellWidth, limit);
    const double widest = limit + 2 * kTintPadding * m_page.rowUnit.value();
    double best = m_page.width(1).value();
    for (int w = 1; w <= m_page.columns; ++w)
        if (m_page.width(w).value() <= widest)
            best = m_page.width(w).value();
    return std::min(cellWidth, best);
}

double LeafTable::captionHeight(int i, int x, int w)
{
    const Piece& piece = m_pieces[std::size_t(i)];
    const double indent = indentOf(piece.item, x, w, m_page).value();
    const double width = textWidth(piece, m_page.width(w).value() - indent);
    const double height = m_text.measure(piece.item.id, Mm(width)).height.value();
    return height > 0 && piece.isPicture() ? height + piece.spec.captionGap.value() : height;
}

void LeafTable::fitText(const Piece& piece, double width, int h, LeafFit& out)
{
    out.textWidth = textWidth(piece, width);
    const TextMetrics& text = m_text.measure(piece.item.id, Mm(out.textWidth));
    const double unit = m_page.rowUnit.value();
    out.textHeight = text.height.value();
    const double slack = h * unit - out.textHeight - clearBelow(piece, m_page);
    if (!text.fits || slack < -kTouch)
        return;
    out.possible = true;
    const double used = piece.spec.tinted ? out.textWidth : text.usedWidth.value();
    const bool display = piece.item.kind == Kind::Title || piece.item.kind == Kind::Label;
    const double side = std::max(0.0, width - used) * out.textHeight * (display ? 0.25 : 1);
    add(out.cost.white, m_weights.textWhite * (slack * width + side) / m_usable);
    if (piece.spec.tinted) {
        const double panel = m_page.size.width.value() * m_page.size.height.value();
        add(out.cost.white, m_weights.tint * out.textWidth * out.textHeight / panel);
    }
    // A label belongs to what is below it, a title leads on: white under them is not quiet.
    const double stray = piece.item.kind == Kind::Label ? 8
        : piece.item.kind == Kind::Title                ? 3
                                                        : 1;
    const double pool = slack / unit - (stray > 1 ? 0.5 : kQuietRows);
    if (pool > 0)
        add(out.cost.white,
            stray * m_weights.pool * square(pool) * width / m_page.width(3).value() / 3);
    if (piece.item.kind == Kind::Title && text.lines > kTitleLines)
        add(out.cost.measure, m_weights.titleLines * square(text.lines - kTitleLines));
    // Wide white beside words adds up to a hole, however few lines each of them has.
    const double column = (m_page.width(1) + m_page.gutter).value();
    const double aside = (width - used) / column - 2;
    if (aside > 0)
        add(out.cost.white, m_weights.side * square(aside) * h);
    if (piece.item.wish.even)
        add(out.cost.white, m_weights.even * square(slack / unit));
    const double meanChar = piece.spec.meanChar.value();
    const double padding = piece.spec.tinted ? 2 * kTintPadding * unit : 0;
    const double chars = meanChar > 0 ? (out.textWidth - padding) / meanChar : 0;
    if (text.lines > 1 && chars > 0 && !display && chars < piece.spec.minChars)
        add(out.cost.measure, m_weights.measure * square(steadyLog(chars / piece.spec.minChars)));
}

void LeafTable::fitPicture(const Piece& piece, double width, int h, LeafFit& out)
{
    const PictureShape& shape = *piece.item.picture;
    const double gutter = m_page.gutter.value();
    const double border = piece.isSample() ? kMatBorder * gutter : 0;
    out.textWidth = textWidth(piece, width);
    const TextMetrics& caption = m_text.measure(piece.item.id, Mm(out.textWidth));
    if (!caption.fits)
        return;
    const double gap = piece.spec.captionGap.value();
    out.textHeight = caption.height > Mm(0) ? caption.height.value() + gap : 0;
    const int columns = piece.item.wish.pictureColumns;
    const double room = columns > 0 ? std::min(width, m_page.width(columns).value()) : width;
    const double boxWidth = room - 2 * border;
    const double boxHeight = m_page.height(h).value() - out.textHeight - 2 * border;
    if (std::min(boxWidth, boxHeight) < kSmallestPictureGutters * gutter)
        return;
    const double own = shape.size.aspect();
    const bool narrower = boxWidth / boxHeight < own; // the sides are cropped, not top and bottom
    double w = boxWidth;
    double hh = boxHeight;
    out.keep = narrower ? boxWidth / boxHeight / own : own / (boxWidth / boxHeight);
    const double limit = piece.isSample() ? 1 : narrower ? shape.keepWidth : shape.keepHeight;
    if (out.keep < limit) {
        out.keep = limit;
        (narrower ? hh : w) = narrower ? w / (own * limit) : hh * own / limit;
    }
    const double pixels = narrower ? shape.size.height * (w / hh) : shape.size.width;
    out.ppi = pixels / (w / kMmPerInch);
    if (out.ppi < m_page.minPpi) {
        const double shrink = out.ppi / m_page.minPpi;
        if (shrink < kLeastPpiShare)
            return;
        w *= shrink;
        hh *= shrink;
        out.ppi = m_page.minPpi;
    }
    const double ceiling = piece.ceilingMm2;
    if (ceiling > 0 && w * hh > ceiling) { // smaller in its cell rather than a rival
        const double shrink = std::sqrt(ceiling / (w * hh));
        w *= shrink;
        hh *= shrink;
        out.ppi /= shrink;
    }
    out.possible = true;
    out.pictureWidth = w;
    out.pictureHeight = hh;
    const double area = w * hh;
    const double white = boxWidth * boxHeight - area;
    add(out.cost.crop, m_weights.crop * square(1 - out.keep));
    if (caption.lines > kCaptionLines)
        add(out.cost.measure, m_weights.captionLines * square(caption.lines - kCaptionLines));
    add(out.cost.white, m_weights.white * white / m_usable * (1 + white / (boxWidth * boxHeight)));
    const double under = (boxHeight - hh) / m_page.rowUnit.value() - kQuietRows;
    if (under > 0)
        add(out.cost.white,
            2 * m_weights.pool * square(under) * width / m_page.width(3).value() / 3);
    if (!piece.isSample() && w < boxWidth - 1)
        add(out.cost.alignment, m_weights.ragged);
    if (piece.targetMm2 > 0) {
        const double off = steadyLog(area / piece.targetMm2);
        add(out.cost.size, m_weights.size * square(off));
    }
    if (m_weights.tone > 0) {
        const double panel = m_page.size.width.value() * m_page.size.height.value();
        add(out.cost.size, m_weights.tone * area / panel * (piece.isSample() ? 0.3 : 1));
    }
    if (piece.floorMm2 > 0 && area < piece.floorMm2)
        add(out.cost.size, 0.5 + m_weights.rank * square(steadyLog(area / piece.floorMm2)));
}

void LeafTable::priceWishes(const Piece& piece, const GridRect& cell, LeafFit& out) const
{
    const Wish& wish = piece.item.wish;
    if (wish.columns > 0)
        add(out.cost.size, m_weights.wish * square(double(cell.w - wish.columns) / wish.columns));
    if (wish.rows > 0 && !wish.exactRows)
        add(out.cost.size, m_weights.wish * square(double(cell.h - wish.rows) / wish.rows));
    if (piece.item.previous) {
        const GridRect& before = *piece.item.previous;
        const int sideways =
            std::abs(cell.x - before.x) + std::abs(cell.x + cell.w - before.x - before.w);
        add(out.cost.stability, m_weights.stay * sideways / m_page.columns);
        add(out.cost.stability, m_weights.stay * std::abs(cell.h - before.h) / m_page.rows);
    }
}

LeafFit LeafTable::ownFit(int i, int x, int w, int h)
{
    LeafFit out;
    const Piece& piece = m_pieces[std::size_t(i)];
    if (h < 1 || !allowed(piece, x, w))
        return out;
    const Wish& wish = piece.item.wish;
    if (wish.exactRows && h != wish.rows)
        return out;
    const int rows = piece.item.pinned ? h : h - wish.rowsAbove;
    if (rows < 1)
        return out;
    const double indent = indentOf(piece.item, x, w, m_page).value();
    const double width = m_page.width(w).value() - indent;
    if (piece.blank) {
        out.possible = true;
        add(out.cost.white, m_weights.empty * w * h / (m_page.columns * m_page.rows));
    } else if (piece.isPicture()) {
        fitPicture(piece, width, rows, out);
    } else {
        fitText(piece, width, rows, out);
    }
    if (out.possible)
        priceWishes(piece, {0, x, 0, w, h}, out);
    return out;
}

std::size_t LeafTable::place(int i, int x, int w) const
{
    const auto side = std::size_t(m_page.columns) + 1;
    return (std::size_t(i) * side + std::size_t(x)) * side + std::size_t(w);
}

int LeafTable::shapeColumn(int i, int x, int w) const
{
    const Item& item = m_pieces[std::size_t(i)].item;
    if (item.previous || item.wish.firstColumn >= 0)
        return x;
    const bool indented = indentOf(item, x, w, m_page) > Mm(0);
    if (item.fromRight)
        return indented ? 0 : m_page.columns - w;
    return indented ? 1 : 0;
}

const std::vector<Cost>& LeafTable::ownCosts(int i, int x, int w)
{
    const int column = shapeColumn(i, x, w);
    auto& row = m_costs[place(i, column, w)];
    if (row.empty()) {
        row.assign(std::size_t(m_page.rows) + 1, kNever);
        for (int h = 1; h <= m_page.rows; ++h) {
            const LeafFit one = ownFit(i, column, w, h);
            if (one.possible)
                row[std::size_t(h)] = Cost(std::min<std::int64_t>(one.cost.total(), kNever));
        }
    }
    return row;
}

void LeafTable::avoid(std::vector<std::vector<GridRect>> shown, std::vector<Cost> prices)
{
    m_shown = std::move(shown);
    m_likeness = std::move(prices);
    m_avoiding.assign(m_costs.size(), {});
}

// Words look the same whatever white is under them, so only their columns count. Where a run
// stands on the page is not known here; likeness in columns and height is what can be priced.
Cost LeafTable::likeness(int i, int x, int w, int h) const
{
    double sum = 0;
    for (const GridRect& cell : m_shown[std::size_t(i)]) {
        const int shared = std::min(x + w, cell.x + cell.w) - std::max(x, cell.x);
        const double across = double(std::max(0, shared)) / (w + cell.w - std::max(0, shared));
        const bool picture = m_pieces[std::size_t(i)].isPicture();
        const double down = picture ? double(std::min(h, cell.h)) / std::max(h, cell.h) : 1;
        sum += across * across * down;
    }
    return toCost(sum * m_likeness[std::size_t(i)] / kUnit);
}

const std::vector<Cost>& LeafTable::costs(int i, int x, int w)
{
    const std::vector<Cost>& own = ownCosts(i, x, w);
    if (m_shown.empty() || m_shown[std::size_t(i)].empty())
        return own;
    auto& row = m_avoiding[place(i, x, w)];
    if (row.empty()) {
        row = own;
        for (int h = 1; h <= m_page.rows; ++h)
            if (row[std::size_t(h)] < kNever)
                row[std::size_t(h)] += likeness(i, x, w, h);
    }
    return row;
}

LeafFit LeafTable::fit(int i, int x, int w, int h)
{
    LeafFit out = ownFit(i, x, w, h);
    if (out.possible && !m_shown.empty())
        out.cost.likeness += likeness(i, x, w, h);
    return out;
}

// Costs are not asked for: most of the time nobody needs them.
int LeafTable::leastRows(int i, int x, int w)
{
    int h = 1;
    while (h <= m_page.rows && !ownFit(i, x, w, h).possible)
        ++h;
    return h;
}

int LeafTable::leastCells(int i)
{
    int least = m_page.columns * m_page.rows + 1;
    for (int w = 1; w <= m_page.columns; ++w)
        for (int x = 0; x + w <= m_page.columns; ++x) {
            if (x > 0 && shapeColumn(i, x, w) == shapeColumn(i, x - 1, w))
                continue; // as one column further left
            const int rows = leastRows(i, x, w);
            if (rows <= m_page.rows)
                least = std::min(least, w * rows);
        }
    return least;
}

} // namespace wainscot::engine
