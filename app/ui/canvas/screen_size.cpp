#include "app/ui/canvas/screen_size.h"

#include <QScreen>
#include <QWidget>

#include "app/jobs/program_settings.h"
#include "core/base/quantity.h"

namespace wainscot::ui {

namespace {

QString keyFor(const QScreen& screen)
{
    return QStringLiteral("screens/%1 %2 %3")
        .arg(screen.manufacturer(), screen.model(), screen.name())
        .simplified()
        .replace(QLatin1Char(' '), QLatin1Char('-'));
}

// 0 = nobody has, or what the settings say is no screen: a film's or a wall of lamps.
double measured(const QWidget& widget)
{
    constexpr double kLeast = 0.5; // pixels a millimetre
    constexpr double kMost = 50;
    const QScreen* screen = widget.screen();
    const double kept =
        screen != nullptr ? ProgramSettings().value(keyFor(*screen), 0.0).toDouble() : 0.0;
    return kept >= kLeast && kept <= kMost ? kept : 0.0;
}

} // namespace

double pixelsPerMm(const QWidget& widget)
{
    if (const double known = measured(widget); known > 0)
        return known;
    const QScreen* screen = widget.screen();
    const double perInch = screen != nullptr ? screen->physicalDotsPerInch() : 0.0;
    // Projectors and virtual screens tell sizes of nothing or of a wall.
    const bool plausible = perInch >= 50 && perInch <= 400;
    return (plausible ? perInch : 96.0) / kMmPerInch;
}

bool screenSizeIsMeasured(const QWidget& widget)
{
    return measured(widget) > 0;
}

void setPixelsPerMm(const QWidget& widget, double pixels)
{
    const QScreen* screen = widget.screen();
    if (screen == nullptr)
        return;
    ProgramSettings settings;
    if (pixels > 0)
        settings.setValue(keyFor(*screen), pixels);
    else
        settings.remove(keyFor(*screen));
}

} // namespace wainscot::ui
