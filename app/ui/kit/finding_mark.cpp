#include "app/ui/kit/finding_mark.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Finding)
};

struct CountedUnit {
    const char* unit; // as findings name it
    const char* one;
    const char* many;
};

// What is counted, not measured.
constexpr std::array kCounted{
    CountedUnit{"captions",
        QT_TRANSLATE_NOOP("Finding", "1 caption"),
        QT_TRANSLATE_NOOP("Finding", "%1 captions")},
    CountedUnit{"characters",
        QT_TRANSLATE_NOOP("Finding", "1 character"),
        QT_TRANSLATE_NOOP("Finding", "%1 characters")},
    CountedUnit{"credits",
        QT_TRANSLATE_NOOP("Finding", "1 line of credits"),
        QT_TRANSLATE_NOOP("Finding", "%1 lines of credits")},
    CountedUnit{
        "dates", QT_TRANSLATE_NOOP("Finding", "1 day"), QT_TRANSLATE_NOOP("Finding", "%1 days")},
    CountedUnit{
        "edges", QT_TRANSLATE_NOOP("Finding", "1 edge"), QT_TRANSLATE_NOOP("Finding", "%1 edges")},
    CountedUnit{"hyphens",
        QT_TRANSLATE_NOOP("Finding", "1 hyphen"),
        QT_TRANSLATE_NOOP("Finding", "%1 hyphens")},
    CountedUnit{"letters",
        QT_TRANSLATE_NOOP("Finding", "1 letter"),
        QT_TRANSLATE_NOOP("Finding", "%1 letters")},
    CountedUnit{"ligatures",
        QT_TRANSLATE_NOOP("Finding", "1 ligature"),
        QT_TRANSLATE_NOOP("Finding", "%1 ligatures")},
    CountedUnit{"marked parts",
        QT_TRANSLATE_NOOP("Finding", "1 marked part"),
        QT_TRANSLATE_NOOP("Finding", "%1 marked parts")},
    CountedUnit{
        "lines", QT_TRANSLATE_NOOP("Finding", "1 line"), QT_TRANSLATE_NOOP("Finding", "%1 lines")},
    CountedUnit{
        "names", QT_TRANSLATE_NOOP("Finding", "1 name"), QT_TRANSLATE_NOOP("Finding", "%1 names")},
    CountedUnit{"pieces",
        QT_TRANSLATE_NOOP("Finding", "1 piece"),
        QT_TRANSLATE_NOOP("Finding", "%1 pieces")},
    CountedUnit{"quotes",
        QT_TRANSLATE_NOOP("Finding", "1 answer"),
        QT_TRANSLATE_NOOP("Finding", "%1 answers")},
    CountedUnit{"sizes",
        QT_TRANSLATE_NOOP("Finding", "1 size of type"),
        QT_TRANSLATE_NOOP("Finding", "%1 sizes of type")},
    CountedUnit{"titles",
        QT_TRANSLATE_NOOP("Finding", "1 title"),
        QT_TRANSLATE_NOOP("Finding", "%1 titles")},
    CountedUnit{
        "works", QT_TRANSLATE_NOOP("Finding", "1 work"), QT_TRANSLATE_NOOP("Finding", "%1 works")},
    CountedUnit{
        "words", QT_TRANSLATE_NOOP("Finding", "1 word"), QT_TRANSLATE_NOOP("Finding", "%1 words")},
};

// "%1" is the number.
QString measureFor(const QString& unit, double value)
{
    if (unit == QLatin1String("ratio"))
        return Words::tr("%1 to 1");
    if (unit == QLatin1String("arcmin"))
        return Words::tr("%1 arcminutes");
    if (unit == QLatin1String("ppi"))
        return Words::tr("%1 pixels an inch");
    if (unit == QLatin1String("rows"))
        return value == 1 ? Words::tr("%1 row") : Words::tr("%1 rows");
    if (unit == QLatin1String("school grade"))
        return Words::tr("school grade %1");
    if (unit == QLatin1String("cap heights"))
        return Words::tr("%1 cap heights");
    return QStringLiteral("%1 ") + unitInWords(unit);
}

QString withUnit(double value, const QString& unit)
{
    // Three figures say as much of a share as of a length; a wall's length is said whole.
    const bool large = std::abs(value) >= 100;
    const QString number =
        large ? QLocale().toString(value, 'f', 0) : QLocale().toString(value, 'g', 3);
    return measureFor(unit, value).arg(number).trimmed();
}

// "Found 60 characters; 55 is the most here.", "There is none; there should be 1 title."
QString countInWords(const CountedUnit& unit, int value, int limit)
{
    const auto inWords = [&unit](int number) {
        return counted(number, Words::tr(unit.one), Words::tr(unit.many));
    };
    if (value < limit)
        return value == 0
            ? Words::tr("There is none; there should be %1.").arg(inWords(limit))
            : Words::tr("Found %1; there should be %2 or more.").arg(inWords(value)).arg(limit);
    return limit == 0 ? Words::tr("Found %1; there should be none.").arg(inWords(value))
                      : Words::tr("Found %1; %2 is the most here.").arg(inWords(value)).arg(limit);
}

} // namespace

Card::Tone toneOf(Severity severity)
{
    switch (severity) {
    case Severity::Stop:
        return Card::Tone::Stop;
    case Severity::Look:
        return Card::Tone::Look;
    case Severity::Note:
        break;
    }
    return Card::Tone::Note;
}

IconMark* markOf(Severity severity)
{
    switch (severity) {
    case Severity::Stop:
        return new IconMark(Icon::Stop, tokens().stop);
    case Severity::Look:
        return new IconMark(Icon::Look, tokens().look);
    case Severity::Note:
        break;
    }
    return new IconMark(Icon::Note, tokens().note);
}

QString saysInLine(const Finding& finding)
{
    const bool rightToLeft = QGuiApplication::isRightToLeft();
    return QChar(rightToLeft ? 0x200f : 0x200e) + finding.says; // the direction's own mark
}

QString spoken(const Finding& finding)
{
    return (finding.severity == Severity::Stop ? Words::tr("Must be mended: %1")
                                               : Words::tr("Finding: %1"))
        .arg(finding.says);
}

// Both are collected for translation where the limits stand.
QString sourceInWords(const Finding& finding)
{
    return finding.source.isEmpty()
        ? QString()
        : QCoreApplication::translate("Says", finding.source.toUtf8().constData());
}

QString unitInWords(const QString& unit)
{
    return unit.isEmpty() ? QString()
                          : QCoreApplication::translate("Says", unit.toUtf8().constData());
}

QString measuredInWords(const Finding& finding)
{
    if (!finding.measured)
        return {};
    const auto unit = std::find_if(kCounted.begin(), kCounted.end(), [&](const CountedUnit& one) {
        return finding.unit == QLatin1String(one.unit);
    });
    if (unit != kCounted.end() && finding.limit)
        return countInWords(*unit, int(std::lround(*finding.measured)), qRound(*finding.limit));
    const QString measured = withUnit(*finding.measured, finding.unit);
    return finding.limit ? Words::tr("Measured %1, the limit here is %2.")
                               .arg(measured, withUnit(*finding.limit, finding.unit))
                         : Words::tr("Measured %1.").arg(measured);
}

} // namespace wainscot::ui
