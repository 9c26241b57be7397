// Gather by real events: a class entered from nothing, words taken down by the keyboard alone.
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QDragEnterEvent>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QTimer>
#include <QUrl>

#include <gmock/gmock.h>

#include "app/ui/kit/tokens.h"
#include "core/permit/family_answers.h"
#include "support/window_at_work.h"
#include "tests/support/media_pictures.h"
#include "tests/support/scan_files.h"

namespace wainscot::ui {
namespace {

using ::testing::ElementsAre;

const QStringList kClass{QStringLiteral("Amara Bell"),
    QStringLiteral("Idris Cole"),
    QStringLiteral("Ines Roth"),
    QStringLiteral("Juno Park"),
    QStringLiteral("Kofi Lind"),
    QStringLiteral("Leo Marsh"),
    QStringLiteral("Mina Hale"),
    QStringLiteral("Noor Aziz"),
    QStringLiteral("Priya Nair"),
    QStringLiteral("Sami Oak"),
    QStringLiteral("Theo Finch"),
    QStringLiteral("Tomas Reed"),
    QStringLiteral("Wren Abara"),
    QStringLiteral("Yuki Mori")};

// A window with an empty book, as on the first evening.
class EmptyClass : public ::testing::Test {
protected:
    EmptyClass()
    {
        m_window.resize(1366, 768);
        m_window.show();
        QApplication::setActiveWindow(&m_window);
        (void)QTest::qWaitForWindowActive(&m_window);
        m_window.beginBook(m_folder.filePath(QStringLiteral("book")), QStringLiteral("Wrens"));
        QApplication::processEvents();
    }
    [[nodiscard]] const Book& book() { return m_window.session().book(); }
    [[nodiscard]] GatherPlace& gather() { return m_window.gather(); }
    [[nodiscard]] CaptureDesk& desk() { return gather().words().desk(); }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        QApplication::processEvents();
    }
    void type(const QString& text)
    {
        QTest::keyClicks(QApplication::focusWidget(), text);
        QApplication::processEvents();
    }
    void enterClass()
    {
        gather().go(GatherPart::Class);
        for (const QString& name : kClass) {
            type(name);
            key(Qt::Key_Return);
        }
    }
    void beginPuddle()
    {
        gather().go(GatherPart::Words);
        QApplication::processEvents();
        type(QStringLiteral("Where does the puddle go?"));
        key(Qt::Key_Return);
        QApplication::processEvents();
    }
    [[nodiscard]] std::vector<const Quote*> quotesBy(const QString& name)
    {
        std::vector<const Quote*> quotes;
        for (const auto& [id, quote] : book().quotes.rows()) {
            if (quote.child == childByName(book(), name)->id)
                quotes.push_back(&quote);
        }
        return quotes;
    }

