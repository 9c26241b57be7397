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

const QString& drinking()
{
    static const QString title = QStringLiteral("Who is drinking the puddle?");
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
    telling.invitation = QStringLiteral(
        "What water do you remember from when you were a child? Write it here or draw it, in any "
        "language.");
    return telling;
}

SampleExperience drinkingTelling()
{
    SampleExperience telling;
    telling.title = drinking();
    telling.on = QDate(2026, 11, 3);
    telling.place = QStringLiteral("the yard and the window sill");
    telling.materials = QStringLiteral("a spade, a sieve, jars");
    telling.sense = QStringLiteral("sight");
    telling.interpretation = QStringLiteral("Yuki let a good idea go because of what they dug up, "
                                            "and took the next one from the jars.");
    telling.credits = QStringLiteral(
        "Sparrows, 3–5 November. Words taken down as spoken and read back by R. Okafor and "
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

// The Arabic is everyday speech, written for this class and not read by a native speaker.
std::vector<TranslatedText> translations()
{
    const QString arabic = QStringLiteral("ar");
    const auto own = [&](const char* what, const char* text) {
        return TranslatedText{
            puddle(), QString::fromLatin1(what), {}, {}, {}, arabic, QString::fromUtf8(text)};
    };
    const auto words =
        [](const char* child, const char* prompt, const char* into, const char* text) {
            return TranslatedText{puddle(),
                QStringLiteral("words"),
                QString::fromUtf8(child),
                QString::fromLatin1(prompt),
                {},
                QString::fromLatin1(into),
                QString::fromUtf8(text)};
        };
    const auto caption = [&](const char* file, const char* text) {
        return TranslatedText{puddle(),
            QStringLiteral("caption"),
            {},
            {},
            QString::fromLatin1(file),
            arabic,
            QString::fromUtf8(text)};
    };
    return {own("title", "إلى أين تذهب البركة؟"),
        own("context",
            "بقيت بركة واحدة قرب موقف الدراجات بعد المطر. هل ستكون هناك غدًا؟ اعتنينا بها أربعة "
            "أيام."),
        own("invitation", "أيّ ماء تذكرونه من أيام طفولتكم؟ اكتبوه هنا أو ارسموه، بأيّ لغة تحبّون."),
        caption("wet_hands.jpg", "يد مينا المبلولة، مرّة كلّ دقيقة. الأولى كادت تختفي."),
        caption("puddle_gone.jpg", "الخميس الساعة العاشرة. لا شيء داخل الخطّ الأصفر."),
        caption("yard_panorama.jpg", "الساحة كلّها. بحثوا في كلّ مكان."),
        words("Mina Rostami", "think", "ar", "إيدي المبلولة راحت كمان، والحيط ما شربها."),
        words("Juno Achterberg", "notice", "ar", "الطرف صار جوّا خطّنا وما حدا دفشه."),
        words("Noor Haddad", "think", "en", "The sun drinks it, little by little."),
        words("Noor Haddad", "wonder", "en", "If it went up, who brings it back?")};
}

} // namespace

SampleClass sampleTexts()
{
    SampleClass sample;
    sample.title = QStringLiteral("Sparrows, autumn");
    sample.experiences = {puddleTelling(), drinkingTelling(), cloudTelling()};
    sample.translations = translations();
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
        {drinking(), QDate(2026, 11, 3), {}, true},
        {drinking(),
            QDate(2026, 11, 4),
            QStringLiteral("They dug where the puddle had been. The worms were dry and thin."),
            true},
        {drinking(), QDate(2026, 11, 5), {}, true},
    };
    return sample;
}

} // namespace wainscot::samples
