#include "core/store/rows.h"

namespace wainscot {

TableForm formOf(const Translation* /*kind*/)
{
    return {"translations", "id, experience_id, what, quote_id, picture_id, language, words"};
}

QVariantList valuesOf(const Translation& translation)
{
    return {sqlId(translation.id),
        sqlId(translation.experience),
        nameOf(translation.what),
        sqlId(translation.quote),
        sqlId(translation.picture),
        sqlText(translation.language),
        sqlText(translation.text)};
}

void readRow(RowReader& row, Translation& translation)
{
    translation.id = row.id<TranslationId>();
    translation.experience = row.id<ExperienceId>();
    translation.what = row.known(translatedFromName(row.text()));
    translation.quote = row.id<QuoteId>();
    translation.picture = row.id<PictureId>();
    translation.language = row.text();
    translation.text = row.text();
}

} // namespace wainscot
