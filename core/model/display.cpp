#include "core/model/display.h"

#include <algorithm>
#include <array>
#include <utility>

namespace wainscot {

namespace {

constexpr std::array kKindNames{
    std::pair{PieceKind::Title, "title"},
    std::pair{PieceKind::Question, "question"},
    std::pair{PieceKind::Context, "context"},
    std::pair{PieceKind::Label, "label"},
    std::pair{PieceKind::Photo, "photo"},
    std::pair{PieceKind::Work, "work"},
    std::pair{PieceKind::Quote, "quote"},
    std::pair{PieceKind::Interpretation, "interpretation"},
    std::pair{PieceKind::NextStep, "next_step"},
    std::pair{PieceKind::Invitation, "invitation"},
    std::pair{PieceKind::Credits, "credits"},
};

}

RectFraction visiblePart(SizePx picture, double frameAspect, const Framing& framing)
{
    if (picture.isEmpty() || frameAspect <= 0)
        return {};
    const double ratio = frameAspect / picture.aspect();
    const double zoom = std::clamp(framing.zoom, 1.0, kMostFrameZoom);
    RectFraction part;
    part.width = std::min(1.0, ratio) / zoom;
    part.height = std::min(1.0, 1.0 / ratio) / zoom;
    part.x = std::clamp(framing.focus.x - part.width / 2, 0.0, 1.0 - part.width);
    part.y = std::clamp(framing.focus.y - part.height / 2, 0.0, 1.0 - part.height);
    return part;
}

QString nameOf(PieceKind kind)
{
    for (const auto& [known, name] : kKindNames) {
        if (known == kind)
            return QString::fromLatin1(name);
    }
    return {};
}

std::optional<PieceKind> pieceKindFromName(const QString& name)
{
    for (const auto& [kind, known] : kKindNames) {
        if (name == QLatin1String(known))
            return kind;
    }
    return std::nullopt;
}

} // namespace wainscot
