#include "app/jobs/arrange_job.h"

#include "app/jobs/draft.h"
#include "app/jobs/proposal.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr int kMomentsOnAPanel = 4;
constexpr int kMostPanels = 20;

// A sheet up to A3 holds one drawing and its words well (ISO 216: 297 x 420 mm).
constexpr double kDrawingSheetMm2 = 297.0 * 420.0 * 1.05;
// From about here on a telling fills the room beside a drawing.
constexpr int kLongTellingLetters = 60;

QString choosePlan(const ArrangeJob& job, const Display* known, const Material& material)
{
    if (!job.plan.isEmpty())
        return job.plan;
    const double area = job.panelSize.width.value() * job.panelSize.height.value();
    const bool samePaper = known != nullptr && known->panelSize == job.panelSize;
    if (samePaper && !known->plan.isEmpty())
        return known->plan;
    if (area <= kDrawingSheetMm2) {
        const auto drawings = selectDrawings(material, 1);
        if (!drawings.empty() && drawings.front().quote->words.size() >= kLongTellingLetters)
            return QStringLiteral("drawing");
    }
    return QStringLiteral("days");
}

// People come nearer to a sheet of a table's size (A3, Tabloid). Common practice, no source.
Mm usualReadingDistance(SizeMm panel)
{
    return std::max(panel.width, panel.height) <= Mm(432) ? Mm(1000) : Mm(1500);
}

Display displayFor(const ArrangeJob& job, const Display* known, const Experience& experience)
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
    display.language = experience.language.isEmpty() ? display.language : experience.language;
    return display;
}

void setLook(const ArrangeJob& job, Display& display, bool isNew)
{
    const bool drawing = display.plan == QLatin1String("drawing");
    if (!job.pairing.isEmpty())
        display.pairing = job.pairing;
    else if (isNew)
        display.pairing = drawing ? QStringLiteral("Fieldbook") : QStringLiteral("Schoolroom");
    if (!job.palette.isEmpty())
        display.palette = job.palette;
    else if (isNew)
        display.palette = drawing ? QStringLiteral("Damson") : QStringLiteral("Wet Slate");
}

std::optional<Error> faultIn(const ArrangeJob& job)
{
    if (job.display.simplified().isEmpty())
        return Error{ErrorCode::WrongUse, QStringLiteral("A display needs a name"), {}};
    if (job.panels < 1 || job.panels > kMostPanels) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("%1 panels").arg(job.panels),
            QStringLiteral("a display has 1 to %1").arg(kMostPanels)};
    }
    if (job.readingDistance
        && (*job.readingDistance < Mm(300) || *job.readingDistance > Mm(10000))) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("A reading distance of %1 mm").arg(job.readingDistance->value()),
            QStringLiteral("people read from 0.3 m to 10 m")};
    }
    return std::nullopt;
}

std::vector<PanelDraft> draftsFor(
    const Material& material, int panels, const std::vector<Piece>& pinned)
{
    std::vector<PanelDraft> drafts;
    if (material.display.plan == QLatin1String("drawing")) {
        drafts = draftDrawings(material, selectDrawings(material, panels));
    } else {
        const auto placed = std::count_if(pinned.begin(), pinned.end(), [](const Piece& piece) {
            return piece.kind == PieceKind::Quote;
        });
        const int moments = std::max(1, panels * kMomentsOnAPanel - static_cast<int>(placed));
        drafts = draftDays(material, selectDays(material, moments, panels), panels);
    }
    withoutPinned(drafts, pinned);
    return drafts;
}

} // namespace

Result<std::variant<ArrangeOutcome, ArrangeFailure>> ArrangeJob::run(
    const Book& book, const JobRun& run) const
{
    if (const auto fault = faultIn(*this))
        return *fault;
    const Experience* told = experienceByTitle(book, experience);
    if (told == nullptr) {
        return Error{ErrorCode::NotFound,
            QStringLiteral("The experience \"%1\"").arg(experience),
            QStringLiteral("this book has no experience of that title")};
    }
    const Display* known = displayByName(book, display);
    Proposal proposal(book, displayFor(*this, known, *told), run);
    const PermissionRules rules(book, proposal.display(), run.today);
    Material material = materialFor(book, *told, proposal.display(), rules, proposal.pinned());
    material.display.plan = choosePlan(*this, known, material);
    setLook(*this, material.display, known == nullptr);
    proposal.setDisplay(material.display);

    const std::vector<PanelDraft> drafts = draftsFor(material, panels, proposal.pinned());
    const bool nothing = material.quotes.empty() && material.photos.empty()
        && material.works.empty() && proposal.pinned().empty();
    if (drafts.empty() || nothing) {
        return Error{ErrorCode::Refused,
            QStringLiteral("\"%1\"").arg(told->title),
            drafts.empty() && !nothing
                ? QStringLiteral("it has no drawing with its maker's words that may be shown")
                : QStringLiteral("nothing of it may be shown to this audience")};
    }
    proposal.setDrafts(drafts);
    return proposal.arrange(material);
}

} // namespace wainscot
