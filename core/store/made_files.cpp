#include "core/store/made_files.h"

#include "core/store/database.h"
#include "core/store/made_file_rows.h"
#include "core/store/rows.h"
#include "core/store/schema.h"

#include <QFileInfo>

#include <array>

namespace wainscot {

namespace {

using KindName = std::pair<MadeFileKind, QLatin1String>;
constexpr std::array kNames{KindName{MadeFileKind::Panels, QLatin1String("panels")},
    KindName{MadeFileKind::PanelPictures, QLatin1String("panel_pictures")},
    KindName{MadeFileKind::TermFile, QLatin1String("term_file")},
    KindName{MadeFileKind::PackedBook, QLatin1String("packed_book")},
    KindName{MadeFileKind::Data, QLatin1String("data")}};

Result<std::unique_ptr<Database>> databaseOf(const QString& book, Database::Mode mode)
{
    const QFileInfo given(book);
    const QString file = given.isDir() ? book + QStringLiteral("/book.wainscot") : book;
    if (!QFileInfo(file).isFile())
        return Error{ErrorCode::NotFound, file, {}};
    auto database = Database::open(file, mode);
    if (!database)
        return database;
    const auto version = schemaVersionOf(**database, file);
    if (!version)
        return version.error();
    if (*version < currentSchemaVersion())
        return Error{ErrorCode::CannotRead,
            file,
            QStringLiteral("an earlier version made it; open it once for writing")};
    return database;
}

} // namespace

QString nameOf(MadeFileKind kind)
{
    for (const auto& [one, name] : kNames) {
        if (one == kind)
            return name;
    }
    return {};
}

std::optional<MadeFileKind> madeFileKindFromName(const QString& name)
{
    for (const auto& [kind, one] : kNames) {
        if (name == one)
            return kind;
    }
    return std::nullopt;
}

Result<std::vector<MadeFile>> madeFilesOf(const QString& book)
{
    const auto database = databaseOf(book, Database::Mode::ReadOnly);
    return database ? readMadeFiles(**database) : database.error();
}

Result<> rememberMadeFile(const QString& book, const MadeFile& made)
{
    const auto database = databaseOf(book, Database::Mode::ReadWrite);
    if (!database)
        return database.error();
    return (*database)->inTransaction([&] { return writeMadeFile(**database, made); });
}

Result<std::optional<QDate>> keptUntil(const QString& book)
{
    const auto database = databaseOf(book, Database::Mode::ReadOnly);
    return database ? readKeptUntil(**database) : database.error();
}

Result<> keepUntil(const QString& book, const std::optional<QDate>& day)
{
    const auto database = databaseOf(book, Database::Mode::ReadWrite);
    if (!database)
        return database.error();
    return (*database)->inTransaction([&] {
        return (*database)->run(QStringLiteral("UPDATE book SET keep_until = ?"), {sqlDate(day)});
    });
}

} // namespace wainscot
