// Words as they are compared when somebody looks for them: in any script, without case and
// diacritics.
#pragma once

#include <QString>
#include <QStringList>

namespace wainscot {

// Compatibility decomposition without marks (Unicode UAX #15), case folded, letters that do not
// decompose as one types them without their stroke (o for \u00f8); Arabic without its stretching.
[[nodiscard]] QString foldedForFind(const QString& text);

// What is looked for: the parts between blanks. Each must stand somewhere in a text, also inside a
// word, because many scripts put no blanks between words.
class FindQuery {
public:
    explicit FindQuery(const QString& typed);
    [[nodiscard]] bool isEmpty() const { return m_parts.isEmpty(); }
    [[nodiscard]] const QStringList& parts() const { return m_parts; } // folded
    [[nodiscard]] bool fits(const QString& text) const { return fitsFolded(foldedForFind(text)); }
    [[nodiscard]] bool fitsFolded(const QString& folded) const;

private:
    QStringList m_parts;
};

} // namespace wainscot
