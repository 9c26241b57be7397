#include "app/jobs/arrange_job.h"

#include "app/jobs/draft.h"
#include "app/jobs/proposal.h"
#include "core/voice/participation.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr int kMomentsOnAPanel = 4;
constexpr int kMostPanels = 20;
constexpr int kMostAttempts = 4;
constexpr int kTighterPercent = 85;

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

struct Drafts {
    std::vector<PanelDraft> panels;
    std::set<QuoteId> quotes; // chosen to be on them
    std::int64_t missingCm2 = 0;
};

Drafts draftsFor(
    const Material& material, int panels, const std::vector<Piece>& pinned, const QuoteRoom& room)
{
    Drafts drafts;
    if (material.display.plan == QLatin1String("drawing")) {
        drafts.panels = draftDrawings(material, selectDrawings(material, panels));
    } else {
        const auto placed = std::count_if(pinned.begin(), pinned.end(), [](const Piece& piece) {
            return piece.kind == PieceKind::Quote;
        });
        const int moments = std::max(1, panels * kMomentsOnAPanel - static_cast<int>(placed));
        const Selection selection = selectDays(material, moments, panels, room);
        drafts.missingCm2 = selection.missingCm2;
        for (const Moment& moment : selection.moments)
            drafts.quotes.insert(moment.quote->id);
        drafts.panels = draftDays(material, selection, panels);
    }
    withoutPinned(drafts.panels, pinned);
    return drafts;
}

std::vector<Piece> piecesOf(const ArrangeOutcome& outcome)
{
    std::vector<Piece> pieces;
    for (const ArrangedPiece& one : outcome.pieces)
        pieces.push_back(one.piece);
    return pieces;
}

std::size_t childrenHeard(const Material& material, const ArrangeOutcome& outcome)
{
    std::set<ChildId> heard;
    for (const ArrangedPiece& one : outcome.pieces)
        heard.merge(voicesIn(*material.book, one.piece));
    return heard.size();
}

// Whether chosen words were given up because the room had been taken too large.
bool wordsWereDropped(const Drafts& drafts, const ArrangeOutcome& outcome)
{
    std::set<QuoteId> left = drafts.quotes;
    for (const ArrangedPiece& one : outcome.pieces)
        left.erase(one.piece.quote);
    return !left.empty();
}

std::optional<Error> nothingToShow(
    const Material& material, const Drafts& drafts, const std::vector<Piece>& pinned)
{
    const bool nothing = material.quotes.empty() && material.photos.empty()
        && material.works.empty() && pinned.empty();
    if (!drafts.panels.empty() && !nothing)
        return std::nullopt;
    return Error{ErrorCode::Refused,
        QStringLiteral("\"%1\"").arg(material.experience.title),
        nothing ? QStringLiteral("nothing of it may be shown to this audience")
                : QStringLiteral("it has no drawing with its maker's words that may be shown")};
}

using Arranged = Result<std::variant<ArrangeOutcome, ArrangeFailure>>;

// One attempt with the words that fit a room; `dropped`: the arrangement had to give some up.
Arranged attempt(const Material& material, const Drafts& drafts, const JobRun& run, bool& dropped)
{
    Proposal proposal(*material.book, material.display, run);
    proposal.setDrafts(drafts.panels);
    Arranged arranged = proposal.arrange(material);
    if (!arranged || !std::holds_alternative<ArrangeOutcome>(*arranged))
        return arranged;
    auto& outcome = std::get<ArrangeOutcome>(*arranged);
    dropped = wordsWereDropped(drafts, outcome);
    if (material.display.plan == QLatin1String("drawing"))
        return arranged; // one drawing on a panel: nobody else is meant to be on it
    for (const LeftOut& child : childrenUnheard(material, piecesOf(outcome), drafts.missingCm2))
        outcome.leftOut.push_back(child);
    return arranged;
}

// The room for words is estimated; while words have to be given up it is taken smaller and chosen
// for again, and of all attempts the one counts in which most children are heard.
Arranged arrangeInRoom(const Material& material,
    int panels,
    const std::vector<Piece>& pinned,
    QuoteRoom room,
    const JobRun& run)
{
    std::optional<ArrangeOutcome> best;
    for (int count = 0; count < kMostAttempts; ++count) {
        const Drafts drafts = draftsFor(material, panels, pinned, room);
        if (const auto fault = nothingToShow(material, drafts, pinned))
            return *fault;
        bool dropped = false;
        Arranged arranged = attempt(material, drafts, run, dropped);
        if (!arranged)
            return arranged;
        if (!std::holds_alternative<ArrangeOutcome>(*arranged)) {
            if (!best)
                return arranged;
            break;
        }
        auto& outcome = std::get<ArrangeOutcome>(*arranged);
        if (!best || childrenHeard(material, outcome) > childrenHeard(material, *best))
            best = std::move(outcome);
        if (!dropped)
            break;
        room.roomCm2 = room.roomCm2 * kTighterPercent / 100;
    }
    return std::variant<ArrangeOutcome, ArrangeFailure>(std::move(*best));
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
    const Proposal proposal(book, displayFor(*this, known, *told), run);
    const PermissionRules rules(book, proposal.display(), run.today);
    Material material = materialFor(book, *told, proposal.display(), rules, proposal.pinned());
    material.display.plan = choosePlan(*this, known, material);
    setLook(*this, material.display, known == nullptr);
    const bool isDrawing = material.display.plan == QLatin1String("drawing");
    const QuoteRoom room = isDrawing ? QuoteRoom() : quoteRoom(material, rules, panels);
    return arrangeInRoom(material, panels, proposal.pinned(), room, run);
}

} // namespace wainscot
