// Request in, arrangement out: what the arrangement engine is asked and what it answers.
// No fonts and no painter here; text is measured through TextMeasurer.
#pragma once

#include "core/base/geometry.h"

#include <atomic>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace wainscot::engine {

using ItemId = std::int64_t;

enum class Kind {
    Title,
    Question,
    Context,
    Label,
    Photo,
    Work,
    Quote,
    Interpretation,
    NextStep,
    Invitation,
    Credits,
};

// Cells of the grid: columns from the left, row units from the top.
struct GridRect {
    int page = 0;
    int x = 0;
    int y = 0;
    int w = 0;
    int h = 0;
    friend bool operator==(const GridRect&, const GridRect&) = default;
};

// How an item's text (a picture's caption) comes out at a width.
struct TextMetrics {
    Mm height; // cap line of the first line to last baseline, paddings included; 0 = no text
    Mm usedWidth; // of the longest line
    int lines = 0;
    bool fits = true; // false: a word is wider than the width
};

struct TextSpec {
    double minChars = 14; // characters a line: below and above, it reads badly
    double maxChars = 50;
    Mm meanChar; // mean width of a character
    Mm lead; // baseline to baseline
    Mm captionGap; // between a picture and its caption
    bool tinted = false;
    int words = 0; // of the text itself, name and heading aside; 0 = unknown, judged by its length
};

class TextMeasurer {
public:
    TextMeasurer() = default;
    TextMeasurer(const TextMeasurer&) = delete;
    TextMeasurer& operator=(const TextMeasurer&) = delete;
    virtual ~TextMeasurer() = default;
    // REQUIRES: pure and thread-safe; the same answer for the same question.
    [[nodiscard]] virtual TextMetrics measure(ItemId item, Mm width) const = 0;
    [[nodiscard]] virtual TextSpec spec(ItemId item) const = 0;
};

struct PictureShape {
    SizePx size; // upright
    double keepWidth = 0.7; // least share of the width a crop must keep
    double keepHeight = 0.7;
};

// Where a piece stands in a cell that is higher than the piece.
enum class Stand {
    Top,
    Foot, // bottom-aligned with what stands beside it
    PageFoot, // the same, and the page is filled down to its last row
};

// What a plan or a teacher asks for one item. Zero or -1 = nothing asked.
struct Wish {
    int minColumns = 0; // hard; 0 = the engine's own limits
    int maxColumns = 0; // hard
    int blockColumns = 0; // hard: the item's whole group is at most so wide
    int columns = 0; // soft: the width aimed at
    int firstColumn = -1; // hard: the cell begins at this column
    int rows = 0; // soft: the height aimed at
    bool exactRows = false; // `rows` is hard
    int rowsAbove = 0; // hard: whole rows of white above the piece, inside its cell
    int pictureColumns = 0; // hard: a picture is at most so wide in its cell; 0 = as the cell
    bool lastInColumn = false; // stands at the foot: no more than a gutter below it
    bool even = false; // soft: texts of a column share out their white evenly
    double area = 0; // soft: share of the page a picture aims at, 0..1
    Stand stand = Stand::Top;
    int level = 0; // > 0: texts side by side with the same number end on one baseline
    double scale = 1; // of a picture's area, against what it would have without the wish
    bool bandBefore = false; // hard: a cut across the whole page lies before it
    friend bool operator==(const Wish&, const Wish&) = default;
};

struct Item {
    ItemId id = 0;
    Kind kind = Kind::Quote;
    std::optional<PictureShape> picture;
    int importance = 1; // 1..3; 3 = dominant
    int group = 0; // > 0: items with the same number are one unbreakable block
    bool fullWidth = false;
    bool breakBefore = false; // must begin a page
    std::optional<GridRect> pinned;
    std::optional<RectMm> pinnedAt; // instead: its exact place, off the grid; page as in `pinned`
    std::optional<GridRect> previous; // where it was; moving costs something
    bool optional = false; // left out before any other wish is dropped
    bool fromRight = false; // its lines have their edge at the right
    int side = 0; // of two languages side by side: 1 or 2; 0 = neither
    Wish wish;
    Mm indent; // kept free where its lines begin unless that is at the margin (hanging marks)
    [[nodiscard]] bool isPinned() const { return pinned || pinnedAt; }
};

struct PageSpec {
    SizeMm size;
    Mm margin;
    Mm gutter;
    Mm rowUnit;
    int columns = 12;
    int rows = 0;
    double minPpi = 150;
    [[nodiscard]] Mm width(int columnCount) const;
    [[nodiscard]] Mm height(int rowCount) const;
    [[nodiscard]] RectMm cell(const GridRect& at) const;
};

// Text is drawn from the top left of `cell`; a caption 0 mm + captionGap below `picture`.
struct Placement {
    ItemId id = 0;
    GridRect at; // the cell on the grid, white included
    RectMm cell; // the piece itself: text hugged (indent taken off), tint hugged to whole rows
    RectMm picture; // what shows of the picture; empty for text
    RectMm mat; // tinted ground that hugs a work sample; empty for everything else
    double keep = 1; // share of the picture that shows
    double ppi = 0;
};

