// Who is in a picture, said in its caption.
#include "core/permit/cleared.h"

#include "core/base/in_words.h"
#include "core/base/wall_text.h"
#include "core/permit/piece_clearing.h"
#include "core/permit/reasons.h"
#include "core/permit/sentence_start.h"

namespace wainscot {

std::optional<QString> PermissionRules::namingRefusal(
    const Child& child, const Picture& picture) const
{
    if (const auto why = namingRefusal(child))
        return why;
    // Whether or not the picture hangs already: named under it, the child is seen and named.
    if (picture.kind == PictureKind::Photo
        && !child.permissions.allows(Permission::PhotoWithName, m_display.audience))
        return reasons::seenSoNotNamed(child, m_display.audience, aChild(wallLanguage()));
    return std::nullopt;
}

QString PermissionRules::namesInPicture(const Picture& picture) const
{
    if (refusal(picture))
        return {};
    QStringList all;
    int unnamed = 0;
    for (const ChildId id : picture.people.children) {
        const Child& child = *m_book.children.find(id);
        if (namingRefusal(child, picture))
            ++unnamed;
        else
            all << displayName(child);
    }
    if (unnamed > 0)
        all << (unnamed == 1 ? aChild(wallLanguage())
                             : wallText(WallText::SomeChildren, wallLanguage()).arg(unnamed));
    return listInWords(all, wallLanguage());
}

QString PermissionRules::withNamesInPicture(const QString& caption, const Picture& picture) const
{
    QString shown = caption;
    for (auto at = shown.indexOf(kNamesHere); at >= 0; at = shown.indexOf(kNamesHere, at)) {
        QString names = namesInPicture(picture);
        if (startsSentence(shown, at))
            names = capitalised(names);
        shown.replace(at, kNamesHere.size(), names);
        at += names.size();
    }
    return shown == caption ? caption : shown.simplified();
}

QString PieceClearing::captioned(
    const QString& text, PictureId id, PieceId piece, const QString& language)
{
    const Picture* picture = m_rules.m_book.pictures.find(id);
    if (picture == nullptr || !text.contains(kNamesHere))
        return named(text, false, piece, language);
    for (const ChildId childId : picture->people.children) {
        const Child* child = m_rules.m_book.children.find(childId);
        const auto why = child ? m_rules.namingRefusal(*child, *picture) : std::optional<QString>();
        if (why)
            leaveOut("name", childId.number(), piece, *why);
    }
    // What else was typed is looked through as ever.
    return named(m_rules.withNamesInPicture(text, *picture), false, piece, language);
}

} // namespace wainscot
