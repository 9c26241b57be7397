#include "core/model/treatment.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr double kShortestSide = 0.05; // of the picture's own

constexpr QLatin1String kOval("-oval"); // behind the name of a cover

QString numbers(std::initializer_list<double> values)
{
    QStringList parts;
    for (const double value : values)
        parts << QString::number(value, 'g', 17);
    return parts.join(QLatin1Char(','));
}

// Exactly `count` finite numbers, or nothing.
std::vector<double> numbersFrom(const QString& text, std::size_t count)
{
    std::vector<double> values;
    for (const QString& part : text.split(QLatin1Char(','))) {
        bool isNumber = false;
        values.push_back(part.toDouble(&isNumber));
        if (!isNumber || !std::isfinite(values.back()))
            return {};
    }
    return values.size() == count ? values : std::vector<double>();
}

QString nameOf(Cover cover)
{
    switch (cover) {
    case Cover::Blur:
        return QStringLiteral("blur");
    case Cover::Mosaic:
        return QStringLiteral("mosaic");
    case Cover::Flat:
        break;
    }
    return QStringLiteral("flat");
}

std::optional<Cover> coverFrom(const QString& name)
{
    for (const Cover cover : {Cover::Blur, Cover::Mosaic, Cover::Flat}) {
        if (nameOf(cover) == name)
            return cover;
    }
    return std::nullopt;
}

bool addStep(Treatment& treatment, const QString& name, const QString& rest)
{
    if (name == QLatin1String("even") && rest.isEmpty()) {
        treatment.evenLight = true;
        return true;
    }
    if (name == QLatin1String("straight")) {
        const std::vector<double> n = numbersFrom(rest, 10);
        if (n.empty())
            return false;
        Straightening& straightening = treatment.straightening.emplace();
        straightening.from = {int(n[0]), int(n[1])};
        for (std::size_t i = 0; i < 4; ++i)
            straightening.corners.at(i) = {n[2 + 2 * i], n[3 + 2 * i]};
        return true;
    }
    const bool oval = name.endsWith(kOval);
    const std::optional<Cover> cover = coverFrom(oval ? name.chopped(kOval.size()) : name);
    const std::vector<double> n = numbersFrom(rest, 4);
    if (!cover || n.empty())
        return false;
    treatment.covered.push_back({{n[0], n[1], n[2], n[3]}, *cover, oval});
    return true;
}

double length(PointFraction a, PointFraction b, SizePx upright)
{
    return std::hypot((b.x - a.x) * upright.width, (b.y - a.y) * upright.height);
}

using Vector = std::array<double, 3>;

Vector cross(const Vector& a, const Vector& b)
{
    return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}

double dot(const Vector& a, const Vector& b)
{
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

// Width through height of the page between the corners, as Zhang and He work it out from two
// vanishing points; their points 1 to 4 go line by line. Nothing where no camera sees it so.
// Sides that are parallel in the picture do not tell the focal length; then a usual one is taken.
std::optional<double> shapeOf(const Corners& corners, SizePx upright)
{
    constexpr double kLeastFocus = 0.25; // of the picture's diagonal: wider than any lens
    constexpr double kMostFocus = 8;
    constexpr double kFarthest = 15; // diagonals: sides that meet beyond are as good as parallel
    constexpr double kUsualFocus = 0.6; // a phone's main camera; common practice, no source
    constexpr double kMostStretch = 2; // against the sides as they show
    const auto point = [&](std::size_t i) { // from the middle of the picture
        return Vector{
            (corners.at(i).x - 0.5) * upright.width, (corners.at(i).y - 0.5) * upright.height, 1};
    };
    const Vector m1 = point(0);
    const Vector m2 = point(1);
    const Vector m3 = point(3);
    const Vector m4 = point(2);
    const double k2 = dot(cross(m1, m4), m3) / dot(cross(m2, m4), m3);
    const double k3 = dot(cross(m1, m4), m2) / dot(cross(m3, m4), m2);
    const Vector across{k2 * m2[0] - m1[0], k2 * m2[1] - m1[1], k2 - 1};
    const Vector down{k3 * m3[0] - m1[0], k3 * m3[1] - m1[1], k3 - 1};
    const double diagonal = std::hypot(upright.width, upright.height);
    const double sides = std::sqrt(
        (across[0] * across[0] + across[1] * across[1]) / (down[0] * down[0] + down[1] * down[1]));
    const double told = -(across[0] * down[0] + across[1] * down[1]) / (across[2] * down[2]);
    double focus = std::sqrt(told) / diagonal;
    const auto meets = [diagonal](const Vector& n) {
        return std::hypot(n[0], n[1]) < std::abs(n[2]) * kFarthest * diagonal;
    };
    if (!meets(across) || !meets(down) || !(focus >= kLeastFocus && focus <= kMostFocus))
        focus = kUsualFocus;
    const double focusSquared = focus * focus * diagonal * diagonal;
    const auto squared = [focusSquared](const Vector& n) {
        return (n[0] * n[0] + n[1] * n[1]) / focusSquared + n[2] * n[2];
    };
    const double shape = std::sqrt(squared(across) / squared(down));
    if (!(shape <= sides * kMostStretch && shape >= sides / kMostStretch))
        return std::nullopt;
    return shape;
}

} // namespace

