// A picture laid out to be worked on: a part that must stay, the corners of a page, covered parts.
#pragma once

#include <QImage>
#include <QWidget>

#include <optional>
#include <vector>

#include "core/model/experience.h"

namespace wainscot::ui {

// Shows and lets try; what was meant is told, and the owner hands back the picture as it is then.
class PictureSheet : public QWidget {
    Q_OBJECT
public:
    enum class Task { Stay, Straighten, Cover };

    explicit PictureSheet(QWidget* parent = nullptr);

    // The upright picture before any treatment; null = it is being read. It is never shown with its
    // covers off.
    void setUpright(const QImage& upright);
    void setPicture(const Picture& picture);
    void setTask(Task task);
    [[nodiscard]] Task task() const { return m_task; }
    // Of the chosen part, and of those to come.
    void setCover(Cover cover);
    void setOval(bool oval);
    [[nodiscard]] Cover cover() const { return m_cover; }
    [[nodiscard]] bool isOval() const { return m_oval; }
    void setAsItCame(bool on); // shown without straightening and even light, to compare

    // As tried or as it is: one rectangle at most, four corners, or all covered parts.
    [[nodiscard]] const std::vector<RectFraction>& parts() const { return m_parts; }
    [[nodiscard]] const Corners& corners() const { return m_corners; }
    [[nodiscard]] int chosen() const { return m_chosen; } // part or corner; -1 = none
    [[nodiscard]] const QImage& shown() const { return m_shown; }
    [[nodiscard]] QImage tried(SizePx within) const; // as it would come out
    [[nodiscard]] QRectF place() const; // of the picture, px
    [[nodiscard]] QPointF toPx(PointFraction point) const;
    void addPart(); // in the middle, for who has no pointer
    void removeChosen();
    void keepCorners();

    [[nodiscard]] QSize sizeHint() const override { return {600, 450}; }

Q_SIGNALS:
    // `gesture`: grows with every new handle taken, so that steps of one handle are one undo.
    void stayMarked(const std::optional<wainscot::RectFraction>& part, int gesture);
    void cornersSet(const wainscot::Corners& corners, int gesture);
    void coversSet(const std::vector<wainscot::CoveredRegion>& covers, int gesture);
    void trying(); // at every change before it is told
    void choiceChanged();
    void said(const QString& sentence);
    void leaveAsked();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    enum class Grip { None, Corner, Move, Size };
    struct Held {
        Grip grip = Grip::None;
        int index = -1;
        bool left = false; // of a size: which sides follow
        bool top = false;
        bool isNew = false;
    };

    void restart(); // from the picture, forgetting what is tried
    void show(); // works out what is shown
    [[nodiscard]] Treatment shownTreatment() const;
    [[nodiscard]] PointFraction fromPx(QPointF at) const;
    [[nodiscard]] SizePx uprightPx() const; // of the copy at hand
    [[nodiscard]] Held gripAt(QPointF at) const;
    void choose(int index);
    void chooseNext(int step);
    void recover(); // the chosen part in the form that is set
    void dragTo(PointFraction at);
    bool moveBy(double dx, double dy);
    bool sizeBy(double dx, double dy);
    void tell(); // what is tried becomes what is meant
    [[nodiscard]] std::vector<CoveredRegion> covers() const;
    void describe(); // for who cannot see it
    void paintCorners(QPainter& painter) const;
    void paintParts(QPainter& painter) const;
    void paintHandle(QPainter& painter, QPointF at, bool chosen) const;

    QImage m_upright;
    QImage m_shown;
    Picture m_picture;
    Task m_task = Task::Stay;
    Cover m_cover = Cover::Mosaic;
    bool m_oval = false;
    bool m_asItCame = false;
    std::vector<RectFraction> m_parts;
    std::vector<CoveredRegion> m_covers; // how each of the parts is covered, while covering
    Corners m_corners;
    int m_chosen = -1;
    int m_gesture = 0;
    Held m_held;
    PointFraction m_pressedAt;
    RectFraction m_before; // the part in hand as it was
};

// Whole percent, for sentences: "12 %".
[[nodiscard]] QString percent(double share);

} // namespace wainscot::ui
