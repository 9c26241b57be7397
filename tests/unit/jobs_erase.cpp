// Forgetting a child: afterwards no byte of the name, the words or the pictures is in the book.
#include "app/jobs/erase_job.h"
#include "app/jobs/proxies_folder.h"
#include "core/model/tables.h"
#include "core/store/book_store.h"
#include "tests/support/class_book.h"

#include <QDirIterator>
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

const QString kName = QStringLiteral("Zephyrine Quillfeather");
const QString kWords = QStringLiteral("the marmalade moon went under");

// A book on disk in which Zephyrine is everywhere a child can be.
class ErasedChild : public ::testing::Test {
protected:
    void SetUp() override
    {
        auto made = BookStore::create(folder(), {QStringLiteral("Wrens"), {}});
        ASSERT_TRUE(made.ok());
        m_store = std::move(*made);
        ClassBook filled;
        zephyrine = filled.child("Zephyrine Quillfeather", Permissions::all());
        other = filled.child("Ada Marsh", Permissions::all());
        fill(filled);
        put(filled.book);
        m_store.reset();
    }

    [[nodiscard]] QString folder() const { return m_place.filePath(QStringLiteral("book")); }

    PictureId keep(ClassBook& into, PictureKind kind, People people, const char* file)
    {
        const QString path = m_place.filePath(QString::fromLatin1(file));
        QFile out(path);
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write("pixels of the " + QByteArray::number(++m_pictures) + ". picture");
        out.close();
        Picture picture = *into.book.pictures.find(into.picture(kind, std::move(people), file));
        picture.sha256 = *m_store->keepOriginal(path);
        picture.caption = QStringLiteral("Zephyrine and Ada at the sill.");
        into.book.pictures.put(picture);
        return picture.id;
    }

    void fill(ClassBook& into)
    {
        const QuoteId said = into.quote(zephyrine, kWords);
        const QuoteId about = into.quote(other, QStringLiteral("I saw it with zephyrine."));
        alone = keep(into, PictureKind::Photo, {true, {zephyrine}}, "zephyrine_step.jpg");
        keep(into, PictureKind::Photo, {true, {other}}, "ada.jpg");
        const PictureId named =
            keep(into, PictureKind::Photo, {true, {other}}, "quillfeather-zephyrine_2.jpg");
        const DisplayId hall = into.display(Audience::Classroom);
        into.hang(hall, said);
        into.hang(hall, about);
        into.hang(hall, alone, QStringLiteral("Zephyrine on the step."));
        into.hang(hall, named, QStringLiteral("With Zephyrine."));
        into.hang(
            hall, PieceKind::Context, QStringLiteral("Zephyrine's jar. Then Zephyrine slept."));
        Experience told = *into.book.experiences.find(into.experience);
        told.title = QStringLiteral("What Zephyrine found");
        told.interpretation = QStringLiteral("We followed Zephyrine Quillfeather.");
        into.book.experiences.put(told);
        into.book.groups.put({into.book.groups.newId(),
            into.experience,
            QStringLiteral("Zephyrine's moon"),
            {said, about}});
        into.book.observations.put({into.book.observations.newId(),
            into.experience,
            QStringLiteral("Zephyrine hid."),
            {zephyrine, other},
            {}});
        Translation translated;
        translated.id = into.book.translations.newId();
        translated.experience = into.experience;
        translated.what = Translated::Words;
        translated.quote = said;
        translated.language = QStringLiteral("es");
        translated.text = QStringLiteral("la luna de mermelada");
        into.book.translations.put(translated);
    }

    // Everything of a book in memory, in one edit.
    void put(const Book& from)
    {
        EditBuilder edit(m_store->book(), QStringLiteral("Zephyrine comes"));
        forEachTable(from, [&](const auto& table) {
            for (const auto& [id, value] : table.rows())
                edit.put(value);
        });
        ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
    }