    QTemporaryDir m_folder;
    MainWindow m_window;
};

TEST_F(EmptyClass, IsEnteredNameByNameAndNobodyIsAllowedAnything)
{
    EXPECT_EQ(m_window.place(), Place::Gather);
    enterClass();
    ASSERT_EQ(book().children.size(), 14U);
    EXPECT_EQ(answersMissing(book()), 14 * 20);
    EXPECT_TRUE(m_window.session().canUndo());
}

TEST_F(EmptyClass, IsPastedAsAList)
{
    gather().go(GatherPart::Class);
    QApplication::clipboard()->setText(QStringLiteral("1. Wren Abara\t2021-04-17\n2. Kofi Lind\n"));
    m_window.takeNextStep();
    ASSERT_EQ(book().children.size(), 2U);
    EXPECT_EQ(childByName(book(), QStringLiteral("wren abara"))->born, (BirthDate{2021, 4, 17}));
}

// One key besides the words for every answer: Enter.
TEST_F(EmptyClass, IsHeardOnThreeQuestionsByKeyboardAlone)
{
    enterClass();
    beginPuddle();
    ASSERT_NE(m_window.session().experience(), nullptr);
    std::vector<ChildId> order;
    for (int child = 0; child < 14; ++child) {
        ASSERT_NE(desk().child(), nullptr);
        order.push_back(desk().child()->id);
        for (int prompt = 0; prompt < 3; ++prompt) {
            EXPECT_EQ(desk().promptAt(), prompt);
            ASSERT_EQ(QApplication::focusWidget(), &gather().words().field());
            type(QStringLiteral("answer %1 of child %2, it iz wobly").arg(prompt).arg(child));
            key(Qt::Key_Return);
        }
    }
    EXPECT_EQ(book().quotes.size(), 42U);
    EXPECT_EQ(desk().answers().answered(), 42);
    EXPECT_EQ(desk().answers().complete(), 14);
    EXPECT_TRUE(std::is_sorted(order.begin(), order.end())) << "the class's order";
    int at = 0;
    for (const auto& [id, quote] : book().quotes.rows()) {
        EXPECT_EQ(quote.words,
            QStringLiteral("answer %1 of child %2, it iz wobly").arg(at % 3).arg(at / 3));
        EXPECT_EQ(quote.child, order[std::size_t(at / 3)]);
        EXPECT_EQ(quote.prompt, defaultPromptSet().prompts[std::size_t(at % 3)].key);
        ++at;
    }
    EXPECT_EQ(m_window.sill().nextStep(), QStringLiteral("See who was heard"));
}

TEST_F(EmptyClass, IsHeardQuestionByQuestion)
{
    enterClass();
    beginPuddle();
    desk().setOrder(CaptureDesk::Order::PromptByPrompt);
    for (int prompt = 0; prompt < 3; ++prompt) {
        for (int child = 0; child < 14; ++child) {
            ASSERT_EQ(desk().promptAt(), prompt);
            ASSERT_EQ(desk().child()->name, kClass.at(child));
            type(QStringLiteral("x"));
            key(Qt::Key_Return);
        }
    }
    EXPECT_EQ(desk().answers().complete(), 14);
}

TEST_F(EmptyClass, TellsHowTheWordsWereGivenByKeys)
{
    enterClass();
    beginPuddle();
    type(QStringLiteral("the sky"));
    key(Qt::Key_Return, Qt::ShiftModifier);
    type(QStringLiteral("is in it"));
    key(Qt::Key_4, Qt::AltModifier);
    key(Qt::Key_R, Qt::ControlModifier);
    key(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(book().quotes.size(), 1U);
    const Quote& quote = book().quotes.rows().begin()->second;
    EXPECT_EQ(quote.words, QStringLiteral("the sky\nis in it"));
    EXPECT_EQ(quote.telling, Telling::Signed);
    EXPECT_TRUE(quote.readBack);
    EXPECT_EQ(quote.dictation, Dictation::Exact);
    EXPECT_EQ(desk().child()->name, kClass.at(1));
    EXPECT_EQ(desk().draft().telling, Telling::Said) << "every answer begins anew";
    // As in every text field, letters that are commands elsewhere are letters here.
    type(QStringLiteral("pcs"));
    EXPECT_EQ(gather().words().field().toPlainText(), QStringLiteral("pcs"));
}

TEST_F(EmptyClass, KeepsTheWordsFirstSaidBesidesThoseWorkedUp)
{
    enterClass();
    beginPuddle();
    type(QStringLiteral("it goed away"));
    desk().setExact(false);
    gather().words().field().selectAll();
    type(QStringLiteral("It went away under the ground."));
    key(Qt::Key_Return);
    const Quote& quote = book().quotes.rows().begin()->second;
    EXPECT_EQ(quote.words, QStringLiteral("It went away under the ground."));
    EXPECT_EQ(quote.firstWords, QStringLiteral("it goed away"));
    EXPECT_EQ(quote.dictation, Dictation::WorkedUp);
}

TEST_F(EmptyClass, MayPassAndAnAdultMayNoteWhyNot)
{
    enterClass();
    beginPuddle();
    key(Qt::Key_F2);
    EXPECT_EQ(desk().promptAt(), 1) << "on to the next question";
    key(Qt::Key_F3);
    type(QStringLiteral("was away this week"));
    key(Qt::Key_Return);
    ASSERT_EQ(book().noAnswers.size(), 2U);
    const auto& reasons = book().noAnswers.rows();
    EXPECT_EQ(reasons.begin()->second.why, WhyNoAnswer::Passes);
    EXPECT_EQ(reasons.rbegin()->second.note, QStringLiteral("was away this week"));
    EXPECT_EQ(desk().promptAt(), 2);
    type(QStringLiteral("why"));
    key(Qt::Key_Return);
    EXPECT_EQ(desk().answers().complete(), 1);
    // An answer that comes after all takes the pass away; both are one step.
    desk().goTo(childByName(book(), kClass.front())->id, 0);
    type(QStringLiteral("it is round"));
    key(Qt::Key_Return);
    EXPECT_EQ(book().noAnswers.size(), 1U);
    m_window.session().undo();
    EXPECT_EQ(book().noAnswers.size(), 2U);
}

TEST_F(EmptyClass, LosesNoHalfWrittenWords)
{
    enterClass();
    beginPuddle();
    type(QStringLiteral("half a sen"));
    m_window.go(Place::Compose);
    QApplication::processEvents();
    ASSERT_EQ(book().quotes.size(), 1U);
    EXPECT_EQ(book().quotes.rows().begin()->second.words, QStringLiteral("half a sen"));
    m_window.go(Place::Gather);
    QApplication::processEvents();
    EXPECT_EQ(gather().words().field().toPlainText(), QStringLiteral("half a sen"));
    type(QStringLiteral("tence"));
    QTest::qWait(1800); // a pause is enough
    EXPECT_EQ(book().quotes.rows().begin()->second.words, QStringLiteral("half a sentence"));
    EXPECT_EQ(book().quotes.size(), 1U);
    key(Qt::Key_Return);
    EXPECT_EQ(book().quotes.size(), 1U);
}

TEST_F(EmptyClass, UndoesAnAnswerByTheSameKeyAsEverywhere)
{
    enterClass();
    beginPuddle();
    type(QStringLiteral("one"));
    key(Qt::Key_Return);
    ASSERT_EQ(book().quotes.size(), 1U);
    EXPECT_EQ(m_window.session().undoLabel(), QStringLiteral("Amara's words"));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book().quotes.size(), 0U);
}

TEST_F(EmptyClass, GoesToAChildByItsFirstLetter)
{
    enterClass();
    beginPuddle();
    key(Qt::Key_J, Qt::ControlModifier);
    type(QStringLiteral("t"));
    type(QStringLiteral("t"));
    key(Qt::Key_Return);
    EXPECT_EQ(desk().child()->name, QStringLiteral("Tomas Reed"));
    EXPECT_EQ(QApplication::focusWidget(), &gather().words().field());
}

TEST_F(EmptyClass, IsAllowedWithWhoSaidSoAndWithdrawn)
{
    enterClass();
    gather().go(GatherPart::Class);
    ClassTask& task = gather().classTask();
    task.table().setCurrentIndex(task.table().model()->index(2, 10)); // Ines, families, photo
    task.table().setFocus();
    task.note().byField().setText(QStringLiteral("her mother"));
    key(Qt::Key_Space);
    const Child& ines = *childByName(book(), QStringLiteral("Ines Roth"));
    EXPECT_TRUE(ines.permissions.allows(Permission::Photo, Audience::Families));
    ASSERT_EQ(book().permissionRecords.size(), 1U);
    PermissionRecord record = book().permissionRecords.rows().begin()->second;
    EXPECT_EQ(record.by, QStringLiteral("her mother"));
    EXPECT_EQ(record.on, m_window.session().today());
    // As if it had been said in September.
    record.on = m_window.session().today().addDays(-70);
    EditBuilder edit(book(), QStringLiteral("Earlier"));
    edit.put(record);
    m_window.session().perform(edit.take());
    key(Qt::Key_Space);
    EXPECT_EQ(
        familyAnswer(book(), ines, Audience::Families, Permission::Photo), FamilyAnswer::Withdrawn);
    EXPECT_EQ(book().permissionRecords.size(), 2U);
    EXPECT_EQ(task.table().model()->data(task.table().currentIndex(), Qt::AccessibleTextRole),
        QStringLiteral("Ines, families, photo: withdrawn"));
    m_window.session().undo();
    EXPECT_TRUE(childByName(book(), QStringLiteral("Ines Roth"))
                    ->permissions.allows(Permission::Photo, Audience::Families));
}

TEST_F(EmptyClass, IsAllowedAtOnceForAnAudienceOrAChild)
{
    enterClass();
    gather().go(GatherPart::Class);
    ClassTask& task = gather().classTask();
    MarkTable& table = task.table();
    QApplication::processEvents();
    GroupedHeader& header = table.header();
    const int column = header.sectionViewportPosition(7) + header.sectionSize(7) / 2;
    // The name of the hallway, over its five columns.
    QTest::mouseClick(header.viewport(), Qt::LeftButton, {}, {column, air(2)});
    EXPECT_EQ(table.selectionModel()->selectedIndexes().size(), 5 * kClass.size());
    table.setFocus();
    key(Qt::Key_Space);
    for (const auto& [id, child] : book().children.rows()) {
        for (const Permission permission : kPermissions) {
            EXPECT_TRUE(child.permissions.allows(permission, Audience::Building));
            EXPECT_FALSE(child.permissions.allows(permission, Audience::Classroom));
        }
    }
    // A child's name, beside all of its cells.
    QHeaderView* names = table.verticalHeader();
    QTest::mouseClick(names->viewport(),
        Qt::LeftButton,
        {},
        {scaled(20), names->sectionViewportPosition(2) + names->sectionSize(2) / 2});
    EXPECT_EQ(table.selectionModel()->selectedIndexes().size(), 20);
    bool told = false;
    for (const QLabel* label : task.findChildren<QLabel*>())
        told = told || label->text() == QStringLiteral("20 answers of families are chosen");
    EXPECT_TRUE(told);
    m_window.session().undo();
    EXPECT_TRUE(book().permissionRecords.isEmpty()) << "all of an audience is one step";
}

TEST_F(EmptyClass, ListsEveryDisplayThatHoldsWhatIsNotAllowed)
{
    enterClass();
    const ChildId ines = childByName(book(), QStringLiteral("Ines Roth"))->id;
    EditBuilder edit(book(), QStringLiteral("Two displays"));
    Experience rain;
    rain.id = edit.newId<Experience>();
    edit.put(rain);
    Quote said;
    said.id = edit.newId<Quote>();
    said.experience = rain.id;
    said.child = ines;
    said.words = QStringLiteral("it goes home");
    edit.put(said);
    std::vector<DisplayId> displays;
    for (const char* name : {"Stairs", "Evening"}) {
        Display display;
        display.id = edit.newId<Display>();
        display.experience = rain.id;
        display.name = QString::fromLatin1(name);
        display.audience = Audience::Families;
        edit.put(display);
        displays.push_back(display.id);
        Panel panel;
        panel.id = edit.newId<Panel>();
        panel.display = display.id;
        edit.put(panel);
        Piece piece;
        piece.id = edit.newId<Piece>();
        piece.panel = panel.id;
        piece.kind = PieceKind::Quote;
        piece.quote = said.id;
        edit.put(piece);
    }
    ASSERT_TRUE(m_window.session().perform(edit.take()));
    gather().go(GatherPart::Class);
    ClassTask& task = gather().classTask();
    task.table().setCurrentIndex(task.table().model()->index(2, 12)); // families, words
    Button* show = nullptr;
    for (Button* one : task.note().findChildren<Button*>()) {
        if (one->text() == QLatin1String("2 displays hold Ines: show it"))
            show = one;
    }
    ASSERT_NE(show, nullptr);
    ASSERT_TRUE(show->isVisible());
    QStringList offered;
    QTimer::singleShot(200, &m_window, [&] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        for (const QAction* action : menu->actions())
            offered << action->text();
        QTest::keyClick(menu, Qt::Key_Down);
        QTest::keyClick(menu, Qt::Key_Down);
        QTest::keyClick(menu, Qt::Key_Return);
    });
    QTest::mouseClick(show, Qt::LeftButton);
    EXPECT_EQ(offered, QStringList({QStringLiteral("Stairs"), QStringLiteral("Evening")}));
    EXPECT_EQ(m_window.session().display()->id, displays.back());
}

