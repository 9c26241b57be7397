// Listen in the window, by real events: groups, their proposals and what a hand does with them.
#include <QApplication>
#include <QContextMenuEvent>
#include <QDropEvent>
#include <QMenu>
#include <QMimeData>
#include <QTimer>

#include <gmock/gmock.h>

#include "app/jobs/answers_in_hand.h"
#include "app/jobs/group_edits.h"
#include "app/ui/listen/group_head.h"
#include "app/ui/listen/seat.h"
#include "app/ui/listen/who_answers.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

struct ListenWindow : testing::Test {
    ListenWindow()
    {
        QFile more(at.file(QStringLiteral("more.csv")));
        EXPECT_TRUE(more.open(QIODevice::WriteOnly));
        more.write("child,prompt,words\n"
                   "Kofi Lind,think,The sun drinks all of the puddle.\n"
                   "Ines Roth,think,The thirsty sun drinks it up.\n"
                   "Kofi Lind,wonder,Do the boots keep the water?\n"
                   "Ines Roth,wonder,My boots took the water home.\n");
        more.close();
        at.window().gatherWords(more.fileName(), QStringLiteral("Puddle"));
        at.settle();
        at.window().go(Place::Listen);
        at.settle();
    }
    GroupsPage& page() { return at.window().listen().groups(); }
    std::vector<const Group*> groups()
    {
        return groupsOf(at.book(), at.session().experience()->id);
    }
    void propose()
    {
        at.key(Qt::Key_F9);
        ASSERT_GE(groups().size(), 1U);
    }
    QuoteId loose() { return onTheirOwn(at.book(), *at.session().experience()).front(); }
    static void drop(Strand* on, QuoteId answer)
    {
        QMimeData mime;
        mime.setData(QString::fromLatin1(kAnswerMime), QByteArray::number(answer.number()));
        const QPoint where = on->rect().center();
        QDragEnterEvent enter(where, Qt::MoveAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &enter);
        EXPECT_TRUE(enter.isAccepted());
        EXPECT_TRUE(on->isAimedAt());
        QDropEvent let(where, Qt::MoveAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &let);
    }
    WindowAtWork at;
};

TEST_F(ListenWindow, ProposesGroupsWithTheirSharedWordsUnderlined)
{
    EXPECT_EQ(at.window().sill().nextStep(), QStringLiteral("Propose groups"));
    propose();
    const Group& sun = *groups().front();
    std::size_t underlined = 0;
    for (const QuoteId quote : sun.quotes) {
        ASSERT_NE(page().slipOf(quote), nullptr);
        underlined += page().slipOf(quote)->shared().size();
    }
    EXPECT_GE(underlined, 2U);
    EXPECT_EQ(at.window().sill().nextStep(), QStringLiteral("Plan a meeting"));
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Proposed groups"));
    at.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(groups().empty());
}

TEST_F(ListenWindow, ASlipIsDraggedToAnotherGroupAndKeptThere)
{
    propose();
    const QuoteId answer = loose();
    const GroupId into = groups().front()->id;
    drop(page().strands().front(), answer);
    at.settle();
    const Group& group = *at.book().groups.find(into);
    EXPECT_THAT(group.quotes, testing::Contains(answer));
    EXPECT_FALSE(group.keptByHand) << "only the slip is held, not the whole group";
    EXPECT_TRUE(at.session().undoLabel().startsWith(QStringLiteral("Moved ")));
    EXPECT_FALSE(pairsWith(at.book(), answer).empty());
    EXPECT_TRUE(page().slipOf(answer)->toolTip().startsWith(QStringLiteral("Kept together with ")));
    page().previewAnew();
    if (page().isPreviewing())
        at.key(Qt::Key_F9);
    const KeptPair pair = pairsWith(at.book(), answer).front();
    ASSERT_NE(groupWith(at.book(), answer), nullptr);
    EXPECT_EQ(groupWith(at.book(), answer), groupWith(at.book(), pair.other));
}

