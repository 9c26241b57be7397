// A small book with two pictures, to be packed.
#pragma once

#include "core/store/book_store.h"
#include "core/store/pack.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {

inline QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline void writeFile(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

class BookToPack : public ::testing::Test {
protected:
    void SetUp() override
    {
        auto made = BookStore::create(at("book"), {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(made.ok());
        m_store = std::move(*made);
        EditBuilder edit(m_store->book(), QStringLiteral("Gather"));
        Experience experience;
        experience.id = edit.newId<Experience>();
        edit.put(experience);
        for (const QByteArray& content : {QByteArray("first"), QByteArray(300'000, 'x')}) {
            writeFile(at("photo.jpg"), content);
            const auto kept = m_store->keepOriginal(at("photo.jpg"));
            ASSERT_TRUE(kept.ok());
            Picture picture;
            picture.id = edit.newId<Picture>();
            picture.experience = experience.id;
            picture.sha256 = *kept;
            picture.fileName = QStringLiteral("photo.jpg");
            edit.put(picture);
            m_shas << *kept;
        }
        ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
    }

    [[nodiscard]] QString at(const char* name) const
    {
        return m_place.filePath(QString::fromLatin1(name));
    }
    [[nodiscard]] bool nothingBut(const QStringList& names) const
    {
        return QDir(m_place.path())
                   .entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot)
            == names;
    }

    QTemporaryDir m_place;
    std::unique_ptr<BookStore> m_store;
    QStringList m_shas;
};

} // namespace wainscot
