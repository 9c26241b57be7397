#include "app/ui/kit/style.h"

#include <QComboBox>
#include <QPainter>
#include <QStyleOption>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

void drawEntry(const QStyleOption& option, QPainter& painter)
{
    const bool focus = option.state.testFlag(QStyle::State_HasFocus);
    const double inset = focus ? 1 : 0.5;
    painter.setPen(QPen(focus ? tokens().accent : tokens().edge, focus ? 2 : 1));
    painter.setBrush(tokens().field);
    painter.drawRoundedRect(QRectF(option.rect).adjusted(inset, inset, -inset, -inset), 3, 3);
}

void drawTick(const QStyleOption& option, QPainter& painter)
{
    const Tokens& t = tokens();
    const QRectF box = QRectF(option.rect).adjusted(1, 1, -1, -1);
    const bool on = option.state.testFlag(QStyle::State_On);
    painter.setPen(QPen(on ? t.accent : t.edge, 1.5));
    painter.setBrush(on ? t.accent : t.field);
    painter.drawRoundedRect(box, 2, 2);
    if (!on)
        return;
    painter.setPen(QPen(t.onAccent, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF({box.topLeft() + QPointF(box.width() * 0.22, box.height() * 0.5),
        box.topLeft() + QPointF(box.width() * 0.43, box.height() * 0.72),
        box.topLeft() + QPointF(box.width() * 0.8, box.height() * 0.28)}));
}

void drawProgress(const QStyleOptionProgressBar& bar, bool groove, QPainter& painter)
{
    painter.setPen(Qt::NoPen);
    if (groove) {
        painter.setBrush(tokens().line);
        painter.drawRoundedRect(bar.rect, 2, 2);
        return;
    }
    const double share = double(bar.progress - bar.minimum) / qMax(1, bar.maximum - bar.minimum);
    QRect done(bar.rect.left(), bar.rect.top(), int(bar.rect.width() * share), bar.rect.height());
    if (bar.direction == Qt::RightToLeft)
        done.moveRight(bar.rect.right());
    painter.setBrush(tokens().accent);
    painter.drawRoundedRect(done, 2, 2);
}

} // namespace

WindowStyle::WindowStyle()
    : QProxyStyle(QStringLiteral("Fusion"))
{
}

void WindowStyle::drawPrimitive(PrimitiveElement element,
    const QStyleOption* option,
    QPainter* painter,
    const QWidget* widget) const
{
    if (element == PE_FrameFocusRect)
        return;
    const bool entry = element == PE_PanelLineEdit || element == PE_FrameLineEdit;
    // A choice that may also be written has its frame around the whole.
    const QWidget* around = widget != nullptr ? widget->parentWidget() : nullptr;
    if (entry && qobject_cast<const QComboBox*>(around) != nullptr)
        return;
    if (!entry && element != PE_IndicatorCheckBox) {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
        return;
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (entry)
        drawEntry(*option, *painter);
    else
        drawTick(*option, *painter);
    painter->restore();
}

void WindowStyle::drawControl(ControlElement element,
    const QStyleOption* option,
    QPainter* painter,
    const QWidget* widget) const
{
    const Tokens& t = tokens();
    if (element == CE_MenuBarEmptyArea) {
        painter->fillRect(option->rect, t.window);
        return;
    }
    if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        item != nullptr && element == CE_MenuBarItem) {
        const bool on = item->state & (State_Selected | State_Sunken);
        painter->fillRect(item->rect, on ? t.accentTint : t.window);
        painter->setPen(t.ink);
        painter->drawText(
            item->rect, Qt::AlignCenter | Qt::TextShowMnemonic | Qt::TextSingleLine, item->text);
        return;
    }
    if (const auto* bar = qstyleoption_cast<const QStyleOptionProgressBar*>(option);
        bar != nullptr && (element == CE_ProgressBarGroove || element == CE_ProgressBarContents)) {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        drawProgress(*bar, element == CE_ProgressBarGroove, *painter);
        painter->restore();
        return;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void WindowStyle::drawComplexControl(ComplexControl control,
    const QStyleOptionComplex* option,
    QPainter* painter,
    const QWidget* widget) const
{
    const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
    if (control != CC_ScrollBar || slider == nullptr) {
        QProxyStyle::drawComplexControl(control, option, painter, widget);
        return;
    }
    const QRect knob = subControlRect(CC_ScrollBar, option, SC_ScrollBarSlider, widget);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    painter->setBrush(slider->state.testFlag(State_MouseOver) ? tokens().quiet : tokens().edge);
    if (slider->orientation == Qt::Vertical) {
        painter->drawRoundedRect(
            QRectF(knob.center().x() - 2, knob.top() + 2, 5, knob.height() - 4), 2.5, 2.5);
    } else {
        painter->drawRoundedRect(
            QRectF(knob.left() + 2, knob.center().y() - 2, knob.width() - 4, 5), 2.5, 2.5);
    }
    painter->restore();
}

int WindowStyle::pixelMetric(
    PixelMetric metric, const QStyleOption* option, const QWidget* widget) const
{
    switch (metric) {
    case PM_ScrollBarExtent:
        return scaled(11);
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
        return scaled(17);
    case PM_MenuBarItemSpacing:
        return air(1);
    case PM_MenuBarVMargin:
        return 1;
    case PM_MenuBarHMargin:
        return air(2);
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int WindowStyle::styleHint(
    StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* data) const
{
    if (hint == SH_ScrollBar_LeftClickAbsolutePosition)
        return 0;
    return QProxyStyle::styleHint(hint, option, widget, data);
}

} // namespace wainscot::ui