// Chooses from the menu that opens on a slip, by the words of its entries.
void choose(ListenWindow& window, QuoteId answer, const QStringList& path)
{
    bool found = false;
    QTimer::singleShot(0, qApp, [&] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        QMenu* const top = menu;
        for (const QString& words : path) {
            for (QAction* action : menu->actions()) {
                if (!action->text().startsWith(words))
                    continue;
                found = action->menu() == nullptr;
                if (found)
                    action->trigger();
                else
                    menu = action->menu();
                break;
            }
        }
        top->close();
    });
    AnswerSlip* slip = window.page().slipOf(answer);
    const QPoint where = slip->rect().center();
    QContextMenuEvent ask(QContextMenuEvent::Mouse, where, slip->mapToGlobal(where));
    QApplication::sendEvent(slip, &ask);
    EXPECT_TRUE(found) << path.join(QLatin1Char('/')).toStdString();
    window.at.window()
        .activateWindow(); // the offscreen platform leaves nothing active after a menu
    window.at.settle();
}

TEST_F(ListenWindow, TwoSlipsAreKeptTogetherApartAndLetGoOfFromTheirMenu)
{
    propose();
    const QuoteId answer = loose();
    const QuoteId other = groups().front()->quotes.front();
    const QString group = groups().front()->label;
    const QString name = displayName(*at.book().children.find(at.book().quotes.find(other)->child));
    choose(*this, answer, {QStringLiteral("Keep together with"), group, name});
    ASSERT_EQ(pairsWith(at.book(), answer).size(), 1U);
    EXPECT_EQ(groupWith(at.book(), answer), groups().front());
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Kept two answers together"));
    EXPECT_TRUE(page().slipOf(answer)->accessibleName().contains(
        QStringLiteral("Kept together with ") + name));
    choose(*this, answer, {QStringLiteral("Keep apart from"), name});
    EXPECT_EQ(groupWith(at.book(), answer), nullptr);
    ASSERT_EQ(pairsWith(at.book(), answer).size(), 1U);
    choose(*this, answer, {QStringLiteral("Let go of"), QStringLiteral("Kept apart from")});
    EXPECT_TRUE(at.book().keptPairs.isEmpty());
    at.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(at.book().keptPairs.size(), 1U);
}

TEST_F(ListenWindow, TypingNarrowsTheSlipsInAnyScriptAndWithoutAccents)
{
    propose();
    const auto shown = [this] {
        QStringList names;
        for (const Strand* strand : page().strands()) {
            for (const AnswerSlip* slip : strand->slips()) {
                if (slip->isVisible())
                    names << slip->forFinding();
            }
        }
        return names;
    };
    const auto of = [this](const QString& name) {
        int answers = 0;
        for (const Answer& answer : answersTo(at.book(), *at.session().experience())) {
            const Quote& quote = *at.book().quotes.find(answer.id);
            answers += quote.child == childByName(at.book(), name)->id ? 1 : 0;
        }
        return answers;
    };
    const auto all = shown().size();
    page().slipOf(loose())->setFocus();
    at.key(Qt::Key_F, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget(), &page().findField());
    at.type(QStringLiteral("straw"));
    EXPECT_EQ(shown().size(), 1);
    page().findField().setText(QStringLiteral("STR\u00e1w s"));
    ASSERT_EQ(shown().size(), 1);
    EXPECT_TRUE(shown().front().startsWith(QStringLiteral("The sun drinks it with a straw.")));
    EXPECT_EQ(page().strands().front()->isVisible(), true) << "groups stay to be moved to";
    at.key(Qt::Key_Return);
    const auto* found = qobject_cast<AnswerSlip*>(QApplication::focusWidget());
    ASSERT_NE(found, nullptr);
    EXPECT_TRUE(found->forFinding().startsWith(QStringLiteral("The sun drinks it with a straw.")));
    at.key(Qt::Key_F, Qt::ControlModifier);
    at.type(QStringLiteral("kofi"));
    EXPECT_EQ(shown().size(), of(QStringLiteral("Kofi Lind"))) << "all words of a child";
    at.key(Qt::Key_Escape);
    EXPECT_EQ(shown().size(), all);
    EXPECT_TRUE(page().findField().text().isEmpty());
}

