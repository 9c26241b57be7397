// A small book with three pictures, kept aside and copied for each try of the worker program.
#pragma once

#include "core/store/book_store.h"
#include "tests/support/packed_book.h"
#include "tests/support/places.h"
#include "tests/support/worker_run.h"

#include <QDir>
#include <QSqlDatabase>
#include <QSqlQuery>

#include <random>

namespace wainscot {

class WorkedBook : public ::testing::Test {
protected:
    void SetUp() override
    {
        auto store = BookStore::create(at("whole"), {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(store.ok());
        EditBuilder edit((*store)->book(), QStringLiteral("Gather"));
        Experience experience;
        experience.id = edit.newId<Experience>();
        experience.title = QStringLiteral("Rain");
        edit.put(experience);
        for (int i = 0; i < 3; ++i) {
            writeFile(at("photo.jpg"), random(90'000));
            const auto kept = (*store)->keepOriginal(at("photo.jpg"));
            ASSERT_TRUE(kept.ok());
            Picture picture;
            picture.id = edit.newId<Picture>();
            picture.experience = experience.id;
            picture.sha256 = *kept;
            picture.fileName = QStringLiteral("photo %1.jpg").arg(i);
            edit.put(picture);
        }
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
        m_before = (*store)->book();
        QDir().mkpath(at("sources"));
        for (int i = 0; i < 5; ++i)
            writeFile(at("sources/rain-") + QString::number(i), random(120'000));
    }

    [[nodiscard]] QString at(const char* name) const
    {
        return m_worker.at(QString::fromLatin1(name));
    }

    QByteArray random(qsizetype size)
    {
        QByteArray bytes(size, Qt::Uninitialized);
        for (char& byte : bytes)
            byte = char(m_random());
        return bytes;
    }

    // A fresh copy of the book to work on.
    void again()
    {
        copyFolder(at("whole"), at("book"));
        QDir(at("tmp")).removeRecursively();
        QDir().mkpath(at("tmp"));
    }

    // A book of the first version with some hundred children, brought to `folder`.
    void makeOldBook(const QString& folder) const
    {
        QDir().mkpath(folder + QStringLiteral("/pictures"));
        QFile sql(testData("store/book_v1.sql"));
        ASSERT_TRUE(sql.open(QIODevice::ReadOnly));
        const QString connection = QStringLiteral("by hand");
        {
            QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection);
            db.setDatabaseName(folder + QStringLiteral("/book.wainscot"));
            ASSERT_TRUE(db.open());
            const QStringList statements =
                QString::fromUtf8(sql.readAll()).split(QStringLiteral(";\n"), Qt::SkipEmptyParts);
            QSqlQuery query(db);
            for (const QString& statement : statements) {
                ASSERT_TRUE(statement.trimmed().isEmpty() || query.exec(statement));
            }
            ASSERT_TRUE(query.exec(QStringLiteral("BEGIN")));
            for (int i = 100; i < 500; ++i)
                ASSERT_TRUE(query.exec(
                    QStringLiteral("INSERT INTO children VALUES (%1, 'Child %1', '', NULL, 0)")
                        .arg(i)));
            ASSERT_TRUE(query.exec(QStringLiteral("COMMIT")));
        }
        QSqlDatabase::removeDatabase(connection);
    }

    // The book opens for writing, is whole, and has nothing half done left in its folder.
    [[nodiscard]] Book opened(const QString& folder, bool withPictures = true)
    {
        auto store = BookStore::open(folder);
        EXPECT_TRUE(store.ok()) << store.error().detail.toStdString();
        if (!store.ok())
            return {};
        const auto report = (*store)->verify();
        EXPECT_TRUE(report.ok());
        if (withPictures && report.ok()) {
            EXPECT_EQ(report->problems, QStringList());
        }
        const QStringList left =
            QDir(folder + QStringLiteral("/pictures")).entryList({QStringLiteral("incoming*")});
        EXPECT_EQ(left, QStringList());
        EXPECT_FALSE(QFile::exists(folder + QStringLiteral("/erase.pending")));
        return (*store)->book();
    }

    // A packed book or nothing at all.
    void expectWholePackOrNone(const QString& file)
    {
        if (!QFile::exists(file))
            return;
        QDir(at("unpacked")).removeRecursively();
        const auto unpacked = unpackBook(file, at("unpacked"));
        EXPECT_TRUE(unpacked.ok())
            << int(unpacked.error().code) << ' ' << unpacked.error().subject.toStdString() << ' '
            << unpacked.error().detail.toStdString();
    }

    Worker m_worker;
    Book m_before;
    std::mt19937 m_random{2026};
};

} // namespace wainscot
