#include "layout/engine/finish.h"

#include "layout/engine/faults.h"
#include "layout/engine/run_rules.h"

#include <algorithm>
#include <cmath>

namespace wainscot::engine {

namespace {

constexpr double kHairlineAbove = 0.65; // row units above the first line of the new group
constexpr double kTouch = 1e-6;
constexpr double kLevelWithin = 0.6; // row units

// Fewest whole rows that hold `height`.
int rowsFor(double height, const PageSpec& page)
{
    const double rows = (height + page.gutter.value() - kTouch) / page.rowUnit.value();
    return std::max(1, int(std::ceil(rows)));
}

class Finisher {
public:
    Finisher(int page, const ColumnSystem& system, LeafTable& leaves, Arrangement& out)
        : m_page(page)
        , m_system(system)
        , m_leaves(leaves)
        , m_rules(leaves)
        , m_out(out)
    {
    }

    void hairlineAbove(GridRect group)
    {
        group.page = m_page;
        const PageSpec& page = m_leaves.page();
        const RectMm cell = page.cell(group);
        m_out.groupChanges.push_back(
            {m_page, cell.x, cell.y - kHairlineAbove * page.rowUnit, cell.width});
    }

    void walk(const Node& node)
    {
        if (node.type == NodeType::Leaf) {
            place(node);
            return;
        }
        const std::size_t before = m_out.items.size();
        for (const Node& child : node.children)
            walk(child);
        if (node.type == NodeType::Row) {
            priceRow(node);
            levelPictures(node, before);
            dropBesideLabels(node, before);
            levelLanguages(before);
        } else {
            partGroups(node);
        }
    }

private:
    void place(const Node& node)
    {
        GridRect at = node.at;
        at.page = m_page;
        const Piece& piece = m_leaves.piece(node.first);
        const LeafFit fit = m_leaves.fit(node.first, at.x, at.w, at.h);
        m_out.cost += fit.cost;
        if (!piece.blank)
            m_out.items.push_back(placed(node.first, at, fit));
    }

    Placement placed(int index, const GridRect& at, const LeafFit& fit) const;

    void priceRow(const Node& row);
    void levelPictures(const Node& row, std::size_t from);
    void dropBesideLabels(const Node& row, std::size_t from);
    void levelLanguages(std::size_t from);
    void partGroups(const Node& stack);
    bool shorten(Placement& picture, double reserve) const;
    int pieceOf(ItemId id) const;

    int m_page;
    const ColumnSystem& m_system;
    LeafTable& m_leaves;
    RunRules m_rules;
    Arrangement& m_out;