TEST_F(ListenWindow, ASlipIsLiftedBySpaceAndSetDownByEnter)
{
    propose();
    const QuoteId answer = loose();
    page().slipOf(answer)->setFocus();
    at.key(Qt::Key_Space);
    at.key(Qt::Key_Down); // past "on their own" to a new group
    EXPECT_TRUE(page().strands().back()->isAimedAt());
    at.key(Qt::Key_Return);
    ASSERT_GE(groups().size(), 2U);
    EXPECT_EQ(groups().back()->quotes, std::vector<QuoteId>{answer});
    EXPECT_EQ(QApplication::focusWidget(), page().slipOf(answer));
    at.key(Qt::Key_Space);
    at.key(Qt::Key_Up);
    at.key(Qt::Key_Escape);
    EXPECT_EQ(groups().back()->quotes, std::vector<QuoteId>{answer});
}

TEST_F(ListenWindow, ANewAnswerJoinsItsLikeAsSoonAsItIsTakenDown)
{
    propose();
    const auto before = at.book().groups.rows();
    const std::size_t answers = at.book().quotes.size();
    at.window().go(Place::Gather);
    at.settle();
    at.window().gather().go(GatherPart::Words);
    CaptureDesk& desk = at.window().gather().words().desk();
    desk.goTo(childByName(at.book(), QStringLiteral("Ines Roth"))->id, 1);
    at.settle();
    at.type(QStringLiteral("The sun drinks"));
    QTest::qWait(1200); // a pause in typing keeps it, and half an answer joins nothing
    EXPECT_EQ(at.book().groups.rows(), before);
    at.type(QStringLiteral(" the puddle with a straw"));
    at.key(Qt::Key_Return, Qt::ControlModifier);
    at.settle();
    ASSERT_EQ(at.book().quotes.size(), answers + 1);
    const QuoteId taken = at.book().quotes.rows().rbegin()->first;
    int changed = 0;
    for (const auto& [id, group] : before) {
        std::vector<QuoteId> now = at.book().groups.find(id)->quotes;
        changed += now.size() == group.quotes.size() + 1 && now.back() == taken ? 1 : 0;
        std::erase(now, taken);
        EXPECT_EQ(now, group.quotes) << "no other answer moves";
        EXPECT_EQ(at.book().groups.find(id)->keptByHand, group.keptByHand);
    }
    EXPECT_EQ(changed, 1);
    ASSERT_TRUE(at.session().undo());
    EXPECT_EQ(at.book().quotes.size(), answers) << "one step takes back both";
    EXPECT_EQ(at.book().groups.rows(), before);
}

TEST_F(ListenWindow, WordsFromAFileJoinTheirLikeInTheSameStep)
{
    propose();
    const auto before = at.book().groups.rows();
    const std::size_t answers = at.book().quotes.size();
    QFile more(at.file(QStringLiteral("still more.csv")));
    ASSERT_TRUE(more.open(QIODevice::WriteOnly));
    more.write("child,prompt,words\n"
               "Ines Roth,think,The sun drinks it with a straw too.\n"
               "Kofi Lind,wonder,Nobody knows why.\n");
    more.close();
    at.window().gatherWords(more.fileName(), QStringLiteral("Puddle"));
    at.settle();
    EXPECT_EQ(at.book().quotes.size(), answers + 2);
    EXPECT_NE(at.book().groups.rows(), before);
    ASSERT_TRUE(at.session().undo());
    EXPECT_EQ(at.book().quotes.size(), answers);
    EXPECT_EQ(at.book().groups.rows(), before);
}

