// Finds the texts in which something stands, while it is being typed: which runs of three
// letters occur in which text is known beforehand, and only texts that have all of them are looked
// at. In memory only, so there is no file that would have to forget what is erased.
#pragma once

#include "core/voice/fold_words.h"

#include <cstdint>
#include <unordered_map>
#include <vector>

namespace wainscot {

class FindIndex {
public:
    using Place = std::uint32_t;

    // Places are given in turn, from 0.
    Place add(const QString& text);
    // The text is found no more.
    void remove(Place place);
    void clear();
    [[nodiscard]] std::size_t size() const { return m_folded.size(); } // with removed ones
    [[nodiscard]] std::size_t removed() const { return m_removed; }

    // The texts that fit, by place; for an empty query none.
    [[nodiscard]] std::vector<Place> find(const FindQuery& query) const;

private:
    using Places = std::vector<Place>;
    void note(std::uint64_t letters, Place place);
    [[nodiscard]] std::vector<const Places*> listsOf(const FindQuery& query) const;

    std::vector<QString> m_folded;
    std::unordered_map<std::uint64_t, Places> m_places; // by runs of one, two and three letters
    std::size_t m_removed = 0;
};

} // namespace wainscot
