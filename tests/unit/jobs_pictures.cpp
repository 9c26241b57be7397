// Pictures out of the book: of panels and single pieces, at the size asked for, with nothing in
// them but pixels.
#include "app/jobs/drawn_display.h"
#include "app/jobs/export_job.h"

#include <QDir>
#include <QImageReader>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "tests/support/privacy_book.h"

namespace wainscot {
namespace {

class PicturesOut : public ::testing::Test {
protected:
    ExportPictureJob job(const char* file)
    {
        ExportPictureJob job;
        job.display = display().name;
        job.file = m_place.filePath(QString::fromLatin1(file));
        job.picturesFolder = m_made.picturesFolder();
        return job;
    }
    [[nodiscard]] const Display& display() const
    {
        for (const auto& [id, one] : m_made.book().displays.rows()) {
            if (one.audience == Audience::Classroom)
                return one;
        }
        return m_made.book().displays.rows().begin()->second;
    }
    // The first piece of a kind that may be seen, and its room.
    [[nodiscard]] ClearedPiece cleared(PieceKind kind) const
    {
        const auto drawn = drawDisplay(m_made.book(), display().name, kTestDay);
        for (const DrawnPanel& panel : drawn->panels) {
            for (const ClearedPiece& piece : panel.cleared.pieces()) {
                if (piece.kind == kind)
                    return piece;
            }
        }
        ADD_FAILURE() << "no piece of that kind";
        return {};
    }

