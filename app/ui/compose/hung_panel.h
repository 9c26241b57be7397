// One panel of the display as a small live picture, hung from its nail.
#pragma once

#include <QAbstractButton>
#include <QPixmap>

#include "app/ui/canvas/incoming.h"
#include "core/model/ids.h"

namespace wainscot::ui {

class HungPanel : public QAbstractButton {
    Q_OBJECT
public:
    // An invalid id is the place for a new panel.
    HungPanel(PanelId panel, QWidget* parent);
    [[nodiscard]] PanelId panel() const { return m_panel; }
    void say(const QString& name, const QString& second, double shape); // height : width
    void setPicture(const QPixmap& picture);
    void setCurrent(bool current); // the panel on the stage
    void setGoal(bool goal); // what is in the hand would go here
    [[nodiscard]] int heightFor(int width) const;
    [[nodiscard]] QRect nameRect() const;

Q_SIGNALS:
    void carriedTo(QPoint global, bool letGo); // dragged to another place in the row
    void putBack();
    void dropped(wainscot::ui::DrawerItem item);
    void menuAsked(QPoint global);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    [[nodiscard]] QRectF paper() const;
    void paintPaper(QPainter& painter) const;
    PanelId m_panel;
    QString m_second;
    double m_shape = 1.4;
    QPixmap m_picture;
    bool m_current = false;
    bool m_goal = false;
    bool m_carried = false;
    QPoint m_pressedAt;
};

} // namespace wainscot::ui