TEST_F(EmptyClass, IsAllowedManyThingsAtOnce)
{
    enterClass();
    gather().go(GatherPart::Class);
    MarkTable& table = gather().classTask().table();
    table.setCurrentIndex(table.model()->index(0, 0));
    table.setFocus();
    for (int i = 0; i < 13; ++i)
        key(Qt::Key_Down, Qt::ShiftModifier);
    for (int i = 0; i < 4; ++i)
        key(Qt::Key_Right, Qt::ShiftModifier);
    key(Qt::Key_Space);
    for (const auto& [id, child] : book().children.rows()) {
        for (const Permission to : kPermissions)
            EXPECT_TRUE(child.permissions.allows(to, Audience::Classroom));
        EXPECT_FALSE(child.permissions.allows(Permission::Photo, Audience::Building));
    }
    EXPECT_EQ(book().permissionRecords.size(), 14U) << "one for each child, not for each cell";
    m_window.session().undo();
    EXPECT_EQ(book().permissionRecords.size(), 0U);
}

TEST_F(EmptyClass, NamesWhoWasNotHeardInTheClassesOrder)
{
    enterClass();
    beginPuddle();
    for (int i = 0; i < 36; ++i) {
        type(QStringLiteral("words"));
        key(Qt::Key_Return);
    }
    gather().go(GatherPart::Heard);
    QApplication::processEvents();
    const std::vector<ChildId> next = gather().heard().listenToNext();
    EXPECT_THAT(next,
        ElementsAre(
            childByName(book(), kClass.at(12))->id, childByName(book(), kClass.at(13))->id));
    EXPECT_EQ(m_window.sill().nextStep(), QStringLiteral("Listen to Wren"));
    m_window.takeNextStep();
    EXPECT_EQ(gather().part(), GatherPart::Words);
    EXPECT_EQ(desk().child()->name, QStringLiteral("Wren Abara"));
}

