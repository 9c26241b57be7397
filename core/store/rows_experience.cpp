#include "core/store/rows.h"

namespace wainscot {

namespace {

// Wall clock of the place, without an offset.
const QLatin1String kLocalTime("yyyy-MM-ddTHH:mm:ss.zzz");

QVariant nothing()
{
    return QVariant(QMetaType::fromType<QString>());
}

} // namespace

TableForm formOf(const Experience* /*kind*/)
{
    return {"experiences",
        "id, title, happened_on, place, materials, sense, goals, context, interpretation, "
        "next_steps, credits, language, prompt_set_id, invitation, follows_id"};
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
        sqlText(experience.invitation),
        sqlId(experience.follows)};
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
    experience.follows = row.id<ExperienceId>();
}

TableForm formOf(const Observation* /*kind*/)
{
    return {"observations", "id, experience_id, words, seen_at, picture_id"};
}

QVariantList valuesOf(const Observation& observation)
{
    QVariant at = nothing();
    if (observation.at) {
        const QDateTime& time = *observation.at;
        at = time.toOffsetFromUtc(time.offsetFromUtc()).toString(Qt::ISODateWithMs);
    }
    return {sqlId(observation.id),
        sqlId(observation.experience),
        sqlText(observation.words),
        at,
        sqlId(observation.picture)};
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
    observation.picture = row.id<PictureId>();
}

TableForm formOf(const Picture* /*kind*/)
{
    return {"pictures",
        "id, experience_id, kind, sha256, format, file_name, width_px, height_px, orientation, "
        "captured_local, captured_offset_minutes, caption, is_looked_at, taken_by, stay_x, "
        "stay_y, stay_width, stay_height, stars, treatment, look_hash, look_sharpness, "
        "look_lightness, look_dark_permille, look_bright_permille, display_id, hung_on, "
        "panels_are_legible"};
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
        values << QString::number(look->hash, 16) << look->sharpness << look->lightness
               << look->dark << look->bright;
    else
        values << nothing() << nothing() << nothing() << nothing() << nothing();
    return values << sqlId(picture.display) << sqlDate(picture.hungOn)
                  << int(picture.panelsLegible);
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
    picture.display = row.id<DisplayId>();
    picture.hungOn = row.date();
    picture.panelsLegible = row.yes();
}

} // namespace wainscot
