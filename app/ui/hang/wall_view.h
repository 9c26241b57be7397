// The wall to scale, with panels and fittings that are taken in the hand and moved.
#pragma once

#include <QHash>
#include <QWidget>

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/hang/wall_picture.h"
#include "app/ui/session/session.h"

namespace wainscot::ui {

class WallView : public QWidget {
    Q_OBJECT
public:
    WallView(Session& session, PictureShelf& pictures, QWidget* parent = nullptr);

    void setWall(const Wall& wall); // measured anew
    [[nodiscard]] const Wall& wall() const { return m_wall; }
    [[nodiscard]] const WallPlan& plan() const { return m_plan; }
    // An index of the wall's panels, or of its fittings behind them; -1 = nothing.
    [[nodiscard]] int inHand() const { return m_hand; }
    void take(int thing);
    [[nodiscard]] RectMm placeOf(int thing) const;
    [[nodiscard]] QString nameOf(int thing) const;
    [[nodiscard]] int things() const;
    void forgetPictures(); // the panels were drawn anew
    [[nodiscard]] QPixmap panelPixmap(PanelId panel, int width);
    [[nodiscard]] QSize sizeHint() const override { return {900, 380}; }

Q_SIGNALS:
    void handChanged();
    // A thing was moved; `gesture` > 0 joins moves of one drag or of keys pressed in a row.
    void moved(const Wall& wall, int gesture);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] QRectF wallRect() const;
    [[nodiscard]] int thingAt(const QPointF& at) const;
    void moveTo(PointMm corner);
    void describe();

    Session& m_session;
    PictureShelf& m_pictures;
    Wall m_wall;
    WallPlan m_plan;
    int m_hand = -1;
    bool m_dragging = false;
    PointMm m_grip; // from the thing's corner to the pointer
    int m_gesture = 0;
    QHash<qint64, QPixmap> m_pixmaps;
};

} // namespace wainscot::ui
