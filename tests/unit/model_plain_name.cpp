// Names hide nothing.
#include "core/model/book.h"
#include "core/model/plain_name.h"

#include <gtest/gtest.h>

namespace wainscot {
namespace {

TEST(PlainName, LosesWhatIsNotSeen)
{
    EXPECT_EQ(plainName(QStringLiteral("Ada\u202eneB\u202c")), QStringLiteral("AdaneB"));
    EXPECT_EQ(plainName(QStringLiteral("\u2066A\u200bda\u2069\ufeff")), QStringLiteral("Ada"));
    EXPECT_EQ(plainName(QString(QStringLiteral("A\x01") + QChar(u'\0') + QStringLiteral("da\x7f"))),
        QStringLiteral("Ada"));
    EXPECT_EQ(plainName(QStringLiteral(" Ada \t\n Marsh\u2028")), QStringLiteral("Ada Marsh"));
    EXPECT_EQ(plainName(QStringLiteral("\u202e\u200f")), QString());
}

TEST(PlainName, KeepsWhatScriptsNeed)
{
    for (const QString& name : {QStringLiteral("Zo\u00eb-Mae O'Neil"),
             QStringLiteral("\u0645\u06cc\u200c\u062e\u0648\u0627\u0647"), // Persian, with a joiner
             QStringLiteral("\u0915\u094d\u200d\u0937"),
             QStringLiteral("\u674e\u96f7"),
             QString(QStringLiteral("\U0001f33b"))})
        EXPECT_EQ(plainName(name), name);
}

TEST(PlainName, IsWhatIsShownAndLookedUp)
{
    Child child;
    child.id = ChildId(1);
    child.name = QStringLiteral("\u202eAda\u202c Marsh");
    EXPECT_EQ(displayName(child), QStringLiteral("Ada"));
    child.shownAs = QStringLiteral("\u2067Adi");
    EXPECT_EQ(displayName(child), QStringLiteral("Adi"));
    Book book;
    book.children.put(child);
    EXPECT_NE(childByName(book, QStringLiteral("ada  marsh")), nullptr);
}

} // namespace
} // namespace wainscot
