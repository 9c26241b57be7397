#include "app/ui/picture/picture_sheet.h"

#include <QAccessible>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"
#include "core/media/treat.h"

namespace wainscot::ui {

namespace {

constexpr int kMarginPx = 16; // room for handles that lie on the edge
constexpr SizePx kShownPx{1200, 1200};
constexpr Corners kSuggested{{{0.08, 0.08}, {0.92, 0.08}, {0.92, 0.92}, {0.08, 0.92}}};

} // namespace

QString percent(double share)
{
    return QStringLiteral("%1\u00a0%").arg(qRound(share * 100));
}

PictureSheet::PictureSheet(QWidget* parent)
    : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(200, 160);
    setAccessibleName(tr("The picture"));
}

void PictureSheet::setUpright(const QImage& upright)
{
    m_upright = upright;
    show();
}

void PictureSheet::setPicture(const Picture& picture)
{
    m_picture = picture;
    restart();
}

void PictureSheet::setTask(Task task)
{
    m_task = task;
    m_chosen = -1;
    restart();
    Q_EMIT choiceChanged();
}

void PictureSheet::setAsItCame(bool on)
{
    m_asItCame = on;
    show();
}

void PictureSheet::setCover(Cover cover)
{
    m_cover = cover;
    recover();
}

void PictureSheet::setOval(bool oval)
{
    m_oval = oval;
    recover();
}

void PictureSheet::recover()
{
    if (m_task != Task::Cover || m_chosen < 0)
        return;
    CoveredRegion& one = m_covers.at(std::size_t(m_chosen));
    if (one.cover == m_cover && one.oval == m_oval)
        return;
    one.cover = m_cover;
    one.oval = m_oval;
    ++m_gesture;
    tell();
}

void PictureSheet::restart()
{
    m_parts.clear();
    m_covers.clear();
    const Treatment& treatment = m_picture.treatment;
    if (m_task == Task::Stay && m_picture.mustStay)
        m_parts = {*m_picture.mustStay};
    if (m_task == Task::Cover) {
        for (const CoveredRegion& one : treatment.covered) {
            m_parts.push_back(one.region);
            m_covers.push_back(one);
        }
    }
    m_corners = treatment.straightening ? treatment.straightening->corners : kSuggested;
    const int marks = m_task == Task::Straighten ? 4 : int(m_parts.size());
    m_chosen = marks == 0 ? -1 : std::clamp(m_chosen, 0, marks - 1);
    m_held = {};
    show();
    describe();
}

// What must stay is marked in the treated picture; pages and covers count from the upright one.
Treatment PictureSheet::shownTreatment() const
{
    Treatment treatment = m_picture.treatment;
    if (m_task == Task::Cover)
        treatment.covered = covers();
    if (m_task != Task::Stay || m_asItCame) {
        treatment.straightening.reset();
        treatment.evenLight = false;
    }
    return treatment;
}

std::vector<CoveredRegion> PictureSheet::covers() const
{
    std::vector<CoveredRegion> covered;
    for (std::size_t i = 0; i < m_parts.size() && i < m_covers.size(); ++i)
        covered.push_back({m_parts[i], m_covers[i].cover, m_covers[i].oval});
    return covered;
}

QImage PictureSheet::tried(SizePx within) const
{
    if (m_upright.isNull())
        return {};
    Treatment treatment = m_picture.treatment;
    if (m_task == Task::Cover)
        treatment.covered = covers();
    if (m_task == Task::Straighten)
        treatment.straightening = Straightening{m_corners, {}};
    const auto image = treatedImage(m_upright, treatment, within);
    return image ? *image : QImage();
}

void PictureSheet::show()
{
    m_shown = {};
    if (!m_upright.isNull()) {
        if (const auto image = treatedImage(m_upright, shownTreatment(), kShownPx))
            m_shown = *image;
    }
    update();
}

QRectF PictureSheet::place() const
{
    const QRectF room = QRectF(rect()).adjusted(kMarginPx, kMarginPx, -kMarginPx, -kMarginPx);
    const QSizeF size = m_shown.isNull()
        ? QSizeF(std::max(1, m_picture.size.width), std::max(1, m_picture.size.height))
        : QSizeF(m_shown.size());
    QRectF place(QPointF(), size.scaled(room.size(), Qt::KeepAspectRatio));
    place.moveCenter(room.center());
    return place;
}

QPointF PictureSheet::toPx(PointFraction point) const
{
    const QRectF all = place();
    return {all.left() + point.x * all.width(), all.top() + point.y * all.height()};
}

PointFraction PictureSheet::fromPx(QPointF at) const
{
    const QRectF all = place();
    return {std::clamp((at.x() - all.left()) / all.width(), 0.0, 1.0),
        std::clamp((at.y() - all.top()) / all.height(), 0.0, 1.0)};
}

