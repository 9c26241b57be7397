#include "tests/support/wall_quality.h"

#include "app/jobs/engine_request.h"
#include "layout/check/check.h"
#include "layout/engine/reading.h"
#include "layout/typeset/typesetter.h"
#include "tests/support/wall_boxes.h"
#include "tests/support/wall_texts.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace wainscot::walls {

namespace {

// Shares of a page that tests 15 and 16 allow (panel style 12).
constexpr double kLeastWhite = 0.50;
constexpr double kMostCoverage = 0.16;
constexpr double kMostTint = 0.08;
constexpr double kMostAdultWords = 1.35;
// Shares of the page that the leading picture has, and one that is alone.
constexpr double kLeastLead = 0.095; // a tenth, rounded
constexpr double kMostLead = 0.235;
constexpr double kMostAlone = 0.35;
constexpr double kMostImbalance = 0.10;

class PageMeasure {
public:
    PageMeasure(const Sheet& sheet, const Layout& layout, std::size_t page)
        : m_sheet(sheet)
        , m_layout(layout)
        , m_page(page)
        , m_places(layout.pages[page])
        , m_cleared(sheet.page(m_places))
        , m_list(typeset(m_cleared, sheet.style()))
        , m_facts(check::factsOf(m_cleared, sheet.style(), m_list))
        , m_boxes(boxesOf(m_facts))
    {
        for (const Finding& finding : check::checkPanel(m_facts))
            m_rules.insert(finding.rule);
    }

    PageQuality measure()
    {
        measurePictures();
        measurePlaces();
        judge();
        return std::move(m_out);
    }
    DisplayList takeList() { return std::move(m_list); }

private:
    bool clean(std::initializer_list<const char*> rules) const
    {
        return std::none_of(rules.begin(), rules.end(), [this](const char* rule) {
            return m_rules.count(QLatin1String(rule)) > 0;
        });
    }

    const engine::Item& item(PieceId piece) const
    {
        for (const engine::Item& one : m_sheet.request().items)
            if (one.id == piece.number())
                return one;
        qFatal("a piece nobody asked for");
    }

    void measurePictures()
    {
        std::vector<double> areas;
        const double least = leastPpi(m_sheet.style());
        for (const check::PictureFact& picture : m_facts.pictures) {
            areas.push_back(picture.place.areaMm2());
            const RectFraction& seen = picture.picture.visible;
            const engine::PictureShape& shape = *item(picture.piece).picture;
            if (picture.kind == PieceKind::Photo)
                m_out.cropLosses.push_back(1 - seen.width * seen.height);
            const double slip = 1e-4; // of the rounding to sixteenths of a point
            m_out.pastCropLimit +=
                seen.width < shape.keepWidth - slip || seen.height < shape.keepHeight - slip ? 1
                                                                                             : 0;
            m_out.belowPpi += picture.ppi() < least * 0.995 ? 1 : 0;
        }
        std::sort(areas.rbegin(), areas.rend());
        const SizeMm panel = m_sheet.style().grid.panel;
        m_out.lead = areas.empty() ? 0 : areas[0] / (panel.width.value() * panel.height.value());
        m_out.dominance = areas.size() < 2 ? 0 : areas[0] / areas[1];
        for (const ClearedPiece& piece : m_facts.pieces)
            m_out.longCaptions +=
                isPicture(piece.kind) && m_facts.linesOf(piece.id).size() > 2 ? 1 : 0;
    }

    void measurePlaces()
    {
        std::vector<engine::GridRect> cells;
        std::vector<int> groups;
        std::set<long> edges;
        for (const Place& place : m_places) {
            const auto mm = [](Mm length) { return int(std::lround(length.value() * 20)); };
            cells.push_back({0,
                mm(place.slot.x),
                mm(place.slot.y),
                mm(place.slot.width),
                mm(place.slot.height)});
            groups.push_back(item(place.piece).group);
            edges.insert(std::lround(place.cell.x.value() * 2));
        }
        m_out.inversions = engine::orderInversions(cells, groups);
        m_out.leftEdges = int(edges.size());
        m_out.holes = holesIn(m_boxes, m_sheet.style().grid);
        m_out.imbalance = imbalanceOf(m_boxes, m_sheet.style().grid.panel);
        const Touched touched = touchedBy(m_facts, m_boxes);
        m_out.white = 1 - touched.paper;
        m_out.coverage = touched.ink;
        m_out.tint = touched.tint;
        for (const char* rule : {"place.past_cell", "place.overlap", "place.outside"})
            m_out.textPastCell += clean({rule}) ? 0 : 1;
    }

