// Values of the program as JSON, with the keys other programs rely on.
#pragma once

#include "core/base/finding.h"
#include "core/permit/cleared.h"

#include <QJsonArray>
#include <QJsonObject>
#include <QStringList>

#include <optional>
#include <vector>

namespace wainscot::cli {

// severity, rule, panel, piece, measured, limit, unit, source, says; what was not measured is null.
[[nodiscard]] QJsonObject toJson(const Finding& finding);
// what, id, why
[[nodiscard]] QJsonObject toJson(const LeftOut& left);
[[nodiscard]] QJsonArray toJson(const std::vector<LeftOut>& left);
[[nodiscard]] QJsonArray toJson(const QStringList& texts);
[[nodiscard]] QJsonValue toJson(const std::optional<QDate>& day); // "2026-11-03" or null
// A length to a hundredth of a millimetre.
[[nodiscard]] double hundredths(double value);

} // namespace wainscot::cli
