#include "samples/sample_texts.h"

namespace wainscot::samples {

namespace {

const QString& puddle()
{
    static const QString title = QStringLiteral("Where does the puddle go?");
    return title;
}

const QString& cloud()
{
    static const QString title = QStringLiteral("The cloud that drinks");
    return title;
}

SampleExperience puddleTelling()
{
    SampleExperience telling;
    telling.title = puddle();
    telling.on = QDate(2026, 11, 2);
    telling.place = QStringLiteral("the yard by the bicycle shed");
    telling.materials = QStringLiteral("chalk, red string, jars, a jug");
    telling.sense = QStringLiteral("sight, touch");
    telling.context =
        QStringLiteral("One puddle stayed by the bicycle shed after the rain. Would it "
                       "be there tomorrow? We looked after it for four days.");
    telling.interpretation = QStringLiteral(
        "The chalk line was meant to keep the puddle in. By Wednesday it had become a clock, and "
        "the children were reading it.");
    telling.nextSteps =
        QStringLiteral("Two jars on the sill, one with a lid. Which will be empty first?");
    telling.credits = QStringLiteral(
        "Sparrows, 2–5 November. Words taken down as spoken and read back by R. Okafor and "
        "L. Brandt.");
    return telling;
}

SampleExperience cloudTelling()
{
    SampleExperience telling;
    telling.title = cloud();
    telling.on = QDate(2026, 11, 4);
    telling.place = QStringLiteral("the drawing table");
    telling.materials = QStringLiteral("crayons, felt pens");
    telling.sense = QStringLiteral("sight");
    telling.credits =
        QStringLiteral("Told to R. Okafor while drawing, 4 November. Her exact words, read back.");
    return telling;
}

std::vector<StarredWords> stars()
{
    const auto words = [](const char* child, const char* prompt, int count) {
        return StarredWords{puddle(), QString::fromUtf8(child), QString::fromLatin1(prompt), count};
    };
    return {
        words("Kofi Mensah", "notice", 3),
        words("Juno Achterberg", "notice", 3),
        words("Mina Rostami", "think", 3),
        words("Wren Halloway", "think", 3),
        words("Priya Raman", "think", 2),
        words("Leo Baptiste", "wonder", 2),
        words("Leo Baptiste", "think", 2),
        words("Noor Haddad", "wonder", 2),
        words("Hana Kovářová", "think", 1),
        words("Eli Brodsky", "notice", 1),
    };
}

// The chalk lines would look cut off by mistake, so they must stay whole.
std::vector<PictureNote> notes()
{
    const auto note = [](const char* file, int count, std::optional<RectFraction> part) {
        return PictureNote{QString::fromLatin1(file), count, part};
    };
    return {
        note("chalk_shrinking.jpg", 3, RectFraction{.05, .2, .88, .7}),
        note("chalk_day1.jpg", 2, RectFraction{.04, .25, .89, .58}),
        note("string_around.jpg", 2, RectFraction{.06, .22, .84, .68}),
        note("puddle_gone.jpg", 2, RectFraction{.05, .19, .88, .7}),
        note("wet_hands.jpg", 2, RectFraction{.11, .25, .85, .37}),
        note("jar_row.jpg", 1, RectFraction{.06, .25, .9, .45}),
        note("cloud_over_roofs.jpg", 1, std::nullopt),
        note("jug_and_funnel.jpg", 1, std::nullopt),
    };
}

} // namespace

SampleClass sampleTexts()
{
    SampleClass sample;
    sample.title = QStringLiteral("Sparrows, autumn");
    sample.experiences = {puddleTelling(), cloudTelling()};
    sample.stars = stars();
    sample.languages = {{QStringLiteral("Noor Haddad"), QStringLiteral("ar")},
        {QStringLiteral("Ines Carvalho"), QStringLiteral("pt")}};
    sample.pictures = notes();
    sample.meetings = {
        {puddle(),
            QDate(2026, 11, 4),
            QStringLiteral(
                "Where it goes: up, down, or carried off on boots. Mina showed her hand on "
                "the wall; Hana asked for a lid.")},
        {puddle(),
            QDate(2026, 11, 5),
            QStringLiteral("Nothing inside the yellow line. Whether what comes down again is still "
                           "ours was left open.")},
    };
    return sample;
}

} // namespace wainscot::samples
