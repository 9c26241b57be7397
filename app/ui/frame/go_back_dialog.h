// The earlier days a book can go back to, each with a small picture of a panel as it was then.
#pragma once

#include <QAbstractButton>
#include <QDialog>

#include "app/jobs/go_back.h"
#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/kit/rover.h"

namespace wainscot::ui {

// One day: the picture, when it was, what was in the book. The picture is painted from the state
// itself when it is looked at, so that none is kept that would have to forget a child.
class EarlierDaySlip : public QAbstractButton {
    Q_OBJECT
public:
    EarlierDaySlip(EarlierDay day, PictureShelf& pictures, QWidget* parent = nullptr);
    [[nodiscard]] const EarlierDay& day() const { return m_day; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QRect pictureRect() const;
    void paintPicture(QPainter& painter);
    EarlierDay m_day;
    PictureShelf& m_pictures;
    PanelId m_panel;
    QPixmap m_picture;
};

class GoBackDialog : public QDialog {
    Q_OBJECT
public:
    // REQUIRES: there is at least one day
    GoBackDialog(
        const std::vector<EarlierDay>& days, PictureShelf& pictures, QWidget* parent = nullptr);
    [[nodiscard]] const QString& chosen() const { return m_chosen; } // name of the state
    [[nodiscard]] const QVector<QWidget*>& slips() const { return m_slips; }

private:
    void choose(const QString& state);
    Rover* m_rover;
    QVector<QWidget*> m_slips;
    QString m_chosen;
};

} // namespace wainscot::ui
