#include "app/ui/keep/term_view.h"

#include <QLocale>
#include <QPaintEvent>
#include <QPainter>
#include <QtMath>

#include <algorithm>

#include "app/ui/keep/hung_wall.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr double kHead = 46; // names of months and the line under them, px at 10 pt text
constexpr double kLine = 38; // from a lane's top to its strand
constexpr double kString = 12; // from the strand to a wall
constexpr double kShortest = 60; // a strand of one day
constexpr int kDaysAfter = 62; // today is shown that long after the last thing happened

QDate firstOfMonth(QDate day)
{
    return {day.year(), day.month(), 1};
}

} // namespace

TermView::TermView(Session& session, PictureShelf& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_pictures(pictures)
    , m_rover(new Rover(this))
{
    setAccessibleName(tr("The term, from its first day to its last"));
}

void TermView::refresh()
{
    for (const Lane& lane : m_lanes) {
        lane.title->hide();
        lane.title->deleteLater(); // it may be the sender
        for (HungWall* wall : lane.walls) {
            wall->hide();
            wall->deleteLater();
        }
    }
    m_lanes.clear();
    m_strands = strandsOf(m_session.book());
    const QDate today = m_session.today();
    QDate first = today;
    QDate last;
    for (const TermStrand& strand : m_strands) {
        if (!strand.first.isValid())
            continue;
        first = std::min(first, strand.first);
        last = last.isValid() ? std::max(last, strand.last) : strand.last;
    }
    if (!last.isValid() || (today > last && last.daysTo(today) <= kDaysAfter))
        last = today;
    m_from = firstOfMonth(first);
    m_to = firstOfMonth(last).addMonths(1).addDays(-1);
    QVector<QWidget*> stops;
    for (const TermStrand& strand : m_strands) {
        makeLane(strand);
        stops << m_lanes.back().title;
        for (HungWall* wall : m_lanes.back().walls)
            stops << wall;
    }
    m_rover->setMembers(stops);
    setMinimumHeight(minimumSizeHint().height());
    placeLanes();
    updateGeometry();
    update();
}

void TermView::makeLane(const TermStrand& strand)
{
    Lane lane;
    lane.title = new Button(Button::Form::Word, strand.title, Icon::None, this);
    const QString answers = counted(strand.answers, tr("1 answer"), tr("%1 answers"));
    const QString meetings =
        counted(int(strand.meetings.size()), tr("1 meeting"), tr("%1 meetings"));
    lane.title->setAccessibleName(
        QStringLiteral("%1: %2, %3").arg(strand.title, answers, meetings));
    lane.title->setToolTip(tr("%1, %2").arg(answers, meetings));
    connect(lane.title, &Button::clicked, this, [this, experience = strand.experience] {
        Q_EMIT experienceAsked(experience);
    });
    lane.title->show();
    for (const DisplayId display : strand.walls) {
        auto* wall = new HungWall(m_session, m_pictures, display, this);
        connect(wall, &HungWall::clicked, this, [this, display] { Q_EMIT displayAsked(display); });
        wall->show();
        lane.walls.push_back(wall);
    }
    m_lanes.push_back(lane);
}

QRectF TermView::field() const
{
    return QRectF(rect()).adjusted(air(7), scaled(kHead), -air(7), -air(2));
}

double TermView::mirrored(double x) const
{
    return layoutDirection() == Qt::RightToLeft ? width() - x : x;
}

double TermView::x(QDate day) const
{
    const QRectF days = field();
    const double share = double(m_from.daysTo(day)) / double(m_from.daysTo(m_to) + 1);
    return mirrored(days.left() + share * days.width());
}

int TermView::heightOf(const TermStrand& strand) const
{
    return scaled(kLine) + air(3)
        + (strand.walls.empty() ? 0 : scaled(kString) + scaled(76) + air(2));
}

QSize TermView::minimumSizeHint() const
{
    int height = scaled(kHead) + air(4);
    for (const TermStrand& strand : m_strands)
        height += heightOf(strand);
    return {scaled(420), height};
}

QSize TermView::sizeHint() const
{
    return {scaled(900), minimumSizeHint().height()};
}

void TermView::resizeEvent(QResizeEvent* /*event*/)
{
    placeLanes();
}

// A strand's name begins where the strand does; its walls hang at its end, side by side.
void TermView::placeLanes()
{
    const bool leftwards = layoutDirection() == Qt::RightToLeft;
    const QRectF days = field();
    int top = int(days.top()) + air(1);
    for (std::size_t i = 0; i < m_lanes.size(); ++i) {
        Lane& lane = m_lanes[i];
        const TermStrand& strand = m_strands[i];
        lane.top = top;
        top += heightOf(strand);
        const QSize size = lane.title->sizeHint();
        const double start = strand.first.isValid() ? x(strand.first) : mirrored(days.left());
        const double wanted = leftwards ? start - size.width() + air(1.5) : start - air(1.5);
        lane.title->setGeometry(
            int(std::clamp(wanted, 0.0, std::max(0.0, double(width() - size.width())))),
            lane.top,
            size.width(),
            size.height());
        double end = strand.first.isValid() ? mirrored(x(strand.last.addDays(1))) : days.left();
        end = std::max(end, mirrored(start) + scaled(kShortest));
        int room = 0;
        for (const HungWall* wall : lane.walls)
            room += wall->sizeHint().width() + air(2);
        double at = std::clamp(end - scaled(30), 0.0, std::max(0.0, double(width() - room)));
        for (HungWall* wall : lane.walls) {
            const QSize hung = wall->sizeHint();
            wall->setGeometry(int(leftwards ? width() - at - hung.width() : at),
                lane.top + scaled(kLine) + scaled(kString),
                hung.width(),
                hung.height());
            at += hung.width() + air(2);
        }
    }
}

void TermView::paintDays(QPainter& painter) const
{
    const QRectF days = field();
    painter.setPen(QPen(tokens().line, 1));
    for (QDate monday = m_from.addDays((8 - m_from.dayOfWeek()) % 7); monday <= m_to;
         monday = monday.addDays(7))
        painter.drawLine(QLineF(x(monday), days.top(), x(monday), days.bottom()));
    painter.setPen(QPen(tokens().edge, 1));
    for (const double down : {-3.0, -0.5})
        painter.drawLine(QLineF(days.left(), days.top() + down, days.right(), days.top() + down));
    painter.setFont(interfaceFont(1.0, QFont::DemiBold));
    painter.setPen(tokens().ink);
    const QFontMetricsF metrics(painter.font());
    double before = -1e9;
    for (QDate month = m_from; month <= m_to; month = month.addMonths(1)) {
        const QString name = QLocale().standaloneMonthName(month.month(), QLocale::LongFormat);
        const double wide = metrics.horizontalAdvance(name);
        const double at = mirrored(x(month));
        if (at < before)
            continue; // a year in a narrow window: every second month has its name
        before = at + wide + air(2);
        const double left = layoutDirection() == Qt::RightToLeft ? x(month) - wide : x(month);
        painter.drawText(QPointF(left, days.top() - air(3)), name);
    }
    const QDate today = m_session.today();
    if (today < m_from || today > m_to)
        return;
    const double at = x(today);
    painter.setPen(QPen(tokens().accent, 1.6));
    painter.drawLine(QLineF(at, days.top() - 5, at, days.bottom()));
    painter.setPen(Qt::NoPen);
    painter.setBrush(tokens().accent);
    painter.drawEllipse(QPointF(at, days.top() - 1.5), 4.2, 4.2);
    painter.setFont(interfaceFont(0.88));
    painter.setPen(tokens().accent);
    const QString word = tr("today");
    const double wide = QFontMetricsF(painter.font()).horizontalAdvance(word);
    const bool fits = at + wide + air(2) < days.right();
    painter.drawText(
        QPointF(fits ? at + air(1.5) : at - air(1.5) - wide, days.bottom() - air(1)), word);
}

void TermView::paintStrand(QPainter& painter, const TermStrand& strand, const Lane& lane) const
{
    const Experience* here = m_session.experience();
    const bool isHere = here != nullptr && here->id == strand.experience;
    const QColor colour = isHere ? tokens().accent : tokens().quiet;
    const double y = lane.top + scaled(kLine);
    painter.setFont(interfaceFont(0.88));
    painter.setPen(tokens().quiet);
    const QString answers = strand.first.isValid()
        ? counted(strand.answers, tr("1 answer"), tr("%1 answers"))
        : tr("%1, on no day yet").arg(counted(strand.answers, tr("1 answer"), tr("%1 answers")));
    const QRect title = lane.title->geometry();
    const double wide = QFontMetricsF(painter.font()).horizontalAdvance(answers);
    const bool leftwards = layoutDirection() == Qt::RightToLeft;
    painter.drawText(QPointF(leftwards ? title.left() - air(1) - wide : title.right() + air(1),
                         title.center().y() + QFontMetricsF(painter.font()).ascent() / 2 - 1),
        answers);
    if (!strand.first.isValid())
        return;
    const double from = x(strand.first);
    const double shortest = mirrored(mirrored(from) + scaled(kShortest));
    double to = x(strand.last.addDays(1));
    if (std::abs(to - from) < scaled(kShortest))
        to = shortest;
    painter.setPen(QPen(colour, 2.4, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QLineF(from, y, to, y));
    painter.setPen(QPen(tokens().window, 2));
    painter.setBrush(colour);
    for (const QDate meeting : strand.meetings)
        painter.drawEllipse(QPointF((x(meeting) + x(meeting.addDays(1))) / 2, y), 6.5, 6.5);
    painter.setPen(QPen(colour, 1.2));
    for (const HungWall* wall : lane.walls) {
        const QLineF edge = wall->upperEdge().translated(wall->pos());
        const QPointF nail(edge.center().x(), y);
        painter.drawLine(QLineF(from, y, nail.x(), y));
        painter.drawPolyline(QPolygonF({edge.p1(), nail, edge.p2()}));
        painter.drawEllipse(nail, 2, 2);
    }
}

void TermView::paintEvent(QPaintEvent* event)
{
    QPainter painter(this);
    painter.fillRect(event->rect(), tokens().window);
    painter.setRenderHint(QPainter::Antialiasing);
    paintDays(painter);
    for (std::size_t i = 0; i < m_lanes.size(); ++i)
        paintStrand(painter, m_strands[i], m_lanes[i]);
}

} // namespace wainscot::ui
