// A withdrawn permission shows at once which files made of the book hold what may not be seen.
#include "app/jobs/made_files.h"
#include "app/jobs/sheets_job.h"
#include "tests/support/class_book.h"

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

const QDate kDay(2026, 12, 18);

class FilesMade : public ::testing::Test {
protected:
    FilesMade()
    {
        ada = m_class.child("Ada Marsh", Permissions::all());
        ben = m_class.child("Ben Oak", Permissions::all());
        said = m_class.quote(ada, QStringLiteral("it gos drip"));
        photo = m_class.picture(PictureKind::Photo, {true, {ben}});
        hall = m_class.display(Audience::Building);
        m_class.hang(hall, said);
        m_class.hang(hall, photo);
        Experience happened = *m_class.book.experiences.find(m_class.experience);
        happened.on = QDate(2026, 11, 2);
        m_class.book.experiences.put(happened);
    }

    [[nodiscard]] MadeFile wall() const
    {
        const Display& display = *m_class.book.displays.find(hall);
        const PermissionRules rules(m_class.book, display, kDay);
        std::vector<ClearedPanel> panels;
        const auto hung = panelsOf(m_class.book, hall);
        panels.reserve(hung.size());
        for (const Panel* panel : hung)
            panels.push_back(rules.clear(*panel));
        return madeFileOf(m_class.book,
            display,
            panels,
            MadeFileKind::Panels,
            QStringLiteral("somewhere/hall.pdf"),
            kDay);
    }

    [[nodiscard]] MadeFile term() const
    {
        const auto cleared = ClearedTerm::of(
            m_class.book, Audience::Families, QDate(2026, 9, 1), QDate(2026, 12, 18), kDay);
        return madeFileOf(cleared, QStringLiteral("out/autumn.pdf"));
    }

    // Ben is seen beside the first question.
    [[nodiscard]] ClearedSheets sheets()
    {
        PromptSet set = defaultPromptSet();
        set.id = m_class.book.promptSets.newId();
        set.prompts.front().picture = photo;
        m_class.book.promptSets.put(set);
        Experience happened = *m_class.book.experiences.find(m_class.experience);
        happened.promptSet = set.id;
        m_class.book.experiences.put(happened);
        return ClearedSheets::of(m_class.book, m_class.experience, {}, {}, kDay);
    }

    void withdraw(ChildId who, Permission what, Audience audience)
    {
        Child child = m_class.at(who);
        child.permissions.set(what, audience, false);
        m_class.book.children.put(child);
    }

    [[nodiscard]] QStringList outdated(
        const std::vector<MadeFile>& made, const QString& child = {}) const
    {
        const auto all = OutdatedFilesJob{child}.run(m_class.book, made, {});
        EXPECT_TRUE(all.ok());
        QStringList lines;
        for (const OutdatedFile& one : *all) {
            EXPECT_FALSE(one.why.isEmpty());
            EXPECT_FALSE(one.children.empty());
            lines << inWords(one.file);
        }
        return lines;
    }

    ClassBook m_class;
    ChildId ada;
    ChildId ben;
    QuoteId said;
    PictureId photo;
    DisplayId hall;
};

TEST_F(FilesMade, AreRememberedByWhatIsInThemAndWithoutTheirFolder)
{
    const MadeFile made = wall();
    EXPECT_EQ(made.name, QStringLiteral("hall.pdf"));
    EXPECT_EQ(made.audience, Audience::Building);
    EXPECT_THAT(made.displays, ElementsAre(hall));
    EXPECT_THAT(made.words, ElementsAre(said));
    EXPECT_THAT(made.pictures, ElementsAre(photo));
    EXPECT_EQ(made.named.count(ada), 1U) << "she stands under her words";
    const MadeFile kept = term();
    EXPECT_EQ(kept.name, QStringLiteral("autumn.pdf"));
    EXPECT_THAT(kept.words, ElementsAre(said));
    EXPECT_THAT(kept.pictures, ElementsAre(photo));
    EXPECT_THAT(kept.displays, ElementsAre(hall));
    EXPECT_THAT(kept.experiences, ElementsAre(m_class.experience));
}

TEST_F(FilesMade, HoldNoWordsThatWereNotAllowed)
{
    withdraw(ada, Permission::Words, Audience::Building);
    withdraw(ada, Permission::Words, Audience::Families);
    EXPECT_THAT(wall().words, IsEmpty());
    EXPECT_THAT(term().words, IsEmpty());
}

TEST_F(FilesMade, AreMadeAnewWhenTheirAudienceMayNotSeeAllOfThem)
{
    const std::vector<MadeFile> made{wall(), term()};
    EXPECT_THAT(outdated(made), IsEmpty());
    withdraw(ada, Permission::Words, Audience::Families);
    EXPECT_THAT(outdated(made),
        ElementsAre(QStringLiteral("the term's file autumn.pdf of 18 December 2026")));
    withdraw(ben, Permission::Photo, Audience::Building);
    EXPECT_EQ(outdated(made).size(), 2);
    EXPECT_THAT(outdated(made, QStringLiteral("Ben Oak")),
        ElementsAre(QStringLiteral("the PDF hall.pdf of 18 December 2026")));
    EXPECT_THAT(outdated({wall(), term()}), IsEmpty()) << "made anew it is as it may be";
}

