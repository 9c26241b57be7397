// Every kind of panel tried on one experience, and why a kind is not among them.
#include "app/jobs/kinds_job.h"

#include "tests/support/class_book.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <atomic>

namespace wainscot {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

// Seven children answer one question; nobody drew anything.
struct Answers : ClassBook {
    Answers()
    {
        Experience told = *book.experiences.find(experience);
        told.title = QStringLiteral("Shadows");
        PromptSet prompts = defaultPromptSet();
        prompts.id = book.promptSets.newId();
        book.promptSets.put(prompts);
        told.promptSet = prompts.id;
        book.experiences.put(told);
        for (const char* name : {"Ada", "Ben", "Cem", "Dua", "Eli", "Fay", "Gus"}) {
            const QuoteId id = quote(child(name, Permissions::all()),
                QStringLiteral("My shadow is longer than %1 is.").arg(QLatin1String(name)));
            Quote value = *book.quotes.find(id);
            value.prompt = QStringLiteral("think");
            value.on = QDate(2025, 11, 3);
            book.quotes.put(value);
        }
    }

    [[nodiscard]] Result<KindsOutcome> kinds(const JobRun& run = JobRun()) const
    {
        KindsJob job;
        job.asked.experience = QStringLiteral("Shadows");
        job.asked.display = QStringLiteral("Hall");
        return job.run(book, run);
    }
};

std::vector<std::string> plansOf(const KindsOutcome& outcome)
{
    std::vector<std::string> plans;
    for (const KindOfPanel& kind : outcome.kinds)
        plans.push_back(kind.plan.toStdString());
    return plans;
}

TEST(Kinds, AreThoseThatTheMaterialCanFill)
{
    const Answers answers;
    const auto outcome = answers.kinds();
    ASSERT_TRUE(outcome.ok());
    EXPECT_THAT(plansOf(*outcome), Contains("voices"));
    EXPECT_THAT(plansOf(*outcome), Not(Contains("drawing"))) << "nobody drew";
    EXPECT_THAT(outcome->says,
        Contains(::testing::Property(&QString::toStdString, HasSubstr("One drawing"))));
    for (const KindOfPanel& kind : outcome->kinds) {
        EXPECT_FALSE(kind.list.marks.empty()) << kind.plan.toStdString();
        EXPECT_GT(kind.children, 0U) << kind.plan.toStdString();
        EXPECT_TRUE(fits(kind.outcome.edit, answers.book)) << "nothing was changed by trying";
    }
}

TEST(Kinds, HoldASheetForTheDoorOnceThereIsAPhoto)
{
    Answers answers;
    EXPECT_THAT(plansOf(*answers.kinds()), Not(Contains("door")));
    Picture photo = *answers.book.pictures.find(answers.picture(PictureKind::Photo, {true, {}}));
    photo.size = {4000, 3000};
    photo.caption = QStringLiteral("At noon.");
    answers.book.pictures.put(photo);
    const auto outcome = answers.kinds();
    ASSERT_TRUE(outcome.ok());
    const auto door = std::find_if(outcome->kinds.begin(),
        outcome->kinds.end(),
        [](const KindOfPanel& kind) { return kind.plan == QLatin1String("door"); });
    ASSERT_NE(door, outcome->kinds.end());
    EXPECT_EQ(door->children, 2U);
    EXPECT_TRUE(door->outcome.droppedWishes.empty());
}

TEST(Kinds, StopWhenAskedTo)
{
    const Answers answers;
    const std::atomic<bool> cancel{true};
    JobRun run;
    run.cancel = &cancel;
    const auto outcome = answers.kinds(run);
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.error().code, ErrorCode::Cancelled);
}

TEST(Kinds, SayWhyThereAreNone)
{
    const ClassBook empty;
    KindsJob job;
    job.asked.experience = QStringLiteral("Nothing of that name");
    job.asked.display = QStringLiteral("Hall");
    const auto outcome = job.run(empty.book, JobRun());
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
