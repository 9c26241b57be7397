#include "app/ui/kit/voice_mark.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(VoiceMark)
};

QPainterPath shapeOf(Telling telling, QPointF centre, double side)
{
    const double half = side / 2;
    QPainterPath path;
    switch (telling) {
    case Telling::Said:
        path.addEllipse(centre, half * 0.92, half * 0.92);
        break;
    case Telling::Wrote:
        path.addRect(
            QRectF(centre.x() - half * 0.82, centre.y() - half * 0.82, half * 1.64, half * 1.64));
        break;
    case Telling::Drew:
        path.addPolygon(QPolygonF({centre + QPointF(0, -half),
            centre + QPointF(half, half * 0.8),
            centre + QPointF(-half, half * 0.8)}));
        path.closeSubpath();
        break;
    case Telling::Signed:
    case Telling::Pointed:
        path.addPolygon(QPolygonF({centre + QPointF(0, -half * 1.12),
            centre + QPointF(half * 1.12, 0),
            centre + QPointF(0, half * 1.12),
            centre + QPointF(-half * 1.12, 0)}));
        path.closeSubpath();
        break;
    }
    return path;
}

} // namespace

void drawVoiceMark(QPainter& painter,
    const AnswerMark& mark,
    QPointF centre,
    double side,
    const QColor& full,
    const QColor& open)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    switch (mark.heard) {
    case Heard::Answered:
        painter.setPen(Qt::NoPen);
        painter.setBrush(full);
        painter.drawPath(shapeOf(mark.telling, centre, side));
        break;
    case Heard::NotYet:
        painter.setPen(QPen(open, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(centre, side * 0.44, side * 0.44);
        break;
    case Heard::Passed:
    case Heard::Noted:
        painter.setPen(QPen(open, 2, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(centre - QPointF(side * 0.4, 0), centre + QPointF(side * 0.4, 0));
        if (mark.heard == Heard::Noted) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(full);
            painter.drawEllipse(centre + QPointF(0, side * 0.42), side * 0.16, side * 0.16);
        }
        break;
    }
    painter.restore();
}

QString inWords(Telling telling)
{
    switch (telling) {
    case Telling::Said:
        return Words::tr("said");
    case Telling::Wrote:
        return Words::tr("wrote");
    case Telling::Drew:
        return Words::tr("drew");
    case Telling::Signed:
        return Words::tr("signed");
    case Telling::Pointed:
        return Words::tr("pointed");
    }
    return {};
}

QString inWords(const AnswerMark& mark)
{
    switch (mark.heard) {
    case Heard::NotYet:
        return Words::tr("not yet");
    case Heard::Answered:
        return inWords(mark.telling);
    case Heard::Passed:
        return Words::tr("passes for now");
    case Heard::Noted:
        return Words::tr("noted why not");
    }
    return {};
}

} // namespace wainscot::ui
