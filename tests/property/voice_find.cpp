// Finding: the same as looking through everything, in any script, with and without diacritics.
#include "core/voice/quote_finder.h"
#include "tests/support/many_quotes.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

#include <gmock/gmock.h>

#include <set>

namespace wainscot {

namespace {

using Places = std::vector<FindIndex::Place>;

Places lookedThrough(const std::vector<QString>& texts, const QString& typed)
{
    const FindQuery query(typed);
    Places found;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        if (!query.isEmpty() && query.fits(texts[i]))
            found.push_back(FindIndex::Place(i));
    }
    return found;
}

TEST(Folding, TakesCaseAndDiacriticsAwayInAnyScript)
{
    EXPECT_EQ(foldedForFind(QStringLiteral("Ni\u00d1a \u00c9t\u00e9")), QStringLiteral("nina ete"));
    EXPECT_EQ(foldedForFind(QStringLiteral("n\u0303")), foldedForFind(QStringLiteral("\u00f1")));
    EXPECT_EQ(foldedForFind(QStringLiteral("Sm\u00d8r \u0141\u00f3d\u017a")),
        QStringLiteral("smor lodz"));
    EXPECT_EQ(foldedForFind(QStringLiteral("\u0130stanbul")), QStringLiteral("istanbul"));
    EXPECT_EQ(foldedForFind(QStringLiteral("\u0645\u064e\u0637\u064e\u0631")),
        QStringLiteral("\u0645\u0637\u0631"));
    EXPECT_EQ(foldedForFind(QStringLiteral("\uff37\uff45\uff54")), QStringLiteral("wet"));
    EXPECT_EQ(foldedForFind(QStringLiteral("it\u2019s")), QStringLiteral("it's"));
}

TEST(Finding, IsTheSameAsLookingThroughEverything)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        const std::vector<QString> texts = manyQuotes(seed, 300);
        FindIndex index;
        for (const QString& text : texts)
            index.add(text);
        for (const QString& typed : typedOnTheWay())
            EXPECT_EQ(index.find(FindQuery(typed)), lookedThrough(texts, typed))
                << typed.toStdString();
    }
}

TEST(Finding, NeedsEveryPartInAnyOrder)
{
    FindIndex index;
    index.add(QStringLiteral("the worm is under the leaf"));
    index.add(QStringLiteral("a leaf"));
    EXPECT_EQ(index.find(FindQuery(QStringLiteral("leaf WORM"))), Places({0}));
    EXPECT_EQ(index.find(FindQuery(QStringLiteral("leaf"))), Places({0, 1}));
    EXPECT_TRUE(index.find(FindQuery(QStringLiteral("  "))).empty());
    EXPECT_TRUE(index.find(FindQuery(QStringLiteral("elf"))).empty()) << "letters must be together";
}

// Words whole and without their diacritics, as SQLite's FTS5 (unicode61 remove_diacritics 2) finds
// them, are found here too.
TEST(Finding, FindsWhatAnotherIndexFinds)
{
    const std::vector<QString> texts = manyQuotes(5, 2000);
    FindIndex index;
    {
        QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("f"));
        db.setDatabaseName(QStringLiteral(":memory:"));
        ASSERT_TRUE(db.open());
        QSqlQuery query(db);
        ASSERT_TRUE(query.exec(QStringLiteral("CREATE VIRTUAL TABLE q USING fts5(w, tokenize = "
                                              "'unicode61 remove_diacritics 2')")));
        ASSERT_TRUE(query.exec(QStringLiteral("BEGIN")));
        for (const QString& text : texts) {
            index.add(text);
            query.prepare(QStringLiteral("INSERT INTO q (w) VALUES (?)"));
            query.addBindValue(text);
            ASSERT_TRUE(query.exec());
        }
        for (const char* word : {"nina", "ete", "puddle", "lluvia", "naive", "arbol", "que"}) {
            query.prepare(QStringLiteral("SELECT rowid FROM q WHERE q MATCH ? ORDER BY rowid"));
            query.addBindValue(QStringLiteral("\"%1\"").arg(QLatin1String(word)));
            ASSERT_TRUE(query.exec());
            const Places own = index.find(FindQuery(QLatin1String(word)));
            int others = 0;
            for (; query.next(); ++others) {
                const auto place = FindIndex::Place(query.value(0).toLongLong() - 1);
                EXPECT_TRUE(std::binary_search(own.begin(), own.end(), place)) << word;
            }
            EXPECT_GT(others, 0) << word;
        }
    }
    QSqlDatabase::removeDatabase(QStringLiteral("f"));
}

class InABook : public ::testing::Test {
protected:
    void SetUp() override
    {
        Child child;
        child.id = ChildId(1);
        child.name = QStringLiteral("Zo\u00eb Marsh");
        m_book.children.put(child);
        say(1, "it gos drip");
        say(2, "a worm");
    }
    void say(int id, const char* words)
    {
        Quote quote;
        quote.id = QuoteId(id);
        quote.child = ChildId(1);
        quote.words = QString::fromUtf8(words);
        m_book.quotes.put(quote);
    }
    std::vector<QuoteId> found(const char* typed)
    {
        m_finder.follow(m_book);
        return m_finder.find(QString::fromUtf8(typed));
    }
    Book m_book;
    QuoteFinder m_finder;
};

TEST_F(InABook, FindsByWordsAndByTheChild)
{
    EXPECT_EQ(found("worm"), std::vector<QuoteId>({QuoteId(2)}));
    EXPECT_EQ(found("zoe"), std::vector<QuoteId>({QuoteId(2), QuoteId(1)}));
    EXPECT_EQ(found("zoe drip"), std::vector<QuoteId>({QuoteId(1)}));
}

TEST_F(InABook, FollowsWhatChangesAndForgetsWhatIsGone)
{
    EXPECT_EQ(found("drip").size(), 1U);
    say(1, "it stops");
    EXPECT_TRUE(found("drip").empty());
    EXPECT_EQ(found("stops"), std::vector<QuoteId>({QuoteId(1)}));
    m_book.quotes.remove(QuoteId(1));
    EXPECT_TRUE(found("stops").empty());
    EXPECT_EQ(found("o"), std::vector<QuoteId>({QuoteId(2)}));
    for (int i = 0; i < 50; ++i) { // many changes do not gather
        say(2, i % 2 == 0 ? "a worm" : "two worms");
        EXPECT_EQ(found("worm").size(), 1U);
    }
}

} // namespace

} // namespace wainscot
