// Lists that others write, gathered into a book as the jobs do it; walls with what hangs there.
#include "app/jobs/gather.h"
#include "app/jobs/wall_plan.h"
#include "core/model/plain_name.h"
#include "tests/fuzz/targets.h"
#include "tests/support/places.h"

#include <QDir>
#include <QFile>

#include <set>

namespace wainscot::fuzz {

namespace {

const Book& classOfTwo()
{
    static const Book made = [] {
        Book book;
        EditBuilder edit(book, {});
        for (const char* name : {"Ada Marsh", "Ben Oak"}) {
            Child child;
            child.id = edit.newId<Child>();
            child.name = QString::fromLatin1(name);
            edit.put(child);
        }
        apply(edit.take(), book);
        return book;
    }();
    return made;
}

// Three panels of one display, numbered 1 to 3.
const Book& hallOfThree()
{
    static const Book made = [] {
        Book book;
        EditBuilder edit(book, {});
        Display display;
        display.id = edit.newId<Display>();
        display.name = QStringLiteral("Hall");
        display.panelSize = {Mm(600), Mm(900)};
        edit.put(display);
        for (int number = 1; number <= 3; ++number) {
            Panel panel;
            panel.id = edit.newId<Panel>();
            panel.display = display.id;
            panel.number = number;
            edit.put(panel);
        }
        apply(edit.take(), book);
        return book;
    }();
    return made;
}

// What the job makes of the file, or nothing with a reason.
template <class Job> std::optional<Book> gathered(const Job& job)
{
    const auto outcome = job.run(classOfTwo(), {});
    if (!outcome) {
        must(!outcome.error().subject.isEmpty() || !outcome.error().detail.isEmpty(), "a reason");
        return std::nullopt;
    }
    for (const SkippedRow& row : outcome->skipped)
        must(!row.why.isEmpty(), "a row that is not taken has a reason");
    Book book = classOfTwo();
    apply(outcome->edit, book);
    return book;
}

// Permissions are given by these words alone.
bool saysAnAudience(const QByteArray& bytes)
{
    const QString text = QString::fromUtf8(bytes).toLower();
    for (const char* word : {"all", "classroom", "building", "families", "public"}) {
        if (text.contains(QLatin1String(word)))
            return true;
    }
    return bytes.contains('\0'); // letters of two bytes
}

QString listFile()
{
    static const QString file = place() + QStringLiteral("/list.csv");
    return file;
}

} // namespace

void classList(const std::uint8_t* bytes, std::size_t count)
{
    put(listFile(), bytes, count);
    const auto book = gathered(GatherChildrenJob{listFile()});
    if (!book)
        return;
    const bool mayAllow = saysAnAudience(view(bytes, count));
    std::set<QString> names;
    for (const auto& [id, child] : book->children.rows()) {
        must(!child.name.isEmpty() && plainName(child.name) == child.name, "a name as it is seen");
        must(names.insert(child.name.toCaseFolded()).second, "nobody is there twice");
        must(mayAllow || child.permissions == Permissions(), "not said = no");
    }
}

void words(const std::uint8_t* bytes, std::size_t count)
{
    put(listFile(), bytes, count);
    const auto book = gathered(GatherQuotesJob{listFile(), QStringLiteral("Rain"), std::nullopt});
    if (!book)
        return;
    must(book->children.size() == 2, "words bring no child");
    for (const auto& [id, quote] : book->quotes.rows()) {
        must(!quote.words.trimmed().isEmpty(), "words");
        must(book->children.contains(quote.child), "of a child of the book");
        must(!quote.readBack, "nothing is recorded that the file does not say");
    }
}

void photoList(const std::uint8_t* bytes, std::size_t count)
{
    static const QString folder = [] {
        const QString made = place() + QStringLiteral("/photos");
        QDir().mkpath(made);
        must(QFile::copy(testData("fuzz/picture/a.jpg"), made + QStringLiteral("/a.jpg")),
            "a photo");
        return made;
    }();
    put(folder + QStringLiteral("/photos.csv"), bytes, count);
    const auto book = gathered(GatherPhotosJob{
        folder, QStringLiteral("Rain"), place() + QStringLiteral("/originals"), std::nullopt});
    if (!book)
        return;
    must(book->pictures.size() == 1, "the picture itself is whole");
    const Picture& picture = book->pictures.rows().begin()->second;
    const QByteArray list = view(bytes, count);
    const bool mayName = list.toLower().contains("a.jpg") || list.contains('\0');
    must(mayName || !picture.people.lookedAt, "nobody has looked at what is not named");
    for (const ChildId child : picture.people.children)
        must(book->children.contains(child), "of the book");
}

void wall(const std::uint8_t* bytes, std::size_t count)
{
    const auto read = wallFromJson(view(bytes, count));
    if (!read) {
        must(!read.error().detail.isEmpty(), "a reason");
        return;
    }
    const QByteArray json = wallToJson(*read);
    const auto again = wallFromJson(json);
    must(again.ok() && *again == *read, "what was read can be written and read");
    const Book& book = hallOfThree();
    for (const Wall& one : {*read, withProposedPlaces(book, *read, DisplayId(1))}) {
        const WallPlan plan = planOf(book, one);
        must(plan.coveredShare >= 0 && plan.coveredShare <= 1, "a share of the wall is covered");
        must(plan.list.size() <= one.panels.size(), "what hangs there is on the list");
    }
}

} // namespace wainscot::fuzz
