#include "app/jobs/go_back.h"

#include "app/jobs/sentences.h"
#include "core/base/in_words.h"
#include "core/base/says.h"
#include "core/model/tables.h"

#include <algorithm>

namespace wainscot {

namespace {

template <class T> T asProtectedNow(const T& then, const T* /*now*/)
{
    return then;
}

Child asProtectedNow(Child then, const Child* now)
{
    if (now != nullptr)
        then.permissions = now->permissions;
    return then;
}

Picture asProtectedNow(Picture then, const Picture* now)
{
    if (now != nullptr) {
        then.people = now->people;
        then.treatment = now->treatment;
        then.size = now->size; // of the treated picture
        then.mustStay = now->mustStay;
    }
    return then;
}

// What a family said is told as of now, for every child who is here now.
template <class T> bool isOlderWordOf(const T& value, const Book& now)
{
    if constexpr (std::is_same_v<T, PermissionRecord>)
        return now.children.contains(value.child);
    else
        return false;
}

QString counted(int count, const char* one, const char* several)
{
    return QStringLiteral("%1 %2").arg(count).arg(QLatin1String(count == 1 ? one : several));
}

// Who is in a picture is told as of now, so those children are needed.
std::vector<ChildId> seenInPictures(const Book& now, const Book& then)
{
    std::vector<ChildId> seen;
    for (const auto& [id, picture] : then.pictures.rows()) {
        if (const Picture* same = now.pictures.find(id))
            seen.insert(seen.end(), same->people.children.begin(), same->people.children.end());
    }
    return seen;
}

} // namespace

Edit editBackTo(const Book& now, const Book& then, const QString& label)
{
    EditBuilder edit(now, label);
    if (now.info != then.info)
        edit.setInfo(then.info);
    const std::vector<ChildId> needed = seenInPictures(now, then);
    const auto stays = [&](ChildId child) {
        return then.children.contains(child)
            || std::find(needed.begin(), needed.end(), child) != needed.end();
    };
    forEachTable(then, [&](const auto& table) {
        using T = typename std::decay_t<decltype(table)>::ValueType;
        const auto& present = tableOf<T>(now);
        for (const auto& [id, value] : table.rows()) {
            if (!isOlderWordOf(value, now))
                edit.put(asProtectedNow(value, present.find(id)));
        }
        for (const auto& [id, value] : present.rows()) {
            bool goes = !table.contains(id);
            if constexpr (std::is_same_v<T, Child>)
                goes = !stays(id);
            else if constexpr (std::is_same_v<T, PermissionRecord>)
                goes = !stays(value.child);
            if (goes)
                edit.template remove<T>(id);
        }
    });
    return edit.take();
}

QString inWords(const EarlierState& state)
{
    return QStringLiteral("%1, %2: %3, %4, %5")
        .arg(dayOfRecord(state.at.date(), languageOfSentences()),
            state.at.toString(QStringLiteral("HH:mm")),
            counted(state.children, "child", "children"),
            counted(state.quotes, "answer", "answers"),
            counted(state.panels, "panel", "panels"));
}

Result<QList<EarlierState>> EarlierStatesJob::run(const JobRun& run) const
{
    run.report(QStringLiteral("Looking for earlier days"));
    const auto store = BookStore::open(folder, Access::ReadOnly);
    if (!store)
        return store.error();
    return (*store)->earlierStates();
}

Result<Book> ReadEarlierJob::run(const JobRun& run) const
{
    run.report(QStringLiteral("Reading an earlier day"));
    const auto store = BookStore::open(folder, Access::ReadOnly);
    return store ? (*store)->earlierState(state) : Result<Book>(store.error());
}

Result<std::vector<EarlierDay>> EarlierDaysJob::run(const Book& now, const JobRun& run) const
{
    const QString doing = QStringLiteral("Looking for earlier days");
    run.report(doing);
    const auto store = BookStore::open(folder, Access::ReadOnly);
    if (!store)
        return store.error();
    const QList<EarlierState> states = (*store)->earlierStates();
    std::vector<EarlierDay> days;
    days.reserve(std::size_t(states.size()));
    for (const EarlierState& state : states) {
        if (run.cancelled())
            return stoppedByPerson();
        run.report(doing, int(days.size()), int(states.size()));
        const auto then = (*store)->earlierState(state.name);
        if (!then)
            continue;
        Book back = now;
        apply(editBackTo(now, *then, {}), back);
        days.push_back({state, std::make_shared<const Book>(std::move(back))});
    }
    return days;
}

PanelId tellingPanel(const Book& book)
{
    const auto& displays = book.displays.rows();
    for (auto at = displays.rbegin(); at != displays.rend(); ++at) {
        if (const auto panels = panelsOf(book, at->first); !panels.empty())
            return panels.front()->id;
    }
    return {};
}

Result<EarlierState> GoBackJob::run(const JobRun& run) const
{
    run.report(QStringLiteral("Going back"));
    const auto store = BookStore::open(folder);
    if (!store)
        return store.error();
    const QList<EarlierState> states = (*store)->earlierStates();
    const auto at = std::find_if(states.begin(), states.end(), [this](const EarlierState& one) {
        return one.name == state;
    });
    if (at == states.end())
        return Error{ErrorCode::NotFound, state, QStringLiteral("the book has no such day")};
    const auto then = (*store)->earlierState(state);
    if (!then)
        return then.error();
    auto done =
        (*store)->history().perform(editBackTo((*store)->book(), *then, QStringLiteral("Go back")));
    if (!done)
        return done.error();
    return *at;
}

} // namespace wainscot
