// The sample class holds together: days, words, people, pictures.
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QProcess>
#include <QSet>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>

#include "core/base/csv.h"
#include "samples/sample_class.h"
#include "samples/sample_pictures.h"

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

// Some families allow much, some little, one nothing at all.
TEST(SampleClass, HasFamiliesWhoAllowDifferentThings)
{
    const QStringList columns{QStringLiteral("photo"),
        QStringLiteral("first_name"),
        QStringLiteral("words"),
        QStringLiteral("work"),
        QStringLiteral("photo_with_name")};
    QSet<QString> answers;
    int nothing = 0;
    int noPhoto = 0;
    int namedNotPictured = 0;
    for (const CsvRow& row : tableOf(made().sample.childrenFile).rows) {
        QStringList given;
        for (const QString& column : columns) {
            const QString cell = row.cell(column);
            given.append(cell == QLatin1String("none") ? QString() : cell);
        }
        answers.insert(given.join(QLatin1Char('|')));
        nothing += given.join(QString()).isEmpty() ? 1 : 0;
        noPhoto += given[0].isEmpty() && !given[2].isEmpty() ? 1 : 0;
        namedNotPictured +=
            !given[0].isEmpty() && !given[1].isEmpty() && given[4].isEmpty() ? 1 : 0;
    }
    EXPECT_GE(answers.size(), 8);
    EXPECT_EQ(nothing, 1);
    EXPECT_GE(noPhoto, 1);
    EXPECT_GE(namedNotPictured, 1);
}

TEST(SampleClass, HasChildrenOfFourAndFive)
{
    QSet<int> ages;
    for (const CsvRow& row : tableOf(made().sample.childrenFile).rows) {
        const QStringList born = row.cell(QStringLiteral("born")).split(QLatin1Char('-'));
        ASSERT_GE(born.size(), 2);
        const int months = (2026 - born[0].toInt()) * 12 + 11 - born[1].toInt();
        ages.insert(months / 12);
    }
    EXPECT_EQ(ages, (QSet<int>{4, 5}));
}

TEST(SampleClass, StarsWordsThatWereSaidAndPicturesThatWereTaken)
{
    const auto& sample = made().sample;
    const CsvTable quotes = tableOf(sample.experiences.front().quotesFile);
    EXPECT_GE(quotes.rows.size(), 38u);
    for (const samples::StarredWords& starred : sample.stars) {
        const auto said =
            std::count_if(quotes.rows.begin(), quotes.rows.end(), [&](const auto& row) {
                return row.cell(QStringLiteral("child")) == starred.child
                    && row.cell(QStringLiteral("prompt")) == starred.prompt;
            });
        EXPECT_EQ(said, 1) << qPrintable(starred.child);
    }
    for (const samples::PictureNote& note : sample.pictures) {
        EXPECT_TRUE(QFileInfo::exists(
            sample.experiences.front().picturesFolder + QLatin1Char('/') + note.file))
            << qPrintable(note.file);
        if (note.mustStay) {
            EXPECT_LE(note.mustStay->x + note.mustStay->width, 1);
            EXPECT_LE(note.mustStay->y + note.mustStay->height, 1);
        }
    }
}

// U+0600 to U+06FF is Arabic (Unicode block names).
TEST(SampleClass, HasAChildWhoTellsInAnotherScript)
{
    ASSERT_FALSE(made().sample.languages.empty());
    const samples::TellsIn& teller = made().sample.languages.front();
    EXPECT_EQ(teller.language, QStringLiteral("ar"));
    int told = 0;
    for (const CsvRow& row : tableOf(made().sample.experiences.front().quotesFile).rows) {
        const QString words = row.cell(QStringLiteral("words"));
        const bool arabic = std::any_of(words.begin(), words.end(), [](QChar letter) {
            return letter.unicode() >= 0x0600 && letter.unicode() <= 0x06ff;
        });
        EXPECT_EQ(arabic, row.cell(QStringLiteral("child")) == teller.child) << qPrintable(words);
        told += arabic ? 1 : 0;
    }
    EXPECT_EQ(told, 3);
}

TEST(SampleClass, TellsOneDrawingInThreeParagraphsOfAtMostSixtyWords)
{
    const CsvTable quotes = tableOf(made().sample.experiences.back().quotesFile);
    ASSERT_EQ(quotes.rows.size(), 1u);
    const QString words = quotes.rows.front().cell(QStringLiteral("words"));
    EXPECT_EQ(words.split(QStringLiteral("\n\n")).size(), 3);
    EXPECT_LE(wordCount(QString(words).replace(QLatin1Char('\n'), QLatin1Char(' '))), 60);
}

