// Sheets to answer on, notes of what was seen, a picture beside a question, goals, and what is not
// agreed on: by real events.
#include <QApplication>
#include <QFile>
#include <QPrinter>
#include <QTimer>

#include <gmock/gmock.h>

#include "app/jobs/goal_edits.h"
#include "app/jobs/group_edits.h"
#include "app/jobs/meeting_edits.h"
#include "app/jobs/observation_edits.h"
#include "app/ui/gather/picture_choice.h"
#include "app/ui/gather/prompt_sign.h"
#include "app/ui/gather/sheets_dialog.h"
#include "app/ui/listen/goal_links.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using ::testing::ElementsAre;

class Moments : public ::testing::Test {
protected:
    [[nodiscard]] MainWindow& window() { return m_at.window(); }
    [[nodiscard]] const Book& book() { return m_at.book(); }
    void go(GatherPart part)
    {
        window().go(Place::Gather);
        window().gather().go(part);
        QApplication::processEvents();
    }
    static Button* buttonCalled(QWidget& in, const QString& text)
    {
        for (Button* button : in.findChildren<Button*>()) {
            if (button->text() == text && button->isVisible())
                return button;
        }
        ADD_FAILURE() << "no button " << text.toStdString();
        return nullptr;
    }
    // What happens in the dialog that `open` opens.
    template <class Dialog>
    void inDialog(const std::function<void()>& open, const std::function<void(Dialog&)>& then)
    {
        bool seen = false;
        QTimer::singleShot(0, &window(), [&] {
            auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            seen = true;
            then(*dialog);
            if (dialog->isVisible())
                dialog->reject();
        });
        open();
        EXPECT_TRUE(seen);
    }
    static void click(QWidget& widget)
    {
        QTest::mouseClick(&widget, Qt::LeftButton);
        QApplication::processEvents();
    }
    [[nodiscard]] ExperienceId here() { return m_at.session().experience()->id; }

    WindowAtWork m_at;
};

TEST_F(Moments, SheetsAreShownBeforeTheyArePrinted)
{
    go(GatherPart::Ask);
    Button* print = buttonCalled(window().gather(), QStringLiteral("Print sheets to answer on"));
    ASSERT_NE(print, nullptr);
    inDialog<SheetsDialog>([&] { click(*print); },
        [&](SheetsDialog& dialog) {
            const std::size_t children = book().children.size();
            EXPECT_EQ(dialog.pages().size(), children);
            EXPECT_LT(dialog.pages().front().size.width, dialog.pages().front().size.height);
            QTest::keyClick(&dialog.twoOnPage(), Qt::Key_Space);
            EXPECT_GT(dialog.pages().front().size.width, dialog.pages().front().size.height);
            QTest::keyClick(&dialog.forScribe(), Qt::Key_Space);
            const std::size_t with = dialog.pages().size();
            QTest::keyClick(&dialog.forChildren(), Qt::Key_Space);
            EXPECT_LT(dialog.pages().size(), with);
            EXPECT_FALSE(dialog.job().wishes.forChildren);
            QTest::keyClick(&dialog.forScribe(), Qt::Key_Space);
            EXPECT_TRUE(dialog.pages().empty());
            EXPECT_FALSE(dialog.makePdf().isEnabled());
            EXPECT_FALSE(dialog.print().isEnabled());
        });
}

TEST_F(Moments, SheetsBecomeAFileAndGoToThePrinter)
{
    SheetsJob job;
    job.experience = m_at.session().experience()->title;
    job.file = m_at.file(QStringLiteral("sheets.pdf"));
    job.wishes.forScribe = true;
    window().makeAnswerSheets(job);
    m_at.settle();
    EXPECT_TRUE(QFile::exists(job.file));
    const auto sheets = job.cleared(book(), m_at.session().today());
    ASSERT_TRUE(sheets.ok());
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFileName(m_at.file(QStringLiteral("printed.pdf")));
    EXPECT_TRUE(window().printAnswerSheets(printer, answerSheets(*sheets, job.wishes)));
    EXPECT_GT(QFile(printer.outputFileName()).size(), 1000);
    EXPECT_FALSE(window().printAnswerSheets(printer, {}));
}

