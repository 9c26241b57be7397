// What is taken out of a book and brought in again is the same book, and the same bytes.
#include "core/store/book_data.h"
#include "core/store/book_store.h"
#include "core/store/made_files.h"
#include "tests/support/book_equality.h"
#include "tests/support/places.h"
#include "tests/support/random_edits.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

namespace wainscot {

namespace {

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

std::map<QString, QByteArray> filesOf(const QString& folder)
{
    std::map<QString, QByteArray> files;
    QDirIterator all(folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (all.hasNext()) {
        const QString path = all.next();
        files[QDir(folder).relativeFilePath(path)] = bytesOf(path);
    }
    return files;
}

// Hundreds of books are quicker where nothing has to reach a real disk.
QString memoryDisk()
{
    const QString memory = QStringLiteral("/dev/shm");
    return (QDir(memory).exists() ? memory : QDir::tempPath()) + QStringLiteral("/data-XXXXXX");
}

class Data : public ::testing::Test {
protected:
    [[nodiscard]] QString at(const char* name) const
    {
        return m_place.filePath(QString::fromLatin1(name));
    }

    void rememberAFile()
    {
        MadeFile made;
        made.name = QStringLiteral("=autumn.pdf");
        made.on = QDate(2026, 12, 18);
        made.audience = Audience::Families;
        made.words = {QuoteId(1), QuoteId(3)};
        EXPECT_TRUE(rememberMadeFile(at("book"), made).ok());
        EXPECT_TRUE(keepUntil(at("book"), QDate(2027, 7, 31)).ok());
    }

    // A book of random content with one picture that is really there.
    std::unique_ptr<BookStore> seededBook(unsigned seed, int steps)
    {
        auto store = BookStore::create(at("book"), {QStringLiteral("=Tide pool"), {}});
        EXPECT_TRUE(store.ok());
        RandomEdits edits(seed);
        for (int i = 0; i < steps; ++i)
            EXPECT_TRUE((*store)->history().perform(edits.next((*store)->book())).ok());
        keepPicture(**store);
        addHostileWords(**store);
        rememberAFile();
        return std::move(*store);
    }

    void keepPicture(BookStore& store)
    {
        QFile file(at("photo"));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("the bytes of a picture");
        file.close();
        const auto sha256 = store.keepOriginal(at("photo"));
        ASSERT_TRUE(sha256.ok());
        EditBuilder edit(store.book(), QStringLiteral("Gather"));
        Picture picture;
        picture.id = edit.newId<Picture>();
        picture.experience = store.book().experiences.rows().begin()->first;
        picture.sha256 = *sha256;
        picture.format = QStringLiteral("png");
        edit.put(picture);
        ASSERT_TRUE(store.history().perform(edit.take()).ok());
    }

    // Everything a cell of a CSV file could stumble over.
    static void addHostileWords(BookStore& store)
    {
        EditBuilder edit(store.book(), QStringLiteral("Gather"));
        for (const char16_t* words : {u"=HYPERLINK(\"x\")",
                 u"+1",
                 u"-1",
                 u"@SUM(A1)",
                 u"\t=1",
                 u"\r=1",
                 u"'quoted",
                 u"''",
                 u"'=1",
                 u" leading",
                 u"trailing ",
                 u"a\r\nb\rc\nd",
                 u"\uff1d1",
                 u"\"",
                 u"a;b,c\td",
                 u"\ufeffmark",
                 u"\u2028line"}) {
            Goal goal;
            goal.id = edit.newId<Goal>();
            goal.text = QString::fromUtf16(words);
            edit.put(goal);
        }
        ASSERT_TRUE(store.history().perform(edit.take()).ok());
    }

    QTemporaryDir m_place{memoryDisk()};
};

TEST_F(Data, BroughtInAgainIsTheSameBookAndTheSameBytes)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        auto store = seededBook(seed, 8);
        const auto taken = takeDataOut(*store, at("out"));
        ASSERT_TRUE(taken.ok()) << taken.error().detail.toStdString();
        EXPECT_EQ(taken->pictures, 1);
        for (const DataForm form : {DataForm::Json, DataForm::Csv}) {
            SCOPED_TRACE(int(form));
            const auto brought = bringDataIn(at("out"), at("again"), form);
            ASSERT_TRUE(brought.ok())
                << (brought.error().subject + brought.error().detail).toStdString();
            EXPECT_EQ(brought->rows, taken->rows);
            EXPECT_EQ(brought->pictures, 1);
            auto again = BookStore::open(at("again"));
            ASSERT_TRUE(again.ok());
            EXPECT_TRUE(sameBook((*again)->book(), store->book()));
            ASSERT_TRUE(takeDataOut(**again, at("out2")).ok());
            EXPECT_TRUE(filesOf(at("out")) == filesOf(at("out2")));
            again->reset();
            for (const char* made : {"again", "out2"})
                QDir(at(made)).removeRecursively();
        }
        store.reset();
        for (const char* made : {"book", "out"})
            QDir(at(made)).removeRecursively();
    }
}

TEST_F(Data, HoldsEveryColumnThatIsStoredAndTellsWhatItMeans)
{
    const auto store = seededBook(7, 60);
    ASSERT_TRUE(takeDataOut(*store, at("out")).ok());
    QMap<QString, QStringList> told; // by table, from the text
    QString table;
    const QString text = dataFormat();
    const QStringList lines =
        text.mid(text.indexOf(QLatin1String("\nbook: ")) + 1).split(QLatin1Char('\n'));
    for (const QString& line : lines) {
        if (line.startsWith(QLatin1String("  ")))
            told[table] << line.trimmed().section(QStringLiteral(": "), 0, 0);
        else if (!line.isEmpty())
            table = line.section(QStringLiteral(": "), 0, 0);
    }
    const QJsonObject tables =
        QJsonDocument::fromJson(bytesOf(at("out/data.json"))).object()[u"tables"].toObject();
    EXPECT_EQ(tables.keys(), told.keys());
    for (const QString& name : tables.keys()) {
        SCOPED_TRACE(name.toStdString());
        ASSERT_FALSE(tables[name].toArray().isEmpty()) << "the random books never fill it";
        QStringList columns = tables[name].toArray().at(0).toObject().keys();
        QStringList meant = told[name];
        meant.sort();
        EXPECT_EQ(columns, meant);
    }
}

TEST_F(Data, OfASmallBookReadsLikeThis)
{
    auto store = BookStore::create(at("book"), {QStringLiteral("Robins"), QStringLiteral("en")});
    ASSERT_TRUE(store.ok());
    EditBuilder edit((*store)->book(), QStringLiteral("Gather"));
    Child child;
    child.id = edit.newId<Child>();
    child.name = QStringLiteral("Ada Marsh");
    child.permissions.set(Permission::Words, Audience::Classroom, true);
    child.permissions.set(Permission::Words, Audience::Families, true);
    Experience experience;
    experience.id = edit.newId<Experience>();
    experience.title = QStringLiteral("Rain");
    Quote quote;
    quote.id = edit.newId<Quote>();
    quote.experience = experience.id;
    quote.child = child.id;
    quote.prompt = QStringLiteral("notice");
    quote.words = QStringLiteral("it gos \"drip\"");
    edit.put(child);
    edit.put(experience);
    edit.put(quote);
    ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    ASSERT_TRUE(takeDataOut(**store, at("out")).ok());
    const QString golden = testData("store/small_book.json");
    if (qEnvironmentVariableIsSet("WAINSCOT_NEW_GOLDEN")) {
        QFile::remove(golden);
        ASSERT_TRUE(QFile::copy(at("out/data.json"), golden));
    }
    EXPECT_EQ(bytesOf(at("out/data.json")), bytesOf(golden))
        << "WAINSCOT_NEW_GOLDEN=1 "
        << "build/tests/store_data makes it anew";
    const QByteArray csv = bytesOf(at("out/csv/children.csv"));
    EXPECT_EQ(csv,
        QByteArrayLiteral("\xef\xbb\xbfid,name,shown_as,born,photo,first_name,words,work,"
                          "photo_with_name,languages\r\n"
                          "1,\"Ada Marsh\",,,,,\"classroom families\",,,\r\n"));
}

// A spreadsheet takes a cell for a formula by its first sign; source: OWASP, "CSV Injection".
TEST_F(Data, NoCellBeginsLikeAFormula)
{
    const auto store = seededBook(3, 10);
    DataOut what;
    what.byteOrderMark = false;
    ASSERT_TRUE(takeDataOut(*store, at("out"), what).ok());
    const QString goals = QString::fromUtf8(bytesOf(at("out/csv/goals.csv")));
    EXPECT_TRUE(goals.startsWith(QLatin1String("id,goal")));
    EXPECT_TRUE(goals.contains(QLatin1String(",'+1,")));
    EXPECT_TRUE(goals.contains(QLatin1String(",\"'=HYPERLINK(\"\"x\"\")\",")));
    for (const char* start : {",=", ",+", ",@", "\n=", ",\"=", ",\"+", ",\"-", ",\"@", ",\"\t"})
        EXPECT_FALSE(goals.contains(QLatin1String(start))) << start;
}

} // namespace

} // namespace wainscot
