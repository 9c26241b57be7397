#include "tests/support/engine_edits.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

std::unique_ptr<Document> documentFor(int seed)
{
    const auto format = Format(seed % 5);
    auto made = seed % 3 == 0 ? makeDays(seed, 2 + seed / 3 % 3, format)
                              : makeDocument(seed, 8 + seed % 12, format);
    made->request.pages = 1;
    return made;
}

// The `which`-th item that passes; null = there is none.
template <typename Test> Item* find(Request& request, int which, const Test& test)
{
    std::vector<Item*> found;
    for (Item& item : request.items)
        if (test(item))
            found.push_back(&item);
    return found.empty() ? nullptr : found[std::size_t(which) % found.size()];
}

bool isQuote(const Item& item)
{
    return item.kind == Kind::Quote;
}

void addQuote(Edited& edited, const Item& beside)
{
    Request& request = edited.document->request;
    Item quote = beside;
    quote.id = 1000;
    quote.breakBefore = false;
    FakeText text = edited.document->text.text(beside.id);
    text.words = "It was there and then the sun drank it.";
    edited.document->text.set(quote.id, text);
    const auto at = std::find_if(request.items.begin(), request.items.end(), [&](const Item& item) {
        return item.id == beside.id;
    });
    request.items.insert(at + 1, quote);
    edited.touched = {quote.id};
}

void lengthen(Edited& edited, const Item& item, const char* more)
{
    FakeText text = edited.document->text.text(item.id);
    text.words += more;
    edited.document->text.set(item.id, text);
    edited.touched = {item.id};
}

} // namespace

const char* nameOf(EditKind kind)
{
    switch (kind) {
    case EditKind::LongerCaption:
        return "longer caption";
    case EditKind::LongerQuote:
        return "longer quote";
    case EditKind::QuoteAdded:
        return "quote added";
    case EditKind::PhotoRemoved:
        return "photo removed";
    }
    return "";
}

std::optional<Edited> editedDocument(EditKind kind, int seed)
{
    Edited out{documentFor(seed), {}, {}};
    Request& request = out.document->request;
    const Outcome outcome = arrange(request, out.document->text);
    if (const auto* found = std::get_if<Arrangement>(&outcome))
        out.before = *found;
    else
        return std::nullopt;
    const auto isPhoto = [](const Item& item) {
        return item.kind == Kind::Photo && item.importance < 3;
    };
    Item* item = find(request, seed, [&](const Item& one) {
        const bool photo = kind == EditKind::LongerCaption || kind == EditKind::PhotoRemoved;
        return photo ? isPhoto(one) : isQuote(one);
    });
    if (item == nullptr)
        return std::nullopt;
    if (kind == EditKind::LongerCaption)
        lengthen(out, *item, " We looked at it twice, once before and once after lunch.");
    else if (kind == EditKind::LongerQuote)
        lengthen(out, *item, " And then it was not there any more, but I know where it is.");
    else if (kind == EditKind::QuoteAdded)
        addQuote(out, Item(*item));
    else
        std::erase_if(request.items, [id = item->id](const Item& one) { return one.id == id; });
    return out;
}

std::vector<Placement> untouched(const Edited& edited)
{
    std::vector<Placement> out;
    for (const Placement& place : edited.before.items) {
        const bool there = std::any_of(edited.document->request.items.begin(),
            edited.document->request.items.end(),
            [&](const Item& item) { return item.id == place.id; });
        const bool touched = std::find(edited.touched.begin(), edited.touched.end(), place.id)
            != edited.touched.end();
        if (there && !touched)
            out.push_back(place);
    }
    return out;
}

} // namespace wainscot::engine
