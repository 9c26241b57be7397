#include "app/jobs/sentences.h"

#include "core/base/says.h"
#include "layout/engine/arrangement.h"

#include <QLocale>
#include <QRegularExpression>

namespace wainscot {

namespace {

QString named(const Error& error, const QString& otherwise)
{
    return error.subject.isEmpty() ? otherwise : error.subject;
}

QString withDetail(const QString& sentence, const Error& error)
{
    if (error.detail.isEmpty())
        return sentence + QLatin1Char('.');
    QString detail = error.detail.trimmed();
    while (detail.endsWith(QLatin1Char('.')))
        detail.chop(1);
    return sentence + QStringLiteral(": ") + detail + QLatin1Char('.');
}

// Days and months are written as the panel's own words, so they do not follow the machine.
const QLocale& wallLocale()
{
    static const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    return locale;
}

} // namespace

QString sentenceFor(const Error& error)
{
    const QString it = named(error, QStringLiteral("This"));
    switch (error.code) {
    case ErrorCode::WrongUse:
        return withDetail(named(error, Says::tr("That cannot be done")), error);
    case ErrorCode::NotFound:
        return withDetail(it + Says::tr(" was not found"), error);
    case ErrorCode::CannotRead:
        return withDetail(it + Says::tr(" cannot be read"), error);
    case ErrorCode::CannotWrite:
        return withDetail(it + Says::tr(" cannot be written"), error);
    case ErrorCode::Damaged:
        return withDetail(it + Says::tr(" is damaged"), error);
    case ErrorCode::TooNew:
        return withDetail(
            it + Says::tr(" was made by a later version of Wainscot, so it stays closed"), error);
    case ErrorCode::InUse:
        return withDetail(
            it + Says::tr(" is open in another window or on another computer"), error);
    case ErrorCode::Refused:
        return withDetail(it + Says::tr(" is not taken"), error);
    case ErrorCode::Cancelled:
        return Says::tr("Stopped; nothing was changed.");
    case ErrorCode::Internal:
        return withDetail(
            Says::tr("Something went wrong inside the program, and nothing was changed"), error);
    }
    return {};
}

QString nameOf(ErrorCode code)
{
    switch (code) {
    case ErrorCode::WrongUse:
        return QStringLiteral("wrong_use");
    case ErrorCode::NotFound:
        return QStringLiteral("not_found");
    case ErrorCode::CannotRead:
        return QStringLiteral("cannot_read");
    case ErrorCode::CannotWrite:
        return QStringLiteral("cannot_write");
    case ErrorCode::Damaged:
        return QStringLiteral("damaged");
    case ErrorCode::TooNew:
        return QStringLiteral("too_new");
    case ErrorCode::InUse:
        return QStringLiteral("in_use");
    case ErrorCode::Refused:
        return QStringLiteral("refused");
    case ErrorCode::Cancelled:
        return QStringLiteral("cancelled");
    case ErrorCode::Internal:
        return QStringLiteral("internal");
    }
    return {};
}

int exitCodeFor(ErrorCode code)
{
    switch (code) {
    case ErrorCode::WrongUse:
        return 2;
    case ErrorCode::NotFound:
    case ErrorCode::CannotRead:
    case ErrorCode::CannotWrite:
    case ErrorCode::Damaged:
    case ErrorCode::TooNew:
    case ErrorCode::InUse:
        return 3;
    case ErrorCode::Refused:
    case ErrorCode::Cancelled:
        return 1;
    case ErrorCode::Internal:
        return 4;
    }
    return 4;
}

namespace {

// Begins with the sound of i, not with a diphthong of it ("Ines", "Hilda"; not "hielo"). Some
// languages say another "and" before it (Real Academia, Diccionario panhispánico, "y").
bool beginsLikeI(const QString& word)
{
    static const QRegularExpression sound(QStringLiteral("^h?[ií](?![aeoáéó])"),
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
    return word.contains(sound);
}

} // namespace

QString quoted(const QString& name)
{
    return Says::tr("\"%1\"").arg(name);
}

QString listInWords(const QStringList& items)
{
    if (items.size() < 2)
        return items.join(QString());
    const QString others = items.mid(0, items.size() - 1).join(QStringLiteral(", "));
    if (beginsLikeI(items.last()))
        //: The second begins with the sound of i.
        return Says::tr("%1 and %2").arg(others, items.last());
    return others + Says::tr(" and ") + items.last();
}

QString dayInWords(QDate day)
{
    return wallLocale().toString(day, QStringLiteral("dddd, d MMMM"));
}

QString daysInWords(QDate first, QDate last)
{
    const QString end = wallLocale().toString(last, QStringLiteral("d MMMM"));
    if (first == last)
        return end;
    const bool sameMonth = first.month() == last.month() && first.year() == last.year();
    if (sameMonth)
        return QString::number(first.day()) + QChar(0x2013) + end;
    return wallLocale().toString(first, QStringLiteral("d MMMM"))
        + QStringLiteral(" %1 ").arg(QChar(0x2013)) + end;
}

QString whyNoRoom(const engine::Failure& failure)
{
    switch (failure.what) {
    case engine::Obstacle::WordTooWide:
        return Says::tr("a word is wider than any place it could have; choose a larger "
                        "panel or a shorter reading distance.");
    case engine::Obstacle::PictureTooFewPixels:
        return Says::tr("a picture has too few pixels to be shown that large.");
    case engine::Obstacle::TooMuchForPages:
        return Says::tr("there is too little room by about %1 square centimetres; a larger "
                        "panel, a shorter reading distance or one more panel helps.")
            .arg(qRound(failure.missingMm2 / 100));
    case engine::Obstacle::PinsOverlap:
        return Says::tr("two pinned pieces lie over each other; move or unpin one.");
    case engine::Obstacle::PinsNotSliceable:
        return Says::tr("the pinned pieces leave the others no place between them; unpin one.");
    case engine::Obstacle::Cancelled:
        break;
    }
    return {};
}

namespace {

const QString kContinued = QStringLiteral(" (continued)");

} // namespace

QString continued(const QString& label)
{
    return label + kContinued;
}

QString withoutContinued(QString label)
{
    if (label.endsWith(kContinued))
        label.chop(kContinued.size());
    return label;
}

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

} // namespace wainscot
