// The term drawn: a strand for every experience along the days, nails for its class meetings, its
// walls hanging at its end.
#pragma once

#include <QWidget>

#include "app/jobs/term_strands.h"
#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/session/session.h"

namespace wainscot::ui {

class HungWall;

class TermView : public QWidget {
    Q_OBJECT
public:
    TermView(Session& session, PictureShelf& pictures, QWidget* parent = nullptr);

    void refresh(); // to what the book holds
    [[nodiscard]] const std::vector<TermStrand>& strands() const { return m_strands; }
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void experienceAsked(wainscot::ExperienceId experience);
    void displayAsked(wainscot::DisplayId display);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Lane {
        Button* title = nullptr;
        std::vector<HungWall*> walls;
        int top = 0; // px
    };
    void makeLane(const TermStrand& strand);
    void placeLanes();
    [[nodiscard]] int heightOf(const TermStrand& strand) const;
    [[nodiscard]] QRectF field() const; // where days are drawn
    [[nodiscard]] double x(QDate day) const; // runs from right to left with the interface
    [[nodiscard]] double mirrored(double x) const;
    void paintDays(QPainter& painter) const;
    void paintStrand(QPainter& painter, const TermStrand& strand, const Lane& lane) const;

    Session& m_session;
    PictureShelf& m_pictures;
    std::vector<TermStrand> m_strands;
    std::vector<Lane> m_lanes;
    QDate m_from; // first of a month
    QDate m_to; // last of a month
    Rover* m_rover;
};

} // namespace wainscot::ui
