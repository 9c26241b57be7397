#include "core/store/earlier_states.h"

#include "core/store/book_reader.h"
#include "core/store/database.h"
#include "core/store/disk.h"
#include "core/store/schema.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSet>
#include <QTemporaryDir>

namespace wainscot {

namespace {

const QLatin1String kSuffix(".wainscot");
const QLatin1String kHalfWritten("incoming.wainscot");
const QString kForm = QStringLiteral("yyyy-MM-ddTHH-mm-ss");
constexpr qint64 kMostBytes = 256LL * 1024 * 1024;
constexpr int kOfToday = 8;
constexpr int kLatest = 7; // days
constexpr int kWeeks = 8;
constexpr int kMonths = 12;

// What a state tells of itself without being read whole; all versions have these tables.
Result<EarlierState> summaryOf(Database& database, const QString& name)
{
    if (const auto alone = holdsTablesAlone(database, name); !alone)
        return alone.error();
    EarlierState state{name, momentOf(name), 0, 0, 0};
    for (auto [table, number] : {std::pair("children", &state.children),
             std::pair("quotes", &state.quotes),
             std::pair("panels", &state.panels)}) {
        const auto counted =
            database.one(QStringLiteral("SELECT COUNT(*) FROM %1").arg(QLatin1String(table)));
        if (!counted)
            return counted.error();
        *number = counted->toInt();
    }
    return state;
}

// An earlier version is brought up to date in a copy; what was kept stays as it was.
Result<Book> readEarlierVersion(const QString& file, int version)
{
    const QTemporaryDir place;
    const QString copy = place.filePath(QStringLiteral("state.wainscot"));
    if (!place.isValid() || !QFile::copy(file, copy))
        return Error{ErrorCode::CannotWrite, place.path(), {}};
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    auto database = Database::open(copy, Database::Mode::ReadWrite);
    if (!database)
        return database.error();
    const auto migrated = (*database)->inTransaction([&] { return migrate(**database, version); });
    if (!migrated)
        return migrated.error();
    return readBook(**database, file);
}

} // namespace

EarlierStates::EarlierStates(const QString& bookFolder)
    : m_folder(bookFolder + QStringLiteral("/earlier"))
{
}

QString EarlierStates::pathOf(const QString& name) const
{
    return m_folder + QLatin1Char('/') + name + kSuffix;
}

QStringList EarlierStates::names() const
{
    QStringList names;
    for (const QString& file :
        QDir(m_folder).entryList({QLatin1Char('*') + kSuffix}, QDir::Files)) {
        const QString name = file.chopped(kSuffix.size());
        if (momentOf(name).isValid())
            names << name;
    }
    names.sort();
    return names;
}

Result<> EarlierStates::keep(Database& database, const QDateTime& at) const
{
    const QString half = m_folder + QLatin1Char('/') + kHalfWritten;
    if (!QDir().mkpath(m_folder))
        return Error{ErrorCode::CannotWrite, m_folder, {}};
    QFile::remove(half); // of a program that died
    // VACUUM INTO leaves forcing it out to the disk to the caller (sqlite.org/lang_vacuum.html).
    auto kept = database.run(QStringLiteral("VACUUM INTO ?"), {half});
    if (kept && (!syncFile(half) || !renameSafely(half, pathOf(stateNameFor(at)))))
        kept = Error{ErrorCode::CannotWrite, m_folder, {}};
    if (!kept) {
        QFile::remove(half);
        return kept;
    }
    QList<StateFile> files;
    for (const QString& name : names())
        files.append({name, QFileInfo(pathOf(name)).size()});
    for (const QString& name : statesToForget(files, at.date(), kMostBytes))
        QFile::remove(pathOf(name));
    return Done{};
}

bool EarlierStates::hasOneOf(const QDateTime& now, const QDateTime& since) const
{
    const QStringList all = names();
    return std::any_of(all.begin(), all.end(), [&](const QString& name) {
        const QDateTime at = momentOf(name);
        return at.date() == now.date() && at >= since && at <= now;
    });
}

QList<EarlierState> EarlierStates::all() const
{
    QList<EarlierState> states;
    for (const QString& name : names()) {
        const auto database = Database::open(pathOf(name), Database::Mode::ReadOnly);
        const auto state = database ? summaryOf(**database, name) : database.error();
        if (state)
            states.prepend(*state);
    }
    return states;
}

Result<Book> EarlierStates::read(const QString& name) const
{
    const QString file = pathOf(name);
    if (!momentOf(name).isValid() || !QFileInfo(file).isFile())
        return Error{ErrorCode::NotFound, name, {}};
    const auto database = Database::open(file, Database::Mode::ReadOnly);
    if (!database)
        return database.error();
    const auto version = schemaVersionOf(**database, file);
    if (!version)
        return version.error();
    if (*version < currentSchemaVersion())
        return readEarlierVersion(file, *version);
    const auto checked = database.value()->one(QStringLiteral("PRAGMA quick_check(1)"));
    if (!checked)
        return checked.error();
    if (checked->toString() != QLatin1String("ok"))
        return Error{ErrorCode::Damaged, file, checked->toString()};
    return readBook(**database, file);
}

Result<> EarlierStates::forgetAll() const
{
    QDir folder(m_folder);
    for (const QString& file : folder.entryList(QDir::Files | QDir::Hidden)) {
        if (!folder.remove(file))
            return Error{ErrorCode::CannotWrite, m_folder, {}};
    }
    return Done{};
}

void EarlierStates::removeHalfWritten() const
{
    for (const auto* rest : {"", "-journal"})
        QFile::remove(m_folder + QLatin1Char('/') + kHalfWritten + QLatin1String(rest));
}

QStringList statesToForget(const QList<StateFile>& states, QDate today, qint64 mostBytes)
{
    QStringList forgotten;
    QSet<int> weeks;
    QSet<int> months;
    qint64 bytes = 0;
    int ofToday = 0;
    for (qsizetype i = states.size() - 1, age = 0; i >= 0; --i) {
        const QDate day = momentOf(states.at(i).name).date();
        const bool first = i == 0 || momentOf(states.at(i - 1).name).date() != day;
        if (!first && (day != today || ++ofToday > kOfToday)) {
            forgotten << states.at(i).name;
            continue;
        }
        int year = 0;
        const int week = day.weekNumber(&year) + 100 * year;
        const int month = day.month() + 100 * day.year();
        const bool latest = age < kLatest;
        const bool ofWeek = day > today.addDays(-7LL * kWeeks) && !weeks.contains(week);
        const bool ofMonth = day > today.addMonths(-kMonths) && !months.contains(month);
        bytes += states.at(i).bytes;
        if ((latest || ofWeek || ofMonth) && (bytes <= mostBytes || states.size() - i <= 2)) {
            weeks.insert(week);
            months.insert(month);
        } else {
            bytes -= states.at(i).bytes;
            forgotten << states.at(i).name;
        }
        age += first ? 1 : 0;
    }
    return forgotten;
}

QString stateNameFor(const QDateTime& at)
{
    return at.toString(kForm);
}

QDateTime momentOf(const QString& stateName)
{
    return QDateTime::fromString(stateName, kForm);
}

} // namespace wainscot
