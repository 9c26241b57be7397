#include "core/media/scan.h"

#include "core/base/says.h"
#include "core/media/intake.h"
#include "core/media/sniff.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <optional>

namespace wainscot {

namespace {

constexpr int kMostFailuresInARow = 5;
constexpr int kSecondsToOpen = 30;
constexpr int kAhead = 2; // pages drawn before they are asked for

// Beside the program, or where a build has it.
QString readerProgram()
{
    const QString here = QCoreApplication::applicationDirPath();
    for (const char* place :
        {"/wainscot-scan", "/../scan/wainscot-scan", "/../app/scan/wainscot-scan"}) {
        const QFileInfo file(here + QLatin1String(place));
        if (file.isExecutable())
            return file.canonicalFilePath();
    }
    return {};
}

struct Line {
    QByteArray word;
    int number = 0; // 0 = none
};

// What it says is believed no further than this.
Line parsed(const QByteArray& line)
{
    const QList<QByteArray> parts = line.trimmed().split(' ');
    Line one{parts.value(0), parts.value(1).toInt()};
    if (one.number < 0)
        one.number = 0;
    return one;
}

class ScanReading {
public:
    ScanReading(const QString& path,
        const std::function<Result<>(const ScannedPage&)>& take,
        const ScanOptions& options)
        : m_path(path)
        , m_name(QFileInfo(path).fileName())
        , m_take(take)
        , m_options(options)
    {
    }

    Result<int> run()
    {
        m_program = readerProgram();
        if (m_program.isEmpty() || !m_folder.isValid())
            return error(ErrorCode::Internal,
                Says::tr("cannot be read: the part of this program that reads PDFs is missing"));
        while (!m_pages || m_next <= *m_pages) {
            if (const auto over = readOn())
                return *over;
        }
        return *m_pages;
    }

private:
    [[nodiscard]] Error error(ErrorCode code, const QString& detail) const
    {
        return {code, m_name, detail};
    }
    [[nodiscard]] bool cancelled() const
    {
        return m_options.cancel != nullptr && m_options.cancel->load();
    }

    // One life of the reader, from the next page on. Nothing = the pages are told, or it died.
    std::optional<Error> readOn()
    {
        QProcess reader;
        reader.setStandardErrorFile(QProcess::nullDevice());
        reader.start(m_program,
            {QFileInfo(m_path).absoluteFilePath(),
                m_folder.path(),
                QString::number(m_next),
                QString::number(m_options.mostPages)});
        if (!reader.waitForStarted())
            return error(
                ErrorCode::Internal, Says::tr("cannot be read: no program could be started"));
        reader.write(QByteArray(kAhead, '\n'));
        const auto over = listenTo(reader);
        reader.closeWriteChannel();
        if (over || !reader.waitForFinished(1000)) {
            reader.kill();
            reader.waitForFinished();
        }
        if (over || (m_pages && m_next > *m_pages))
            return over;
        return afterDeath();
    }

    std::optional<Error> listenTo(QProcess& reader)
    {
        QElapsedTimer silence;
        silence.start();
        while (!m_pages || m_next <= *m_pages) {
            if (cancelled())
                return Error{ErrorCode::Cancelled, {}, {}};
            if (!reader.canReadLine()) {
                const int patience = m_pages ? m_options.secondsForAPage
                                             : std::min(m_options.secondsForAPage, kSecondsToOpen);
                if (silence.elapsed() > qint64(patience) * 1000)
                    return std::nullopt;
                if (!reader.waitForReadyRead(50) && reader.state() == QProcess::NotRunning
                    && !reader.canReadLine())
                    return std::nullopt;
                continue;
            }
            const Line line = parsed(reader.readLine(200));
            const bool wasKnown = m_pages.has_value();
            if (const auto over = wasKnown ? takePage(line) : takeCount(line))
                return over;
            if (wasKnown)
                reader.write("\n");
            silence.restart();
        }
        return std::nullopt;
    }

    std::optional<Error> takeCount(const Line& line)
    {
        if (line.word == "pages")
            return takeCount(line.number);
        if (line.word == "locked")
            return error(ErrorCode::Refused,
                Says::tr("is locked with a password; save it without one and add that"));
        if (line.word == "missing")
            return error(ErrorCode::NotFound, Says::tr("is not there"));
        if (line.word == "damaged")
            return error(
                ErrorCode::Damaged, Says::tr("is damaged: the PDF breaks off or was changed"));
        return error(ErrorCode::CannotRead, Says::tr("cannot be read"));
    }

