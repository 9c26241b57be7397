#include "app/jobs/sentences.h"

#include "core/base/in_words.h"
#include "core/base/says.h"
#include "core/base/wall_text.h"
#include "layout/engine/arrangement.h"

#include <map>

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

QString quoted(const QString& name)
{
    return Says::tr("\"%1\"").arg(name);
}

QString listInWords(const QStringList& items)
{
    return listInWords(items, languageOfSentences());
}

QStringList reasonsOf(const std::vector<LeftOut>& leftOut)
{
    QStringList reasons;
    std::map<QString, int> often;
    for (const LeftOut& left : leftOut) {
        if (++often[left.why] == 1)
            reasons << left.why;
    }
    for (QString& reason : reasons) {
        if (const int times = often[reason]; times > 1)
            reason = Says::tr("%1 (%2 times)").arg(reason, QString::number(times));
    }
    return reasons;
}

QString dateInWords(QDate day)
{
    return dateInWords(day, languageOfSentences());
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

QString continued(const QString& label, const QString& language)
{
    return wallText(WallText::Continued, language).arg(label);
}

QString withoutContinued(QString label)
{
    for (const QString& language : wallLanguages()) {
        const QString added = continued(QString(), language);
        if (label.endsWith(added)) {
            label.chop(added.size());
            break;
        }
    }
    return label;
}

} // namespace wainscot
