// Nearly equal photos in the drawer: one of them, and the others when asked for.
#include <QApplication>

#include <gmock/gmock.h>

#include "core/media/likeness.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using ::testing::ElementsAre;

// Of the four photos the first three are taken a second apart and nearly alike; the second is the
// sharpest.
class Series : public WindowAtWork {
public:
    Series()
    {
        EditBuilder edit(book(), QStringLiteral("Looks"));
        int at = 0;
        for (const auto& [id, picture] : book().pictures.rows()) {
            Picture changed = picture;
            PictureLook look;
            look.hash = at < 3 ? 0xff00ff00ff00ff00U + unsigned(at) : 0x1122334455667788U;
            look.sharpness = at == 1 ? 90 : 40;
            changed.look = look;
            changed.captured =
                CaptureTime{QDateTime(QDate(2025, 11, 3), QTime(10, 0, at)), std::nullopt};
            edit.put(changed);
            m_ids.push_back(id);
            ++at;
        }
        EXPECT_TRUE(session().perform(edit.take()));
        compose().drawer().show(DrawerItem::Kind::Picture);
        settle();
    }
    [[nodiscard]] PictureId id(int at) const { return m_ids.at(std::size_t(at)); }
    [[nodiscard]] std::vector<std::int64_t> listed()
    {
        std::vector<std::int64_t> all;
        for (const DrawerRow& row : compose().drawer().rows()) {
            if (row.what == DrawerRow::What::Picture)
                all.push_back(row.item.id);
        }
        return all;
    }
    Button* fold()
    {
        for (Button* button : compose().drawer().findChildren<Button*>()) {
            if (button->isVisible() && button->text().startsWith(QLatin1String("Show ")))
                return button;
        }
        ADD_FAILURE() << "no series";
        return nullptr;
    }

private:
    std::vector<PictureId> m_ids;
};

TEST(SeriesOfPhotos, StandsAsItsBestAndShowsAllWhenAsked)
{
    Series at;
    EXPECT_THAT(at.listed(), ElementsAre(at.id(1).number(), at.id(3).number()));
    EXPECT_EQ(at.fold()->text(), QStringLiteral("Show all 3 that are nearly alike"));
    QTest::mouseClick(at.fold(), Qt::LeftButton);
    at.settle();
    EXPECT_THAT(at.listed(),
        ElementsAre(at.id(1).number(), at.id(0).number(), at.id(2).number(), at.id(3).number()));
    // The same button folds it again, by key too: the keyboard stayed on it.
    EXPECT_EQ(QApplication::focusWidget(), at.fold());
    at.key(Qt::Key_Space);
    EXPECT_THAT(at.listed(), ElementsAre(at.id(1).number(), at.id(3).number()));
}

TEST(SeriesOfPhotos, TheTeacherSaysWhichComesFirst)
{
    Series at;
    at.compose().desk().putFirst(at.id(2));
    at.settle();
    EXPECT_THAT(at.listed(), ElementsAre(at.id(2).number(), at.id(3).number()));
    EXPECT_EQ(at.session().undoLabel(), QStringLiteral("First of its series"));
    at.compose().desk().putFirst(at.id(0));
    at.settle();
    EXPECT_THAT(at.listed(), ElementsAre(at.id(0).number(), at.id(3).number()));
    at.session().undo();
    at.session().undo();
    at.settle();
    EXPECT_THAT(at.listed(), ElementsAre(at.id(1).number(), at.id(3).number()));
}

TEST(SeriesOfPhotos, WhatHangsIsNeverFoldedAway)
{
    Series at;
    at.propose();
    PictureId other;
    for (int i : {0, 2}) {
        bool hangs = false;
        for (const Piece& piece : at.pieces())
            hangs = hangs || piece.picture == at.id(i);
        if (!hangs)
            other = at.id(i);
    }
    ASSERT_TRUE(other.isValid());
    (void)at.compose().desk().add({DrawerItem::Kind::Picture, other.number()}, std::nullopt);
    at.settle();
    EXPECT_THAT(at.listed(), ::testing::Contains(other.number()));
}

TEST(SeriesOfPhotos, ASearchSeesEachOfThem)
{
    Series at;
    DrawerFilter filter = at.compose().drawer().filter();
    filter.search = QStringLiteral("string"); // the third alone
    at.compose().drawer().setFilter(filter);
    at.settle();
    EXPECT_THAT(at.listed(), ElementsAre(at.id(2).number()));
}

} // namespace
} // namespace wainscot::ui
