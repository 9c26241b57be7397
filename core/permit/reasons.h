// The sentences that say why something is not shown. They are for the adult and are never printed.
#pragma once

#include "core/model/book.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace wainscot::reasons {

// "Ines has no permission to be quoted in the building."
[[nodiscard]] QString notQuoted(const Child& child, Audience audience);
[[nodiscard]] QString labelNotShown(const QString& label, Audience audience);
[[nodiscard]] QString speakerGone(); // the child is no longer in the book
[[nodiscard]] QString notTranslated(const Child& child); // into the language asked for
[[nodiscard]] QString wordsGone(); // the quote is no longer in the book

// "IMG_0012.jpg: Ines and Tomas have no permission to be seen in the building."
[[nodiscard]] QString notShown(
    const Picture& picture, const std::vector<const Child*>& children, Audience audience);
[[nodiscard]] QString nobodyLooked(const Picture& picture);
[[nodiscard]] QString strangerInPicture(const Picture& picture); // someone not in the book
[[nodiscard]] QString pictureGone();
// "wall.jpg shows what hung there. " and why that may not be shown, of many reasons the first ones.
[[nodiscard]] QString hungThere(const Picture& photo, const QStringList& whys);
// "wall.jpg shows the name of Ines, with no permission to be named for other families."
[[nodiscard]] QString namedThere(
    const Picture& photo, const std::vector<const Child*>& children, Audience audience);
[[nodiscard]] QString namedAndSeenThere(
    const Picture& photo, const std::vector<const Child*>& children, Audience audience);
[[nodiscard]] QString ageThere(
    const Picture& photo, const std::vector<const Child*>& children, Audience audience);

// "Ines is shown as "a child": no permission to be named in the building." `shown`: "a child"
[[nodiscard]] QString notNamed(const Child& child, Audience audience, const QString& shown);
[[nodiscard]] QString seenSoNotNamed(const Child& child, Audience audience, const QString& shown);
// "Ines gets a line instead of the name: may not be named in the classroom."
[[nodiscard]] QString lineForName(const Child& child, Audience audience);
[[nodiscard]] QString firstNameOnly(const Child& child);

} // namespace wainscot::reasons
