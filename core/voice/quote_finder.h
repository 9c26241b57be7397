// Children's words of the whole book, found while one types.
#pragma once

#include "core/model/book.h"
#include "core/voice/find_index.h"

#include <map>

namespace wainscot {

// A quote is found by its words, by those first said, and by the child's name.
class QuoteFinder {
public:
    // To what the book holds; cheap when little has changed since the last time.
    void follow(const Book& book);
    // By id, the latest first.
    [[nodiscard]] std::vector<QuoteId> find(const QString& typed) const;

private:
    struct Known {
        QString text;
        FindIndex::Place place = 0;
    };
    FindIndex m_index;
    std::map<QuoteId, Known> m_known;
    std::vector<QuoteId> m_quotes; // by place
};

} // namespace wainscot
