#include "core/model/permission.h"

namespace wainscot {

Permissions Permissions::all()
{
    Permissions everything;
    everything.m_yes.set();
    return everything;
}

Permissions Permissions::fromBits(unsigned bits)
{
    Permissions permissions;
    permissions.m_yes = decltype(permissions.m_yes)(bits);
    return permissions;
}

QString nameOf(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return QStringLiteral("classroom");
    case Audience::Building:
        return QStringLiteral("building");
    case Audience::Families:
        return QStringLiteral("families");
    case Audience::Public:
        return QStringLiteral("public");
    }
    return {};
}

std::optional<Audience> audienceFromName(const QString& name)
{
    const QString wanted = name.trimmed().toLower();
    for (const Audience audience : kAudiences) {
        if (nameOf(audience) == wanted)
            return audience;
    }
    return std::nullopt;
}

QString nameOf(Permission permission)
{
    switch (permission) {
    case Permission::Photo:
        return QStringLiteral("photo");
    case Permission::FirstName:
        return QStringLiteral("first_name");
    case Permission::Words:
        return QStringLiteral("words");
    case Permission::Work:
        return QStringLiteral("work");
    case Permission::PhotoWithName:
        return QStringLiteral("photo_with_name");
    }
    return {};
}

} // namespace wainscot
