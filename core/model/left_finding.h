// A finding somebody looked at and left as it is, with the reason.
#pragma once

#include "core/model/ids.h"

#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

struct LeftFinding {
    QString rule; // the finding's stable name
    PieceId piece; // invalid = the panel as a whole; one that is gone is left for nothing
    QString why;
    friend bool operator==(const LeftFinding&, const LeftFinding&) = default;
};

// As text for keeping; empty for none.
[[nodiscard]] QString textOf(const std::vector<LeftFinding>& left);
// Nothing for what makes no sense.
[[nodiscard]] std::optional<std::vector<LeftFinding>> leftFindingsFromText(const QString& text);

} // namespace wainscot
