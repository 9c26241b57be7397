#include "app/ui/frame/tab_order.h"

#include <QVector>

#include <algorithm>

namespace wainscot::ui {

namespace {

QVector<QWidget*> shownChildren(const QWidget& widget)
{
    QVector<QWidget*> children;
    for (QObject* object : widget.children()) {
        auto* child = qobject_cast<QWidget*>(object);
        if (child != nullptr && !child->isWindow() && child->isVisible())
            children << child;
    }
    return children;
}

// Later children lie above earlier ones.
void dropCovered(QVector<QWidget*>& children)
{
    for (qsizetype i = children.size() - 2; i >= 0; --i) {
        const bool covered =
            std::any_of(children.begin() + i + 1, children.end(), [&](const QWidget* above) {
                return !above->testAttribute(Qt::WA_TransparentForMouseEvents)
                    && above->geometry().contains(children[i]->geometry());
            });
        if (covered)
            children.remove(i);
    }
}

bool readBefore(const QWidget* one, const QWidget* other, bool fromRight)
{
    const QRect a = one->geometry();
    const QRect b = other->geometry();
    if (fromRight && a.right() != b.right())
        return a.right() > b.right();
    if (!fromRight && a.left() != b.left())
        return a.left() < b.left();
    return a.top() < b.top();
}

// Rows from the top. A widget whose middle lies within a row belongs to it.
void sortIntoRows(QVector<QWidget*>& widgets, bool fromRight)
{
    std::stable_sort(widgets.begin(), widgets.end(), [](const QWidget* a, const QWidget* b) {
        return a->geometry().top() < b->geometry().top();
    });
    auto row = widgets.begin();
    while (row != widgets.end()) {
        int bottom = (*row)->geometry().bottom();
        auto end = row + 1;
        while (end != widgets.end() && (*end)->geometry().center().y() <= bottom) {
            bottom = std::max(bottom, (*end)->geometry().bottom());
            ++end;
        }
        std::stable_sort(row, end, [&](const QWidget* a, const QWidget* b) {
            return readBefore(a, b, fromRight);
        });
        row = end;
    }
}

void addStops(const QWidget& widget, bool fromRight, QVector<QWidget*>& stops)
{
    QVector<QWidget*> children = shownChildren(widget);
    dropCovered(children);
    sortIntoRows(children, fromRight);
    for (QWidget* child : children) {
        const bool takesTab = (child->focusPolicy() & Qt::TabFocus) != 0;
        if (takesTab && child->isEnabled() && child->focusProxy() == nullptr)
            stops << child;
        addStops(*child, fromRight, stops);
    }
}

} // namespace

QWidget* nextStop(const QWidget& window, const QWidget* from, bool forward)
{
    QVector<QWidget*> stops;
    addStops(window, window.layoutDirection() == Qt::RightToLeft, stops);
    if (stops.isEmpty())
        return nullptr;
    const qsizetype at = stops.indexOf(const_cast<QWidget*>(from));
    const qsizetype step = forward ? 1 : -1;
    const qsizetype start = at >= 0 ? at + step : (forward ? 0 : -1);
    return stops[(start + stops.size()) % stops.size()];
}

} // namespace wainscot::ui
