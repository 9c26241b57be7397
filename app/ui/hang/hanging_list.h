// The wall on paper, to follow with a hammer: the picture, the list to hang by, the boards to cut.
#pragma once

#include <QPainter>
#include <QPixmap>

#include <functional>

#include "app/jobs/wall_plan.h"

class QPrinter;

namespace wainscot::ui {

class HangingList {
public:
    // `panelPixmap` as for WallPicture. REQUIRES: wall and plan outlive it
    HangingList(
        const Wall& wall, const WallPlan& plan, std::function<QPixmap(PanelId, int)> panelPixmap);

    // One page; more only where the list is longer than the page. False when the printer does not
    // answer.
    [[nodiscard]] bool print(QPrinter& printer);

private:
    class Page;
    [[nodiscard]] QStringList footLines() const;
    void drawPicture(Page& page, double height) const;
    void drawHeads(Page& page) const;
    void drawRow(Page& page, std::size_t index) const;

    const Wall& m_wall;
    const WallPlan& m_plan;
    std::function<QPixmap(PanelId, int)> m_panelPixmap;
};

} // namespace wainscot::ui
