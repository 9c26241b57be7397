#include "app/jobs/arrange_wishes.h"

#include "app/jobs/plan_choice.h"
#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "layout/engine/plan.h"
#include "layout/typeset/style.h"

#include <algorithm>

namespace wainscot {

namespace {

// People come nearer to a sheet of a table's size (A3, Tabloid). Common practice, no source.
Mm usualReadingDistance(SizeMm panel)
{
    return std::max(panel.width, panel.height) <= Mm(432) ? Mm(1000) : Mm(1500);
}

} // namespace

Display displayFor(
    const ArrangeJob& job, const Book& book, const Display* known, const Experience& experience)
{
    Display display = known != nullptr ? *known : Display();
    display.experience = experience.id;
    display.name = job.display.simplified();
    display.audience = job.audience;
    display.panelSize = job.panelSize;
    if (job.readingDistance)
        display.readingDistance = *job.readingDistance;
    else if (known == nullptr)
        display.readingDistance = usualReadingDistance(job.panelSize);
    display.language = languageOf(book, experience);
    return display;
}

void setLook(const ArrangeJob& job, const PanelTemplate* own, Display& display, bool isNew)
{
    const PlanStyle plan = planStyle(display.plan);
    if (!job.pairing.isEmpty())
        display.pairing = job.pairing;
    else if (isNew)
        display.pairing = own != nullptr ? own->pairing : plan.pairing;
    if (!job.palette.isEmpty())
        display.palette = job.palette;
    else if (isNew)
        display.palette = own != nullptr ? own->palette : plan.palette;
    if (job.voiceStep)
        display.voiceStep = *job.voiceStep;
    else if (isNew && own != nullptr)
        display.voiceStep = own->voiceStep;
}

std::optional<Error> faultIn(const ArrangeJob& job)
{
    if (job.display.simplified().isEmpty())
        return Error{ErrorCode::WrongUse, Says::tr("A display needs a name"), {}};
    if (job.panels < 1 || job.panels > kMostPanels) {
        return Error{ErrorCode::WrongUse,
            Says::tr("%1 panels").arg(job.panels),
            Says::tr("a display has 1 to %1").arg(kMostPanels)};
    }
    if (job.readingDistance
        && (*job.readingDistance < Mm(300) || *job.readingDistance > Mm(10000))) {
        return Error{ErrorCode::WrongUse,
            Says::tr("A reading distance of %1 mm").arg(job.readingDistance->value()),
            Says::tr("people read from 0.3 m to 10 m")};
    }
    if (job.voiceStep.value_or(0) < 0 || job.voiceStep.value_or(0) > 3) {
        return Error{ErrorCode::WrongUse,
            Says::tr("Step %1 for children's words").arg(job.voiceStep.value_or(0)),
            Says::tr("the type scale has steps 1 to 3 for them, 0 leaves it to the plan")};
    }
    return std::nullopt;
}

const PanelTemplate* ownTemplate(const Book& book, const QString& plan)
{
    const bool builtIn = engine::planByName(plan.toStdString()) != nullptr;
    return builtIn || plan.isEmpty() ? nullptr : templateByName(book, plan);
}

std::optional<Error> unknownPlan(const Book& book, const QString& plan)
{
    if (plan.isEmpty() || engine::planByName(plan.toStdString()) != nullptr
        || templateByName(book, plan) != nullptr)
        return std::nullopt;
    QStringList known;
    for (const engine::Plan& one : engine::plans())
        known.append(QString::fromStdString(one.name));
    for (const auto& [id, made] : book.templates.rows())
        known.append(made.name);
    return Error{ErrorCode::WrongUse,
        Says::tr("\"%1\" is no template").arg(plan),
        Says::tr("known are %1").arg(listInWords(known))};
}

} // namespace wainscot
