// The command line is struck down, or finds the disk failing, while it exports: under the final
// name stands the whole file, what stood there before, or nothing.
#include "core/model/tables.h"
#include "core/store/book_store.h"
#include "tests/support/privacy_book.h"
#include "tests/support/worker_run.h"

#include <QDir>
#include <QFile>
#include <QImageReader>
#include <QProcess>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

// Everything may hang, so that an export has nothing to remark.
template <class T> void allow(T& /*value*/) { }
void allow(Child& child)
{
    child.permissions = Permissions::all();
}
void allow(Picture& picture)
{
    picture.people.lookedAt = true;
}

class ExportStruck : public ::testing::Test {
protected:
    void SetUp() override
    {
        auto store = BookStore::create(at("book"), {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(store.ok());
        const PrivacyBook made(3, (*store)->picturesFolder());
        EditBuilder edit((*store)->book(), QStringLiteral("Fill"));
        forEachTable(made.book(), [&](const auto& table) {
            for (auto [id, value] : table.rows()) {
                allow(value);
                edit.put(value);
            }
        });
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
        m_display = made.book().displays.rows().begin()->second.name;
    }
    void TearDown() override
    {
        RecordProperty("kills", m_kills);
        RecordProperty("failed_writes", m_failures);
        RecordProperty("losses", HasFailure() ? 1 : 0);
    }

    [[nodiscard]] QString at(const char* name) const { return m_cli.at(QString::fromLatin1(name)); }
    [[nodiscard]] QStringList exporting(const char* form, const char* file) const
    {
        return {QStringLiteral("export"),
            at("book"),
            QStringLiteral("--display"),
            m_display,
            QString::fromLatin1(form),
            at(file)};
    }

    // By an independent reader; nothing there is fine too.
    void expectWholePdfOrNone(const QString& file)
    {
        if (!QFile::exists(file))
            return;
        QProcess qpdf;
        qpdf.start(QStringLiteral("qpdf"), {QStringLiteral("--check"), file});
        ASSERT_TRUE(qpdf.waitForFinished(30'000));
        EXPECT_EQ(qpdf.exitCode(), 0) << qpdf.readAllStandardError().toStdString();
    }

    Worker m_cli; // STORE_WORKER is the command line here
    QString m_display;
    std::mt19937 m_random{7};
    int m_kills = 0;
    int m_failures = 0;
};

TEST_F(ExportStruck, ByAKillLeavesNoHalfPdf)
{
    const QStringList words = exporting("--pdf", "hall.pdf");
    const unsigned takes = m_cli.duration(words);
    int struck = 0;
    for (int i = 0; i < 60; ++i) {
        SCOPED_TRACE(i);
        QFile::remove(at("hall.pdf"));
        struck += m_cli.runAndKill(words, 0, unsigned(m_random() % takes)).exit == -1 ? 1 : 0;
        m_kills += 1;
        expectWholePdfOrNone(at("hall.pdf"));
    }
    EXPECT_GT(struck, 10);
}

TEST_F(ExportStruck, ByAKillLeavesNoHalfPicture)
{
    const QStringList words = exporting("--png", "hall.png");
    const unsigned takes = m_cli.duration(words);
    for (int i = 0; i < 30; ++i) {
        SCOPED_TRACE(i);
        QFile::remove(at("hall.png"));
        m_cli.runAndKill(words, 0, unsigned(m_random() % takes));
        m_kills += 1;
        if (QFile::exists(at("hall.png"))) {
            EXPECT_FALSE(QImageReader(at("hall.png")).read().isNull());
        }
    }
}

TEST_F(ExportStruck, ByAnyFailureOfTheDiskLeavesTheEarlierPdf)
{
    ASSERT_EQ(m_cli.run(exporting("--pdf", "first.pdf")).exit, 0);
    for (const bool from : {false, true}) {
        for (int change = 1;; ++change) {
            SCOPED_TRACE(::testing::Message() << "change " << change << (from ? " and on" : ""));
            ASSERT_LT(change, 1000);
            QFile::remove(at("hall.pdf"));
            ASSERT_TRUE(QFile::copy(at("first.pdf"), at("hall.pdf")));
            const WorkerEnd end = m_cli.run(exporting("--pdf", "hall.pdf"), {change, from});
            ASSERT_TRUE(end.exit == 0 || end.exit == 3) << end.exit << end.said.toStdString();
            ASSERT_TRUE(QFile::exists(at("hall.pdf")));
            expectWholePdfOrNone(at("hall.pdf"));
            if (HasFailure())
                return;
            if (!end.failed) {
                EXPECT_EQ(end.exit, 0);
                break;
            }
            ++m_failures;
        }
    }
    EXPECT_GT(m_failures, 5);
}

} // namespace

} // namespace wainscot
