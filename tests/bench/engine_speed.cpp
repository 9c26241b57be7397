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
    Measured best{1e12, 0};
    const int repeats = one.request.items.size() <= 20 ? 5 : 2;
    for (int k = 0; k < repeats; ++k) {
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
        best.ms = std::min(best.ms, cpuMs() - start);
        best.bytes = double(table.bytes());
    }
    return best;
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

void benchColumns(const BenchOptions& options,
    int columns,
    const std::vector<int>& cuts,
    bool grouped,
    const char* command)
{
    double at20 = 0;
    for (const int count : options.quick ? std::vector{10, 20} : std::vector{10, 20, 40, 80}) {
        const Case one = caseFor(command, count, columns, grouped);
        const Measured own = measure(one, cuts);
        std::printf("%2d columns, %s, %2zu pieces: %8.2f ms CPU, %7.2f MiB",
            columns,
            grouped ? "groups" : "no groups",
            one.request.items.size(),
            own.ms,
            own.bytes / 1048576);
        if (count == 20)
            at20 = own.ms;
        if (count == 80)
            std::printf(", growth from 20: %.1f (quadratic: 16)", own.ms / at20);
        if (command != nullptr) {
            const Measured other = reference(command, count, columns, grouped);
            std::printf("; reference %8.2f ms, %7.2f MiB; ratio CPU %.3f, memory %.3f",
                other.ms,
                other.bytes / 1048576,
                own.ms / other.ms,
                own.bytes / other.bytes);
        }
        std::printf("\n");
        std::fflush(stdout);
    }
}

} // namespace

bool printSpeedTable(const BenchOptions& options)
{
    const char* command = std::getenv("WAINSCOT_ENGINE_REFERENCE");
    for (const bool grouped : {true, false}) {
        benchColumns(options, 4, {3, 6, 9}, grouped, command);
        benchColumns(options, 12, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}, grouped, command);
    }
    return true;
}

} // namespace wainscot::engine
