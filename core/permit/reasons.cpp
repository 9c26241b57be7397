#include "core/permit/reasons.h"

#include <QStringList>

namespace wainscot::reasons {

namespace {

QString where(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return QStringLiteral("in the classroom");
    case Audience::Building:
        return QStringLiteral("in the building");
    case Audience::Families:
        return QStringLiteral("for other families");
    case Audience::Public:
        return QStringLiteral("in public");
    }
    return {};
}

// "Ines", "Ines and Tomas", "Ines, Tomas and Mei"
QString listed(const std::vector<const Child*>& children)
{
    QStringList names;
    for (const Child* child : children)
        names << child->name.simplified();
    if (names.size() < 2)
        return names.join(QString());
    const QString last = names.takeLast();
    return names.join(QStringLiteral(", ")) + QStringLiteral(" and ") + last;
}

QString titled(const Picture& picture)
{
    if (!picture.fileName.isEmpty())
        return picture.fileName;
    return picture.kind == PictureKind::Photo ? QStringLiteral("A photo")
                                              : QStringLiteral("A work sample");
}

} // namespace

QString notQuoted(const Child& child, Audience audience)
{
    return QStringLiteral("%1 has no permission to be quoted %2.")
        .arg(child.name.simplified(), where(audience));
}

QString speakerGone()
{
    return QStringLiteral("The child who said this is no longer in the class list.");
}

QString notTranslated(const Child& child)
{
    return QStringLiteral("%1: nobody has written these words in the other language yet.")
        .arg(child.name.simplified());
}

QString wordsGone()
{
    return QStringLiteral("These words are no longer in the book.");
}

QString notShown(
    const Picture& picture, const std::vector<const Child*>& children, Audience audience)
{
    const QString have = children.size() == 1 ? QStringLiteral("has") : QStringLiteral("have");
    const QString what = picture.kind == PictureKind::Photo ? QStringLiteral("to be seen")
                                                            : QStringLiteral("to show work");
    return QStringLiteral("%1: %2 %3 no permission %4 %5.")
        .arg(titled(picture), listed(children), have, what, where(audience));
}

QString nobodyLooked(const Picture& picture)
{
    const QString question = picture.kind == PictureKind::Photo ? QStringLiteral("who is in it")
                                                                : QStringLiteral("who made it");
    return QStringLiteral("%1: nobody has said yet %2.").arg(titled(picture), question);
}

QString strangerInPicture(const Picture& picture)
{
    const QString what =
        picture.kind == PictureKind::Photo ? QStringLiteral("shows") : QStringLiteral("is by");
    return QStringLiteral("%1 %2 a child who is not in the class list.").arg(titled(picture), what);
}

QString pictureGone()
{
    return QStringLiteral("This picture is no longer in the book.");
}

QString notNamed(const Child& child, Audience audience)
{
    return QStringLiteral("%1 is shown as \u201ca child\u201d: no permission to be named %2.")
        .arg(child.name.simplified(), where(audience));
}

QString seenSoNotNamed(const Child& child, Audience audience)
{
    return QStringLiteral("%1 is shown as \u201ca child\u201d: seen in a photo on this display, "
                          "with no permission to be seen and named together %2.")
        .arg(child.name.simplified(), where(audience));
}

QString firstNameOnly(const Child& child)
{
    return QStringLiteral("%1 is shown by the first name only.").arg(child.name.simplified());
}

} // namespace wainscot::reasons
