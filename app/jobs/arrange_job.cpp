#include "app/jobs/arrange_job.h"

#include "app/jobs/arrange_wishes.h"
#include "app/jobs/draft.h"
#include "app/jobs/plan_choice.h"
#include "app/jobs/proposal.h"
#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "core/media/likeness.h"
#include "core/voice/participation.h"
#include "layout/engine/plan.h"
#include "layout/typeset/style.h"

#include <algorithm>
#include <set>

namespace wainscot {

namespace {

constexpr int kMomentsOnAPanel = 4;
constexpr int kTellingsOfIdeas = 12; // on one panel; fewer where they do not fit
constexpr int kMostAttempts = 4;
constexpr int kTighterPercent = 85;

constexpr int kVoicesUpright = 9;
constexpr int kVoicesAcross = 8;

// `tighter`: how often the words had to be given up already.
int momentsFor(const Material& material, const PanelTemplate* own, int panels, int tighter)
{
    if (!material.ideas.empty())
        return std::max<int>(kTellingsOfIdeas - 2 * tighter, int(material.ideas.size()));
    if (own == nullptr)
        return panels * kMomentsOnAPanel;
    const auto quotes = std::count_if(own->places.begin(),
        own->places.end(),
        [](const TemplateSlot& slot) { return slot.kind == PieceKind::Quote; });
    return panels * std::max(1, static_cast<int>(quotes));
}

struct Drafts {
    std::vector<PanelDraft> panels;
    std::set<QuoteId> quotes; // chosen to be on them
    std::int64_t missingCm2 = 0;
};

std::vector<PanelDraft> onlyFilled(PanelDraft draft)
{
    if (draft.pieces.empty())
        return {};
    return {std::move(draft)};
}

// Drafts of the templates that choose for themselves; nothing = as days.
std::vector<PanelDraft> ownDrafts(const Material& material, int panels)
{
    const QString& plan = material.display.plan;
    const SizeMm size = material.display.panelSize;
    if (plan == QLatin1String("drawing"))
        return draftDrawings(material, selectDrawings(material, panels));
    if (plan == QLatin1String("voices")) {
        const bool upright = size.height > size.width;
        return {draftVoices(material, upright ? kVoicesUpright : kVoicesAcross)};
    }
    if (plan == QLatin1String("evening"))
        return {draftEvening(material, secondLanguageOf(material))};
    if (plan == QLatin1String("door"))
        return onlyFilled(draftDoor(material));
    if (plan == QLatin1String("before"))
        return onlyFilled(draftBefore(material));
    if (plan == QLatin1String("questions"))
        return draftQuestions(material, panels);
    return {draftThread(material)};
}

Drafts draftsFor(const Material& material,
    int panels,
    const std::vector<Piece>& pinned,
    const QuoteRoom& room,
    int tighter)
{
    Drafts drafts;
    if (!isOfDays(material.display.plan)) {
        drafts.panels = ownDrafts(material, panels);
    } else {
        const auto placed = std::count_if(pinned.begin(), pinned.end(), [&](const Piece& piece) {
            return piece.kind == PieceKind::Quote && !isOnLocked(piece, *material.book);
        });
        const PanelTemplate* own = ownTemplate(*material.book, material.display.plan);
        const int moments =
            std::max(1, momentsFor(material, own, panels, tighter) - static_cast<int>(placed));
        const Selection selection = selectDays(material, moments, panels, room);
        drafts.missingCm2 = selection.missingCm2;
        for (const Moment& moment : selection.moments)
            drafts.quotes.insert(moment.quote->id);
        if (material.ideas.empty())
            drafts.panels = draftDays(material, selection, panels);
        else
            drafts.panels = {draftIdeas(material, selection)};
    }
    withoutPinned(drafts.panels, pinned, *material.book);
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

QString whatIsMissing(const QString& plan)
{
    if (plan == QLatin1String("door"))
        return Says::tr("it has no photo and two children's words that may be shown");
    if (plan == QLatin1String("before"))
        return Says::tr("it has no two days with a picture and words that may be shown");
    if (plan == QLatin1String("questions"))
        return Says::tr("it has no child's question that may be shown");
    return Says::tr("it has no drawing with its maker's words that may be shown");
}

std::optional<Error> nothingToShow(
    const Material& material, const Drafts& drafts, const std::vector<Piece>& pinned)
{
    const bool nothing = material.quotes.empty() && material.photos.empty()
        && material.works.empty() && pinned.empty();
    if (!drafts.panels.empty() && !nothing)
        return std::nullopt;
    return Error{ErrorCode::Refused,
        quoted(material.experience.title),
        nothing ? Says::tr("nothing of it may be shown to this audience")
                : whatIsMissing(material.display.plan)};
}

// A picture that was left away for a near-equal one says so.
void nameBursts(const Material& material, ArrangeOutcome& outcome)
{
    std::vector<const Picture*> all = material.photos;
    all.insert(all.end(), material.placed.begin(), material.placed.end());
    const std::map<PictureId, int> bursts = burstsOf(all);
    std::map<int, QString> shown;
    for (const ArrangedPiece& one : outcome.pieces) {
        const auto burst = bursts.find(one.piece.picture);
        if (burst != bursts.end())
            shown[burst->second] = material.book->pictures.find(one.piece.picture)->fileName;
    }
    for (LeftOut& left : outcome.leftOut) {
        const auto burst = bursts.find(PictureId(left.id));
        if (left.what != nameOf(PictureKind::Photo) || burst == bursts.end())
            continue;
        if (const auto other = shown.find(burst->second); other != shown.end())
            left.why =
                Says::tr("%1 is nearly the same as %2, which is shown; star it to "
                         "show it instead.")
                    .arg(material.book->pictures.find(PictureId(left.id))->fileName, other->second);
    }
}

using Arranged = Result<std::variant<ArrangeOutcome, ArrangeFailure>>;

// One attempt with the words that fit a room; `dropped`: the arrangement had to give some up.
Arranged attempt(
    const Material& material, const Drafts& drafts, const JobRun& run, bool advises, bool& dropped)
{
    Proposal proposal(*material.book, material.display, run);
    proposal.setDisplay(material.display);
    proposal.setDrafts(drafts.panels);
    Arranged arranged = proposal.arrange(material, advises);
    if (!arranged || !std::holds_alternative<ArrangeOutcome>(*arranged))
        return arranged;
    auto& outcome = std::get<ArrangeOutcome>(*arranged);
    dropped = wordsWereDropped(drafts, outcome);
    nameBursts(material, outcome);
    if (!isOfDays(material.display.plan))
        return arranged; // those who are on it were chosen by the template: nobody else is meant
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
    const JobRun& run,
    bool advises)
{
    std::optional<ArrangeOutcome> best;
    for (int count = 0; count < kMostAttempts; ++count) {
        const Drafts drafts = draftsFor(material, panels, pinned, room, count);
        if (const auto fault = nothingToShow(material, drafts, pinned))
            return *fault;
        bool dropped = false;
        Arranged arranged = attempt(material, drafts, run, advises, dropped);
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

// A panel in two languages is not finished while one of its texts is in one of them only.
void tellWhatIsUntranslated(const Material& material, ArrangeOutcome& outcome)
{
    if (material.display.plan != QLatin1String("evening"))
        return;
    for (const PieceKind kind : {PieceKind::Title, PieceKind::Context, PieceKind::Invitation}) {
        const auto texts = std::count_if(outcome.pieces.begin(),
            outcome.pieces.end(),
            [&](const ArrangedPiece& one) { return one.piece.kind == kind; });
        if (texts % 2 == 0)
            continue;
        outcome.droppedWishes.push_back(
            Says::tr("The %1 is in one language only: the panel is not finished before it "
                     "is in both.")
                .arg(nameOf(kind)));
    }
}

std::set<std::int64_t> quotesOn(const ArrangeOutcome& outcome)
{
    std::set<std::int64_t> quotes;
    for (const ArrangedPiece& one : outcome.pieces)
        quotes.insert(one.piece.quote.number());
    return quotes;
}

// Where something was left out for want of room: whether one panel more takes it.
void offerOnePanelMore(const ArrangeJob& job,
    const Book& book,
    const JobRun& run,
    std::variant<ArrangeOutcome, ArrangeFailure>& arranged)
{
    auto* outcome = std::get_if<ArrangeOutcome>(&arranged);
    const bool full = outcome != nullptr && outcome->advice.size() == 1
        && outcome->advice.front().kind == AdviceKind::LessOnIt;
    if (!full || job.panels >= kMostPanels || outcome->display.plan != QLatin1String("days"))
        return;
    ArrangeJob more = job;
    more.panels = job.panels + 1;
    more.plan = outcome->display.plan;
    more.advises = false;
    const auto tried = more.run(book, run);
    const auto* found = tried ? std::get_if<ArrangeOutcome>(&*tried) : nullptr;
    if (found == nullptr)
        return;
    const std::set<std::int64_t> there = quotesOn(*found);
    Advice advice = outcome->advice.front();
    const bool all = std::all_of(advice.quotes.begin(),
        advice.quotes.end(),
        [&](std::int64_t quote) { return there.count(quote) > 0; });
    if (!all)
        return;
    advice.kind = AdviceKind::MorePanels;
    advice.panels = more.panels;
    advice.says = sentenceFor(advice);
    outcome->advice.insert(outcome->advice.begin(), advice);
}

} // namespace

Result<std::variant<ArrangeOutcome, ArrangeFailure>> ArrangeJob::run(
    const Book& book, const JobRun& run) const
{
    if (const auto fault = faultIn(*this))
        return *fault;
    if (const auto fault = unknownPlan(book, plan))
        return *fault;
    const Experience* told = experienceByTitle(book, experience);
    if (told == nullptr) {
        return Error{ErrorCode::NotFound,
            Says::tr("The experience \"%1\"").arg(experience),
            Says::tr("this book has no experience of that title")};
    }
    const Display* known = displayByName(book, display);
    const Proposal proposal(book, displayFor(*this, book, known, *told), run);
    const PermissionRules rules(book, proposal.display(), run.today);
    Material material = materialFor(book, *told, proposal.display(), rules, proposal.pinned());
    material.display.plan = choosePlan(*this, known, material);
    const PanelTemplate* own = ownTemplate(book, material.display.plan);
    setLook(*this, own, material.display, known == nullptr);
    const int open = panels - proposal.lockedPanels();
    if (open < 1)
        return Error{ErrorCode::Refused,
            quoted(display),
            Says::tr("all of its panels are locked; unlock one or ask for one more")};
    material.ideas = ideas;
    // Words of ideas stand close together: how many fit is tried, not estimated.
    const bool estimated = isOfDays(material.display.plan) && ideas.empty();
    const QuoteRoom room = estimated ? quoteRoom(material, rules, open) : QuoteRoom();
    Arranged arranged = arrangeInRoom(material, open, proposal.pinned(), room, run, advises);
    if (auto* outcome = arranged ? std::get_if<ArrangeOutcome>(&*arranged) : nullptr)
        tellWhatIsUntranslated(material, *outcome);
    if (arranged)
        offerOnePanelMore(*this, book, run, *arranged);
    return arranged;
}

} // namespace wainscot