TEST_F(ListenWindow, ItsTasksAndTheDraftHaveKeysFromAnyPlace)
{
    propose();
    at.window().go(Place::Gather);
    at.settle();
    at.key(Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(at.window().place(), Place::Listen);
    EXPECT_TRUE(at.window().listen().meetings().isVisible());
    at.key(Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(at.window().listen().lookingBack().isVisible());
    at.key(Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(page().isVisible());
    const std::size_t displays = at.book().displays.size();
    at.key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    at.settle();
    EXPECT_EQ(at.book().displays.size(), displays + 1);
    EXPECT_EQ(at.window().place(), Place::Compose);
}

TEST_F(ListenWindow, AGroupIsNamedByHand)
{
    propose();
    const GroupId id = groups().front()->id;
    auto* name = page().strands().front()->findChild<GroupName*>();
    ASSERT_NE(name, nullptr);
    name->setFocus();
    at.key(Qt::Key_F2);
    at.key(Qt::Key_A, Qt::ControlModifier);
    at.type(QStringLiteral("The sun drinks it"));
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.book().groups.find(id)->label, QStringLiteral("The sun drinks it"));
    EXPECT_TRUE(at.book().groups.find(id)->keptByHand);
}

TEST_F(ListenWindow, ProposingAgainIsSeenBeforeItIsKept)
{
    propose();
    const QuoteId answer = groups().front()->quotes.front();
    const GroupId group = groups().front()->id;
    // Taken out and let go of: proposing again would bring it back.
    drop(*(page().strands().end() - 2), answer);
    at.settle();
    Book then = at.book();
    apply(proposeGroupsEdit(then, *at.session().experience(), {}), then);
    for (const KeptPair& pair : pairsWith(then, answer))
        EXPECT_TRUE(groupWith(then, answer) == nullptr
            || groupWith(then, answer) != groupWith(then, pair.other));
    std::vector<KeptPairId> pairs;
    for (const KeptPair& pair : pairsWith(at.book(), answer))
        pairs.push_back(pair.id);
    at.session().perform(letGoEdit(at.book(), pairs, {}));
    at.settle();
    const std::size_t before = at.book().groups.find(group)->quotes.size();
    page().previewAnew();
    ASSERT_TRUE(page().isPreviewing());
    EXPECT_EQ(at.book().groups.find(group)->quotes.size(), before);
    page().dropPreview();
    EXPECT_FALSE(page().isPreviewing());
    page().previewAnew();
    at.key(Qt::Key_F9);
    EXPECT_FALSE(page().isPreviewing());
    EXPECT_THAT(at.book().groups.find(group)->quotes, testing::Contains(answer));
}

TEST_F(ListenWindow, FewerGroupsIsOneStepOfUndo)
{
    propose();
    const std::size_t before = groups().size();
    page().proposeMore(-1);
    at.settle();
    EXPECT_LT(groups().size(), before);
    at.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(groups().size(), before);
}

struct MeetingWindow : ListenWindow {
    MeetingWindow()
    {
        propose();
        at.key(Qt::Key_F9); // plan a meeting
        for (const Group* group : groups())
            at.window().listen().meetings().plan({group->id});
        at.settle();
    }
    ListenPlace& listen() { return at.window().listen(); }
    void begin()
    {
        listen().show(ListenPlace::Task::Meetings);
        at.key(Qt::Key_F9);
        ASSERT_NE(listen().meetingRun(), nullptr);
        listen().meetingRun()->setFocus();
    }
    const Meeting& meeting() { return at.book().meetings.rows().begin()->second; }
    std::vector<Quote> replies()
    {
        std::vector<Quote> said;
        for (const auto& [id, quote] : at.book().quotes.rows()) {
            if (quote.meeting.isValid())
                said.push_back(quote);
        }
        return said;
    }
};

TEST_F(MeetingWindow, IsPlannedFromGroupsWithAllTheirWordsReadOut)
{
    EXPECT_EQ(meeting().groups.size(), groups().size());
    const QuoteId first = meeting().readOut.front();
    const std::size_t before = meeting().readOut.size();
    Strand* strand = listen().meetings().strands().front();
    QTest::mouseClick(strand->slips().front(), Qt::LeftButton);
    at.settle();
    EXPECT_EQ(meeting().readOut.size(), before - 1);
    EXPECT_THAT(meeting().readOut, testing::Not(testing::Contains(first)));
}

TEST_F(MeetingWindow, ALetterAWordAndEnterKeepAChildsAnswer)
{
    begin();
    const QuoteId idea = listen().meetingRun()->ideaInTurn();
    at.key(Qt::Key_K); // Kofi
    ASSERT_TRUE(listen().meetingRun()->isWriting());
    at.type(QStringLiteral("No, it is a worm."));
    at.key(Qt::Key_Return);
    ASSERT_EQ(replies().size(), 1U);
    EXPECT_EQ(replies()[0].words, QStringLiteral("No, it is a worm."));
    EXPECT_EQ(replies()[0].repliesTo, idea);
    EXPECT_EQ(replies()[0].meeting, meeting().id);
    int spoken = 0;
    for (const Seat* seat : listen().meetingRun()->seats())
        spoken += seat->hasSpoken() ? 1 : 0;
    EXPECT_EQ(spoken, 1);
    at.key(Qt::Key_W); // Wren answers, and leaves it
    at.type(QStringLiteral("Never mind"));
    at.key(Qt::Key_Escape);
    EXPECT_EQ(replies().size(), 1U);
    at.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(replies().empty());
}

TEST_F(MeetingWindow, AgreementsChangesOfMindAndOtherDaysAreNoted)
{
    begin();
    at.key(Qt::Key_F2);
    at.type(QStringLiteral("The water goes somewhere."));
    at.key(Qt::Key_Return);
    at.key(Qt::Key_F3);
    at.key(Qt::Key_I); // Ines
    at.type(QStringLiteral("Now she thinks it is in the air."));
    at.key(Qt::Key_Return);
    const GroupId group = listen().meetingRun()->groupInTurn();
    at.key(Qt::Key_F4);
    ASSERT_EQ(meeting().happened.size(), 2U);
    EXPECT_EQ(meeting().happened[0].kind, MeetingNoteKind::Agreement);
    EXPECT_EQ(meeting().happened[0].group, group);
    EXPECT_EQ(meeting().happened[1].kind, MeetingNoteKind::ChangedMind);
    EXPECT_TRUE(meeting().happened[1].child.isValid());
    EXPECT_EQ(meeting().carriedOver, std::vector<GroupId>{group});
}

TEST_F(MeetingWindow, GoesThroughItsGroupsAndEnds)
{
    begin();
    const GroupId first = listen().meetingRun()->groupInTurn();
    if (meeting().groups.size() > 1) {
        at.key(Qt::Key_F9);
        EXPECT_NE(listen().meetingRun()->groupInTurn(), first);
        at.key(Qt::Key_F8);
    }
    EXPECT_EQ(listen().meetingRun()->groupInTurn(), first);
    const bool dark = listen().meetingRun()->isDark();
    at.key(Qt::Key_F10);
    EXPECT_NE(listen().meetingRun()->isDark(), dark);
    at.key(Qt::Key_Escape);
    EXPECT_EQ(listen().meetingRun(), nullptr);
    at.settle();
    EXPECT_EQ(tokens().dark, dark);
    EXPECT_TRUE(meeting().done);
}

TEST_F(MeetingWindow, GroupsBecomeADraftForAWall)
{
    listen().show(ListenPlace::Task::LookingBack);
    QPlainTextEdit* first = listen().lookingBack().fields().front();
    first->setFocus();
    at.type(QStringLiteral("Ines found it hard to look so long."));
    at.key(Qt::Key_F9);
    ASSERT_NE(at.session().display(), nullptr);
    EXPECT_EQ(at.session().display()->name, QStringLiteral("Puddle, draft"));
    EXPECT_EQ(at.window().place(), Place::Compose);
    EXPECT_EQ(at.session().experience()->interpretation,
        QStringLiteral("Ines found it hard to look so long."));
    std::set<QuoteId> chosen;
    for (const Group* group : groups())
        chosen.insert(group->quotes.begin(), group->quotes.end());
    int quotes = 0;
    for (const auto& [id, piece] : at.book().pieces.rows()) {
        if (piece.quote.isValid()) {
            ++quotes;
            EXPECT_EQ(chosen.count(piece.quote), 1U);
        }
    }
    EXPECT_GT(quotes, 0);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("A draft for a wall"));
}

TEST_F(MeetingWindow, LookingBackShowsWhereOneWritesAndGrowsWithTheText)
{
    listen().show(ListenPlace::Task::LookingBack);
    at.settle();
    const auto edge = [&] {
        QWidget* card = listen().lookingBack().fields().front()->parentWidget();
        return card->grab().toImage().pixelColor(card->width() / 2, 1);
    };
    listen().lookingBack().questionField().setFocus();
    at.settle();
    EXPECT_NE(edge(), tokens().accent);
    listen().lookingBack().fields().front()->setFocus();
    at.settle();
    EXPECT_EQ(edge(), tokens().accent);
    QPlainTextEdit* first = listen().lookingBack().fields().front();
    const int before = first->height();
    first->insertPlainText(QStringLiteral("One.\nTwo.\nThree.\nFour.\nFive."));
    at.settle();
    EXPECT_GT(first->height(), before + 2 * first->fontMetrics().lineSpacing());
}

TEST_F(MeetingWindow, LookingBackIsKeptWhenTheWindowGoesInTheMiddle)
{
    listen().show(ListenPlace::Task::LookingBack);
    at.settle();
    listen().lookingBack().fields().front()->setFocus();
    at.type(QStringLiteral("Half of a sen"));
    at.window().close();
    ASSERT_EQ(at.book().reflections.size(), 1U);
    EXPECT_EQ(at.book().reflections.rows().begin()->second.answer, QStringLiteral("Half of a sen"));
    listen().lookingBack().fields().front()->insertPlainText(QStringLiteral("tence"));
} // and nothing is asked of the session while the window is taken apart

// The page is built anew each time it is shown, after the sill and its Undo.
TEST_F(MeetingWindow, TabGoesFromTheTasksIntoThePage)
{
    listen().show(ListenPlace::Task::LookingBack);
    at.settle();
    QPlainTextEdit* first = listen().lookingBack().fields().front();
    first->setFocus();
    at.key(Qt::Key_Backtab);
    EXPECT_NE(QApplication::focusWidget(), first);
    at.key(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), first);
    at.key(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), listen().lookingBack().fields()[1]);
}

