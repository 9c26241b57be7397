// Gathering lists and words: what is taken, what is skipped with which sentence, and that a file
// that cannot be used leaves the book as it was.
#include "app/jobs/gather.h"
#include "app/jobs/sentences.h"
#include "core/store/book_store.h"
#include "tests/support/book_equality.h"

#include <QStringEncoder>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class Gathering : public ::testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        BookInfo info;
        info.title = QStringLiteral("Sparrows");
        auto made = BookStore::create(m_folder.filePath(QStringLiteral("book")), info);
        ASSERT_TRUE(made.ok());
        m_store = std::move(made).value();
    }

    QString write(const QString& name, const QByteArray& bytes)
    {
        const QString path = m_folder.filePath(name);
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }

    // Reads a class list and keeps it.
    GatherOutcome children(const QByteArray& bytes)
    {
        const auto outcome =
            GatherChildrenJob{write(QStringLiteral("class.csv"), bytes)}.run(m_store->book(), {});
        EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? ""
                                                   : sentenceFor(outcome.error()).toStdString());
        if (!outcome)
            return {};
        EXPECT_TRUE(m_store->history().perform(outcome->edit).ok());
        return *outcome;
    }

    GatherOutcome quotes(const QByteArray& bytes)
    {
        const GatherQuotesJob job{write(QStringLiteral("words.csv"), bytes),
            QStringLiteral("The puddle"),
            QDate(2026, 11, 2)};
        const auto outcome = job.run(m_store->book(), {});
        EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? ""
                                                   : sentenceFor(outcome.error()).toStdString());
        if (!outcome)
            return {};
        EXPECT_TRUE(m_store->history().perform(outcome->edit).ok());
        return *outcome;
    }

    std::string refusedChildren(const QByteArray& bytes)
    {
        const Book before = m_store->book();
        const auto outcome =
            GatherChildrenJob{write(QStringLiteral("class.csv"), bytes)}.run(m_store->book(), {});
        EXPECT_TRUE(sameBook(before, m_store->book()));
        EXPECT_FALSE(outcome.ok());
        return outcome.ok() ? std::string() : sentenceFor(outcome.error()).toStdString();
    }

    static std::vector<std::string> reasons(const GatherOutcome& outcome)
    {
        std::vector<std::string> all;
        for (const SkippedRow& row : outcome.skipped)
            all.push_back(row.why.toStdString());
        return all;
    }

    const Child* child(const char* name) const
    {
        return childByName(m_store->book(), QString::fromUtf8(name));
    }

    QTemporaryDir m_folder;
    std::unique_ptr<BookStore> m_store;
};

TEST_F(Gathering, ReadsPermissionsForEachAudience)
{
    const auto outcome = children("name,photo,first_name,words,work,photo_with_name\n"
                                  "Mei Lin,classroom;building,all,none,,classroom + families\n");
    EXPECT_EQ(outcome.added, 1);
    ASSERT_NE(child("Mei Lin"), nullptr);
    const Permissions& may = child("mei lin")->permissions;
    EXPECT_TRUE(may.allows(Permission::Photo, Audience::Building));
    EXPECT_FALSE(may.allows(Permission::Photo, Audience::Families));
    EXPECT_TRUE(may.allows(Permission::FirstName, Audience::Public));
    EXPECT_FALSE(may.allows(Permission::Words, Audience::Classroom));
    EXPECT_FALSE(may.allows(Permission::Work, Audience::Classroom));
    EXPECT_TRUE(may.allows(Permission::PhotoWithName, Audience::Families));
    EXPECT_FALSE(may.allows(Permission::PhotoWithName, Audience::Building));
}

TEST_F(Gathering, UpdatesPermissionsWhenTheListIsReadAgain)
{
    children("name,photo,words\nMei,all,all\nKwame,all,all\n");
    const ChildId mei = child("Mei")->id;
    const auto again = children("name,photo,words\nMEI ,none,all\nKwame,all,all\n");
    EXPECT_EQ(again.added, 0);
    EXPECT_EQ(again.updated, 1);
    EXPECT_EQ(child("Mei")->id, mei);
    EXPECT_FALSE(child("Mei")->permissions.allows(Permission::Photo, Audience::Classroom));
}

TEST_F(Gathering, TakesAPermissionAwayWhoseColumnIsGone)
{
    children("name,photo\nMei,all\n");
    children("name,words\nMei,all\n");
    EXPECT_FALSE(child("Mei")->permissions.allows(Permission::Photo, Audience::Classroom));
}

