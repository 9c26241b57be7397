// Step back: the panel from where people stand.
#include <QWheelEvent>

#include <algorithm>

#include <gmock/gmock.h>

#include "app/jobs/program_settings.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using wall::Legibility;

// As on the first evening: nothing is remembered.
StepBack& open(WindowAtWork& at)
{
    ProgramSettings().remove(QStringLiteral("stepBack"));
    at.propose();
    at.compose().actions().stepBack->trigger();
    return at.compose().stage().stepBack();
}

auto countOf(const StepBack& view, Legibility legibility)
{
    return std::count_if(view.texts().begin(), view.texts().end(), [&](const SeenText& text) {
        return text.legibility == legibility;
    });
}

TEST(StepBackView, OpensAtTwiceTheReadingDistanceAndLeavesOnEscape)
{
    WindowAtWork at;
    StepBack& view = open(at);
    EXPECT_TRUE(view.isVisible());
    EXPECT_EQ(view.standing().distance, 2 * at.session().display()->readingDistance);
    EXPECT_TRUE(view.walk().hasFocus());
    at.key(Qt::Key_Escape);
    EXPECT_FALSE(view.isVisible());
    EXPECT_TRUE(at.canvas().hasFocus());
}

TEST(StepBackView, ReadsLessTheFartherOneWalks)
{
    WindowAtWork at;
    StepBack& view = open(at);
    while (view.walk().value() > 750)
        at.key(Qt::Key_Left);
    EXPECT_EQ(countOf(view, Legibility::Gone), 0);
    const auto near = countOf(view, Legibility::Easy);
    EXPECT_GT(near, 0);
    at.key(Qt::Key_End);
    EXPECT_EQ(view.standing().distance, Mm(8000));
    EXPECT_LT(countOf(view, Legibility::Easy), near);
    const auto far = countOf(view, Legibility::Gone);
    view.setSight(3);
    EXPECT_GT(countOf(view, Legibility::Gone), far) << "weaker sight loses more";
}

TEST(StepBackView, ShowsThePanelSmallerFromFarther)
{
    WindowAtWork at;
    StepBack& view = open(at);
    at.key(Qt::Key_End);
    ASSERT_NEAR(view.picture().magnified(), 1, 1e-9);
    const double far = view.picture().panelOutline().boundingRect().width();
    view.walk().setValue(4000);
    EXPECT_NEAR(view.picture().panelOutline().boundingRect().width(), 2 * far, far * 0.02);
}

TEST(StepBackView, BlursForWeakerSight)
{
    WindowAtWork at;
    StepBack& view = open(at);
    at.compose().shelf().waitForAll();
    const auto roughness = [&] {
        const QImage seen = view.picture().grab().toImage();
        const QRect panel = view.picture().panelOutline().boundingRect().toRect();
        double sum = 0;
        for (int y = panel.top() + 2; y < panel.bottom() - 2; ++y) {
            for (int x = panel.left() + 2; x < panel.right() - 2; ++x) {
                const int step = qGray(seen.pixel(x, y)) - qGray(seen.pixel(x + 1, y));
                sum += step * step;
            }
        }
        return sum;
    };
    // Without marks, which stay sharp.
    const DisplayList& list = at.compose().desk().drawnPanel()->list;
    wall::Standing standing = view.standing();
    standing.distance = Mm(3000);
    view.picture().setView(&list, standing, {});
    const double sharp = roughness();
    standing.acuity = 0.4;
    view.picture().setView(&list, standing, {});
    EXPECT_LT(roughness(), sharp * 0.5);
}

TEST(StepBackView, TakesATextInHandThatCannotBeRead)
{
    WindowAtWork at;
    StepBack& view = open(at);
    at.key(Qt::Key_End);
    const auto lost = std::find_if(view.texts().begin(), view.texts().end(), [](const SeenText& t) {
        return t.legibility == Legibility::Gone;
    });
    ASSERT_NE(lost, view.texts().end());
    const PieceId piece = lost->piece;
    Button* row = nullptr;
    for (Button* button : view.findChildren<Button*>())
        if (row == nullptr && button->detail().contains(QStringLiteral("mm tall")))
            row = button;
    ASSERT_NE(row, nullptr);
    QTest::mouseClick(row, Qt::LeftButton);
    EXPECT_FALSE(view.isVisible());
    EXPECT_EQ(at.canvas().inHand(), piece);
}

TEST(StepBackView, RemembersTheEyes)
{
    WindowAtWork at;
    StepBack& view = open(at);
    view.setEyes(3);
    view.setMiddle(Mm(1500));
    view.close();
    at.compose().actions().stepBack->trigger();
    EXPECT_EQ(view.standing().middle, Mm(1500));
    EXPECT_GT(view.standing().eyes, Mm(1500));
}

} // namespace
} // namespace wainscot::ui