    // The first page has a title; a further page is entered at its top left.
    bool hasEntry() const
    {
        if (!clean({"entry.ratio", "entry.clear"}))
            return false;
        if (m_page == 0)
            return clean({"entry.missing"});
        const RectMm& first = m_places.front().slot;
        const Grid& grid = m_sheet.style().grid;
        return first.x - grid.margin < Mm(0.2) && first.y - grid.margin < Mm(0.2);
    }

    bool oneGutter() const
    {
        if (m_layout.gridded && !clean({"place.grid"}))
            return false;
        return clean({"place.overlap"}) && slotsApart(m_places, m_sheet.style().grid);
    }

    bool leadsWell() const
    {
        if (m_facts.pictures.size() == 1)
            return m_out.lead <= kMostAlone;
        return m_out.lead >= kLeastLead && m_out.lead <= kMostLead;
    }

    bool wordsBalanced() const
    {
        int adult = 0;
        int child = 0;
        for (const ClearedPiece& piece : m_facts.pieces) {
            if (piece.kind == PieceKind::Quote)
                child += wordsIn(piece.text);
            else if (piece.kind == PieceKind::Context || piece.kind == PieceKind::Interpretation
                || piece.kind == PieceKind::NextStep)
                adult += wordsIn(piece.text);
        }
        return adult <= kMostAdultWords * child || adult == 0;
    }

    void judge()
    {
        auto& passed = m_out.passed;
        passed[1] = hasEntry();
        passed[2] = m_out.dominance == 0 || clean({"picture.dominant"});
        passed[5] = clean({"type.steps"});
        passed[7] = clean({"type.scale"});
        passed[8] = clean({"line.voice", "line.body", "line.caption"});
        passed[9] = clean({"quote.last_word", "quote.hyphen"});
        passed[11] = oneGutter();
        passed[12] = clean({"place.left_edges"});
        passed[13] = clean({"caption.distance"}) && captionsApart(m_facts, m_boxes);
        passed[14] = clean({"quote.apart"});
        m_out.marginsClear = marginsClear(m_facts);
        passed[15] = m_out.white >= kLeastWhite && m_out.marginsClear;
        passed[16] = m_out.coverage <= kMostCoverage && m_out.tint <= kMostTint;
        passed[19] = clean({"place.tint"});
        passed[20] = clean({"picture.work_whole", "picture.mat"});
        passed[21] = clean({"picture.must_stay"});
        passed[22] = wordsBalanced();
        passed[23] = m_out.inversions == 0;
        passed[32] = m_out.holes == 0;
        passed[33] = m_facts.pictures.empty() || leadsWell();
        passed[34] = m_out.longCaptions == 0;
        passed[35] = m_out.imbalance <= kMostImbalance;
        passed[26] = clean({"place.edge", "place.margin", "place.outside"});
    }

