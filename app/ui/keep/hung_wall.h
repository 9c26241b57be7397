// A wall at the end of its strand: its first panel, small, with who stood in front of it.
#pragma once

#include <QAbstractButton>

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/session/session.h"

namespace wainscot::ui {

class HungWall : public QAbstractButton {
    Q_OBJECT
public:
    HungWall(Session& session, PictureShelf& pictures, DisplayId display, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;
    // Where the strings from the nail end, in this widget.
    [[nodiscard]] QLineF upperEdge() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QSize pictureSize() const;
    [[nodiscard]] QRect pictureRect() const;

    Session& m_session;
    PictureShelf& m_pictures;
    DisplayId m_display;
    SizeMm m_panel;
    QString m_says; // beside it
    QPixmap m_picture;
};

} // namespace wainscot::ui
