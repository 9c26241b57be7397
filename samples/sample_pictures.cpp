#include "samples/sample_pictures.h"

#include <algorithm>

#include "samples/pictures/catalogue.h"

namespace wainscot::samples {

namespace {

struct Shot {
    const char* file = nullptr;
    int day = 0; // of November 2026; 0 = a scanner, which knows no time
    int hour = 0;
    int minute = 0;
    int orientation = 1;
    bool zoned = true; // the camera knew its offset from UTC
};

constexpr int kMakerForm = 2; // goes up when the same recipe no longer gives the same picture
constexpr double kFurtherScale = 0.25; // further pictures, beyond the class's own, are smaller
constexpr double kSmallScale = 0.1;
constexpr std::uint32_t kSeedStep = 1000; // from one seed of a class or a picture to the next

// Monday to Thursday in the order the day went. A phone held upright stores its pictures sideways.
constexpr Shot kShots[] = {
    {"chalk_shrinking.jpg", 4, 9, 45},
    {"chalk_day1.jpg", 2, 10, 40},
    {"string_around.jpg", 3, 10, 5},
    {"wet_hands.jpg", 4, 10, 20},
    {"puddle_gone.jpg", 5, 10, 2},
    {"drawing_puddle_arrows.png", 0, 0, 0},
    {"rubber_boots.jpg", 2, 10, 55, 6},
    {"puddle_branches.jpg", 2, 9, 3},
    {"puddle_raindrops.jpg", 2, 8, 50, 8},
    {"drawing_worm.tif", 0, 0, 0},
    {"mud_prints.jpg", 3, 11, 15, 6, false},
    {"wet_leaves.webp", 3, 10, 30},
    {"snail_on_stone.jpg", 3, 11, 30, 3},
    {"drawing_umbrella.jpg", 0, 0, 0},
    {"jug_and_funnel.jpg", 4, 13, 5},
    {"jar_row.jpg", 5, 13, 20},
    {"window_drops.jpg", 4, 12, 45, 6},
    {"drawing_yard_map.jpg", 0, 0, 0},
    {"cloud_over_roofs.jpg", 5, 10, 20},
    {"drawing_measuring.jpg", 0, 0, 0},
    {"sieve_on_sand.jpg", 5, 11, 0, 1, false},
    {"yard_panorama.jpg", 5, 11, 10},
    {"drawing_sun_photo.jpg", 5, 13, 40},
};

SamplePicture fromShot(const Shot& shot)
{
    SamplePicture picture;
    picture.file = QString::fromLatin1(shot.file);
    picture.scene = picture.file.section(QLatin1Char('.'), 0, 0);
    picture.notes.orientation = shot.orientation;
    if (shot.day > 0) {
        picture.notes.taken = QDateTime(QDate(2026, 11, shot.day), QTime(shot.hour, shot.minute));
        picture.notes.makerNote = true;
        if (shot.zoned)
            picture.notes.offsetMinutes = 60;
    }
    return picture;
}

double scaleOf(const SamplePicture& picture, const Wish& wish)
{
    return picture.scale * (wish.small ? kSmallScale : 1.0);
}

// What is added to the catalogue's seed. The three chalk pictures have the same one there, so they
// show the same puddle whatever the seed.
std::uint32_t seedOf(const SamplePicture& picture, const Wish& wish)
{
    return picture.seed + kSeedStep * (wish.seed - 1u);
}

const Entry* sceneByName(const QString& name)
{
    const auto& all = catalogue();
    const auto at = std::find_if(all.begin(), all.end(), [&](const Entry& entry) {
        return name == QLatin1String(entry.name);
    });
    return at == all.end() ? nullptr : &*at;
}

} // namespace

std::vector<SamplePicture> puddlePictures(const Wish& wish)
{
    std::vector<SamplePicture> pictures;
    for (const Shot& shot : kShots)
        pictures.push_back(fromShot(shot));
    const auto own = pictures.size();
    const auto wanted = static_cast<std::size_t>(std::max(0, wish.photos.value_or(int(own))));
    for (std::size_t i = own; i < wanted; ++i) {
        SamplePicture further = pictures[i % own];
        further.file = QStringLiteral("further_%1.jpg").arg(i + 1, 5, 10, QLatin1Char('0'));
        further.like = pictures[i % own].file;
        further.seed += kSeedStep * static_cast<std::uint32_t>(i / own) * 7;
        further.scale = kFurtherScale;
        if (further.notes.taken)
            further.notes.taken = further.notes.taken->addSecs(static_cast<qint64>(i) * 47);
        pictures.push_back(further);
    }
    pictures.resize(wanted);
    return pictures;
}

// Other pictures of known scenes: another worm, the sieve where they dug, the jars a day later.
std::vector<SamplePicture> threadPictures(const Wish& wish)
{
    if (wish.photos && *wish.photos == 0)
        return {};
    constexpr std::uint32_t kOther = 5;
    constexpr double kPhoneScale = 0.6;
    const auto picture = [](const Shot& shot, const char* scene, double scale) {
        SamplePicture made = fromShot(shot);
        made.scene = QString::fromLatin1(scene);
        made.seed = kOther;
        made.scale = scale;
        return made;
    };
    return {picture({"worm_full.tif", 0, 0, 0}, "drawing_worm", 1),
        picture({"dug_sand.jpg", 4, 10, 40}, "sieve_on_sand", kPhoneScale),
        picture({"jars_on_sill.jpg", 5, 13, 30}, "jar_row", kPhoneScale)};
}

std::vector<SamplePicture> drawingPictures(const Wish& wish)
{
    if (wish.photos && *wish.photos == 0)
        return {};
    SamplePicture cloud;
    cloud.file = QStringLiteral("drawing_cloud_drinks.jpg");
    cloud.scene = QStringLiteral("drawing_cloud_drinks");
    return {cloud};
}

QString recipeOf(const SamplePicture& picture, const Wish& wish)
{
    const CameraNotes& notes = picture.notes;
    return QStringLiteral("form %1, %2 seed %3 scale %4 turned %5 taken %6 zone %7")
        .arg(kMakerForm)
        .arg(picture.scene)
        .arg(seedOf(picture, wish))
        .arg(scaleOf(picture, wish))
        .arg(notes.orientation)
        .arg(notes.taken ? notes.taken->toString(Qt::ISODate) : QStringLiteral("never"))
        .arg(notes.offsetMinutes ? QString::number(*notes.offsetMinutes) : QStringLiteral("none"));
}

Result<> makePicture(const QString& path, const SamplePicture& picture, const Wish& wish)
{
    const Entry* entry = sceneByName(picture.scene);
    if (entry == nullptr)
        return Error{ErrorCode::Internal, picture.scene, QStringLiteral("no such scene")};
    const QSize size = (QSizeF(entry->size) * scaleOf(picture, wish)).toSize();
    return writeCameraFile(
        path, entry->make(size, entry->seed + seedOf(picture, wish)), picture.notes);
}

} // namespace wainscot::samples
