#include "core/base/language_name.h"

#include <QLocale>

namespace wainscot {

QString languageInWords(const QString& code)
{
    const QLocale locale(code);
    return locale.language() == QLocale::C ? code : QLocale::languageToString(locale.language());
}

QString mainLanguage(const QString& code)
{
    return code.section(QLatin1Char('-'), 0, 0).toLower();
}

} // namespace wainscot
