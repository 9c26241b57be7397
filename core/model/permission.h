// What a family allowed, for whom. Not said = no.
#pragma once

#include <QString>

#include <array>
#include <bitset>
#include <optional>

namespace wainscot {

enum class Audience { Classroom, Building, Families, Public };
inline constexpr std::array kAudiences{
    Audience::Classroom, Audience::Building, Audience::Families, Audience::Public};

enum class Permission {
    Photo, // may be seen in a picture
    FirstName, // may be named
    Words, // may be quoted
    Work, // what the child made may hang
    PhotoWithName, // may be seen and named on the same display
};
inline constexpr std::array kPermissions{Permission::Photo,
    Permission::FirstName,
    Permission::Words,
    Permission::Work,
    Permission::PhotoWithName};

class Permissions {
public:
    [[nodiscard]] bool allows(Permission permission, Audience audience) const
    {
        return m_yes.test(index(permission, audience));
    }
    void set(Permission permission, Audience audience, bool yes)
    {
        m_yes.set(index(permission, audience), yes);
    }
    static Permissions all();

    // All answers as one number for storage: bit 5 * audience + permission.
    [[nodiscard]] unsigned bits() const { return static_cast<unsigned>(m_yes.to_ulong()); }
    static Permissions fromBits(unsigned bits);

    friend bool operator==(const Permissions&, const Permissions&) = default;

private:
    static constexpr std::size_t index(Permission permission, Audience audience)
    {
        return static_cast<std::size_t>(audience) * kPermissions.size()
            + static_cast<std::size_t>(permission);
    }
    std::bitset<kAudiences.size() * kPermissions.size()> m_yes;
};

// The words of the command line and of CSV files: "classroom", "building", "families", "public".
[[nodiscard]] QString nameOf(Audience audience);
[[nodiscard]] std::optional<Audience> audienceFromName(const QString& name);
// "photo", "first_name", "words", "work", "photo_with_name"
[[nodiscard]] QString nameOf(Permission permission);

} // namespace wainscot
