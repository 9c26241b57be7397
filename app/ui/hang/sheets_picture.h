// The panel one is at, with the sheets it is printed on.
#pragma once

#include <QWidget>

#include <optional>

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/session/session.h"
#include "layout/paper/sheets.h"

namespace wainscot::ui {

class SheetsPicture : public QWidget {
    Q_OBJECT
public:
    SheetsPicture(Session& session, PictureShelf& pictures, QWidget* parent = nullptr);
    // None = there is no panel. `withoutWhite`: sheets with nothing on them are not drawn.
    void show(std::optional<SheetPlan> plan, bool withoutWhite);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintSheet(QPainter& painter, const QRectF& part, const QString& name) const;

    Session& m_session;
    bool m_withoutWhite = false;
    PictureShelf& m_pictures;
    std::optional<SheetPlan> m_plan;
};

} // namespace wainscot::ui
