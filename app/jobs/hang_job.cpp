#include "app/jobs/hang_job.h"

#include "core/base/says.h"
#include "layout/wall/propose.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr double kPercent = 100;

Finding coverFinding(const wall::Covered& covered, const wall::CoverLimit& limit)
{
    Finding finding;
    const double percent = wall::coveredShare(covered) * kPercent;
    const bool kept = wall::keepsLimit(covered, limit);
    finding.severity = kept ? Severity::Note : Severity::Look;
    finding.rule = QStringLiteral("wall.covered");
    finding.measured = percent;
    finding.limit = limit.share * kPercent;
    finding.unit = QStringLiteral("%");
    finding.source = QString::fromUtf8(limit.source);
    finding.says = Says::tr("%1 % of this wall would be covered, doors counted in; ask your "
                            "fire authority.")
                       .arg(percent, 0, 'f', 1);
    return finding;
}

std::optional<Finding> runFinding(const wall::Covered& covered)
{
    const wall::RunLimit& limit = wall::runLimit();
    const Mm widest = wall::runsOf(covered, limit.apart).widest;
    if (widest <= limit.widest)
        return {};
    Finding finding;
    finding.severity = Severity::Look;
    finding.rule = QStringLiteral("wall.run");
    finding.measured = widest.value();
    finding.limit = limit.widest.value();
    finding.unit = QStringLiteral("mm");
    finding.source = QString::fromUtf8(limit.source);
    finding.says = Says::tr("Panels hang in one run of %1 mm without a gap of %2 mm; ask "
                            "your fire authority.")
                       .arg(widest.value(), 0, 'f', 0)
                       .arg(limit.apart.value(), 0, 'f', 0);
    return finding;
}

Finding noRoomFinding(int panel)
{
    Finding finding;
    finding.severity = Severity::Look;
    finding.rule = QStringLiteral("wall.no_room");
    finding.panel = panel;
    finding.source = Says::tr("the measures of the wall");
    finding.says = Says::tr("There is no room left for it on this wall.");
    return finding;
}

// For both: what the height that serves the children means for everybody else.
Finding grownUpsFinding(const wall::EyeBand& children)
{
    const wall::EyeBand grown = wall::grownUpsEyes();
    Finding finding;
    finding.severity = Severity::Note;
    finding.rule = QStringLiteral("wall.eyes");
    finding.measured = children.middle.value();
    finding.limit = grown.low.value();
    finding.unit = QStringLiteral("mm");
    finding.source = QString::fromUtf8(grown.source);
    finding.says = Says::tr("It hangs at the children's eyes, %1 mm; grown-ups look down "
                            "from %2 to %3 mm.")
                       .arg(children.middle.value(), 0, 'f', 0)
                       .arg(grown.low.value(), 0, 'f', 0)
                       .arg(grown.high.value(), 0, 'f', 0);
    return finding;
}

const wall::CoverLimit* limitCalled(const QString& name)
{
    const auto limits = wall::coverLimits();
    const auto at = std::find_if(limits.begin(), limits.end(), [&](const wall::CoverLimit& one) {
        return name == QLatin1String(one.name);
    });
    return at == limits.end() ? nullptr : &*at;
}

Error unknownLimit(const QString& name)
{
    QStringList known;
    for (const wall::CoverLimit& one : wall::coverLimits())
        known << QString::fromLatin1(one.name);
    return {ErrorCode::WrongUse,
        Says::tr("The limit \"%1\"").arg(name),
        Says::tr("the limits are: %1").arg(known.join(QStringLiteral(", ")))};
}

} // namespace

Result<HangOutcome> HangJob::run(const Book& book, const JobRun&) const
{
    const Display* shown = displayByName(book, display);
    if (shown == nullptr) {
        return Error{ErrorCode::NotFound,
            Says::tr("The display \"%1\"").arg(display),
            Says::tr("this book has no display of that name")};
    }
    const wall::CoverLimit* chosen = limitCalled(limit);
    if (chosen == nullptr)
        return unknownLimit(limit);
    if (wallSize.isEmpty())
        return Error{ErrorCode::WrongUse, Says::tr("The wall"), Says::tr("has no size")};

    const wall::EyeBand children = wall::childrensEyes(youngest, oldest);
    wall::HangingWish wish;
    wish.wall = wallSize;
    wish.centre = viewers == Viewers::GrownUps ? wall::grownUpsEyes().middle : children.middle;
    HangOutcome outcome;
    for (const Panel* panel : panelsOf(book, shown->id)) {
        outcome.panels.push_back({panel->number, {}});
        wish.panels.push_back(shown->panelSize);
    }
    const auto places = wall::proposePlaces(wish);
    wall::Covered covered{wallSize, {}};
    for (std::size_t i = 0; i < places.size(); ++i) {
        outcome.panels[i].place = places[i];
        if (places[i])
            covered.panels.push_back(*places[i]);
        else
            outcome.findings.push_back(noRoomFinding(outcome.panels[i].panel));
    }
    outcome.limit = *chosen;
    outcome.coveredShare = wall::coveredShare(covered);
    outcome.findings.push_back(coverFinding(covered, *chosen));
    if (const auto run = runFinding(covered))
        outcome.findings.push_back(*run);
    if (viewers == Viewers::Both)
        outcome.findings.push_back(grownUpsFinding(children));
    return outcome;
}

} // namespace wainscot
