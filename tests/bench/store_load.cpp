// A book of ten years: how long it takes to fill, open, search, verify, pack and unpack.
//   bench_load [CHILDREN QUOTES PICTURES]      500 50000 20000 by itself; figures, no limits
// Ends with 1 when the book is not whole afterwards.
#include "core/store/book_store.h"
#include "core/store/pack.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>

#include <cstdio>
#include <cstdlib>
#include <random>

namespace wainscot {

namespace {

struct Size {
    int children = 500;
    int quotes = 50'000;
    int pictures = 20'000;
};

class Stopwatch {
public:
    Stopwatch() { m_timer.start(); }
    void tell(const char* what)
    {
        std::printf("%-34s %8.2f s\n", what, double(m_timer.restart()) / 1000);
        std::fflush(stdout);
    }

private:
    QElapsedTimer m_timer;
};

constexpr int kExperiences = 400; // forty a year

Edit people(const Book& book, const Size& size)
{
    EditBuilder edit(book, QStringLiteral("Class lists"));
    for (int i = 0; i < size.children; ++i) {
        Child child;
        child.id = edit.newId<Child>();
        child.name = QStringLiteral("Child %1").arg(i);
        child.permissions = Permissions::all();
        edit.put(child);
    }
    for (int i = 0; i < kExperiences; ++i) {
        Experience experience;
        experience.id = edit.newId<Experience>();
        experience.title = QStringLiteral("Experience %1").arg(i);
        edit.put(experience);
    }
    return edit.take();
}

// One experience's answers, as one gathering.
Edit answers(const Book& book, int experience, const Size& size, std::mt19937& random)
{
    static const char* const kWords[] = {
        "the", "ice", "gos", "crak", "when", "you", "step", "on", "it", "puddle", "worm", "cold"};
    EditBuilder edit(book, QStringLiteral("Words"));
    for (int i = 0; i < size.quotes / kExperiences; ++i) {
        Quote quote;
        quote.id = edit.newId<Quote>();
        quote.experience = ExperienceId(experience);
        quote.child = ChildId(1 + int(random() % unsigned(size.children)));
        quote.prompt = QStringLiteral("notice");
        for (int word = 0; word < 14; ++word)
            quote.words += QString::fromLatin1(kWords[random() % 12]) + QLatin1Char(' ');
        edit.put(quote);
    }
    return edit.take();
}

// Small files, each another; what is measured is the book, not the decoding of pictures.
bool gatherPictures(BookStore& store, int experience, const Size& size, const QString& file)
{
    EditBuilder edit(store.book(), QStringLiteral("Pictures"));
    for (int i = 0; i < size.pictures / kExperiences; ++i) {
        QFile made(file);
        if (!made.open(QIODevice::WriteOnly | QIODevice::Truncate))
            return false;
        made.write(QByteArray(3000, 'p') + QByteArray::number(experience * 100'000 + i));
        made.close();
        const auto kept = store.keepOriginal(file);
        if (!kept)
            return false;
        Picture picture;
        picture.id = edit.newId<Picture>();
        picture.experience = ExperienceId(experience);
        picture.sha256 = *kept;
        picture.fileName = QStringLiteral("rain-%1.jpg").arg(i);
        edit.put(picture);
    }
    return store.history().perform(edit.take()).ok();
}

bool fill(const QString& folder, const QString& file, const Size& size)
{
    Stopwatch watch;
    const auto store = BookStore::create(folder, {QStringLiteral("Ten years"), {}});
    if (!store || !(*store)->history().perform(people((*store)->book(), size)))
        return false;
    std::mt19937 random(10);
    for (int i = 1; i <= kExperiences; ++i) {
        if (!(*store)->history().perform(answers((*store)->book(), i, size, random)))
            return false;
    }
    watch.tell("gather the words, in 400 edits");
    for (int i = 1; i <= kExperiences; ++i) {
        if (!gatherPictures(**store, i, size, file))
            return false;
    }
    watch.tell("keep the pictures, in 400 edits");
    return true;
}

int found(const Book& book, const QString& words)
{
    int count = 0;
    for (const auto& [id, quote] : book.quotes.rows())
        count += quote.words.contains(words, Qt::CaseInsensitive) ? 1 : 0;
    return count;
}

bool use(const QTemporaryDir& place, const QString& folder)
{
    Stopwatch watch;
    auto store = BookStore::open(folder);
    if (!store)
        return false;
    watch.tell("open");
    const int count = found((*store)->book(), QStringLiteral("crak when"));
    watch.tell("search all words for two");
    EditBuilder edit((*store)->book(), QStringLiteral("One more"));
    Child child;
    child.id = edit.newId<Child>();
    edit.put(child);
    if (!(*store)->history().perform(edit.take()))
        return false;
    watch.tell("the first edit of a day");
    const auto report = (*store)->verify();
    watch.tell("verify");
    const QString file = place.filePath(QStringLiteral("ten-years.zip"));
    const auto packed = packBook(**store, file);
    watch.tell("pack");
    const auto unpacked = unpackBook(file, place.filePath(QStringLiteral("unpacked")));
    watch.tell("unpack");
    std::printf("%d of %d answers have the two words; %d pictures; the packed book is %.1f MB\n",
        count,
        int((*store)->book().quotes.size()),
        int((*store)->book().pictures.size()),
        double(QFile(file).size()) / 1e6);
    return count > 0 && report.ok() && report->ok() && packed.ok() && unpacked.ok();
}

} // namespace

} // namespace wainscot

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    wainscot::Size size;
    if (argc == 4)
        size = {std::atoi(argv[1]), std::atoi(argv[2]), std::atoi(argv[3])};
    const QTemporaryDir place;
    const QString folder = place.filePath(QStringLiteral("book"));
    const bool whole = wainscot::fill(folder, place.filePath(QStringLiteral("picture")), size)
        && wainscot::use(place, folder);
    std::printf(whole ? "the book is whole\n" : "the book is NOT whole\n");
    return whole ? 0 : 1;
}
