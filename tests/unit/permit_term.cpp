// What goes into a term's file has passed the rules as they stand today.
#include "core/permit/cleared_term.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <type_traits>

namespace wainscot {

namespace {

static_assert(!std::is_default_constructible_v<ClearedTerm>);

const QDate kFrom{2025, 9, 1};
const QDate kTo{2025, 12, 19};

class TermForFamilies : public ::testing::Test {
protected:
    TermForFamilies()
    {
        PromptSet prompts = defaultPromptSet();
        prompts.id = m_made.book.promptSets.newId();
        m_made.book.promptSets.put(prompts);
        Experience happened = *m_made.book.experiences.find(m_made.experience);
        happened.on = QDate(2025, 11, 3);
        happened.promptSet = prompts.id;
        happened.interpretation = QStringLiteral("Ines saw the edge first.");
        m_made.book.experiences.put(happened);
    }
    QuoteId said(ChildId who, const char* words, const char* prompt = "notice")
    {
        const QuoteId id = m_made.quote(who, QString::fromUtf8(words));
        Quote quote = *m_made.book.quotes.find(id);
        quote.prompt = QString::fromLatin1(prompt);
        m_made.book.quotes.put(quote);
        return id;
    }
    [[nodiscard]] ClearedTerm term(Audience audience = Audience::Families) const
    {
        return ClearedTerm::of(m_made.book, audience, kFrom, kTo, kTestDay);
    }
    [[nodiscard]] static QStringList wordsIn(const ClearedTerm& term)
    {
        QStringList all;
        for (const ClearedExperience& experience : term.experiences()) {
            for (const ClearedAnswers& answers : experience.answers) {
                for (const ClearedPiece& piece : answers.words)
                    all << piece.text;
            }
        }
        return all;
    }

