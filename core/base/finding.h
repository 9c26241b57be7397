// Something a check noticed: what was measured, against which limit, from which source.
#pragma once

#include <QString>

#include <cstdint>
#include <optional>

namespace wainscot {

enum class Severity {
    Stop, // must not be printed so
    Look, // worth a look before printing
    Note, // good to know
};

struct Finding {
    Severity severity = Severity::Note;
    QString rule; // stable name for programs, for example "type.caption"
    int panel = 0; // 1-based number in the display; 0 = the whole display
    std::int64_t piece = 0; // 0 = no single piece
    std::int64_t child = 0; // who it is about; 0 = no single child
    std::optional<double> measured;
    std::optional<double> limit;
    QString unit; // "mm", "arcmin", "ppi", "ratio", "characters", "%"
    QString source; // who set the limit
    QString says; // one sentence
};

[[nodiscard]] QString nameOf(Severity severity); // "stop", "look", "note"

} // namespace wainscot
