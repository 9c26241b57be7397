// What comes onto the panel: from the drawer, a file manager, the clipboard, another program.
#include <QApplication>
#include <QClipboard>
#include <QMimeData>
#include <QUrl>

#include <gmock/gmock.h>

#include "support/window_at_work.h"
#include "tests/support/media_pictures.h"
#include "tests/support/scan_files.h"

namespace wainscot::ui {
namespace {

using ::testing::SizeIs;

// A photo of its own, unlike those of the book.
QString newPhoto(const WindowAtWork& at, const QString& name)
{
    QImage image(640, 480, QImage::Format_RGB32);
    image.fill(QColor(40, 90, 160));
    const QString path = at.file(name);
    image.save(path);
    return path;
}

std::unique_ptr<QMimeData> itemMime(DrawerItem item)
{
    auto mime = std::make_unique<QMimeData>();
    mime->setData(QString::fromLatin1(kDrawerMime), toBytes(item));
    return mime;
}

// A child's words that are cleared and on no panel.
QuoteId freeQuote(WindowAtWork& at)
{
    for (const auto& [id, quote] : at.book().quotes.rows()) {
        const DrawerItem item{DrawerItem::Kind::Quote, id.number()};
        const DrawerEntry* entry = at.compose().drawer().entryFor(item);
        const auto pieces = at.pieces();
        const bool used = std::any_of(
            pieces.begin(), pieces.end(), [id = id](const Piece& p) { return p.quote == id; });
        if (entry != nullptr && !entry->isForbidden() && !used)
            return id;
    }
    return {};
}

TEST(Incoming, ASlipShowsWhatThePageWouldBecomeAndLandsThere)
{
    WindowAtWork at;
    at.propose();
    at.clickOn(at.first(PieceKind::Quote));
    at.key(Qt::Key_Delete);
    const QuoteId quote = freeQuote(at);
    ASSERT_TRUE(quote.isValid());
    const auto mime = itemMime({DrawerItem::Kind::Quote, quote.number()});
    const std::size_t count = at.pieces().size();
    std::vector<Piece> shown;
    QObject::connect(&at.compose().desk().livePage(),
        &LivePage::answered,
        [&shown](const std::vector<Piece>& pieces) { shown = pieces; });
    const QPoint there = at.middleOf(at.first(PieceKind::Photo));
    at.dragOver(*mime, there);
    at.rest();
    EXPECT_EQ(at.pieces().size(), count) << "nothing is done before it is dropped";
    ASSERT_EQ(shown.size(), count + 1);
    at.drop(*mime, there);
    ASSERT_EQ(at.pieces().size(), count + 1);
    const Piece& added = at.piece(at.canvas().inHand());
    EXPECT_EQ(added.quote, quote);
    EXPECT_TRUE(added.pinned);
    EXPECT_TRUE(at.canvas().view().toPx(added.cell).contains(there));
    at.session().undo();
    EXPECT_EQ(at.pieces().size(), count);
}

TEST(Incoming, WhatMayNotHangCannotBeDropped)
{
    WindowAtWork at;
    at.propose();
    QuoteId refused;
    for (const auto& [id, quote] : at.book().quotes.rows()) {
        if (at.book().children.find(quote.child)->name == QStringLiteral("Ines Roth"))
            refused = id;
    }
    const auto before = at.pieces();
    at.drop(*itemMime({DrawerItem::Kind::Quote, refused.number()}),
        at.canvas().panelRect().center().toPoint());
    EXPECT_EQ(at.pieces(), before);
}

TEST(Incoming, APhotoFromTheFileManagerIsGatheredAndKeepsItsPlaceUntilSomebodySaysWhoIsInIt)
{
    WindowAtWork at;
    at.propose();
    const std::size_t pictures = at.book().pictures.size();
    const std::size_t count = at.pieces().size();
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(newPhoto(at, QStringLiteral("yard.png")))});
    at.drop(mime, at.canvas().panelRect().center().toPoint());
    ASSERT_EQ(at.book().pictures.size(), pictures + 1);
    ASSERT_EQ(at.pieces().size(), count + 1);
    const PieceId added = at.canvas().inHand();
    ASSERT_NE(at.canvas().find(added), nullptr);
    EXPECT_FALSE(at.canvas().find(added)->waits.isEmpty()) << "nobody has looked at it yet";
    EXPECT_TRUE(at.compose().actions().people->isEnabled());
    at.compose().desk().setPeople(at.piece(added).picture, {true, {}});
    at.settle();
    EXPECT_TRUE(at.canvas().find(added)->waits.isEmpty());
    at.session().undo();
    at.session().undo();
    EXPECT_EQ(at.book().pictures.size(), pictures) << "gathering and placing are one step";
    EXPECT_EQ(at.pieces().size(), count);
}

