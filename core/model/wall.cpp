#include "core/model/wall.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace wainscot {

namespace {

constexpr std::array kNames{
    "door", "window", "radiator", "socket", "switch", "exit_sign", "extinguisher", "alarm"};
constexpr std::array kViewers{
    QLatin1String("children"), QLatin1String("adults"), QLatin1String("both")};

QJsonArray numbers(const RectMm& rect)
{
    return {rect.x.value(), rect.y.value(), rect.width.value(), rect.height.value()};
}

std::optional<RectMm> rectFrom(const QJsonValue& value)
{
    const QJsonArray array = value.toArray();
    if (array.size() != 4
        || !std::all_of(array.begin(), array.end(), [](auto one) { return one.isDouble(); }))
        return std::nullopt;
    return RectMm{Mm(array[0].toDouble()),
        Mm(array[1].toDouble()),
        Mm(array[2].toDouble()),
        Mm(array[3].toDouble())};
}

Error damaged(const char* what)
{
    return {ErrorCode::Damaged, QStringLiteral("The wall"), QString::fromLatin1(what)};
}

bool isSide(Mm length)
{
    return length >= kLeastWallSide && length <= kGreatestWallSide;
}

Result<> readParts(const QJsonObject& object, Wall& wall)
{
    const QJsonArray fittings = object[u"fittings"].toArray();
    for (const auto& row : fittings) {
        const QJsonObject value = row.toObject();
        const auto kind = fittingKindFromName(value[u"kind"].toString());
        const auto place = rectFrom(value[u"place"]);
        if (!kind || !place)
            return damaged("a fitting makes no sense");
        wall.fittings.push_back({*kind, *place});
    }
    const QJsonArray panels = object[u"panels"].toArray();
    for (const auto& row : panels) {
        const QJsonObject value = row.toObject();
        const QJsonArray at = value[u"at"].toArray();
        const qint64 number = value[u"panel"].toInteger();
        if (number < 1 || at.size() != 2)
            return damaged("a panel's place makes no sense");
        wall.panels.push_back({PanelId(number), {Mm(at[0].toDouble()), Mm(at[1].toDouble())}});
    }
    return Done{};
}

} // namespace

QString nameOf(FittingKind kind)
{
    return QString::fromLatin1(kNames[static_cast<std::size_t>(kind)]);
}

std::optional<FittingKind> fittingKindFromName(const QString& name)
{
    for (const FittingKind kind : kFittingKinds) {
        if (nameOf(kind) == name)
            return kind;
    }
    return std::nullopt;
}

RectMm usualPlace(FittingKind kind, SizeMm wall)
{
    const auto onFloor = [&](double width, double height, double above = 0) {
        return RectMm{
            (wall.width - Mm(width)) / 2, wall.height - Mm(height + above), Mm(width), Mm(height)};
    };
    switch (kind) {
    case FittingKind::Door:
        return onFloor(950, 2050);
    case FittingKind::Window:
        return onFloor(1200, 1200, 900);
    case FittingKind::Radiator:
        return onFloor(1000, 600, 120);
    case FittingKind::Socket:
        return onFloor(150, 85, 300);
    case FittingKind::Switch:
        return onFloor(85, 150, 1050);
    case FittingKind::ExitSign:
        return onFloor(560, 190, 2200);
    case FittingKind::Extinguisher:
        return onFloor(170, 480, 350);
    case FittingKind::Alarm:
        return onFloor(90, 90, 1400);
    }
    return {};
}

QByteArray wallToJson(const Wall& wall)
{
    QJsonArray fittings;
    for (const Fitting& fitting : wall.fittings) {
        fittings.append(QJsonObject{{QStringLiteral("kind"), nameOf(fitting.kind)},
            {QStringLiteral("place"), numbers(fitting.place)}});
    }
    QJsonArray panels;
    for (const PanelOnWall& hung : wall.panels) {
        panels.append(
            QJsonObject{{QStringLiteral("panel"), static_cast<qint64>(hung.panel.number())},
                {QStringLiteral("at"), QJsonArray{hung.corner.x.value(), hung.corner.y.value()}}});
    }
    const QJsonObject object{{QStringLiteral("name"), wall.name},
        {QStringLiteral("width"), wall.size.width.value()},
        {QStringLiteral("height"), wall.size.height.value()},
        {QStringLiteral("fittings"), fittings},
        {QStringLiteral("panels"), panels},
        {QStringLiteral("viewers"), QString(kViewers[static_cast<std::size_t>(wall.viewers)])},
        {QStringLiteral("youngest"), wall.youngest},
        {QStringLiteral("oldest"), wall.oldest},
        {QStringLiteral("limit"), wall.coverLimit}};
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

Result<Wall> wallFromJson(const QByteArray& json)
{
    const QJsonObject object = QJsonDocument::fromJson(json).object();
    Wall wall;
    wall.name = object[u"name"].toString();
    wall.size = {Mm(object[u"width"].toDouble()), Mm(object[u"height"].toDouble())};
    if (!isSide(wall.size.width) || !isSide(wall.size.height))
        return damaged("it has no size");
    const QString viewers = object[u"viewers"].toString();
    const auto known = std::find(kViewers.begin(), kViewers.end(), viewers);
    if (known == kViewers.end())
        return damaged("nobody stands in front of it");
    wall.viewers = static_cast<Viewers>(known - kViewers.begin());
    wall.youngest = object[u"youngest"].toInt();
    wall.oldest = object[u"oldest"].toInt();
    if (wall.youngest < 3 || wall.oldest > 12 || wall.youngest > wall.oldest)
        return damaged("the ages are not 3 to 12");
    wall.coverLimit = object[u"limit"].toString();
    if (const auto read = readParts(object, wall); !read)
        return read.error();
    return wall;
}

} // namespace wainscot
