// The sample class holds together: days, words, people, pictures.
#include "samples/sample_class.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "core/base/csv.h"

using namespace wainscot;

namespace {

samples::Wish smallWish()
{
    samples::Wish wish;
    wish.small = true;
    return wish;
}

// Made once; every test looks at the same folder.
struct Made {
    QTemporaryDir folder;
    samples::SampleClass sample;
    Made()
    {
        auto written = samples::writeSample(folder.path(), smallWish());
        EXPECT_TRUE(written.ok());
        if (written.ok())
            sample = *written;
    }
};

const Made& made()
{
    static const Made once;
    return once;
}

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << qPrintable(path);
    return file.readAll();
}

int wordCount(const QString& text)
{
    return static_cast<int>(text.split(QLatin1Char(' '), Qt::SkipEmptyParts).size());
}

CsvTable tableOf(const QString& path)
{
    auto table = readCsv(path);
    EXPECT_TRUE(table.ok()) << qPrintable(path);
    return table.ok() ? *table : CsvTable{};
}

} // namespace

TEST(SampleClass, HasFourteenChildrenAndQuotesOnlyThem)
{
    const CsvTable children = tableOf(made().sample.childrenFile);
    ASSERT_EQ(children.rows.size(), 14u);
    QStringList names;
    for (const CsvRow& row : children.rows)
        names.append(row.cell(QStringLiteral("name")));
    for (const auto& experience : made().sample.experiences) {
        for (const CsvRow& row : tableOf(experience.quotesFile).rows)
            EXPECT_TRUE(names.contains(row.cell(QStringLiteral("child"))));
    }
}

TEST(SampleClass, NamesOnlyItsChildrenInPicturesThatExist)
{
    const CsvTable children = tableOf(made().sample.childrenFile);
    QStringList names{QString(), QStringLiteral("none")};
    for (const CsvRow& row : children.rows)
        names.append(row.cell(QStringLiteral("name")));
    for (const auto& experience : made().sample.experiences) {
        const CsvTable photos = tableOf(experience.picturesFolder + QStringLiteral("/photos.csv"));
        EXPECT_GT(photos.rows.size(), 0u);
        for (const CsvRow& row : photos.rows) {
            EXPECT_TRUE(names.contains(row.cell(QStringLiteral("children"))));
            const QString path =
                experience.picturesFolder + QLatin1Char('/') + row.cell(QStringLiteral("file"));
            EXPECT_GT(QFileInfo(path).size(), 0) << qPrintable(path);
        }
    }
}

TEST(SampleClass, RunsFromAMondayToAThursday)
{
    EXPECT_EQ(made().sample.experiences.front().on.dayOfWeek(), Qt::Monday);
    QSet<QString> days;
    for (const CsvRow& row : tableOf(made().sample.experiences.front().quotesFile).rows)
        days.insert(row.cell(QStringLiteral("on")));
    EXPECT_EQ(days.size(), 4);
    EXPECT_TRUE(days.contains(QStringLiteral("2026-11-05")));
    EXPECT_EQ(QDate(2026, 11, 5).dayOfWeek(), Qt::Thursday);
}

TEST(SampleClass, KeepsTheAdultsTextsShort)
{
    // 30, 40, 20 and 20 words: the style's own limits for a panel.
    for (const auto& experience : made().sample.experiences) {
        EXPECT_LE(wordCount(experience.context), 30);
        EXPECT_LE(wordCount(experience.interpretation), 40);
        EXPECT_LE(wordCount(experience.nextSteps), 20);
        EXPECT_LE(wordCount(experience.credits), 20);
    }
}

TEST(SampleClass, DrawsPicturesWithSomethingOnThem)
{
    const QDir folder(made().sample.experiences.front().picturesFolder);
    const QStringList files = folder.entryList({QStringLiteral("*.jpg"),
        QStringLiteral("*.png"),
        QStringLiteral("*.webp"),
        QStringLiteral("*.tif")});
    EXPECT_EQ(files.size(), 22);
    for (const QString& file : files) {
        const QImage image =
            QImageReader(folder.filePath(file)).read().convertToFormat(QImage::Format_Grayscale8);
        ASSERT_FALSE(image.isNull()) << qPrintable(file);
        double sum = 0;
        double squares = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                const double grey = image.constScanLine(y)[x];
                sum += grey;
                squares += grey * grey;
            }
        }
        const double count = double(image.width()) * image.height();
        const double mean = sum / count;
        EXPECT_GT(squares / count - mean * mean, 25.0) << qPrintable(file) << " is flat";
    }
}

// exiftool is the independent reader of what the invented camera wrote.
TEST(SampleClass, WritesCaptureTimesAndOrientationOthersCanRead)
{
    QProcess reader;
    reader.start(QStringLiteral("exiftool"),
        {QStringLiteral("-s3"),
            QStringLiteral("-n"),
            QStringLiteral("-DateTimeOriginal"),
            QStringLiteral("-OffsetTimeOriginal"),
            QStringLiteral("-Orientation"),
            made().sample.experiences.front().picturesFolder
                + QStringLiteral("/rubber_boots.jpg")});
    ASSERT_TRUE(reader.waitForFinished());
    EXPECT_EQ(reader.readAllStandardOutput().trimmed(), "2026:11:02 10:55:00\n+01:00\n6");
}

TEST(SampleClass, IsTheSameForTheSameSeed)
{
    QTemporaryDir again;
    samples::Wish wish = smallWish();
    wish.photos = 3;
    const auto second = samples::writeSample(again.path(), wish);
    ASSERT_TRUE(second.ok());
    for (const char* file : {"chalk_shrinking.jpg", "chalk_day1.jpg", "string_around.jpg"}) {
        EXPECT_EQ(bytesOf(second->experiences.front().picturesFolder + QLatin1Char('/')
                      + QLatin1String(file)),
            bytesOf(made().sample.experiences.front().picturesFolder + QLatin1Char('/')
                + QLatin1String(file)));
    }
}

TEST(SampleClass, CanBeAnySize)
{
    for (const int count : {0, 1, 40}) {
        QTemporaryDir folder;
        samples::Wish wish = smallWish();
        wish.children = count;
        wish.photos = 0;
        const auto written = samples::writeSample(folder.path(), wish);
        ASSERT_TRUE(written.ok());
        EXPECT_EQ(int(tableOf(written->childrenFile).rows.size()), count);
    }
}

TEST(SampleClass, StopsWhenAsked)
{
    QTemporaryDir folder;
    const std::atomic<bool> cancel{true};
    const auto written = samples::writeSample(folder.path(), smallWish(), {}, &cancel);
    ASSERT_FALSE(written.ok());
    EXPECT_EQ(written.error().code, ErrorCode::Cancelled);
}
