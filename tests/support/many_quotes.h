// The words of ten years: seeded, in several scripts, with the letters children's words have.
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace wainscot {

[[nodiscard]] std::vector<QString> manyQuotes(unsigned seed, std::size_t count);
// What somebody types, letter by letter: every beginning of words in several scripts.
[[nodiscard]] QStringList typedOnTheWay();

} // namespace wainscot
