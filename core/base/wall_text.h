// What the program itself writes for children and families to read: on walls, on sheets to answer
// on, and in the term's file. It speaks the language of the book or the display, not the window's;
// what people wrote is left as it is.
#pragma once

#include <QString>
#include <QStringList>

namespace wainscot {

enum class WallText {
    // Children
    AChild, // who is not named; in a child's words it stands in square brackets
    SomeChildren, // %1 = how many, 2 or more
    AgesFromTo, // %1, %2 = years
    And, // %1 and %2
    AndBeforeI, // where %2 begins with the sound of i; some languages say another "and" there
    // How something was told
    OwnWriting,
    Drawn,
    Signed,
    Pointed,
    WorkedUpTogether,
    // Pictures for those who do not see them
    Photo,
    WorkSample,
    // Days, as forms of QDate::toString
    DayOfWeekAndMonth,
    DayOfWeekMonthAndYear,
    DayOfMonth,
    DayOfMonthAndYear,
    FirstDayOfTwo, // the 3 of "3-6 November"
    // The small print: how words were taken down
    AsSpoken,
    AsSpokenReadBack,
    SomeTogether,
    SomeTogetherReadBack,
    TakenBy, // %1 = one of the four above, %2 = names
    // Headings on a wall
    WhatWeMakeOfIt,
    Next,
    Continued, // %1 = a label
    ForOurFamilies,
    // One idea over several meetings
    MeetingsAndChildren, // %1 = meetings, %2 = children, in words
    MeetingsAndOneChild, // %1 = meetings, in words
    NumbersInWords, // 0 to 8, with spaces between
    // Questions that are ready
    NoticeThinkWonder,
    WhatNotice,
    WhatThink,
    WhatWonder,
    HearThinkWonder,
    WhatHear,
    WhatMakesIt,
    TouchThinkWonder,
    HowFeels,
    WhatItMakesThinkOf,
    TasteAndSmell,
    WhatTaste,
    WhatSmell,
    WhereFrom,
    OneThing,
    ShowMe,
    BeforeAndNow,
    WhatOthersMissed,
    WhatMakesYouThinkSo,
    ChangedYourMind,
    HowFindOut,
    Hearing,
    Touch,
    TasteOrSmell,
    // The term's file
    Contents,
    FromTo, // days
    ForClassroom,
    ForBuilding,
    ForFamilies,
    ForPublic,
    AskedAgainOn, // %1 = day
    OneExperience,
    SomeExperiences, // %1 = how many
    OneMeeting,
    SomeMeetings, // %1 = how many
    OneWall,
    SomeWalls, // %1 = how many
    When,
    Where,
    With,
    Aims,
    WhatHappened,
    Credits,
    AsItHung, // %1 = a wall
    Photographed,
    PanelOf, // %1 = a wall, %2 = number, %3 = how many
    HungClassroom, // %1 x %2 mm, %3 = per cent
    HungBuilding,
    HungFamilies,
    HungPublic,
    OnTheWall, // %1 = a wall
    WhatTheySaid,
    BelongsTogether,
    Together,
    Meetings,
    About,
    Notes,
    Agreed,
    NotAgreed,
    MindChanged,
    Pictures,
    LookingBack,
    Seen,
    WhoWasHeard,
    Heard, // %1 = a question
    NotYetHeard, // %1 = a question
};

// `language` is BCP 47; English where nobody has written it in that language.
[[nodiscard]] QString wallText(WallText text, const QString& language);
[[nodiscard]] bool hasWallTexts(const QString& language);
// Those with texts, English first: "en", "de", "es", ...
[[nodiscard]] const QStringList& wallLanguages();

} // namespace wainscot
