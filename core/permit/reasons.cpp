#include "core/permit/reasons.h"

#include <QStringList>

#include "core/base/in_words.h"
#include "core/base/says.h"

namespace wainscot::reasons {

namespace {

QString where(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return Says::tr("in the classroom");
    case Audience::Building:
        return Says::tr("in the building");
    case Audience::Families:
        return Says::tr("for other families");
    case Audience::Public:
        return Says::tr("in public");
    }
    return {};
}

// "Ines", "Ines and Tomas", "Ines, Tomas and Mei"
QString listed(const std::vector<const Child*>& children)
{
    QStringList names;
    for (const Child* child : children)
        names << child->name.simplified();
    return listInWords(names, languageOfSentences());
}

QString titled(const Picture& picture)
{
    if (!picture.fileName.isEmpty())
        return picture.fileName;
    return picture.kind == PictureKind::Photo ? Says::tr("A photo") : Says::tr("A work sample");
}

} // namespace

QString notQuoted(const Child& child, Audience audience)
{
    return Says::tr("%1 has no permission to be quoted %2.")
        .arg(child.name.simplified(), where(audience));
}

QString labelNotShown(const QString& label, Audience audience)
{
    return Says::tr("The label “%1” has words of a child without permission to be quoted %2.")
        .arg(label, where(audience));
}

QString speakerGone()
{
    return Says::tr("The child who said this is no longer in the class list.");
}

QString notTranslated(const Child& child)
{
    return Says::tr("%1: nobody has written these words in the other language yet.")
        .arg(child.name.simplified());
}

QString wordsGone()
{
    return Says::tr("These words are no longer in the book.");
}

QString notShown(
    const Picture& picture, const std::vector<const Child*>& children, Audience audience)
{
    const QString have = children.size() == 1 ? Says::tr("has") : Says::tr("have");
    const QString what =
        picture.kind == PictureKind::Photo ? Says::tr("to be seen") : Says::tr("to show work");
    return Says::tr("%1: %2 %3 no permission %4 %5.")
        .arg(titled(picture), listed(children), have, what, where(audience));
}

QString nobodyLooked(const Picture& picture)
{
    const QString question =
        picture.kind == PictureKind::Photo ? Says::tr("who is in it") : Says::tr("who made it");
    return Says::tr("%1: nobody has said yet %2.").arg(titled(picture), question);
}

QString strangerInPicture(const Picture& picture)
{
    const QString what = picture.kind == PictureKind::Photo ? Says::tr("shows") : Says::tr("is by");
    return Says::tr("%1 %2 a child who is not in the class list.").arg(titled(picture), what);
}

QString pictureGone()
{
    return Says::tr("This picture is no longer in the book.");
}

QString hungThere(const Picture& photo, const QStringList& whys)
{
    constexpr qsizetype told = 3;
    QString says = Says::tr("%1 shows what hung there. %2")
                       .arg(titled(photo), whys.mid(0, told).join(QLatin1Char(' ')));
    if (whys.size() > told)
        says += QLatin1Char(' ') + Says::tr("And %1 more.").arg(whys.size() - told);
    return says;
}

QString namedThere(
    const Picture& photo, const std::vector<const Child*>& children, Audience audience)
{
    return Says::tr("%1 shows a name that hung there: %2, with no permission to be named %3.")
        .arg(titled(photo), listed(children), where(audience));
}

QString namedAndSeenThere(
    const Picture& photo, const std::vector<const Child*>& children, Audience audience)
{
    return Says::tr("%1 shows a name that hung there: %2, seen in it or in another photo too, with "
                    "no permission to be seen and named together %3.")
        .arg(titled(photo), listed(children), where(audience));
}

QString ageThere(const Picture& photo, const std::vector<const Child*>& children, Audience audience)
{
    return Says::tr(
        "%1 shows an exact age that hung there: %2, seen in it or in another photo too; "
        "%3 no exact age goes with name and photo.")
        .arg(titled(photo), listed(children), where(audience));
}

QString notNamed(const Child& child, Audience audience, const QString& shown)
{
    return Says::tr("%1 is shown as “%3”: no permission to be named %2.")
        .arg(child.name.simplified(), where(audience), shown);
}

QString seenSoNotNamed(const Child& child, Audience audience, const QString& shown)
{
    return Says::tr("%1 is shown as “%3”: seen in a photo on this display, "
                    "with no permission to be seen and named together %2.")
        .arg(child.name.simplified(), where(audience), shown);
}

QString lineForName(const Child& child, Audience audience)
{
    return Says::tr("%1 gets a line instead of the name: may not be named %2.")
        .arg(child.name.simplified(), where(audience));
}

QString firstNameOnly(const Child& child)
{
    return Says::tr("%1 is shown by the first name only.").arg(child.name.simplified());
}

} // namespace wainscot::reasons
