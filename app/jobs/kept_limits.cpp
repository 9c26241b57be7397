#include "app/jobs/kept_limits.h"

#include "app/jobs/program_settings.h"
#include "app/jobs/wall_plan.h"

namespace wainscot {

namespace {

const QString kLimitsGroup = QStringLiteral("limits");
const QString kStandOutKey = QStringLiteral("wall/stands_out");
constexpr double kMostStandOutMm = 500;

} // namespace

check::Limits keptLimits()
{
    check::Limits limits;
    ProgramSettings settings;
    settings.beginGroup(kLimitsGroup);
    const QStringList rules = settings.childKeys();
    for (const QString& rule : rules) {
        bool isNumber = false;
        const double value = settings.value(rule).toDouble(&isNumber);
        const check::LimitRow* row = check::limitCalled(rule);
        if (row != nullptr && isNumber)
            (void)limits.set(row->limit, value); // refuses what makes no sense
    }
    return limits;
}

void keepLimits(const check::Limits& limits)
{
    ProgramSettings settings;
    settings.remove(kLimitsGroup);
    settings.beginGroup(kLimitsGroup);
    for (const auto& [limit, value] : limits.own())
        settings.setValue(QString::fromLatin1(check::limitOf(limit).rule), value);
}

Mm keptStandOut()
{
    bool isNumber = false;
    const double kept =
        ProgramSettings().value(kStandOutKey, kUsualStandOut.value()).toDouble(&isNumber);
    return isNumber && kept >= 0 && kept <= kMostStandOutMm ? Mm(kept) : kUsualStandOut;
}

void keepStandOut(Mm standsOut)
{
    ProgramSettings().setValue(kStandOutKey, standsOut.value());
}

} // namespace wainscot
