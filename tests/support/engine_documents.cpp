#include "tests/support/engine_documents.h"

#include <array>

namespace wainscot::engine {

namespace {

constexpr std::array kQuotes = {
    "We put a line so it can't go without us seeing.",
    "It got smaller but it didn't spill anywhere.",
    "My wet hand went off the wall. So the puddle went off the ground.",
    "It is up there and it is coming back, but not the same one.",
    "Into the ground. The ground was thirsty.",
    "A worm is a road that moves.",
    "If you whisper to the seed it grows sideways.",
    "The little wheel has to hurry because it is little.",
    "I drew the wind but you can only see what it moves.",
    "The bridge was strong when nobody was on it. Then Ada's truck came and it said no.",
    "Snow is rain that is holding hands.",
    "Why is my shadow late in the morning and early after lunch? I think it gets tired of lying "
    "down and then it gets up to look for me.",
};
constexpr std::array kCaptions = {
    "Freya drew the first line. Tomasz walked it twice to see that it was closed.",
    "String round the edge, then along the wall: nineteen of Noor's feet.",
    "Mei's wet hand on the wall, minute by minute.",
    "Ten o'clock. Nothing inside the yellow line.",
    "The second bridge, with a longer plank.",
    "",
};
constexpr std::array kDays = {"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"};
constexpr std::array kSizes = {SizePx{6000, 4000},
    SizePx{4608, 3456},
    SizePx{4000, 3000},
    SizePx{3456, 4608},
    SizePx{4000, 6000},
    SizePx{5200, 3900},
    SizePx{8000, 3000}};

constexpr double kVoice = 1.5625; // cap heights, body = 1
constexpr double kCaption = 0.64;
constexpr double kTitle = 3.0518;

// Builds items and their texts at one reading distance.
class Maker {
public:
    Maker(Document& document, int seed, double metres)
        : m_document(document)
        , m_dice(std::uint64_t(seed))
        , m_body(5.818 * metres)
    {
        document.readingDistance = metres;
    }

    Dice& dice() { return m_dice; }

    Item& text(Kind kind, std::string words, int group = 0)
    {
        FakeText out;
        const bool voice = kind == Kind::Quote;
        const bool title = kind == Kind::Title;
        const bool small = kind == Kind::Label || kind == Kind::Credits;
        out.cap = m_body * (voice ? kVoice : title ? kTitle : small ? kCaption : 1);
        out.lead = out.cap * (voice ? 1.82 : title ? 1.42 : 1.95);
        out.meanChar = out.cap * (voice || title ? 0.645 : 0.662) * (title ? 1.06 : 1);
        out.minChars = voice ? 14 : title ? 6 : small ? 4 : 26;
        out.maxChars = voice ? 32 : title ? 30 : small ? 52 : 50;
        if (voice)
            out.below = 0.78 * out.cap + kCaption * m_body;
        if (kind == Kind::Interpretation || kind == Kind::NextStep) {
            out.padding = 0.62 * 1.95 * m_body;
            out.below = (0.98 + kCaption) * m_body;
            out.minChars = 20;
        }
        out.words = std::move(words);
        return add(kind, out, group);
    }

    Item& picture(Kind kind, SizePx size, std::string caption, int group = 0)
    {
        FakeText out;
        out.cap = m_body * kCaption;
        out.lead = out.cap * 1.95;
        out.meanChar = out.cap * 0.662;
        out.minChars = 14;
        out.maxChars = 52;
        out.captionGap = 0.85 * out.cap;
        out.words = std::move(caption);
        Item& item = add(kind, out, group);
        PictureShape shape{size, 1, 1};
        if (kind == Kind::Photo) {
            shape.keepWidth = 0.7 + 0.15 * m_dice.share();
            shape.keepHeight = 0.7 + 0.15 * m_dice.share();
        }
        item.picture = shape;
        return item;
    }

    SizePx anySize() { return kSizes[std::size_t(m_dice.between(0, int(kSizes.size()) - 1))]; }
    std::string anyQuote()
    {
        return kQuotes[std::size_t(m_dice.between(0, int(kQuotes.size()) - 1))];
    }
    std::string anyCaption()
    {
        return kCaptions[std::size_t(m_dice.between(0, int(kCaptions.size()) - 1))];
    }

    void adults()
    {
        text(Kind::Interpretation,
            "The line was their own idea. It turned \"it is smaller\" into something they could "
            "show each other, and then test: one hand, one wall, one minute.");
        text(Kind::NextStep, "Two jugs on the sill, one with a lid. Which goes first?");
    }

private:
    Item& add(Kind kind, FakeText text, int group)
    {
        Item item;
        item.id = ItemId(m_document.request.items.size()) + 1;
        item.kind = kind;
        item.group = group;
        m_document.text.set(item.id, std::move(text));
        m_document.request.items.push_back(item);
        return m_document.request.items.back();
    }

