#include "core/store/rows.h"

namespace wainscot {

TableForm formOf(const Quote* /*kind*/)
{
    return {"quotes",
        "id, experience_id, child_id, prompt_key, meeting_id, words, language, telling, "
        "dictation, is_read_back, scribe, said_on, stars, first_words, sheet_picture_id, "
        "drawing_picture_id, replies_to_id"};
}

QVariantList valuesOf(const Quote& quote)
{
    return {sqlId(quote.id),
        sqlId(quote.experience),
        sqlId(quote.child),
        sqlText(quote.prompt),
        sqlId(quote.meeting),
        sqlText(quote.words),
        sqlText(quote.language),
        nameOf(quote.telling),
        nameOf(quote.dictation),
        int(quote.readBack),
        sqlText(quote.scribe),
        sqlDate(quote.on),
        quote.stars,
        sqlText(quote.firstWords),
        sqlId(quote.sheet),
        sqlId(quote.drawing),
        sqlId(quote.repliesTo)};
}

void readRow(RowReader& row, Quote& quote)
{
    quote.id = row.id<QuoteId>();
    quote.experience = row.id<ExperienceId>();
    quote.child = row.id<ChildId>();
    quote.prompt = row.text();
    quote.meeting = row.id<MeetingId>();
    quote.words = row.text();
    quote.language = row.text();
    quote.telling = row.known(tellingFromName(row.text()));
    quote.dictation = row.known(dictationFromName(row.text()));
    quote.readBack = row.yes();
    quote.scribe = row.text();
    quote.on = row.date();
    quote.stars = row.number();
    quote.firstWords = row.text();
    quote.sheet = row.id<PictureId>();
    quote.drawing = row.id<PictureId>();
    quote.repliesTo = row.id<QuoteId>();
}

TableForm formOf(const NoAnswer* /*kind*/)
{
    return {"no_answers", "id, experience_id, child_id, prompt_key, why, note, asked_on, noted_by"};
}

QVariantList valuesOf(const NoAnswer& missing)
{
    return {sqlId(missing.id),
        sqlId(missing.experience),
        sqlId(missing.child),
        sqlText(missing.prompt),
        nameOf(missing.why),
        sqlText(missing.note),
        sqlDate(missing.on),
        sqlText(missing.by)};
}

void readRow(RowReader& row, NoAnswer& missing)
{
    missing.id = row.id<NoAnswerId>();
    missing.experience = row.id<ExperienceId>();
    missing.child = row.id<ChildId>();
    missing.prompt = row.text();
    missing.why = row.known(whyNoAnswerFromName(row.text()));
    missing.note = row.text();
    missing.on = row.date();
    missing.by = row.text();
}

} // namespace wainscot
