// The printers this computer knows.
#pragma once

#include <QString>
#include <QStringList>

#include "core/base/geometry.h"

namespace wainscot::ui {

// What the system says of a printer.
struct PrinterFacts {
    QString name;
    SizeMm paper; // that lies in it; empty = not known
    Mm unreachable; // the widest edge it cannot print on; 0 = not known
};

// Both ask the system, which may ask the network.
[[nodiscard]] QStringList printerNames();
[[nodiscard]] PrinterFacts printerFacts(const QString& name);

} // namespace wainscot::ui
