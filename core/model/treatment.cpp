#include "core/model/treatment.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr double kShortestSide = 0.05; // of the picture's own

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
    const std::optional<Cover> cover = coverFrom(name);
    const std::vector<double> n = numbersFrom(rest, 4);
    if (!cover || n.empty())
        return false;
    treatment.covered.push_back({{n[0], n[1], n[2], n[3]}, *cover});
    return true;
}

double length(PointFraction a, PointFraction b, SizePx upright)
{
    return std::hypot((b.x - a.x) * upright.width, (b.y - a.y) * upright.height);
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
        // Clockwise with y downwards: every turn is to the right.
        const double turn = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
        if (turn < 1e-4 || length(a, b, upright) < least)
            return false;
    }
    return true;
}

SizePx straightenedSize(const Corners& corners, SizePx upright)
{
    const double width =
        std::max(length(corners[0], corners[1], upright), length(corners[3], corners[2], upright));
    const double height =
        std::max(length(corners[0], corners[3], upright), length(corners[1], corners[2], upright));
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
        steps << nameOf(covered.cover) + QLatin1Char(' ') + numbers({r.x, r.y, r.width, r.height});
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
