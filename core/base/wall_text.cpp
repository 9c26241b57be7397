#include "core/base/wall_text.h"

#include "core/base/language_name.h"

#include <QCoreApplication>
#include <QDir>
#include <QTranslator>

#include <array>
#include <map>
#include <memory>

namespace wainscot {

namespace {

using W = WallText;

struct Words {
    const char* text = nullptr;
    const char* note = nullptr; // tells apart what is the same in English
};

struct English {
    WallText what{};
    Words words;
};

// In the order of WallText.
constexpr std::array kEnglish = std::to_array<English>({
    {W::AChild, {QT_TRANSLATE_NOOP("WallText", "a child")}},
    {W::SomeChildren, {QT_TRANSLATE_NOOP("WallText", "%1 children")}},
    {W::AgesFromTo, QT_TRANSLATE_NOOP3("WallText", "%1 to %2", "years of age")},
    {W::And, {QT_TRANSLATE_NOOP("WallText", "%1 and %2")}},
    {W::AndBeforeI, QT_TRANSLATE_NOOP3("WallText", "%1 and %2", "before the sound of i")},
    {W::OwnWriting, {QT_TRANSLATE_NOOP("WallText", "own writing")}},
    {W::Drawn, {QT_TRANSLATE_NOOP("WallText", "drawn")}},
    {W::Signed, QT_TRANSLATE_NOOP3("WallText", "signed", "in a sign language")},
    {W::Pointed, {QT_TRANSLATE_NOOP("WallText", "pointed")}},
    {W::WorkedUpTogether, {QT_TRANSLATE_NOOP("WallText", "worked up together")}},
    {W::Photo, {QT_TRANSLATE_NOOP("WallText", "Photo")}},
    {W::WorkSample, {QT_TRANSLATE_NOOP("WallText", "Work sample")}},
    {W::DayOfWeekAndMonth, {QT_TRANSLATE_NOOP("WallText", "dddd, d MMMM")}},
    {W::DayOfWeekMonthAndYear, {QT_TRANSLATE_NOOP("WallText", "dddd, d MMMM yyyy")}},
    {W::DayOfMonth, {QT_TRANSLATE_NOOP("WallText", "d MMMM")}},
    {W::DayOfMonthAndYear, {QT_TRANSLATE_NOOP("WallText", "d MMMM yyyy")}},
    {W::FirstDayOfTwo, QT_TRANSLATE_NOOP3("WallText", "d", "day of the month, first of two")},
    {W::AsSpoken, {QT_TRANSLATE_NOOP("WallText", "Words taken down as spoken")}},
    {W::AsSpokenReadBack,
        {QT_TRANSLATE_NOOP("WallText", "Words taken down as spoken and read back")}},
    {W::SomeTogether, {QT_TRANSLATE_NOOP("WallText", "Words taken down, some worked up together")}},
    {W::SomeTogetherReadBack,
        {QT_TRANSLATE_NOOP("WallText", "Words taken down, some worked up together and read back")}},
    {W::TakenBy, {QT_TRANSLATE_NOOP("WallText", "%1 by %2")}},
    {W::WhatWeMakeOfIt, {QT_TRANSLATE_NOOP("WallText", "What we make of it")}},
    {W::Next, {QT_TRANSLATE_NOOP("WallText", "Next")}},
    {W::Continued, {QT_TRANSLATE_NOOP("WallText", "%1 (continued)")}},
    {W::ForOurFamilies, {QT_TRANSLATE_NOOP("WallText", "For our families")}},
    {W::MeetingsAndChildren,
        {QT_TRANSLATE_NOOP(
            "WallText", "%1 meetings, %2 children. We kept the words and one picture from each.")}},
    {W::MeetingsAndOneChild,
        {QT_TRANSLATE_NOOP(
            "WallText", "%1 meetings, one child. We kept the words and one picture from each.")}},
    {W::NumbersInWords,
        QT_TRANSLATE_NOOP3("WallText",
            "no one two three four five six seven eight",
            "0 to 8, with spaces between")},
    {W::NoticeThinkWonder, {QT_TRANSLATE_NOOP("WallText", "Notice, think, wonder")}},
    {W::WhatNotice, {QT_TRANSLATE_NOOP("WallText", "What do you notice?")}},
    {W::WhatThink, {QT_TRANSLATE_NOOP("WallText", "What do you think about it?")}},
    {W::WhatWonder, {QT_TRANSLATE_NOOP("WallText", "What do you wonder?")}},
    {W::HearThinkWonder, {QT_TRANSLATE_NOOP("WallText", "Hear, think, wonder")}},
    {W::WhatHear, {QT_TRANSLATE_NOOP("WallText", "What do you hear?")}},
    {W::WhatMakesIt, {QT_TRANSLATE_NOOP("WallText", "What do you think makes it?")}},
    {W::TouchThinkWonder, {QT_TRANSLATE_NOOP("WallText", "Touch, think, wonder")}},
    {W::HowFeels, {QT_TRANSLATE_NOOP("WallText", "How does it feel?")}},
    {W::WhatItMakesThinkOf, {QT_TRANSLATE_NOOP("WallText", "What does it make you think of?")}},
    {W::TasteAndSmell, {QT_TRANSLATE_NOOP("WallText", "Taste and smell")}},
    {W::WhatTaste, {QT_TRANSLATE_NOOP("WallText", "What do you taste?")}},
    {W::WhatSmell, {QT_TRANSLATE_NOOP("WallText", "What do you smell?")}},
    {W::WhereFrom, {QT_TRANSLATE_NOOP("WallText", "Where do you think it comes from?")}},
    {W::OneThing, {QT_TRANSLATE_NOOP("WallText", "One thing")}},
    {W::ShowMe, {QT_TRANSLATE_NOOP("WallText", "Show me something. What is it doing?")}},
    {W::BeforeAndNow, {QT_TRANSLATE_NOOP("WallText", "Before and now")}},
    {W::WhatOthersMissed,
        {QT_TRANSLATE_NOOP("WallText", "What do you notice that others may have missed?")}},
    {W::WhatMakesYouThinkSo,
        {QT_TRANSLATE_NOOP("WallText", "What do you think, and what makes you think so?")}},
    {W::ChangedYourMind, {QT_TRANSLATE_NOOP("WallText", "Has anything changed your mind?")}},
    {W::HowFindOut, {QT_TRANSLATE_NOOP("WallText", "How could we find out?")}},
    {W::Hearing, {QT_TRANSLATE_NOOP("WallText", "hearing")}},
    {W::Touch, {QT_TRANSLATE_NOOP("WallText", "touch")}},
    {W::TasteOrSmell, {QT_TRANSLATE_NOOP("WallText", "taste and smell")}},
    {W::Contents, {QT_TRANSLATE_NOOP("WallText", "Contents")}},
    {W::FromTo, QT_TRANSLATE_NOOP3("WallText", "%1 to %2", "days")},
    {W::ForClassroom, {QT_TRANSLATE_NOOP("WallText", "For the classroom")}},
    {W::ForBuilding, {QT_TRANSLATE_NOOP("WallText", "For the building")}},
    {W::ForFamilies, {QT_TRANSLATE_NOOP("WallText", "For families")}},
    {W::ForPublic, {QT_TRANSLATE_NOOP("WallText", "For the public")}},
    {W::AskedAgainOn,
        {QT_TRANSLATE_NOOP("WallText", "What families allow was asked again on %1.")}},
    {W::OneExperience, {QT_TRANSLATE_NOOP("WallText", "1 experience")}},
    {W::SomeExperiences, {QT_TRANSLATE_NOOP("WallText", "%1 experiences")}},
    {W::OneMeeting, {QT_TRANSLATE_NOOP("WallText", "1 meeting")}},
    {W::SomeMeetings, {QT_TRANSLATE_NOOP("WallText", "%1 meetings")}},
    {W::OneWall, {QT_TRANSLATE_NOOP("WallText", "1 wall")}},
    {W::SomeWalls, {QT_TRANSLATE_NOOP("WallText", "%1 walls")}},
    {W::When, {QT_TRANSLATE_NOOP("WallText", "When")}},
    {W::Where, {QT_TRANSLATE_NOOP("WallText", "Where")}},
    {W::With, QT_TRANSLATE_NOOP3("WallText", "With", "materials")},
    {W::Aims, {QT_TRANSLATE_NOOP("WallText", "Aims")}},
    {W::WhatHappened, {QT_TRANSLATE_NOOP("WallText", "What happened")}},
    {W::Credits, {QT_TRANSLATE_NOOP("WallText", "Credits")}},
    {W::AsItHung, {QT_TRANSLATE_NOOP("WallText", "%1, as it hung")}},
    {W::Photographed, QT_TRANSLATE_NOOP3("WallText", "Photographed", "on that day")},
    {W::PanelOf, {QT_TRANSLATE_NOOP("WallText", "%1, panel %2 of %3")}},
    {W::HungClassroom,
        {QT_TRANSLATE_NOOP("WallText", "hung for the classroom, %1 × %2 mm, here at %3 %")}},
    {W::HungBuilding,
        {QT_TRANSLATE_NOOP("WallText", "hung for the building, %1 × %2 mm, here at %3 %")}},
    {W::HungFamilies,
        {QT_TRANSLATE_NOOP("WallText", "hung for families, %1 × %2 mm, here at %3 %")}},
    {W::HungPublic,
        {QT_TRANSLATE_NOOP("WallText", "hung for the public, %1 × %2 mm, here at %3 %")}},
    {W::OnTheWall, {QT_TRANSLATE_NOOP("WallText", "On the wall: %1")}},
    {W::WhatTheySaid, {QT_TRANSLATE_NOOP("WallText", "What they said")}},
    {W::BelongsTogether, {QT_TRANSLATE_NOOP("WallText", "What belongs together")}},
    {W::Together, {QT_TRANSLATE_NOOP("WallText", "Together")}},
    {W::Meetings, {QT_TRANSLATE_NOOP("WallText", "Meetings")}},
    {W::About, {QT_TRANSLATE_NOOP("WallText", "About")}},
    {W::Notes, {QT_TRANSLATE_NOOP("WallText", "Notes")}},
    {W::Agreed, {QT_TRANSLATE_NOOP("WallText", "We agree on")}},
    {W::NotAgreed, {QT_TRANSLATE_NOOP("WallText", "Not agreed on")}},
    {W::MindChanged, {QT_TRANSLATE_NOOP("WallText", "A mind changed")}},
    {W::Pictures, {QT_TRANSLATE_NOOP("WallText", "Pictures")}},
    {W::LookingBack, {QT_TRANSLATE_NOOP("WallText", "Looking back")}},
    {W::Seen, QT_TRANSLATE_NOOP3("WallText", "Seen", "by an adult, noted")},
    {W::WhoWasHeard, {QT_TRANSLATE_NOOP("WallText", "Who was heard")}},
    {W::Heard, QT_TRANSLATE_NOOP3("WallText", "%1 heard", "a question")},
    {W::NotYetHeard, QT_TRANSLATE_NOOP3("WallText", "%1 not yet", "a question")},
});

constexpr bool isInOrder()
{
    for (std::size_t at = 0; at < kEnglish.size(); ++at) {
        if (static_cast<std::size_t>(kEnglish[at].what) != at)
            return false;
    }
    return true;
}
static_assert(isInOrder());

using Translators = std::map<QString, std::unique_ptr<QTranslator>>; // by language

const Translators& translators()
{
    static const Translators all = [] {
        Translators read;
        const QString folder = QStringLiteral(":/wall");
        for (const QString& file : QDir(folder).entryList(QDir::Files, QDir::Name)) {
            auto translator = std::make_unique<QTranslator>();
            const QString language =
                file.section(QLatin1Char('_'), -1).section(QLatin1Char('.'), 0, 0);
            if (translator->load(file, folder))
                read.emplace(language, std::move(translator));
        }
        return read;
    }();
    return all;
}

} // namespace

QString wallText(WallText text, const QString& language)
{
    const Words& english = kEnglish[static_cast<std::size_t>(text)].words;
    const auto at = translators().find(mainLanguage(language));
    const QString translated = at == translators().end()
        ? QString()
        : at->second->translate("WallText", english.text, english.note);
    return translated.isEmpty() ? QString::fromUtf8(english.text) : translated;
}

bool hasWallTexts(const QString& language)
{
    return wallLanguages().contains(mainLanguage(language));
}

const QStringList& wallLanguages()
{
    static const QStringList all = [] {
        QStringList codes{QStringLiteral("en")};
        for (const auto& [language, translator] : translators())
            codes << language;
        return codes;
    }();
    return all;
}

} // namespace wainscot
