// The first minutes: from nothing to a panel, and the guide with its pictures.
#include <QApplication>
#include <QClipboard>
#include <QDir>

#include <gmock/gmock.h>

#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

// A home of its own, so that no test writes into a person's documents.
class Home {
public:
    Home()
        : m_before(qgetenv("HOME"))
    {
        qputenv("HOME", QFile::encodeName(m_folder.path()));
        QDir(m_folder.path()).mkdir(QStringLiteral("Documents"));
    }
    ~Home() { qputenv("HOME", m_before); }
    Home(const Home&) = delete;
    Home& operator=(const Home&) = delete;

private:
    QTemporaryDir m_folder;
    QByteArray m_before;
};

// A window without a book, and a count of what a person does in it.
class FirstEvening : public ::testing::Test {
protected:
    FirstEvening()
    {
        m_window.resize(1366, 768);
        m_window.show();
        QApplication::setActiveWindow(&m_window);
        (void)QTest::qWaitForWindowActive(&m_window);
        m_window.go(Place::Gather);
        settle();
    }
    void settle()
    {
        m_window.work().waitForEnd();
        for (int i = 0; i < 10; ++i)
            QApplication::processEvents();
    }
    // One action: a key, or words and the Enter that ends them.
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        ++m_actions;
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        settle();
    }
    void write(const QString& text)
    {
        QTest::keyClicks(QApplication::focusWidget(), text);
        press(Qt::Key_Return);
    }

    Home m_home;
    MainWindow m_window;
    int m_actions = 0;
};

TEST_F(FirstEvening, GoesFromNothingToAPanelInLessThanTenActions)
{
    QApplication::clipboard()->setText(QStringLiteral("Wren Abara\nKofi Lind\nInes Roth\n"));
    write(QStringLiteral("The Wrens"));
    ASSERT_TRUE(m_window.session().isOpen());
    press(Qt::Key_F9); // Paste a list
    ASSERT_EQ(m_window.session().book().children.size(), 3U);
    m_window.gather().firstStop()->setFocus(); // where the keyboard is when the table appears
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Space); // every family has allowed it
    press(Qt::Key_F9); // Take words down
    write(QStringLiteral("Where does the puddle go?"));
    write(QStringLiteral("The sun drinks it with a straw."));
    press(Qt::Key_3, Qt::ControlModifier);
    press(Qt::Key_F9); // Propose a panel
    ASSERT_NE(m_window.session().panel(), nullptr);
    EXPECT_FALSE(piecesOf(m_window.session().book(), m_window.session().panel()->id).empty());
    EXPECT_LT(m_actions, 10);
}

TEST_F(FirstEvening, IsToldByTheGuideWithPicturesOfTheWindow)
{
    QTest::keyClick(&m_window, Qt::Key_F1);
    settle();
    FirstSteps* steps = m_window.firstSteps();
    ASSERT_NE(steps, nullptr);
    EXPECT_TRUE(steps->isVisible());
    EXPECT_FALSE(steps->toPlace().isVisible()) << "there is no book to go anywhere in";
    ASSERT_TRUE(QTest::qWaitFor([steps] { return steps->hasPicture(FirstStep::Wall); }, 120000));
    for (const FirstStep step : kFirstSteps)
        EXPECT_TRUE(steps->hasPicture(step)) << int(step);
}

TEST_F(FirstEvening, TurnsThePagesOfTheGuideByKeyboard)
{
    m_window.showFirstSteps();
    settle();
    FirstSteps& steps = *m_window.firstSteps();
    QTest::keyClick(&steps.entry(FirstStep::Class), Qt::Key_Down);
    EXPECT_EQ(steps.step(), FirstStep::Words);
    QTest::keyClick(&steps.entry(FirstStep::Words), Qt::Key_End);
    EXPECT_EQ(steps.step(), FirstStep::Wall);
    EXPECT_FALSE(steps.next().isEnabled());
    steps.show(FirstStep::Class);
    QTest::keyClick(&steps.next(), Qt::Key_Return);
    QTest::keyClick(&steps.next(), Qt::Key_Return);
    EXPECT_EQ(steps.step(), FirstStep::Pictures);
    steps.entry(FirstStep::Pictures).setFocus(Qt::BacktabFocusReason);
    EXPECT_EQ(steps.step(), FirstStep::Pictures) << "coming back turns no page";
    EXPECT_EQ(steps.entry(FirstStep::Pictures).focusPolicy(), Qt::StrongFocus);
    QTest::keyClick(&steps, Qt::Key_Escape);
    EXPECT_FALSE(steps.isVisible());
}

TEST(FirstSteps, GoToThePlaceTheyAreDoneIn)
{
    WindowAtWork at;
    at.window().showFirstSteps();
    FirstSteps& steps = *at.window().firstSteps();
    steps.show(FirstStep::Groups);
    ASSERT_TRUE(steps.toPlace().isVisible());
    QTest::mouseClick(&steps.toPlace(), Qt::LeftButton);
    EXPECT_EQ(at.window().place(), Place::Listen);
    steps.show(FirstStep::Pictures);
    QTest::mouseClick(&steps.toPlace(), Qt::LeftButton);
    EXPECT_EQ(at.window().gather().part(), GatherPart::Pictures);
}

} // namespace
} // namespace wainscot::ui
