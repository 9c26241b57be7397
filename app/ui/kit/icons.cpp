#include "app/ui/kit/icons.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPainterPath>

#include <cmath>
#include <initializer_list>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

// Strokes of one icon on its field of 20 x 20.
class Pencil {
public:
    Pencil(QPainter& painter, const QColor& line, const QColor& nail)
        : m_painter(painter)
        , m_line(line)
        , m_nail(nail)
    {
        usePen();
    }
    void line(std::initializer_list<QPointF> points)
    {
        m_painter.drawPolyline(QPolygonF(QList<QPointF>(points)));
    }
    void arc(const QRectF& box, double from, double span)
    {
        m_painter.drawArc(box, qRound(from * 16), qRound(span * 16));
    }
    void curve(QPointF from, std::initializer_list<std::array<QPointF, 3>> parts)
    {
        QPainterPath path(from);
        for (const auto& part : parts)
            path.cubicTo(part[0], part[1], part[2]);
        m_painter.drawPath(path);
    }
    void nail(double x, double y, double diameter = 4)
    {
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(m_nail);
        m_painter.drawEllipse(QPointF(x, y), diameter / 2, diameter / 2);
        usePen();
    }
    void stop()
    {
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(m_line);
        m_painter.drawRoundedRect(QRectF(3, 3, 14, 14), 2, 2);
        m_painter.setBrush(m_nail);
        m_painter.drawRect(QRectF(6, 9, 8, 2));
    }
    void eye()
    {
        QPainterPath path(QPointF(2, 10));
        path.quadTo(10, 1.5, 18, 10);
        path.quadTo(10, 18.5, 2, 10);
        m_painter.drawPath(path);
        nail(10, 10, 5);
    }
    void star()
    {
        for (int ray = 0; ray < 5; ++ray) {
            const double turn = (-0.25 + ray / 5.0) * 2 * 3.14159265358979;
            const QPointF way(std::cos(turn), std::sin(turn));
            m_painter.drawLine(QPointF(10, 10) + 4.4 * way, QPointF(10, 10) + 8.6 * way);
        }
        nail(10, 10, 4.6);
    }

private:
    void usePen()
    {
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(m_line, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    }
    QPainter& m_painter;
    QColor m_line;
    QColor m_nail;
};

void drawContent(Pencil& pen, Icon icon) // what there is to hang
{
    switch (icon) {
    case Icon::Photo:
        pen.line({{3, 15}, {3, 5}, {17, 5}});
        pen.line({{17, 9}, {17, 15}, {7, 15}});
        pen.line({{6, 13}, {9.5, 9}, {13, 13}});
        pen.nail(13.5, 8, 3.2);
        break;
    case Icon::Words:
        pen.line({{4, 6}, {16, 6}});
        pen.line({{4, 10}, {14, 10}});
        pen.line({{4, 14}, {10, 14}});
        pen.nail(14, 14);
        break;
    case Icon::Drawing:
        pen.curve({3, 14}, {{{{6, 2}, {9, 18}, {12, 9}}}, {{{13, 6}, {15, 6}, {17, 8}}}});
        pen.nail(4, 16);
        break;
    case Icon::Note:
        pen.line({{15, 4}, {5, 4}, {5, 16}, {15, 16}});
        pen.line({{8, 8}, {13, 8}});
        pen.line({{8, 11.5}, {12, 11.5}});
        pen.nail(15, 12);
        break;
    case Icon::Sheet:
        pen.line({{4, 3}, {16, 3}, {16, 17}, {4, 17}, {4, 3}});
        pen.line({{10, 3}, {10, 17}});
        pen.line({{4, 10}, {16, 10}});
        pen.nail(13, 6.5, 3.2);
        break;
    case Icon::Star:
        pen.star();
        break;
    default:
        break;
    }
}

void drawDirection(Pencil& pen, Icon icon)
{
    switch (icon) {
    case Icon::Next:
        pen.line({{4, 10}, {15, 10}});
        pen.line({{11, 6}, {15, 10}, {11, 14}});
        pen.nail(4, 10);
        break;
    case Icon::Previous:
        pen.line({{16, 10}, {5, 10}});
        pen.line({{9, 6}, {5, 10}, {9, 14}});
        pen.nail(16, 10);
        break;
    case Icon::Undo:
        pen.arc(QRectF(4, 5, 12, 11), -60, 210);
        pen.line({{3.5, 5}, {4.5, 9.5}, {9, 8.5}});
        pen.nail(13, 15);
        break;
    case Icon::Down:
        pen.line({{5, 8}, {10, 13}, {15, 8}});
        break;
    case Icon::Up:
        pen.line({{5, 13}, {10, 8}, {15, 13}});
        break;
    case Icon::Plus:
        pen.line({{10, 4}, {10, 16}});
        pen.line({{4, 10}, {16, 10}});
        break;
    case Icon::Search:
        pen.arc(QRectF(3, 3, 11, 11), -20, 320);
        pen.line({{13, 13}, {17, 17}});
        pen.nail(8.5, 8.5, 3);
        break;
    default:
        break;
    }
}

void drawHandling(Pencil& pen, Icon icon) // what can be done with a piece
{
    switch (icon) {
    case Icon::Pin:
        pen.line({{10, 7}, {10, 17}});
        pen.nail(10, 5, 6);
        break;
    case Icon::Bigger:
        pen.line({{9, 4}, {16, 4}, {16, 11}});
        pen.line({{16, 4}, {6, 14}});
        pen.nail(5, 15);
        break;
    case Icon::Smaller:
        pen.line({{8, 5}, {8, 12}, {15, 12}});
        pen.line({{8, 12}, {3.5, 16.5}});
        pen.nail(15, 5);
        break;
    case Icon::Crop:
        pen.line({{5, 2.5}, {5, 15}, {17.5, 15}});
        pen.line({{2.5, 5}, {15, 5}, {15, 17.5}});
        pen.nail(10, 10);
        break;
    case Icon::TurnRight:
        pen.arc(QRectF(4, 5, 12, 11), 240, -210);
        pen.line({{16.5, 5}, {15.5, 9.5}, {11, 8.5}});
        pen.nail(10, 11);
        break;
    case Icon::TurnLeft:
        pen.arc(QRectF(4, 5, 12, 11), -60, 210);
        pen.line({{3.5, 5}, {4.5, 9.5}, {9, 8.5}});
        pen.nail(10, 11);
        break;
    case Icon::Straighten:
        pen.line({{7, 4.5}, {3, 16}, {17, 16}, {13, 4.5}});
        pen.nail(10, 4.5);
        break;
    case Icon::EvenLight:
        pen.arc(QRectF(5, 4.5, 10, 10), 15, 150);
        pen.line({{3, 13}, {17, 13}});
        pen.line({{5.5, 16.5}, {14.5, 16.5}});
        pen.nail(10, 9);
        break;
    case Icon::Swap:
        pen.line({{4, 7}, {15, 7}});
        pen.line({{12, 4}, {15, 7}, {12, 10}});
        pen.line({{16, 14}, {7, 14}});
        pen.nail(5, 14);
        break;
    case Icon::TakeOff:
        pen.line({{4, 6}, {4, 16}, {16, 16}, {16, 6}});
        pen.line({{10, 11}, {10, 3}});
        pen.line({{7, 6}, {10, 3}, {13, 6}});
        pen.nail(10, 12.5, 3.4);
        break;
    default:
        break;
    }
}

// Two bars and the line they come to; the nail is on the line. `at`: 0 start, 1 middle, 2 end.
void drawLineUp(Pencil& pen, int at, bool down)
{
    const auto point = [down](double along, double beside) {
        return down ? QPointF(along, beside) : QPointF(beside, along);
    };
    const double line = at == 0 ? 3.5 : at == 1 ? 10 : 16.5;
    pen.line({point(2.5, line), point(17.5, line)});
    const auto bar = [&](double along, double length) {
        const double start = at == 0 ? line + 3 : at == 1 ? line - length / 2 : line - 3 - length;
        pen.line({point(along, start), point(along, start + length)});
    };
    bar(6.5, 10);
    bar(13.5, 6);
    pen.nail(point(10, line).x(), point(10, line).y(), 3.2);
}

void drawSpread(Pencil& pen, bool down)
{
    const auto point = [down](double along, double beside) {
        return down ? QPointF(beside, along) : QPointF(along, beside);
    };
    for (const double along : {3.5, 10.0, 16.5})
        pen.line({point(along, 5), point(along, along == 10 ? 8 : 15)});
    pen.nail(point(10, 12.5).x(), point(10, 12.5).y(), 3.2);
}

bool drawSeveral(Pencil& pen, Icon icon) // what is done with several pieces
{
    switch (icon) {
    case Icon::AlignLeft:
    case Icon::AlignCentre:
    case Icon::AlignRight:
        drawLineUp(pen, int(icon) - int(Icon::AlignLeft), false);
        return true;
    case Icon::AlignTop:
    case Icon::AlignMiddle:
    case Icon::AlignFoot:
        drawLineUp(pen, int(icon) - int(Icon::AlignTop), true);
        return true;
    case Icon::SpreadAcross:
    case Icon::SpreadDown:
        drawSpread(pen, icon == Icon::SpreadDown);
        return true;
    default:
        return false;
    }
}

void drawThought(Pencil& pen, Icon icon) // arranging, looking, mending
{
    switch (icon) {
    case Icon::Arrange:
        pen.line({{3, 4}, {11, 4}, {11, 12}, {3, 12}, {3, 4}});
        pen.line({{14, 4}, {17, 4}});
        pen.line({{14, 8}, {17, 8}});
        pen.line({{3, 16}, {11, 16}});
        pen.nail(15.5, 14, 3.6);
        break;
    case Icon::Ways:
        pen.line({{3, 4}, {7, 4}, {7, 16}, {3, 16}, {3, 4}});
        pen.line({{10, 4}, {17, 4}, {17, 9}});
        pen.line({{10, 9}, {10, 16}, {17, 16}});
        pen.nail(14, 12.5, 3.4);
        break;
    case Icon::StepBack:
        pen.line({{3, 16}, {17, 16}});
        pen.line({{5, 13}, {8, 13}});
        pen.line({{10, 10}, {12.5, 10}});
        pen.line({{14, 7.5}, {15.5, 7.5}});
        pen.nail(16, 4.5, 3.4);
        break;
    case Icon::Why:
        pen.line({{10, 8}, {10, 4}, {4, 4}});
        pen.line({{10, 8}, {10, 16}, {16, 16}});
        pen.nail(4, 4);
        break;
    case Icon::Mend:
        pen.line({{4, 15}, {8, 11}});
        pen.line({{12, 8}, {16, 4}});
        pen.line({{8, 8}, {12, 12}});
        pen.nail(10, 10, 3.2);
        break;
    case Icon::Stop:
        pen.stop();
        break;
    case Icon::Look:
        pen.eye();
        break;
    case Icon::NotAllowed:
        pen.line({{4, 16}, {16, 4}});
        pen.arc(QRectF(3, 3, 14, 14), 60, 300);
        break;
    default:
        break;
    }
}

void drawVoice(Pencil& pen, Icon icon) // how a child tells
{
    switch (icon) {
    case Icon::Said:
        pen.arc(QRectF(3, 6, 6, 8), -55, 110);
        pen.arc(QRectF(4, 3.5, 10, 13), -50, 100);
        pen.arc(QRectF(5, 1, 13, 18), -45, 90);
        pen.nail(3.5, 10);
        break;
    case Icon::Wrote:
        pen.line({{15, 3.5}, {6, 14}});
        pen.line({{4, 17}, {14, 17}});
        pen.nail(5, 15);
        break;
    case Icon::Drew:
        pen.curve({3, 13}, {{{{5, 4}, {9, 4}, {9, 10}}}, {{{9, 16}, {13, 16}, {16, 7}}}});
        pen.nail(16, 6);
        break;
    case Icon::Signed:
        pen.line({{7, 10}, {7, 4.5}});
        pen.line({{10, 9.5}, {10, 3}});
        pen.line({{13, 10}, {13, 4.5}});
        pen.curve(
            {3.5, 10}, {{{{5, 12}, {5.5, 17.5}, {10, 17.5}}}, {{{14, 17.5}, {16, 15}, {16, 8}}}});
        pen.nail(10, 13.5, 3.4);
        break;
    case Icon::Pointed:
        pen.line({{3, 8}, {12, 8}});
        pen.line({{3, 12}, {8, 12}});
        pen.line({{3, 16}, {7, 16}});
        pen.nail(16, 8);
        break;
    case Icon::Passes:
        pen.line({{3, 10}, {7, 10}});
        pen.line({{10, 10}, {12, 10}});
        pen.nail(16, 10);
        break;
    default:
        break;
    }
}

void drawListening(Pencil& pen, Icon icon) // groups and meetings
{
    switch (icon) {
    case Icon::Minus:
        pen.line({{4, 10}, {16, 10}});
        break;
    case Icon::Split:
        pen.line({{3, 4}, {8, 4}, {8, 8.5}});
        pen.line({{3, 16}, {8, 16}, {8, 11.5}});
        pen.line({{17, 4}, {12, 4}, {12, 8.5}});
        pen.line({{17, 16}, {12, 16}, {12, 11.5}});
        pen.nail(10, 10, 3.2);
        break;
    case Icon::Kept:
        pen.arc(QRectF(6, 2.5, 8, 11), 0, 180);
        pen.line({{10, 8.5}, {4, 8.5}, {4, 17}, {16, 17}, {16, 8.5}, {13, 8.5}});
        pen.nail(10, 12.8);
        break;
    case Icon::Open:
        pen.arc(QRectF(6, 2.5, 8, 11), 50, 130);
        pen.line({{10, 8.5}, {4, 8.5}, {4, 17}, {16, 17}, {16, 8.5}, {13, 8.5}});
        pen.nail(10, 12.8, 3);
        break;
    case Icon::Agree:
        pen.line({{4, 4}, {4, 16}, {16, 16}});
        pen.line({{8, 5}, {16, 5}});
        pen.line({{8, 8.7}, {16, 8.7}});
        pen.line({{8, 12.4}, {13, 12.4}});
        pen.nail(4, 16);
        break;
    case Icon::Disagree:
        pen.line({{4, 4}, {4, 16}, {16, 16}});
        pen.line({{8, 5}, {16, 5}});
        pen.line({{8, 12.4}, {13, 12.4}});
        pen.line({{8, 10.5}, {16, 7}});
        pen.nail(4, 16);
        break;
    case Icon::ChangedMind:
        pen.line({{3, 7}, {16, 7}, {13, 4}});
        pen.line({{17, 13}, {4, 13}, {7, 16}});
        pen.nail(3.4, 7);
        break;
    case Icon::AnotherDay:
        pen.line({{9, 4}, {4, 4}, {4, 16}, {9, 16}});
        pen.line({{8, 10}, {17, 10}, {13.5, 6.5}});
        pen.line({{17, 10}, {13.5, 13.5}});
        pen.nail(8, 10);
        break;
    case Icon::Lamp:
        pen.arc(QRectF(5, 5, 10, 10), 90, 180);
        pen.line({{10, 1.5}, {10, 5}, {10, 15}, {10, 18.5}});
        pen.line({{1.5, 10}, {3.5, 10}});
        pen.nail(13, 10);
        break;
    default:
        break;
    }
}

bool mirrors(Icon icon)
{
    return QGuiApplication::isRightToLeft()
        && (icon == Icon::Next || icon == Icon::Previous || icon == Icon::Undo);
}

} // namespace

void drawIcon(
    QPainter& painter, Icon icon, const QRectF& place, const QColor& line, const QColor& nail)
{
    if (icon == Icon::None)
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(place.topLeft());
    painter.scale(place.width() / 20, place.height() / 20);
    if (mirrors(icon)) {
        painter.translate(20, 0);
        painter.scale(-1, 1);
    }
    Pencil pen(painter, line, nail);
    if (!drawSeveral(pen, icon)) {
        drawContent(pen, icon);
        drawDirection(pen, icon);
        drawHandling(pen, icon);
        drawThought(pen, icon);
        drawVoice(pen, icon);
        drawListening(pen, icon);
    }
    painter.restore();
}

void drawFocusRing(QPainter& painter, const QRectF& around)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(tokens().accent, 2));
    painter.drawRoundedRect(around.adjusted(1, 1, -1, -1), 4, 4);
    painter.setPen(QPen(tokens().field, 1));
    painter.drawRoundedRect(around.adjusted(2.5, 2.5, -2.5, -2.5), 3, 3);
    painter.restore();
}

} // namespace wainscot::ui
