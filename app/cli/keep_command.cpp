// keep: a term as one file.
#include "app/cli/making.h"
#include "app/jobs/keep_job.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"from", "DATE", "first day: 2026-09-01", true},
    OptionSpec{"to", "DATE", "last day", true},
    OptionSpec{"pdf", "OUT.pdf", "file to write", true},
    OptionSpec{"audience", "WHO", "classroom, building, families or public (families)"},
    OptionSpec{"paper", "PAPER", "A4, Letter ... (A4)"},
};

Result<QDate> dayOf(const Arguments& arguments, const char* option)
{
    const QDate day = QDate::fromString(arguments.value(option), Qt::ISODate);
    if (day.isValid())
        return day;
    return Error{ErrorCode::WrongUse,
        QStringLiteral("--%1 \"%2\"").arg(QLatin1String(option), arguments.value(option)),
        QStringLiteral("write a day as 2026-09-01")};
}

Result<KeepJob> jobFrom(const Arguments& arguments)
{
    KeepJob job;
    const Result<QDate> from = dayOf(arguments, "from");
    if (!from)
        return from.error();
    const Result<QDate> to = dayOf(arguments, "to");
    if (!to)
        return to.error();
    job.from = *from;
    job.to = *to;
    job.file = arguments.value("pdf");
    if (arguments.has("audience")) {
        const auto audience = audienceFromName(arguments.value("audience"));
        if (!audience)
            return Error{ErrorCode::WrongUse,
                QStringLiteral("The audience \"%1\"").arg(arguments.value("audience")),
                QStringLiteral("it is classroom, building, families or public")};
        job.audience = *audience;
    }
    if (const Result<> taken = takePaper(arguments, job.paper); !taken)
        return taken.error();
    return job;
}

Result<Answer> runKeep(const Arguments& arguments, const JobRun& run)
{
    return makePages(arguments, run, jobFrom(arguments), [](const KeepOutcome& made) {
        return QJsonObject{{QStringLiteral("experiences"), made.experiences},
            {QStringLiteral("pictures"), made.pictures}};
    });
}

} // namespace

std::vector<Command> keepCommands()
{
    return {{"keep",
        "BOOK --from DATE --to DATE --pdf OUT.pdf [--audience WHO] [--paper PAPER]",
        "Makes one file of a term, as an audience may see it today.",
        kOptions,
        {QStringLiteral("BOOK")},
        runKeep}};
}

} // namespace wainscot::cli
