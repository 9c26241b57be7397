// Names of pieces where there is little room.
#include "app/ui/session/piece_edits.h"

#include <gtest/gtest.h>

using wainscot::ui::beginningOf;

TEST(BeginningOf, KeepsShortTextsAsTheyAre)
{
    EXPECT_EQ(beginningOf(QStringLiteral("Dogs."), 5), QStringLiteral("Dogs."));
}

TEST(BeginningOf, EndsAfterAWholeWord)
{
    EXPECT_EQ(beginningOf(QStringLiteral("White was Monday’s edge"), 20),
        QStringLiteral("White was Monday’s…"));
}

TEST(BeginningOf, CutsAWordThatIsTooLongByItself)
{
    EXPECT_EQ(beginningOf(QStringLiteral("Donaudampfschiff"), 6), QStringLiteral("Donau…"));
}