TEST(SampleClass, LeavesOnePictureThatNobodyHasLookedAt)
{
    int blank = 0;
    const QString folder = made().sample.experiences.front().picturesFolder;
    for (const CsvRow& row : tableOf(folder + QStringLiteral("/photos.csv")).rows)
        blank += row.cell(QStringLiteral("children")).isEmpty() ? 1 : 0;
    EXPECT_EQ(blank, 1);
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
    EXPECT_EQ(files.size(), 23);
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

// What exiftool, the independent reader of what the invented camera wrote, prints of some tags.
QByteArray exiftool(const QString& file, const QStringList& tags)
{
    QProcess reader;
    reader.start(QStringLiteral("exiftool"),
        QStringList{QStringLiteral("-s3"), QStringLiteral("-n")} + tags
            + QStringList{
                made().sample.experiences.front().picturesFolder + QLatin1Char('/') + file});
    EXPECT_TRUE(reader.waitForFinished());
    return reader.readAllStandardOutput().trimmed();
}

TEST(SampleClass, WritesCaptureTimesAndOrientationOthersCanRead)
{
    const QStringList tags{QStringLiteral("-DateTimeOriginal"),
        QStringLiteral("-OffsetTimeOriginal"),
        QStringLiteral("-Orientation")};
    EXPECT_EQ(exiftool(QStringLiteral("rubber_boots.jpg"), tags), "2026:11:02 10:55:00\n+01:00\n6");
    EXPECT_EQ(
        exiftool(QStringLiteral("puddle_raindrops.jpg"), tags), "2026:11:02 08:50:00\n+01:00\n8");
    EXPECT_EQ(exiftool(QStringLiteral("mud_prints.jpg"), tags), "2026:11:03 11:15:00\n6");
    // Upright is 3024 x 4032; stored sideways, a tenth of it each way.
    EXPECT_EQ(exiftool(QStringLiteral("rubber_boots.jpg"),
                  {QStringLiteral("-ImageWidth"), QStringLiteral("-ImageHeight")}),
        "403\n302");
}

TEST(SampleClass, WritesSoundExifWithAMakersNoteAndNoPlace)
{
    const QString file = QStringLiteral("chalk_day1.jpg");
    EXPECT_EQ(exiftool(file, {QStringLiteral("-Warning"), QStringLiteral("-Error")}), "");
    EXPECT_EQ(exiftool(file, {QStringLiteral("-GPS:all")}), "");
    EXPECT_TRUE(bytesOf(made().sample.experiences.front().picturesFolder + QLatin1Char('/') + file)
                    .contains("Invented camera"));
}

TEST(SampleClass, StoresTheFormatsThatTheNamesSay)
{
    const QString folder = made().sample.experiences.front().picturesFolder + QLatin1Char('/');
    EXPECT_TRUE(
        bytesOf(folder + QStringLiteral("drawing_puddle_arrows.png")).startsWith("\x89PNG"));
    EXPECT_TRUE(bytesOf(folder + QStringLiteral("drawing_worm.tif")).startsWith("II*"));
    EXPECT_EQ(bytesOf(folder + QStringLiteral("wet_leaves.webp")).mid(8, 4), "WEBP");
    EXPECT_TRUE(bytesOf(folder + QStringLiteral("jar_row.jpg")).startsWith("\xff\xd8\xff"));
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

TEST(SampleClass, DrawsOtherPicturesForAnotherSeed)
{
    QTemporaryDir again;
    samples::Wish wish = smallWish();
    wish.seed = 2;
    wish.photos = 1;
    const auto second = samples::writeSample(again.path(), wish);
    ASSERT_TRUE(second.ok());
    const QString file = QStringLiteral("/chalk_shrinking.jpg");
    EXPECT_NE(bytesOf(second->experiences.front().picturesFolder + file),
        bytesOf(made().sample.experiences.front().picturesFolder + file));
}

TEST(SampleClass, CanHaveMorePicturesThanScenesAndNoneTwice)
{
    samples::Wish wish = smallWish();
    wish.photos = 60;
    const auto pictures = samples::puddlePictures(wish);
    ASSERT_EQ(pictures.size(), 60u);
    QSet<QString> files;
    QSet<QString> recipes;
    for (const samples::SamplePicture& picture : pictures) {
        files.insert(picture.file);
        recipes.insert(picture.scene
            + samples::recipeOf(picture, wish).section(QStringLiteral(" turned"), 0, 0));
    }
    EXPECT_EQ(files.size(), 60);
    EXPECT_EQ(recipes.size(), 60) << "two pictures would look the same";
}

TEST(SampleClass, MakesAFurtherPictureOfAScene)
{
    QTemporaryDir folder;
    samples::Wish wish = smallWish();
    wish.photos = 24;
    const samples::SamplePicture further = samples::puddlePictures(wish).back();
    const QString path = folder.filePath(further.file);
    ASSERT_TRUE(samples::makePicture(path, further, wish).ok());
    EXPECT_EQ(QImageReader(path).size(), QSize(101, 76)); // a fortieth of 4032 x 3024
}

TEST(InventedClass, CanBeAnySize)
{
    for (const int count : {0, 1, 40}) {
        QTemporaryDir folder;
        samples::Wish wish = smallWish();
        wish.children = count;
        wish.photos = 0;
        const auto written = samples::writeSample(folder.path(), wish);
        ASSERT_TRUE(written.ok());
        const CsvTable children = tableOf(written->childrenFile);
        QSet<QString> names;
        for (const CsvRow& row : children.rows)
            names.insert(row.cell(QStringLiteral("name")));
        EXPECT_EQ(names.size(), count);
        const CsvTable quotes = tableOf(written->experiences.front().quotesFile);
        EXPECT_TRUE(quotes.faults.empty());
        EXPECT_GE(int(quotes.rows.size()), 2 * count);
        for (const CsvRow& row : quotes.rows)
            EXPECT_TRUE(names.contains(row.cell(QStringLiteral("child"))));
    }
}

TEST(InventedClass, StandsInThePicturesInsteadOfTheUsualOne)
{
    QTemporaryDir folder;
    samples::Wish wish = smallWish();
    wish.children = 8; // so that Priya's place is taken and Tomek's is not
    wish.photos = 7;
    const auto written = samples::writeSample(folder.path(), wish);
    ASSERT_TRUE(written.ok());
    const CsvTable children = tableOf(written->childrenFile);
    QStringList names{QString(), QStringLiteral("none")};
    for (const CsvRow& row : children.rows)
        names.append(row.cell(QStringLiteral("name")));
    QHash<QString, QString> people;
    const QString folderOfPictures = written->experiences.front().picturesFolder;
    for (const CsvRow& row : tableOf(folderOfPictures + QStringLiteral("/photos.csv")).rows) {
        people[row.cell(QStringLiteral("file"))] = row.cell(QStringLiteral("children"));
        EXPECT_TRUE(names.contains(row.cell(QStringLiteral("children"))));
    }
    EXPECT_EQ(people[QStringLiteral("rubber_boots.jpg")], names[2 + 7]);
    EXPECT_EQ(people[QStringLiteral("drawing_puddle_arrows.png")], QStringLiteral("none"));
}

TEST(SampleFolder, KeepsWhatTheSameWishMadeAndMendsWhatWasDamaged)
{
    QTemporaryDir folder;
    samples::Wish wish = smallWish();
    wish.photos = 2;
    const auto first = samples::writeSample(folder.path(), wish);
    ASSERT_TRUE(first.ok());
    const QString pictures = first->experiences.front().picturesFolder;
    const QString kept = pictures + QStringLiteral("/chalk_shrinking.jpg");
    const QString damaged = pictures + QStringLiteral("/chalk_day1.jpg");
    const QByteArray sound = bytesOf(damaged);
    QFile cut(damaged);
    ASSERT_TRUE(cut.resize(100));
    QFile list(first->childrenFile);
    ASSERT_TRUE(list.open(QIODevice::Append));
    list.write("Added Later,,2021-05,,,,,\n");
    list.close();
    const QDateTime before = QDateTime(QDate(2026, 1, 1), QTime(0, 0));
    QFile untouched(kept);
    ASSERT_TRUE(untouched.open(QIODevice::ReadWrite));
    ASSERT_TRUE(untouched.setFileTime(before, QFileDevice::FileModificationTime));
    untouched.close();

    ASSERT_TRUE(samples::writeSample(folder.path(), wish).ok());
    EXPECT_EQ(QFileInfo(kept).lastModified(), before) << "made again without need";
    EXPECT_EQ(bytesOf(damaged), sound);
    EXPECT_EQ(tableOf(first->childrenFile).rows.size(), 15u) << "what was added is lost";
}

TEST(SampleFolder, HoldsNoPicturesOfAnEarlierWish)
{
    QTemporaryDir folder;
    samples::Wish wish = smallWish();
    wish.photos = 3;
    ASSERT_TRUE(samples::writeSample(folder.path(), wish).ok());
    wish.photos = 1;
    const auto second = samples::writeSample(folder.path(), wish);
    ASSERT_TRUE(second.ok());
    EXPECT_EQ(QDir(second->experiences.front().picturesFolder).entryList(QDir::Files),
        (QStringList{QStringLiteral("chalk_shrinking.jpg"), QStringLiteral("photos.csv")}));
}

TEST(SampleFolder, NeverWritesOverSomebodyElsesFile)
{
    QTemporaryDir folder;
    const QString theirs = folder.filePath(QStringLiteral("children.csv"));
    QFile file(theirs);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("name\nA real list\n");
    file.close();
    const auto written = samples::writeSample(folder.path(), smallWish());
    ASSERT_FALSE(written.ok());
    EXPECT_EQ(written.error().code, ErrorCode::Refused);
    EXPECT_EQ(written.error().subject, theirs);
    EXPECT_EQ(bytesOf(theirs), "name\nA real list\n");
}

TEST(SampleClass, StopsWhenAsked)
{
    QTemporaryDir folder;
    const std::atomic<bool> cancel{true};
    const auto written = samples::writeSample(folder.path(), smallWish(), {}, &cancel);
    ASSERT_FALSE(written.ok());
    EXPECT_EQ(written.error().code, ErrorCode::Cancelled);
}
