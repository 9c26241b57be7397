// Days and lists in words, in a language that has words for walls (wall_text.h); otherwise in
// English.
#pragma once

#include <QDate>
#include <QString>
#include <QStringList>

namespace wainscot {

[[nodiscard]] QString dayInWords(QDate day, const QString& language); // "Monday, 2 November"
[[nodiscard]] QString dayOfRecord(QDate day, const QString& language); // the year too
[[nodiscard]] QString weekdayInWords(QDate day, const QString& language); // "Monday"
[[nodiscard]] QString dateInWords(QDate day, const QString& language); // "2 November 2026"
// "3-6 November"; one day alone where both are the same.
[[nodiscard]] QString daysInWords(QDate first, QDate last, const QString& language);
// "1 September to 18 December 2026"
[[nodiscard]] QString daysOfTerm(QDate from, QDate to, const QString& language);

// "Mei, Kofi and Lin"
[[nodiscard]] QString listInWords(const QStringList& items, const QString& language);

// With a capital letter first.
[[nodiscard]] QString capitalised(QString text);

} // namespace wainscot