TEST_F(EmptyClass, GoesOnToIdeasOnceEverybodyWasHeard)
{
    enterClass();
    EXPECT_EQ(m_window.rail().line(Place::Gather), QStringLiteral("14 children"));
    beginPuddle();
    EXPECT_EQ(m_window.rail().line(Place::Gather), QStringLiteral("0 of 42 answers"));
    for (int i = 0; i < 42; ++i) {
        type(QStringLiteral("words"));
        key(Qt::Key_Return);
    }
    m_window.takeNextStep();
    EXPECT_EQ(gather().part(), GatherPart::Heard);
    EXPECT_EQ(m_window.sill().nextStep(), QStringLiteral("Put ideas together"));
    m_window.takeNextStep();
    EXPECT_EQ(m_window.place(), Place::Listen);
}

TEST_F(EmptyClass, AsksOtherQuestionsAndInOtherLanguages)
{
    enterClass();
    beginPuddle();
    gather().go(GatherPart::Ask);
    AskTask& ask = gather().ask();
    ASSERT_GT(ask.sets().size(), 4U);
    const auto at = std::find_if(ask.sets().begin(), ask.sets().end(), [](const PromptSet& set) {
        return set.sense == QStringLiteral("hearing");
    });
    ask.choose(int(at - ask.sets().begin()));
    EXPECT_EQ(m_window.sill().nextStep(), QStringLiteral("Ask these"));
    m_window.takeNextStep();
    const Experience& puddle = book().experiences.rows().begin()->second;
    const PromptSet& asked = *book().promptSets.find(puddle.promptSet);
    EXPECT_EQ(asked.prompts.front().key, QStringLiteral("hear"));
    gather().go(GatherPart::Words);
    EXPECT_EQ(desk().prompt()->text, QStringLiteral("What do you hear?"));
    m_window.session().undo();
    EXPECT_EQ(desk().prompt()->key, QStringLiteral("notice"));
}

