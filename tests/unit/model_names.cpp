#include "core/model/book.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

TEST(Names, OfKindsLeadBackToTheKind)
{
    for (int i = 0; i <= int(PieceKind::Credits); ++i)
        EXPECT_EQ(pieceKindFromName(nameOf(PieceKind(i))), PieceKind(i));
    for (int i = 0; i <= int(Telling::Pointed); ++i)
        EXPECT_EQ(tellingFromName(nameOf(Telling(i))), Telling(i));
    for (int i = 0; i <= int(PromptSign::Question); ++i)
        EXPECT_EQ(promptSignFromName(nameOf(PromptSign(i))), PromptSign(i));
    for (int i = 0; i <= int(FamilyAnswer::Withdrawn); ++i)
        EXPECT_EQ(familyAnswerFromName(nameOf(FamilyAnswer(i))), FamilyAnswer(i));
    for (int i = 0; i <= int(MeetingNoteKind::ChangedMind); ++i)
        EXPECT_EQ(meetingNoteKindFromName(nameOf(MeetingNoteKind(i))), MeetingNoteKind(i));
    for (int i = 0; i <= 1; ++i) {
        EXPECT_EQ(dictationFromName(nameOf(Dictation(i))), Dictation(i));
        EXPECT_EQ(whyNoAnswerFromName(nameOf(WhyNoAnswer(i))), WhyNoAnswer(i));
        EXPECT_EQ(askedFromName(nameOf(Asked(i))), Asked(i));
    }
    for (const PictureKind kind : {PictureKind::Photo, PictureKind::Work})
        EXPECT_EQ(pictureKindFromName(nameOf(kind)), kind);
    for (const Audience audience : kAudiences)
        EXPECT_EQ(audienceFromName(nameOf(audience)), audience);
}

TEST(Names, AreReadInAnyCaseWhereAPersonTypesThem)
{
    EXPECT_EQ(audienceFromName(QStringLiteral(" Families ")), Audience::Families);
    EXPECT_EQ(tellingFromName(QStringLiteral("DREW")), Telling::Drew);
}

TEST(Names, NobodyKnowsAreNothing)
{
    EXPECT_FALSE(audienceFromName(QStringLiteral("everyone")).has_value());
    EXPECT_FALSE(tellingFromName(QString()).has_value());
    EXPECT_FALSE(pieceKindFromName(QStringLiteral("poster")).has_value());
    EXPECT_FALSE(pictureKindFromName(QStringLiteral("film")).has_value());
}

TEST(Prompts, StartAsNoticeThinkWonder)
{
    const PromptSet set = defaultPromptSet();
    ASSERT_EQ(set.prompts.size(), 3U);
    EXPECT_NE(set.find(QStringLiteral(" Notice")), nullptr);
    EXPECT_NE(set.find(QStringLiteral("think")), nullptr);
    EXPECT_NE(set.find(QStringLiteral("WONDER")), nullptr);
    EXPECT_EQ(set.find(QStringLiteral("feel")), nullptr);
}

} // namespace

} // namespace wainscot
