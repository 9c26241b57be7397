#include "layout/wall/fittings.h"

namespace wainscot::wall {

namespace {

constexpr Mm kClearAround{100};

} // namespace

bool isForFire(FittingKind kind)
{
    return kind == FittingKind::Door || kind == FittingKind::ExitSign
        || kind == FittingKind::Extinguisher || kind == FittingKind::Alarm;
}

RectMm keptClear(const Fitting& fitting, SizeMm wall)
{
    if (fitting.kind == FittingKind::Door || !isForFire(fitting.kind))
        return fitting.place;
    RectMm clear = fitting.place.grown(kClearAround);
    if (fitting.kind == FittingKind::Extinguisher)
        clear.height = wall.height - clear.y;
    return clear;
}

} // namespace wainscot::wall
