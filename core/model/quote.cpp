#include "core/model/quote.h"

namespace wainscot {

QString nameOf(Telling telling)
{
    switch (telling) {
    case Telling::Said:
        return QStringLiteral("said");
    case Telling::Wrote:
        return QStringLiteral("wrote");
    case Telling::Drew:
        return QStringLiteral("drew");
    case Telling::Signed:
        return QStringLiteral("signed");
    case Telling::Pointed:
        return QStringLiteral("pointed");
    }
    return {};
}

std::optional<Telling> tellingFromName(const QString& name)
{
    const QString wanted = name.trimmed().toLower();
    for (const Telling telling :
        {Telling::Said, Telling::Wrote, Telling::Drew, Telling::Signed, Telling::Pointed}) {
        if (nameOf(telling) == wanted)
            return telling;
    }
    return std::nullopt;
}

QString nameOf(Dictation dictation)
{
    return dictation == Dictation::Exact ? QStringLiteral("exact") : QStringLiteral("worked_up");
}

std::optional<Dictation> dictationFromName(const QString& name)
{
    for (const Dictation dictation : {Dictation::Exact, Dictation::WorkedUp}) {
        if (nameOf(dictation) == name)
            return dictation;
    }
    return std::nullopt;
}

QString nameOf(WhyNoAnswer why)
{
    return why == WhyNoAnswer::Passes ? QStringLiteral("passes") : QStringLiteral("noted");
}

std::optional<WhyNoAnswer> whyNoAnswerFromName(const QString& name)
{
    for (const WhyNoAnswer why : {WhyNoAnswer::Passes, WhyNoAnswer::Noted}) {
        if (nameOf(why) == name)
            return why;
    }
    return std::nullopt;
}

} // namespace wainscot