    ClassBook m_made;
    ChildId m_ines = m_made.child("Ines",
        only(Audience::Families, {Permission::Words, Permission::FirstName, Permission::Photo}));
    ChildId m_tom = m_made.child("Tom", only(Audience::Building, {Permission::Words}));
};

TEST_F(TermForFamilies, HoldsOnlyWordsItsAudienceMayRead)
{
    said(m_ines, "It shrank.");
    said(m_tom, "It hid.");
    EXPECT_EQ(wordsIn(term()), QStringList{QStringLiteral("It shrank.")});
    EXPECT_EQ(wordsIn(term(Audience::Building)), QStringList{QStringLiteral("It hid.")});
    ASSERT_EQ(term().leftOut().size(), 1U);
    EXPECT_EQ(term().leftOut().front().what, QStringLiteral("quote"));
}

TEST_F(TermForFamilies, SpeaksTheLanguageOfTheBook)
{
    m_made.book.info.language = QStringLiteral("es");
    const ChildId mei = m_made.child("Mei", only(Audience::Families, {Permission::Words}));
    said(mei, "Soy Mei.");
    const ClearedTerm made = term();
    const ClearedPiece& told = made.experiences().front().answers.front().words.front();
    EXPECT_EQ(told.name, QStringLiteral("alguien de la clase"));
    EXPECT_EQ(told.text, QStringLiteral("Soy [alguien de la clase]."));
}

TEST_F(TermForFamilies, AsksAgainForWhatHungBefore)
{
    const DisplayId hall = m_made.display(Audience::Building);
    m_made.hang(hall, said(m_ines, "It shrank."));
    m_made.hang(hall, said(m_tom, "It hid."));
    const ClearedTerm kept = term();
    ASSERT_EQ(kept.experiences().front().walls.size(), 1U);
    const ClearedWall& wall = kept.experiences().front().walls.front();
    EXPECT_EQ(wall.audience, Audience::Building);
    ASSERT_EQ(wall.panels.size(), 1U);
    ASSERT_EQ(wall.panels.front().pieces().size(), 1U);
    EXPECT_EQ(wall.panels.front().pieces().front().text, QStringLiteral("It shrank."));
    EXPECT_EQ(wall.panels.front().audience(), Audience::Families);
}

// The file is one thing in a family's hands: a photo on page 3 and a name on page 40 go together.
TEST_F(TermForFamilies, NamesNobodyWhoIsSeenAnywhereInIt)
{
    said(m_ines, "It shrank.");
    EXPECT_EQ(
        term().experiences().front().answers.front().words.front().name, QStringLiteral("Ines"));
    m_made.picture(PictureKind::Photo, {true, {m_ines}});
    const ClearedExperience shown = term().experiences().front();
    EXPECT_EQ(shown.answers.front().words.front().name, QStringLiteral("a child"));
    EXPECT_EQ(shown.interpretation, QStringLiteral("A child saw the edge first."));
    EXPECT_EQ(shown.pictures.size(), 1U);
}

// A photo of a wall shows what hung there, whoever stands in front of it.
class PhotoOfAWall : public TermForFamilies {
protected:
    PhotoOfAWall()
    {
        m_hall = m_made.display(Audience::Building);
        allow(m_ines, Audience::Building, {Permission::Words, Permission::FirstName});
        m_made.hang(m_hall, said(m_ines, "It shrank."));
        m_photo = m_made.picture(PictureKind::Photo, {true, {}}, "wall.jpg");
        change([&](Picture& photo) {
            photo.display = m_hall;
            photo.hungOn = QDate(2025, 11, 21);
        });
    }
    template <class Change> void change(Change changed)
    {
        Picture photo = *m_made.book.pictures.find(m_photo);
        changed(photo);
        m_made.book.pictures.put(photo);
    }
    void allow(ChildId who, Audience audience, std::initializer_list<Permission> permissions)
    {
        Child child = m_made.at(who);
        for (const Permission permission : kPermissions)
            child.permissions.set(permission,
                audience,
                std::find(permissions.begin(), permissions.end(), permission) != permissions.end());
        m_made.book.children.put(child);
    }
    [[nodiscard]] std::size_t photosFor(Audience audience) const
    {
        std::size_t count = 0;
        const ClearedTerm kept = term(audience);
        for (const ClearedWall& wall : kept.experiences().front().walls)
            count += wall.photos.size();
        return count;
    }
    [[nodiscard]] QString whyNotFor(Audience audience) const
    {
        const ClearedTerm kept = term(audience);
        for (const LeftOut& left : kept.leftOut()) {
            if (left.what == QLatin1String("photo"))
                return left.why;
        }
        return {};
    }