    std::optional<Error> takeCount(int pages)
    {
        if (pages < 1)
            return error(ErrorCode::Refused, Says::tr("is a PDF without pages"));
        if (pages > m_options.mostPages && m_options.mostPages == 1)
            return error(ErrorCode::Refused,
                Says::tr("has %1 pages, and one is wanted here; add it where pictures are gathered")
                    .arg(pages));
        if (pages > m_options.mostPages)
            return error(ErrorCode::Refused,
                Says::tr("has %1 pages; %2 is the most that is read at once, so divide it first")
                    .arg(pages)
                    .arg(m_options.mostPages));
        m_pages = pages;
        return std::nullopt;
    }

    // A reader that was started again tells the count once more.
    std::optional<Error> takePage(const Line& line)
    {
        if (line.word == "pages" && line.number == *m_pages)
            return std::nullopt;
        if (line.number != m_next)
            return error(
                ErrorCode::Damaged, Says::tr("is damaged: its pages cannot be told apart"));
        m_failures = 0;
        if (line.word == "picture")
            return tell({}, m_folder.filePath(QStringLiteral("%1.jpg").arg(m_next)));
        if (line.word == "blank")
            return tell(Says::tr("is blank and was left out"));
        if (line.word == "large")
            return tell(Says::tr("is larger than any paper that is read (10 square metres)"));
        if (line.word == "cannot-write")
            return error(ErrorCode::CannotWrite, Says::tr("needs more room on the disk"));
        return tell(Says::tr("cannot be read"));
    }

    std::optional<Error> tell(const QString& why, const QString& picture = {})
    {
        ScannedPage page;
        page.number = m_next++;
        page.of = *m_pages;
        // Together: a file may be called "%2.pdf".
        const QString number = QString::number(page.number);
        page.name = Says::tr("%1, page %2").arg(QFileInfo(m_path).completeBaseName(), number);
        page.path = picture;
        if (!why.isEmpty())
            page.why = Says::tr("%1, page %2, %3.").arg(m_name, number, why);
        const Result<> taken = m_take(page);
        if (!picture.isEmpty())
            QFile::remove(picture);
        if (!taken)
            return taken.error();
        return std::nullopt;
    }

    // Brought down, or silent for too long.
    std::optional<Error> afterDeath()
    {
        if (!m_pages)
            return error(ErrorCode::Damaged, Says::tr("is damaged: reading it fails"));
        if (++m_failures > kMostFailuresInARow)
            return error(ErrorCode::Damaged,
                Says::tr("is damaged: from page %1 on it cannot be read").arg(m_next));
        return tell(Says::tr("cannot be read"));
    }

    QString m_path;
    QString m_name;
    const std::function<Result<>(const ScannedPage&)>& m_take;
    ScanOptions m_options;
    QString m_program;
    QTemporaryDir m_folder; // for nobody else's eyes: its rights are the owner's
    std::optional<int> m_pages;
    int m_next = 1;
    int m_failures = 0;
};

} // namespace

bool isPdf(QByteArrayView firstBytes)
{
    // Some scanners put a line of their own before the header; PDF 1.7, appendix H, 3.4.1 (13).
    return pictureFormat(firstBytes).isEmpty()
        && firstBytes.first(std::min<qsizetype>(firstBytes.size(), 1024)).contains("%PDF-");
}

bool isPdfFile(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && isPdf(file.peek(1024));
}

Result<int> readScan(const QString& path,
    const std::function<Result<>(const ScannedPage&)>& take,
    const ScanOptions& options)
{
    const QFileInfo info(path);
    const QString name = info.fileName();
    if (!info.exists())
        return Error{ErrorCode::NotFound, name, Says::tr("is not there")};
    if (info.size() > kMostFileBytes) {
        return Error{ErrorCode::Refused,
            name,
            Says::tr("is larger than %1 MB").arg(kMostFileBytes / 1024 / 1024)};
    }
    if (!isPdfFile(path))
        return Error{ErrorCode::Refused, name, Says::tr("is no PDF")};
    return ScanReading(path, take, options).run();
}

} // namespace wainscot
