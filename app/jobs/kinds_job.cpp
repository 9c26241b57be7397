#include "app/jobs/kinds_job.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "core/voice/participation.h"
#include "layout/engine/plan.h"

#include <QStringList>

#include <map>
#include <set>

namespace wainscot {

namespace {

QStringList plansOf(const Book& book)
{
    QStringList names;
    for (const engine::Plan& plan : engine::plans())
        names.append(QString::fromStdString(plan.name));
    for (const auto& [id, own] : book.templates.rows()) {
        if (!names.contains(own.name))
            names.append(own.name);
    }
    return names;
}

std::size_t childrenOn(const Book& book, const ArrangeOutcome& outcome)
{
    std::set<ChildId> heard;
    for (const ArrangedPiece& one : outcome.pieces)
        heard.merge(voicesIn(book, one.piece));
    return heard.size();
}

using Arranged = Result<std::variant<ArrangeOutcome, ArrangeFailure>>;

// Why this kind cannot be shown; nothing = it can.
std::optional<QString> obstacle(const Book& book, const Arranged& arranged)
{
    if (!arranged)
        return sentenceFor(arranged.error());
    if (const auto* failure = std::get_if<ArrangeFailure>(&*arranged))
        return failure->says;
    if (childrenOn(book, std::get<ArrangeOutcome>(*arranged)) == 0)
        return Says::tr("No child's words would be on it.");
    return std::nullopt;
}

} // namespace

QString kindInWords(const QString& plan)
{
    static const std::map<QString, QString> names{
        {QStringLiteral("days"), Says::tr("Days on a wall")},
        {QStringLiteral("voices"), Says::tr("One question, many voices")},
        {QStringLiteral("evening"), Says::tr("Evening for families")},
        {QStringLiteral("drawing"), Says::tr("One drawing and its words")},
        {QStringLiteral("thread"), Says::tr("The thread of an idea")},
        {QStringLiteral("door"), Says::tr("A sheet for the door")},
        {QStringLiteral("before"), Says::tr("Before and after")},
        {QStringLiteral("questions"), Says::tr("One child's questions")}};
    const auto found = names.find(plan);
    return found != names.end() ? found->second : plan;
}

Result<KindsOutcome> KindsJob::run(const Book& book, const JobRun& run) const
{
    KindsOutcome all;
    std::optional<Error> first;
    JobRun quiet = run; // the kinds are counted here
    quiet.onProgress = nullptr;
    quiet.onFirst = nullptr;
    const QStringList plans = plansOf(book);
    for (int i = 0; i < plans.size(); ++i) {
        const QString& plan = plans[i];
        run.report(kindInWords(plan), i, int(plans.size()));
        ArrangeJob job = asked;
        job.plan = plan;
        job.advises = false;
        Arranged arranged = job.run(book, quiet);
        if (run.cancelled())
            return stoppedByPerson();
        if (const auto why = obstacle(book, arranged)) {
            if (!arranged && !first)
                first = arranged.error();
            all.says.push_back(QStringLiteral("%1: %2").arg(kindInWords(plan), *why));
            continue;
        }
        KindOfPanel kind{
            plan, kindInWords(plan), std::move(std::get<ArrangeOutcome>(*arranged)), {}};
        kind.children = childrenOn(book, kind.outcome);
        Book then = book;
        apply(kind.outcome.edit, then);
        Result<DrawnDisplay> drawn = drawDisplay(then, kind.outcome.display.name, run.today);
        if (!drawn || drawn->panels.empty())
            continue;
        kind.list = std::move(drawn->panels.front().list);
        all.kinds.push_back(std::move(kind));
    }
    if (all.kinds.empty() && first)
        return *first;
    return all;
}

} // namespace wainscot
