// Packed files that are damaged or meant badly: nothing of them reaches the disk.
#include <QBuffer>
#include <QCryptographicHash>
#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "core/store/pack_list.h"
#include "core/store/zip_file.h"
#include "tests/support/packed_book.h"

namespace wainscot {
namespace {

class HostilePack : public BookToPack {
protected:
    void SetUp() override
    {
        BookToPack::SetUp();
        ASSERT_TRUE(packBook(*m_store, at("robins.zip")).ok());
        m_good = contentOf(at("robins.zip"));
        before =
            QDir(m_place.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
        before << QStringLiteral("bad.zip");
        before.sort();
    }

    struct Entry {
        QString name;
        QByteArray content;
    };
    // The parts of the good file.
    [[nodiscard]] std::vector<Entry> parts() const
    {
        QBuffer from;
        from.setData(m_good);
        from.open(QIODevice::ReadOnly);
        ZipReader zip(from);
        std::vector<Entry> all;
        for (;;) {
            const auto entry = zip.next();
            if (!entry || !*entry)
                return all;
            all.push_back({(*entry)->name, {}});
            EXPECT_TRUE(zip.read([&](const char* bytes, qint64 count) -> Result<> {
                               all.back().content.append(bytes, count);
                               return Done{};
                           })
                            .ok());
        }
    }
    void write(const std::vector<Entry>& entries) const
    {
        QFile to(at("bad.zip"));
        ASSERT_TRUE(to.open(QIODevice::WriteOnly));
        ZipWriter zip(to);
        for (const Entry& entry : entries) {
            ASSERT_TRUE(zip.begin(entry.name, entry.content.size(), true).ok());
            ASSERT_TRUE(zip.write(entry.content.constData(), entry.content.size()).ok());
        }
        ASSERT_TRUE(zip.finish().ok());
    }
    void expectDamaged() const
    {
        const auto unpacked = unpackBook(at("bad.zip"), at("other"));
        ASSERT_FALSE(unpacked.ok());
        EXPECT_EQ(unpacked.error().code, ErrorCode::Damaged)
            << unpacked.error().detail.toStdString();
        EXPECT_EQ(unpacked.error().subject, at("bad.zip"));
        EXPECT_TRUE(nothingBut(before));
    }

    QByteArray m_good;
    QStringList before;
};

TEST_F(HostilePack, TheGoodOneIsTakenApartAndPutTogether)
{
    write(parts());
    EXPECT_TRUE(unpackBook(at("bad.zip"), at("other")).ok());
}

TEST_F(HostilePack, NamesThatClimbAreNoPartOfABook)
{
    for (const char* name : {"../evil",
             "/tmp/evil",
             "pictures/../../evil",
             "evil",
             "pictures/ab/evil",
             "book.wainscot/x",
             "..\\evil"}) {
        auto entries = parts();
        entries.push_back({QString::fromLatin1(name), "evil"});
        write(entries);
        expectDamaged();
        EXPECT_FALSE(QFile::exists(at("evil")));
    }
}

TEST_F(HostilePack, AListThatNamesSuchThingsIsNoList)
{
    auto entries = parts();
    QJsonObject root = QJsonDocument::fromJson(entries[0].content).object();
    QJsonArray list = root[QStringLiteral("parts")].toArray();
    const QByteArray sha = QCryptographicHash::hash("evil", QCryptographicHash::Sha256).toHex();
    for (const char* name : {"../evil", "pictures/ab/evil", "book.wainscot"}) {
        QJsonArray longer = list;
        longer.append(QJsonObject{{QStringLiteral("name"), QString::fromLatin1(name)},
            {QStringLiteral("bytes"), 4},
            {QStringLiteral("sha256"), QString::fromLatin1(sha)}});
        root[QStringLiteral("parts")] = longer;
        entries[0].content = QJsonDocument(root).toJson();
        write(entries);
        expectDamaged();
    }
}

TEST_F(HostilePack, WhatSwellsBeyondItsListIsCutOff)
{
    auto entries = parts();
    entries.back().content.append(QByteArray(50'000'000, 'x')); // packs to next to nothing
    write(entries);
    expectDamaged();
}

TEST_F(HostilePack, PartsThatAreMissingDoubledChangedOrFirstAreFound)
{
    auto missing = parts();
    missing.pop_back();
    write(missing);
    expectDamaged();
    auto doubled = parts();
    doubled.push_back(doubled.back());
    write(doubled);
    expectDamaged();
    auto changed = parts();
    changed.back().content[0] = 'y';
    write(changed);
    expectDamaged();
    auto turned = parts();
    std::swap(turned[0], turned[1]);
    write(turned);
    expectDamaged();
    write({});
    expectDamaged();
}

TEST_F(HostilePack, ALinkIsNoPartOfABook)
{
    // The attributes of a ZIP entry say what it is (APPNOTE 4.4.15): here, of a picture, a link.
    QByteArray bytes = m_good;
    const qsizetype name = bytes.lastIndexOf("pictures/");
    ASSERT_GT(name, 46);
    ASSERT_EQ(bytes.mid(name - 46, 4), QByteArray("PK\x01\x02"));
    bytes[name - 46 + 5] = 3; // made on Unix
    bytes[name - 46 + 41] = char(0xa1); // S_IFLNK, rwxrwxrwx
    bytes[name - 46 + 40] = char(0xff);
    writeFile(at("bad.zip"), bytes);
    expectDamaged();
}

TEST_F(HostilePack, EveryBytesEndIsFoundWhereverItBreaksOff)
{
    // Within the directory at the end of a ZIP nothing of the content is missing, so that some
    // readers still take it; what comes before it is content.
    const qsizetype directory = m_good.indexOf("PK\x01\x02");
    ASSERT_GT(directory, 0);
    for (qsizetype length = 0; length < directory;
         length += std::max<qsizetype>(1, directory / 60)) {
        writeFile(at("bad.zip"), m_good.left(length));
        expectDamaged();
    }
}

TEST_F(HostilePack, AChangedByteIsFoundOrChangesNothing)
{
    quint64 state = 12345;
    for (int i = 0; i < 200; ++i) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        QByteArray bytes = m_good;
        bytes[qsizetype(state >> 33) % bytes.size()] ^= char(1 << (state >> 29 & 7));
        writeFile(at("bad.zip"), bytes);
        const auto unpacked = unpackBook(at("bad.zip"), at("other"));
        if (unpacked) {
            auto store = BookStore::open(at("other"), Access::ReadOnly);
            ASSERT_TRUE(store.ok());
            EXPECT_TRUE((*store)->verify()->ok());
            EXPECT_EQ((*store)->verify()->pictures, 2);
            store = Error{};
            QDir(at("other")).removeRecursively();
        }
        EXPECT_TRUE(nothingBut(before)) << i;
    }
}

TEST_F(HostilePack, ALaterFormatIsRefusedPolitely)
{
    auto entries = parts();
    entries[0].content.replace("\"wainscot_pack\": 1", "\"wainscot_pack\": 2");
    write(entries);
    EXPECT_EQ(unpackBook(at("bad.zip"), at("other")).error().code, ErrorCode::TooNew);
    EXPECT_TRUE(nothingBut(before));
}

} // namespace
} // namespace wainscot