    Document& m_document;
    Dice m_dice;
    double m_body; // cap height, 20 arcminutes at the reading distance
};

double distanceFor(Format format)
{
    return format == Format::A2Portrait || format == Format::A3Landscape ? 1.0 : 1.5;
}

} // namespace

PageSpec pageFor(Format format)
{
    PageSpec page;
    switch (format) {
    case Format::A1Landscape:
        page.size = {Mm(841), Mm(594)};
        break;
    case Format::A1Portrait:
        page.size = {Mm(594), Mm(841)};
        break;
    case Format::A2Portrait:
        page.size = {Mm(420), Mm(594)};
        break;
    case Format::A3Landscape:
        page.size = {Mm(420), Mm(297)};
        break;
    case Format::Poster24x36:
        page.size = {Mm(609.6), Mm(914.4)};
        break;
    }
    const Mm side = std::min(page.size.width, page.size.height);
    page.margin = side / 18;
    page.gutter = side / 42;
    const Mm room = page.size.height - 2 * page.margin + page.gutter;
    page.rows = int(std::lround(room / Mm(1.95 * 5.818 * distanceFor(format))));
    page.rowUnit = room / page.rows;
    page.minPpi = 120;
    return page;
}

std::unique_ptr<Document> makeDocument(int seed, int count, Format format)
{
    auto document = std::make_unique<Document>();
    document->request.page = pageFor(format);
    document->request.items.reserve(std::size_t(count) + 8);
    Maker maker(*document, seed, distanceFor(format));
    Dice& dice = maker.dice();
    maker.text(Kind::Title, "Where does the puddle go?");
    maker.text(Kind::Context,
        "It rained until ten. Five children found this puddle by the bicycle shed and asked to "
        "keep it. We had one rule: no stamping.");
    int left = count - 4;
    int dominant = dice.between(0, std::max(0, std::min(left, 8) / 3));
    for (int group = 1; left > 0; ++group) {
        const int size = std::min(left, dice.between(1, 4));
        const bool photoFirst = dice.between(0, 2) > 0;
        for (int k = 0; k < size; ++k, --left) {
            const int number = size > 1 ? group : 0;
            if ((k % 2 == 0) == photoFirst) {
                const bool sample = dice.between(0, 5) == 0;
                Item& item = maker.picture(
                    sample ? Kind::Work : Kind::Photo, maker.anySize(), maker.anyCaption(), number);
                if (dominant-- == 0)
                    item.importance = 3;
            } else {
                maker.text(Kind::Quote, maker.anyQuote(), number);
            }
        }
    }
    maker.adults();
    return document;
}

std::unique_ptr<Document> makeDays(int seed, int days, Format format, bool credits, bool adults)
{
    auto document = std::make_unique<Document>();
    document->request.page = pageFor(format);
    document->request.plan = "days";
    document->request.items.reserve(64);
    Maker maker(*document, seed, distanceFor(format));
    maker.text(Kind::Title, "Where does the puddle go?");
    maker.text(Kind::Context,
        "It rained until ten. Five children found this puddle by the bicycle shed and asked to "
        "keep it. We had one rule: no stamping.");
    if (credits)
        maker.text(Kind::Credits,
            "Room 2, 3-6 November. Words taken down as spoken and read back by M. Adeyemi.");
    maker
        .picture(Kind::Photo,
            {6000, 4000},
            "Wednesday. White was Monday's edge, blue was Tuesday's, pink is today's.")
        .importance = 3;
    const auto first = std::size_t(seed < 0 ? 0 : maker.dice().between(0, 3));
    for (int day = 0; day < days; ++day) {
        const auto at = std::size_t(day);
        maker.text(Kind::Label, kDays[at % kDays.size()], day + 1);
        maker.picture(Kind::Photo, {6000, 4000}, kCaptions[(first + at) % 4], day + 1);
        maker.text(Kind::Quote, kQuotes[(first + at) % 4], day + 1);
    }
    if (adults)
        maker.adults();
    return document;
}

std::unique_ptr<Document> makeDrawing(int seed, Format format, bool note)
{
    auto document = std::make_unique<Document>();
    document->request.page = pageFor(format);
    document->request.plan = "drawing";
    document->request.items.reserve(8);
    Maker maker(*document, seed, distanceFor(format));
    const bool upright = seed % 3 == 2;
    maker.picture(Kind::Work, upright ? SizePx{2480, 3508} : SizePx{3508, 2480}, "").importance = 3;
    maker
        .text(Kind::Quote,
            "This is the cloud. It is thirsty because it works all day. That is the straw. It is "
            "red "
            "so the water knows where to go. It says slurp, but very quiet, so you only hear it if "
            "you "
            "are small.")
        .indent = document->request.page.gutter;
    if (note)
        maker.text(Kind::Interpretation,
            "Ilse drew one line for the straw, looked at it, and drew a second one beside it: \"So "
            "there is a hole.\"");
    maker.text(Kind::Credits, "Told to M. Adeyemi while drawing, 4 November. Her exact words.");
    return document;
}

} // namespace wainscot::engine
