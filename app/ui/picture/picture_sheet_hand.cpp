// The hand on a picture: handles dragged, moved by keys, parts drawn and taken away.
#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <cmath>

#include "app/ui/picture/picture_sheet.h"

namespace wainscot::ui {

namespace {

constexpr double kStep = 0.01; // of the picture's side, by an arrow key
constexpr double kFineStep = 0.002; // with Alt
constexpr double kLeastPart = 0.01; // of a side
constexpr double kCatchPx = 14;

QPointF stepOf(const QKeyEvent& event)
{
    const double step = event.modifiers().testFlag(Qt::AltModifier) ? kFineStep : kStep;
    switch (event.key()) {
    case Qt::Key_Left:
        return {-step, 0};
    case Qt::Key_Right:
        return {step, 0};
    case Qt::Key_Up:
        return {0, -step};
    case Qt::Key_Down:
        return {0, step};
    default:
        return {};
    }
}

// Where a span goes that may not leave 0..1.
double inside(double from, double length)
{
    return std::clamp(from, 0.0, std::max(0.0, 1 - length));
}

RectFraction between(PointFraction a, PointFraction b)
{
    return {std::min(a.x, b.x), std::min(a.y, b.y), std::abs(a.x - b.x), std::abs(a.y - b.y)};
}

} // namespace

SizePx PictureSheet::uprightPx() const
{
    return {m_upright.width(), m_upright.height()};
}

PictureSheet::Held PictureSheet::gripAt(QPointF at) const
{
    const auto near = [&](PointFraction point) {
        return QLineF(toPx(point), at).length() <= kCatchPx;
    };
    if (m_task == Task::Straighten) {
        for (int i = 0; i < 4; ++i) {
            if (near(m_corners.at(std::size_t(i))))
                return {Grip::Corner, i};
        }
        return {};
    }
    // The chosen one first: its handles may lie over another.
    for (int round = -1; round < int(m_parts.size()); ++round) {
        const int i = round < 0 ? m_chosen : int(m_parts.size()) - 1 - round;
        if (i < 0)
            continue;
        const RectFraction& part = m_parts.at(std::size_t(i));
        for (const bool left : {true, false}) {
            for (const bool top : {true, false}) {
                if (i == m_chosen
                    && near(
                        {left ? part.x : part.x + part.width, top ? part.y : part.y + part.height}))
                    return {Grip::Size, i, left, top, false};
            }
        }
        const QRectF box(toPx({part.x, part.y}), toPx({part.x + part.width, part.y + part.height}));
        if (box.contains(at))
            return {Grip::Move, i};
    }
    return {};
}

void PictureSheet::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton || m_shown.isNull())
        return;
    m_held = gripAt(event->position());
    m_pressedAt = fromPx(event->position());
    ++m_gesture;
    if (m_held.grip == Grip::None && m_task == Task::Straighten)
        return;
    if (m_held.grip == Grip::None) {
        // A new part; of what must stay there is one.
        if (m_task == Task::Stay)
            m_parts.clear();
        m_parts.push_back({m_pressedAt.x, m_pressedAt.y, 0, 0});
        if (m_task == Task::Cover)
            m_covers.push_back({{}, m_cover, m_oval});
        m_held = {Grip::Size, int(m_parts.size()) - 1, false, false, true};
    }
    choose(m_held.index);
    if (m_held.grip != Grip::Corner)
        m_before = m_parts.at(std::size_t(m_held.index));
}

void PictureSheet::mouseMoveEvent(QMouseEvent* event)
{
    if (m_held.grip == Grip::None) {
        const Held under = gripAt(event->position());
        setCursor(under.grip == Grip::None
                ? (m_task == Task::Straighten ? Qt::ArrowCursor : Qt::CrossCursor)
                : Qt::SizeAllCursor);
        return;
    }
    dragTo(fromPx(event->position()));
}

void PictureSheet::dragTo(PointFraction at)
{
    const double dx = at.x - m_pressedAt.x;
    const double dy = at.y - m_pressedAt.y;
    const auto index = std::size_t(m_held.index);
    switch (m_held.grip) {
    case Grip::Corner:
        m_corners.at(index) = at;
        break;
    case Grip::Move:
        m_parts.at(index).x = inside(m_before.x + dx, m_before.width);
        m_parts.at(index).y = inside(m_before.y + dy, m_before.height);
        break;
    case Grip::Size: {
        const PointFraction fixed{m_held.left ? m_before.x + m_before.width : m_before.x,
            m_held.top ? m_before.y + m_before.height : m_before.y};
        m_parts.at(index) = between(fixed, at);
        break;
    }
    case Grip::None:
        return;
    }
    if (m_task == Task::Cover)
        show();
    describe();
    update();
    Q_EMIT trying();
}