    DisplayId m_hall;
    PictureId m_photo;
};

TEST_F(PhotoOfAWall, StandsAfterThePanelsWithItsDay)
{
    const ClearedTerm kept = term();
    const ClearedExperience& shown = kept.experiences().front();
    ASSERT_EQ(shown.walls.size(), 1U);
    ASSERT_EQ(shown.walls.front().photos.size(), 1U);
    EXPECT_EQ(shown.walls.front().photos.front().on, QDate(2025, 11, 21));
    EXPECT_EQ(shown.walls.front().photos.front().picture.picture->id, m_photo);
    EXPECT_TRUE(shown.pictures.empty()) << "it is no picture of what happened";
}

TEST_F(PhotoOfAWall, IsShownToNobodyBeforeSomebodyHasLooked)
{
    change([](Picture& photo) { photo.people.lookedAt = false; });
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    EXPECT_TRUE(whyNotFor(Audience::Families).contains(QStringLiteral("wall.jpg")));
}

TEST_F(PhotoOfAWall, NeedsThePermissionOfWhoStandsInFrontOfIt)
{
    change([&](Picture& photo) { photo.people.children = {m_tom}; });
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    allow(m_tom, Audience::Families, {Permission::Photo});
    EXPECT_EQ(photosFor(Audience::Families), 1U);
}

TEST_F(PhotoOfAWall, NeedsThePermissionsOfAllThatHangsThere)
{
    m_made.hang(m_hall, said(m_tom, "It hid."));
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    EXPECT_EQ(whyNotFor(Audience::Families),
        QStringLiteral("wall.jpg shows what hung there. "
                       "Tom has no permission to be quoted for other families."));
    allow(m_tom, Audience::Families, {Permission::Words});
    EXPECT_EQ(photosFor(Audience::Families), 1U);
    m_made.hang(m_hall, m_made.picture(PictureKind::Photo, {true, {m_tom}}));
    EXPECT_EQ(photosFor(Audience::Families), 0U);
}

TEST_F(PhotoOfAWall, ShowsNoNameThatThisAudienceMayNotRead)
{
    allow(m_ines, Audience::Families, {Permission::Words});
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    // Where the wall itself says "a child", there is no name to read.
    allow(m_ines, Audience::Building, {Permission::Words});
    EXPECT_EQ(photosFor(Audience::Families), 1U);
    // It said the name on the day it was photographed.
    PermissionRecord said;
    said.id = m_made.book.permissionRecords.newId();
    said.child = m_ines;
    said.audience = Audience::Building;
    said.answers[std::size_t(Permission::FirstName)] = FamilyAnswer::Withdrawn;
    said.on = QDate(2025, 12, 1);
    m_made.book.permissionRecords.put(said);
    EXPECT_EQ(photosFor(Audience::Families), 0U);
}

TEST_F(PhotoOfAWall, SaysWhoseNameHungThere)
{
    allow(m_ines, Audience::Families, {Permission::Words});
    EXPECT_EQ(whyNotFor(Audience::Families),
        QStringLiteral(
            "wall.jpg shows a name that hung there: Ines, with no permission to be named "
            "for other families."));
}

// A wall that was more careful than this audience needs is no hindrance: in the building Ines was
// "a child", and families may read her name.
TEST_F(PhotoOfAWall, MayTellLessThanThisAudienceMayRead)
{
    allow(m_ines, Audience::Building, {Permission::Words});
    allow(m_ines, Audience::Families, {Permission::Words, Permission::FirstName});
    EXPECT_EQ(photosFor(Audience::Families), 1U) << whyNotFor(Audience::Families).toStdString();
}

// The file is in a family's hands as a whole: a face on one page and a name on a photo of a wall go
// together as well as on one wall.
TEST_F(PhotoOfAWall, NamesNobodyWhoIsSeenElsewhereInTheFile)
{
    ASSERT_EQ(photosFor(Audience::Families), 1U);
    m_made.picture(PictureKind::Photo, {true, {m_ines}});
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    EXPECT_EQ(whyNotFor(Audience::Families),
        QStringLiteral(
            "wall.jpg shows a name that hung there: Ines, seen in it or in another photo "
            "too, with no permission to be seen and named together for other families."));
    allow(m_ines,
        Audience::Families,
        {Permission::Words, Permission::FirstName, Permission::Photo, Permission::PhotoWithName});
    EXPECT_EQ(photosFor(Audience::Families), 1U);
}

TEST_F(PhotoOfAWall, NamesNobodyWhoStandsInFrontOfIt)
{
    change([&](Picture& photo) { photo.people.children = {m_ines}; });
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    EXPECT_TRUE(whyNotFor(Audience::Families).contains(QStringLiteral("seen in it")));
    // Where the name is not on the wall, nothing goes together.
    allow(m_ines, Audience::Building, {Permission::Words});
    EXPECT_EQ(photosFor(Audience::Families), 1U);
}

// "Ines, 4" hung in the building; with name and face no exact age goes to families.
TEST_F(PhotoOfAWall, ShowsNoExactAgeWithNameAndFace)
{
    Child ines = m_made.at(m_ines);
    ines.born = BirthDate{2021, 3, 1};
    m_made.book.children.put(ines);
    EXPECT_EQ(photosFor(Audience::Families), 1U) << "she is not seen, so her age may go with her";
    allow(m_ines,
        Audience::Families,
        {Permission::Words, Permission::FirstName, Permission::Photo, Permission::PhotoWithName});
    m_made.picture(PictureKind::Photo, {true, {m_ines}});
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    EXPECT_TRUE(whyNotFor(Audience::Families).contains(QStringLiteral("an exact age")));
}

TEST_F(PhotoOfAWall, TellsAllReasonsOfWhatHangsThere)
{
    const ChildId sam = m_made.child("Sam", only(Audience::Building, {Permission::Words}));
    m_made.hang(m_hall, said(m_tom, "It hid."));
    m_made.hang(m_hall, said(sam, "It slept."));
    m_made.hang(m_hall, said(sam, "It woke."));
    EXPECT_EQ(whyNotFor(Audience::Families),
        QStringLiteral("wall.jpg shows what hung there. "
                       "Tom has no permission to be quoted for other families. "
                       "Sam has no permission to be quoted for other families."));
}

TEST_F(PhotoOfAWall, TellsNothingOfPanelsThatCannotBeMadeOut)
{
    m_made.hang(m_hall, said(m_tom, "It hid."));
    ASSERT_EQ(photosFor(Audience::Families), 0U);
    change([](Picture& photo) { photo.panelsLegible = false; });
    EXPECT_EQ(photosFor(Audience::Families), 1U);
    change([&](Picture& photo) { photo.people.children = {m_tom}; });
    EXPECT_EQ(photosFor(Audience::Families), 0U) << "he stands in front of it all the same";
}

TEST_F(PhotoOfAWall, HangsOnNoPanelAndCountsAsNoPicture)
{
    const auto pieces = [&] {
        return PermissionRules(m_made.book, m_made.at(m_hall), kTestDay)
            .clear(m_made.panelOf(m_hall))
            .pieces()
            .size();
    };
    const std::size_t before = pieces();
    m_made.hang(m_hall, m_photo);
    EXPECT_EQ(pieces(), before);
    EXPECT_TRUE(picturesOf(m_made.book, m_made.experience).empty());
}

TEST_F(PhotoOfAWall, OfAnotherTermStaysOut)
{
    const auto nameOfInes = [&] {
        const ClearedTerm kept = term();
        return kept.experiences().front().answers.front().words.front().name;
    };
    change([&](Picture& photo) {
        photo.panelsLegible = false;
        photo.people.children = {m_ines};
    });
    EXPECT_EQ(photosFor(Audience::Families), 1U);
    EXPECT_EQ(nameOfInes(), QStringLiteral("a child")) << "she is seen in front of it";
    change([](Picture& photo) { photo.hungOn = QDate(2026, 2, 1); });
    EXPECT_EQ(photosFor(Audience::Families), 0U);
    EXPECT_EQ(nameOfInes(), QStringLiteral("Ines")) << "nobody is seen in what is not in the file";
}

TEST_F(TermForFamilies, LeavesOutWhatHasNoDayInIt)
{
    said(m_ines, "It shrank.");
    Experience other;
    other.id = m_made.book.experiences.newId();
    other.title = QStringLiteral("Snow");
    other.on = QDate(2026, 1, 20);
    m_made.book.experiences.put(other);
    other.id = m_made.book.experiences.newId();
    other.title = QStringLiteral("Wind");
    other.on.reset();
    m_made.book.experiences.put(other);
    Meeting late;
    late.id = m_made.book.meetings.newId();
    late.experience = m_made.experience;
    late.on = QDate(2026, 1, 9);
    late.done = true;
    m_made.book.meetings.put(late);
    const ClearedTerm kept = term();
    ASSERT_EQ(kept.experiences().size(), 1U);
    EXPECT_TRUE(kept.experiences().front().meetings.empty());
    ASSERT_EQ(kept.leftOut().size(), 1U);
    EXPECT_TRUE(kept.leftOut().front().why.contains(QStringLiteral("Wind")));
}

TEST_F(TermForFamilies, TellsOfMeetingsThatWereHeldAndWhatTheyMadeOfIt)
{
    const QuoteId read = said(m_ines, "It shrank.");
    Meeting meeting;
    meeting.experience = m_made.experience;
    meeting.on = QDate(2025, 11, 5);
    meeting.id = m_made.book.meetings.newId();
    m_made.book.meetings.put(meeting); // planned, not held
    meeting.id = m_made.book.meetings.newId();
    meeting.done = true;
    meeting.readOut = {read};
    meeting.happened = {
        {MeetingNoteKind::ChangedMind, QStringLiteral("Tom now says it is thirsty."), {}, m_tom}};
    m_made.book.meetings.put(meeting);
    Reflection back;
    back.id = m_made.book.reflections.newId();
    back.experience = m_made.experience;
    back.question = QStringLiteral("Who found it hard?");
    back.answer = QStringLiteral("Tom waited long.");
    m_made.book.reflections.put(back);
    const ClearedExperience shown = term().experiences().front();
    ASSERT_EQ(shown.meetings.size(), 1U);
    ASSERT_EQ(shown.meetings.front().words.size(), 1U);
    EXPECT_EQ(shown.meetings.front().words.front().text, QStringLiteral("It shrank."));
    ASSERT_EQ(shown.meetings.front().happened.size(), 1U);
    EXPECT_EQ(shown.meetings.front().happened.front().text,
        QStringLiteral("A child now says it is thirsty."));
    ASSERT_EQ(shown.reflections.size(), 1U);
    EXPECT_EQ(shown.reflections.front().answer, QStringLiteral("A child waited long."));
}

TEST_F(TermForFamilies, MarksWhoWasHeardInTheClasssOrderAndTellsNobodyByTheirPlace)
{
    said(m_ines, "It shrank.");
    said(m_tom, "It hid.", "wonder");
    const ChildId ada = m_made.child("Ada", only(Audience::Families, {Permission::FirstName}));
    const std::vector<HeardRow> rows = term().experiences().front().heard;
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].child, QStringLiteral("Ines"));
    EXPECT_EQ(rows[0].heard, (std::vector<bool>{true, false, false}));
    EXPECT_EQ(rows[1].child, displayName(m_made.at(ada)));
    EXPECT_EQ(rows[2].child, QString()) << "Tom may not be named, so he comes after Ada";
    EXPECT_EQ(rows[2].heard, (std::vector<bool>{false, false, true}));
}