TEST_F(Gathering, SkipsRowsItCannotTrustAndSaysWhy)
{
    const auto outcome = children("name,born,photo\n"
                                  "Mei,2021-04,all\n"
                                  ",2021-05,all\n"
                                  "Kwame,last spring,all\n"
                                  "Noor,2021-06,hallway\n"
                                  "mei,2021-07,none\n"
                                  "Ilse,2021-08,all,too,many\n");
    EXPECT_EQ(outcome.added, 1);
    EXPECT_THAT(reasons(outcome),
        ::testing::UnorderedElementsAre(AllOf(HasSubstr("class.csv, row 3"), HasSubstr("name")),
            AllOf(HasSubstr("class.csv, row 4"), HasSubstr("last spring")),
            AllOf(HasSubstr("class.csv, row 5"), HasSubstr("hallway"), HasSubstr("building")),
            AllOf(HasSubstr("class.csv, row 6"), HasSubstr("row 2")),
            AllOf(HasSubstr("class.csv"), HasSubstr("row 7"))));
    EXPECT_TRUE(child("Mei")->permissions.allows(Permission::Photo, Audience::Classroom));
}

TEST_F(Gathering, TakesAnEmptyAndAFullClass)
{
    EXPECT_EQ(children("name,photo\n").added, 0);
    QByteArray forty = "name;words\r\n";
    for (int i = 1; i <= 40; ++i)
        forty += "Child " + QByteArray::number(i) + ";all\r\n";
    EXPECT_EQ(children(forty).added, 40);
    EXPECT_EQ(m_store->book().children.size(), 40U);
}

TEST_F(Gathering, KeepsNamesOfEveryScript)
{
    const QString list = QStringLiteral("name\tshown_as\nنور حداد\tنور\n林美\t美\nJosé Ñandú\t\n");
    children(list.toUtf8());
    EXPECT_NE(child("نور حداد"), nullptr);
    EXPECT_EQ(displayName(*child("林美")), QStringLiteral("美"));
    EXPECT_EQ(displayName(*child("José Ñandú")), QStringLiteral("José"));
}

TEST_F(Gathering, ReadsWindows1252AndUtf16)
{
    EXPECT_EQ(children("name,shown_as\nJos\xe9 Mu\xf1oz,Pep\x92s\n").added, 1);
    ASSERT_NE(child("José Muñoz"), nullptr);
    EXPECT_EQ(child("José Muñoz")->shownAs, QStringLiteral("Pep’s"));
    QStringEncoder utf16(QStringConverter::Utf16LE, QStringConverter::Flag::WriteBom);
    const QByteArray bytes = utf16.encode(QStringLiteral("name,words\nHana Kovářová,all\n"));
    EXPECT_EQ(children(bytes).added, 1);
    EXPECT_NE(child("Hana Kovářová"), nullptr);
}

TEST_F(Gathering, RefusesAListWithoutNames)
{
    EXPECT_THAT(refusedChildren("who,photo\nMei,all\n"),
        AllOf(HasSubstr("class.csv"), HasSubstr("row 1"), HasSubstr("name"), HasSubstr("who")));
}

TEST_F(Gathering, RefusesAFileThatIsNoTable)
{
    EXPECT_THAT(refusedChildren(""), HasSubstr("class.csv"));
    EXPECT_THAT(refusedChildren(QByteArray("\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0", 18)),
        HasSubstr("class.csv"));
    EXPECT_THAT(refusedChildren("name\n\"Mei"), HasSubstr("class.csv"));
    const auto missing =
        GatherChildrenJob{m_folder.filePath(QStringLiteral("none.csv"))}.run(m_store->book(), {});
    ASSERT_FALSE(missing.ok());
    EXPECT_EQ(missing.error().code, ErrorCode::NotFound);
}

