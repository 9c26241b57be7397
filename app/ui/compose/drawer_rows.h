// What the drawer lists: sections and lines, from the book and what is looked for.
#pragma once

#include <map>
#include <set>
#include <vector>

#include "app/ui/canvas/incoming.h"
#include "core/model/book.h"

namespace wainscot::ui {

enum class DrawerKind { Words, Photos, Work, Notes };

struct DrawerFilter {
    DrawerKind kind = DrawerKind::Words;
    QString search; // words, a child's name, a caption, a file's name
    bool notOnWall = false;
    bool starred = false;
    ChildId child; // invalid = every child
    std::optional<QString> prompt; // key; empty = told in a meeting; nothing = every question
    MeetingId meeting; // invalid = any
    bool byGroup = false; // words by group instead of by question
    std::set<PictureId> opened; // series of near-equal photos shown whole, by their first picture
    friend bool operator==(const DrawerFilter&, const DrawerFilter&) = default;
};

struct DrawerRow {
    // Series: shows all of the near-equal photos above it, or the best of them only.
    enum class What { Section, Words, Picture, Text, Sentence, Series };
    What what = What::Sentence;
    DrawerItem item; // Words, Picture, Text; of a series its first picture
    QString text; // heading, words, caption or sentence
    QString second; // count, or who
    int stars = 0;
    friend bool operator==(const DrawerRow&, const DrawerRow&) = default;
};

// Where each thing hangs, for the whole book in one pass: "on panel 2" of the display one is at,
// "on Hallway" elsewhere.
class WhereUsed {
public:
    WhereUsed() = default;
    WhereUsed(const Book& book, DisplayId display);
    [[nodiscard]] QString operator()(const DrawerItem& item) const; // empty = on no wall

private:
    std::map<std::int64_t, QString> m_quotes;
    std::map<std::int64_t, QString> m_pictures;
};

[[nodiscard]] std::vector<DrawerRow> drawerRows(const Book& book,
    const Experience& experience,
    const DrawerFilter& filter,
    const WhereUsed& used);

// The photos of the series a picture belongs to, itself among them; it alone when it is in none.
[[nodiscard]] std::vector<const Picture*> seriesOf(const Book& book, PictureId picture);

} // namespace wainscot::ui
