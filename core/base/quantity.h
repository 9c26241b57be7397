// Lengths that cannot be mixed up: millimetres (model and layout), points (type), device pixels.
#pragma once

#include <compare>

namespace wainscot {

// A number with a kind. Same kinds add and compare; another kind does not compile.
template <class Kind> class Quantity {
public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(double value)
        : m_value(value)
    {
    }

    [[nodiscard]] constexpr double value() const { return m_value; }

    constexpr Quantity& operator+=(Quantity other)
    {
        m_value += other.m_value;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other)
    {
        m_value -= other.m_value;
        return *this;
    }
    constexpr Quantity& operator*=(double factor)
    {
        m_value *= factor;
        return *this;
    }

    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }
    friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.m_value); }
    friend constexpr Quantity operator*(Quantity a, double factor) { return a *= factor; }
    friend constexpr Quantity operator*(double factor, Quantity a) { return a *= factor; }
    friend constexpr Quantity operator/(Quantity a, double divisor)
    {
        return Quantity(a.m_value / divisor);
    }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.m_value / b.m_value; }
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes <=> for a comparison with 0
    friend constexpr auto operator<=>(Quantity, Quantity) = default;

private:
    double m_value = 0;
};

using Mm = Quantity<struct MillimetreKind>; // everything on a panel or a wall
using Pt = Quantity<struct PointKind>; // sizes of type, 1/72 inch
using Px = Quantity<struct PixelKind>; // only at a device or in a picture
using DotsPerInch = Quantity<struct DotsPerInchKind>;

inline constexpr double kMmPerInch = 25.4;
inline constexpr double kPtPerInch = 72.0;

[[nodiscard]] constexpr Pt toPt(Mm length)
{
    return Pt(length.value() * kPtPerInch / kMmPerInch);
}
[[nodiscard]] constexpr Mm toMm(Pt length)
{
    return Mm(length.value() * kMmPerInch / kPtPerInch);
}
[[nodiscard]] constexpr Px toPx(Mm length, DotsPerInch resolution)
{
    return Px(length.value() / kMmPerInch * resolution.value());
}
[[nodiscard]] constexpr Mm inches(double count)
{
    return Mm(count * kMmPerInch);
}

namespace literals {
constexpr Mm operator""_mm(long double value)
{
    return Mm(static_cast<double>(value));
}
constexpr Mm operator""_mm(unsigned long long value)
{
    return Mm(static_cast<double>(value));
}
constexpr Pt operator""_pt(long double value)
{
    return Pt(static_cast<double>(value));
}
constexpr Pt operator""_pt(unsigned long long value)
{
    return Pt(static_cast<double>(value));
}
} // namespace literals

} // namespace wainscot
