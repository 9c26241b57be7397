#include "app/ui/canvas/ruler.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPainter>

#include <array>
#include <cmath>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr double kNumbersApartPx = 40;

// A step with a number, and into how many the smallest lines part it.
struct Step {
    Mm length;
    int parts = 1;
    double unit = 1; // what the number counts, in mm
};

Step stepFor(double pxPerMm, bool inches)
{
    static constexpr std::array<std::pair<double, int>, 9> kInches{
        {{0.25, 4}, {0.5, 4}, {1, 8}, {2, 4}, {3, 6}, {6, 6}, {12, 12}, {24, 4}, {36, 6}}};
    static constexpr std::array<std::pair<double, int>, 10> kMm{{{1, 2},
        {2, 4},
        {5, 5},
        {10, 10},
        {20, 4},
        {50, 10},
        {100, 10},
        {200, 4},
        {500, 10},
        {1000, 10}}};
    const double unit = inches ? kMmPerInch : 1;
    const auto choose = [&](const auto& steps) {
        for (const auto& [length, parts] : steps) {
            if (length * unit * pxPerMm >= kNumbersApartPx)
                return Step{Mm(length * unit), parts, unit};
        }
        return Step{Mm(steps.back().first * unit), steps.back().second, unit};
    };
    return inches ? choose(kInches) : choose(kMm);
}

struct LengthWords {
    Q_DECLARE_TR_FUNCTIONS(Length)
};

} // namespace

std::vector<Tick> ticksFor(Mm length, double pxPerMm, bool inches)
{
    Step step = stepFor(pxPerMm, inches);
    while (step.parts > 1 && step.length.value() * pxPerMm / step.parts < 5)
        step.parts = step.parts % 2 == 0 ? step.parts / 2 : 1;
    std::vector<Tick> ticks;
    const int all = int(std::floor(length / step.length * step.parts + 1e-6));
    for (int i = 0; i <= all; ++i) {
        Tick tick;
        tick.at = step.length * (double(i) / step.parts);
        if (i % step.parts == 0)
            tick.label = QLocale().toString(tick.at.value() / step.unit, 'g', 6);
        else
            tick.rank = 2 * (i % step.parts) == step.parts ? 1 : 2;
        ticks.push_back(tick);
    }
    return ticks;
}

QString lengthText(Mm length, bool inches)
{
    if (inches)
        return LengthWords::tr("%1 in").arg(
            QLocale().toString(length.value() / kMmPerInch, 'f', 2));
    const bool whole = std::abs(length.value() - std::round(length.value())) < 0.05;
    return LengthWords::tr("%1 mm").arg(QLocale().toString(length.value(), 'f', whole ? 0 : 1));
}

void paintRulers(
    QPainter& painter, const QRect& area, const ViewMap& view, SizeMm panel, bool inches)
{
    const Tokens& t = tokens();
    const int band = scaled(kRulerPx);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRect(area.left(), area.top(), area.width(), band), t.window);
    painter.fillRect(QRect(area.left(), area.top(), band, area.height()), t.window);
    painter.fillRect(QRect(area.left(), area.top() + band, area.width(), 1), t.line);
    painter.fillRect(QRect(area.left() + band, area.top(), 1, area.height()), t.line);
    painter.setFont(interfaceFont(0.72));
    painter.setPen(t.quiet);
    const auto lengthOf = [&](int rank) {
        return rank == 0 ? band : rank == 1 ? band / 2 : band / 4;
    };
    const int high = painter.fontMetrics().height();
    painter.setClipRect(area.adjusted(band + 1, 0, 0, 0));
    for (const Tick& tick : ticksFor(panel.width, view.scale(), inches)) {
        const int x = int(std::lround(view.toPx(PointMm{tick.at, Mm(0)}).x()));
        const int length = lengthOf(tick.rank);
        painter.fillRect(x, area.top() + band - length, 1, length, t.edge);
        if (tick.rank == 0)
            painter.drawText(x + 3, area.top() + high - 3, tick.label);
    }
    painter.setClipRect(area.adjusted(0, band + 1, 0, 0));
    for (const Tick& tick : ticksFor(panel.height, view.scale(), inches)) {
        const int y = int(std::lround(view.toPx(PointMm{Mm(0), tick.at}).y()));
        const int length = lengthOf(tick.rank);
        painter.fillRect(area.left() + band - length, y, length, 1, t.edge);
        if (tick.rank != 0)
            continue;
        painter.save();
        painter.translate(area.left() + high - 3, y - 3);
        painter.rotate(-90);
        painter.drawText(0, 0, tick.label);
        painter.restore();
    }
    painter.setClipping(false);
    painter.fillRect(QRect(area.left(), area.top(), band, band), t.window);
    painter.drawText(QRect(area.left(), area.top(), band, band),
        Qt::AlignCenter,
        inches ? LengthWords::tr("in") : LengthWords::tr("mm"));
    painter.restore();
}

} // namespace wainscot::ui
