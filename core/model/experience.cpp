#include "core/model/experience.h"

#include <algorithm>

namespace wainscot {

const Prompt* PromptSet::find(const QString& key) const
{
    const QString wanted = key.trimmed();
    const auto at = std::find_if(prompts.begin(), prompts.end(), [&](const Prompt& prompt) {
        return prompt.key.compare(wanted, Qt::CaseInsensitive) == 0;
    });
    return at == prompts.end() ? nullptr : &*at;
}

PromptSet defaultPromptSet()
{
    PromptSet set;
    set.name = QStringLiteral("Notice, think, wonder");
    set.language = QStringLiteral("en");
    set.prompts = {
        {QStringLiteral("notice"), QStringLiteral("What do you notice?")},
        {QStringLiteral("think"), QStringLiteral("What do you think about it?")},
        {QStringLiteral("wonder"), QStringLiteral("What do you wonder?")},
    };
    return set;
}

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

QString nameOf(PictureKind kind)
{
    return kind == PictureKind::Photo ? QStringLiteral("photo") : QStringLiteral("work");
}

std::optional<PictureKind> pictureKindFromName(const QString& name)
{
    const QString wanted = name.trimmed().toLower();
    for (const PictureKind kind : {PictureKind::Photo, PictureKind::Work}) {
        if (nameOf(kind) == wanted)
            return kind;
    }
    return std::nullopt;
}

QString nameOf(Translated what)
{
    switch (what) {
    case Translated::Title:
        return QStringLiteral("title");
    case Translated::Context:
        return QStringLiteral("context");
    case Translated::Interpretation:
        return QStringLiteral("interpretation");
    case Translated::NextSteps:
        return QStringLiteral("next_steps");
    case Translated::Invitation:
        return QStringLiteral("invitation");
    case Translated::Words:
        return QStringLiteral("words");
    case Translated::Caption:
        return QStringLiteral("caption");
    }
    return {};
}

std::optional<Translated> translatedFromName(const QString& name)
{
    for (const Translated what : {Translated::Title,
             Translated::Context,
             Translated::Interpretation,
             Translated::NextSteps,
             Translated::Invitation,
             Translated::Words,
             Translated::Caption}) {
        if (nameOf(what) == name)
            return what;
    }
    return std::nullopt;
}

} // namespace wainscot
