// The table for one picture: turning, straightening, covering, what must stay, by mouse and keys.
#include <QAccessible>
#include <QApplication>
#include <QMouseEvent>

#include <gmock/gmock.h>

#include "app/ui/session/picture_edits.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using ::testing::HasSubstr;
using ::testing::SizeIs;

class Table : public WindowAtWork {
public:
    Table()
    {
        propose();
        m_photo = first(PieceKind::Photo);
        clickOn(m_photo);
        key(Qt::Key_O);
        table().waitForPicture();
        settle();
    }
    [[nodiscard]] PictureTable& table() { return compose().stage().pictureTable(); }
    [[nodiscard]] PictureSheet& sheet() { return table().sheet(); }
    [[nodiscard]] PieceId photo() const { return m_photo; }
    [[nodiscard]] const Picture& picture() { return *book().pictures.find(piece(m_photo).picture); }
    void press(const char* name)
    {
        for (Button* button : table().findChildren<Button*>()) {
            if (button->isVisible() && button->text() == QLatin1String(name)) {
                QTest::mouseClick(button, Qt::LeftButton);
                settle();
                return;
            }
        }
        ADD_FAILURE() << "no button " << name;
    }
    void dragOn(PointFraction from, PointFraction to)
    {
        const QPoint start = sheet().toPx(from).toPoint();
        const QPoint end = sheet().toPx(to).toPoint();
        QTest::mousePress(&sheet(), Qt::LeftButton, {}, start);
        for (int step = 1; step <= 5; ++step) {
            const QPointF at = start + QPointF(end - start) * step / 5;
            QMouseEvent move(QEvent::MouseMove,
                at,
                sheet().mapToGlobal(at),
                Qt::NoButton,
                Qt::LeftButton,
                Qt::NoModifier);
            QApplication::sendEvent(&sheet(), &move);
        }
        QTest::mouseRelease(&sheet(), Qt::LeftButton, {}, end);
        settle();
    }

private:
    PieceId m_photo;
};

TEST(PictureTable, OpensByItsKeyAndEscapeLeavesToThePanel)
{
    Table at;
    ASSERT_TRUE(at.table().isVisible());
    EXPECT_FALSE(at.sheet().shown().isNull());
    EXPECT_TRUE(at.sheet().hasFocus());
    at.key(Qt::Key_Escape);
    EXPECT_FALSE(at.table().isVisible());
    EXPECT_TRUE(at.canvas().hasFocus());
    EXPECT_EQ(at.canvas().inHand(), at.photo());
}

TEST(PictureTable, EveryControlHasAName)
{
    Table at;
    for (const char* task : {"Must stay", "Straighten", "Cover"}) {
        at.press(task);
        for (QWidget* widget : at.table().findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus)
                continue;
            QAccessibleInterface* access = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(access, nullptr);
            EXPECT_FALSE(access->text(QAccessible::Name).isEmpty())
                << widget->metaObject()->className();
        }
        EXPECT_FALSE(at.sheet().accessibleDescription().isEmpty());
    }
}

TEST(PictureTable, MarksWhatMustStayAndTheFrameFollows)
{
    Table at;
    at.dragOn({0.7, 0.1}, {0.95, 0.5});
    ASSERT_TRUE(at.picture().mustStay);
    EXPECT_NEAR(at.picture().mustStay->x, 0.7, 0.01);
    EXPECT_NEAR(at.picture().mustStay->height, 0.4, 0.01);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Marked what must stay"));
    at.key(Qt::Key_Right);
    at.key(Qt::Key_Right);
    EXPECT_NEAR(at.picture().mustStay->x, 0.72, 0.011);
    at.key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_NEAR(at.picture().mustStay->height, 0.41, 0.011);
    at.key(Qt::Key_Delete);
    EXPECT_FALSE(at.picture().mustStay);
    at.session().undo();
    EXPECT_TRUE(at.picture().mustStay);
    at.undoAll();
}

