// Writing in the panel's own lines.
#include <QInputMethodEvent>
#include <QTextBlock>

#include <gmock/gmock.h>

#include <set>

#include "app/ui/session/piece_edits.h"
#include "core/model/verbatim.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

const char* const kNote = "We thought the sun drank the puddle. The children thought of the wind, "
                          "of thirsty worms and of a hole in the ground, and asked who took it.";

class Writing : public ::testing::Test {
protected:
    Writing() { at.propose(); }

    PieceId addNote(const QString& text, const QString& language = {})
    {
        Piece note;
        note.panel = at.session().panel()->id;
        note.kind = PieceKind::Interpretation;
        note.text = text;
        note.language = language;
        note.cell = {Mm(560), Mm(400), Mm(230), Mm(110)};
        PieceId added;
        EXPECT_TRUE(at.session().perform(addPiece(at.book(), note, QStringLiteral("Note"), added)));
        at.settle();
        at.canvas().takeInHand(added);
        at.canvas().setFocus();
        return added;
    }
    void begin() { at.key(Qt::Key_Return); }
    CaretField& field() { return at.compose().stage().editor().field(); }
    QRectF caretAt(int position)
    {
        QTextCursor cursor = field().textCursor();
        cursor.setPosition(position);
        field().setTextCursor(cursor);
        return field().caretRect();
    }
    // Baselines of the piece on paper.
    std::size_t linesOnPanel(PieceId id)
    {
        std::set<double> baselines;
        for (const Mark& mark : at.canvas().tried()->marks) {
            if (const auto* run = std::get_if<GlyphRun>(&mark.shape); run && mark.piece == id)
                baselines.insert(run->origin.y.value());
        }
        return baselines.size();
    }

    WindowAtWork at;
};

TEST_F(Writing, IsKeptWhenTheWindowIsClosedInTheMiddle)
{
    const PieceId note = addNote(QStringLiteral("Before"));
    begin();
    ASSERT_TRUE(at.compose().isWriting());
    at.type(QStringLiteral(" and half of a sen"));
    const QString written = at.compose().stage().editor().text();
    ASSERT_TRUE(written.contains(QStringLiteral("half of a sen")));
    at.window().close();
    EXPECT_EQ(at.piece(note).text, written);
}

// A hundred words: each letter sets this piece anew, and nothing else on the panel is touched.
TEST_F(Writing, SetsOnlyTheWrittenPieceAtEachLetter)
{
    QStringList words;
    for (int i = 0; i < 100; ++i)
        words << QStringLiteral("word%1").arg(i);
    const PieceId note = addNote(words.join(QLatin1Char(' ')));
    begin();
    ASSERT_TRUE(at.compose().isWriting());
    const std::size_t whole = at.canvas().content().list.marks.size();
    (void)at.canvas().takeWork();
    std::size_t set = 0;
    constexpr int kLetters = 10;
    for (int i = 0; i < kLetters; ++i) {
        QTest::keyClick(&field(), Qt::Key_A);
        QApplication::processEvents();
        ASSERT_NE(at.canvas().tried(), nullptr);
        for (const Mark& mark : at.canvas().tried()->marks) {
            EXPECT_EQ(mark.piece, note);
            ++set;
        }
    }
    EXPECT_EQ(at.canvas().takeWork().staticLayers, 0) << "the rest is not even painted anew";
    EXPECT_EQ(at.canvas().content().list.marks.size(), whole);
    std::printf(
        "typing: %.1f marks a letter are set of %zu on the panel\n", double(set) / kLetters, whole);
}

TEST_F(Writing, StandsInTheLinesOfThePanel)
{
    const PieceId note = addNote(QString::fromUtf8(kNote));
    begin();
    ASSERT_TRUE(at.compose().isWriting());
    const int length = int(field().toPlainText().size());
    std::set<double> tops;
    for (int i = 0; i <= length; ++i) {
        const QRectF caret = caretAt(i);
        ASSERT_TRUE(at.canvas()
                        .pieceRect(note)
                        .adjusted(-9, -9, 9, 9)
                        .contains(caret.translated(field().pos()).center()))
            << i;
        tops.insert(caret.top());
    }
    EXPECT_EQ(tops.size(), linesOnPanel(note));
    EXPECT_GT(tops.size(), 2U);
    EXPECT_GT(caretAt(5).left(), caretAt(4).left());
}

