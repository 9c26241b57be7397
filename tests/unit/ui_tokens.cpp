#include "app/ui/kit/tokens.h"

#include <gtest/gtest.h>

namespace wainscot::ui {
namespace {

// WCAG 2.1: text 4.5 (1.4.3), borders of controls and marks 3 (1.4.11).
TEST(Tokens, TextAndMarksStandOutOnEveryGround)
{
    for (const Tokens& t : {lightTokens(), darkTokens()}) {
        for (const QColor& ground : {t.window, t.wall, t.card, t.field, t.slip}) {
            EXPECT_GE(contrastRatio(t.ink, ground), 4.5);
            EXPECT_GE(contrastRatio(t.quiet, ground), 4.5);
            EXPECT_GE(contrastRatio(t.edge, ground), 3.0);
            EXPECT_GE(contrastRatio(t.accent, ground), 3.0);
            EXPECT_GE(contrastRatio(t.hand, ground), 3.0);
        }
        EXPECT_GE(contrastRatio(t.onAccent, t.accent), 4.5);
        EXPECT_GE(contrastRatio(t.ink, t.accentTint), 4.5);
        EXPECT_GE(contrastRatio(t.stop, t.stopTint), 4.5);
        EXPECT_GE(contrastRatio(t.look, t.lookTint), 4.5);
        EXPECT_GE(contrastRatio(t.note, t.noteTint), 4.5);
        EXPECT_GE(contrastRatio(t.look, t.slip), 4.5);
    }
    EXPECT_GE(contrastRatio(QColor(kHandOnPaper), Qt::white), 4.5);
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21.0, 1e-9);
}

TEST(Tokens, FollowALightOrDarkSystemAndKeepAHighContrastOne)
{
    QPalette system;
    const QColor usual(0x30, 0x8c, 0xc6);
    system.setColor(QPalette::Highlight, usual);
    system.setColor(QPalette::Window, QColor(0xef, 0xef, 0xef));
    system.setColor(QPalette::WindowText, Qt::black);
    EXPECT_FALSE(tokensFor(system, usual).dark);
    system.setColor(QPalette::Window, QColor(0x20, 0x20, 0x20));
    system.setColor(QPalette::WindowText, QColor(0xdd, 0xdd, 0xdd));
    EXPECT_TRUE(tokensFor(system, usual).dark);
    system.setColor(QPalette::Window, Qt::black);
    system.setColor(QPalette::WindowText, Qt::yellow);
    system.setColor(QPalette::Highlight, Qt::cyan);
    EXPECT_EQ(tokensFor(system, usual).ink, QColor(Qt::yellow));
    EXPECT_EQ(tokensFor(system, usual).accent, QColor(Qt::cyan));
}

} // namespace
} // namespace wainscot::ui
