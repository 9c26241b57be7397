#include "app/jobs/proposal.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/engine_request.h"
#include "app/jobs/panel_wishes.h"
#include "app/jobs/plan_sentences.h"
#include "app/jobs/reading_order.h"
#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "layout/engine/plan.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {

namespace {

constexpr int kLeastVoices = 3;
constexpr int kFewVoices = 5; // below, a panel of many voices is none

engine::Form formOf(const PanelTemplate& made)
{
    engine::Form form;
    form.name = made.name.toStdString();
    for (const TemplateSlot& slot : made.places) {
        form.places.push_back({static_cast<engine::Kind>(slot.kind),
            slot.group,
            slot.column,
            slot.columns,
            slot.rows,
            slot.area,
            slot.dominant,
            slot.optional,
            slot.fixed,
            slot.top});
    }
    return form;
}

bool keepsPlan(const std::vector<std::pair<int, engine::Arrangement>>& arranged)
{
    return std::all_of(arranged.begin(), arranged.end(), [](const auto& one) {
        const auto& wishes = one.second.droppedWishes;
        return std::none_of(wishes.begin(), wishes.end(), [](const engine::DroppedWish& wish) {
            return wish.what == engine::WishAbout::Plan;
        });
    });
}

} // namespace

Proposal::Proposal(const Book& book, const Display& display, const JobRun& run)
    : m_book(book)
    , m_run(run)
    , m_edit(book, Says::tr("Propose %1").arg(display.name))
    , m_display(display)
    , m_before(book, display.id)
{
    if (!m_display.id.isValid())
        m_display.id = m_edit.newId<Display>();
    for (const Panel* panel : panelsOf(book, m_display.id)) {
        for (const Piece* piece : piecesOf(book, panel->id)) {
            if (panel->locked || (piece->pinned && !piece->cell.isEmpty()))
                m_pinned.push_back(*piece);
        }
    }
}

int Proposal::lockedPanels() const
{
    const auto panels = panelsOf(m_book, m_display.id);
    return static_cast<int>(std::count_if(
        panels.begin(), panels.end(), [](const Panel* panel) { return panel->locked; }));
}

void Proposal::setDisplay(const Display& display)
{
    m_display = display;
    m_own = engine::planByName(display.plan.toStdString()) != nullptr
        ? nullptr
        : templateByName(m_book, display.plan);
}

void Proposal::setDrafts(const std::vector<PanelDraft>& drafts)
{
    const std::vector<const Panel*> known = panelsOf(m_book, m_display.id);
    addPanels(drafts, known);
    addPinned(known);
    std::vector<PanelDraft*> open;
    for (Panelled* panelled : openPanels())
        open.push_back(&panelled->draft);
    if (!spreads())
        m_unheeded = heedPanelWishes(open, m_book);
    for (std::size_t at = 0; at < m_panels.size(); ++at) {
        m_panels[at].panel.number = static_cast<int>(at) + 1;
        if (!m_panels[at].panel.locked)
            sortForReading(m_panels[at].draft.pieces, m_display.plan);
    }
}

bool Proposal::spreads() const
{
    const auto open = std::count_if(
        m_panels.begin(), m_panels.end(), [](const Panelled& one) { return !one.panel.locked; });
    return open > 1 && isOfDays(m_display.plan);
}

// Locked panels keep their place among the others; drafts come onto the rest and onto new ones.
void Proposal::addPanels(
    const std::vector<PanelDraft>& drafts, const std::vector<const Panel*>& known)
{
    auto draft = drafts.begin();
    const auto add = [&](Panel panel) {
        Panelled panelled;
        panel.display = m_display.id;
        panelled.panel = panel;
        if (!panel.locked)
            panelled.draft = *draft++;
        for (Piece& piece : panelled.draft.pieces) {
            m_before.onto(piece, panelled.draft.pieces);
            piece.id = m_edit.newId<Piece>();
        }
        for (Piece& piece : panelled.draft.pieces)
            piece.panel = panel.id;
        m_panels.push_back(std::move(panelled));
    };
    for (const Panel* panel : known) {
        if (panel->locked || draft != drafts.end())
            add(*panel);
    }
    while (draft != drafts.end()) {
        Panel panel;
        panel.id = m_edit.newId<Panel>();
        add(panel);
    }
}

