#include "app/jobs/display_past.h"

#include <algorithm>

namespace wainscot {

namespace {

template <class T> bool sameValues(std::vector<const T*> one, std::vector<const T*> other)
{
    return std::equal(one.begin(), one.end(), other.begin(), other.end(), [](auto* a, auto* b) {
        return *a == *b;
    });
}

bool looksTheSame(const Book& one, const Book& other, DisplayId id)
{
    const Display* display = one.displays.find(id);
    const Display* same = other.displays.find(id);
    if (display == nullptr || same == nullptr || !(*display == *same))
        return false;
    const std::vector<const Panel*> panels = panelsOf(one, id);
    return sameValues(panels, panelsOf(other, id))
        && std::all_of(panels.begin(), panels.end(), [&](const Panel* panel) {
               return sameValues(piecesOf(one, panel->id), piecesOf(other, panel->id));
           });
}

} // namespace

Result<std::vector<DisplayThen>> DisplayPastJob::run(const Book& now, const JobRun& run) const
{
    const auto store = BookStore::open(folder, Access::ReadOnly);
    if (!store)
        return store.error();
    std::vector<DisplayThen> past;
    const QList<EarlierState> states = (*store)->earlierStates();
    for (int i = 0; i < states.size() && int(past.size()) < most; ++i) {
        if (run.cancelled())
            return stoppedByPerson();
        auto book = (*store)->earlierState(states.at(i).name);
        if (!book || panelsOf(*book, display).empty())
            continue;
        const Book& after = past.empty() ? now : *past.back().book;
        if (!looksTheSame(*book, after, display))
            past.push_back({states.at(i), std::make_shared<const Book>(std::move(*book))});
    }
    return past;
}

} // namespace wainscot
