// A class pasted from wherever a teacher has it.
#include "app/jobs/class_list.h"

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::ElementsAre;

std::vector<QString> namesIn(const char* text)
{
    std::vector<QString> names;
    for (const ListedChild& child : childrenFromText(QString::fromUtf8(text)))
        names.push_back(child.name);
    return names;
}

TEST(ClassList, IsANameInEachLine)
{
    EXPECT_THAT(namesIn("Wren Abara\r\n\n  Kofi   Lind \nWREN ABARA\n"),
        ElementsAre(QStringLiteral("Wren Abara"), QStringLiteral("Kofi Lind")));
    EXPECT_THAT(namesIn(""), ElementsAre());
}

TEST(ClassList, MayComeNumberedOrFromATable)
{
    EXPECT_THAT(namesIn("1. Wren Abara\n2) Kofi Lind\n- Ines Roth\n\u2022 Theo Marsh"),
        ElementsAre(QStringLiteral("Wren Abara"),
            QStringLiteral("Kofi Lind"),
            QStringLiteral("Ines Roth"),
            QStringLiteral("Theo Marsh")));
    EXPECT_THAT(namesIn("Name\tRoom\nWren Abara\t2\n\"Kofi Lind\";3"),
        ElementsAre(QStringLiteral("Wren Abara"), QStringLiteral("Kofi Lind")));
    EXPECT_THAT(namesIn("Abara, Wren\nLind, Kofi, 2021-04-17"),
        ElementsAre(QStringLiteral("Wren Abara"), QStringLiteral("Kofi Lind")));
}

TEST(ClassList, ReadsADateOfBirthWhereverItStands)
{
    const auto children = childrenFromText(QStringLiteral("2021-04\tWren Abara\nKofi, 2020-12-31"));
    ASSERT_EQ(children.size(), 2U);
    EXPECT_EQ(children[0], (ListedChild{QStringLiteral("Wren Abara"), BirthDate{2021, 4, 0}}));
    EXPECT_EQ(children[1], (ListedChild{QStringLiteral("Kofi"), BirthDate{2020, 12, 31}}));
}

TEST(ClassList, AddsWhoIsNotThereAndAllowsNothing)
{
    Book book;
    apply(addChildren(book, childrenFromText(QStringLiteral("Wren Abara\nKofi Lind")), {}), book);
    ASSERT_EQ(book.children.size(), 2U);
    EXPECT_EQ(book.children.find(ChildId(1))->permissions.bits(), 0U);
    Child wren = *book.children.find(ChildId(1));
    wren.permissions = Permissions::all();
    book.children.put(wren);
    apply(addChildren(
              book, childrenFromText(QStringLiteral("wren abara, 2021-04-17\nInes Roth")), {}),
        book);
    EXPECT_EQ(book.children.size(), 3U);
    EXPECT_EQ(book.children.find(ChildId(1))->name, QStringLiteral("Wren Abara"));
    EXPECT_EQ(book.children.find(ChildId(1))->born, (BirthDate{2021, 4, 17}));
    EXPECT_EQ(book.children.find(ChildId(1))->permissions, Permissions::all());
}

} // namespace
} // namespace wainscot
