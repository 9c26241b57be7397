#include "app/ui/hang/wall_view.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <cmath>

#include "app/jobs/kept_limits.h"
#include "app/ui/compose/panel_picture.h"
#include "app/ui/kit/icons.h"

namespace wainscot::ui {

namespace {

constexpr int kAbove = 18;
constexpr int kBelow = 40; // room for the metres
constexpr int kBefore = 64;
constexpr int kAfter = 190; // names of the bands
constexpr Mm kStep{10};
constexpr Mm kSmallStep{1};

} // namespace

WallView::WallView(Session& session, PictureShelf& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_pictures(pictures)
{
    setFocusPolicy(Qt::StrongFocus);
    setMinimumHeight(160);
    setMouseTracking(true);
    connect(&pictures, &PictureShelf::loaded, this, [this] {
        forgetPictures();
        update();
    });
}

void WallView::setWall(const Wall& wall)
{
    m_wall = wall;
    m_plan = planOf(m_session.book(), wall, keptStandOut());
    if (m_hand >= things())
        m_hand = -1;
    describe();
    update();
}

void WallView::forgetPictures()
{
    m_pixmaps.clear();
}

int WallView::things() const
{
    return static_cast<int>(m_wall.panels.size() + m_wall.fittings.size());
}

RectMm WallView::placeOf(int thing) const
{
    const int panels = static_cast<int>(m_wall.panels.size());
    if (thing >= panels)
        return m_wall.fittings[static_cast<std::size_t>(thing - panels)].place;
    const PanelOnWall& hung = m_wall.panels[static_cast<std::size_t>(thing)];
    for (const HangingLine& line : m_plan.list) {
        if (line.panel == hung.panel)
            return line.place;
    }
    return {};
}

QString WallView::nameOf(int thing) const
{
    const int panels = static_cast<int>(m_wall.panels.size());
    if (thing >= panels)
        return inWords(m_wall.fittings[static_cast<std::size_t>(thing - panels)].kind);
    for (const HangingLine& line : m_plan.list) {
        if (line.panel == m_wall.panels[static_cast<std::size_t>(thing)].panel)
            return line.name;
    }
    return {};
}

void WallView::take(int thing)
{
    if (thing == m_hand)
        return;
    m_hand = thing;
    m_gesture = m_session.isOpen() ? m_session.newGesture() : 0;
    describe();
    update();
    Q_EMIT handChanged();
}

// The list beside it tells the same in words.
void WallView::describe()
{
    setAccessibleName(tr("%1, %2 by %3 mm, %4 panels")
                          .arg(m_wall.name, millimetres(m_wall.size.width))
                          .arg(millimetres(m_wall.size.height))
                          .arg(m_plan.list.size()));
    setAccessibleDescription(m_hand < 0
            ? tr("The hanging list tells where everything is.")
            : tr("%1 in your hand, %2 mm from the left, %3 mm up")
                  .arg(nameOf(m_hand),
                      millimetres(placeOf(m_hand).x),
                      millimetres(m_wall.size.height - placeOf(m_hand).bottom())));
}

QPixmap WallView::panelPixmap(PanelId panel, int width)
{
    const qint64 key = panel.number() * 100000 + width;
    const auto at = m_pixmaps.constFind(key);
    if (at != m_pixmaps.constEnd())
        return *at;
    QPixmap made = panelPicture(m_session.book(), panel, width, m_pictures);
    m_pixmaps.insert(key, made);
    return made;
}

QRectF WallView::wallRect() const
{
    const bool narrow = width() < scaled(800);
    const QRectF room = QRectF(rect()).adjusted(
        scaled(kBefore), kAbove, -scaled(narrow ? 140 : kAfter), -scaled(kBelow));
    return WallPicture(m_wall, m_plan, tokens(), {}).fitted(room);
}

void WallView::paintEvent(QPaintEvent* event)
{
    QPainter painter(this);
    painter.fillRect(event->rect(), tokens().wall);
    const WallPicture picture(m_wall, m_plan, tokens(), [this](PanelId panel, int width) {
        return panelPixmap(panel, width);
    });
    const QRectF wall = wallRect();
    picture.paintScales(painter, wall);
    picture.paint(painter, wall, m_hand);
    if (hasFocus())
        drawFocusRing(painter, QRectF(rect()).adjusted(3, 3, -3, -3));
}

int WallView::thingAt(const QPointF& at) const
{
    const QRectF wall = wallRect();
    for (int thing = 0; thing < things(); ++thing) {
        const QRectF rect = WallPicture::onScreen(placeOf(thing), wall, m_wall.size);
        // Small things are caught around them too.
        const double grow = qMax(0.0, 13 - qMin(rect.width(), rect.height()) / 2);
        if (rect.adjusted(-grow, -grow, grow, grow).contains(at))
            return thing;
    }
    return -1;
}

void WallView::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    take(thingAt(event->position()));
    m_dragging = m_hand >= 0;
    if (!m_dragging)
        return;
    m_gesture = m_session.newGesture();
    const QRectF wall = wallRect();
    const QPointF corner = WallPicture::onScreen(placeOf(m_hand), wall, m_wall.size).topLeft();
    const double perPx = m_wall.size.width.value() / wall.width();
    m_grip = {Mm((event->position().x() - corner.x()) * perPx),
        Mm((event->position().y() - corner.y()) * perPx)};
}

void WallView::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_dragging) {
        setCursor(thingAt(event->position()) >= 0 ? Qt::OpenHandCursor : Qt::ArrowCursor);
        return;
    }
    const QRectF wall = wallRect();
    const double perPx = m_wall.size.width.value() / wall.width();
    const auto rounded = [](Mm length) { return Mm(std::round(length.value() / 5) * 5); };
    moveTo({rounded(Mm((event->position().x() - wall.left()) * perPx) - m_grip.x),
        rounded(Mm((event->position().y() - wall.top()) * perPx) - m_grip.y)});
}

