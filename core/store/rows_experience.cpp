#include "core/store/rows.h"

namespace wainscot {

namespace {

const QLatin1String kExact("exact");
const QLatin1String kWorkedUp("worked_up");
// Wall clock of the place, without an offset.
const QLatin1String kLocalTime("yyyy-MM-ddTHH:mm:ss.zzz");

QVariant nothing()
{
    return QVariant(QMetaType::fromType<QString>());
}

std::optional<Dictation> dictationFromName(const QString& name)
{
    if (name == kExact)
        return Dictation::Exact;
    if (name == kWorkedUp)
        return Dictation::WorkedUp;
    return std::nullopt;
}

} // namespace

TableForm formOf(const Experience* /*kind*/)
{
    return {"experiences",
        "id, title, happened_on, place, materials, sense, goals, context, interpretation, "
        "next_steps, credits, language, prompt_set_id, invitation"};
}

QVariantList valuesOf(const Experience& experience)
{
    return {sqlId(experience.id),
        sqlText(experience.title),
        sqlDate(experience.on),
        sqlText(experience.place),
        sqlText(experience.materials),
        sqlText(experience.sense),
        sqlText(experience.goals),
        sqlText(experience.context),
        sqlText(experience.interpretation),
        sqlText(experience.nextSteps),
        sqlText(experience.credits),
        sqlText(experience.language),
        sqlId(experience.promptSet),
        sqlText(experience.invitation)};
}

void readRow(RowReader& row, Experience& experience)
{
    experience.id = row.id<ExperienceId>();
    experience.title = row.text();
    experience.on = row.date();
    experience.place = row.text();
    experience.materials = row.text();
    experience.sense = row.text();
    experience.goals = row.text();
    experience.context = row.text();
    experience.interpretation = row.text();
    experience.nextSteps = row.text();
    experience.credits = row.text();
    experience.language = row.text();
    experience.promptSet = row.id<PromptSetId>();
    experience.invitation = row.text();
}

TableForm formOf(const Quote* /*kind*/)
{
    return {"quotes",
        "id, experience_id, child_id, prompt_key, meeting_id, words, language, telling, "
        "dictation, is_read_back, scribe, said_on, stars"};
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
        quote.dictation == Dictation::Exact ? kExact : kWorkedUp,
        int(quote.readBack),
        sqlText(quote.scribe),
        sqlDate(quote.on),
        quote.stars};
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
}

TableForm formOf(const Observation* /*kind*/)
{
    return {"observations", "id, experience_id, words, seen_at"};
}

QVariantList valuesOf(const Observation& observation)
{
    QVariant at = nothing();
    if (observation.at) {
        const QDateTime& time = *observation.at;
        at = time.toOffsetFromUtc(time.offsetFromUtc()).toString(Qt::ISODateWithMs);
    }
    return {sqlId(observation.id), sqlId(observation.experience), sqlText(observation.words), at};
}

void readRow(RowReader& row, Observation& observation)
{
    observation.id = row.id<ObservationId>();
    observation.experience = row.id<ExperienceId>();
    observation.words = row.text();
    if (const QString at = row.text(); !at.isEmpty()) {
        observation.at = QDateTime::fromString(at, Qt::ISODateWithMs);
        row.mustHold(observation.at->isValid());
    }
}

TableForm formOf(const Picture* /*kind*/)
{
    return {"pictures",
        "id, experience_id, kind, sha256, format, file_name, width_px, height_px, orientation, "
        "captured_local, captured_offset_minutes, caption, is_looked_at, taken_by, stay_x, "
        "stay_y, stay_width, stay_height, stars, treatment, look_hash, look_sharpness, "
        "look_lightness, look_dark_permille, look_bright_permille"};
}

QVariantList valuesOf(const Picture& picture)
{
    QVariantList values{sqlId(picture.id),
        sqlId(picture.experience),
        nameOf(picture.kind),
        sqlText(picture.sha256),
        sqlText(picture.format),
        sqlText(picture.fileName),
        picture.size.width,
        picture.size.height,
        picture.orientation};
    values << (picture.captured ? QVariant(picture.captured->local.toString(kLocalTime))
                                : nothing());
    values << (picture.captured && picture.captured->offsetMinutes
            ? QVariant(*picture.captured->offsetMinutes)
            : nothing());
    values << sqlText(picture.caption) << int(picture.people.lookedAt) << sqlText(picture.by);
    if (const auto& stay = picture.mustStay)
        values << stay->x << stay->y << stay->width << stay->height;
    else
        values << nothing() << nothing() << nothing() << nothing();
    values << picture.stars << sqlText(textOf(picture.treatment));
    if (const auto& look = picture.look)
        return values << QString::number(look->hash, 16) << look->sharpness << look->lightness
                      << look->dark << look->bright;
    return values << nothing() << nothing() << nothing() << nothing() << nothing();
}

namespace {

void readLook(RowReader& row, Picture& picture)
{
    const QVariant hash = row.next();
    PictureLook look;
    look.sharpness = row.number();
    look.lightness = row.number();
    look.dark = row.number();
    look.bright = row.number();
    if (hash.isNull())
        return;
    bool isNumber = false;
    look.hash = hash.toString().toULongLong(&isNumber, 16);
    row.mustHold(isNumber);
    picture.look = look;
}

} // namespace

void readRow(RowReader& row, Picture& picture)
{
    picture.id = row.id<PictureId>();
    picture.experience = row.id<ExperienceId>();
    picture.kind = row.known(pictureKindFromName(row.text()));
    picture.sha256 = row.text();
    picture.format = row.text();
    picture.fileName = row.text();
    picture.size.width = row.number();
    picture.size.height = row.number();
    picture.orientation = row.number();
    const QString local = row.text();
    const std::optional<int> offset = row.numberOrNothing();
    if (!local.isEmpty()) {
        picture.captured = CaptureTime{QDateTime::fromString(local, kLocalTime), offset};
        row.mustHold(picture.captured->local.isValid());
    }
    picture.caption = row.text();
    picture.people.lookedAt = row.yes();
    picture.by = row.text();
    const QVariant x = row.next();
    const double y = row.real();
    const double width = row.real();
    const double height = row.real();
    if (!x.isNull())
        picture.mustStay = RectFraction{x.toDouble(), y, width, height};
    picture.stars = row.number();
    picture.treatment = row.known(treatmentFromText(row.text()));
    readLook(row, picture);
}

TableForm formOf(const Group* /*kind*/)
{
    return {"response_groups", "id, experience_id, label"};
}

QVariantList valuesOf(const Group& group)
{
    return {sqlId(group.id), sqlId(group.experience), sqlText(group.label)};
}

void readRow(RowReader& row, Group& group)
{
    group.id = row.id<GroupId>();
    group.experience = row.id<ExperienceId>();
    group.label = row.text();
}

TableForm formOf(const Meeting* /*kind*/)
{
    return {"meetings", "id, experience_id, met_on, notes"};
}

QVariantList valuesOf(const Meeting& meeting)
{
    return {
        sqlId(meeting.id), sqlId(meeting.experience), sqlDate(meeting.on), sqlText(meeting.notes)};
}

void readRow(RowReader& row, Meeting& meeting)
{
    meeting.id = row.id<MeetingId>();
    meeting.experience = row.id<ExperienceId>();
    meeting.on = row.date().value_or(QDate());
    meeting.notes = row.text();
}

} // namespace wainscot
