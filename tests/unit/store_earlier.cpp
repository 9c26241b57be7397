// The states of earlier days: when they are kept, what they hold, how they are thinned out.
#include "core/store/book_store.h"
#include "core/store/earlier_states.h"
#include "tests/support/book_equality.h"
#include "tests/support/packed_book.h"
#include "tests/support/random_edits.h"

#include <QDir>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot {

namespace {

class EarlierDays : public BookToPack {
protected:
    [[nodiscard]] QString earlier() const { return at("book") + QStringLiteral("/earlier"); }

    void change() { ASSERT_TRUE(m_store->history().perform(m_edits.next(m_store->book())).ok()); }

    // As if the newest state had been kept so long ago; and opens the book anew.
    void ageNewest(int days, int minutes = 0)
    {
        const QString name = m_store->earlierStates().front().name;
        const QString then =
            stateNameFor(QDateTime::currentDateTime().addDays(-days).addSecs(-60LL * minutes));
        ASSERT_TRUE(QDir(earlier()).rename(
            name + QStringLiteral(".wainscot"), then + QStringLiteral(".wainscot")));
        m_store.reset();
        auto opened = BookStore::open(at("book"));
        ASSERT_TRUE(opened.ok());
        m_store = std::move(*opened);
    }

    RandomEdits m_edits{1};
};

TEST_F(EarlierDays, AreKeptBeforeTheFirstChangeOfADayOnly)
{
    EXPECT_TRUE(m_store->earlierStates().isEmpty()); // nothing was there to be kept
    const Book before = m_store->book();
    change();
    change();
    ASSERT_EQ(m_store->earlierStates().size(), 1);
    const EarlierState state = m_store->earlierStates().front();
    EXPECT_EQ(state.at.date(), QDate::currentDate());
    EXPECT_TRUE(sameBook(*m_store->earlierState(state.name), before));

    ageNewest(1);
    const Book today = m_store->book();
    change();
    ASSERT_EQ(m_store->earlierStates().size(), 2);
    EXPECT_TRUE(sameBook(*m_store->earlierState(m_store->earlierStates().front().name), today));
    EXPECT_TRUE(m_store->earlierStates().front().at > m_store->earlierStates().back().at);
}

TEST_F(EarlierDays, AreKeptAgainWhenTheBookIsOpenedLaterThatDay)
{
    if (QTime::currentTime() < QTime(1, 5))
        GTEST_SKIP() << "an hour ago was yesterday";
    change();
    ageNewest(0, 20);
    change();
    EXPECT_EQ(m_store->earlierStates().size(), 1) << "the same sitting";
    ageNewest(0, 61);
    const Book opened = m_store->book();
    change();
    change();
    ASSERT_EQ(m_store->earlierStates().size(), 2);
    EXPECT_TRUE(sameBook(*m_store->earlierState(m_store->earlierStates().front().name), opened));
}

// A clock that was ahead has left a state of a day that is still to come.
TEST_F(EarlierDays, AreKeptThoughTheClockWasWrong)
{
    change();
    ageNewest(-400);
    const Book before = m_store->book();
    change();
    const auto states = m_store->earlierStates();
    ASSERT_EQ(states.size(), 2);
    EXPECT_EQ(states.back().at.date(), QDate::currentDate());
    EXPECT_TRUE(sameBook(*m_store->earlierState(states.back().name), before));
    EXPECT_TRUE(m_store->verify()->ok());
    ageNewest(400); // and one that was far behind
    change();
    EXPECT_EQ(m_store->earlierStates().size(), 2) << "of today there is one already";
}

TEST_F(EarlierDays, AreReadByAnybodyAndStayOutOfPacks)
{
    change();
    auto reader = BookStore::open(at("book"), Access::ReadOnly);
    ASSERT_TRUE(reader.ok());
    ASSERT_EQ((*reader)->earlierStates().size(), 1);
    ASSERT_TRUE((*reader)->earlierState((*reader)->earlierStates().front().name).ok());
    const auto packed = packBook(*m_store, at("book.zip"));
    ASSERT_TRUE(packed.ok() || packed.error().code == ErrorCode::Damaged); // random pictures
    EXPECT_FALSE((*reader)->earlierState(QStringLiteral("../book")).ok());
}

TEST_F(EarlierDays, HinderNoEditWhenTheyCannotBeKept)
{
    QFile inTheWay(earlier());
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly)); // a file where the folder would be
    change();
    EXPECT_TRUE(m_store->earlierStates().isEmpty());
}

