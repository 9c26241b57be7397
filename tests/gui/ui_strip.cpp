// The panels of a display as hung pictures.
#include <QApplication>
#include <QLineEdit>
#include <QMimeData>

#include <gmock/gmock.h>

#include "app/ui/session/panel_edits.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using ::testing::SizeIs;

std::vector<PanelId> panelIds(WindowAtWork& at)
{
    std::vector<PanelId> ids;
    for (const Panel* panel : panelsOf(at.book(), at.session().display()->id))
        ids.push_back(panel->id);
    return ids;
}

// Two panels, the second a copy; the first is on the stage.
void twoPanels(WindowAtWork& at)
{
    at.propose();
    const PanelId first = at.session().panel()->id;
    at.compose().actions().panelOnceMore->trigger();
    at.settle();
    at.session().choosePanel(first);
    at.settle();
}

TEST(Strip, ShowsEveryPanelAsALivePictureAndAPlaceForANewOne)
{
    WindowAtWork at;
    twoPanels(at);
    HungPanels& hung = at.compose().stage().hung();
    ASSERT_TRUE(hung.isVisible());
    for (const PanelId id : panelIds(at)) {
        ASSERT_NE(hung.find(id), nullptr);
        EXPECT_TRUE(hung.find(id)->accessibleName().startsWith(QStringLiteral("Panel ")));
    }
    ASSERT_NE(hung.find({}), nullptr);
    hung.paintAllNow();
    const QImage picture = hung.find(panelIds(at)[0])->grab().toImage();
    int dark = 0;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x)
            dark += qGray(picture.pixel(x, y)) < 150 ? 1 : 0;
    }
    EXPECT_GT(dark, 60) << "words and pictures, not a blank sheet";
}

TEST(Strip, ClickingGoesToAPanelAndKeepsTheKeyboardThere)
{
    WindowAtWork at;
    twoPanels(at);
    const auto ids = panelIds(at);
    QTest::mouseClick(at.compose().stage().hung().find(ids[1]), Qt::LeftButton);
    at.settle();
    EXPECT_EQ(at.session().panel()->id, ids[1]);
}

TEST(Strip, ReordersByDraggingAndByKeys)
{
    WindowAtWork at;
    twoPanels(at);
    const auto ids = panelIds(at);
    HungPanel* first = at.compose().stage().hung().find(ids[0]);
    HungPanel* second = at.compose().stage().hung().find(ids[1]);
    const QPoint from = first->rect().center();
    const QPoint to = first->mapFromGlobal(
        second->mapToGlobal(QPoint(second->width() / 2, second->height() - 4)));
    QTest::mousePress(first, Qt::LeftButton, {}, from);
    QMouseEvent move(QEvent::MouseMove,
        to,
        first->mapToGlobal(to),
        Qt::NoButton,
        Qt::LeftButton,
        Qt::NoModifier);
    QApplication::sendEvent(first, &move);
    QTest::mouseRelease(first, Qt::LeftButton, {}, to);
    at.settle();
    EXPECT_EQ(panelIds(at), (std::vector<PanelId>{ids[1], ids[0]}));
    at.compose().stage().hung().find(ids[0])->setFocus();
    at.key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(panelIds(at), ids);
    EXPECT_EQ(at.book().panels.find(ids[0])->number, 1);
}

TEST(Strip, DuplicatesTakesDownAndBringsBack)
{
    WindowAtWork at;
    at.propose();
    const std::size_t pieces = at.pieces().size();
    const PanelId first = at.session().panel()->id;
    at.compose().stage().hung().find(first)->setFocus();
    at.key(Qt::Key_D, Qt::ControlModifier);
    ASSERT_THAT(panelIds(at), SizeIs(2));
    EXPECT_NE(at.session().panel()->id, first) << "the new one is on the stage";
    EXPECT_THAT(at.pieces(), SizeIs(pieces));
    const PanelId copy = at.session().panel()->id;
    at.compose().stage().hung().find(copy)->setFocus();
    at.key(Qt::Key_Delete);
    EXPECT_EQ(panelIds(at), std::vector<PanelId>{first});
    EXPECT_EQ(at.book().pieces.size(), pieces);
    at.session().undo();
    EXPECT_THAT(panelIds(at), SizeIs(2));
}

TEST(Strip, NamesAPanelByItsTitle)
{
    WindowAtWork at;
    at.propose();
    const PanelId panel = at.session().panel()->id;
    at.compose().stage().hung().find(panel)->setFocus();
    at.key(Qt::Key_F2);
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    field->selectAll();
    at.type(QStringLiteral("Drei Tage Regen"));
    at.key(Qt::Key_Return);
    ASSERT_NE(titleOf(at.book(), panel), nullptr);
    EXPECT_EQ(titleOf(at.book(), panel)->text, QStringLiteral("Drei Tage Regen"));
}

TEST(Strip, CarriesAPieceToAnotherPanelByMouseAndByKeys)
{
    WindowAtWork at;
    twoPanels(at);
    const auto ids = panelIds(at);
    const PieceId quote = at.first(PieceKind::Quote);
    at.clickOn(quote);
    const HungPanel* other = at.compose().stage().hung().find(ids[1]);
    const QPoint to = at.canvas().mapFromGlobal(other->mapToGlobal(other->rect().center()));
    at.drag(at.middleOf(quote), to);
    EXPECT_EQ(at.piece(quote).panel, ids[1]);
    const PieceId next = at.first(PieceKind::Quote);
    at.clickOn(next);
    at.canvas().setFocus();
    at.key(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(at.piece(next).panel, ids[1]);
    at.session().undo();
    EXPECT_EQ(at.piece(next).panel, ids[0]);
}

TEST(Strip, TakesASlipDroppedOnAHungPanel)
{
    WindowAtWork at;
    twoPanels(at);
    const auto ids = panelIds(at);
    const std::size_t before = piecesOf(at.book(), ids[1]).size();
    HungPanel* hung = at.compose().stage().hung().find(ids[1]);
    QMimeData mime;
    mime.setData(QString::fromLatin1(kDrawerMime),
        toBytes({DrawerItem::Kind::Note, std::int64_t(PieceKind::Credits)}));
    const QPoint middle = hung->rect().center();
    QDragEnterEvent enter(middle, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(hung, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(middle, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(hung, &drop);
    at.settle();
    EXPECT_EQ(piecesOf(at.book(), ids[1]).size(), before + 1);
}

} // namespace
} // namespace wainscot::ui