bool canStraighten(const Corners& corners, SizePx upright)
{
    if (upright.isEmpty())
        return false;
    const double least = kShortestSide * std::min(upright.width, upright.height);
    for (std::size_t i = 0; i < 4; ++i) {
        const PointFraction& a = corners.at(i);
        const PointFraction& b = corners.at((i + 1) % 4);
        const PointFraction& c = corners.at((i + 2) % 4);
        if (!(a.x >= 0 && a.x <= 1 && a.y >= 0 && a.y <= 1))
            return false;
        // Clockwise with y downwards: every turn is to the right.
        const double turn = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
        if (turn < 1e-4 || length(a, b, upright) < least)
            return false;
    }
    return true;
}

SizePx straightenedSize(const Corners& corners, SizePx upright)
{
    double width =
        std::max(length(corners[0], corners[1], upright), length(corners[3], corners[2], upright));
    double height =
        std::max(length(corners[0], corners[3], upright), length(corners[1], corners[2], upright));
    const double shape = shapeOf(corners, upright).value_or(width / height);
    width = std::max(width, height * shape);
    height = std::max(height, width / shape);
    return {std::max(1, int(std::lround(width))), std::max(1, int(std::lround(height)))};
}

PointFraction quarterTurned(PointFraction point)
{
    return {1 - point.y, point.x};
}

RectFraction quarterTurned(const RectFraction& rect)
{
    return {1 - rect.y - rect.height, rect.x, rect.height, rect.width};
}

Treatment quarterTurned(const Treatment& treatment)
{
    Treatment turned = treatment;
    for (CoveredRegion& covered : turned.covered)
        covered.region = quarterTurned(covered.region);
    if (turned.straightening) {
        Straightening& straightening = *turned.straightening;
        straightening.from = {straightening.from.height, straightening.from.width};
        // What was at the bottom left is now at the top left.
        const Corners before = straightening.corners;
        for (std::size_t i = 0; i < 4; ++i)
            straightening.corners.at(i) = quarterTurned(before.at((i + 3) % 4));
    }
    return turned;
}

int quarterTurned(int orientation)
{
    // EXIF 2.32, tag 274: 1 -> 6 -> 3 -> 8 turn, 2 -> 7 -> 4 -> 5 turn what is mirrored.
    static constexpr std::array kNext{6, 7, 8, 5, 2, 3, 4, 1};
    return kNext.at(std::size_t(std::clamp(orientation, 1, 8) - 1));
}

QString textOf(const Treatment& treatment)
{
    QStringList steps;
    for (const CoveredRegion& covered : treatment.covered) {
        const RectFraction& r = covered.region;
        const QString name = covered.oval ? nameOf(covered.cover) + kOval : nameOf(covered.cover);
        steps << name + QLatin1Char(' ') + numbers({r.x, r.y, r.width, r.height});
    }
    if (const auto& straight = treatment.straightening) {
        const Corners& c = straight->corners;
        steps << QStringLiteral("straight ")
                + numbers({double(straight->from.width),
                    double(straight->from.height),
                    c[0].x,
                    c[0].y,
                    c[1].x,
                    c[1].y,
                    c[2].x,
                    c[2].y,
                    c[3].x,
                    c[3].y});
    }
    if (treatment.evenLight)
        steps << QStringLiteral("even");
    return steps.join(QStringLiteral("; "));
}

std::optional<Treatment> treatmentFromText(const QString& text)
{
    Treatment treatment;
    if (text.isEmpty())
        return treatment;
    for (const QString& step : text.split(QStringLiteral("; "))) {
        const auto space = step.indexOf(QLatin1Char(' '));
        const QString name = space < 0 ? step : step.left(space);
        if (!addStep(treatment, name, space < 0 ? QString() : step.mid(space + 1)))
            return std::nullopt;
    }
    return treatment;
}

} // namespace wainscot
