// Numbers that name one thing of one kind. A child's id is not a quote's id: mixing does not
// compile.
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace wainscot {

// Zero names nothing. A book hands out numbers once and never again, so undo may bring one back.
template <class Kind> class Id {
public:
    constexpr Id() = default;
    constexpr explicit Id(std::int64_t number)
        : m_number(number)
    {
    }
    [[nodiscard]] constexpr std::int64_t number() const { return m_number; }
    [[nodiscard]] constexpr bool isValid() const { return m_number > 0; }
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes <=> for a comparison with 0
    friend constexpr auto operator<=>(Id, Id) = default;

private:
    std::int64_t m_number = 0;
};

} // namespace wainscot

template <class Kind> struct std::hash<wainscot::Id<Kind>> {
    std::size_t operator()(wainscot::Id<Kind> id) const noexcept
    {
        return std::hash<std::int64_t>()(id.number());
    }
};
