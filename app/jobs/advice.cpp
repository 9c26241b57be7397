#include "app/jobs/advice.h"

#include "core/base/paper_size.h"
#include "core/base/says.h"
#include "layout/engine/advice.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr double kLeastShare = 0.2; // of the panel; smaller ones are not the same wall any more
constexpr double kSmallestMm2 = 297.0 * 420.0 * 0.95; // A3: below, nobody hangs a panel

double areaOf(SizeMm size)
{
    return size.width.value() * size.height.value();
}

bool isUs(const QString& name)
{
    return !name.startsWith(QLatin1Char('A'));
}

QString percent(double share)
{
    return QString::number(static_cast<int>(std::lround(100 * share)));
}

QString sheetsInWords(double sheets)
{
    if (sheets <= 0.5)
        return Says::tr("half an A4 sheet");
    if (sheets == 1)
        return Says::tr("one A4 sheet");
    return Says::tr("%1 A4 sheets").arg(sheets);
}

QString roomInWords(double mm2)
{
    return Says::tr("%1 square centimetres, about %2")
        .arg(std::lround(mm2 / 100))
        .arg(sheetsInWords(engine::a4Sheets(mm2)));
}

QString piecesInWords(std::size_t count)
{
    return count == 1 ? Says::tr("One quote that was meant for it has")
                      : Says::tr("%1 quotes that were meant for it have").arg(count);
}

} // namespace

QString nameOf(AdviceKind kind)
{
    switch (kind) {
    case AdviceKind::SmallerPanel:
        return QStringLiteral("smaller_panel");
    case AdviceKind::LargerWords:
        return QStringLiteral("larger_words");
    case AdviceKind::MorePanels:
        return QStringLiteral("more_panels");
    case AdviceKind::LessOnIt:
        return QStringLiteral("less_on_it");
    }
    return {};
}

QString sentenceFor(const Advice& advice)
{
    switch (advice.kind) {
    case AdviceKind::SmallerPanel:
        return Says::tr("%1 % of the panel is white; on %2 everything fits and %3 % is.")
            .arg(
                percent(advice.whiteNow), nameOfPaper(advice.panelSize), percent(advice.whiteThen));
    case AdviceKind::LargerWords:
        return Says::tr("%1 % of the panel is white; with the children's words one step "
                        "larger (step %2) %3 % is.")
            .arg(percent(advice.whiteNow))
            .arg(advice.voiceStep)
            .arg(percent(advice.whiteThen));
    case AdviceKind::MorePanels:
        return Says::tr("%1 no room: %2. On %3 panels it fits.")
            .arg(piecesInWords(advice.quotes.size()), roomInWords(advice.missingMm2))
            .arg(advice.panels);
    case AdviceKind::LessOnIt:
        return Says::tr("%1 no room: %2. What stands on the panel is the best choice without "
                        "it.")
            .arg(piecesInWords(advice.quotes.size()), roomInWords(advice.missingMm2));
    }
    return {};
}

std::vector<SizeMm> smallerPanels(SizeMm panel)
{
    const bool across = panel.width > panel.height;
    const bool us = isUs(nameOfPaper(panel)) && paperSizeNames().contains(nameOfPaper(panel));
    std::vector<SizeMm> sizes;
    for (const QString& name : paperSizeNames()) {
        const Result<SizeMm> size = paperSizeFromText(name);
        if (!size || isUs(name) != us)
            continue;
        const double area = areaOf(*size);
        if (area < 0.95 * areaOf(panel) && area >= kLeastShare * areaOf(panel)
            && area >= kSmallestMm2)
            sizes.push_back(across ? size->transposed() : *size);
    }
    std::sort(sizes.begin(), sizes.end(), [](SizeMm a, SizeMm b) { return areaOf(a) > areaOf(b); });
    return sizes;
}

} // namespace wainscot
