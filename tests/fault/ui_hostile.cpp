// What any program can put before the window: the clipboard, what is dragged over it, and the file
// of its settings.
#include "app/jobs/kept_limits.h"
#include "app/jobs/program_settings.h"
#include "app/ui/canvas/incoming.h"
#include "app/ui/canvas/screen_size.h"
#include "app/ui/compose/clipboard.h"
#include "app/ui/session/sheet_settings.h"
#include "tests/fuzz/mutator.h"
#include "tests/support/class_book.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QScreen>

#include <gmock/gmock.h>

namespace wainscot::ui {
namespace {

constexpr int kChanges = 20'000;
constexpr int kSettings = 3'000; // each is read from a file

class Hostile : public ::testing::Test {
protected:
    // Every seed as it is, then seeded changes to them.
    template <class Look> void each(const char* seeds, int changes, Look look)
    {
        const std::vector<QByteArray> all = fuzz::seedsOf(seeds);
        ASSERT_GE(all.size(), 3U);
        for (const QByteArray& one : all)
            look(one);
        fuzz::Mutator mutator(all, 2026);
        for (int i = 0; i < changes && !HasFailure(); ++i)
            look(mutator.next());
        RecordProperty("fuzz_executions", changes + int(all.size()));
    }
};

TEST_F(Hostile, ClipboardBringsNothingThatIsNotInTheBook)
{
    ClassBook made;
    const QuoteId quote =
        made.quote(made.child("Wren", Permissions::all()), QStringLiteral("One."));
    const PictureId picture = made.picture(PictureKind::Photo, {true, {}});
    ASSERT_EQ(quote.number(), 1);
    ASSERT_EQ(picture.number(), 1);
    int taken = 0;
    each("pieces", kChanges, [&](const QByteArray& bytes) {
        for (const Piece& piece : piecesFrom(bytes, made.book, QStringLiteral("/a/book"))) {
            ++taken;
            EXPECT_EQ(piece.quote.isValid(), piece.kind == PieceKind::Quote) << bytes.toStdString();
            EXPECT_EQ(piece.picture.isValid(), isPicture(piece.kind)) << bytes.toStdString();
            EXPECT_TRUE(!piece.quote.isValid() || piece.quote == quote);
            EXPECT_TRUE(!piece.picture.isValid() || piece.picture == picture);
            EXPECT_GT(piece.cell.width.value(), 0);
            EXPECT_LE(piece.cell.width.value(), 10'000);
            EXPECT_GE(piece.framing.zoom, 1);
            EXPECT_LE(piece.framing.zoom, kMostFrameZoom);
        }
        if (const auto item = drawerItemFrom(bytes)) {
            EXPECT_FALSE(toBytes(*item).isEmpty());
        }
    });
    EXPECT_GT(taken, 100);
}

class HostileSettings : public Hostile {
protected:
    HostileSettings()
        : m_file(ProgramSettings().fileName())
    {
        QDir().mkpath(QFileInfo(m_file).path());
    }
    ~HostileSettings() override { QFile::remove(m_file); }

    void write(const QByteArray& bytes) const
    {
        QFile::remove(m_file); // another file, so that nothing read before is believed
        QFile file(m_file);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

    QString m_file;
};

TEST_F(HostileSettings, AreTakenWhereTheyMakeSense)
{
    each("settings", kSettings, [&](const QByteArray& bytes) {
        write(bytes);
        const check::Limits limits = keptLimits();
        for (const auto& [limit, value] : limits.own()) {
            EXPECT_TRUE(check::isMeasure(check::limitOf(limit))) << bytes.toStdString();
            EXPECT_TRUE(value >= 0 && value <= check::Limits::kGreatest) << bytes.toStdString();
        }
        EXPECT_TRUE(keptStandOut() >= Mm(0) && keptStandOut() <= Mm(500)) << bytes.toStdString();
        const SheetWishes sheets = keptSheets();
        EXPECT_TRUE(sheets.overlap >= Mm(0) && sheets.overlap <= Mm(40)) << bytes.toStdString();
        EXPECT_TRUE(sheets.margin >= Mm(0) && sheets.margin <= Mm(40)) << bytes.toStdString();
        EXPECT_TRUE(sheets.scale >= 0.9 && sheets.scale <= 1.12) << bytes.toStdString();
        EXPECT_TRUE(sheets.paper.width > Mm(0) && sheets.paper.height > Mm(0));
        EXPECT_TRUE(sheets.paper.width < Mm(10'000) && sheets.paper.height < Mm(10'000))
            << bytes.toStdString();
    });
}

// A millimetre that fills the screen, or none at all, would leave nothing to be seen.
TEST_F(HostileSettings, DoNotBlowUpTheScreen)
{
    const QLabel widget;
    setPixelsPerMm(widget, 0);
    const double usual = pixelsPerMm(widget);
    setPixelsPerMm(widget, 3.5);
    ASSERT_EQ(pixelsPerMm(widget), 3.5);
    ProgramSettings settings;
    const QStringList keys = settings.allKeys().filter(QStringLiteral("screens"));
    ASSERT_EQ(keys.size(), 1);
    const QString& key = keys.front();
    for (const char* value : {"1e300", "inf", "nan", "-3", "0.0001", "much", "1000"}) {
        settings.setValue(key, QString::fromLatin1(value));
        settings.sync();
        EXPECT_EQ(pixelsPerMm(widget), usual) << value;
        EXPECT_FALSE(screenSizeIsMeasured(widget)) << value;
    }
}

} // namespace
} // namespace wainscot::ui
