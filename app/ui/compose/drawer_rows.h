// What the drawer lists: sections and lines, from the book and what is looked for.
#pragma once

#include <map>
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
    friend bool operator==(const DrawerFilter&, const DrawerFilter&) = default;
};

struct DrawerRow {
    enum class What { Section, Words, Picture, Text, Sentence };
    What what = What::Sentence;
    DrawerItem item; // Words, Picture, Text
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

// The questions of an experience as asked; the default ones when it has no set of its own.
[[nodiscard]] std::vector<Prompt> promptsOf(const Book& book, const Experience& experience);

} // namespace wainscot::ui