    friend Placement wainscot::engine::placePinned(int, const GridRect&, LeafTable&);
};

Placement Finisher::placed(int index, const GridRect& at, const LeafFit& fit) const
{
    const PageSpec& page = m_leaves.page();
    const Piece& piece = m_leaves.piece(index);
    Placement out;
    out.id = piece.item.id;
    out.at = at;
    GridRect room = at;
    if (!piece.item.pinned) {
        room.y += piece.item.wish.rowsAbove;
        room.h -= piece.item.wish.rowsAbove;
    }
    out.cell = page.cell(room);
    const Mm indent = indentOf(piece.item, at.x, at.w, page);
    const double full = out.cell.height.value();
    out.cell.x += piece.item.fromRight ? Mm(0) : indent;
    out.cell.width -= indent;
    double height = fit.textHeight;
    if (piece.isPicture()) {
        const Mm border = piece.isSample() ? kMatBorder * page.gutter : Mm(0);
        out.picture = {
            out.cell.x + border, out.cell.y + border, Mm(fit.pictureWidth), Mm(fit.pictureHeight)};
        if (piece.isSample())
            out.mat = out.picture.grown(border);
        out.keep = fit.keep;
        out.ppi = fit.ppi;
        height += fit.pictureHeight + 2 * border.value();
    } else {
        if (piece.item.fromRight)
            out.cell.x += out.cell.width - Mm(fit.textWidth);
        out.cell.width = Mm(fit.textWidth);
        if (piece.spec.tinted) {
            const int rows = std::min(room.h, rowsFor(height, page));
            height = page.height(rows).value();
        }
    }
    if (piece.item.wish.stand != Stand::Top && height < full) {
        const Mm down(full - height);
        out.cell.y += down;
        out.picture = out.picture.isEmpty() ? out.picture : out.picture.movedBy(Mm(0), down);
        out.mat = out.mat.isEmpty() ? out.mat : out.mat.movedBy(Mm(0), down);
    }
    out.cell.height = Mm(height);
    return out;
}

int Finisher::pieceOf(ItemId id) const
{
    for (int i = 0; i < m_leaves.size(); ++i)
        if (!m_leaves.piece(i).blank && m_leaves.piece(i).item.id == id)
            return i;
    return -1;
}

void Finisher::priceRow(const Node& row)
{
    for (std::size_t k = 1; k < row.children.size(); ++k) {
        const Node& left = row.children[k - 1];
        const Node& right = row.children[k];
        for (std::size_t c = 0; c < m_system.cuts.size(); ++c)
            if (m_system.cuts[c] == right.at.x)
                m_out.cost.alignment += m_system.prices[c];
        const auto firstIsStack = [](const Node& node) {
            return node.type == NodeType::Stack
                || (node.type == NodeType::Row && node.children.front().type == NodeType::Stack);
        };
        const auto group = [this](int i) { return m_leaves.piece(i).item.group; };
        if (left.type == NodeType::Stack && firstIsStack(right)
            && group(right.first - 1) == group(right.first))
            m_out.cost.reading += toCost(m_leaves.weights().sideBySideStacks);
    }
}

// Takes room for a taller caption from the picture's height, where its crop allows that.
bool Finisher::shorten(Placement& picture, double reserve) const
{
    const int index = pieceOf(picture.id);
    const PageSpec& page = m_leaves.page();
    const RectMm cell = page.cell(picture.at);
    const double height = cell.height.value() - reserve;
    if (height >= picture.picture.height.value() - kTouch || height <= 0)
        return false;
    const PictureShape& shape = *m_leaves.piece(index).item.picture;
    const double aspect = picture.picture.width.value() / height;
    const double own = shape.size.aspect();
    const double keep = std::min(aspect / own, own / aspect);
    const bool narrower = aspect < own;
    if (keep < (narrower ? shape.keepWidth : shape.keepHeight))
        return false;
    const double pixels = narrower ? shape.size.height * aspect : shape.size.width;
    const double ppi = pixels / (picture.picture.width.value() / kMmPerInch);
    if (ppi < page.minPpi)
        return false;
    const Mm less = picture.picture.height - Mm(height);
    picture.picture.height = Mm(height);
    picture.cell.height -= less;
    picture.keep = keep;
    picture.ppi = ppi;
    return true;
}

// Photos that end at the foot of one row keep the same room for their captions.
void Finisher::levelPictures(const Node& row, std::size_t from)
{
    const int foot = row.at.y + row.at.h;
    std::vector<Placement*> photos;
    double reserve = 0;
    for (std::size_t k = from; k < m_out.items.size(); ++k) {
        Placement& one = m_out.items[k];
        if (one.picture.isEmpty() || !one.mat.isEmpty() || one.at.y + one.at.h != foot)
            continue;
        photos.push_back(&one);
        reserve = std::max(reserve, m_leaves.captionHeight(pieceOf(one.id), one.at.x, one.at.w));
    }
    if (photos.size() < 2)
        return;
    for (Placement* photo : photos)
        shorten(*photo, reserve);
}

// Adult text beside groups that begin with a label starts level with what the labels name.
void Finisher::dropBesideLabels(const Node& row, std::size_t from)
{
    const auto first = [](const Node& node) {
        const Node* at = &node;
        while (!at->children.empty())
            at = &at->children.front();
        return at;
    };
    int rows = 0;
    for (const Node& child : row.children) {
        const Node* leaf = first(child);
        if (m_leaves.piece(leaf->first).item.kind == Kind::Label && leaf->at.y == row.at.y)
            rows = std::max(rows, leaf->at.h);
    }
    if (rows == 0)
        return;
    for (const Node& child : row.children) {
        const Node* leaf = first(child);
        const Piece& piece = m_leaves.piece(leaf->first);
        if (!piece.spec.tinted || piece.blank || piece.item.wish.stand != Stand::Top)
            continue;
        for (std::size_t k = from; k < m_out.items.size(); ++k) {
            Placement& one = m_out.items[k];
            const int taken = rowsFor(one.cell.height.value(), m_leaves.page());
            if (one.id == piece.item.id && taken + rows <= one.at.h)
                one.cell.y += rows * m_leaves.page().rowUnit;
        }
    }
}

// A text in two languages: other scripts lead their lines otherwise, so where both come out nearly
// as high, they end on one baseline.
void Finisher::levelLanguages(std::size_t from)
{
    const double near = kLevelWithin * m_leaves.page().rowUnit.value();
    for (std::size_t a = from; a < m_out.items.size(); ++a) {
        Placement& one = m_out.items[a];
        const int level = m_leaves.piece(pieceOf(one.id)).item.wish.level;
        for (std::size_t b = a + 1; level > 0 && b < m_out.items.size(); ++b) {
            Placement& other = m_out.items[b];
            if (m_leaves.piece(pieceOf(other.id)).item.wish.level != level)
                continue;
            if (m_leaves.piece(pieceOf(one.id)).item.kind == Kind::Invitation) {
                // Both begin on one line; the lines to write on below are for both.
                const Mm top = std::min(one.cell.y, other.cell.y);
                for (Placement* text : {&one, &other}) {
                    text->cell.height += text->cell.y - top;
                    text->cell.y = top;
                }
                continue;
            }
            const Mm lower = one.cell.bottom() - other.cell.bottom();
            if (std::abs(lower.value()) < near)
                (lower > Mm() ? other : one).cell.y += lower > Mm() ? lower : -lower;
        }
    }
}

void Finisher::partGroups(const Node& stack)
{
    for (std::size_t k = 1; k < stack.children.size(); ++k) {
        const GridRect& above = stack.children[k - 1].at;
        const Node& below = stack.children[k];
        const bool changes = m_rules.gapRows(below.first) > 0; // else the white is for calm alone
        if (changes && below.at.y > above.y + above.h && m_leaves.piece(below.first).item.group > 0)
            hairlineAbove(below.at);
    }
}

} // namespace

namespace {

// Where the sizes of cells left a picture too near to the largest, it stands smaller in its cell.
void keepRivalsBelow(int page, const PageSpec& spec, std::vector<Placement>& items)
{
    double largest = 0;
    for (const Placement& one : items)
        if (one.at.page == page)
            largest = std::max(largest, one.picture.areaMm2());
    bool isFirst = true;
    for (Placement& one : items) {
        if (one.at.page != page || one.picture.isEmpty())
            continue;
        const double area = one.picture.areaMm2();
        if (isFirst && area >= largest - kTouch) {
            isFirst = false; // the one that leads
            continue;
        }
        const double most = largest / kDominance * (1 - kTouch);
        if (area <= most)
            continue;
        const double scale = std::sqrt(most / area);
        one.cell.height -= one.picture.height * (1 - scale);
        one.picture.width = one.picture.width * scale;
        one.picture.height = one.picture.height * scale;
        one.ppi /= scale;
        if (!one.mat.isEmpty())
            one.mat = one.picture.grown(kMatBorder * spec.gutter);
    }
}

} // namespace

void finishPage(
    const PagePlan& plan, int page, const ColumnSystem& system, LeafTable& leaves, Arrangement& out)
{
    const CostTerms before = out.cost;
    Finisher finisher(page, system, leaves, out);
    for (const Node& tree : plan.trees)
        finisher.walk(tree);
    for (const GridRect& group : plan.parted)
        finisher.hairlineAbove(group);
    keepRivalsBelow(page, leaves.page(), out.items);
    // What no piece pays for is white: the foot of the page and empty parts around pins.
    out.cost.white += plan.cost - (out.cost.total() - before.total());
}

Placement placePinned(int piece, const GridRect& at, LeafTable& leaves)
{
    Arrangement nothing;
    const ColumnSystem none;
    const Finisher finisher(at.page, none, leaves, nothing);
    LeafFit fit = leaves.fit(piece, at.x, at.w, at.h);
    const Piece& what = leaves.piece(piece);
    if (!fit.possible && what.isPicture()) {
        const RectMm cell = leaves.page().cell(at);
        const double border = what.isSample() ? kMatBorder * leaves.page().gutter.value() : 0;
        const SizePx size = what.item.picture->size;
        const double width = std::max(1.0, cell.width.value() - 2 * border);
        const double height = std::max(1.0, cell.height.value() - 2 * border - fit.textHeight);
        const double aspect = what.isSample() ? size.aspect() : width / height;
        fit.pictureWidth = std::min(width, height * aspect);
        fit.pictureHeight = fit.pictureWidth / aspect;
        fit.keep = std::min(aspect / size.aspect(), size.aspect() / aspect);
        fit.ppi = (aspect < size.aspect() ? size.height * aspect : size.width)
            / (fit.pictureWidth / kMmPerInch);
    }
    return finisher.placed(piece, at, fit);
}

} // namespace wainscot::engine
