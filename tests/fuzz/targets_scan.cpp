// A scanned PDF, drawn page by page as the reader program does it, and like there in a process of
// its own: the library may fail or never come back, our promises may not break.
#include "core/media/jpeg_segments.h"
#include "core/media/pdf/pdf_pages.h"
#include "tests/fuzz/targets.h"
#include "tests/support/places.h"

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstring>

#include <poll.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

namespace wainscot::fuzz {

namespace {

constexpr qint64 kMostTried = 250'000; // larger pages are drawn alike, slowly
constexpr int kMostPages = 3;
constexpr double kPatience = 1; // seconds of the processor's time, on a busy machine too

// Nothing, or the promise that was broken.
const char* lookAt(PdfPages& pages, int number)
{
    const auto size = pages.sizeOf(number);
    if (!size)
        return nullptr;
    const qint64 pixels = qint64(size->pixels.width) * size->pixels.height;
    if (pixels < 1 || pixels > kMostScanPixels)
        return "a page is bounded";
    if (pixels > kMostTried)
        return nullptr;
    const auto page = pages.page(number);
    if (!page)
        return nullptr;
    if (page->blank != page->jpeg.isEmpty())
        return "a picture, or a blank page";
    if (page->blank)
        return nullptr;
    const auto header = readJpegHeader(page->jpeg);
    if (!header || !header->hasScan || !(header->size == size->pixels))
        return "a JPEG of its size";
    if (!header->exif.isEmpty() || !header->icc.isEmpty() || page->jpeg.contains("Halloway"))
        return "nothing but pixels";
    return nullptr;
}

const char* lookAt(const QString& file)
{
    PdfPages pages;
    const auto many = pages.open(file);
    if (!many)
        return nullptr;
    if (*many < 0)
        return "a count";
    for (int number = 1; number <= std::min(*many, kMostPages); ++number) {
        if (const char* broken = lookAt(pages, number))
            return broken;
    }
    return nullptr;
}

// Looks at the file whenever a byte comes, and answers with a line.
class Reader {
public:
    explicit Reader(QString file)
        : m_file(std::move(file))
    {
        // The library and its list of fonts are made ready once, not in each process.
        must(lookAt(testData("fuzz/scan/drawn.pdf")) == nullptr, "a seed that can be drawn");
    }
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;
    ~Reader()
    {
        end();
        std::fprintf(
            stderr, "scan: the library failed %d times, was ended %d times\n", m_failed, m_ended);
    }

    void look()
    {
        if (m_process == 0)
            begin();
        char line[80] = {};
        must(write(m_to, "?", 1) == 1, "a reader that listens");
        const bool came = answerCame();
        const bool whole = came && read(m_from, line, sizeof line - 1) > 0;
        if (whole) {
            must(std::strcmp(line, "kept") == 0, line);
            return;
        }
        ++(came ? m_failed : m_ended);
        end();
    }

private:
    [[nodiscard]] bool answerCame() const
    {
        pollfd answer{m_from, POLLIN, 0};
        clockid_t clock{};
        must(clock_getcpuclockid(m_process, &clock) == 0, "a clock");
        const auto used = [clock] {
            timespec time{};
            clock_gettime(clock, &time);
            return double(time.tv_sec) + double(time.tv_nsec) * 1e-9;
        };
        const double before = used();
        while (poll(&answer, 1, 100) != 1) {
            if (used() - before > kPatience)
                return false;
        }
        return true;
    }

    void begin()
    {
        int to[2] = {};
        int from[2] = {};
        must(pipe(to) == 0 && pipe(from) == 0, "pipes");
        m_process = fork();
        must(m_process >= 0, "a process");
        if (m_process == 0) {
            close(to[1]);
            close(from[0]);
            serve(to[0], from[1]);
            _exit(0);
        }
        close(to[0]);
        close(from[1]);
        m_to = to[1];
        m_from = from[0];
    }

    void serve(int to, int from) const
    {
        char asked = 0;
        while (read(to, &asked, 1) == 1) {
            const char* broken = lookAt(m_file);
            const char* said = broken != nullptr ? broken : "kept";
            if (write(from, said, std::strlen(said)) < 0)
                return;
        }
    }

    void end()
    {
        if (m_process == 0)
            return;
        kill(m_process, SIGKILL);
        waitpid(m_process, nullptr, 0);
        close(m_to);
        close(m_from);
        m_process = 0;
    }

    PdfPages m_keptOpen;
    QString m_file;
    pid_t m_process = 0;
    int m_to = -1;
    int m_from = -1;
    int m_failed = 0;
    int m_ended = 0;
};

} // namespace

void scan(const std::uint8_t* bytes, std::size_t count)
{
    static const QString file = place() + QStringLiteral("/scan.pdf");
    static Reader reader(file);
    put(file, bytes, count);
    reader.look();
}

} // namespace wainscot::fuzz
