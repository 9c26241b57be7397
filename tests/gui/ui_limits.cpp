// Limits of one's own, seams, and pictures out, in the window.
#include <QImage>
#include <QSignalSpy>

#include <gmock/gmock.h>

#include "app/jobs/kept_limits.h"
#include "app/jobs/program_settings.h"
#include "app/ui/hang/limits_dialog.h"
#include "app/ui/hang/pictures_dialog.h"
#include "app/ui/session/sheet_settings.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

const QString kVoiceLine = QStringLiteral("line.voice");

class LimitsAtWork : public ::testing::Test {
protected:
    LimitsAtWork() { forget(); }
    ~LimitsAtWork() override { forget(); }
    static void forget()
    {
        for (const char* key : {"limits", "wall/stands_out", "sheets"})
            ProgramSettings().remove(QString::fromLatin1(key));
    }
    // To look at: WAINSCOT_KEEP=folder keeps how it looks.
    static void keepPicture(QWidget& widget, const char* name)
    {
        const QString folder = qEnvironmentVariable("WAINSCOT_KEEP");
        if (!folder.isEmpty())
            widget.grab().save(folder + u'/' + QString::fromLatin1(name));
    }
    static Finding ofChild(int number)
    {
        Finding finding;
        finding.rule = QStringLiteral("voices.child");
        finding.child = number;
        finding.says = QStringLiteral("Child %1 was heard.").arg(number);
        return finding;
    }
    static Button* buttonCalled(const QWidget& page, const QString& begins)
    {
        for (Button* one : page.findChildren<Button*>()) {
            if (one->text().contains(begins) && one->isVisibleTo(&page))
                return one;
        }
        return nullptr;
    }
};

TEST_F(LimitsAtWork, HaveAFieldForEveryMeasureAndAWayBack)
{
    LimitsDialog dialog({}, kUsualStandOut, kVoiceLine);
    for (const check::LimitRow& row : check::allLimits()) {
        QDoubleSpinBox* field = dialog.field(QString::fromLatin1(row.rule));
        EXPECT_EQ(field != nullptr, check::isMeasure(row)) << row.rule;
        if (field != nullptr) {
            EXPECT_EQ(field->value(), row.value) << row.rule;
        }
    }
    EXPECT_EQ(dialog.changed(), 0);
    dialog.show();
    QDoubleSpinBox* field = dialog.field(kVoiceLine);
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("12"));
    QTest::keyClick(field, Qt::Key_Tab);
    EXPECT_EQ(dialog.changed(), 1);
    EXPECT_EQ(dialog.limits().of(check::Limit::VoiceLine), 12);
    keepPicture(dialog, "limits.png");
    dialog.takeAllAsUsual();
    EXPECT_EQ(dialog.changed(), 0);
    EXPECT_TRUE(dialog.limits().own().empty());
}

TEST_F(LimitsAtWork, AreKeptAndTakeNoNonsense)
{
    check::Limits limits;
    ASSERT_TRUE(limits.set(check::Limit::VoiceLine, 12));
    keepLimits(limits);
    keepStandOut(Mm(30));
    EXPECT_EQ(keptLimits(), limits);
    EXPECT_EQ(keptStandOut(), Mm(30));
    ProgramSettings().setValue(QStringLiteral("limits/line.voice"), QStringLiteral("much"));
    ProgramSettings().setValue(QStringLiteral("limits/no.such"), 3);
    ProgramSettings().setValue(QStringLiteral("limits/permission.piece"), 3);
    ProgramSettings().setValue(QStringLiteral("wall/stands_out"), -4);
    EXPECT_TRUE(keptLimits().own().empty());
    EXPECT_EQ(keptStandOut(), kUsualStandOut);
    keepLimits({});
    EXPECT_TRUE(keptLimits().own().empty());
}

TEST_F(LimitsAtWork, ArePutIntoForceAtOnce)
{
    WindowAtWork at;
    at.propose();
    const auto hears = [&] {
        const auto& findings = at.compose().desk().findings();
        return std::any_of(findings.begin(), findings.end(), [](const Finding& one) {
            return one.rule == kVoiceLine && one.limit == 5;
        });
    };
    EXPECT_FALSE(hears());
    check::Limits limits;
    ASSERT_TRUE(limits.set(check::Limit::VoiceLine, 5));
    at.window().takeLimits(limits, Mm(10));
    EXPECT_TRUE(QTest::qWaitFor(hears, 20000));
    at.window().takeLimits({}, Mm(10));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !hears(); }, 20000));
}