TEST_F(FilesMade, AreMadeAnewWhenANameMayNotBeReadAnyMore)
{
    const std::vector<MadeFile> made{wall()};
    withdraw(ada, Permission::FirstName, Audience::Building);
    EXPECT_EQ(outdated(made).size(), 1);
    EXPECT_THAT(outdated(made, QStringLiteral("Ben Oak")), IsEmpty());
}

TEST_F(FilesMade, OnPaperAreTakenDownWhenTheirAudienceMayNotSeeAllOfThem)
{
    MadeFile printed = wall();
    printed.kind = MadeFileKind::PrintedPanels;
    printed.name = QStringLiteral("Hall");
    withdraw(ben, Permission::Photo, Audience::Building);
    EXPECT_THAT(outdated({printed}), ElementsAre(inWords(printed)));
    EXPECT_EQ(whatToDo(printed),
        QStringLiteral("The panels \"Hall\" printed on 18 December 2026: take them down and print "
                       "them anew."));
}

// The list shows the panels in small; each audience's answer counts for what hangs for it.
TEST_F(FilesMade, ToHangByAreThrownAwayWhenAPanelMayNotBeSeenSo)
{
    const DisplayId evening = m_class.display(Audience::Families);
    m_class.hang(evening, said);
    Wall wall;
    wall.name = QStringLiteral("Corridor");
    for (const DisplayId display : {hall, evening})
        wall.panels.push_back({panelsOf(m_class.book, display).front()->id, {}});
    wall.panels.push_back({PanelId(999), {}}); // no longer in the book
    const auto made = printedHangingList(m_class.book, wall, kDay);
    ASSERT_EQ(made.size(), 2U);
    const auto of = [&](Audience audience) -> const MadeFile& {
        return made[0].audience == audience ? made[0] : made[1];
    };
    EXPECT_THAT(of(Audience::Building).pictures, ElementsAre(photo));
    EXPECT_THAT(of(Audience::Families).pictures, IsEmpty());
    EXPECT_THAT(of(Audience::Families).words, ElementsAre(said));
    EXPECT_THAT(outdated(made), IsEmpty());
    withdraw(ben, Permission::Photo, Audience::Building);
    EXPECT_THAT(outdated(made),
        ElementsAre(
            QStringLiteral("the hanging list of \"Corridor\", printed on 18 December 2026")));
    EXPECT_EQ(whatToDo(of(Audience::Building)),
        QStringLiteral("The hanging list of \"Corridor\", printed on 18 December 2026: throw it "
                       "away and print it anew."));
    withdraw(ada, Permission::Words, Audience::Families);
    EXPECT_EQ(outdated(made).size(), 2);
}

TEST_F(FilesMade, ToAnswerOnTellWhoIsNamedAndSeenOnThem)
{
    const MadeFile made = madeFileOf(
        m_class.book, sheets(), MadeFileKind::AnswerSheets, QStringLiteral("out/rain.pdf"), kDay);
    EXPECT_EQ(made.name, QStringLiteral("rain.pdf"));
    EXPECT_EQ(made.audience, Audience::Classroom);
    EXPECT_THAT(made.experiences, ElementsAre(m_class.experience));
    EXPECT_THAT(made.pictures, ElementsAre(photo));
    EXPECT_THAT(made.named, ElementsAre(ada, ben));
    EXPECT_THAT(made.words, IsEmpty());
    EXPECT_THAT(outdated({made}), IsEmpty());
    withdraw(ada, Permission::FirstName, Audience::Classroom);
    EXPECT_THAT(outdated({made}, QStringLiteral("Ada Marsh")),
        ElementsAre(QStringLiteral("the sheets to answer on rain.pdf of 18 December 2026")));
    EXPECT_THAT(outdated({made}, QStringLiteral("Ben Oak")), IsEmpty());
    withdraw(ben, Permission::Photo, Audience::Classroom);
    EXPECT_EQ(outdated({made}, QStringLiteral("Ben Oak")).size(), 1);
    const MadeFile anew = madeFileOf(
        m_class.book, sheets(), MadeFileKind::AnswerSheets, QStringLiteral("rain.pdf"), kDay);
    EXPECT_THAT(outdated({anew}), IsEmpty()) << "made anew it is as it may be";
}

TEST_F(FilesMade, OfEverythingAreToldOnlyWhenAChildIsErased)
{
    const std::vector<MadeFile> made{
        madeFileOf(MadeFileKind::PackedBook, QStringLiteral("stick/class.zip"), kDay), wall()};
    withdraw(ada, Permission::Words, Audience::Families);
    EXPECT_THAT(outdated(made), IsEmpty());
    const ChildId cem = m_class.child("Cem Reed", Permissions::all());
    EXPECT_THAT(filesThatHold(m_class.book, made, cem),
        ElementsAre(QStringLiteral("the packed book class.zip of 18 December 2026")));
    EXPECT_EQ(filesThatHold(m_class.book, made, ada).size(), 2);
}

TEST_F(FilesMade, AreAskedForSomebodyWhoIsThere)
{
    EXPECT_EQ(OutdatedFilesJob{QStringLiteral("Nobody")}.run(m_class.book, {}, {}).error().code,
        ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
