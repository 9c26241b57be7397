#include "core/model/experience.h"

namespace wainscot {

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
