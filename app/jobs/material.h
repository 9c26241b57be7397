// What an experience holds for one audience: what may be shown, and what may not and why.
#pragma once

#include "core/permit/cleared.h"

#include <optional>
#include <set>
#include <vector>

namespace wainscot {

struct Material {
    const Book* book = nullptr;
    Experience experience;
    Display display;
    std::vector<const Quote*> quotes; // cleared, by id
    std::vector<const Picture*> photos; // cleared, by time taken
    std::vector<const Picture*> works; // cleared, by id
    std::vector<LeftOut> refused;
    std::vector<const Picture*> placed; // stand on the display already
    std::set<ChildId> heard; // whose words or work stand on the display already
    std::vector<GroupId> ideas; // what the display is made from; none = all, by days

    [[nodiscard]] std::optional<QDate> dayOf(const Quote& quote) const;
    [[nodiscard]] std::optional<QDate> dayOf(const Picture& picture) const;
    [[nodiscard]] const QString& language() const; // of what is drafted
    [[nodiscard]] QString nameOf(ChildId child) const; // for sentences to the adult
};

// Leaves out what stands on the display already (pinned pieces).
[[nodiscard]] Material materialFor(const Book& book,
    const Experience& experience,
    const Display& display,
    const PermissionRules& rules,
    const std::vector<Piece>& pinned);

// How much two tellings share: common words over all words, 0..1 (Jaccard index of word sets).
[[nodiscard]] double likeness(const QString& a, const QString& b);
[[nodiscard]] std::set<QString> wordSet(const QString& text); // in folded letters
[[nodiscard]] double likeness(const std::set<QString>& one, const std::set<QString>& other);

} // namespace wainscot