    const Sheet& m_sheet;
    const Layout& m_layout;
    std::size_t m_page;
    const std::vector<Place>& m_places;
    ClearedPanel m_cleared;
    DisplayList m_list;
    check::PanelFacts m_facts;
    std::vector<Box> m_boxes;
    std::set<QString> m_rules;
    PageQuality m_out;
};

// A group stands on one page, and no stranger inside its rectangle.
void countGroups(const Sheet& sheet, const Layout& layout, Quality& out)
{
    struct Spot {
        std::size_t page;
        RectMm box;
        bool split = false;
    };
    std::map<int, Spot> groups;
    for (PageQuality& page : out.pages)
        page.passed[31] = true;
    std::map<std::int64_t, int> groupOf;
    for (const engine::Item& item : sheet.request().items)
        groupOf[item.id] = item.group;
    for (std::size_t page = 0; page < layout.pages.size(); ++page)
        for (const Place& place : layout.pages[page]) {
            const int group = groupOf[place.piece.number()];
            if (group == 0)
                continue;
            const auto [at, isNew] = groups.try_emplace(group, Spot{page, place.slot});
            at->second.split = at->second.split || at->second.page != page;
            at->second.box = united(at->second.box, place.slot);
        }
    for (const auto& [group, spot] : groups) {
        const auto& places = layout.pages[spot.page];
        const bool stranger = std::any_of(places.begin(), places.end(), [&](const Place& place) {
            const RectMm shared = intersection(place.slot, spot.box);
            return groupOf[place.piece.number()] != group && shared.width > Mm(0.2)
                && shared.height > Mm(0.2);
        });
        ++out.groups;
        if (!spot.split && !stranger)
            continue;
        ++out.brokenGroups;
        out.pages[spot.page].passed[31] = false;
    }
}

// Among those with the fewest pages, the one that passes most tests.
Judged bestOf(const Sheet& sheet, const std::vector<Layout>& layouts)
{
    std::size_t fewest = 0;
    for (const Layout& layout : layouts)
        if (!layout.pages.empty() && (fewest == 0 || layout.pages.size() < fewest))
            fewest = layout.pages.size();
    Judged best;
    for (const Layout& layout : layouts) {
        if (layout.pages.empty() || layout.pages.size() > fewest)
            continue;
        Quality quality = qualityOf(sheet, layout);
        if (best.layout.pages.empty() || quality.testsPassed() > best.quality.testsPassed())
            best = {layout, std::move(quality)};
    }
    return best;
}

} // namespace

const std::vector<StyleTest>& styleTests()
{
    static const std::vector<StyleTest> tests = {
        {1, "one entry", From::Both, 1},
        {2, "one dominant picture", From::Typeset, 1},
        {5, "four sizes", From::Typeset, 1},
        {7, "never shrunk", From::Typeset, 1},
        {8, "measure", From::Typeset, 1},
        {9, "good rag", From::Typeset, 0},
        {11, "one gutter", From::Both, 1},
        {12, "few left edges", From::Typeset, 0.95},
        {13, "attached captions", From::Typeset, 1},
        {14, "quotes stand apart", From::Typeset, 1},
        {15, "white", From::Typeset, 0.95},
        {16, "ink", From::Typeset, 0.95},
        {19, "tint hugs", From::Typeset, 1},
        {20, "samples whole", From::Typeset, 1},
        {21, "crop safe", From::Typeset, 1},
        {22, "word balance", From::Places, 0.95},
        {23, "time order", From::Places, 1},
        {26, "edge", From::Typeset, 1},
        {31, "groups whole", From::Places, 1}, // 4: unbreakable blocks
        {32, "no hole", From::Typeset, 0}, // 11: none over 3 x 6 cells except at the foot
        {33, "leading size", From::Typeset, 0}, // 7: 10 to 23 % of many, up to 35 % alone
        {34, "short captions", From::Typeset, 0}, // 7: at most two lines
        {35, "balanced", From::Typeset, 0}, // quarters within a tenth
    };
    return tests;
}

bool Quality::passed(int test) const
{
    return !pages.empty() && std::all_of(pages.begin(), pages.end(), [&](const PageQuality& page) {
        return page.passed.at(test);
    });
}

int Quality::testsPassed() const
{
    int count = 0;
    for (const StyleTest& test : styleTests())
        count += passed(test.number) ? 1 : 0;
    return count;
}

Quality qualityOf(const Sheet& sheet, const Layout& layout, std::vector<DisplayList>* drawn)
{
    Quality out;
    for (std::size_t page = 0; page < layout.pages.size(); ++page) {
        PageMeasure measure(sheet, layout, page);
        out.pages.push_back(measure.measure());
        if (drawn != nullptr)
            drawn->push_back(measure.takeList());
    }
    countGroups(sheet, layout, out);
    return out;
}

Judged bestRows(const Sheet& sheet)
{
    constexpr int kHeights = 12;
    std::vector<Layout> layouts;
    const double page = sheet.style().grid.panel.height.value();
    for (int k = 0; k < kHeights; ++k)
        layouts.push_back(
            justifiedRows(sheet, Mm(page / 12 * std::pow(6.0, k / (kHeights - 1.0)))));
    return bestOf(sheet, layouts);
}

Judged bestMasonry(const Sheet& sheet)
{
    return bestOf(sheet, {masonry(sheet, 2), masonry(sheet, 3), masonry(sheet, 4)});
}

} // namespace wainscot::walls
