#include "core/media/intake.h"

#include "core/base/says.h"
#include "core/media/scan.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <exception>
#include <mutex>
#include <system_error>
#include <thread>

namespace wainscot {

namespace {

bool isPassedOver(const QFileInfo& file)
{
    const QString name = file.fileName();
    return name.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)
        || name.compare(QLatin1String("Thumbs.db"), Qt::CaseInsensitive) == 0
        || name.compare(QLatin1String("desktop.ini"), Qt::CaseInsensitive) == 0;
}

} // namespace

FileVerdict verdictOn(const QString& path, const QString& name, const Proxies* proxies)
{
    FileVerdict verdict;
    verdict.path = path;
    verdict.name = name;
    if (isPdfFile(path)) {
        verdict.verdict = Verdict::Scan;
        return verdict;
    }
    const auto facts = [&]() -> Result<PictureFacts> {
        try {
            return inspectPicture(path, proxies);
        } catch (const std::exception&) { // no memory for this one; the next may be smaller
            return Error{ErrorCode::Refused, verdict.name, Says::tr("needs too much memory")};
        }
    }();
    if (!facts) {
        verdict.error = facts.error();
        verdict.says = Says::tr("%1 %2.").arg(verdict.name, verdict.error.detail);
        return verdict;
    }
    verdict.facts = *facts;
    verdict.verdict = facts->notes.isEmpty() ? Verdict::Accepted : Verdict::AcceptedWithNote;
    if (!facts->notes.isEmpty()) {
        verdict.says =
            QStringLiteral("%1: %2.").arg(verdict.name, facts->notes.join(QStringLiteral("; ")));
    }
    return verdict;
}

namespace {

// The order of a reader: "2.jpg" before "10.jpg", capitals beside small letters. Qt's collation by
// number needs a locale that has it, and then differs between machines.
bool readsBefore(const QString& a, const QString& b)
{
    qsizetype i = 0;
    qsizetype j = 0;
    const auto isDigit = [](QChar c) { return c >= QLatin1Char('0') && c <= QLatin1Char('9'); };
    const auto takeNumber = [&](const QString& text, qsizetype& at) {
        while (at + 1 < text.size() && text[at] == QLatin1Char('0') && isDigit(text[at + 1]))
            ++at;
        const qsizetype start = at;
        while (at < text.size() && isDigit(text[at]))
            ++at;
        return QStringView(text).sliced(start, at - start);
    };
    while (i < a.size() && j < b.size()) {
        if (isDigit(a[i]) && isDigit(b[j])) {
            const QStringView first = takeNumber(a, i);
            const QStringView second = takeNumber(b, j);
            if (first.size() != second.size())
                return first.size() < second.size();
            if (const int order = first.compare(second); order != 0)
                return order < 0;
            continue;
        }
        const QChar first = a[i++].toCaseFolded();
        const QChar second = b[j++].toCaseFolded();
        if (first != second)
            return first < second;
    }
    const qsizetype leftOfA = a.size() - i;
    const qsizetype leftOfB = b.size() - j;
    return leftOfA != leftOfB ? leftOfA < leftOfB : a < b;
}

QStringList filesIn(const QDir& folder)
{
    QStringList paths;
    for (const QFileInfo& file : folder.entryInfoList(QDir::Files, QDir::Unsorted)) {
        if (!isPassedOver(file))
            paths << file.filePath();
    }
    std::sort(paths.begin(), paths.end(), readsBefore);
    return paths;
}

class Workers {
public:
    Workers(QStringList paths, const FolderOptions& options)
        : m_paths(std::move(paths))
        , m_options(options)
        , m_verdicts(static_cast<std::size_t>(m_paths.size()))
    {
    }

    FolderGathering run()
    {
        std::vector<std::thread> others;
        const int count = std::clamp<int>(m_options.workers, 1, std::max(1, int(m_paths.size())));
        try {
            for (int i = 1; i < count; ++i)
                others.emplace_back([this] { work(); });
        } catch (const std::system_error&) {
            // The system has no more threads to give: those there are do it all.
        }
        work();
        for (std::thread& other : others)
            other.join();
        FolderGathering gathering;
        for (auto& verdict : m_verdicts) {
            if (verdict)
                gathering.files.push_back(std::move(*verdict));
        }
        gathering.cancelled = gathering.files.size() < m_verdicts.size();
        return gathering;
    }

private:
    [[nodiscard]] bool isCancelled() const
    {
        return m_options.cancel != nullptr && m_options.cancel->load();
    }

    void work()
    {
        while (!isCancelled()) {
            const std::size_t at = m_next++;
            if (at >= m_verdicts.size())
                return;
            const QString& path = m_paths[static_cast<qsizetype>(at)];
            m_verdicts[at] = verdictOn(path, QFileInfo(path).fileName(), m_options.proxies);
            const std::lock_guard guard(m_telling);
            ++m_done;
            if (m_options.progress)
                m_options.progress(m_done, static_cast<int>(m_verdicts.size()));
        }
    }

    const QStringList m_paths; // never detached: the workers share it
    const FolderOptions& m_options;
    std::vector<std::optional<FileVerdict>> m_verdicts;
    std::atomic<std::size_t> m_next = 0;
    std::mutex m_telling;
    int m_done = 0;
};

} // namespace

FolderGathering inspectFiles(const QStringList& paths, const FolderOptions& options)
{
    return Workers(paths, options).run();
}

Result<FolderGathering> inspectFolder(const QString& folder, const FolderOptions& options)
{
    const QFileInfo info(folder);
    if (!info.isDir())
        return Error{ErrorCode::NotFound, folder, Says::tr("is not a folder")};
    if (!info.isReadable())
        return Error{ErrorCode::CannotRead, folder, Says::tr("cannot be opened")};
    return inspectFiles(filesIn(QDir(folder)), options);
}

} // namespace wainscot