void PictureSheet::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton || m_held.grip == Grip::None)
        return;
    const Held held = std::exchange(m_held, {});
    if (held.grip == Grip::Corner) {
        tell();
        return;
    }
    const RectFraction& part = m_parts.at(std::size_t(held.index));
    if (part.width < kLeastPart || part.height < kLeastPart) {
        restart(); // a click beside the parts, or one pushed together
        Q_EMIT choiceChanged();
        return;
    }
    if (held.isNew || !(part == m_before))
        tell();
}

void PictureSheet::tell()
{
    describe();
    switch (m_task) {
    case Task::Stay:
        Q_EMIT stayMarked(
            m_parts.empty() ? std::nullopt : std::optional(m_parts.front()), m_gesture);
        break;
    case Task::Cover:
        Q_EMIT coversSet(covers(), m_gesture);
        break;
    case Task::Straighten:
        if (canStraighten(m_corners, uprightPx())) {
            Q_EMIT cornersSet(m_corners, m_gesture);
        } else {
            restart();
            Q_EMIT said(tr("The four corners have to go round a page."));
        }
        break;
    }
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void PictureSheet::keepCorners()
{
    if (m_task != Task::Straighten)
        return;
    ++m_gesture;
    tell();
}

void PictureSheet::addPart()
{
    if (m_task == Task::Straighten || m_shown.isNull())
        return;
    if (m_task == Task::Stay)
        m_parts.clear();
    m_parts.push_back(m_task == Task::Stay ? RectFraction{0.25, 0.25, 0.5, 0.5}
                                           : RectFraction{0.4, 0.4, 0.2, 0.2});
    if (m_task == Task::Cover)
        m_covers.push_back({{}, m_cover, m_oval});
    ++m_gesture;
    m_chosen = int(m_parts.size()) - 1;
    tell();
    Q_EMIT choiceChanged();
}

void PictureSheet::removeChosen()
{
    if (m_task == Task::Straighten || m_chosen < 0)
        return;
    m_parts.erase(m_parts.begin() + m_chosen);
    if (m_task == Task::Cover)
        m_covers.erase(m_covers.begin() + m_chosen);
    m_chosen = m_parts.empty() ? -1 : std::min(m_chosen, int(m_parts.size()) - 1);
    ++m_gesture;
    tell();
    Q_EMIT choiceChanged();
}

void PictureSheet::chooseNext(int step)
{
    const int count = m_task == Task::Straighten ? 4 : int(m_parts.size());
    if (count > 0)
        choose(((m_chosen < 0 ? (step > 0 ? -1 : 0) : m_chosen) + step + count) % count);
}

bool PictureSheet::moveBy(double dx, double dy)
{
    if (m_chosen < 0)
        return false;
    const auto index = std::size_t(m_chosen);
    if (m_task == Task::Straighten) {
        PointFraction& at = m_corners.at(index);
        const PointFraction before = at;
        at = {std::clamp(at.x + dx, 0.0, 1.0), std::clamp(at.y + dy, 0.0, 1.0)};
        return !(at == before);
    }
    RectFraction& part = m_parts.at(index);
    const RectFraction before = part;
    part.x = inside(part.x + dx, part.width);
    part.y = inside(part.y + dy, part.height);
    return !(part == before);
}

bool PictureSheet::sizeBy(double dx, double dy)
{
    if (m_chosen < 0 || m_task == Task::Straighten)
        return false;
    RectFraction& part = m_parts.at(std::size_t(m_chosen));
    const RectFraction before = part;
    part.width = std::clamp(part.width + dx, 2 * kLeastPart, 1 - part.x);
    part.height = std::clamp(part.height + dy, 2 * kLeastPart, 1 - part.y);
    return !(part == before);
}

void PictureSheet::keyPressEvent(QKeyEvent* event)
{
    const QPointF step = stepOf(*event);
    if (!step.isNull()) {
        const bool sizes = event->modifiers().testFlag(Qt::ShiftModifier);
        if (sizes ? sizeBy(step.x(), step.y()) : moveBy(step.x(), step.y()))
            tell();
        return;
    }
    switch (event->key()) {
    case Qt::Key_Space:
        chooseNext(event->modifiers().testFlag(Qt::ShiftModifier) ? -1 : 1);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_task == Task::Straighten)
            keepCorners();
        else if (m_parts.empty() || m_task == Task::Cover)
            addPart();
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        removeChosen();
        return;
    case Qt::Key_Escape:
        if (m_held.grip != Grip::None)
            restart();
        else
            Q_EMIT leaveAsked();
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

// Keys of the window must not take arrows and letters away from the picture.
bool PictureSheet::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        if (auto* key = dynamic_cast<QKeyEvent*>(event);
            key != nullptr && (!stepOf(*key).isNull() || key->key() == Qt::Key_Delete)) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

} // namespace wainscot::ui
