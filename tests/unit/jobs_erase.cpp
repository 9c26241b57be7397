// Forgetting a child: afterwards no byte of the name, the words or the pictures is in the book.
#include "app/jobs/erase_job.h"
#include "app/jobs/proxies_folder.h"
#include "core/model/tables.h"
#include "core/store/book_store.h"
#include "tests/support/class_book.h"

#include <QDirIterator>
#include <QFile>
#include <QImage>
#include <QPainter>
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
        fillAround(into, said, about);
        Translation translated;
        translated.id = into.book.translations.newId();
        translated.experience = into.experience;
        translated.what = Translated::Words;
        translated.quote = said;
        translated.language = QStringLiteral("es");
        translated.text = QStringLiteral("la luna de mermelada");
        into.book.translations.put(translated);
    }

    // The name in all that stands around the words: questions, records, meetings, looking back.
    void fillAround(ClassBook& into, QuoteId said, QuoteId about)
    {
        const QString named = QStringLiteral("Ask Zephyrine about it.");
        Book& book = into.book;
        book.info.title = QStringLiteral("Zephyrine's class");
        Child ada = *book.children.find(other);
        ada.languages = named;
        book.children.put(ada);
        Quote reply = *book.quotes.find(about);
        reply.firstWords = named;
        reply.scribe = named;
        reply.repliesTo = said;
        reply.sheet = alone;
        reply.drawing = alone;
        book.quotes.put(reply);
        for (const ChildId child : {zephyrine, other}) {
            PermissionRecord record;
            record.id = book.permissionRecords.newId();
            record.child = child;
            record.by = QStringLiteral("Zephyrine's mother");
            record.note = named;
            book.permissionRecords.put(record);
            NoAnswer missing;
            missing.id = book.noAnswers.newId();
            missing.experience = into.experience;
            missing.child = child;
            missing.note = named;
            missing.by = named;
            book.noAnswers.put(missing);
        }
        PromptSet set = defaultPromptSet();
        set.id = book.promptSets.newId();
        set.name = set.sense = set.ages = named;
        set.prompts.front() = {
            QStringLiteral("notice"), named, {{QStringLiteral("pt"), named}}, {}, alone};
        book.promptSets.put(set);
        Meeting meeting;
        meeting.id = book.meetings.newId();
        meeting.experience = into.experience;
        meeting.on = kTestDay;
        meeting.notes = named;
        meeting.readOut = {said, about};
        meeting.happened = {{MeetingNoteKind::ChangedMind, named, {}, zephyrine},
            {MeetingNoteKind::Agreement, named, {}, {}}};
        book.meetings.put(meeting);
        Reflection reflection;
        reflection.id = book.reflections.newId();
        reflection.experience = into.experience;
        reflection.question = reflection.answer = reflection.by = named;
        book.reflections.put(reflection);
        book.goals.put({book.goals.newId(), named, named});
        book.keptPairs.put({book.keptPairs.newId(), about, said, true});
        Observation seen;
        seen.id = book.observations.newId();
        seen.experience = into.experience;
        seen.words = named;
        seen.picture = alone;
        book.observations.put(seen);
    }

    // Everything of a book in memory, in one edit.
    void put(const Book& from)
    {
        EditBuilder edit(m_store->book(), QStringLiteral("Zephyrine comes"));
        edit.setInfo(from.info);
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
    EXPECT_TRUE(book.keptPairs.isEmpty()) << "a pair of words that are gone is none";
    EXPECT_THAT(book.observations.rows().begin()->second.children, ElementsAre(other));
    for (const auto& [id, piece] : book.pieces.rows()) {
        if (piece.kind == PieceKind::Context) {
            EXPECT_EQ(piece.text, QStringLiteral("A child's jar. Then a child slept."));
        }
    }
}

TEST_F(ErasedChild, LeavesWhatStoodAroundTheWordsWhole)
{
    ASSERT_TRUE(job().run(JobRun()).ok());
    auto store = BookStore::open(folder(), Access::ReadOnly);
    ASSERT_TRUE(store.ok());
    const Book& book = (*store)->book();
    const Quote& left = book.quotes.rows().begin()->second;
    EXPECT_FALSE(left.repliesTo.isValid());
    EXPECT_FALSE(left.sheet.isValid());
    EXPECT_FALSE(left.drawing.isValid());
    EXPECT_EQ(left.firstWords, QStringLiteral("Ask [a child] about it."));
    EXPECT_EQ(left.scribe, QStringLiteral("Ask a child about it."));
    ASSERT_EQ(book.permissionRecords.size(), 1U);
    EXPECT_EQ(book.permissionRecords.rows().begin()->second.child, other);
    ASSERT_EQ(book.noAnswers.size(), 1U);
    EXPECT_EQ(book.noAnswers.rows().begin()->second.child, other);
    const Meeting& meeting = book.meetings.rows().begin()->second;
    EXPECT_THAT(meeting.readOut, ElementsAre(left.id));
    ASSERT_EQ(meeting.happened.size(), 1U) << "what the child thought is the child's";
    EXPECT_EQ(meeting.happened.front().text, QStringLiteral("Ask a child about it."));
    EXPECT_EQ(book.info.title, QStringLiteral("A child's class"));
    EXPECT_EQ(book.reflections.size(), 1U);
    EXPECT_EQ(book.goals.rows().begin()->second.text, QStringLiteral("Ask a child about it."));
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
    asked.shared = SharedPictures::Delete;
    EXPECT_TRUE(asked.run(JobRun()).ok());
    EXPECT_FALSE(anywhere(QStringLiteral("zephyrine")));
}

