#include "app/jobs/guide_book.h"

#include "app/jobs/arrange_job.h"
#include "app/jobs/book_jobs.h"
#include "app/jobs/group_edits.h"
#include "app/jobs/wall_plan.h"
#include "core/base/says.h"
#include "core/store/book_store.h"

namespace wainscot {

namespace {

constexpr int kPhotos = 8; // enough for a panel, and made in a few seconds

Result<> addGroups(BookStore& store, const Experience& experience)
{
    return store.history().perform(
        proposeGroupsEdit(store.book(), experience, Says::tr("Proposed groups")));
}

Result<> addPanel(BookStore& store, const Experience& experience, const JobRun& run)
{
    ArrangeJob job;
    job.experience = experience.title;
    job.display = Says::tr("Hallway");
    job.audience = Audience::Building;
    job.panelSize = {Mm(420), Mm(297)}; // small pictures are large on a small panel
    job.readingDistance = Mm(1000);
    job.advises = false;
    auto arranged = job.run(store.book(), run);
    if (!arranged)
        return arranged.error();
    auto* outcome = std::get_if<ArrangeOutcome>(&*arranged);
    if (outcome == nullptr)
        return Error{ErrorCode::Internal, job.display, std::get<ArrangeFailure>(*arranged).says};
    return store.history().perform(std::move(outcome->edit));
}

Result<> addWall(BookStore& store)
{
    EditBuilder edit(store.book(), Says::tr("A wall"));
    Wall wall;
    wall.id = edit.newId<Wall>();
    wall.name = Says::tr("Hallway");
    wall.fittings = {{FittingKind::Door, usualPlace(FittingKind::Door, wall.size)}};
    const DisplayId display = store.book().displays.rows().begin()->first;
    edit.put(withProposedPlaces(store.book(), wall, display));
    return store.history().perform(edit.take());
}

} // namespace

Result<QString> GuideBookJob::run(const JobRun& run) const
{
    SampleJob sample;
    sample.folder = folder;
    sample.photos = kPhotos;
    sample.small = true;
    const Result<SampleOutcome> made = sample.run(run);
    if (!made)
        return made.error();
    auto store = BookStore::open(made->book);
    if (!store)
        return store.error();
    const Book& book = (*store)->book();
    if (!book.walls.isEmpty())
        return made->book;
    const Experience experience = book.experiences.rows().begin()->second;
    if (const auto grouped = addGroups(**store, experience); !grouped)
        return grouped.error();
    if (const auto hung = addPanel(**store, experience, run); !hung)
        return hung.error();
    if (const auto measured = addWall(**store); !measured)
        return measured.error();
    return made->book;
}

} // namespace wainscot