TEST_F(Moments, WhatIsSeenIsNotedByTheKeyboardAlone)
{
    window().go(Place::Compose);
    m_at.key(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    QApplication::processEvents();
    SeenTask& seen = window().gather().seen();
    ASSERT_EQ(window().gather().part(), GatherPart::Seen);
    ASSERT_EQ(QApplication::focusWidget(), &seen.field());
    m_at.type(QStringLiteral("She tips the jar and waits."));
    EXPECT_EQ(window().sill().nextStep(), QStringLiteral("Keep the note"));
    m_at.key(Qt::Key_Return, Qt::ControlModifier);
    m_at.type(QStringLiteral("He listens at the drain."));
    m_at.key(Qt::Key_F9);
    const auto notes = observationsOf(book(), here());
    ASSERT_EQ(notes.size(), 2U);
    EXPECT_EQ(notes[0]->words, QStringLiteral("She tips the jar and waits."));
    ASSERT_TRUE(notes[0]->at.has_value());
    EXPECT_LT(qAbs(notes[0]->at->secsTo(QDateTime::currentDateTime())), 120);
    EXPECT_FALSE(seen.chosen().isValid()) << "ready for another";
}

TEST_F(Moments, ANoteIsChangedTakenOutAndBroughtBack)
{
    go(GatherPart::Seen);
    SeenTask& seen = window().gather().seen();
    m_at.type(QStringLiteral("They share one straw."));
    ASSERT_FALSE(seen.chips().empty());
    click(*seen.chips().front().second);
    const ChildId there = seen.chips().front().first;
    seen.begin();
    const ObservationId id = observationsOf(book(), here()).front()->id;
    EXPECT_THAT(book().observations.find(id)->children, ElementsAre(there));
    seen.choose(id);
    EXPECT_EQ(seen.field().toPlainText(), QStringLiteral("They share one straw."));
    const PictureId picture = book().pictures.rows().begin()->first;
    seen.setPicture(picture);
    EXPECT_EQ(book().observations.find(id)->picture, picture);
    seen.time().setDateTime(QDateTime(QDate(2026, 3, 4), QTime(9, 5)));
    seen.keep();
    EXPECT_EQ(book().observations.find(id)->at, QDateTime(QDate(2026, 3, 4), QTime(9, 5)));
    click(*buttonCalled(window().gather(), QStringLiteral("Take the note out")));
    EXPECT_TRUE(book().observations.isEmpty());
    m_at.session().undo();
    QApplication::processEvents();
    EXPECT_TRUE(book().observations.contains(id));
}

TEST_F(Moments, ANoteHalfWrittenIsKeptWhenAnotherPlaceIsGoneTo)
{
    go(GatherPart::Seen);
    m_at.type(QStringLiteral("Rain again."));
    window().go(Place::Compose);
    EXPECT_EQ(observationsOf(book(), here()).size(), 1U);
}

TEST_F(Moments, APictureStandsBesideAQuestion)
{
    go(GatherPart::Ask);
    AskTask& ask = window().gather().ask();
    auto* sign = ask.findChild<SignButton*>();
    ASSERT_NE(sign, nullptr);
    PictureId taken;
    inDialog<PictureChoice>([&] { Q_EMIT sign->pictureAsked(); },
        [&](PictureChoice& choice) {
            ASSERT_GT(choice.list().count(), 1);
            choice.list().setCurrentRow(0);
            QTest::keyClick(&choice.list(), Qt::Key_Down);
            taken = choice.picture();
            click(choice.take());
        });
    ASSERT_TRUE(taken.isValid());
    const PromptSet& set = ask.sets()[0]; // what was chosen became one of the book's own
    EXPECT_EQ(set.prompts[0].picture, taken);
    m_at.session().undo();
    QApplication::processEvents();
    for (const auto& [id, kept] : book().promptSets.rows())
        EXPECT_FALSE(kept.prompts[0].picture.isValid());
}

TEST_F(Moments, GoalsAreWrittenAndLinkedToWords)
{
    window().go(Place::Listen);
    window().listen().show(ListenPlace::Task::LookingBack);
    QApplication::processEvents();
    LookingBackPage& page = window().listen().lookingBack();
    page.goals().newGoal().setFocus();
    m_at.type(QStringLiteral("Asks how to find out"));
    m_at.key(Qt::Key_Return);
    m_at.type(QStringLiteral("Tells what changes"));
    m_at.key(Qt::Key_Return);
    ASSERT_EQ(goalsOf(book()).size(), 2U);
    ASSERT_EQ(page.goals().links().size(), 2);
    const GoalId first = goalsOf(book()).front()->id;
    inDialog<GoalLinks>([&] { page.goals().links().front()->click(); },
        [&](GoalLinks& links) {
            ASSERT_GT(links.list().count(), 0);
            links.list().setCurrentRow(0);
            QTest::keyClick(&links.list(), Qt::Key_Space);
        });
    EXPECT_EQ(whatShows(book(), first).quotes.size(), 1U);
    EXPECT_EQ(page.goals().links().front()->text(), QStringLiteral("Shown by 1 answer"));
    m_at.session().undo();
    EXPECT_TRUE(whatShows(book(), first).quotes.empty());
}

TEST_F(Moments, WhatIsNotAgreedOnHasAKeyInAMeeting)
{
    window().go(Place::Listen);
    EditBuilder edit(book(), QStringLiteral("A group"));
    Group group;
    group.id = edit.newId<Group>();
    group.experience = here();
    group.label = QStringLiteral("the sun");
    group.quotes = {book().quotes.rows().begin()->first};
    edit.put(group);
    ASSERT_TRUE(m_at.session().perform(edit.take()));
    ASSERT_TRUE(m_at.session().perform(planMeetingEdit(
        book(), here(), {group.id}, m_at.session().today(), QStringLiteral("A meeting"))));
    const MeetingId meeting = plannedMeeting(book(), here())->id;
    window().listen().beginMeeting(meeting);
    QApplication::processEvents();
    ASSERT_NE(
        buttonCalled(*window().listen().meetingRun(), QStringLiteral("What we do not agree on")),
        nullptr);
    window().listen().meetingRun()->setFocus();
    m_at.key(Qt::Key_F5);
    m_at.type(QStringLiteral("whether the road drinks too"));
    m_at.key(Qt::Key_Return);
    const auto& happened = book().meetings.find(meeting)->happened;
    ASSERT_EQ(happened.size(), 1U);
    EXPECT_EQ(happened[0].kind, MeetingNoteKind::Disagreement);
    EXPECT_EQ(happened[0].text, QStringLiteral("whether the road drinks too"));
}

} // namespace
} // namespace wainscot::ui