// Left half red, right half blue; the child is the red.
TEST_F(ErasedChild, TakesAlongAPhotoOfTheWallItsWordsHangOn)
{
    QString sha256;
    {
        auto store = BookStore::open(folder());
        const QString path = m_place.filePath(QStringLiteral("wall.jpg"));
        QFile out(path);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        out.write("pixels of the wall with all its words");
        out.close();
        Picture wall = *(*store)->book().pictures.find(alone);
        EditBuilder edit((*store)->book(), QStringLiteral("Wall"));
        wall.id = edit.newId<Picture>();
        wall.sha256 = sha256 = *(*store)->keepOriginal(path);
        wall.fileName = QStringLiteral("wall.jpg");
        wall.people = {true, {}};
        wall.display = (*store)->book().displays.rows().begin()->first;
        edit.put(wall);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    EraseJob asked = job();
    const auto refused = asked.run(JobRun());
    ASSERT_FALSE(refused.ok()) << "it shows what others said too";
    EXPECT_THAT(refused.error().detail.toStdString(), HasSubstr("wall.jpg"));
    asked.shared = SharedPictures::Delete;
    ASSERT_TRUE(asked.run(JobRun()).ok());
    EXPECT_FALSE(anywhere(QStringLiteral("pixels of the wall")));
    EXPECT_FALSE(anywhere(sha256));
}

TEST_F(ErasedChild, LeavesACoveredPictureToTheOthers)
{
    QImage photo(400, 200, QImage::Format_RGB32);
    photo.fill(QColor(200, 30, 30));
    QPainter(&photo).fillRect(200, 0, 200, 200, QColor(30, 30, 200));
    const QString path = m_place.filePath(QStringLiteral("zephyrine_and_ada.jpg"));
    ASSERT_TRUE(photo.save(path, "JPEG", 95));
    PictureId both;
    QString before;
    {
        auto store = BookStore::open(folder());
        EditBuilder edit((*store)->book(), QStringLiteral("Both"));
        Picture picture = *(*store)->book().pictures.find(alone);
        both = picture.id = edit.newId<Picture>();
        before = picture.sha256 = *(*store)->keepOriginal(path);
        picture.format = QStringLiteral("jpeg");
        picture.size = {400, 200};
        picture.fileName = QStringLiteral("zephyrine_and_ada.jpg");
        picture.people.children = {zephyrine, other};
        picture.treatment.covered = {{{0, 0, 0.5, 1}, Cover::Flat, false}};
        edit.put(picture);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    EraseJob asked = job();
    asked.shared = SharedPictures::KeepCovered;
    const auto plan = asked.run(JobRun());
    ASSERT_TRUE(plan.ok()) << plan.error().detail.toStdString();
    EXPECT_THAT(plan->kept, ElementsAre(QStringLiteral("zephyrine_and_ada.jpg")));
    EXPECT_THAT(plan->pictures, ElementsAre(QStringLiteral("zephyrine_step.jpg")));
    EXPECT_FALSE(anywhere(QStringLiteral("zephyrine")));

    auto store = BookStore::open(folder());
    const Picture* kept = (*store)->book().pictures.find(both);
    ASSERT_NE(kept, nullptr);
    EXPECT_THAT(kept->people.children, ElementsAre(other));
    EXPECT_TRUE(kept->treatment.isNothing()) << "there is nothing left to take off";
    EXPECT_FALSE(QFile::exists((*store)->originalPath(before)));
    EXPECT_EQ((*store)->verify()->problems, QStringList());
    const QImage left((*store)->originalPath(kept->sha256));
    ASSERT_EQ(left.size(), QSize(400, 200));
    EXPECT_GT(left.pixelColor(300, 100).blue(), 150) << "the other child is as before";
    for (int x = 0; x < 190; x += 5) {
        const QColor pixel = left.pixelColor(x, 100);
        EXPECT_EQ(pixel, left.pixelColor(0, 0)) << "one flat colour at " << x;
    }
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