// Pinned pieces stay on their panel, even where nothing new comes onto it.
void Proposal::addPinned(const std::vector<const Panel*>& known)
{
    int groups = 0;
    for (const Piece& piece : m_pinned)
        groups = std::max(groups, piece.group);
    for (Panelled& panelled : m_panels) {
        for (Piece& piece : panelled.draft.pieces)
            piece.group += piece.group > 0 ? groups : 0;
    }
    for (const Piece& piece : m_pinned) {
        auto at = std::find_if(m_panels.begin(), m_panels.end(), [&](const Panelled& panelled) {
            return panelled.panel.id == piece.panel;
        });
        if (at == m_panels.end()) {
            const auto old = std::find_if(known.begin(), known.end(), [&](const Panel* panel) {
                return panel->id == piece.panel;
            });
            Panelled extra;
            extra.panel = **old;
            extra.panel.number = static_cast<int>(m_panels.size()) + 1;
            m_panels.push_back(extra);
            at = std::prev(m_panels.end());
        }
        at->draft.pieces.push_back(piece);
    }
}

// The book as it would be, so that the permission rules see everything that comes onto the
// display.
Book Proposal::scratchBook(const Display& display) const
{
    Book scratch = m_book;
    for (const Panel* panel : panelsOf(m_book, m_display.id)) {
        for (const Piece* piece : piecesOf(m_book, panel->id))
            scratch.pieces.remove(piece->id);
        scratch.panels.remove(panel->id);
    }
    scratch.displays.put(display);
    for (const Panelled& panelled : m_panels) {
        scratch.panels.put(panelled.panel);
        for (const Piece& piece : panelled.draft.pieces)
            scratch.pieces.put(piece);
    }
    return scratch;
}

Proposal::Asked Proposal::ask(
    const Panelled& panelled, const Display& display, const PermissionRules& rules) const
{
    ClearedPanel cleared = rules.clear(panelled.panel, panelled.draft.pieces);
    PanelStyle style = styleFor(cleared);
    auto text = std::make_unique<PanelMeasurer>(cleared.pieces(), style, display.language);
    engine::Request request = requestFor(cleared, style, *text);
    request.cancel = m_run.cancel;
    if (m_own != nullptr)
        request.form = formOf(*m_own);
    if (m_run.onFirst && &display == &m_display) // not while advice is tried
        request.onFirst = [this, number = panelled.panel.number](
                              const engine::Arrangement& first) { m_run.onFirst(number, first); };
    return {std::move(cleared), std::move(style), std::move(text), std::move(request)};
}

Proposal::Attempt Proposal::attempt(const Display& display) const
{
    const Book scratch = scratchBook(display);
    const PermissionRules rules(scratch, display, m_run.today);
    Arranged arranged;
    for (const Panelled& panelled : m_panels) {
        if (panelled.panel.locked)
            continue;
        const auto known = m_laidOut.find(keyOf(panelled));
        const bool isKnown = &display == &m_display && known != m_laidOut.end();
        const Asked asked = ask(panelled, display, rules);
        engine::Outcome outcome =
            isKnown ? known->second : engine::arrange(asked.request, *asked.text);
        if (const auto* failure = std::get_if<engine::Failure>(&outcome))
            return std::pair(panelled.panel.number, *failure);
        arranged.emplace_back(
            panelled.panel.number, std::move(std::get<engine::Arrangement>(outcome)));
    }
    return arranged;
}

// Less on a panel: first what takes most room of what the children said, then what the adult adds.
bool Proposal::makeRoom(int panel)
{
    m_laidOut.clear(); // what goes may let a name be shown
    PanelDraft& draft = m_panels[static_cast<std::size_t>(panel - 1)].draft;
    std::vector<Piece>& dropped = m_dropped;
    const QString& plan = m_display.plan;
    if (plan == QLatin1String("voices") || plan == QLatin1String("thread")) {
        if (dropLongestQuote(draft, m_book, kLeastVoices, dropped))
            return true;
    } else if (dropLongestQuote(draft, m_book, 0, dropped)
        || dropLongestMoment(draft, m_book, dropped)) {
        return true;
    }
    for (const PieceKind kind : {PieceKind::NextStep, PieceKind::Interpretation}) {
        const auto removed = std::erase_if(
            draft.pieces, [&](const Piece& piece) { return piece.kind == kind && !piece.pinned; });
        if (removed > 0)
            return true;
    }
    return false;
}