TEST_F(Writing, GoesUpAndDownByThePanelsLines)
{
    addNote(QString::fromUtf8(kNote));
    begin();
    const QRectF start = caretAt(12);
    at.key(Qt::Key_Down);
    const int below = field().textCursor().position();
    EXPECT_GT(field().caretRect().top(), start.top());
    EXPECT_NEAR(field().caretRect().left(), start.left(), start.height());
    at.key(Qt::Key_Up);
    EXPECT_EQ(field().textCursor().position(), 12) << "back to where it came from";
    at.key(Qt::Key_Down);
    at.key(Qt::Key_Home);
    const int first = field().textCursor().position();
    EXPECT_LE(first, below);
    at.key(Qt::Key_End, Qt::ShiftModifier);
    EXPECT_EQ(field().textCursor().anchor(), first);
    EXPECT_GT(field().textCursor().position(), below - 1);
    EXPECT_EQ(field().caretRect().top(), caretAt(first).top());
}

TEST_F(Writing, PutsTheCaretWhereOneClicks)
{
    const PieceId note = addNote(QStringLiteral("The sun drank it."));
    begin();
    const QPointF letter = caretAt(8).center() + field().pos();
    at.key(Qt::Key_Escape);
    ASSERT_FALSE(at.compose().isWriting());
    QTest::mouseDClick(&at.canvas(), Qt::LeftButton, {}, letter.toPoint());
    ASSERT_TRUE(at.compose().isWriting());
    EXPECT_EQ(field().textCursor().position(), 8);
    at.type(QStringLiteral("red "));
    const QPoint other = caretAt(4).center().toPoint();
    caretAt(0);
    QTest::mouseClick(field().viewport(), Qt::LeftButton, {}, other);
    at.type(QStringLiteral("hot "));
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.piece(note).text, QStringLiteral("The hot sun red drank it."));
}

TEST_F(Writing, ChoosesWordsByMouse)
{
    const PieceId note = addNote(QStringLiteral("The sun drank it."));
    begin();
    const QPoint from = caretAt(4).center().toPoint();
    const QPoint to = caretAt(7).center().toPoint();
    QTest::mousePress(field().viewport(), Qt::LeftButton, {}, from);
    QTest::mouseMove(field().viewport(), to);
    QTest::mouseRelease(field().viewport(), Qt::LeftButton, {}, to);
    EXPECT_EQ(field().textCursor().selectedText(), QStringLiteral("sun"));
    at.type(QStringLiteral("wind"));
    QTest::mouseDClick(field().viewport(), Qt::LeftButton, {}, caretAt(10).center().toPoint());
    EXPECT_EQ(field().textCursor().selectedText(), QStringLiteral("drank"));
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.piece(note).text, QStringLiteral("The wind drank it."));
}

TEST_F(Writing, StaysWithThePanelAtEveryZoom)
{
    addNote(QStringLiteral("The sun drank it."));
    begin();
    const QRectF near = caretAt(8);
    at.canvas().zoomBy(2);
    EXPECT_NEAR(field().caretRect().height(), 2 * near.height(), 0.01);
    EXPECT_EQ(field().textCursor().position(), 8);
}

TEST_F(Writing, ShowsWhatAnInputMethodComposes)
{
    const PieceId note = addNote(QStringLiteral("ab"));
    begin();
    caretAt(1);
    QInputMethodEvent composing(QStringLiteral("ni"), {});
    QApplication::sendEvent(&field(), &composing);
    EXPECT_EQ(field().shownText(), QStringLiteral("anib"));
    EXPECT_EQ(field().toPlainText(), QStringLiteral("ab")) << "not given yet";
    const QRectF caret = field().inputMethodQuery(Qt::ImCursorRectangle).toRectF();
    EXPECT_GT(caret.height(), 3);
    QInputMethodEvent given;
    given.setCommitString(QStringLiteral("\u4f60"));
    QApplication::sendEvent(&field(), &given);
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.piece(note).text, QStringLiteral("a\u4f60b"));
}

TEST_F(Writing, RunsFromTheRightInArabic)
{
    addNote(QString::fromUtf8("أين ذهبت البركة"), QStringLiteral("ar"));
    begin();
    EXPECT_LT(caretAt(5).left(), caretAt(1).left());
    EXPECT_LT(caretAt(1).left(), caretAt(0).left());
}

