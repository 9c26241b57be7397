// The window from right to left, and with large text: every control whole, none over another, and
// each where its mirror image was.
#include <QApplication>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>

#include <gmock/gmock.h>

#include <map>
#include <set>

#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

// px. The toolkit turns no margins round, and lists have a unit more of it at their start.
constexpr int kHair = 4;

bool scrolls(const QWidget* widget)
{
    for (const QWidget* up = widget->parentWidget(); up != nullptr; up = up->parentWidget()) {
        if (qobject_cast<const QAbstractScrollArea*>(up) != nullptr)
            return true;
    }
    return false;
}

QRect inWindow(const QWidget& control, const QWidget& window)
{
    return {control.mapTo(&window, QPoint(0, 0)), control.size()};
}

std::vector<QWidget*> controlsOf(QWidget& window)
{
    std::vector<QWidget*> controls;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        const bool control = qobject_cast<QAbstractButton*>(widget) != nullptr
            || qobject_cast<QLineEdit*>(widget) != nullptr;
        const bool ofToolkit = widget->objectName().startsWith(QLatin1String("qt_"));
        if (control && !ofToolkit && widget->isVisible() && !widget->visibleRegion().isEmpty())
            controls.push_back(widget);
    }
    return controls;
}

std::string nameOf(const QWidget& control)
{
    const QString name = control.accessibleName().isEmpty() ? control.property("text").toString()
                                                            : control.accessibleName();
    return (QString::fromLatin1(control.metaObject()->className()) + QLatin1String(": ") + name)
        .toStdString();
}

// What scrolls may be cut by the edge of its area; everything else is whole.
void expectWhole(QWidget& window, const std::string& where)
{
    for (const QWidget* control : controlsOf(window)) {
        if (!scrolls(control)) {
            EXPECT_EQ(control->visibleRegion().boundingRect(), control->rect())
                << where << ", cut off: " << nameOf(*control);
        }
    }
}

void expectApart(QWidget& window, const std::string& where)
{
    const std::vector<QWidget*> controls = controlsOf(window);
    for (std::size_t i = 0; i < controls.size(); ++i) {
        for (std::size_t j = i + 1; j < controls.size(); ++j) {
            if (controls[i]->isAncestorOf(controls[j]) || controls[j]->isAncestorOf(controls[i]))
                continue;
            const QRect both = inWindow(*controls[i], window) & inWindow(*controls[j], window);
            EXPECT_FALSE(both.width() > kHair && both.height() > kHair)
                << where << ": " << nameOf(*controls[i]) << " lies over " << nameOf(*controls[j]);
        }
    }
}

using Seen = std::map<std::string, QRect>;

// By name; what two controls are called by is left out.
Seen seenIn(QWidget& window)
{
    Seen seen;
    std::set<std::string> twice;
    for (const QWidget* control : controlsOf(window)) {
        const std::string name = nameOf(*control);
        if (!seen.emplace(name, inWindow(*control, window)).second)
            twice.insert(name);
    }
    for (const std::string& name : twice)
        seen.erase(name);
    return seen;
}

// Goes through every place and its tasks with a panel and a piece in hand.
template <class Look> void walk(WindowAtWork& at, Look look)
{
    at.propose();
    at.clickOn(at.first(PieceKind::Photo));
    look("Compose");
    at.window().go(Place::Gather);
    for (int part = 0; part < kGatherParts; ++part) {
        at.window().gather().go(GatherPart(part));
        at.settle();
        look("Gather " + std::to_string(part));
    }
    at.window().go(Place::Listen);
    for (int task = 0; task < 3; ++task) {
        at.window().listen().show(ListenPlace::Task(task));
        at.settle();
        look("Listen " + std::to_string(task));
    }
    at.window().go(Place::Hang);
    for (int task = 0; task < 3; ++task) {
        at.window().hang().setTask(HangPlace::Task(task));
        at.settle();
        look("Hang " + std::to_string(task));
    }
    at.window().go(Place::Keep);
    at.settle();
    look("Keep");
}