// A template for a handful of voices is kept with one voice less rather than not at all.
bool Proposal::makeRoomForPlan(const Arranged& arranged)
{
    const QString& plan = m_display.plan;
    if (plan != QLatin1String("voices") && plan != QLatin1String("thread"))
        return false;
    for (const auto& [number, arrangement] : arranged) {
        const auto& wishes = arrangement.droppedWishes;
        const bool lost =
            std::any_of(wishes.begin(), wishes.end(), [](const engine::DroppedWish& wish) {
                return (wish.what == engine::WishAbout::Plan
                           || wish.what == engine::WishAbout::LargePicture)
                    && wish.why == engine::WishReason::NoRoom;
            });
        std::vector<Piece>& dropped = m_dropped;
        PanelDraft& draft = m_panels[static_cast<std::size_t>(number - 1)].draft;
        if (lost && dropLongestQuote(draft, m_book, kFewVoices, dropped))
            return true;
    }
    return false;
}

Result<std::variant<ArrangeOutcome, ArrangeFailure>> Proposal::arrange(
    const Material& material, bool advises)
{
    std::optional<Arranged> first; // the first that fits, with the template or without
    std::vector<Panelled> firstPanels;
    std::vector<Piece> firstDropped;
    for (;;) {
        m_run.report(QStringLiteral("Arranging"));
        if (spreads())
            spread(material);
        Attempt result = attempt();
        if (auto* arranged = std::get_if<Arranged>(&result)) {
            if (!first) {
                first = *arranged;
                firstPanels = m_panels;
                firstDropped = m_dropped;
            }
            if (makeRoomForPlan(*arranged))
                continue;
            const bool kept = keepsPlan(*arranged);
            if (!kept) {
                m_panels = firstPanels;
                m_dropped = firstDropped;
            }
            const Arranged& chosen = kept ? *arranged : *first;
            std::vector<Advice> advice = advises ? adviceOn(chosen) : std::vector<Advice>();
            ArrangeOutcome outcome = outcomeOf(chosen, material);
            outcome.advice = std::move(advice);
            return std::variant<ArrangeOutcome, ArrangeFailure>(std::move(outcome));
        }
        const auto& [panel, failure] = std::get<std::pair<int, engine::Failure>>(result);
        if (failure.what == engine::Obstacle::Cancelled || m_run.cancelled())
            return stoppedByPerson();
        const bool lessMayHelp = failure.what == engine::Obstacle::TooMuchForPages
            || failure.what == engine::Obstacle::PictureTooFewPixels
            || failure.what == engine::Obstacle::WordTooWide;
        if (lessMayHelp && makeRoom(panel))
            continue;
        return std::variant<ArrangeOutcome, ArrangeFailure>(
            ArrangeFailure{failure.what, failure.missingMm2, panel, roomSentence(failure, panel)});
    }
}

ArrangeOutcome Proposal::outcomeOf(const Arranged& arranged, const Material& material)
{
    ArrangeOutcome outcome;
    outcome.display = m_display;
    outcome.panels = static_cast<int>(m_panels.size());
    for (const auto& [number, arrangement] : arranged) {
        std::map<std::int64_t, const engine::Placement*> places;
        for (const engine::Placement& place : arrangement.items)
            places[place.id] = &place;
        std::vector<Piece>& pieces = m_panels[static_cast<std::size_t>(number - 1)].draft.pieces;
        QStringList without;
        const auto& left = arrangement.leftOut;
        std::erase_if(pieces, [&](const Piece& piece) {
            const bool goes = std::find(left.begin(), left.end(), piece.id.number()) != left.end();
            if (goes)
                without.append(calledFor(piece, m_book));
            return goes;
        });
        for (Piece& piece : pieces) {
            const auto at = places.find(piece.id.number());
            if (at == places.end())
                continue;
            if (!piece.pinned) {
                piece.cell = at->second->cell;
                piece.picturePlace = at->second->picture;
            }
            outcome.pieces.push_back({piece, number, at->second->keep, at->second->ppi});
        }
        for (const engine::DroppedWish& wish : arrangement.droppedWishes)
            outcome.droppedWishes.push_back(onPanel(number, sentenceFor(wish, without)));
        sayWishes(arrangement, number, outcome);
    }
    for (const QString& sentence : m_unheeded)
        outcome.droppedWishes.push_back(sentence);
    for (const Panelled& panelled : m_panels) {
        for (const Piece& piece : panelled.draft.pieces) {
            if (panelled.panel.locked)
                outcome.pieces.push_back({piece, panelled.panel.number});
        }
    }
    if (spreads())
        outcome.breaks = m_breaks;
    outcome.leftOut = leftOut(material);
    outcome.refused = material.refused.size();
    fillEdit(outcome);
    return outcome;
}

