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
    KindName{MadeFileKind::Data, QLatin1String("data")},
    KindName{MadeFileKind::AnswerSheets, QLatin1String("answer_sheets")},
    KindName{MadeFileKind::PrintedPanels, QLatin1String("printed_panels")},
    KindName{MadeFileKind::PrintedAnswerSheets, QLatin1String("printed_answer_sheets")},
    KindName{MadeFileKind::PrintedHangingList, QLatin1String("printed_hanging_list")}};

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

// With all that the ones of the same kind, name and audience hold.
Result<MadeFile> joined(Database& database, MadeFile made)
{
    const auto known = readMadeFiles(database);
    if (!known)
        return known.error();
    for (const MadeFile& one : *known) {
        if (one.kind != made.kind || one.name != made.name || one.audience != made.audience)
            continue;
        made.displays.insert(one.displays.begin(), one.displays.end());
        made.experiences.insert(one.experiences.begin(), one.experiences.end());
        made.words.insert(one.words.begin(), one.words.end());
        made.pictures.insert(one.pictures.begin(), one.pictures.end());
        made.named.insert(one.named.begin(), one.named.end());
    }
    return made;
}

} // namespace

bool isOnPaper(MadeFileKind kind)
{
    return kind == MadeFileKind::PrintedPanels || kind == MadeFileKind::PrintedAnswerSheets
        || kind == MadeFileKind::PrintedHangingList;
}

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

Result<> rememberMadeFile(const QString& book, const MadeFile& made, Earlier earlier)
{
    const auto database = databaseOf(book, Database::Mode::ReadWrite);
    if (!database)
        return database.error();
    return (*database)->inTransaction([&]() -> Result<> {
        if (earlier == Earlier::Replaced)
            return writeMadeFile(**database, made);
        const auto all = joined(**database, made);
        return all ? writeMadeFile(**database, *all) : all.error();
    });
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
