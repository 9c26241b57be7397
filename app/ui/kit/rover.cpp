#include "app/ui/kit/rover.h"

#include <algorithm>

#include <QGuiApplication>
#include <QKeyEvent>

namespace wainscot::ui {

Rover::Rover(QObject* owner)
    : QObject(owner)
{
}

void Rover::setMembers(const QVector<QWidget*>& members, int current)
{
    QWidget* before = stop();
    for (const auto& member : std::as_const(m_members)) {
        if (member)
            member->removeEventFilter(this);
    }
    m_members.clear();
    for (QWidget* member : members) {
        m_members.push_back(member);
        member->installEventFilter(this);
    }
    if (members.isEmpty())
        return;
    const bool stays = before != nullptr && members.contains(before);
    putStopOn(stays ? before : members.at(qBound(0, current, int(members.size()) - 1)));
}

QWidget* Rover::stop() const
{
    for (const auto& member : m_members) {
        if (member && member->focusPolicy() == Qt::StrongFocus)
            return member;
    }
    return nullptr;
}

void Rover::putStopOn(QWidget* stop)
{
    for (const auto& member : std::as_const(m_members)) {
        if (member)
            member->setFocusPolicy(member == stop ? Qt::StrongFocus : Qt::ClickFocus);
    }
}

bool Rover::moveFrom(int index, int key)
{
    const int after = QGuiApplication::isRightToLeft() ? Qt::Key_Left : Qt::Key_Right;
    const int before = QGuiApplication::isRightToLeft() ? Qt::Key_Right : Qt::Key_Left;
    int step = 0;
    int at = index;
    if (key == Qt::Key_Down || key == after)
        step = 1;
    else if (key == Qt::Key_Up || key == before)
        step = -1;
    else if (key == Qt::Key_Home) {
        step = 1;
        at = -1;
    } else if (key == Qt::Key_End) {
        step = -1;
        at = int(m_members.size());
    } else
        return false;
    // Hidden members are stepped over; at the ends the focus stays.
    for (at += step; at >= 0 && at < m_members.size(); at += step) {
        QWidget* member = m_members.at(at);
        if (member != nullptr && member->isVisible() && member->isEnabled()) {
            member->setFocus(Qt::TabFocusReason);
            break;
        }
    }
    return true;
}

bool Rover::eventFilter(QObject* watched, QEvent* event)
{
    auto* widget = qobject_cast<QWidget*>(watched);
    const int index = int(m_members.indexOf(widget));
    if (index < 0)
        return false;
    if (event->type() == QEvent::FocusIn) {
        putStopOn(widget);
        return false;
    }
    if (event->type() != QEvent::KeyPress)
        return false;
    auto* key = static_cast<QKeyEvent*>(event);
    if ((key->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier)
        return false;
    return moveFrom(index, key->key());
}

LastStop::LastStop(const QVector<QWidget*>& members)
{
    for (const QWidget* member : members) {
        if (member->hasFocus())
            m_at = int(m_names.size());
        m_names << member->accessibleName();
    }
}

QWidget* LastStop::among(const QVector<QWidget*>& members) const
{
    const auto called = [&members](const QString& name) -> QWidget* {
        const auto at = std::find_if(members.begin(), members.end(), [&name](const QWidget* one) {
            return one->accessibleName() == name;
        });
        return at != members.end() ? *at : nullptr;
    };
    if (!isKnown())
        return nullptr;
    if (QWidget* same = called(m_names[m_at]))
        return same;
    if (members.size() == m_names.size())
        return members[m_at]; // it has another name now
    for (int at = m_at + 1; at < m_names.size(); ++at) {
        if (QWidget* stop = called(m_names[at]))
            return stop;
    }
    for (int at = m_at - 1; at >= 0; --at) {
        if (QWidget* stop = called(m_names[at]))
            return stop;
    }
    return nullptr;
}

} // namespace wainscot::ui