TEST_F(MeetingWindow, TabStaysInTheMeeting)
{
    begin();
    for (int i = 0; i < 40; ++i) {
        at.key(Qt::Key_Tab);
        EXPECT_TRUE(listen().meetingRun()->isAncestorOf(QApplication::focusWidget())
            || QApplication::focusWidget() == listen().meetingRun());
    }
}

TEST_F(MeetingWindow, NamesWhomAnAnswerAnswers)
{
    Quote idea = at.book().quotes.rows().begin()->second;
    EXPECT_FALSE(whoAnswers(at.book(), idea).contains(QLatin1Char(',')));
    Quote answer = idea;
    answer.repliesTo = idea.id;
    EXPECT_TRUE(whoAnswers(at.book(), answer).endsWith(QStringLiteral(", thinking on")));
    for (const auto& [id, child] : at.book().children.rows()) {
        if (id != idea.child)
            answer.child = id;
    }
    EXPECT_TRUE(whoAnswers(at.book(), answer).contains(QStringLiteral(", answering ")));
}

TEST_F(MeetingWindow, LookingBackWithoutAWordIsNoStepOfUndo)
{
    const QString before = at.session().undoLabel();
    listen().show(ListenPlace::Task::LookingBack);
    at.settle();
    listen().lookingBack().fields().front()->setFocus();
    at.key(Qt::Key_Tab);
    at.window().go(Place::Compose);
    at.settle();
    EXPECT_EQ(at.session().undoLabel(), before);
    EXPECT_TRUE(at.book().reflections.isEmpty());
}

TEST_F(MeetingWindow, WhatComesNextBecomesAnExperience)
{
    listen().show(ListenPlace::Task::LookingBack);
    const ExperienceId now = at.session().experience()->id;
    listen().lookingBack().fields().back()->setFocus();
    at.type(QStringLiteral("A puddle in a jar"));
    listen().lookingBack().makeNextExperience();
    at.settle();
    EXPECT_EQ(at.session().experience()->title, QStringLiteral("A puddle in a jar"));
    EXPECT_EQ(at.session().experience()->follows, now);
    EXPECT_EQ(at.book().experiences.find(now)->nextSteps, QStringLiteral("A puddle in a jar"));
}

TEST_F(MeetingWindow, AQuestionOfOnesOwnIsKept)
{
    listen().show(ListenPlace::Task::LookingBack);
    listen().lookingBack().questionField().setFocus();
    at.type(QStringLiteral("Who led whom?"));
    listen().lookingBack().fields().front()->setFocus();
    at.settle();
    bool found = false;
    for (const auto& [id, reflection] : at.book().reflections.rows())
        found = found || reflection.question == QStringLiteral("Who led whom?");
    EXPECT_TRUE(found);
}

} // namespace
} // namespace wainscot::ui
