// A wall drawn to scale: what is fixed on it, the bands of eyes, and the panels. The same picture
// stands in the window and on the printed list.
#pragma once

#include <QPainter>
#include <QPixmap>

#include <functional>

#include "app/jobs/wall_plan.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

class WallPicture {
public:
    // REQUIRES: all outlive it. `panelPixmap` answers a panel's picture of a width in px; null = a
    // white sheet.
    WallPicture(const Wall& wall,
        const WallPlan& plan,
        const Tokens& colours,
        std::function<QPixmap(PanelId, int)> panelPixmap);

    // The wall into a rectangle, as large as it goes; answers where it stands.
    [[nodiscard]] QRectF fitted(const QRectF& room) const;
    // `hand`: what is marked as in the hand: an index of the wall's panels, or of its fittings
    // behind them; -1 = nothing.
    void paint(QPainter& painter, const QRectF& wall, int hand) const;
    // Metres along the floor and up the left side, the names of the bands on the right.
    void paintScales(QPainter& painter, const QRectF& wall) const;

    // On the panels their numbers in the list and where the nails go in.
    void paintNails(QPainter& painter, const QRectF& wall) const;

    struct BandLine {
        QString text;
        bool large = false;
    };
    struct BandName {
        double band = 0; // where the middle of the band is
        QRectF box; // of the text, to the right of the wall
        std::vector<BandLine> lines;
    };
    // What the bands of eyes are called, from above; the names never stand on each other.
    [[nodiscard]] std::vector<BandName> bandNames(
        const QPainter& painter, const QRectF& wall) const;

    [[nodiscard]] static QRectF onScreen(const RectMm& place, const QRectF& wall, SizeMm size);

private:
    void paintBand(
        QPainter& painter, const QRectF& wall, const wall::EyeBand& band, bool children) const;
    void paintFitting(QPainter& painter, const QRectF& wall, const Fitting& fitting) const;
    void paintPanel(QPainter& painter, const QRectF& wall, const HangingLine& line) const;
    void paintHand(QPainter& painter, const QRectF& wall, const RectMm& place) const;
    void paintLabel(QPainter& painter, const QPointF& middle, const QString& text) const;
    [[nodiscard]] double y(const QRectF& wall, Mm aboveFloor) const;

    const Wall& m_wall;
    const WallPlan& m_plan;
    const Tokens& m_colours;
    std::function<QPixmap(PanelId, int)> m_panelPixmap;
};

// "185.0" for 1850 mm.
[[nodiscard]] QString centimetres(Mm length);
// "1850", without a mark between the thousands, which could be taken for a point.
[[nodiscard]] QString millimetres(Mm length);

} // namespace wainscot::ui
