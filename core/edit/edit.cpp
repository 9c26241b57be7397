#include "core/edit/edit.h"

#include "core/model/tables.h"

#include <algorithm>

namespace wainscot {

namespace {

template <class T> void swapIn(Book& book, decltype(T::id) id, const std::optional<T>& value)
{
    if (value)
        tableOf<T>(book).put(*value);
    else
        tableOf<T>(book).remove(id);
}

struct ApplyTo {
    Book& book;
    void operator()(const InfoChange& change) const { book.info = change.after; }
    template <class T> void operator()(const ValueChange<T>& change) const
    {
        swapIn<T>(book, change.id, change.after);
    }
};

struct RevertIn {
    Book& book;
    void operator()(const InfoChange& change) const { book.info = change.before; }
    template <class T> void operator()(const ValueChange<T>& change) const
    {
        swapIn<T>(book, change.id, change.before);
    }
};

struct FitsTo {
    const Book& book;
    bool operator()(const InfoChange& change) const { return book.info == change.before; }
    template <class T> bool operator()(const ValueChange<T>& change) const
    {
        const T* now = tableOf<T>(book).find(change.id);
        return change.before ? now && *now == *change.before : now == nullptr;
    }
};

struct NumberOf {
    std::int64_t operator()(const InfoChange& /*unused*/) const { return 0; }
    template <class T> std::int64_t operator()(const ValueChange<T>& change) const
    {
        return change.id.number();
    }
};

std::pair<std::size_t, std::int64_t> placeOf(const Change& change)
{
    return {change.index(), std::visit(NumberOf{}, change)};
}

} // namespace

bool changesNothing(const Change& change)
{
    return std::visit([](const auto& value) { return value.before == value.after; }, change);
}

void apply(const Edit& edit, Book& book)
{
    for (const Change& change : edit.changes)
        std::visit(ApplyTo{book}, change);
}

void revert(const Edit& edit, Book& book)
{
    for (auto at = edit.changes.rbegin(); at != edit.changes.rend(); ++at)
        std::visit(RevertIn{book}, *at);
}

bool fits(const Edit& edit, const Book& book)
{
    return std::all_of(edit.changes.begin(), edit.changes.end(), [&](const Change& change) {
        return std::visit(FitsTo{book}, change);
    });
}

void merge(Edit& earlier, const Edit& later)
{
    std::map<std::pair<std::size_t, std::int64_t>, std::size_t> places;
    for (std::size_t i = 0; i < earlier.changes.size(); ++i)
        places.emplace(placeOf(earlier.changes[i]), i);
    for (const Change& change : later.changes) {
        const auto [at, isNew] = places.emplace(placeOf(change), earlier.changes.size());
        if (isNew) {
            earlier.changes.push_back(change);
            continue;
        }
        std::visit(
            [&](auto& first) {
                using Kind = std::decay_t<decltype(first)>;
                first.after = std::get<Kind>(change).after;
            },
            earlier.changes[at->second]);
    }
    std::erase_if(earlier.changes, changesNothing);
}

} // namespace wainscot
