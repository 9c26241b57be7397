// withdrawn: what to take down from walls, and which files to make anew.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "app/jobs/take_down.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kWithdrawn{
    OptionSpec{"child", "NAME", "only what concerns this child"},
};

QStringList namesOf(const std::vector<ChildId>& children, const Book& book)
{
    QStringList names;
    for (const ChildId id : children) {
        if (const Child* child = book.children.find(id))
            names << child->name;
    }
    return names;
}

void tellTakeDown(const std::vector<TakeDown>& all, const Book& book, Answer& answer)
{
    QJsonArray list;
    for (const TakeDown& one : all) {
        list.append(QJsonObject{{QStringLiteral("display"), one.display},
            {QStringLiteral("audience"), nameOf(one.audience)},
            {QStringLiteral("panel"), one.panel},
            {QStringLiteral("what"), one.what},
            {QStringLiteral("children"), cli::toJson(namesOf(one.children, book))},
            {QStringLiteral("why"), one.why}});
        const QString what = one.panel == 0 ? QStringLiteral("photo of the wall")
                                            : QStringLiteral("panel %1").arg(one.panel);
        answer.lines << QStringLiteral("%1, %2: %3").arg(one.display, what, one.why);
    }
    answer.json[QStringLiteral("take_down")] = list;
}

void tellOutdated(const std::vector<OutdatedFile>& all, const Book& book, Answer& answer)
{
    QJsonArray list;
    for (const OutdatedFile& one : all) {
        list.append(QJsonObject{{QStringLiteral("file"), one.file.name},
            {QStringLiteral("kind"), nameOf(one.file.kind)},
            {QStringLiteral("on"), one.file.on.toString(Qt::ISODate)},
            {QStringLiteral("audience"), nameOf(*one.file.audience)},
            {QStringLiteral("children"), cli::toJson(namesOf(one.children, book))},
            {QStringLiteral("why"), cli::toJson(one.why)}});
        answer.lines << whatToDo(one.file) + QLatin1Char(' ') + one.why.join(QLatin1Char(' '));
    }
    answer.json[QStringLiteral("make_anew")] = list;
}

Result<Answer> runWithdrawn(const Arguments& arguments, const JobRun& run)
{
    const auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const Book& book = (*store)->book();
    const QString child = arguments.value("child");
    const auto hung = TakeDownJob{child}.run(book, run);
    if (!hung)
        return hung.error();
    const auto made = madeFilesOf(arguments.positional(0));
    if (!made)
        return made.error();
    const auto outdated = OutdatedFilesJob{child}.run(book, *made, run);
    if (!outdated)
        return outdated.error();
    Answer answer;
    tellTakeDown(*hung, book, answer);
    tellOutdated(*outdated, book, answer);
    const bool isNothing = hung->empty() && outdated->empty();
    if (isNothing)
        answer.lines << QStringLiteral("Nothing on any panel or in any file made of the book is "
                                       "against what was said.");
    answer.exit = isNothing ? kDone : kStopFinding;
    return answer;
}

} // namespace

std::vector<Command> withdrawnCommands()
{
    return {{"withdrawn",
        "BOOK [--child NAME]",
        "Lists what to take down and to make anew: what may not be seen any more.",
        kWithdrawn,
        {QStringLiteral("BOOK")},
        runWithdrawn}};
}

} // namespace wainscot::cli
