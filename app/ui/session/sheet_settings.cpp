#include "app/ui/session/sheet_settings.h"

#include <QLocale>

#include <algorithm>

#include "app/jobs/program_settings.h"
#include "core/base/paper_size.h"

namespace wainscot::ui {

namespace {

// Of any printer.
const QString kSheets = QStringLiteral("sheets/");
const QString kChosenKey = QStringLiteral("sheets/printer");
const QString kWhiteKey = QStringLiteral("sheets/leave-out-white");
constexpr Mm kTrueRuler{100};
constexpr Mm kUsualOverlap{10};
constexpr Mm kUsualMargin{7};
constexpr Mm kMostLength{40};

const QString kPaper = QStringLiteral("paper");
const QString kOverlap = QStringLiteral("overlap");
const QString kMargin = QStringLiteral("margin");
const QString kRuler = QStringLiteral("ruler");
const QString kUnreachable = QStringLiteral("unreachable");

// A printer may be called anything, also with a slash.
QString folderOf(const QString& printer)
{
    return printer.isEmpty() ? kSheets
                             : QStringLiteral("printers/%1/")
                                   .arg(QString::fromLatin1(printer.toUtf8().toPercentEncoding()));
}

// As set for the printer, or for any.
QVariant kept(const QString& printer, const QString& key)
{
    const ProgramSettings settings;
    const QString own = folderOf(printer) + key;
    return settings.value(settings.contains(own) ? own : kSheets + key);
}

// A length in mm out of the settings, which anybody may have written.
Mm keptLength(const QString& printer, const QString& key, Mm otherwise, Mm least, Mm most)
{
    bool isNumber = false;
    const Mm length(kept(printer, key).toDouble(&isNumber));
    return isNumber && length >= least && length <= most ? length : otherwise;
}

Mm rulerOf(const QString& printer)
{
    // How true one printer prints says nothing of another.
    if (!printer.isEmpty() && !ProgramSettings().contains(folderOf(printer) + kRuler))
        return kTrueRuler;
    return keptLength(printer, kRuler, kTrueRuler, kLeastRuler, kMostRuler);
}

QString paperOf(const QString& printer)
{
    const bool inches = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    const QString set = kept(printer, kPaper).toString();
    return !set.isEmpty() ? set : inches ? QStringLiteral("Letter") : QStringLiteral("A4");
}

SheetWishes sheetsOf(const QString& printer)
{
    const auto paper = paperSizeFromText(paperOf(printer));
    return {paper ? *paper : SizeMm{Mm(210), Mm(297)},
        keptLength(printer, kOverlap, kUsualOverlap, Mm(0), kMostLength),
        keptLength(printer, kMargin, kUsualMargin, Mm(0), kMostLength),
        kTrueRuler / rulerOf(printer),
        keptLeaveOutWhite()};
}

const QString& keyOf(SheetSetting setting)
{
    switch (setting) {
    case SheetSetting::Paper:
        return kPaper;
    case SheetSetting::Overlap:
        return kOverlap;
    case SheetSetting::Margin:
        break;
    }
    return kMargin;
}

} // namespace

bool keptLeaveOutWhite()
{
    return ProgramSettings().value(kWhiteKey, false).toBool();
}

void keepLeaveOutWhite(bool leaveOut)
{
    ProgramSettings().setValue(kWhiteKey, leaveOut);
}

QString keptPrinter()
{
    return ProgramSettings().value(kChosenKey).toString();
}

void choosePrinter(const PrinterFacts& facts)
{
    ProgramSettings settings;
    settings.setValue(kChosenKey, facts.name);
    const QString own = folderOf(facts.name);
    settings.setValue(own + kUnreachable, facts.unreachable.value());
    if (const QString paper = nameOfPaper(facts.paper);
        kSheetPapers.contains(paper) && !settings.contains(own + kPaper))
        settings.setValue(own + kPaper, paper);
    if (facts.unreachable <= Mm(0) || settings.contains(own + kMargin))
        return;
    const auto enough = std::find_if(kSheetMarginsMm.begin(),
        kSheetMarginsMm.end(),
        [&](int margin) { return Mm(margin) >= facts.unreachable; });
    settings.setValue(
        own + kMargin, enough != kSheetMarginsMm.end() ? *enough : kSheetMarginsMm.back());
}

void chooseAnyPrinter()
{
    ProgramSettings().remove(kChosenKey);
}

QString keptPaper()
{
    return paperOf(keptPrinter());
}

Mm keptOverlap()
{
    return keptSheets().overlap;
}

Mm keptMargin()
{
    return keptSheets().margin;
}

Mm keptRuler()
{
    return rulerOf(keptPrinter());
}

Mm keptUnreachable()
{
    const QString printer = keptPrinter();
    return printer.isEmpty() ? Mm(0) : keptLength(printer, kUnreachable, Mm(0), Mm(0), kMostLength);
}

void keep(SheetSetting setting, const QString& value)
{
    ProgramSettings().setValue(folderOf(keptPrinter()) + keyOf(setting), value);
}

void keepRuler(Mm measured)
{
    ProgramSettings().setValue(
        folderOf(keptPrinter()) + kRuler, std::clamp(measured, kLeastRuler, kMostRuler).value());
}

SheetWishes keptSheets()
{
    return sheetsOf(keptPrinter());
}

SheetWishes sheetsAfterTurning(const SheetWishes& shown, const QString& from, const QString& to)
{
    const bool isKnown = !to.isEmpty() && ProgramSettings().contains(folderOf(to) + kUnreachable);
    return to != from && isKnown ? sheetsOf(to) : shown;
}

} // namespace wainscot::ui