    // Whether any file of the book holds these bytes, in UTF-8 or UTF-16, or in its name.
    [[nodiscard]] bool anywhere(const QString& text) const
    {
        const auto* units = reinterpret_cast<const char*>(text.utf16());
        const QByteArray wide(units, text.size() * 2);
        QDirIterator files(folder(), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
        while (files.hasNext()) {
            QFile file(files.next());
            EXPECT_TRUE(file.open(QIODevice::ReadOnly));
            const QByteArray bytes = file.readAll();
            if (bytes.toLower().contains(text.toLower().toUtf8()) || bytes.contains(wide)
                || file.fileName().contains(text, Qt::CaseInsensitive))
                return true;
        }
        return false;
    }

    [[nodiscard]] EraseJob job() const { return {folder(), kName}; }

    int m_pictures = 0;
    QTemporaryDir m_place;
    std::unique_ptr<BookStore> m_store;
    ChildId zephyrine;
    ChildId other;
    PictureId alone;
};

TEST_F(ErasedChild, IsNowhereInTheBookAnyMore)
{
    for (const char* text :
        {"zephyrine", "quillfeather", "marmalade", "mermelada", "pixels of the 1."})
        ASSERT_TRUE(anywhere(QString::fromLatin1(text))) << text << " must be there to be erased";
    const auto plan = job().run(JobRun());
    ASSERT_TRUE(plan.ok()) << plan.error().detail.toStdString();
    EXPECT_EQ(plan->quotes, 1);
    EXPECT_THAT(plan->pictures, ElementsAre(QStringLiteral("zephyrine_step.jpg")));
    EXPECT_EQ(plan->takeDown.size(), 1);
    for (const char* text :
        {"zephyrine", "quillfeather", "marmalade", "mermelada", "pixels of the 1."})
        EXPECT_FALSE(anywhere(QString::fromLatin1(text))) << text;
    EXPECT_FALSE(QFile::exists(folder() + QStringLiteral("/erase.pending")));
}

TEST_F(ErasedChild, LeavesTheOthersWhole)
{
    ASSERT_TRUE(job().run(JobRun()).ok());
    auto store = BookStore::open(folder());
    ASSERT_TRUE(store.ok());
    const Book& book = (*store)->book();
    EXPECT_TRUE((*store)->verify()->ok());
    EXPECT_EQ((*store)->verify()->pictures, 2);
    EXPECT_TRUE((*store)->verify()->orphans.isEmpty());
    EXPECT_FALSE((*store)->history().canUndo());
    ASSERT_EQ(book.quotes.size(), 1U);
    EXPECT_EQ(book.quotes.rows().begin()->second.words, QStringLiteral("I saw it with [a child]."));
    EXPECT_EQ(book.experiences.rows().begin()->second.title, QStringLiteral("What a child found"));
    EXPECT_EQ(book.groups.rows().begin()->second.quotes.size(), 1U);
    EXPECT_THAT(book.observations.rows().begin()->second.children, ElementsAre(other));
    for (const auto& [id, piece] : book.pieces.rows()) {
        if (piece.kind == PieceKind::Context) {
            EXPECT_EQ(piece.text, QStringLiteral("A child's jar. Then a child slept."));
        }
    }
}

TEST_F(ErasedChild, IsFinishedWhenTheBookIsOpenedAgain)
{
    const auto plan = [&] {
        auto store = BookStore::open(folder());
        auto made = planErasing((*store)->book(), kName);
        // As if the power had gone right after the rows were changed.
        EXPECT_TRUE((*store)->history().perform(made->edit).ok());
        return *made;
    }();
    QFile pending(folder() + QStringLiteral("/erase.pending"));
    ASSERT_TRUE(pending.open(QIODevice::WriteOnly));
    pending.write(plan.sha256.join(QLatin1Char('\n')).toLatin1());
    pending.close();
    ASSERT_TRUE(anywhere(QStringLiteral("pixels of the 1.")));
    ASSERT_TRUE(BookStore::open(folder()).ok());
    EXPECT_FALSE(anywhere(QStringLiteral("pixels of the 1.")));
    EXPECT_FALSE(anywhere(QStringLiteral("zephyrine")));
    EXPECT_FALSE(pending.exists());
}

TEST_F(ErasedChild, KeepsEverythingWhenTheListWasWrittenAndTheRowsWereNot)
{
    QFile pending(folder() + QStringLiteral("/erase.pending"));
    ASSERT_TRUE(pending.open(QIODevice::WriteOnly));
    auto sha256 = Originals::sha256Of(m_place.filePath(QStringLiteral("zephyrine_step.jpg")));
    pending.write(sha256->toLatin1() + "\n../../etc/passwd\n");
    pending.close();
    auto store = BookStore::open(folder());
    ASSERT_TRUE(store.ok());
    EXPECT_TRUE((*store)->verify()->ok());
    EXPECT_EQ((*store)->verify()->pictures, 3);
}

TEST_F(ErasedChild, AsksBeforePicturesOfOthersGo)
{
    {
        auto store = BookStore::open(folder());
        EditBuilder edit((*store)->book(), QStringLiteral("Both"));
        Picture both = *(*store)->book().pictures.find(alone);
        both.people.children = {zephyrine, other};
        edit.put(both);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    EraseJob asked = job();
    const auto refused = asked.run(JobRun());
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_THAT(refused.error().detail.toStdString(), HasSubstr("zephyrine_step.jpg"));
    EXPECT_TRUE(anywhere(QStringLiteral("marmalade"))) << "nothing was done";
    asked.sharedToo = true;
    EXPECT_TRUE(asked.run(JobRun()).ok());
    EXPECT_FALSE(anywhere(QStringLiteral("zephyrine")));
}

TEST_F(ErasedChild, KeepsANameThatAnotherChildBears)
{
    {
        auto store = BookStore::open(folder());
        EditBuilder edit((*store)->book(), QStringLiteral("Another"));
        Child second;
        second.id = edit.newId<Child>();
        second.name = QStringLiteral("Zephyrine Oak");
        edit.put(second);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    const auto plan = job().run(JobRun());
    ASSERT_TRUE(plan.ok());
    EXPECT_THAT(plan->alsoNamedSo, ElementsAre(QStringLiteral("Zephyrine Oak")));
    EXPECT_FALSE(anywhere(QStringLiteral("quillfeather")));
    EXPECT_FALSE(anywhere(kWords));
}

TEST_F(ErasedChild, IsNotGuessed)
{
    EXPECT_EQ((EraseJob{folder(), QStringLiteral("Zeph")}).run(JobRun()).error().code,
        ErrorCode::NotFound);
    EXPECT_TRUE(anywhere(kWords));
}

} // namespace
} // namespace wainscot
