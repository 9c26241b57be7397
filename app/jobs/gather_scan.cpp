#include "app/jobs/gather_scan.h"

#include "core/base/says.h"

#include <QFileInfo>

#include <optional>

namespace wainscot {

Result<> takePagesOf(const QString& pdf,
    const JobRun& run,
    int mostPages,
    const std::function<Result<>(const ScannedPage&)>& take,
    const std::function<void(const QString& why)>& leaveOut)
{
    ScanOptions options;
    options.mostPages = mostPages;
    options.cancel = run.cancel;
    const QString name = QFileInfo(pdf).fileName();
    run.report(Says::tr("Reading %1").arg(name));
    std::optional<Error> failed; // of `take`; the file is not to blame
    const auto read = readScan(
        pdf,
        [&](const ScannedPage& page) -> Result<> {
            run.report(Says::tr("Reading %1").arg(name), page.number, page.of);
            if (!page.why.isEmpty()) {
                leaveOut(page.why);
                return Done{};
            }
            const Result<> taken = take(page);
            if (!taken)
                failed = taken.error();
            return taken;
        },
        options);
    if (read)
        return Done{};
    if (failed)
        return *failed;
    const ErrorCode code = read.error().code;
    if (code == ErrorCode::Cancelled || code == ErrorCode::CannotWrite)
        return read.error();
    leaveOut(Says::tr("%1 %2.").arg(name, read.error().detail));
    return Done{};
}

} // namespace wainscot
