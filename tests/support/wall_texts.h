// Invented words for documents of the tests, by kind of text; one file for each set and language in
// tests/data/walls, one text a line: "kind|text".
#pragma once

#include "tests/support/engine_documents.h"

#include <QStringList>

#include <map>
#include <set>

namespace wainscot::walls {

class TextPool {
public:
    // Aborts with a sentence when the file is not there: no test may go on without it.
    TextPool(const QString& set, const QString& language);

    // One text of a kind ("title", "short", "caption" ...); none twice before all were drawn.
    [[nodiscard]] QString draw(const QString& kind, engine::Dice& dice);

private:
    std::map<QString, QStringList> m_texts;
    std::map<QString, std::set<int>> m_drawn;
};

[[nodiscard]] int wordsIn(const QString& text); // an ideograph counts as half a word

} // namespace wainscot::walls
