// The names of the children in a picture, filled into its caption in permitted form only.
#include "core/permit/cleared.h"
#include "tests/support/class_book.h"

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::SizeIs;

const QString kCaption = QStringLiteral("[names] at the edge.");

class Captions : public ::testing::Test {
protected:
    ChildId child(const char* name, std::initializer_list<Permission> permissions)
    {
        return m_made.child(name, only(Audience::Building, permissions));
    }
    ChildId open(const char* name)
    {
        return child(name,
            {Permission::Photo,
                Permission::Work,
                Permission::FirstName,
                Permission::PhotoWithName});
    }
    ChildId seenOnly(const char* name)
    {
        return child(name, {Permission::Photo, Permission::Work, Permission::FirstName});
    }
    PictureId photo(std::vector<ChildId> children)
    {
        return m_made.picture(PictureKind::Photo, {true, std::move(children)});
    }
    [[nodiscard]] std::string names(PictureId id) const
    {
        const PermissionRules rules(m_made.book, m_made.at(m_hall), kTestDay);
        return rules.namesInPicture(*m_made.book.pictures.find(id)).toStdString();
    }
    std::string hung(PictureId id, const QString& caption)
    {
        const PieceId piece = m_made.hang(m_hall, id, caption);
        const std::string text = shown(piece);
        m_made.book.pieces.remove(piece);
        return text;
    }
    std::string shown(PieceId id)
    {
        const ClearedPanel panel = cleared();
        for (const ClearedPiece& piece : panel.pieces()) {
            if (piece.id == id)
                return piece.text.toStdString();
        }
        return "(not shown)";
    }
    ClearedPanel cleared()
    {
        return PermissionRules(m_made.book, m_made.at(m_hall), kTestDay)
            .clear(m_made.panelOf(m_hall));
    }
    void allow(ChildId id, Permissions permissions)
    {
        Child changed = m_made.at(id);
        changed.permissions = permissions;
        m_made.book.children.put(changed);
    }

    ClassBook m_made;
    DisplayId m_hall = m_made.display(Audience::Building);
};

TEST_F(Captions, SayEveryFormThatPermissionLeaves)
{
    const ChildId mei = open("Mei Lin");
    const ChildId kofi = open("Kofi Asare");
    const ChildId wren = open("Wren Abara");
    const ChildId ines = seenOnly("Ines Roth");
    const ChildId tomas = seenOnly("Tomas Vale");
    EXPECT_EQ(names(photo({mei})), "Mei"); // the family name is nobody's to give
    EXPECT_EQ(names(photo({mei, kofi})), "Mei and Kofi");
    EXPECT_EQ(names(photo({mei, kofi, wren})), "Mei, Kofi and Wren");
    EXPECT_EQ(names(photo({mei, ines})), "Mei and a child");
    EXPECT_EQ(names(photo({ines, mei, kofi})), "Mei, Kofi and a child");
    EXPECT_EQ(names(photo({mei, ines, tomas})), "Mei and 2 children");
    EXPECT_EQ(names(photo({ines})), "a child");
    EXPECT_EQ(names(photo({ines, tomas})), "2 children");
    EXPECT_EQ(names(photo({})), "");
    EXPECT_EQ(names(m_made.picture(PictureKind::Photo, {false, {mei}})), ""); // not looked at
    EXPECT_EQ(names(photo({mei, child("Lin", {})})), ""); // may not hang at all
}

TEST_F(Captions, NameWhoMadeAWorkByTheFirstNameAlone)
{
    const ChildId ines = seenOnly("Ines Roth");
    const PictureId work = m_made.picture(PictureKind::Work, {true, {ines}});
    EXPECT_EQ(names(work), "Ines");
    // Unless the child is to be recognised elsewhere on the display.
    (void)m_made.hang(m_hall, photo({ines}));
    EXPECT_EQ(names(work), "a child");
}