TEST_F(EmptyClass, SaysWhoIsInAPictureBeforeAnybodySeesIt)
{
    enterClass();
    beginPuddle();
    QImage image(90, 60, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    const QString file = m_folder.filePath(QStringLiteral("line.png"));
    ASSERT_TRUE(image.save(file));
    gather().go(GatherPart::Pictures);
    m_window.takePictures({file});
    m_window.work().waitForEnd();
    QApplication::processEvents();
    ASSERT_EQ(book().pictures.size(), 1U);
    PicturesTask& task = gather().pictures();
    ASSERT_NE(task.picture(), nullptr);
    EXPECT_FALSE(task.picture()->people.lookedAt);
    const ChildId wren = childByName(book(), QStringLiteral("Wren Abara"))->id;
    task.setSeen(wren, true);
    EXPECT_TRUE(task.picture()->people.lookedAt);
    EXPECT_THAT(task.picture()->people.children, ElementsAre(wren));
    task.setSeen(wren, false);
    EXPECT_FALSE(task.picture()->people.lookedAt) << "nobody has said that nobody is in it";
    task.nobodySeen();
    EXPECT_TRUE(task.picture()->people.lookedAt);
    m_window.compose().shelf().waitForAll();
}

// A real drop on the task, as the file manager makes it.
void dropOn(QWidget& widget, const QStringList& files)
{
    QMimeData mime;
    QList<QUrl> urls;
    for (const QString& file : files)
        urls << QUrl::fromLocalFile(file);
    mime.setUrls(urls);
    const QPoint middle = widget.rect().center();
    QDragEnterEvent enter(middle, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&widget, &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent drop(middle, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&widget, &drop);
}

TEST_F(EmptyClass, MakesPicturesOfADroppedPile)
{
    enterClass();
    beginPuddle();
    gather().go(GatherPart::Pictures);
    const QString pile = test::writeFile(m_folder.filePath(QStringLiteral("Tuesday.pdf")),
        test::pdfOf({test::cornersPage({300, 200}), test::blankPage(), test::cornersPage({90, 90})},
            "Wren Halloway"));
    const QString torn = test::writeFile(m_folder.filePath(QStringLiteral("torn.pdf")), "%PDF-1.5");
    dropOn(gather().pictures(), {pile, torn});
    EXPECT_TRUE(m_window.work().isBusy()) << "off the window's thread";
    m_window.work().waitForEnd();
    QApplication::processEvents();
    ASSERT_EQ(book().pictures.size(), 2U);
    EXPECT_EQ(m_window.sill().said(),
        QStringLiteral("Pictures: 2 new, 0 changed. Left out: 2. Tuesday.pdf, page 2, is blank and "
                       "was left out."));
    PicturesTask& task = gather().pictures();
    ASSERT_NE(task.picture(), nullptr);
    EXPECT_EQ(task.picture()->fileName, QStringLiteral("Tuesday, page 1"));
    EXPECT_FALSE(task.picture()->people.lookedAt);
    PictureShelf& shelf = m_window.compose().shelf();
    (void)shelf.thumbnail(*task.picture());
    shelf.waitForAll();
    QApplication::processEvents();
    EXPECT_FALSE(shelf.thumbnail(*task.picture()).isNull());
    m_window.session().undo();
    EXPECT_EQ(book().pictures.size(), 0U) << "one step";
}

TEST_F(EmptyClass, StopsReadingAPile)
{
    enterClass();
    beginPuddle();
    const QString pile =
        test::writeFile(m_folder.filePath(QStringLiteral("endless.pdf")), test::endlessPdf(2, 3));
    m_window.takePictures({pile});
    ASSERT_TRUE(m_window.work().isBusy());
    m_window.work().stop();
    m_window.work().waitForEnd();
    QApplication::processEvents();
    EXPECT_EQ(book().pictures.size(), 0U);
}

TEST_F(EmptyClass, AttachesNoPileToOneChildsAnswer)
{
    enterClass();
    beginPuddle();
    key(Qt::Key_3, Qt::AltModifier); // drew
    m_window.attachPicture(test::writeFile(m_folder.filePath(QStringLiteral("pile.pdf")),
        test::pdfOf({test::cornersPage({300, 200}), test::cornersPage({90, 90})})));
    m_window.work().waitForEnd();
    QApplication::processEvents();
    EXPECT_EQ(book().pictures.size(), 0U);
    EXPECT_EQ(m_window.sill().said(),
        QStringLiteral("pile.pdf has 2 pages, and one is wanted here; add it where pictures are "
                       "gathered."));
    m_window.attachPicture(test::writeFile(m_folder.filePath(QStringLiteral("sheet.pdf")),
        test::pdfOf({test::cornersPage({300, 200})})));
    m_window.work().waitForEnd();
    QApplication::processEvents();
    ASSERT_EQ(book().pictures.size(), 1U);
    EXPECT_EQ(book().pictures.rows().begin()->second.kind, PictureKind::Work);
    m_window.compose().shelf().waitForAll();
}

TEST_F(EmptyClass, AttachesTheSheetToTheAnswerInHand)
{
    enterClass();
    beginPuddle();
    QImage image(60, 90, QImage::Format_RGB32);
    image.fill(Qt::white);
    const QString file = m_folder.filePath(QStringLiteral("sheet.png"));
    ASSERT_TRUE(image.save(file));
    key(Qt::Key_3, Qt::AltModifier); // drew
    m_window.attachPicture(file);
    m_window.work().waitForEnd();
    QApplication::processEvents();
    ASSERT_EQ(book().quotes.size(), 1U) << "a drawing is an answer without words";
    const Quote& drawn = book().quotes.rows().begin()->second;
    EXPECT_TRUE(drawn.drawing.isValid());
    EXPECT_TRUE(drawn.words.isEmpty());
    const Picture& kept = *book().pictures.find(drawn.drawing);
    EXPECT_EQ(kept.kind, PictureKind::Work);
    EXPECT_THAT(kept.people.children, ElementsAre(drawn.child));
    key(Qt::Key_Return);
    EXPECT_EQ(desk().promptAt(), 1);
    m_window.compose().shelf().waitForAll();
}

} // namespace
} // namespace wainscot::ui