class FromTheRight {
public:
    FromTheRight() { QApplication::setLayoutDirection(Qt::RightToLeft); }
    ~FromTheRight() { QApplication::setLayoutDirection(Qt::LeftToRight); }
    FromTheRight(const FromTheRight&) = delete;
    FromTheRight& operator=(const FromTheRight&) = delete;
};

TEST(Mirrored, EveryControlStandsWhereItsMirrorImageWas)
{
    std::map<std::string, Seen> usual;
    {
        WindowAtWork at;
        walk(at, [&](const std::string& where) { usual[where] = seenIn(at.window()); });
    }
    const FromTheRight mirrored;
    WindowAtWork at;
    int compared = 0;
    walk(at, [&](const std::string& where) {
        for (const auto& [name, now] : seenIn(at.window())) {
            const auto before = usual[where].find(name);
            if (before == usual[where].end())
                continue;
            ++compared;
            EXPECT_NEAR(now.left(), at.window().width() - before->second.right() - 1, kHair)
                << where << ": " << name;
            EXPECT_NEAR(now.top(), before->second.top(), kHair) << where << ": " << name;
        }
    });
    EXPECT_GT(compared, 150);
}

TEST(Mirrored, NoControlIsCutOffOrLiesOverAnother)
{
    const FromTheRight mirrored;
    WindowAtWork at;
    walk(at, [&](const std::string& where) {
        expectWhole(at.window(), where);
        expectApart(at.window(), where);
    });
}

class LargeText {
public:
    LargeText()
        : m_usual(QApplication::font())
    {
        QFont large = m_usual;
        large.setPointSizeF(1.5 * m_usual.pointSizeF());
        QApplication::setFont(large);
    }
    ~LargeText() { QApplication::setFont(m_usual); }
    LargeText(const LargeText&) = delete;
    LargeText& operator=(const LargeText&) = delete;

private:
    QFont m_usual;
};

TEST(LargeText, NoControlIsCutOffOrLiesOverAnother)
{
    const LargeText large;
    WindowAtWork at;
    walk(at, [&](const std::string& where) {
        expectWhole(at.window(), where);
        expectApart(at.window(), where);
    });
}

// The bar beside many ways covers none of them.
TEST(LargeText, ShowsEveryKindOfPanelToItsEdge)
{
    const LargeText large;
    WindowAtWork at;
    at.propose();
    at.compose().actions().kinds->trigger();
    at.settle();
    PanelChoice& choice = at.compose().stage().choice();
    const auto* area = choice.findChild<QScrollArea*>();
    ASSERT_NE(area, nullptr);
    ASSERT_TRUE(area->verticalScrollBar()->isVisible());
    for (int i = 0; i < choice.count(); ++i) {
        const QAbstractButton* way = choice.way(i);
        const int left = way->mapTo(area->viewport(), QPoint()).x();
        EXPECT_GE(left, 0) << way->text().toStdString();
        EXPECT_LE(left + way->width(), area->viewport()->width()) << way->text().toStdString();
    }
}

TEST(LargeText, LeavesTheWallTheMostRoom)
{
    const LargeText large;
    WindowAtWork at;
    at.window().go(Place::Hang);
    at.window().hang().setTask(HangPlace::Task::Wall);
    at.window().hang().wall().measureWall();
    at.settle();
    const WallPage& page = at.window().hang().wall();
    EXPECT_GE(page.view().height(), page.height() / 2);
}

// What can be done while words are taken down goes below the ticks instead of losing its words.
TEST(LargeText, LeavesTheWordsOfCaptureWhole)
{
    const LargeText large;
    WindowAtWork at;
    at.window().go(Place::Gather);
    at.window().gather().go(GatherPart::Words);
    at.settle();
    int buttons = 0;
    for (const Button* button : at.window().gather().words().findChildren<Button*>()) {
        if (!button->isVisible())
            continue;
        ++buttons;
        EXPECT_GE(button->width(), button->sizeHint().width()) << button->text().toStdString();
    }
    EXPECT_GE(buttons, 8);
}

} // namespace
} // namespace wainscot::ui
