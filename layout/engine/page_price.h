// One measure for pages of the same pieces, whatever prices and wishes they were found with.
#pragma once

#include "layout/engine/leaf.h"

#include <memory>

namespace wainscot::engine {

// In units, from the pieces as `leaves` prices them, with the white at the page's foot; what a
// piece cannot pay there it does not.
[[nodiscard]] double costOn(LeafTable& leaves, const Arrangement& page);

class PagePrice {
public:
    // `request` is of one page; its plan, its wishes and where things were do not count.
    PagePrice(const Request& request, TextMemo& text);

    struct Price {
        double cost = 0; // standard prices
        double withFaults = 0; // and what the finished page shows to be wrong
    };
    [[nodiscard]] Price of(const Arrangement& page);
    [[nodiscard]] LeafTable& leaves() { return *m_leaves; }

private:
    std::unique_ptr<LeafTable> m_leaves;
    bool m_pinned = false; // faults of pages that a hand has begun are not the engine's
};

} // namespace wainscot::engine