void WallView::mouseReleaseEvent(QMouseEvent* /*event*/)
{
    m_dragging = false;
}

// Nothing leaves the wall.
void WallView::moveTo(PointMm corner)
{
    const RectMm place = placeOf(m_hand);
    const Mm right = std::max(Mm(), m_wall.size.width - place.width);
    const Mm bottom = std::max(Mm(), m_wall.size.height - place.height);
    const PointMm kept{std::clamp(corner.x, Mm(), right), std::clamp(corner.y, Mm(), bottom)};
    if (kept == place.topLeft())
        return;
    Wall changed = m_wall;
    const int panels = static_cast<int>(m_wall.panels.size());
    if (m_hand < panels) {
        changed.panels[static_cast<std::size_t>(m_hand)].corner = kept;
    } else {
        RectMm& fitting = changed.fittings[static_cast<std::size_t>(m_hand - panels)].place;
        fitting = {kept.x, kept.y, fitting.width, fitting.height};
    }
    Q_EMIT moved(changed, m_gesture);
}

void WallView::keyPressEvent(QKeyEvent* event)
{
    const Mm step = event->modifiers().testFlag(Qt::AltModifier) ? kSmallStep : kStep;
    const int key = event->key();
    if (key == Qt::Key_PageDown || key == Qt::Key_PageUp) {
        const int count = things();
        if (count > 0)
            take((m_hand + (key == Qt::Key_PageDown ? 1 : count)) % count);
        return;
    }
    if (key == Qt::Key_Escape && m_hand >= 0) {
        take(-1);
        return;
    }
    if (m_hand < 0)
        return QWidget::keyPressEvent(event);
    PointMm corner = placeOf(m_hand).topLeft();
    switch (key) {
    case Qt::Key_Left:
        corner.x -= step;
        break;
    case Qt::Key_Right:
        corner.x += step;
        break;
    case Qt::Key_Up:
        corner.y -= step;
        break;
    case Qt::Key_Down:
        corner.y += step;
        break;
    default:
        return QWidget::keyPressEvent(event);
    }
    moveTo(corner);
}

void WallView::focusInEvent(QFocusEvent* event)
{
    update();
    QWidget::focusInEvent(event);
}

} // namespace wainscot::ui
