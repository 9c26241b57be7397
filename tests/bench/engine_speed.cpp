// CPU and memory of the exact engine by number of pieces and by columns, and growth.
// With WAINSCOT_ENGINE_REFERENCE set to a command, that program is run beside it on the same
// documents and grid (A1 portrait, 12 columns, 61 rows), and the ratios come out of one run:
//   COMMAND dump PIECES COLUMNS SEED GROUPED   prints the document, one piece a line: kind (0 title
//     .. 7 next step), group, pixels, keep limits, importance, full width, tinted, lead, mean
//     character, fewest and most characters a line; then for 1..12 columns the text's height, used
//     width, lines, and whether it fits
//   COMMAND run PIECES COLUMNS SEED GROUPED    prints its CPU in ms and its bytes
#include "layout/engine/search.h"
#include "layout/engine/targets.h"
#include "tests/bench/engine_tables.h"
#include "tests/support/engine_documents.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <map>
#include <memory>
#include <string>

namespace wainscot::engine {

namespace {

double cpuMs()
{
    return 1e3 * double(std::clock()) / CLOCKS_PER_SEC;
}

struct Measured {
    double ms = 0;
    double bytes = 0;
};

// Text measured by someone else: heights by item and by whole columns.
class Tabled : public TextMeasurer {
public:
    explicit Tabled(PageSpec page)
        : m_page(page)
    {
    }
    void add(ItemId item, TextSpec spec, std::array<TextMetrics, 12> metrics)
    {
        m_specs[item] = spec;
        m_metrics[item] = metrics;
    }
    [[nodiscard]] TextMetrics measure(ItemId item, Mm width) const override
    {
        int columns = 1;
        while (columns < 12 && m_page.width(columns + 1) <= width + Mm(1e-6))
            ++columns;
        return m_metrics.at(item)[std::size_t(columns - 1)];
    }
    [[nodiscard]] TextSpec spec(ItemId item) const override { return m_specs.at(item); }

private:
    PageSpec m_page;
    std::map<ItemId, TextSpec> m_specs;
    std::map<ItemId, std::array<TextMetrics, 12>> m_metrics;
};

// The page the reference numbers were taken on: A1 portrait with 61 rows.
PageSpec benchPage()
{
    PageSpec page = pageFor(Format::A1Portrait);
    page.margin = Mm(28);
    page.gutter = Mm(9);
    page.rows = 61;
    page.rowUnit = (page.size.height - 2 * page.margin + page.gutter) / page.rows;
    page.minPpi = 150;
    return page;
}

std::string argumentsFor(int count, int columns, bool grouped)
{
    return std::to_string(count) + " " + std::to_string(columns) + " 7 " + (grouped ? "1" : "0");
}

bool readLine(std::FILE* in, Item& item, Tabled& text)
{
    constexpr std::array kKinds = {Kind::Title,
        Kind::Question,
        Kind::Context,
        Kind::Photo,
        Kind::Work,
        Kind::Quote,
        Kind::Interpretation,
        Kind::NextStep};
    int kind = 0;
    int full = 0;
    int tinted = 0;
    double width = 0;
    double height = 0;
    double lead = 0;
    double meanChar = 0;
    PictureShape shape;
    TextSpec spec;
    if (std::fscanf(in,
            "%d %d %lf %lf %lf %lf %d %d %d %lf %lf %lf %lf",
            &kind,
            &item.group,
            &width,
            &height,
            &shape.keepWidth,
            &shape.keepHeight,
            &item.importance,
            &full,
            &tinted,
            &lead,
            &meanChar,
            &spec.minChars,
            &spec.maxChars)
        != 13)
        return false;
    item.kind = kKinds[std::size_t(kind)];
    item.fullWidth = full != 0;
    shape.size = {int(width), int(height)};
    if (width > 0)
        item.picture = shape;
    spec.lead = Mm(lead);
    spec.meanChar = Mm(meanChar);
    spec.captionGap = Mm(width > 0 ? 2.5 : 0);
    spec.tinted = tinted != 0;
    std::array<TextMetrics, 12> metrics;
    for (TextMetrics& one : metrics) {
        double used = 0;
        int fits = 0;
        if (std::fscanf(in, "%lf %lf %d %d", &height, &used, &one.lines, &fits) != 4)
            return false;
        one.height = Mm(height);
        one.usedWidth = Mm(used);
        one.fits = fits != 0;
    }
    text.add(item.id, spec, metrics);
    return true;
}

struct Case {
    Request request;
    std::unique_ptr<Document> document; // own documents
    std::unique_ptr<Tabled> table; // the reference's
    [[nodiscard]] const TextMeasurer& text() const
    {
        if (table)
            return *table;
        return document->text;
    }
};

Case caseFor(const char* command, int count, int columns, bool grouped)
{
    Case out;
    out.request.page = benchPage();
    if (command == nullptr) {
        auto document = makeDocument(7, count, Format::A1Portrait);
        out.request.items = document->request.items;
        if (!grouped)
            for (Item& item : out.request.items)
                item.group = 0;
        out.document = std::move(document);
        return out;
    }
    auto text = std::make_unique<Tabled>(out.request.page);
    const std::string line =
        std::string(command) + " dump " + argumentsFor(count, columns, grouped);
    if (std::FILE* in = popen(line.c_str(), "r")) {
        Item item;
        for (item.id = 1; readLine(in, item, *text);
             item = {}, item.id = ItemId(out.request.items.size()) + 1)
            out.request.items.push_back(item);
        pclose(in);
    }
    out.table = std::move(text);
    return out;
}

// Leaf costs, the table and the breaks of pages: everything one column system takes.
Measured measure(const Case& one, const std::vector<int>& cuts)
{
    const double start = cpuMs();
    TextMemo text(one.text());
    auto pieces = piecesOf(one.request.items, text);
    const int pages = pagesWanted(pieces, one.request.page, text);
    setTargets(pieces, one.request.page, pages, text);
    LeafTable leaves(one.request.page, pieces, text);
    RunTable table(leaves, columnSystem("bench", cuts));
    const Pagination found = cheapestPages(table, leaves, {}, {});
    if (found.pages.empty())
        std::printf("  (no arrangement)\n");
    return {cpuMs() - start, double(table.bytes())};
}

Measured reference(const char* command, int count, int columns, bool grouped)
{
    const std::string line = std::string(command) + " run " + argumentsFor(count, columns, grouped);
    Measured out;
    std::FILE* in = popen(line.c_str(), "r");
    if (in == nullptr || std::fscanf(in, "%lf %lf", &out.ms, &out.bytes) != 2)
        std::printf("  (the reference gave no numbers)\n");
    if (in != nullptr)
        pclose(in);
    return out;
}

constexpr double kMostShare = 0.5; // of the reference's CPU and memory
constexpr double kMostGrowth = 16; // from 20 to 80 pieces: quadratic
constexpr double kFirstShare = 0.1; // of the whole solve's CPU

struct Columns {
    int count;
    bool reference; // does the reference know it
    std::vector<int> cuts;
};

// One row; the two programs take turns, the least of several runs counts.
Measured benchRow(int count, const Columns& columns, bool grouped, const char* command, bool& met)
{
    if (!columns.reference || count > 80)
        command = nullptr;
    const Case one = caseFor(command, count, columns.count, grouped);
    Measured own{1e12, 0};
    Measured other{1e12, 0};
    for (int k = 0; k < (count <= 20 ? 5 : 3); ++k) {
        const Measured now = measure(one, columns.cuts);
        own = {std::min(own.ms, now.ms), now.bytes};
        if (command == nullptr)
            continue;
        const Measured theirs = reference(command, count, columns.count, grouped);
        other = {std::min(other.ms, theirs.ms), theirs.bytes};
    }
    std::printf("%2d columns, %-9s %3d pieces: %8.2f ms CPU, %6.2f MiB",
        columns.count,
        grouped ? "groups" : "no groups",
        count,
        own.ms,
        own.bytes / 1048576);
    if (command != nullptr) {
        const double cpu = own.ms / other.ms;
        const double memory = own.bytes / other.bytes;
        const bool here = cpu <= kMostShare && memory <= kMostShare;
        met = met && here;
        std::printf("; reference %8.2f ms, %6.2f MiB; ratio CPU %.3f, memory %.3f%s",
            other.ms,
            other.bytes / 1048576,
            cpu,
            memory,
            here ? "" : " MISSED");
    }
    std::printf("\n");
    std::fflush(stdout);
    return own;
}

bool benchColumns(
    const BenchOptions& options, const Columns& columns, bool grouped, const char* command)
{
    bool met = true;
    std::map<int, double> ms;
    for (const int count : options.quick ? std::vector{10, 20} : std::vector{10, 20, 40, 80, 160})
        ms[count] = benchRow(count, columns, grouped, command, met).ms;
    if (options.quick)
        return met;
    const double growth = ms[80] / ms[20];
    std::printf("   growth of CPU 10 to 20: %.1f, 20 to 40: %.1f, 40 to 80: %.1f, 80 to 160: %.1f;"
                " 20 to 80: %.1f (at most %.0f)%s\n",
        ms[20] / ms[10],
        ms[40] / ms[20],
        ms[80] / ms[40],
        ms[160] / ms[80],
        growth,
        kMostGrowth,
        growth <= kMostGrowth ? "" : " MISSED");
    return met && growth <= kMostGrowth;
}

// Whole requests: the first arrangement beside the best, over seeded documents.
bool benchFirst(int count, Format format)
{
    constexpr int kDocuments = 6;
    double first = 0;
    double whole = 0;
    double ratio = 0;
    int compared = 0;
    int found = 0;
    for (int seed = 1; seed <= kDocuments; ++seed) {
        const auto document = makeDocument(seed, count, format);
        double quick = 1e12;
        std::optional<Arrangement> plain;
        for (int k = 0; k < 3; ++k) {
            const double start = cpuMs();
            plain = arrangeQuickly(document->request, document->text);
            quick = std::min(quick, cpuMs() - start);
        }
        const double start = cpuMs();
        const Outcome outcome = arrange(document->request, document->text);
        whole += cpuMs() - start;
        first += quick;
        found += plain ? 1 : 0;
        const auto* best = std::get_if<Arrangement>(&outcome);
        if (plain && best != nullptr && best->pages == 1 && plain->pages == 1) {
            ratio += double(plain->cost.total()) / double(best->cost.total());
            ++compared;
        }
    }
    const bool met = found == kDocuments && first <= kFirstShare * whole;
    std::printf("first arrangement, %s, %2d pieces: %d of %d found, %6.2f of %7.2f ms CPU, "
                "share %.3f (at most %.2f)%s",
        format == Format::A1Landscape ? "landscape" : "portrait ",
        count,
        found,
        kDocuments,
        first / kDocuments,
        whole / kDocuments,
        first / whole,
        kFirstShare,
        met ? "" : " MISSED");
    if (compared > 0)
        std::printf("; cost %.2f of the best on %d single pages", ratio / compared, compared);
    std::printf("\n");
    std::fflush(stdout);
    return met;
}

} // namespace

bool printSpeedTable(const BenchOptions& options)
{
    const char* command = std::getenv("WAINSCOT_ENGINE_REFERENCE");
    const std::vector<Columns> systems = {{3, false, {4, 8}},
        {4, true, {3, 6, 9}},
        {7, false, {3, 4, 5, 6, 7, 8, 9}},
        {12, true, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}}};
    bool met = true;
    for (const bool grouped : {true, false})
        for (const Columns& columns : systems)
            met = benchColumns(options, columns, grouped, command) && met;
    for (const int count : options.quick ? std::vector{9, 20} : std::vector{9, 15, 20, 40, 80})
        for (const Format format : {Format::A1Landscape, Format::A1Portrait})
            met = benchFirst(count, format) && met;
    return met;
}

} // namespace wainscot::engine
