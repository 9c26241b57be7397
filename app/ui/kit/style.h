// How the few controls taken from the toolkit are drawn: text entry, ticks, scroll bars, menu line.
#pragma once

#include <QProxyStyle>

namespace wainscot::ui {

class WindowStyle : public QProxyStyle {
    Q_OBJECT
public:
    WindowStyle();
    void drawPrimitive(PrimitiveElement element,
        const QStyleOption* option,
        QPainter* painter,
        const QWidget* widget) const override;
    void drawControl(ControlElement element,
        const QStyleOption* option,
        QPainter* painter,
        const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control,
        const QStyleOptionComplex* option,
        QPainter* painter,
        const QWidget* widget) const override;
    int pixelMetric(
        PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    int styleHint(StyleHint hint,
        const QStyleOption* option,
        const QWidget* widget,
        QStyleHintReturn* data) const override;
};

} // namespace wainscot::ui
