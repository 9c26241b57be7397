// What the window remembers of a person between two evenings: rulers, the size of a screen. Nothing
// of a book or a child is kept here.
#pragma once

#include <QSettings>
#include <QStandardPaths>

namespace wainscot::ui {

class ProgramSettings : public QSettings {
public:
    ProgramSettings()
        : QSettings(QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation)
                + QStringLiteral("/wainscot/window.ini"),
            QSettings::IniFormat)
    {
    }
};

} // namespace wainscot::ui
