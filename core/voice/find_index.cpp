#include "core/voice/find_index.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr qsizetype kMostTogether = 3;

// Runs of different length have different numbers.
std::uint64_t numberOf(QStringView letters)
{
    std::uint64_t number = 1;
    for (const QChar letter : letters)
        number = number << 16 | letter.unicode();
    return number;
}

// Drops from `places` what is not in `among`; both in order. A much longer list is jumped through.
void keepAmong(std::vector<FindIndex::Place>& places, const std::vector<FindIndex::Place>& among)
{
    constexpr std::size_t kMuchLonger = 16;
    const bool jumps = among.size() > kMuchLonger * places.size();
    auto from = among.begin();
    std::erase_if(places, [&](FindIndex::Place place) {
        if (jumps)
            from = std::lower_bound(from, among.end(), place);
        while (from != among.end() && *from < place)
            ++from;
        return from == among.end() || *from != place;
    });
}

} // namespace

void FindIndex::note(std::uint64_t letters, Place place)
{
    Places& places = m_places[letters];
    if (places.empty() || places.back() != place)
        places.push_back(place);
}

FindIndex::Place FindIndex::add(const QString& text)
{
    const auto place = Place(m_folded.size());
    const QString folded = foldedForFind(text);
    for (qsizetype i = 0; i < folded.size(); ++i) {
        for (qsizetype length = 1; length <= std::min(kMostTogether, folded.size() - i); ++length)
            note(numberOf(QStringView(folded).mid(i, length)), place);
    }
    m_folded.push_back(folded);
    return place;
}

void FindIndex::remove(Place place)
{
    m_folded[place].clear();
    ++m_removed;
}

void FindIndex::clear()
{
    m_folded.clear();
    m_places.clear();
    m_removed = 0;
}

std::vector<const FindIndex::Places*> FindIndex::listsOf(const FindQuery& query) const
{
    std::vector<const Places*> lists;
    for (const QString& part : query.parts()) {
        const qsizetype length = std::min(kMostTogether, part.size());
        for (qsizetype i = 0; i + length <= part.size(); ++i) {
            const auto at = m_places.find(numberOf(QStringView(part).mid(i, length)));
            lists.push_back(at == m_places.end() ? nullptr : &at->second);
        }
    }
    return lists;
}

std::vector<FindIndex::Place> FindIndex::find(const FindQuery& query) const
{
    std::vector<const Places*> lists = listsOf(query);
    if (lists.empty() || std::find(lists.begin(), lists.end(), nullptr) != lists.end())
        return {};
    std::sort(lists.begin(), lists.end(), [](const Places* a, const Places* b) {
        return a->size() < b->size();
    });
    Places found = *lists.front();
    for (std::size_t i = 1; i < lists.size(); ++i)
        keepAmong(found, *lists[i]);
    // So many letters stand where they were noted; the runs of more might stand apart.
    const bool certain = std::all_of(query.parts().begin(),
        query.parts().end(),
        [](const QString& part) { return part.size() <= kMostTogether; });
    if (certain && m_removed == 0)
        return found;
    std::erase_if(found, [&](Place place) {
        const QString& folded = m_folded[place];
        return folded.isEmpty() || (!certain && !query.fitsFolded(folded));
    });
    return found;
}

} // namespace wainscot
