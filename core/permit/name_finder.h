// Finds the names of the class's children in a text.
#pragma once

#include "core/model/book.h"

#include <QHash>
#include <QRegularExpression>
#include <QString>
#include <QStringList>

#include <vector>

namespace wainscot {

// Looks for the name in the class list, its first word, and the name as shown on a wall: whole
// words, in any letter case, with or without accents, straight or curly apostrophes. Chinese,
// Japanese and Thai are written without spaces, so there any run of the same letters counts;
// Arabic and Hebrew may put one particle in front. Endings that other languages add to a name
// ("Zosi" for "Zosia") are not known.
class NameFinder {
public:
    struct Found {
        qsizetype start = 0; // in UTF-16 units
        qsizetype length = 0;
        std::vector<ChildId> who; // everyone who goes by this name
        bool whole = false; // the name as in the class list, with more than its first word
    };

    explicit NameFinder(const Table<Child>& children);
    // From left to right, never overlapping; of two names at one place the longer.
    [[nodiscard]] std::vector<Found> in(const QString& text) const;

private:
    struct Owners {
        std::vector<ChildId> who;
        bool whole = false;
        QStringList spellings;
    };
    void add(const QString& form, ChildId child, bool whole);

    QHash<QString, Owners> m_owners; // by folded form
    QRegularExpression m_pattern;
};

// Whether an all-lower-case word is more likely a thing than a child: "rose", "will", "sky".
[[nodiscard]] bool isEverydayWord(const QString& word);

} // namespace wainscot
