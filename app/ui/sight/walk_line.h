// A line on the floor in metres: how far from the wall somebody stands.
#pragma once

#include <QAbstractSlider>

namespace wainscot::ui {

// Value in millimetres. Arrows go a step, Page keys a metre; the wheel walks too.
class WalkLine : public QAbstractSlider {
    Q_OBJECT
public:
    explicit WalkLine(QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    [[nodiscard]] double xOf(int mm) const;
    void walkTo(double x);
};

} // namespace wainscot::ui
