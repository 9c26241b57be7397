// A node of the search: what is decided so far, and what follows from it. Private to core/voice.
#pragma once

#include "core/voice/cover_model.h"

namespace wainscot::cover {

enum class Fate : std::uint8_t { Open, In, Out };

class Node {
public:
    // Nothing decided. REQUIRES: the model outlives it
    explicit Node(const Model& model);

    void take(int item); // its rivals are out
    void drop(int item);

    // Decides what leaves no choice: items that no longer fit, the last item for a row. False when
    // nothing can come of it: a row without an item, or more area needed than there is.
    [[nodiscard]] bool propagate();

    [[nodiscard]] Fate fate(int item) const { return m_fate[std::size_t(item)]; }
    [[nodiscard]] bool isOpen(int item) const { return fate(item) == Fate::Open; }
    [[nodiscard]] bool isCovered(int row) const { return m_covered[std::size_t(row)] > 0; }
    [[nodiscard]] int openCount() const { return m_open; }
    [[nodiscard]] Amount value() const { return m_value; } // of what is in
    [[nodiscard]] Amount room() const { return m_model->capacity() - m_area; } // left
    [[nodiscard]] std::vector<int> taken() const;

private:
    [[nodiscard]] bool dropWhatDoesNotFit();
    [[nodiscard]] bool takeLastOfRows(bool& changed);
    [[nodiscard]] bool roomForUncovered() const;

    const Model* m_model;
    std::vector<Fate> m_fate;
    std::vector<int> m_covered; // by row: items that are in
    std::vector<int> m_left; // by row: items still open
    Amount m_area = 0;
    Amount m_value = 0;
    int m_open = 0;
};

} // namespace wainscot::cover
