// Draws the pages of a scanned PDF, one for each line on standard input, as a program of its own:
// what a file can do to the library that reads PDFs ends here.
//   wainscot-scan FILE FOLDER FIRST MOST
// Says "pages N", then for every page from FIRST on "picture N" (FOLDER/N.jpg is there), "blank N",
// "large N", "unreadable N" or "cannot-write N"; or "locked", "damaged", "missing" and
// "cannot-read".
// core/media/scan.cpp asks.
#include "core/media/pdf/pdf_pages.h"

#include <QCoreApplication>
#include <QFile>

#include <cstdio>

#include <sys/resource.h>

namespace {

using wainscot::ErrorCode;

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr bool kSanitized = true;
#elif defined(__has_feature)
constexpr bool kSanitized = __has_feature(address_sanitizer) || __has_feature(thread_sanitizer);
#else
constexpr bool kSanitized = false;
#endif
constexpr rlim_t kMostMemory = rlim_t(4) * 1024 * 1024 * 1024;
constexpr rlim_t kMostFile = rlim_t(512) * 1024 * 1024;
constexpr rlim_t kMostSecondsForAPage = 120;

void limit(int what, rlim_t most)
{
    rlimit now{};
    if (getrlimit(what, &now) == 0 && (now.rlim_max == RLIM_INFINITY || most <= now.rlim_max)) {
        now.rlim_cur = most;
        setrlimit(what, &now);
    }
}

void limitItself()
{
    limit(RLIMIT_CORE, 0); // a picture of a child in a crash file
    limit(RLIMIT_FSIZE, kMostFile);
    if (!kSanitized) // the sanitizers need all addresses
        limit(RLIMIT_AS, kMostMemory);
}

// Of processor time, counted from now.
void limitPage()
{
    rusage used{};
    if (getrusage(RUSAGE_SELF, &used) == 0)
        limit(
            RLIMIT_CPU, rlim_t(used.ru_utime.tv_sec + used.ru_stime.tv_sec) + kMostSecondsForAPage);
}

void say(const char* word, int number = 0)
{
    if (number > 0)
        std::printf("%s %d\n", word, number);
    else
        std::printf("%s\n", word);
    std::fflush(stdout);
}

bool nextIsWanted()
{
    int c = std::getchar();
    while (c != EOF && c != '\n')
        c = std::getchar();
    return c != EOF;
}

const char* wordFor(ErrorCode code)
{
    switch (code) {
    case ErrorCode::Refused:
        return "locked";
    case ErrorCode::Damaged:
        return "damaged";
    case ErrorCode::NotFound:
        return "missing";
    default:
        return "cannot-read";
    }
}

const char* draw(wainscot::PdfPages& pages, int number, const QString& folder)
{
    const auto page = pages.page(number);
    if (!page)
        return page.error().code == ErrorCode::Refused ? "large" : "unreadable";
    if (page->blank)
        return "blank";
    QFile file(folder + QStringLiteral("/%1.jpg").arg(number));
    const bool written = file.open(QIODevice::WriteOnly | QIODevice::NewOnly)
        && file.write(page->jpeg) == page->jpeg.size() && file.flush();
    return written ? "picture" : "cannot-write";
}

} // namespace

int main(int argc, char** argv)
{
    limitItself();
    const QCoreApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() != 5)
        return 2;
    const int first = arguments[3].toInt();
    const int most = arguments[4].toInt();
    if (first < 1 || most < 1)
        return 2;
    limitPage();
    wainscot::PdfPages pages;
    const auto count = pages.open(arguments[1]);
    if (!count) {
        say(wordFor(count.error().code));
        return 0;
    }
    std::printf("pages %d\n", *count);
    std::fflush(stdout);
    for (int number = first; number <= *count && *count <= most && nextIsWanted(); ++number) {
        limitPage();
        say(draw(pages, number, arguments[2]), number);
    }
    return 0;
}