TEST_F(EarlierDays, AreForgottenWhenSomethingIsErased)
{
    change();
    ASSERT_EQ(m_store->earlierStates().size(), 1);
    ASSERT_TRUE(m_store->eraseForever(m_edits.next(m_store->book())).ok());
    EXPECT_TRUE(m_store->earlierStates().isEmpty());
    EXPECT_TRUE(QDir(earlier()).isEmpty());
}

TEST_F(EarlierDays, ThatAreDamagedAreNotOffered)
{
    change();
    const QString name = m_store->earlierStates().front().name;
    writeFile(earlier() + QLatin1Char('/') + name + QStringLiteral(".wainscot"), "no book");
    EXPECT_TRUE(m_store->earlierStates().isEmpty());
    EXPECT_FALSE(m_store->earlierState(name).ok());
}

QList<StateFile> oneADay(int days, QDate last, qint64 bytes)
{
    QList<StateFile> states;
    for (int i = days - 1; i >= 0; --i)
        states.append({stateNameFor(QDateTime(last.addDays(-i), QTime(8, 0))), bytes});
    return states;
}

// What is left of a state on each of many days, thinned out every day as the program does.
QList<StateFile> keptOf(QList<StateFile> states, QDate today, qint64 most)
{
    const QStringList forgotten = statesToForget(states, today, most);
    states.removeIf([&](const StateFile& one) { return forgotten.contains(one.name); });
    return states;
}

TEST(ThinningOut, KeepsDaysThenWeeksThenMonths)
{
    const QDate today(2026, 11, 29);
    QList<StateFile> states;
    for (const StateFile& next : oneADay(1000, today, 1000)) {
        states.append(next);
        states = keptOf(states, momentOf(next.name).date(), 1'000'000);
        ASSERT_LE(states.size(), 27);
    }
    ASSERT_GE(states.size(), 18);
    for (int i = 1; i <= 7; ++i)
        EXPECT_EQ(momentOf(states.at(states.size() - i).name).date(), today.addDays(1 - i));
    EXPECT_LT(momentOf(states.front().name).date(), today.addDays(-300));
    EXPECT_GT(momentOf(states.front().name).date(), today.addDays(-400));
}

TEST(ThinningOut, KeepsSittingsOfTodayAndOfOtherDaysTheFirst)
{
    const QDate today(2026, 11, 29);
    QList<StateFile> states;
    for (const QDate day : {today.addDays(-1), today}) {
        for (int hour = 6; hour < 20; ++hour)
            states.append({stateNameFor(QDateTime(day, QTime(hour, 0))), 1000});
    }
    states = keptOf(states, today, 1'000'000);
    ASSERT_EQ(states.size(), 10);
    EXPECT_EQ(momentOf(states.at(0).name), QDateTime(today.addDays(-1), QTime(6, 0)));
    EXPECT_EQ(momentOf(states.at(1).name), QDateTime(today, QTime(6, 0)));
    EXPECT_EQ(momentOf(states.at(2).name), QDateTime(today, QTime(12, 0)));
    EXPECT_EQ(momentOf(states.at(9).name), QDateTime(today, QTime(19, 0)));
}

TEST(ThinningOut, StaysBelowItsSizeButKeepsTheTwoNewest)
{
    const QDate today(2026, 11, 29);
    EXPECT_EQ(keptOf(oneADay(7, today, 1000), today, 3500).size(), 3);
    EXPECT_EQ(keptOf(oneADay(7, today, 1000), today, 10).size(), 2);
    EXPECT_THAT(statesToForget({}, today, 10), ::testing::IsEmpty());
}

TEST(ThinningOut, SurvivesAClockThatWasWrong)
{
    const QDate today(2026, 11, 29);
    QList<StateFile> states = oneADay(3, today, 1000);
    states.append({stateNameFor(QDateTime(QDate(2091, 1, 1), QTime(8, 0))), 1000});
    EXPECT_EQ(keptOf(states, today, 1'000'000).size(), 4);
}

} // namespace

} // namespace wainscot
