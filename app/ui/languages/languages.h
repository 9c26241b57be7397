// The languages the window speaks.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

class QCoreApplication;

namespace wainscot::ui {

// BCP 47, English first. Each has a file of translations beside this one.
[[nodiscard]] QStringList windowLanguages();
// As the language calls itself: "Español".
[[nodiscard]] QString nameOfLanguage(const QString& language);
// What somebody chose on this computer; empty = the system's, where the window speaks it.
[[nodiscard]] QString chosenLanguage();
// For the walls of a new book: of what somebody chose and the system's, the first with words for
// walls (core/base/wall_text.h).
[[nodiscard]] QString usualWallLanguage();
void chooseLanguage(const QString& language); // from the next start
// Installs the translations of the window and of the toolkit's own texts, and the direction.
void speakChosenLanguage(QCoreApplication& application);

} // namespace wainscot::ui
