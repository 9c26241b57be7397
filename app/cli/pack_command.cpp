// pack, unpack: a book as one file.
#include "app/cli/command.h"
#include "app/cli/passphrase.h"
#include "app/jobs/made_files.h"
#include "app/jobs/pack_job.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kPack{OptionSpec{"to", "FILE", "file to write", true},
    OptionSpec{"lock", nullptr, "lock it with a passphrase"}};
constexpr std::array kUnpack{OptionSpec{"to", "BOOK", "folder to make", true}};

Answer answerFor(const PackReport& report, const QString& key, const QString& made)
{
    Answer answer;
    answer.json = {{key, made},
        {QStringLiteral("pictures"), report.pictures},
        {QStringLiteral("bytes"), double(report.bytes)}};
    answer.lines.append(QStringLiteral("%1 holds the book and %2 pictures, each compared with its "
                                       "checksum.")
                            .arg(made)
                            .arg(report.pictures));
    return answer;
}

Result<Answer> runPack(const Arguments& arguments, const JobRun& run)
{
    PackJob job{arguments.positional(0), arguments.value("to"), {}};
    const bool locked = arguments.has("lock");
    if (locked) {
        auto phrase = passphrase(true);
        if (!phrase)
            return phrase.error();
        job.phrase = std::move(*phrase);
    }
    const auto packed = job.run(run);
    if (!packed)
        return packed.error();
    Answer answer = answerFor(*packed, QStringLiteral("file"), job.file);
    answer.json[QStringLiteral("locked")] = locked;
    answer.lines << (locked ? QStringLiteral("It is locked. Without the passphrase nobody opens "
                                             "it, not even you.")
                            : QStringLiteral("It is not locked; carry it as you would carry the "
                                             "class list."));
    remember(job.folder, madeFileOf(MadeFileKind::PackedBook, job.file, run.today), answer);
    return answer;
}

Result<Answer> runUnpack(const Arguments& arguments, const JobRun& run)
{
    UnpackJob job{arguments.positional(0), arguments.value("to"), {}};
    if (isLockedPack(job.file)) {
        auto phrase = passphrase(false);
        if (!phrase)
            return phrase.error();
        job.phrase = std::move(*phrase);
    }
    const auto unpacked = job.run(run);
    if (!unpacked)
        return unpacked.error();
    return answerFor(*unpacked, QStringLiteral("book"), job.folder);
}

} // namespace

std::vector<Command> packCommands()
{
    return {
        {"pack",
            "BOOK --to FILE [--lock]",
            "Makes one file of a book, to carry or to put away.",
            kPack,
            {QStringLiteral("BOOK")},
            runPack},
        {"unpack",
            "FILE --to BOOK",
            "Makes a book of a packed file.",
            kUnpack,
            {QStringLiteral("FILE")},
            runUnpack},
    };
}

} // namespace wainscot::cli
