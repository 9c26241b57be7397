#include "app/ui/session/sheet_settings.h"

#include <QLocale>

#include <algorithm>

#include "app/jobs/program_settings.h"
#include "core/base/paper_size.h"

namespace wainscot::ui {

namespace {

const QString kPaperKey = QStringLiteral("sheets/paper");
const QString kOverlapKey = QStringLiteral("sheets/overlap");
const QString kMarginKey = QStringLiteral("sheets/margin");
const QString kRulerKey = QStringLiteral("sheets/ruler");
constexpr Mm kTrueRuler{100};

// A length in mm out of the settings, which anybody may have written.
Mm keptLength(const QString& key, Mm otherwise, Mm least, Mm most)
{
    bool isNumber = false;
    const Mm length(ProgramSettings().value(key, otherwise.value()).toDouble(&isNumber));
    return isNumber && length >= least && length <= most ? length : otherwise;
}

const QString& keyOf(SheetSetting setting)
{
    switch (setting) {
    case SheetSetting::Paper:
        return kPaperKey;
    case SheetSetting::Overlap:
        return kOverlapKey;
    case SheetSetting::Margin:
        break;
    }
    return kMarginKey;
}

} // namespace

QString keptPaper()
{
    const bool inches = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    const QString usual = inches ? QStringLiteral("Letter") : QStringLiteral("A4");
    return ProgramSettings().value(kPaperKey, usual).toString();
}

Mm keptOverlap()
{
    return keptLength(kOverlapKey, Mm(10), Mm(0), Mm(40));
}

Mm keptMargin()
{
    return keptLength(kMarginKey, Mm(7), Mm(0), Mm(40));
}

Mm keptRuler()
{
    return keptLength(kRulerKey, kTrueRuler, kLeastRuler, kMostRuler);
}

void keep(SheetSetting setting, const QString& value)
{
    ProgramSettings().setValue(keyOf(setting), value);
}

void keepRuler(Mm measured)
{
    ProgramSettings().setValue(kRulerKey, std::clamp(measured, kLeastRuler, kMostRuler).value());
}

SheetWishes keptSheets()
{
    const auto paper = paperSizeFromText(keptPaper());
    return {paper ? *paper : SizeMm{Mm(210), Mm(297)},
        keptOverlap(),
        keptMargin(),
        kTrueRuler / keptRuler()};
}

} // namespace wainscot::ui
