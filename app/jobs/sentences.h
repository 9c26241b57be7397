// The one sentence a person reads about an error or a skipped row, and the exit code it stands for.
#pragma once

#include "core/base/in_words.h"
#include "core/base/result.h"
#include "core/model/permission.h"
#include "core/permit/cleared.h"

#include <QDate>
#include <QString>
#include <QStringList>

#include <vector>

namespace wainscot {

namespace engine {
struct Failure;
}

// One clear sentence: which file or row, what is wrong, and what can be done where that is known.
[[nodiscard]] QString sentenceFor(const Error& error);

// "wrong_use", "not_found", ...: stable names for programs.
[[nodiscard]] QString nameOf(ErrorCode code);

// 0 done; 1 refused; 2 wrong use; 3 cannot read or write; 4 our own mistake.
[[nodiscard]] int exitCodeFor(ErrorCode code);

[[nodiscard]] QString quoted(const QString& name); // in the marks of the language spoken
// "Ada", "Ada and Ben", "Ada, Ben and Cem".
[[nodiscard]] QString listInWords(const QStringList& items);

[[nodiscard]] QString dateInWords(QDate day); // "3 November 2026"

// Every reason once, in this order, with how often where it is said of more than one thing.
[[nodiscard]] QStringList reasonsOf(const std::vector<LeftOut>& leftOut);

// Why pieces cannot be arranged and what would help, as a clause: "two pinned pieces lie over each
// other; move or unpin one."
[[nodiscard]] QString whyNoRoom(const engine::Failure& failure);

// "Tuesday, 3 November (continued)": the label of what goes on from the panel before.
[[nodiscard]] QString continued(const QString& label, const QString& language);
[[nodiscard]] QString withoutContinued(QString label);

} // namespace wainscot
