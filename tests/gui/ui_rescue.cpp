// Going back to an earlier day and repairing a book, in the window.
#include <QFile>

#include <gmock/gmock.h>

#include "app/jobs/go_back.h"
#include "app/jobs/made_files.h"
#include "app/ui/frame/go_back_dialog.h"
#include "support/book_equality.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

TEST(Rescue, GoesBackAndForthByUndo)
{
    WindowAtWork at;
    at.propose();
    const auto states = EarlierStatesJob{at.session().folder()}.run({});
    ASSERT_TRUE(states.ok());
    ASSERT_FALSE(states->isEmpty());
    const std::size_t pieces = at.book().pieces.size();
    ASSERT_GT(pieces, 0U);
    at.window().goBackTo(states->back().name);
    at.settle();
    EXPECT_EQ(at.book().pieces.size(), 0U);
    ASSERT_TRUE(at.session().undo());
    at.settle();
    EXPECT_EQ(at.book().pieces.size(), pieces);
}

// Going back is chosen by pictures; each is drawn as the book would be, protected as today.
TEST(Rescue, OffersEarlierDaysWithAPictureOfEach)
{
    WindowAtWork at;
    at.propose();
    const auto days = EarlierDaysJob{at.session().folder()}.run(at.book(), {});
    ASSERT_TRUE(days.ok());
    ASSERT_FALSE(days->empty());
    const std::vector<EarlierDay> both{
        {days->back().state, std::make_shared<const Book>(at.book())}, days->back()};
    GoBackDialog dialog(both, at.compose().shelf());
    dialog.show();
    ASSERT_EQ(dialog.slips().size(), 2);
    at.compose().shelf().waitForAll();
    // The paper of a panel is white, whatever the window's colours.
    const auto paper = [&](int slip) {
        const QImage drawn = dialog.slips().at(slip)->grab().toImage();
        int count = 0;
        for (int y = 0; y < drawn.height(); ++y) {
            for (int x = 0; x < drawn.width() / 3; ++x)
                count += drawn.pixel(x, y) == 0xffffffff ? 1 : 0;
        }
        return count;
    };
    EXPECT_GT(paper(0), 1000);
    EXPECT_LT(paper(1), 100) << "nothing hung that day";
    EXPECT_TRUE(tellingPanel(at.book()).isValid());
    EXPECT_FALSE(tellingPanel(*days->back().book).isValid());
    QTest::keyClick(dialog.slips().at(0), Qt::Key_Down);
    QTest::keyClick(dialog.slips().at(1), Qt::Key_Return);
    EXPECT_EQ(dialog.chosen(), days->back().state.name);
}

TEST(Rescue, TellsWhichFilesAWithdrawalConcerns)
{
    WindowAtWork at;
    at.propose();
    at.window().exportPdf(at.file(QStringLiteral("hall.pdf")));
    at.settle();
    ASSERT_EQ(madeFilesIn(at.session().folder()).size(), 1U);
    const MadeFile made = madeFilesIn(at.session().folder()).front();
    EXPECT_EQ(made.name, QStringLiteral("hall.pdf"));
    ASSERT_FALSE(made.words.empty());
    Child child = *at.book().children.find(at.book().quotes.find(*made.words.begin())->child);
    child.permissions.set(Permission::Words, *made.audience, false);
    EditBuilder edit(at.book(), QStringLiteral("Withdrawn"));
    edit.put(child);
    ASSERT_TRUE(at.session().perform(edit.take()));
    at.settle();
    const auto outdated = OutdatedFilesJob{}.run(at.book(), madeFilesIn(at.session().folder()), {});
    ASSERT_TRUE(outdated.ok());
    ASSERT_EQ(outdated->size(), 1U);
    EXPECT_EQ(outdated->front().children, std::vector{child.id});
}

TEST(Rescue, TellsWhatOnPaperAWithdrawalConcerns)
{
    WindowAtWork at;
    at.propose();
    at.window().rememberPrinted(Earlier::Replaced);
    SheetsJob sheets;
    sheets.experience = at.session().experience()->title;
    at.window().rememberPrinted(sheets);
    sheets.file = at.file(QStringLiteral("rain.pdf"));
    at.window().makeAnswerSheets(sheets);
    at.settle();
    const auto made = madeFilesIn(at.session().folder());
    ASSERT_EQ(made.size(), 3U);
    EXPECT_EQ(made[0].kind, MadeFileKind::PrintedPanels);
    EXPECT_EQ(made[0].name, at.session().display()->name);
    EXPECT_FALSE(made[0].words.empty());
    EXPECT_EQ(made[1].kind, MadeFileKind::PrintedAnswerSheets);
    EXPECT_EQ(made[1].name, sheets.experience);
    EXPECT_EQ(made[2].kind, MadeFileKind::AnswerSheets);
    ASSERT_FALSE(made[2].named.empty());
    Child child = *at.book().children.find(*made[2].named.begin());
    child.permissions.set(Permission::FirstName, Audience::Classroom, false);
    EditBuilder edit(at.book(), QStringLiteral("Withdrawn"));
    edit.put(child);
    ASSERT_TRUE(at.session().perform(edit.take()));
    at.settle();
    const auto outdated = OutdatedFilesJob{child.name}.run(at.book(), made, {});
    ASSERT_TRUE(outdated.ok());
    EXPECT_GE(outdated->size(), 2U);
    EXPECT_TRUE(std::any_of(outdated->begin(), outdated->end(), [](const OutdatedFile& one) {
        return one.file.kind == MadeFileKind::PrintedAnswerSheets;
    }));
}

