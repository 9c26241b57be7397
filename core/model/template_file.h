// A template as a small readable file, to share between classes: JSON with one line of meaning a
// field. The same text is kept in the book.
#pragma once

#include "core/base/result.h"
#include "core/model/panel_template.h"

#include <QByteArray>

namespace wainscot {

// Indented JSON, fields without a wish left out.
[[nodiscard]] QByteArray templateToJson(const PanelTemplate& made);

// Damaged with the field and the cause in the detail ("places[3].columns: 14 is not 1 to 12"), and
// `source` (a file's name) as subject; TooNew for a later version of the form. Unknown fields are
// named as well: a wish misspelt would be a wish silently dropped.
Result<PanelTemplate> templateFromJson(const QByteArray& json, const QString& source);

// The same from and to a file. CannotRead, CannotWrite besides.
Result<PanelTemplate> readTemplate(const QString& path);
Result<> writeTemplate(const QString& path, const PanelTemplate& made);

} // namespace wainscot
