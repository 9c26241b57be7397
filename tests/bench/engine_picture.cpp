// Draws arrangements of seeded documents as boxes, to look at: engine_picture OUT.svg KIND SEED N
// [FORMAT [ways]]; KIND = free | days | drawing, FORMAT = 0..4 as in engine_documents.h; `ways`
// puts further arrangements beside the best.
#include "layout/engine/alternatives.h"
#include "tests/support/engine_documents.h"

#include <cstdio>
#include <cstdlib>
#include <string>

using namespace wainscot;
using namespace wainscot::engine;

namespace {

void rect(std::FILE* out, const RectMm& r, const char* fill)
{
    std::fprintf(out,
        "<rect x='%.2f' y='%.2f' width='%.2f' height='%.2f' fill='%s'/>\n",
        r.x.value(),
        r.y.value(),
        r.width.value(),
        r.height.value(),
        fill);
}

// Greedy lines like the fake measurer's.
void words(std::FILE* out,
    const FakeText& text,
    double x,
    double y,
    double width,
    const char* colour,
    double raise)
{
    const auto most = std::size_t((width - 2 * text.padding) / text.meanChar + 1e-9);
    std::string line;
    double base = y + text.padding + raise + text.cap;
    const auto flush = [&] {
        std::fprintf(out,
            "<text x='%.2f' y='%.2f' font-size='%.2f' fill='%s' font-family='DejaVu Sans "
            "Mono'>%s</text>\n",
            x + text.padding,
            base,
            text.meanChar / 0.602,
            colour,
            line.c_str());
        base += text.lead;
        line.clear();
    };
    for (std::size_t at = 0; at < text.words.size();) {
        const std::size_t end = std::min(text.words.find(' ', at), text.words.size());
        const std::string word = text.words.substr(at, end - at);
        if (!line.empty() && line.size() + 1 + word.size() > most)
            flush();
        line += (line.empty() ? "" : " ") + word;
        at = end + 1;
    }
    if (!line.empty())
        flush();
}

void draw(std::FILE* out, const Document& document, const Arrangement& arrangement, int page)
{
    const PageSpec& spec = document.request.page;
    rect(out, {Mm(0), Mm(0), spec.size.width, spec.size.height}, "#ffffff");
    for (int c = 0; c < spec.columns; ++c)
        rect(out, spec.cell({page, c, 0, 1, spec.rows}), "#f7f7fb");
    for (const GroupChange& change : arrangement.groupChanges)
        if (change.page == page)
            rect(out, {change.x, change.y, change.width, Mm(0.7)}, "#888888");
    for (const Placement& one : arrangement.items) {
        if (one.at.page != page)
            continue;
        const Item* item = nullptr;
        for (const Item& candidate : document.request.items)
            if (candidate.id == one.id)
                item = &candidate;
        const FakeText& text = document.text.text(one.id);
        if (!one.picture.isEmpty()) {
            if (!one.mat.isEmpty())
                rect(out, one.mat, "#e4dcea");
            rect(out, one.picture, item->importance >= 3 ? "#7d8f8a" : "#a9b5ae");
            words(out,
                text,
                one.cell.x.value(),
                one.picture.bottom().value() + text.captionGap,
                one.cell.width.value(),
                "#555555",
                0);
            continue;
        }
        if (text.padding > 0)
            rect(out, one.cell, item->kind == Kind::Interpretation ? "#e3edef" : "#f3ecd9");
        words(out,
            text,
            one.cell.x.value(),
            one.cell.y.value(),
            one.cell.width.value(),
            item->kind == Kind::Quote ? "#10384A" : "#333333",
            text.padding > 0 ? text.below : 0);
    }
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 5) {
        std::fprintf(
            stderr, "engine_picture OUT.svg free|days|drawing SEED N [FORMAT 0-4 [ways]]\n");
        return 2;
    }
    const std::string kind = argv[2];
    const int seed = std::atoi(argv[3]);
    const int count = std::atoi(argv[4]);
    const auto format = Format(argc > 5 ? std::atoi(argv[5]) : 0);
    const auto document = kind == "days" ? makeDays(seed, count, format)
        : kind == "drawing"              ? makeDrawing(seed, format)
                                         : makeDocument(seed, count, format);
    const bool ways = argc > 6;
    if (ways)
        document->request.pages = 1;
    const Outcome outcome = arrange(document->request, document->text);
    if (const auto* failed = std::get_if<Failure>(&outcome)) {
        std::printf("failure %d, %zu items, %.0f mm2 missing\n",
            int(failed->what),
            failed->items.size(),
            failed->missingMm2);
        return 1;
    }
    const auto& arrangement = std::get<Arrangement>(outcome);
    const PageSpec& spec = document->request.page;
    std::vector<Arrangement> shown = {arrangement};
    if (ways)
        for (Arrangement& other :
            alternatives(document->request, arrangement, document->text).found)
            shown.push_back(std::move(other));
    int pages = 0;
    for (const Arrangement& one : shown)
        pages += one.pages;
    const double width = (spec.size.width.value() + 20) * pages + 20;
    const double height = spec.size.height.value() + 40;
    std::FILE* out = std::fopen(argv[1], "w");
    if (out == nullptr)
        return 3;
    std::fprintf(out,
        "<svg xmlns='http://www.w3.org/2000/svg' width='%.0f' height='%.0f' viewBox='0 0 %.1f "
        "%.1f'><rect width='100%%' height='100%%' fill='#888888'/>\n",
        width,
        height,
        width,
        height);
    int column = 0;
    for (const Arrangement& one : shown)
        for (int page = 0; page < one.pages; ++page) {
            std::fprintf(out,
                "<g transform='translate(%.1f 20)'>\n",
                20 + column++ * (spec.size.width.value() + 20));
            draw(out, *document, one, page);
            std::fprintf(out, "</g>\n");
        }
    std::fprintf(out, "</svg>\n");
    std::fclose(out);
    for (const Arrangement& one : shown) {
        const CostTerms& cost = one.cost;
        std::printf(
            "%s, %d pages, inversions %d; cost %.2f: crop %.2f white %.2f size %.2f measure %.2f "
            "reading %.2f alignment %.2f\n",
            one.columnSystem.c_str(),
            one.pages,
            one.orderInversions,
            double(cost.total()) / 1024,
            double(cost.crop) / 1024,
            double(cost.white) / 1024,
            double(cost.size) / 1024,
            double(cost.measure) / 1024,
            double(cost.reading) / 1024,
            double(cost.alignment) / 1024);
    }
    for (const DroppedWish& wish : arrangement.droppedWishes)
        std::printf("dropped: wish %d, reason %d\n", int(wish.what), int(wish.why));
    return 0;
}