TEST(Incoming, OfAScannedPileTheFirstPageIsPlacedAndTheOthersWait)
{
    WindowAtWork at;
    at.propose();
    const std::size_t pictures = at.book().pictures.size();
    const std::size_t count = at.pieces().size();
    QStringList said;
    QObject::connect(&at.compose().desk(), &Desk::announced, &at.window(), [&](const QString& one) {
        said << one;
    });
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(test::writeFile(at.file(QStringLiteral("pile.pdf")),
        test::pdfOf({test::cornersPage({300, 200}),
            test::cornersPage({200, 300}),
            test::cornersPage({210, 300})})))});
    at.drop(mime, at.canvas().panelRect().center().toPoint());
    EXPECT_EQ(at.book().pictures.size(), pictures + 3);
    ASSERT_EQ(at.pieces().size(), count + 1);
    const Piece& placed = at.piece(at.canvas().inHand());
    EXPECT_EQ(at.book().pictures.find(placed.picture)->fileName, QStringLiteral("pile, page 1"));
    EXPECT_TRUE(said.contains(QStringLiteral("2 more pages are under What you have (F4).")));
}

TEST(Incoming, TheSameFileTwiceIsTheSamePicture)
{
    WindowAtWork at;
    at.propose();
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(newPhoto(at, QStringLiteral("yard.png")))});
    const QPoint there = at.canvas().panelRect().center().toPoint();
    at.drop(mime, there);
    const std::size_t pictures = at.book().pictures.size();
    at.drop(mime, there + QPoint(20, 20));
    EXPECT_EQ(at.book().pictures.size(), pictures);
}

TEST(Incoming, PastesPixelsFromAnotherProgram)
{
    WindowAtWork at;
    at.propose();
    QImage image(300, 200, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QApplication::clipboard()->setImage(image);
    const std::size_t pictures = at.book().pictures.size();
    at.canvas().setFocus();
    at.key(Qt::Key_V, Qt::ControlModifier);
    at.settle();
    EXPECT_EQ(at.book().pictures.size(), pictures + 1);
}

TEST(Incoming, PastesTextPlainAndKnowsAChildsWords)
{
    WindowAtWork at;
    at.propose();
    auto* rich = new QMimeData;
    rich->setHtml(QStringLiteral("<b>We looked</b> for three days at the same puddle."));
    rich->setText(QStringLiteral("We looked for three days at the same puddle."));
    QApplication::clipboard()->setMimeData(rich);
    at.canvas().setFocus();
    at.key(Qt::Key_V, Qt::ControlModifier);
    const Piece& text = at.piece(at.canvas().inHand());
    EXPECT_EQ(text.kind, PieceKind::Context);
    EXPECT_EQ(text.text, QStringLiteral("We looked for three days at the same puddle."));

    const std::size_t quotes = at.book().quotes.size();
    QApplication::clipboard()->setText(QStringLiteral("wren abara: It winked at me."));
    at.key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(at.book().quotes.size(), quotes + 1);
    const Piece& words = at.piece(at.canvas().inHand());
    ASSERT_EQ(words.kind, PieceKind::Quote);
    EXPECT_EQ(at.book().quotes.find(words.quote)->words, QStringLiteral("It winked at me."));

    QApplication::clipboard()->setText(QStringLiteral("Ines Roth: Mine."));
    const std::size_t pieces = at.pieces().size();
    at.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(at.book().quotes.size(), quotes + 2) << "kept in what one has";
    EXPECT_EQ(at.pieces().size(), pieces) << "but not hung where it may not hang";
}

TEST(Incoming, CopiesCutsAndPastesPieces)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.first(PieceKind::Quote);
    const QString words = at.book().quotes.find(at.piece(quote).quote)->words;
    at.clickOn(quote);
    at.canvas().setFocus();
    at.key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_TRUE(QApplication::clipboard()->text().contains(words)) << "plain for other programs";
    EXPECT_FALSE(QApplication::clipboard()->mimeData()->hasImage());
    const std::size_t count = at.pieces().size();
    at.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_THAT(at.pieces(), SizeIs(count + 1));
    at.key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_THAT(at.pieces(), SizeIs(count));
    at.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_THAT(at.pieces(), SizeIs(count + 1));
    at.key(Qt::Key_D, Qt::ControlModifier);
    EXPECT_THAT(at.pieces(), SizeIs(count + 2));
}

TEST(Incoming, PathsOfAFileManagerAreNobodysWords)
{
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(QStringLiteral("/tmp/list.txt"))});
    mime.setText(QStringLiteral("file:///tmp/list.txt"));
    EXPECT_TRUE(incomingFrom(mime, true).isEmpty());
}

} // namespace
} // namespace wainscot::ui