void PictureSheet::choose(int index)
{
    if (index == m_chosen)
        return;
    m_chosen = index;
    ++m_gesture;
    if (m_task == Task::Cover && index >= 0) {
        m_cover = m_covers.at(std::size_t(index)).cover;
        m_oval = m_covers.at(std::size_t(index)).oval;
    }
    describe();
    update();
    Q_EMIT choiceChanged();
}

void PictureSheet::describe()
{
    QString now;
    if (m_task == Task::Straighten && m_chosen >= 0) {
        const PointFraction& at = m_corners.at(std::size_t(m_chosen));
        now = tr("Corner %1 of 4: %2 across, %3 down")
                  .arg(m_chosen + 1)
                  .arg(percent(at.x), percent(at.y));
    } else if (m_chosen >= 0) {
        const RectFraction& part = m_parts.at(std::size_t(m_chosen));
        const QString where =
            tr("%1 across, %2 down, %3 wide, %4 high")
                .arg(percent(part.x), percent(part.y), percent(part.width), percent(part.height));
        now = m_task == Task::Stay
            ? tr("Must stay: %1").arg(where)
            : tr("Covered part %1 of %2: %3").arg(m_chosen + 1).arg(m_parts.size()).arg(where);
    } else {
        now = m_task == Task::Stay ? tr("Nothing is marked") : tr("Nothing is covered");
    }
    setAccessibleDescription(now);
}

void PictureSheet::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const QRectF all = place();
    if (m_shown.isNull()) {
        painter.setPen(tokens().quiet);
        painter.drawText(rect(), Qt::AlignCenter, tr("Reading the picture"));
        return;
    }
    // The light comes from above, as on the panel: shadow 2/3 px at 18 % black.
    painter.fillRect(all.translated(2, 3), QColor(0, 0, 0, 46));
    painter.drawImage(all, m_shown);
    if (m_task == Task::Straighten)
        paintCorners(painter);
    else
        paintParts(painter);
    if (hasFocus())
        drawFocusRing(painter, all.adjusted(-6, -6, 6, 6));
}

void PictureSheet::paintHandle(QPainter& painter, QPointF at, bool chosen) const
{
    painter.setPen(QPen(Qt::white, 5));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(at, 7, 7);
    painter.setPen(QPen(QColor::fromRgb(kHandOnPaper), 2));
    if (chosen)
        painter.setBrush(QColor::fromRgb(kHandOnPaper));
    painter.drawEllipse(at, 7, 7);
}

void PictureSheet::paintCorners(QPainter& painter) const
{
    QPolygonF page;
    for (const PointFraction& corner : m_corners)
        page << toPx(corner);
    QPainterPath outside;
    outside.addRect(place());
    QPainterPath inside;
    inside.addPolygon(page);
    inside.closeSubpath();
    painter.fillPath(outside.subtracted(inside), QColor(0, 0, 0, 100));
    const bool can = canStraighten(m_corners, uprightPx());
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, 4));
    painter.drawPolygon(page);
    painter.setPen(QPen(QColor::fromRgb(kHandOnPaper), 2, can ? Qt::SolidLine : Qt::DashLine));
    painter.drawPolygon(page);
    for (int i = 0; i < page.size(); ++i)
        paintHandle(painter, page.at(i), i == m_chosen);
}

void PictureSheet::paintParts(QPainter& painter) const
{
    for (int i = 0; i < int(m_parts.size()); ++i) {
        const RectFraction& part = m_parts.at(std::size_t(i));
        const QRectF box(toPx({part.x, part.y}), toPx({part.x + part.width, part.y + part.height}));
        if (m_task == Task::Stay) {
            QPainterPath outside;
            outside.addRect(place());
            QPainterPath inside;
            inside.addRect(box);
            painter.fillPath(outside.subtracted(inside), QColor(0, 0, 0, 70));
        }
        const bool chosen = i == m_chosen;
        const bool oval = m_task == Task::Cover && m_covers.at(std::size_t(i)).oval;
        const auto outline = [&] { oval ? painter.drawEllipse(box) : painter.drawRect(box); };
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(Qt::white, chosen ? 4 : 3));
        outline();
        painter.setPen(QPen(chosen ? QColor::fromRgb(kHandOnPaper) : QColor(40, 38, 34),
            chosen ? 2 : 1.2,
            chosen ? Qt::SolidLine : Qt::DashLine));
        outline();
        if (chosen) {
            for (const QPointF at :
                {box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()})
                paintHandle(painter, at, false);
        }
    }
}

void PictureSheet::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    update();
}

void PictureSheet::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
}

void PictureSheet::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace wainscot::ui
