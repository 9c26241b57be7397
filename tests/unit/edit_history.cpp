#include "core/edit/edit.h"
#include "tests/support/sinks.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

class EditHistory : public ::testing::Test {
protected:
    EditHistory()
    {
        m_piece.id = m_book.pieces.newId();
        m_book.pieces.put(m_piece);
    }

    Result<> moveTo(double x, int gesture = 0)
    {
        EditBuilder edit(m_book, QStringLiteral("Move"), gesture);
        Piece moved = *m_book.pieces.find(m_piece.id);
        moved.cell.x = Mm(x);
        edit.put(moved);
        return m_history.perform(edit.take());
    }
    [[nodiscard]] double x() const { return m_book.pieces.find(m_piece.id)->cell.x.value(); }

    Book m_book;
    Piece m_piece;
    CountingSink m_sink;
    History m_history{m_book, m_sink};
};

TEST_F(EditHistory, GoesBackAndForthByName)
{
    ASSERT_TRUE(moveTo(5).ok());
    EXPECT_EQ(m_history.undoLabel(), QStringLiteral("Move"));
    ASSERT_TRUE(m_history.undo().ok());
    EXPECT_EQ(x(), 0);
    EXPECT_EQ(m_history.redoLabel(), QStringLiteral("Move"));
    ASSERT_TRUE(m_history.redo().ok());
    EXPECT_EQ(x(), 5);
    EXPECT_EQ(m_sink.saves, 2);
    EXPECT_EQ(m_sink.reverts, 1);
}

TEST_F(EditHistory, ForgetsWhatWasUndoneWhenSomethingNewIsDone)
{
    ASSERT_TRUE(moveTo(5).ok());
    ASSERT_TRUE(m_history.undo().ok());
    ASSERT_TRUE(moveTo(7).ok());
    EXPECT_FALSE(m_history.canRedo());
    ASSERT_TRUE(m_history.undo().ok());
    EXPECT_EQ(x(), 0);
}

TEST_F(EditHistory, MergesAGestureIntoOneStep)
{
    const int drag = m_history.newGesture();
    for (const double at : {1.0, 2.0, 3.0})
        ASSERT_TRUE(moveTo(at, drag).ok());
    ASSERT_TRUE(m_history.undo().ok());
    EXPECT_EQ(x(), 0);
    EXPECT_FALSE(m_history.canUndo());
    ASSERT_TRUE(m_history.redo().ok());
    EXPECT_EQ(x(), 3);
}

TEST_F(EditHistory, KeepsTwoGesturesApart)
{
    ASSERT_TRUE(moveTo(1, m_history.newGesture()).ok());
    ASSERT_TRUE(moveTo(2, m_history.newGesture()).ok());
    ASSERT_TRUE(m_history.undo().ok());
    EXPECT_EQ(x(), 1);
}

TEST_F(EditHistory, ForgetsAGestureThatReturnsToItsStart)
{
    ASSERT_TRUE(moveTo(9).ok());
    const int drag = m_history.newGesture();
    ASSERT_TRUE(moveTo(12, drag).ok());
    ASSERT_TRUE(moveTo(9, drag).ok());
    ASSERT_TRUE(m_history.undo().ok());
    EXPECT_EQ(x(), 0); // the step before the drag
}

TEST_F(EditHistory, DoesNothingForAnEmptyEdit)
{
    ASSERT_TRUE(moveTo(0).ok());
    EXPECT_EQ(m_sink.saves, 0);
    EXPECT_FALSE(m_history.canUndo());
}

TEST_F(EditHistory, ShowsNothingThatCouldNotBeSaved)
{
    m_sink.fails = true;
    const auto done = moveTo(5);
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().code, ErrorCode::CannotWrite);
    EXPECT_EQ(x(), 0);
    EXPECT_FALSE(m_history.canUndo());
}

TEST_F(EditHistory, StaysWhereItIsWhenAStepCannotBeSaved)
{
    ASSERT_TRUE(moveTo(5).ok());
    m_sink.fails = true;
    EXPECT_FALSE(m_history.undo().ok());
    EXPECT_EQ(x(), 5);
    EXPECT_TRUE(m_history.canUndo());
    m_sink.fails = false;
    ASSERT_TRUE(m_history.undo().ok());
    m_sink.fails = true;
    EXPECT_FALSE(m_history.redo().ok());
    EXPECT_EQ(x(), 0);
    EXPECT_TRUE(m_history.canRedo());
    EXPECT_FALSE(moveTo(8).ok());
    EXPECT_TRUE(m_history.canRedo()); // a failed edit does not forget what was undone
}

TEST_F(EditHistory, RefusesAnEditBuiltForAnotherStateOfTheBook)
{
    EditBuilder early(m_book, QStringLiteral("Early"));
    Piece moved = m_piece;
    moved.pinned = true;
    early.put(moved);
    const Edit edit = early.take();
    ASSERT_TRUE(moveTo(5).ok());
    const auto done = m_history.perform(edit);
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().code, ErrorCode::WrongUse);
    EXPECT_EQ(x(), 5);
}

} // namespace

} // namespace wainscot