// A hairline that parts two groups one above the other.
struct GroupChange {
    int page = 0;
    Mm x;
    Mm y; // 0.65 row units above the first line of the new group
    Mm width;
    friend bool operator==(const GroupChange&, const GroupChange&) = default;
};

// What the arrangement costs, in 1/1024 of a cost unit, by reason.
struct CostTerms {
    std::int64_t crop = 0;
    std::int64_t white = 0;
    std::int64_t size = 0;
    std::int64_t measure = 0;
    std::int64_t reading = 0;
    std::int64_t alignment = 0;
    std::int64_t stability = 0;
    std::int64_t likeness = 0; // standing as in an arrangement already shown (alternatives.h)
    [[nodiscard]] std::int64_t total() const
    {
        return crop + white + size + measure + reading + alignment + stability + likeness;
    }
    CostTerms& operator+=(const CostTerms& more);
};

// What a template asked for and did not get, and why.
enum class WishAbout {
    Plan, // all of it: bands, places, order
    Widths, // of the title and the large picture
    Places, // the columns at which pieces begin
    Spans, // how many columns pieces are wide
    FixedPlaces, // pieces that were to stay exactly where they were
    LargePicture, // comes out much smaller than wished for
    OptionalPieces, // left out
};
enum class WishReason {
    NoSuchPlan,
    NotTwelveColumns,
    SeveralPages,
    TooManyGroups, // `most` and `here` say how many
    NoPlace, // for some of the pieces
    NoRoom, // the pieces do not fit so
    BadPage, // they would fit, with too much cropped or left white
};
struct DroppedWish {
    WishAbout what = WishAbout::Plan;
    WishReason why = WishReason::NoRoom;
    std::string plan; // its name
    int most = 0;
    int here = 0;
    std::vector<ItemId> items; // that it is about, where that is not all
    friend bool operator==(const DroppedWish&, const DroppedWish&) = default;
};

// A wish for a piece's size that had no effect.
struct UnmetWish {
    enum class Why {
        TextKeepsItsSize, // text has the size that can be read from the reading distance
        Pinned, // a pinned piece keeps its size
        NoRoom, // with it the rest does not fit, or the picture has not the pixels
    };
    ItemId id = 0;
    Why why = Why::NoRoom;
    friend bool operator==(const UnmetWish&, const UnmetWish&) = default;
};

struct Arrangement {
    std::vector<Placement> items; // reading order
    int pages = 0;
    std::string columnSystem;
    CostTerms cost;
    int orderInversions = 0; // pairs a row-first reader would meet the wrong way round
    std::vector<GroupChange> groupChanges;
    std::vector<DroppedWish> droppedWishes;
    std::vector<ItemId> leftOut; // optional items there was no room for
    std::vector<UnmetWish> unmetWishes; // for sizes of pieces
    bool fallback = false; // no straight cuts part the pins: good, but not the proven best
};

enum class Obstacle {
    WordTooWide,
    PictureTooFewPixels,
    TooMuchForPages,
    PinsOverlap,
    PinsNotSliceable,
    Cancelled,
};

// Why there is no arrangement, for which items, and how much room is missing.
struct Failure {
    Obstacle what = Obstacle::TooMuchForPages;
    std::vector<ItemId> items;
    double missingMm2 = 0;
};

using Outcome = std::variant<Arrangement, Failure>;

// One place of a teacher's own template. Shares as in core/model/panel_template.h.
struct FormPlace {
    Kind kind = Kind::Quote;
    int group = 0;
    int column = -1; // -1 = anywhere
    int columns = 0; // 0 = any
    double rows = 0; // share of the page's rows
    double area = 0; // share of the panel
    bool dominant = false;
    bool optional = false;
    bool fixed = false;
    double top = 0; // share of the page's rows
};
struct Form {
    std::string name;
    std::vector<FormPlace> places; // in reading order
};

struct Request {
    std::vector<Item> items; // reading order
    PageSpec page;
    std::optional<int> pages; // nothing = as many as it takes
    std::string plan; // name of a template of plan.h; empty = free
    std::optional<Form> form; // a teacher's own template; goes before `plan`
    const std::atomic<bool>* cancel = nullptr;
    // Told a first arrangement (arrangeQuickly) before the best is sought, where there is one; may
    // be empty. Called at most once, from the thread that arranges.
    std::function<void(const Arrangement&)> onFirst;
};

// Something to show at about a tenth of the work: the cheapest of one coarse column system, free of
// templates and not refined. As whole and orderly as the best, only plainer. Nothing = look at what
// arrange() says.
[[nodiscard]] std::optional<Arrangement> arrangeQuickly(
    const Request& request, const TextMeasurer& text);

// The best arrangement, exactly; the same on every machine.
[[nodiscard]] Outcome arrange(const Request& request, const TextMeasurer& text);

} // namespace wainscot::engine
