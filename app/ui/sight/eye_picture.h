// The wall with one panel on it, as an eye sees it from where it stands.
#pragma once

#include <QPixmap>
#include <QTransform>
#include <QWidget>

#include <functional>
#include <vector>

#include "app/jobs/seen_from.h"
#include "layout/screen/painter.h"

namespace wainscot::ui {

// How far from a screen its reader is taken to sit; common practice, no source.
inline constexpr double kScreenDistanceMm = 600;

class EyePicture : public QWidget {
    Q_OBJECT
public:
    explicit EyePicture(PictureProvider& pictures, QWidget* parent = nullptr);

    // `list` must live until the next call.
    void setView(const DisplayList* list,
        const wall::Standing& standing,
        const std::vector<SeenText>& texts);
    // As large as there is room, instead of as large as the eye sees it.
    void setFilling(bool filling);
    // How many times as large as seen from there; below 1 when the screen has no room for more.
    [[nodiscard]] double magnified() const;
    [[nodiscard]] QPolygonF panelOutline() const; // px of this widget
    void refreshPictures(); // pictures came that were still loading

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] double pixelsPerTangent() const; // with `magnified` in it
    [[nodiscard]] QPointF at(Mm across, Mm above) const;
    [[nodiscard]] QTransform panelTransform() const; // mm of the panel to px
    [[nodiscard]] QPixmap seenWall() const;
    void paintFloor(QPainter& painter) const;
    void paintPanel(QPainter& painter, double pixelRatio) const;
    void paintMarks(QPainter& painter) const;

    PictureProvider& m_pictures;
    const DisplayList* m_list = nullptr;
    wall::Standing m_standing;
    std::vector<SeenText> m_texts;
    bool m_filling = false;
    QPixmap m_wall; // painted and blurred; null = to be made
};

} // namespace wainscot::ui