TEST_F(Captions, AreFilledInWhereTheTeacherWantsThem)
{
    const ChildId mei = open("Mei Lin");
    const ChildId ines = seenOnly("Ines Roth");
    EXPECT_EQ(hung(photo({mei}), kCaption), "Mei at the edge.");
    EXPECT_EQ(hung(photo({ines}), kCaption), "A child at the edge.");
    EXPECT_EQ(hung(photo({ines}), QStringLiteral("Here [names] waits.")), "Here a child waits.");
    EXPECT_EQ(
        hung(photo({ines}), QStringLiteral("At last. [names] waits.")), "At last. A child waits.");
    EXPECT_EQ(hung(photo({}), kCaption), "at the edge.");
    EXPECT_EQ(hung(photo({mei}), QStringLiteral("The edge.")), "The edge."); // only on request
    // A name that was typed beside it is looked through as ever.
    EXPECT_EQ(hung(photo({mei, ines}), QStringLiteral("[names]: Ines laughed.")),
        "Mei and a child: a child laughed.");
}

TEST_F(Captions, FollowWhatIsAllowedLater)
{
    const ChildId mei = open("Mei Lin");
    const ChildId ines = seenOnly("Ines Roth");
    const PieceId piece = m_made.hang(m_hall, photo({mei, ines}), kCaption);
    EXPECT_EQ(shown(piece), "Mei and a child at the edge.");
    EXPECT_THAT(cleared().leftOut(), SizeIs(1)); // and says that Ines is not named
    allow(ines, m_made.at(mei).permissions);
    EXPECT_EQ(shown(piece), "Mei and Ines at the edge.");
    EXPECT_THAT(cleared().leftOut(), SizeIs(0));
    allow(mei, only(Audience::Building, {Permission::Photo}));
    EXPECT_EQ(shown(piece), "Ines and a child at the edge.");
    allow(mei, {});
    EXPECT_EQ(shown(piece), "(not shown)");
}

TEST_F(Captions, DependOnTheAudience)
{
    const ChildId mei = open("Mei Lin");
    const PieceId piece = m_made.hang(m_hall, photo({mei}), kCaption);
    Display outside = m_made.at(m_hall);
    outside.audience = Audience::Public;
    m_made.book.displays.put(outside);
    EXPECT_EQ(shown(piece), "(not shown)");
    Permissions seen = m_made.at(mei).permissions;
    seen.set(Permission::Photo, Audience::Public, true);
    allow(mei, seen);
    EXPECT_EQ(shown(piece), "A child at the edge.");
}

TEST_F(Captions, AreAlsoSaidInsteadOfThePictureAndInTheSecondLanguage)
{
    const ChildId mei = open("Mei Lin");
    const PictureId id = photo({mei});
    Piece piece = *m_made.book.pieces.find(m_made.hang(m_hall, id, kCaption));
    piece.secondLanguage = QStringLiteral("de");
    m_made.book.pieces.put(piece);
    Translation german;
    german.id = m_made.book.translations.newId();
    german.experience = m_made.experience;
    german.what = Translated::Caption;
    german.picture = id;
    german.language = QStringLiteral("de");
    german.text = QStringLiteral("[names] am Rand.");
    m_made.book.translations.put(german);
    const ClearedPanel panel = cleared();
    ASSERT_THAT(panel.pieces(), SizeIs(1));
    EXPECT_EQ(panel.pieces().front().picture->alternative, QStringLiteral("Mei at the edge."));
    EXPECT_EQ(panel.pieces().front().secondText, QStringLiteral("Mei am Rand."));
}

TEST_F(Captions, AreThePicturesOwn)
{
    const ChildId mei = child("Mei Lin", {Permission::Words, Permission::FirstName});
    const PieceId said = m_made.hang(m_hall, m_made.quote(mei, QStringLiteral("I say [names].")));
    EXPECT_EQ(shown(said), "I say [names]."); // a child's words are nobody's form to fill in
    const PieceId text = m_made.hang(m_hall, PieceKind::Context, QStringLiteral("[names] came."));
    EXPECT_EQ(shown(text), "[names] came.");
}

} // namespace
} // namespace wainscot
