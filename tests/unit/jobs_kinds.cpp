// Every kind of panel tried on one experience, and why a kind is not among them.
#include "app/jobs/kinds_job.h"

#include "tests/support/class_book.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <atomic>
#include <map>

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

// A seed and what it became, a week later; nothing between.
struct Bean : ClassBook {
    Bean()
    {
        Experience told = *book.experiences.find(experience);
        told.title = QStringLiteral("The bean");
        book.experiences.put(told);
        const ChildId ada = child("Ada", Permissions::all());
        const ChildId ben = child("Ben", Permissions::all());
        first = seen(3, ada, "It sleeps.");
        last = seen(12, ada, "It stood up and took its coat off.");
        says(12, ben, "Now it is looking for the window.");
    }
    QuoteId says(int day, ChildId who, const char* words)
    {
        Quote value = *book.quotes.find(quote(who, QString::fromUtf8(words)));
        value.on = QDate(2025, 11, day);
        book.quotes.put(value);
        return value.id;
    }
    PictureId seen(int day, ChildId who, const char* words)
    {
        says(day, who, words);
        Picture value = *book.pictures.find(picture(PictureKind::Photo, {true, {}}));
        value.size = {4000, 3000};
        value.caption = QStringLiteral("On the sill.");
        value.captured = CaptureTime{QDateTime(QDate(2025, 11, day), QTime(9, 0)), std::nullopt};
        book.pictures.put(value);
        return value.id;
    }
    PictureId first;
    PictureId last;
};

TEST(Kinds, HoldBeforeAndAfterOfTwoDaysFarApart)
{
    Bean bean;
    ArrangeJob job;
    job.experience = QStringLiteral("The bean");
    job.display = QStringLiteral("Hall");
    const auto arranged = job.run(bean.book, JobRun());
    ASSERT_TRUE(arranged.ok());
    const auto* outcome = std::get_if<ArrangeOutcome>(&*arranged);
    ASSERT_NE(outcome, nullptr);
    EXPECT_EQ(outcome->display.plan, QStringLiteral("before"));
    double then = 0;
    double now = 0;
    for (const ArrangedPiece& one : outcome->pieces) {
        if (one.piece.picture == bean.first)
            then = one.piece.cell.areaMm2();
        if (one.piece.picture == bean.last)
            now = one.piece.cell.areaMm2();
    }
    EXPECT_GT(then, 0);
    EXPECT_GT(now, 2 * then);
    EXPECT_TRUE(outcome->droppedWishes.empty());
}

TEST(Kinds, HoldNoBeforeAndAfterOfOneDay)
{
    Bean bean;
    for (const auto& [id, quote] : std::map(bean.book.quotes.rows())) {
        Quote same = quote;
        same.on = QDate(2025, 11, 3);
        bean.book.quotes.put(same);
    }
    ArrangeJob job;
    job.experience = QStringLiteral("The bean");
    job.display = QStringLiteral("Hall");
    job.plan = QStringLiteral("before");
    const auto arranged = job.run(bean.book, JobRun());
    ASSERT_FALSE(arranged.ok());
    EXPECT_THAT(arranged.error().detail.toStdString(), HasSubstr("two days"));
}

// One child asks, page by page.
TEST(Kinds, HoldABookOfOneChildsQuestions)
{
    ClassBook asks;
    Experience told = *asks.book.experiences.find(asks.experience);
    told.title = QStringLiteral("Ice");
    asks.book.experiences.put(told);
    const ChildId ada = asks.child("Ada", Permissions::all());
    for (const char* words : {"Where does the cold go?",
             "Is it tired?",
             "It is hard.",
             "Does it remember the river?",
             "Who put the air in?"})
        asks.quote(ada, QString::fromUtf8(words));
    ArrangeJob job;
    job.experience = QStringLiteral("Ice");
    job.display = QStringLiteral("Book");
    job.panels = 2;
    job.panelSize = {Mm(297), Mm(420)};
    job.readingDistance = Mm(1000);
    const auto arranged = job.run(asks.book, JobRun());
    ASSERT_TRUE(arranged.ok());
    const auto* outcome = std::get_if<ArrangeOutcome>(&*arranged);
    ASSERT_NE(outcome, nullptr);
    EXPECT_EQ(outcome->display.plan, QStringLiteral("questions"));
    EXPECT_EQ(outcome->panels, 2);
    std::map<int, int> asked;
    for (const ArrangedPiece& one : outcome->pieces) {
        if (const Quote* quote = asks.book.quotes.find(one.piece.quote)) {
            ++asked[one.panel];
            EXPECT_EQ(quote->child, ada);
        }
    }
    EXPECT_EQ(asked.size(), 2U) << "each page has words";
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
