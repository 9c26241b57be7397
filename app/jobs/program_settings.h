// What the window remembers of a person between two evenings: rulers, the size of a screen, limits
// (which count on the command line too). Nothing of a book or a child is kept here.
#pragma once

#include <QSettings>
#include <QStandardPaths>

namespace wainscot {

class ProgramSettings : public QSettings {
public:
    ProgramSettings()
        : QSettings(QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation)
                + QStringLiteral("/wainscot/window.ini"),
            QSettings::IniFormat)
    {
    }
};

} // namespace wainscot