    QTemporaryDir m_place;
    PrivacyBook m_made{7, m_place.filePath(QStringLiteral("pictures"))};
};

TEST_F(PicturesOut, AreAsWideAsWantedInEitherForm)
{
    for (const auto form : {PictureForm::Png, PictureForm::Jpeg}) {
        ExportPictureJob wide = job("panel");
        wide.form = form;
        wide.width = 333;
        ASSERT_TRUE(wide.run(m_made.book(), {}).ok());
        QImageReader reader(wide.file);
        reader.setDecideFormatFromContent(true);
        EXPECT_EQ(reader.format(), form == PictureForm::Png ? "png" : "jpeg");
        const SizeMm size = display().panelSize;
        EXPECT_EQ(reader.size().width(), 333);
        EXPECT_NEAR(reader.size().height(), 333 * (size.height / size.width), 0.6);
    }
    ExportPictureJob fine = job("fine.png");
    fine.dpi = 50;
    ASSERT_TRUE(fine.run(m_made.book(), {}).ok());
    EXPECT_NEAR(QImage(fine.file).width(), display().panelSize.width.value() / 25.4 * 50, 0.6);
}

TEST_F(PicturesOut, ShowASinglePieceAsItIsOnThePanel)
{
    const ClearedPiece photo = cleared(PieceKind::Photo);
    ExportPictureJob whole = job("whole.png");
    whole.dpi = 60;
    ExportPictureJob alone = job("alone.png");
    alone.dpi = 60;
    alone.piece = photo.id;
    ASSERT_TRUE(whole.run(m_made.book(), {}).ok());
    const auto written = alone.run(m_made.book(), {});
    ASSERT_TRUE(written.ok());
    EXPECT_EQ(written->files, QStringList{alone.file});
    const QImage image(alone.file);
    const QImage panel(whole.file);
    // With 5 mm of white around it; the picture's middle is the panel's there.
    const double dots = 60 / 25.4;
    EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
    const RectMm place = photo.picturePlace;
    const QColor there = panel.pixelColor(int((place.x + place.width / 2).value() * dots),
        int((place.y + place.height / 2).value() * dots));
    const QColor here = image.pixelColor(
        int((5 + place.width.value() / 2) * dots), int((5 + place.height.value() / 2) * dots));
    // Shrunk from another place of the pixel grid, so not to the last digit.
    for (const auto channel : {&QColor::red, &QColor::green, &QColor::blue})
        EXPECT_NEAR((here.*channel)(), (there.*channel)(), 8);
    EXPECT_NE(here, QColor(Qt::white));
    EXPECT_GE(image.width(), int((place.width.value() + 10) * dots) - 1);
    EXPECT_LT(image.width(), panel.width());
}

TEST_F(PicturesOut, HoldNothingButPixelsAsExiftoolSees)
{
    QStringList files;
    for (const auto kind : {PieceKind::Photo, PieceKind::Quote}) {
        for (const auto form : {PictureForm::Png, PictureForm::Jpeg}) {
            ExportPictureJob one = job("");
            one.file = m_place.filePath(QStringLiteral("%1.%2")
                                            .arg(files.size())
                                            .arg(form == PictureForm::Png ? u"png"_qs : u"jpg"_qs));
            one.form = form;
            one.width = 200;
            one.piece = cleared(kind).id;
            ASSERT_TRUE(one.run(m_made.book(), {}).ok());
            files << one.file;
        }
    }
    QProcess exiftool;
    exiftool.start(QStringLiteral("exiftool"),
        QStringList{QStringLiteral("-json"), QStringLiteral("-G1"), QStringLiteral("-a")} + files);
    ASSERT_TRUE(exiftool.waitForFinished(60000)) << exiftool.errorString().toStdString();
    const QJsonArray told = QJsonDocument::fromJson(exiftool.readAllStandardOutput()).array();
    ASSERT_EQ(told.size(), files.size());
    // What the file system and the pixels themselves say.
    const QStringList groups{QStringLiteral("SourceFile"),
        QStringLiteral("ExifTool"),
        QStringLiteral("System"),
        QStringLiteral("File"),
        QStringLiteral("PNG"),
        QStringLiteral("PNG-pHYs"),
        QStringLiteral("JFIF"),
        QStringLiteral("Composite")};
    const QStringList pngTags{QStringLiteral("ImageWidth"),
        QStringLiteral("ImageHeight"),
        QStringLiteral("BitDepth"),
        QStringLiteral("ColorType"),
        QStringLiteral("Compression"),
        QStringLiteral("Filter"),
        QStringLiteral("Interlace"),
        QStringLiteral("Gamma"),
        QStringLiteral("SRGBRendering")};
    for (const QJsonValue& file : told) {
        for (const QString& tag : file.toObject().keys()) {
            const QString group = tag.section(u':', 0, 0);
            EXPECT_TRUE(groups.contains(group)) << tag.toStdString();
            EXPECT_FALSE(tag.endsWith(QLatin1String(":Comment"))) << tag.toStdString();
            if (group == QLatin1String("PNG")) {
                EXPECT_TRUE(pngTags.contains(tag.section(u':', 1))) << tag.toStdString();
            }
        }
    }
}

TEST_F(PicturesOut, AreRefusedWhereTheyMakeNoSense)
{
    ExportPictureJob one = job("no.png");
    one.width = 15;
    EXPECT_EQ(one.run(m_made.book(), {}).error().code, ErrorCode::WrongUse);
    one.width = 20'001;
    EXPECT_EQ(one.run(m_made.book(), {}).error().code, ErrorCode::WrongUse);
    one.width = 0;
    one.dpi = 9;
    EXPECT_EQ(one.run(m_made.book(), {}).error().code, ErrorCode::WrongUse);
    one.dpi = 30;
    one.piece = PieceId(987654);
    EXPECT_EQ(one.run(m_made.book(), {}).error().code, ErrorCode::NotFound);
    // A piece of another display is not of this one.
    for (const auto& [id, piece] : m_made.book().pieces.rows()) {
        if (m_made.book().panels.find(piece.panel)->display != display().id)
            one.piece = id;
    }
    EXPECT_EQ(one.run(m_made.book(), {}).error().code, ErrorCode::NotFound);
    EXPECT_FALSE(QFile::exists(one.file));
}

} // namespace
} // namespace wainscot