void Proposal::sayWishes(
    const engine::Arrangement& arrangement, int panel, ArrangeOutcome& outcome) const
{
    const auto& pieces = m_panels[static_cast<std::size_t>(panel - 1)].draft.pieces;
    for (const QString& sentence : wishSentences(arrangement, pieces, m_book))
        outcome.droppedWishes.push_back(
            Says::tr("Panel %1: %2").arg(QString::number(panel), sentence));
}

QString Proposal::onPanel(int number, const QString& sentence) const
{
    return m_panels.size() < 2 ? sentence
                               : Says::tr("Panel %1: %2").arg(QString::number(number), sentence);
}

QString Proposal::roomSentence(const engine::Failure& failure, int panel) const
{
    if (failure.what == engine::Obstacle::Cancelled)
        return Says::tr("Stopped; nothing was changed.");
    const auto& pieces = m_panels[static_cast<std::size_t>(panel - 1)].draft.pieces;
    return Says::tr("Panel %1: %2").arg(QString::number(panel), whyNoRoom(failure, pieces, m_book));
}

std::vector<LeftOut> Proposal::leftOut(const Material& material) const
{
    std::set<QuoteId> quotes;
    std::set<PictureId> pictures;
    for (const Panelled& panelled : m_panels) {
        for (const Piece& piece : panelled.draft.pieces) {
            quotes.insert(piece.quote);
            pictures.insert(piece.picture);
        }
    }
    std::vector<LeftOut> left = material.refused;
    for (const Quote* quote : material.quotes) {
        if (quotes.count(quote->id) > 0)
            continue;
        QString words = quote->words.simplified();
        if (words.size() > 40)
            words = words.left(38).trimmed() + QChar(0x2026);
        left.push_back({QStringLiteral("quote"),
            quote->id.number(),
            {},
            Says::tr("%1: %2%3%4 is not placed for want of room.")
                .arg(material.nameOf(quote->child), QChar(0x201c), words, QChar(0x201d))});
    }
    for (const auto* list : {&material.photos, &material.works}) {
        for (const Picture* picture : *list) {
            if (pictures.count(picture->id) > 0)
                continue;
            left.push_back({nameOf(picture->kind),
                picture->id.number(),
                {},
                Says::tr("%1 is not placed for want of room.").arg(picture->fileName)});
        }
    }
    return left;
}

void Proposal::fillEdit(ArrangeOutcome& outcome)
{
    std::set<PanelId> panels;
    std::set<PieceId> pieces;
    m_edit.put(m_display);
    for (const Panelled& panelled : m_panels) {
        m_edit.put(panelled.panel);
        panels.insert(panelled.panel.id);
        for (const Piece& piece : panelled.draft.pieces) {
            m_edit.put(piece);
            pieces.insert(piece.id);
        }
    }
    for (const Panel* panel : panelsOf(m_book, m_display.id)) {
        for (const Piece* piece : piecesOf(m_book, panel->id)) {
            if (pieces.count(piece->id) == 0)
                m_edit.remove<Piece>(piece->id);
        }
        if (panels.count(panel->id) == 0)
            m_edit.remove<Panel>(panel->id);
    }
    outcome.edit = m_edit.take();
}

} // namespace wainscot
