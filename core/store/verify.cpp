#include "core/store/verify.h"

#include "core/store/database.h"

#include <QSet>

namespace wainscot {

namespace {

Result<> checkDatabase(Database& database, QStringList& problems)
{
    auto checked = database.each(
        QStringLiteral("PRAGMA integrity_check"), [&](const QSqlQuery& row) -> Result<> {
            if (row.value(0).toString() != QLatin1String("ok"))
                problems << QStringLiteral("The book is damaged: %1.").arg(row.value(0).toString());
            return Done{};
        });
    if (checked) {
        checked = database.each(
            QStringLiteral("PRAGMA foreign_key_check"), [&](const QSqlQuery& row) -> Result<> {
                problems << QStringLiteral(
                    "A row of %1 points at something that is not there in %2.")
                                .arg(row.value(0).toString(), row.value(2).toString());
                return Done{};
            });
    }
    // A database too broken to be checked is what we were looking for, no failure of the check.
    if (!checked && checked.error().code == ErrorCode::Damaged) {
        problems << QStringLiteral("The book is damaged: %1.").arg(checked.error().detail);
        return Done{};
    }
    return checked;
}

void checkPicture(const Picture& picture, const Originals& originals, QStringList& problems)
{
    const auto sha256 = Originals::sha256Of(originals.pathOf(picture.sha256));
    const QString named =
        QStringLiteral("%1 (picture %2)").arg(picture.fileName).arg(picture.id.number());
    if (!sha256 && sha256.error().code == ErrorCode::NotFound)
        problems << QStringLiteral("%1 is missing from the book.").arg(named);
    else if (!sha256)
        problems << QStringLiteral("%1 cannot be read: %2.").arg(named, sha256.error().detail);
    else if (*sha256 != picture.sha256)
        problems << QStringLiteral("%1 has changed since it was gathered.").arg(named);
}

} // namespace

Result<VerifyReport> verifyBook(Database& database,
    const Book& book,
    const Originals& originals,
    const std::function<bool(int, int)>& progress)
{
    VerifyReport report;
    if (auto checked = checkDatabase(database, report.problems); !checked)
        return checked.error();
    QSet<QString> mentioned;
    int done = 0;
    for (const auto& [id, picture] : book.pictures.rows()) {
        if (progress && !progress(done++, int(book.pictures.size())))
            return Error{ErrorCode::Cancelled, originals.folder(), {}};
        if (mentioned.contains(picture.sha256))
            continue;
        mentioned.insert(picture.sha256);
        checkPicture(picture, originals, report.problems);
        ++report.pictures;
    }
    for (const QString& name : originals.all()) {
        if (!mentioned.contains(name))
            report.orphans << name;
    }
    return report;
}

} // namespace wainscot
