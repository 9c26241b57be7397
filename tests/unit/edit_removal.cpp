// What points at a quote goes with it or lets go of it.
#include "core/edit/removal.h"

#include <gtest/gtest.h>

namespace wainscot {
namespace {

TEST(RemovingAQuote, LeavesNothingThatPointsAtIt)
{
    Book book;
    Quote said;
    said.id = book.quotes.newId();
    book.quotes.put(said);
    Quote reply;
    reply.id = book.quotes.newId();
    reply.repliesTo = said.id;
    book.quotes.put(reply);
    book.groups.put({book.groups.newId(), {}, {}, {said.id, reply.id}});
    Quote third;
    third.id = book.quotes.newId();
    book.quotes.put(third);
    book.keptPairs.put({book.keptPairs.newId(), reply.id, said.id, true});
    book.keptPairs.put({book.keptPairs.newId(), said.id, third.id, false});
    const KeptPair others{book.keptPairs.newId(), reply.id, third.id, false};
    book.keptPairs.put(others);
    Meeting meeting;
    meeting.id = book.meetings.newId();
    meeting.readOut = {reply.id, said.id};
    book.meetings.put(meeting);
    Piece piece;
    piece.id = book.pieces.newId();
    piece.quote = said.id;
    book.pieces.put(piece);
    Translation translation;
    translation.id = book.translations.newId();
    translation.quote = said.id;
    book.translations.put(translation);

    const Book before = book;
    EditBuilder builder(book, QStringLiteral("Take the words back"));
    removeQuote(builder, book, said.id);
    const Edit edit = builder.take();
    apply(edit, book);
    EXPECT_FALSE(book.quotes.contains(said.id));
    EXPECT_FALSE(book.quotes.find(reply.id)->repliesTo.isValid());
    EXPECT_EQ(book.groups.rows().begin()->second.quotes, std::vector{reply.id});
    EXPECT_EQ(book.meetings.rows().begin()->second.readOut, std::vector{reply.id});
    ASSERT_EQ(book.keptPairs.size(), 1U);
    EXPECT_EQ(*book.keptPairs.find(others.id), others);
    EXPECT_TRUE(book.pieces.isEmpty());
    EXPECT_TRUE(book.translations.isEmpty());
    revert(edit, book);
    EXPECT_EQ(book.groups.rows(), before.groups.rows());
    EXPECT_EQ(book.keptPairs.rows(), before.keptPairs.rows());
    EXPECT_EQ(book.quotes.rows(), before.quotes.rows());
}

} // namespace
} // namespace wainscot