TEST_F(LimitsAtWork, AreAskedForWhereAFindingNamesOne)
{
    WindowAtWork at;
    at.propose();
    at.window().go(Place::Hang);
    CheckPage& page = at.window().hang().check();
    at.window().hang().setTask(HangPlace::Task::Check);
    Finding finding;
    finding.rule = kVoiceLine;
    finding.panel = 1;
    finding.severity = Severity::Note;
    finding.says = QStringLiteral("A long line.");
    finding.source = QStringLiteral("Wainscot's panel style");
    Finding allowed = finding;
    allowed.rule = QStringLiteral("permission.piece");
    allowed.severity = Severity::Stop;
    page.show({finding, allowed});
    at.settle();
    QSignalSpy asked(&page, &CheckPage::limitsAsked);
    int changeable = 0;
    for (Button* one : page.findChildren<Button*>())
        changeable += one->text() == QStringLiteral("Change the limit") ? 1 : 0;
    EXPECT_EQ(changeable, 1) << "what families said is no limit to change";
    Button* change = buttonCalled(page, QStringLiteral("Change the limit"));
    ASSERT_NE(change, nullptr);
    QObject::disconnect(
        &page, &CheckPage::limitsAsked, &at.window(), nullptr); // a dialog would wait
    QTest::mouseClick(change, Qt::LeftButton);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.front().front().toString(), kVoiceLine);
}

TEST_F(LimitsAtWork, SeamsAreFoundForThePaperThatIsSet)
{
    keep(SheetSetting::Paper, QStringLiteral("A4"));
    WindowAtWork at;
    at.propose();
    const auto hears = [&] {
        const auto& findings = at.compose().desk().findings();
        return std::any_of(findings.begin(), findings.end(), [](const Finding& one) {
            return one.rule == QLatin1String("seam.lines") && one.says.contains(u"A4"_qs);
        });
    };
    EXPECT_TRUE(QTest::qWaitFor(hears, 20000));
    at.window().go(Place::Hang);
    at.window().hang().setTask(HangPlace::Task::Check);
    at.settle();
    keepPicture(at.window(), "check.png");
    at.window().hang().setTask(HangPlace::Task::Print);
    at.settle();
    keepPicture(at.window(), "print.png");
    at.window().hang().print().setPaper(QStringLiteral("A0"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !hears(); }, 20000)) << "one sheet holds it";
}

TEST_F(LimitsAtWork, WhatStandsOutFarIsFoundOnTheWall)
{
    WindowAtWork at;
    at.propose();
    at.window().go(Place::Hang);
    at.window().hang().setTask(HangPlace::Task::Wall);
    WallPage& wall = at.window().hang().wall();
    wall.measureWall();
    at.settle();
    wall.proposePlaces();
    const auto found = [&] {
        const auto& findings = wall.view().plan().findings;
        return std::any_of(findings.begin(), findings.end(), [](const Finding& one) {
            return one.rule == QLatin1String("wall.stands_out");
        });
    };
    EXPECT_FALSE(found());
    at.window().takeLimits({}, Mm(120));
    EXPECT_TRUE(found()) << "120 mm, where 100 mm may";
    at.window().takeLimits({}, kUsualStandOut);
    EXPECT_FALSE(found());
}

TEST_F(LimitsAtWork, ManyChildrenWithoutAVoiceAreFolded)
{
    WindowAtWork at;
    at.propose();
    at.window().go(Place::Hang);
    at.window().hang().setTask(HangPlace::Task::Check);
    CheckPage& page = at.window().hang().check();
    std::vector<Finding> findings;
    for (int i = 1; i <= 9; ++i)
        findings.push_back(ofChild(i));
    page.show(findings);
    const auto cards = [&] {
        int count = 0;
        for (const Card* card : page.findChildren<Card*>())
            count += card->isVisibleTo(&page) && card->accessibleName().contains(u"was heard"_qs);
        return count;
    };
    at.settle();
    EXPECT_EQ(cards(), 3);
    keepPicture(at.window(), "check-folded.png");
    Button* rest = buttonCalled(page, QStringLiteral("6 more children"));
    ASSERT_NE(rest, nullptr);
    QTest::mouseClick(rest, Qt::LeftButton);
    at.settle();
    EXPECT_EQ(cards(), 9);
}

TEST_F(LimitsAtWork, PicturesGoOutAsChosen)
{
    WindowAtWork at;
    at.propose();
    const PieceId photo = at.first(PieceKind::Photo);
    PicturesDialog none({}, {});
    EXPECT_FALSE(none.ofPiece().isEnabled());
    EXPECT_FALSE(none.job().piece.isValid());
    PicturesDialog dialog(photo, QStringLiteral("the photo"));
    EXPECT_EQ(dialog.job().piece, photo);
    dialog.show();
    keepPicture(dialog, "pictures.png");
    dialog.width().setValue(640);
    dialog.jpeg().click();
    ExportPictureJob job = dialog.job();
    job.file = at.file(QStringLiteral("one.jpg"));
    at.window().exportPictures(job);
    at.settle();
    EXPECT_EQ(QImage(job.file).width(), 640);
    dialog.ofPanels().click();
    job = dialog.job();
    EXPECT_FALSE(job.piece.isValid());
    job.file = at.file(QStringLiteral("panel.jpg"));
    at.window().exportPictures(job);
    at.settle();
    const QImage panel(job.file);
    EXPECT_EQ(panel.width(), 640);
    EXPECT_NEAR(double(panel.width()) / panel.height(),
        at.session().display()->panelSize.width / at.session().display()->panelSize.height,
        0.01);
}

} // namespace
} // namespace wainscot::ui
