// Every combination of answers, audiences and people in a picture against the rules written out.
#include "core/permit/cleared.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

constexpr unsigned kAnswers = 1U << kPermissions.size();

Permissions answers(unsigned bits, Audience audience)
{
    Permissions given;
    for (std::size_t i = 0; i < kPermissions.size(); ++i)
        given.set(kPermissions[i], audience, (bits >> i & 1U) != 0);
    return given;
}

// Only for the other audiences: it must count for nothing.
Permissions elsewhere(Audience audience)
{
    Permissions given = Permissions::all();
    for (const Permission permission : kPermissions)
        given.set(permission, audience, false);
    return given;
}

Permissions both(const Permissions& a, const Permissions& b)
{
    return Permissions::fromBits(a.bits() | b.bits());
}

bool says(unsigned bits, Permission permission)
{
    return (bits >> static_cast<unsigned>(permission) & 1U) != 0;
}

const ClearedPiece* pieceOf(const ClearedPanel& panel, PieceId id)
{
    for (const ClearedPiece& piece : panel.pieces()) {
        if (piece.id == id)
            return &piece;
    }
    return nullptr;
}

struct Hung {
    ClassBook made;
    ChildId ines;
    DisplayId display;
    PieceId quote;
    PieceId photo;
    PieceId work;

    // `inPhoto`: 0 = nobody has looked, 1 = looked and nobody, 2 = Ines, 3 = Ines and another
    Hung(Audience audience, const Permissions& permissions, int inPhoto, const Permissions& other)
    {
        ines = made.child("Ines Moreau", permissions);
        const ChildId tomas = made.child("Tomas", other);
        display = made.display(audience);
        People people{inPhoto > 0, {}};
        if (inPhoto >= 2)
            people.children.push_back(ines);
        if (inPhoto == 3)
            people.children.push_back(tomas);
        quote = made.hang(display, made.quote(ines, QStringLiteral("it melted")));
        photo = made.hang(display, made.picture(PictureKind::Photo, people));
        work = made.hang(display, made.picture(PictureKind::Work, {true, {ines}}));
    }
    [[nodiscard]] ClearedPanel clear()
    {
        return PermissionRules(made.book, made.at(display), kTestDay).clear(made.panelOf(display));
    }
};

TEST(PermissionTable, HoldsForEveryAnswerAudienceAndPicture)
{
    int combinations = 0;
    for (const Audience audience : kAudiences) {
        for (unsigned bits = 0; bits < kAnswers; ++bits) {
            for (int inPhoto = 0; inPhoto <= 3; ++inPhoto) {
                for (const bool otherMay : {false, true}) {
                    SCOPED_TRACE(::testing::Message()
                        << nameOf(audience).toStdString() << " answers " << bits << " picture "
                        << inPhoto << " other " << otherMay);
                    const Permissions other =
                        otherMay ? only(audience, {Permission::Photo}) : elsewhere(audience);
                    Hung hung(audience,
                        both(answers(bits, audience), elsewhere(audience)),
                        inPhoto,
                        other);
                    const ClearedPanel panel = hung.clear();

                    const bool photoHangs = inPhoto == 1
                        || (inPhoto == 2 && says(bits, Permission::Photo))
                        || (inPhoto == 3 && says(bits, Permission::Photo) && otherMay);
                    const bool seen = photoHangs && inPhoto >= 2;
                    const bool named = says(bits, Permission::FirstName)
                        && (!seen || says(bits, Permission::PhotoWithName));
                    const ClearedPiece* quote = pieceOf(panel, hung.quote);
                    ASSERT_EQ(pieceOf(panel, hung.photo) != nullptr, photoHangs);
                    ASSERT_EQ(pieceOf(panel, hung.work) != nullptr, says(bits, Permission::Work));
                    ASSERT_EQ(quote != nullptr, says(bits, Permission::Words));
                    if (quote) {
                        ASSERT_EQ(quote->name,
                            named ? QStringLiteral("Ines") : QStringLiteral("a child"));
                    }
                    // Everything that does not hang is told, with a sentence.
                    const std::size_t missing = std::size_t(!photoHangs)
                        + std::size_t(!says(bits, Permission::Work)) + std::size_t(!quote)
                        + std::size_t(quote && !named);
                    ASSERT_EQ(panel.leftOut().size(), missing);
                    for (const LeftOut& entry : panel.leftOut())
                        ASSERT_TRUE(entry.why.endsWith(QLatin1Char('.')))
                            << entry.why.toStdString();
                    ++combinations;
                }
            }
        }
    }
    EXPECT_EQ(combinations, 4 * 32 * 4 * 2);
}

} // namespace

} // namespace wainscot