TEST_F(Gathering, ReadsWordsLongAndWide)
{
    children("name,words\nMei Lin,all\nKwame,all\n");
    const auto wide = quotes("child,notice,think,wonder\n"
                             "Mei,It is wet.,,Where does it go?\n"
                             "Kwame,,\"One\nand two\",\n");
    EXPECT_EQ(wide.added, 3);
    const auto longer = quotes("words;prompt;child;how;on;scribe\n"
                               "It is wet.;Notice;mei lin;said;2026-11-03;R. Okafor\n"
                               "NO MOR;think;Kwame;wrote;;\n");
    EXPECT_EQ(longer.added, 1);
    EXPECT_EQ(longer.updated, 1); // the same words, now with a day and who took them down
    const auto all = quotesOf(
        m_store->book(), experienceByTitle(m_store->book(), QStringLiteral("The puddle"))->id);
    ASSERT_THAT(all, SizeIs(4));
    EXPECT_EQ(all[0]->on, QDate(2026, 11, 3));
    EXPECT_EQ(all[0]->scribe, QStringLiteral("R. Okafor"));
    EXPECT_EQ(all[2]->words, QStringLiteral("One\nand two"));
    EXPECT_EQ(all[3]->telling, Telling::Wrote);
    // Nothing said otherwise: exact words, and nobody claims that they were read back.
    EXPECT_EQ(all[3]->dictation, Dictation::Exact);
    EXPECT_FALSE(all[3]->readBack);
}

TEST_F(Gathering, TakesTheSameWordsOnce)
{
    children("name\nMei\n");
    const QByteArray words = "child,prompt,words\nMei,think,It  went.\nMei,think,It went.\n"
                             "Mei,notice,It went.\n";
    EXPECT_EQ(quotes(words).added, 2);
    const Book before = m_store->book();
    EXPECT_EQ(quotes(words).added, 0);
    EXPECT_TRUE(sameBook(before, m_store->book()));
}

TEST_F(Gathering, SkipsWordsOfUnknownChildrenAndPrompts)
{
    children("name\nMei Lin\nMei Wong\nKwame\n");
    const auto outcome = quotes("child,prompt,words,how,on\n"
                                "Ghost,think,Boo.,,\n"
                                "Kwame,dream,Boo.,,\n"
                                "Kwame,,Boo.,,\n"
                                "Kwame,think,,,\n"
                                "Kwame,think,Boo.,sang,\n"
                                "Kwame,think,Boo.,,3 Nov\n"
                                "Mei,think,Which of us?,,\n");
    EXPECT_EQ(outcome.added, 0);
    EXPECT_THAT(reasons(outcome),
        ElementsAre(AllOf(HasSubstr("words.csv, row 2"), HasSubstr("Ghost")),
            AllOf(HasSubstr("words.csv, row 3"), HasSubstr("dream"), HasSubstr("wonder")),
            AllOf(HasSubstr("words.csv, row 4"), HasSubstr("no prompt")),
            AllOf(HasSubstr("words.csv, row 5"), HasSubstr("no words")),
            AllOf(HasSubstr("words.csv, row 6"), HasSubstr("sang")),
            AllOf(HasSubstr("words.csv, row 7"), HasSubstr("3 Nov")),
            AllOf(HasSubstr("words.csv, row 8"), HasSubstr("Mei"))));
}

TEST_F(Gathering, RefusesWordsWithoutAChildOrAPromptColumn)
{
    children("name\nMei\n");
    const Book before = m_store->book();
    for (const char* header : {"who,prompt,words", "child,prompt", "child,words", "child,dream"}) {
        const GatherQuotesJob job{
            write(QStringLiteral("words.csv"), QByteArray(header) + "\nMei,a,b\n"),
            QStringLiteral("The puddle"),
            std::nullopt};
        const auto outcome = job.run(m_store->book(), {});
        ASSERT_FALSE(outcome.ok()) << header;
        EXPECT_EQ(exitCodeFor(outcome.error().code), 2) << header;
        EXPECT_THAT(sentenceFor(outcome.error()).toStdString(), HasSubstr("words.csv")) << header;
    }
    EXPECT_TRUE(sameBook(before, m_store->book()));
}

TEST_F(Gathering, IsUndoneAsOneStep)
{
    const Book before = m_store->book();
    children("name\nMei\nKwame\nNoor\n");
    ASSERT_TRUE(m_store->history().undo().ok());
    EXPECT_TRUE(sameBook(before, m_store->book()));
}

TEST_F(Gathering, StopsWhenThePersonStopsIt)
{
    std::atomic<bool> stop = true;
    JobRun run;
    run.cancel = &stop;
    const auto outcome = GatherChildrenJob{write(QStringLiteral("class.csv"), "name\nMei\n")}.run(
        m_store->book(), run);
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.error().code, ErrorCode::Cancelled);
}

} // namespace
} // namespace wainscot
