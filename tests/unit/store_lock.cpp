// A packed book that is locked: only its phrase opens it, and nothing of it comes out otherwise.
#include "tests/support/book_equality.h"
#include "tests/support/packed_book.h"

#include <QDir>

#include <gmock/gmock.h>

#include <array>
#include <sodium.h>

namespace wainscot {

namespace {

using ::testing::HasSubstr;

const QString kPhrase = QStringLiteral("frost on the window");

// As little work as the standard lets a guess cost, so that many can be tried here.
PackLock quickLock(const QString& phrase = kPhrase)
{
    return {phrase, crypto_pwhash_OPSLIMIT_MIN, crypto_pwhash_MEMLIMIT_MIN};
}

class LockedPack : public BookToPack {
protected:
    void SetUp() override
    {
        BookToPack::SetUp();
        const auto packed = packBook(*m_store, file(), {}, quickLock());
        ASSERT_TRUE(packed.ok()) << packed.error().detail.toStdString();
        m_good = contentOf(file());
    }
    [[nodiscard]] QString file() const { return at("robins.locked"); }

    // What is answered; nothing has come out and nothing was left beside.
    Error refused(const QString& phrase = kPhrase)
    {
        const auto unpacked = unpackBook(file(), at("out"), {}, phrase);
        EXPECT_FALSE(unpacked.ok());
        EXPECT_FALSE(QFile::exists(at("out")));
        EXPECT_TRUE(QDir(m_place.path()).entryList({QStringLiteral("out.*")}).isEmpty());
        return unpacked.ok() ? Error{} : unpacked.error();
    }

    QByteArray m_good;
};

TEST_F(LockedPack, OpensWithItsPhraseOnly)
{
    EXPECT_TRUE(isLockedPack(file()));
    const auto unpacked = unpackBook(file(), at("out"), {}, kPhrase);
    ASSERT_TRUE(unpacked.ok()) << unpacked.error().detail.toStdString();
    auto store = BookStore::open(at("out"));
    ASSERT_TRUE(store.ok());
    EXPECT_TRUE(sameBook((*store)->book(), m_store->book()));
    EXPECT_TRUE((*store)->verify()->ok());
    EXPECT_FALSE(QFile::exists(at("out/unlocked.zip")));
}

TEST_F(LockedPack, SaysThatItIsLockedOrThatThePhraseDoesNotFit)
{
    EXPECT_EQ(refused({}).code, ErrorCode::Refused);
    EXPECT_THAT(refused({}).detail.toStdString(), HasSubstr("locked with a passphrase"));
    for (const char* wrong : {"frost on the windoW", "frost on the window ", "x"}) {
        const Error error = refused(QString::fromLatin1(wrong));
        EXPECT_EQ(error.code, ErrorCode::Refused);
        EXPECT_THAT(error.detail.toStdString(), HasSubstr("does not fit"));
    }
}

TEST_F(LockedPack, TakesAPhraseAsItIsTypedOnAnotherKeyboard)
{
    const QString composed = QStringLiteral("caf\u00e9 um halb acht");
    ASSERT_TRUE(packBook(*m_store, file(), {}, quickLock(composed)).ok());
    const QString apart = composed.normalized(QString::NormalizationForm_D);
    ASSERT_NE(apart, composed);
    EXPECT_TRUE(unpackBook(file(), at("out"), {}, apart).ok());
}

TEST_F(LockedPack, ShowsNothingOfTheBook)
{
    for (const char* told :
        {"Robins", "photo.jpg", "book.wainscot", "PK\x03\x04", "SQLite", "xxxxxxxx"})
        EXPECT_EQ(m_good.indexOf(told, 130), -1) << told;
    // The same book with the same phrase is another file each time.
    ASSERT_TRUE(packBook(*m_store, at("twice.locked"), {}, quickLock()).ok());
    EXPECT_NE(contentOf(at("twice.locked")).mid(16, 64), m_good.mid(16, 64));
}

TEST_F(LockedPack, IsDamagedByAnyChangedByte)
{
    std::vector<qsizetype> places;
    for (qsizetype i = 0; i < 200; ++i)
        places.push_back(i);
    for (qsizetype i = 200; i < m_good.size(); i += 1499)
        places.push_back(i);
    places.push_back(m_good.size() - 1);
    for (const qsizetype place : places) {
        SCOPED_TRACE(place);
        QByteArray changed = m_good;
        changed[place] = char(changed.at(place) ^ 0x20);
        writeFile(file(), changed);
        const Error error = refused();
        // A changed check of the phrase looks like another phrase.
        EXPECT_TRUE(error.code == ErrorCode::Damaged || error.code == ErrorCode::Refused);
        EXPECT_FALSE(error.detail.isEmpty());
    }
}

TEST_F(LockedPack, IsDamagedWhenCutOffOrLonger)
{
    for (qsizetype length = 16; length < m_good.size(); length += 1 + m_good.size() / 150) {
        SCOPED_TRACE(length);
        writeFile(file(), m_good.left(length));
        EXPECT_EQ(refused().code, ErrorCode::Damaged);
    }
    writeFile(file(), m_good + 'x');
    EXPECT_EQ(refused().code, ErrorCode::Damaged);
}

TEST_F(LockedPack, IsDamagedWhenFramesChangePlaces)
{
    constexpr qsizetype kFrame = 64 * 1024 + 17;
    const qsizetype front = 120; // magic, salt, cost, stream header, two checks
    ASSERT_GT(m_good.size(), front + 3 * kFrame);
    const QByteArray first = m_good.mid(front, kFrame);
    const QByteArray second = m_good.mid(front + kFrame, kFrame);
    writeFile(file(), m_good.left(front) + second + first + m_good.mid(front + 2 * kFrame));
    EXPECT_EQ(refused().code, ErrorCode::Damaged);
    writeFile(file(), m_good.left(front) + m_good.mid(front + kFrame));
    EXPECT_EQ(refused().code, ErrorCode::Damaged);
}

TEST_F(LockedPack, NeedsAPhraseThatCannotBeGuessedAtOnce)
{
    const auto packed =
        packBook(*m_store, at("short.locked"), {}, quickLock(QStringLiteral("seven77")));
    ASSERT_FALSE(packed.ok());
    EXPECT_EQ(packed.error().code, ErrorCode::WrongUse);
    EXPECT_FALSE(QFile::exists(at("short.locked")));
}

TEST_F(LockedPack, CostsAGuessWhatTheStandardRecommends)
{
    const PackLock usual{kPhrase};
    EXPECT_EQ(usual.passes, crypto_pwhash_OPSLIMIT_MODERATE);
    EXPECT_EQ(usual.bytes, std::size_t(crypto_pwhash_MEMLIMIT_MODERATE));
    ASSERT_TRUE(packBook(*m_store, file(), {}, usual).ok());
    EXPECT_TRUE(unpackBook(file(), at("out"), {}, kPhrase).ok());
}

} // namespace

} // namespace wainscot
