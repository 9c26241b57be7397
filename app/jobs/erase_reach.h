// What of a book is one child's own, so that it goes when the child is erased.
#pragma once

#include "core/model/book.h"

#include <map>

namespace wainscot {

// Pictures that stay for the other children in them, as they will be then.
using KeptPictures = std::map<PictureId, Picture>;

class EraseReach {
public:
    EraseReach(const Book& book, ChildId child, const KeptPictures& kept);

    [[nodiscard]] ChildId child() const { return m_child; }
    [[nodiscard]] const KeptPictures& kept() const { return m_kept; }

    [[nodiscard]] bool has(const Child& child) const { return child.id == m_child; }
    [[nodiscard]] bool has(const Quote& quote) const { return quote.child == m_child; }
    [[nodiscard]] bool has(const NoAnswer& missing) const { return missing.child == m_child; }
    [[nodiscard]] bool has(const PermissionRecord& one) const { return one.child == m_child; }
    [[nodiscard]] bool has(const Picture& picture) const;
    [[nodiscard]] bool has(QuoteId id) const;
    [[nodiscard]] bool has(PictureId id) const;
    [[nodiscard]] bool has(const Piece& piece) const;
    [[nodiscard]] bool has(const Translation& translation) const;
    [[nodiscard]] bool has(const KeptPair& pair) const;
    template <class T> [[nodiscard]] bool has(const T& /*ofNobody*/) const { return false; }

private:
    const Book& m_book;
    ChildId m_child;
    const KeptPictures& m_kept;
};

} // namespace wainscot