TEST(Rescue, SaysWhenABookHasBeenKeptLongEnough)
{
    WindowAtWork at;
    at.window().keepUntil(QStringLiteral("2999-07-31"));
    EXPECT_THAT(at.window().sill().said().toStdString(), ::testing::HasSubstr("is kept until"));
    at.window().keepUntil(QStringLiteral("soon"));
    EXPECT_THAT(at.window().sill().said().toStdString(), ::testing::HasSubstr("is no day"));
    at.window().keepUntil(at.session().today().addDays(-1).toString(Qt::ISODate));
    const QString elsewhere = at.file(QStringLiteral("carried.zip"));
    at.window().packBook(elsewhere);
    at.settle();
    at.window().unpackBook(elsewhere, at.file(QStringLiteral("again")));
    at.settle();
    EXPECT_THAT(at.window().sill().said().toStdString(), ::testing::HasSubstr("was to be kept"));
}

TEST(Rescue, SaysWhatOfADamagedBookCouldNotBeSaved)
{
    WindowAtWork at;
    at.propose();
    const QString damaged = at.file(QStringLiteral("damaged"));
    const QString packed = at.file(QStringLiteral("packed.zip"));
    at.window().packBook(packed);
    at.settle();
    at.window().unpackBook(packed, damaged);
    at.settle();
    const std::size_t quotes = at.book().quotes.size();
    const QString lost =
        at.session().originalPath(at.book().pictures.rows().begin()->second.sha256);
    ASSERT_TRUE(QFile::remove(lost));
    at.window().repairBook(damaged, at.file(QStringLiteral("saved")));
    at.settle();
    EXPECT_EQ(at.session().folder(), at.file(QStringLiteral("saved")));
    EXPECT_EQ(at.book().quotes.size(), quotes);
    EXPECT_EQ(at.window().place(), Place::Keep);
    EXPECT_THAT(at.window().sill().said().toStdString(), ::testing::HasSubstr("Saved, but for"));
}

TEST(Rescue, TakesTheDataOutAndMakesTheSameBookOfIt)
{
    WindowAtWork at;
    at.propose();
    const Book before = at.book();
    const QString data = at.file(QStringLiteral("data"));
    at.window().takeDataOut(data);
    at.settle();
    EXPECT_THAT(
        at.window().sill().said().toStdString(), ::testing::HasSubstr("not cleared for anybody"));
    for (const char* form : {"json", "csv"}) {
        const QString folder = at.file(QStringLiteral("of ") + QLatin1String(form));
        at.window().bringDataIn(data, folder);
        at.settle();
        ASSERT_EQ(at.session().folder(), folder);
        EXPECT_TRUE(sameBook(at.book(), before));
        QFile::remove(data + QStringLiteral("/data.json")); // then the CSV files are read
    }
    at.window().bringDataIn(data, at.file(QStringLiteral("of csv")));
    at.settle();
    EXPECT_THAT(at.window().sill().said().toStdString(), ::testing::HasSubstr("is not empty"));
}

TEST(Rescue, CarriesALockedBookThatOpensWithItsPhraseOnly)
{
    WindowAtWork at;
    at.propose();
    const QString file = at.file(QStringLiteral("carried.locked"));
    const QString before = at.session().folder();
    at.window().packBook(file, QStringLiteral("frost on the window"));
    at.settle();
    EXPECT_THAT(at.window().sill().said().toStdString(), ::testing::HasSubstr("It is locked."));
    at.window().unpackBook(
        file, at.file(QStringLiteral("elsewhere")), QStringLiteral("rain on the window"));
    at.settle();
    EXPECT_EQ(at.session().folder(), before);
    EXPECT_THAT(at.window().sill().said().toStdString(), ::testing::HasSubstr("does not fit"));
    at.window().unpackBook(
        file, at.file(QStringLiteral("elsewhere")), QStringLiteral("frost on the window"));
    at.settle();
    EXPECT_EQ(at.session().folder(), at.file(QStringLiteral("elsewhere")));
}

} // namespace
} // namespace wainscot::ui