TEST_F(Writing, ShowsANewParagraphBeforeItHasWords)
{
    const PieceId note = addNote(QStringLiteral("Rain."));
    begin();
    const QRectF first = caretAt(5);
    at.key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_GT(field().caretRect().top(), first.top());
    at.type(QStringLiteral("Sun."));
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.piece(note).text, QStringLiteral("Rain.\nSun."));
}

TEST_F(Writing, BeginsInAnEmptyPiece)
{
    const PieceId note = addNote({});
    begin();
    ASSERT_TRUE(at.compose().isWriting());
    EXPECT_GT(field().caretRect().height(), 3);
    at.type(QStringLiteral("Snow"));
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.piece(note).text, QStringLiteral("Snow"));
}

TEST_F(Writing, MakesRoomForWordsThatNoLongerFit)
{
    const PieceId title = at.first(PieceKind::Title);
    const Mm before = at.piece(title).cell.height;
    at.clickOn(title);
    begin();
    at.type(QStringLiteral(
        "Where does the puddle by the bicycle shed go when nobody looks at it, and who "
        "takes it away?"));
    at.key(Qt::Key_Return);
    at.settle();
    EXPECT_GT(at.piece(title).cell.height, before);
    EXPECT_TRUE(at.session().undoLabel().startsWith(QStringLiteral("Text")))
        << at.session().undoLabel().toStdString();
    at.session().undo();
    at.settle();
    EXPECT_EQ(at.piece(title).cell.height, before) << "one step";
}

TEST_F(Writing, LeavesATraceInAChildsWords)
{
    const PieceId slip = at.first(PieceKind::Quote);
    const QString said = at.book().quotes.find(at.piece(slip).quote)->words;
    const QStringList words = said.split(QLatin1Char(' '));
    ASSERT_GT(words.size(), 2);
    at.clickOn(slip);
    begin();
    ASSERT_TRUE(at.compose().isWriting());
    EXPECT_EQ(field().toPlainText(), said);
    at.type(words.first() + QLatin1Char(' ') + words.last() + QStringLiteral(" indeed"));
    at.key(Qt::Key_Return);
    const QString shown = at.piece(slip).shownWords;
    EXPECT_TRUE(isVerbatim(shown, said)) << shown.toStdString();
    EXPECT_TRUE(shown.contains(QChar(0x2026)));
    EXPECT_TRUE(shown.contains(QStringLiteral("[indeed]"))) << shown.toStdString();
    EXPECT_EQ(at.book().quotes.find(at.piece(slip).quote)->words, said) << "kept as it was said";
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Shortened words"));
    at.key(Qt::Key_J);
    EXPECT_TRUE(at.piece(slip).shownWords.isEmpty());
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("All the words"));
}

TEST_F(Writing, KeepsAChildsWordsThatAreTypedAgain)
{
    const PieceId slip = at.first(PieceKind::Quote);
    const QString said = at.book().quotes.find(at.piece(slip).quote)->words;
    const QString before = at.session().undoLabel();
    at.clickOn(slip);
    begin();
    at.type(said);
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.session().undoLabel(), before);
    begin();
    at.key(Qt::Key_Delete);
    at.key(Qt::Key_Return);
    EXPECT_TRUE(at.piece(slip).shownWords.isEmpty()) << "nothing at all is not a part of it";
}

TEST_F(Writing, OffersAWordForOneNoDictionaryKnows)
{
    const PieceId note = addNote(QStringLiteral("A puddel in the yard."));
    begin();
    caretAt(4);
    auto& offer = *at.compose().stage().editor().findChild<WordOffer*>();
    for (int i = 0; i < 50 && !offer.isVisible(); ++i)
        QTest::qWait(100);
    ASSERT_TRUE(offer.suggestions().contains(QStringLiteral("puddle")));
    const auto place = offer.suggestions().indexOf(QStringLiteral("puddle"));
    at.key(Qt::Key(Qt::Key_1 + place), Qt::AltModifier);
    EXPECT_EQ(field().toPlainText(), QStringLiteral("A puddle in the yard."));
    EXPECT_FALSE(offer.isVisible());
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.piece(note).text, QStringLiteral("A puddle in the yard."));
}

TEST_F(Writing, NeverDoubtsAChildsWords)
{
    at.clickOn(at.first(PieceKind::Quote));
    begin();
    at.type(QStringLiteral("it wented away"));
    auto& offer = *at.compose().stage().editor().findChild<WordOffer*>();
    QTest::qWait(500);
    EXPECT_FALSE(offer.isVisible());
}

} // namespace
} // namespace wainscot::ui