TEST(PictureTable, TurnsThePictureWhereverItHangs)
{
    Table at;
    const SizePx before = at.picture().size;
    at.press("Turn to the right");
    EXPECT_EQ(at.picture().size, (SizePx{before.height, before.width}));
    EXPECT_EQ(at.picture().orientation, 6);
    EXPECT_GT(at.sheet().shown().height(), at.sheet().shown().width());
    at.key(Qt::Key_L);
    EXPECT_EQ(at.picture().orientation, 1);
    EXPECT_EQ(at.picture().size, before);
    at.key(Qt::Key_R);
    at.session().undo();
    EXPECT_EQ(at.picture().orientation, 1);
    at.settle();
    // What the panel shows of it is turned as well: the copy for the screen is another.
    EXPECT_FALSE(at.compose().shelf().thumbnail(at.picture()).isNull());
}

TEST(PictureTable, StraightensByFourCornersWithTheResultBeside)
{
    Table at;
    at.press("Straighten");
    const Corners suggested = at.sheet().corners();
    at.dragOn(suggested[0], {0.2, 0.15});
    ASSERT_TRUE(at.picture().treatment.straightening);
    EXPECT_NEAR(at.picture().treatment.straightening->corners[0].x, 0.2, 0.01);
    EXPECT_EQ(at.picture().treatment.straightening->from, (SizePx{900, 600}));
    EXPECT_EQ(at.picture().size,
        straightenedSize(at.picture().treatment.straightening->corners, {900, 600}));
    // One corner by keys is one step of undo.
    at.sheet().setFocus();
    at.key(Qt::Key_Space);
    for (int i = 0; i < 3; ++i)
        at.key(Qt::Key_Down);
    EXPECT_THAT(at.sheet().accessibleDescription().toStdString(), HasSubstr("Corner 2 of 4"));
    EXPECT_NEAR(at.picture().treatment.straightening->corners[1].y, suggested[1].y + 0.03, 0.001);
    at.session().undo();
    EXPECT_EQ(at.picture().treatment.straightening->corners[1], suggested[1]);
    // Corners that cross are put back.
    at.dragOn(at.sheet().corners()[0], {0.99, 0.99});
    EXPECT_NEAR(at.picture().treatment.straightening->corners[0].x, 0.2, 0.01);
    at.press("Leave it as it lies");
    EXPECT_FALSE(at.picture().treatment.straightening);
    EXPECT_EQ(at.picture().size, (SizePx{900, 600}));
}

int far(QRgb a, QRgb b)
{
    return std::abs(qRed(a) - qRed(b)) + std::abs(qGreen(a) - qGreen(b))
        + std::abs(qBlue(a) - qBlue(b));
}

TEST(PictureTable, CoversPartsInEveryCopyOfThePicture)
{
    Table at;
    const QImage open = at.compose().shelf().thumbnail(at.picture());
    at.settle();
    at.press("Cover");
    // Round the edge of the darker field, so that covering changes what is there.
    at.dragOn({0.15, 0.15}, {0.4, 0.5});
    ASSERT_THAT(at.picture().treatment.covered, SizeIs(1));
    EXPECT_EQ(at.picture().treatment.covered[0].cover, Cover::Mosaic);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Covered a part"));
    at.press("Plain");
    EXPECT_EQ(at.picture().treatment.covered[0].cover, Cover::Flat);
    at.press("Oval");
    EXPECT_TRUE(at.picture().treatment.covered[0].oval);
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Changed a cover"));
    at.press("Oval");
    EXPECT_FALSE(at.picture().treatment.covered[0].oval);
    (void)at.compose().shelf().thumbnail(at.picture());
    at.settle();
    const QImage covered = at.compose().shelf().thumbnail(at.picture());
    ASSERT_FALSE(covered.isNull());
    const auto pixel = [](const QImage& image, double x, double y) {
        return image.pixel(int(x * image.width()), int(y * image.height()));
    };
    EXPECT_GT(far(pixel(covered, 0.35, 0.45), pixel(open, 0.35, 0.45)), 20);
    EXPECT_LT(far(pixel(covered, 0.18, 0.18), pixel(covered, 0.37, 0.47)), 8); // plain
    EXPECT_LT(far(pixel(covered, 0.8, 0.8), pixel(open, 0.8, 0.8)), 8);
    // A second one by keys; then both come off again.
    at.sheet().setFocus();
    at.key(Qt::Key_Return);
    EXPECT_THAT(at.picture().treatment.covered, SizeIs(2));
    at.key(Qt::Key_Delete);
    at.key(Qt::Key_Delete);
    EXPECT_THAT(at.picture().treatment.covered, SizeIs(0));
    at.session().undo();
    EXPECT_THAT(at.picture().treatment.covered, SizeIs(1));
}

