// Pieces through the clipboard, and what somebody else may have put there under our name.
#include "app/ui/compose/clipboard.h"

#include <QMimeData>

#include <gmock/gmock.h>

#include "app/ui/canvas/incoming.h"
#include "tests/support/class_book.h"

namespace wainscot::ui {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

const QString kFolder = QStringLiteral("/a/book");

QByteArray written(const std::vector<Piece>& pieces)
{
    const std::unique_ptr<QMimeData> mime(mimeFor(kFolder, pieces, {}));
    return mime->data(QString::fromLatin1(kPiecesMime));
}

Piece note()
{
    Piece piece;
    piece.id = PieceId(7);
    piece.kind = PieceKind::Context;
    piece.text = QStringLiteral("It rained.");
    piece.cell = {Mm(10), Mm(20), Mm(120.5), Mm(40)};
    piece.framing.zoom = 2.5;
    return piece;
}

TEST(Clipboard, BringsAPieceBackAsItWas)
{
    const ClassBook made;
    const auto pieces = piecesFrom(written({note()}), made.book, kFolder);
    ASSERT_THAT(pieces, SizeIs(1));
    EXPECT_EQ(pieces[0].text, note().text);
    EXPECT_EQ(pieces[0].cell, note().cell);
    EXPECT_EQ(pieces[0].framing, note().framing);
}

TEST(Clipboard, TakesNoPieceOfAnImpossibleSize)
{
    const ClassBook made;
    for (const RectMm& cell : {RectMm{Mm(1), Mm(1), Mm(0), Mm(5)},
             RectMm{Mm(1), Mm(1), Mm(5), Mm(-5)},
             RectMm{Mm(1), Mm(1), Mm(1e9), Mm(5)},
             RectMm{Mm(-1e300), Mm(1), Mm(5), Mm(5)}}) {
        Piece piece = note();
        piece.cell = cell;
        EXPECT_THAT(piecesFrom(written({piece}), made.book, kFolder), IsEmpty());
    }
    EXPECT_THAT(piecesFrom("{\"pieces\":[{\"kind\":\"context\"}]}", made.book, kFolder), IsEmpty());
    EXPECT_THAT(piecesFrom("no JSON", made.book, kFolder), IsEmpty());
}

TEST(Clipboard, KeepsTheFramingWithinWhatAFrameCanShow)
{
    const ClassBook made;
    Piece piece = note();
    piece.framing = {{-3, 40}, 1e300};
    const auto pieces = piecesFrom(written({piece}), made.book, kFolder);
    ASSERT_THAT(pieces, SizeIs(1));
    EXPECT_EQ(pieces[0].framing, (Framing{{0, 1}, 8}));
}

TEST(Clipboard, TakesWordsOnlyBackIntoTheirOwnBook)
{
    ClassBook made;
    Piece piece = note();
    piece.kind = PieceKind::Quote;
    piece.quote = made.quote(made.child("Wren", Permissions::all()), QStringLiteral("One."));
    const QByteArray bytes = written({piece});
    EXPECT_THAT(piecesFrom(bytes, made.book, kFolder), SizeIs(1));
    EXPECT_THAT(piecesFrom(bytes, made.book, QStringLiteral("/another")), IsEmpty());
}

} // namespace
} // namespace wainscot::ui
