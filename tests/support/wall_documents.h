// Seeded, realistic documents with real pieces: what a class might hang, in several languages and
// formats, to be measured and set by the real typesetter.
#pragma once

#include "core/permit/cleared.h"
#include "layout/typeset/style.h"

#include <QString>

#include <vector>

namespace wainscot::walls {

// Tuning documents may be looked at while weights are set. Unseen ones have other seeds, other
// texts and other pictures: they only measure, and no weight is ever set by them.
enum class Set { Tuning, Unseen };
enum class Size {
    Sparse, // 7 to 9 pieces
    Normal, // 15 to 25
    Heavy, // 60 to 90, several pages
};

struct Document {
    int number = 0;
    QString name; // "7 normal, A2 portrait, de"
    Size size = Size::Normal;
    Book book;
    Display display;
    Panel panel;
    std::vector<Piece> pieces; // in reading order
};

inline constexpr int kDocuments = 30; // a set's documents, numbered from 0; more may be made

[[nodiscard]] Document makeDocument(Set set, int number);

// The pieces as they may be shown; `pieces` is the document's own or a page of them with cells.
[[nodiscard]] ClearedPanel cleared(const Document& document, std::vector<Piece> pieces);

} // namespace wainscot::walls