TEST(PictureTable, EvensTheLightAndShowsItAsItCame)
{
    Table at;
    at.key(Qt::Key_E);
    EXPECT_TRUE(at.picture().treatment.evenLight);
    const QImage even = at.sheet().shown();
    at.key(Qt::Key_B);
    EXPECT_NE(at.sheet().shown(), even);
    at.key(Qt::Key_B);
    EXPECT_EQ(at.sheet().shown(), even);
    at.key(Qt::Key_E);
    EXPECT_FALSE(at.picture().treatment.evenLight);
}

TEST(PictureTable, SaysWhatThePaperGetsAndTheSourceOfTheFloor)
{
    Table at;
    const double ppi = at.compose().desk().pixelsAnInch(at.piece(at.photo()));
    EXPECT_GT(ppi, 1);
    EXPECT_THAT(at.table().facts().toStdString(),
        HasSubstr(QStringLiteral("On paper %1 pixels an inch").arg(qRound(ppi)).toStdString()));
    EXPECT_THAT(at.table().facts().toStdString(), HasSubstr("common practice"));
    at.key(Qt::Key_Escape);
    // Looking nearer takes pixels away, at once.
    at.key(Qt::Key_C);
    for (int i = 0; i < 6; ++i)
        at.key(Qt::Key_Plus);
    EXPECT_NEAR(at.compose().desk().pixelsAnInch(at.piece(at.photo())),
        ppi / at.piece(at.photo()).framing.zoom,
        0.5);
}

TEST(PictureTable, NamesGoIntoTheCaptionOnRequestInPermittedForm)
{
    Table at;
    at.key(Qt::Key_Escape);
    const auto shown = [&at]() -> std::string {
        for (const ClearedPiece& piece : at.compose().desk().drawnPanel()->cleared.pieces()) {
            if (piece.id == at.photo())
                return piece.text.toStdString();
        }
        return {};
    };
    const std::string before = shown();
    EXPECT_FALSE(at.compose().actions().names->isEnabled()); // nobody is in it
    std::vector<ChildId> both;
    for (const auto& [id, child] : at.book().children.rows()) {
        if (child.name.startsWith(QLatin1String("Wren"))
            || child.name.startsWith(QLatin1String("Kofi")))
            both.push_back(id);
    }
    at.compose().desk().setPeople(at.picture().id, {true, both});
    at.settle();
    EXPECT_EQ(shown(), before); // nothing by itself
    at.key(Qt::Key_N);
    EXPECT_THAT(shown(), HasSubstr(before + ": Wren and Kofi"));
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("Names in the caption"));
    // The family takes the name back: the panel follows, the book's caption need not.
    EditBuilder edit(at.book(), QStringLiteral("Permission"));
    Child kofi = *at.book().children.find(both.back());
    kofi.permissions.set(Permission::PhotoWithName, at.session().display()->audience, false);
    edit.put(kofi);
    ASSERT_TRUE(at.session().perform(edit.take()));
    at.settle();
    EXPECT_THAT(shown(), HasSubstr(before + ": Wren and a child"));
    at.key(Qt::Key_N);
    EXPECT_EQ(shown(), before);
    at.undoAll();
}

TEST(PictureTable, ClosesWhenItsPieceGoesAway)
{
    Table at;
    at.compose().desk().takeOff({at.photo()});
    at.settle();
    EXPECT_FALSE(at.table().isVisible());
}

} // namespace
} // namespace wainscot::ui
