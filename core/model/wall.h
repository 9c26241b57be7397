// A wall that was measured, what is fixed on it, and which panels hang where.
#pragma once

#include "core/base/geometry.h"
#include "core/base/result.h"
#include "core/model/ids.h"

#include <QString>

#include <array>
#include <optional>
#include <vector>

namespace wainscot {

enum class FittingKind { Door, Window, Radiator, Socket, Switch, ExitSign, Extinguisher, Alarm };
inline constexpr std::array kFittingKinds{FittingKind::Door,
    FittingKind::Window,
    FittingKind::Radiator,
    FittingKind::Socket,
    FittingKind::Switch,
    FittingKind::ExitSign,
    FittingKind::Extinguisher,
    FittingKind::Alarm};

// All places on a wall count from its upper left corner; the floor is its lower edge.
struct Fitting {
    FittingKind kind = FittingKind::Door;
    RectMm place;
    friend bool operator==(const Fitting&, const Fitting&) = default;
};

struct PanelOnWall {
    PanelId panel; // one that is no longer in the book hangs nowhere
    PointMm corner; // its upper left
    friend bool operator==(const PanelOnWall&, const PanelOnWall&) = default;
};

// Who stands in front of it.
enum class Viewers {
    Children,
    GrownUps,
    Both, // hung for the children: who is tall can bend
};

struct Wall {
    WallId id;
    QString name;
    SizeMm size{Mm(6000), Mm(2700)}; // each side 500 to 50,000 mm
    std::vector<Fitting> fittings;
    std::vector<PanelOnWall> panels;
    Viewers viewers = Viewers::Both;
    int youngest = 4; // years of the children, 3 to 12
    int oldest = 6;
    QString coverLimit = QStringLiteral("20"); // a name of layout/wall/cover.h
    friend bool operator==(const Wall&, const Wall&) = default;
};

inline constexpr Mm kLeastWallSide{500};
inline constexpr Mm kGreatestWallSide{50000};

// "door", "window", "radiator", "socket", "switch", "exit_sign", "extinguisher", "alarm"
[[nodiscard]] QString nameOf(FittingKind kind);
[[nodiscard]] std::optional<FittingKind> fittingKindFromName(const QString& name);
// As large as they usually are, where they usually are: on the floor, or at the height of a hand
// (common practice, no source). To be measured.
[[nodiscard]] RectMm usualPlace(FittingKind kind, SizeMm wall);

// As text for keeping; its id is kept apart.
[[nodiscard]] QByteArray wallToJson(const Wall& wall);
// Damaged, saying what, for what is no wall.
[[nodiscard]] Result<Wall> wallFromJson(const QByteArray& json);

} // namespace wainscot
