// Finding in the whole book, by real keys.
#include <QLineEdit>

#include <gmock/gmock.h>

#include "app/ui/frame/find_dialog.h"
#include "app/ui/kit/words_slip.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

struct FindWindow : testing::Test {
    FindWindow()
    {
        at.key(Qt::Key_F, Qt::ControlModifier | Qt::AltModifier);
        dialog = at.window().findChild<FindDialog*>();
        EXPECT_NE(dialog, nullptr);
        (void)QTest::qWaitForWindowActive(dialog);
    }
    [[nodiscard]] QStringList listed() const
    {
        QStringList words;
        for (const WordsSlip* slip : dialog->findChildren<WordsSlip*>()) {
            if (slip->isVisibleTo(dialog))
                words << slip->accessibleName();
        }
        return words;
    }
    WindowAtWork at;
    FindDialog* dialog = nullptr;
};

TEST_F(FindWindow, NarrowsWithEveryLetterAndGoesToTheWords)
{
    EXPECT_TRUE(listed().isEmpty());
    at.type(QStringLiteral("s"));
    const std::size_t more = dialog->found().size();
    at.type(QStringLiteral("traw SUN"));
    ASSERT_EQ(dialog->found().size(), 1U);
    EXPECT_GT(more, 1U);
    EXPECT_EQ(listed(), QStringList{QStringLiteral("The sun drinks it with a straw.")});
    const QuoteId quote = dialog->found().front();
    at.key(Qt::Key_Return);
    at.settle();
    EXPECT_EQ(at.window().place(), Place::Gather);
    EXPECT_EQ(at.window().gather().words().desk().draft().quote, quote);
}

TEST_F(FindWindow, TakesAccentsForWhatTheyStandOn)
{
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    field->setText(QStringLiteral("str\u00e1w"));
    EXPECT_EQ(dialog->found().size(), 1U);
    field->setText(QStringLiteral("zebra"));
    EXPECT_TRUE(dialog->found().empty());
    EXPECT_TRUE(listed().isEmpty());
}

TEST_F(FindWindow, FindsAllWordsOfAChildAndTheArrowsGoThroughThem)
{
    at.type(QStringLiteral("kofi"));
    EXPECT_EQ(dialog->found().size(), 3U);
    const QStringList words = listed();
    at.key(Qt::Key_Tab);
    at.key(Qt::Key_Down);
    at.key(Qt::Key_Return);
    at.settle();
    EXPECT_EQ(at.window().gather().words().desk().draft().words, words.value(1));
}

} // namespace
} // namespace wainscot::ui
