#include "app/jobs/plan_choice.h"

#include "app/jobs/draft.h"

namespace wainscot {

namespace {

// A sheet up to A3 holds one drawing and its words well (ISO 216: 297 x 420 mm).
constexpr double kDrawingSheetMm2 = 297.0 * 420.0 * 1.05;
// From about here on a telling fills the room beside a drawing.
constexpr int kLongTellingLetters = 60;

constexpr int kManyVoices = 6; // children who answered one prompt
constexpr std::size_t kFewPhotos = 2;
constexpr double kStripAspect = 2.2;

bool isDrawing(const ArrangeJob& job, const Material& material)
{
    const double area = job.panelSize.width.value() * job.panelSize.height.value();
    if (area > kDrawingSheetMm2)
        return false;
    const auto drawings = selectDrawings(material, 1);
    return !drawings.empty() && drawings.front().quote->words.size() >= kLongTellingLetters;
}

bool isEvening(const ArrangeJob& job, const Material& material)
{
    return job.audience == Audience::Families && !material.experience.invitation.isEmpty()
        && !secondLanguageOf(material).isEmpty();
}

// An idea that went on from meeting to meeting; on a strip, days do as well.
bool isThread(const ArrangeJob& job, const Material& material)
{
    const std::size_t meetings = threadMeetings(material).size();
    const bool across = job.panelSize.width > job.panelSize.height;
    const bool strip = job.panelSize.width > kStripAspect * job.panelSize.height;
    return (meetings >= 2 && meetings <= 4 && across) || strip;
}

bool isVoices(const Material& material)
{
    return material.photos.size() <= kFewPhotos && mostAnswered(material).children >= kManyVoices;
}

} // namespace

QString choosePlan(const ArrangeJob& job, const Display* known, const Material& material)
{
    if (!job.plan.isEmpty())
        return job.plan;
    if (!job.ideas.empty())
        return QStringLiteral("days"); // with ideas in the place of days
    const bool samePaper = known != nullptr && known->panelSize == job.panelSize;
    if (samePaper && !known->plan.isEmpty())
        return known->plan;
    if (job.panels == 1) {
        if (isDrawing(job, material))
            return QStringLiteral("drawing");
        if (isEvening(job, material))
            return QStringLiteral("evening");
        if (isThread(job, material))
            return QStringLiteral("thread");
        if (isBeforeAndAfter(material))
            return QStringLiteral("before");
        if (isVoices(material))
            return QStringLiteral("voices");
    } else if (isDrawing(job, material)) {
        return QStringLiteral("drawing");
    }
    if (isOneChildsQuestions(material))
        return QStringLiteral("questions");
    return QStringLiteral("days");
}

} // namespace wainscot
