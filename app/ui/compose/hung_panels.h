// The other panels of the display, hung in one column from their nails, and the place for a new
// one.
#pragma once

#include <QAbstractButton>
#include <QWidget>

#include <vector>

#include "app/ui/compose/desk.h"
#include "app/ui/kit/rover.h"

namespace wainscot::ui {

class HungPanel : public QAbstractButton {
    Q_OBJECT
public:
    // `panel` null: the place for a new one.
    HungPanel(const QString& name, const QString& second, double shape, QWidget* parent);
    void setPicture(const QPixmap& picture);
    [[nodiscard]] int heightFor(int width) const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_second;
    double m_shape; // height over width
    QPixmap m_picture;
};

class HungPanels : public QWidget {
    Q_OBJECT
public:
    HungPanels(Session& session, Desk& desk, PictureProvider& pictures, QWidget* parent);
    void refresh(); // from the desk; pictures are painted when there is a moment
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();
    Session& m_session;
    Desk& m_desk;
    PictureProvider& m_pictures;
    Rover* m_rover;
    std::vector<HungPanel*> m_panels;
};

} // namespace wainscot::ui