// A label is made of the children's own words, so it asks as they do.
TEST_F(TermForFamilies, NamesNoGroupByWordsThatMayNotBeRead)
{
    Group group;
    group.id = m_made.book.groups.newId();
    group.experience = m_made.experience;
    group.quotes = {said(m_ines, "The sun drank it."), said(m_tom, "The drain wosh its door.")};
    Meeting meeting;
    meeting.id = m_made.book.meetings.newId();
    meeting.experience = m_made.experience;
    meeting.on = QDate(2025, 11, 4);
    meeting.done = true;
    meeting.groups = {group.id};
    meeting.notes = QStringLiteral("We drew it.");
    m_made.book.meetings.put(meeting);
    const auto labelled = [&](const QString& label, Audience audience) {
        group.label = label;
        m_made.book.groups.put(group);
        const ClearedTerm shown = term(audience);
        const ClearedExperience& experience = shown.experiences().front();
        EXPECT_EQ(experience.groups.size(), 1U);
        const QStringList about = experience.meetings.front().about;
        EXPECT_EQ(about,
            experience.groups.front().label.isEmpty()
                ? QStringList()
                : QStringList{experience.groups.front().label});
        return experience.groups.front().label;
    };
    const QString toms = QStringLiteral("\u201cThe drain wosh\u2026\u201d");
    EXPECT_EQ(labelled(toms, Audience::Families), QString());
    EXPECT_EQ(labelled(toms, Audience::Building), toms);
    EXPECT_EQ(labelled(QStringLiteral("Wosh \u00b7 sun"), Audience::Families), QString());
    const QString shared = QStringLiteral("the \u00b7 it");
    EXPECT_EQ(labelled(shared, Audience::Families), shared)
        << "a child who may be read said so too";
    const QString adults = QStringLiteral("Where water goes");
    EXPECT_EQ(labelled(adults, Audience::Families), adults);
    labelled(toms, Audience::Families);
    const ClearedTerm shown = term();
    EXPECT_TRUE(std::any_of(shown.leftOut().begin(),
        shown.leftOut().end(),
        [](const LeftOut& left) { return left.what == QLatin1String("label"); }));
}

} // namespace
} // namespace wainscot
