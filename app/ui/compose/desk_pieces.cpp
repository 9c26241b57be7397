// Pieces that are on the panel: placed, sized, aligned, written, taken off.
#include "app/ui/compose/desk.h"

#include <algorithm>
#include <cmath>

#include "app/ui/kit/surfaces.h"
#include "app/ui/session/panel_edits.h"
#include "app/ui/session/piece_edits.h"
#include "layout/typeset/measurer.h"

namespace wainscot::ui {

namespace {

PieceIds idsOf(const std::vector<PlacedCell>& cells)
{
    PieceIds ids;
    for (const PlacedCell& placed : cells)
        ids.push_back(placed.piece);
    return ids;
}

// Sums of columns and gutters differ in their last digits.
bool isSized(const RectMm& a, const RectMm& b)
{
    return std::abs((a.width - b.width).value()) > 0.01
        || std::abs((a.height - b.height).value()) > 0.01;
}

} // namespace

void Desk::place(const std::vector<PlacedCell>& cells, const QString& label)
{
    if (cells.empty() || piece(cells.front().piece) == nullptr)
        return;
    const Piece& first = *piece(cells.front().piece);
    const QString done =
        isSized(first.cell, cells.front().cell) ? tr("Another size: %1") : tr("Moved: %1");
    const QString said = !label.isEmpty() ? label
        : cells.size() > 1                ? tr("Moved %1 pieces").arg(cells.size())
                                          : done.arg(wordFor(first.kind));
    const std::vector<Piece> tried = asTried(cells);
    const std::vector<Piece>* known = m_live.answerTo(tried);
    const int gesture = m_session.newGesture();
    if (known != nullptr) {
        // What was shown around the hand is what comes about, in one step.
        const std::vector<Piece> arranged = *known;
        m_session.perform(replacePieces(m_session.book(), arranged, said, gesture));
        return;
    }
    std::vector<Piece> placed;
    const PieceIds ids = idsOf(cells);
    for (const Piece& one : tried) {
        if (std::find(ids.begin(), ids.end(), one.id) != ids.end())
            placed.push_back(one);
    }
    if (m_session.perform(replacePieces(m_session.book(), placed, said, gesture)))
        makeRoom(ids, gesture);
}

void Desk::makeRoom(const PieceIds& placed, int gesture)
{
    const auto isPlaced = [&](PieceId id) {
        return std::find(placed.begin(), placed.end(), id) != placed.end();
    };
    for (const PieceId id : placed) {
        const Piece* own = piece(id);
        if (own == nullptr)
            continue;
        for (const Piece* other : piecesOf(m_session.book(), own->panel)) {
            if (isPlaced(other->id) || intersection(other->cell, own->cell).isEmpty())
                continue;
            arrangeAgain(gesture, placed);
            return;
        }
    }
}

// A row of nudges is one step of undo: the gesture goes on while the same pieces are nudged and
// nothing else was done in between. Nothing makes room before the hand rests elsewhere.
void Desk::nudge(const std::vector<PlacedCell>& cells)
{
    const PieceIds ids = idsOf(cells);
    if (ids.empty() || piece(ids.front()) == nullptr)
        return;
    if (ids != m_nudged)
        m_nudging = m_session.newGesture();
    m_nudged = ids;
    std::vector<Piece> placed;
    for (const PlacedCell& cell : cells) {
        if (const Piece* own = piece(cell.piece)) {
            placed.push_back(placedAt(*own, cell.cell));
            placed.back().pinned = true;
        }
    }
    m_ownEdit = true;
    m_session.perform(replacePieces(m_session.book(),
        placed,
        ids.size() > 1 ? tr("Moved %1 pieces").arg(ids.size())
                       : tr("Moved: %1").arg(wordFor(placed.front().kind)),
        m_nudging));
    m_ownEdit = false;
}

void Desk::resizeBy(PieceId id, int step)
{
    const Piece* own = piece(id);
    const DrawnPanel* drawn = drawnPanel();
    if (own == nullptr || drawn == nullptr || own->cell.isEmpty())
        return;
    const Grid& grid = drawn->style.grid;
    GridCell cell = stepped(grid, nearestCell(grid, own->cell), step);
    // Words keep their size: another width gives another number of lines.
    if (!isPicture(own->kind))
        cell = holdingWords(id, cell);
    const QString label = step > 0 ? tr("Bigger: %1") : tr("Smaller: %1");
    place({{id, rectOf(grid, cell)}}, label.arg(wordFor(own->kind)));
}

void Desk::align(const PieceIds& ids, Line line)
{
    std::vector<RectMm> cells;
    for (const Piece& own : copies(ids))
        cells.push_back(own.cell);
    cells = aligned(std::move(cells), line);
    std::vector<PlacedCell> placed;
    for (std::size_t i = 0; i < ids.size() && i < cells.size(); ++i)
        placed.push_back({ids[i], cells[i]});
    if (placed.size() > 1)
        place(placed, tr("Aligned %1 pieces").arg(placed.size()));
}

void Desk::spread(const PieceIds& ids, Qt::Orientation along)
{
    std::vector<RectMm> cells;
    for (const Piece& own : copies(ids))
        cells.push_back(own.cell);
    cells = ui::spread(std::move(cells), along);
    std::vector<PlacedCell> placed;
    for (std::size_t i = 0; i < ids.size() && i < cells.size(); ++i)
        placed.push_back({ids[i], cells[i]});
    if (placed.size() > 2)
        place(placed, tr("Spread %1 pieces evenly").arg(placed.size()));
}

void Desk::frame(PieceId id, const Framing& framing)
{
    const Piece* own = piece(id);
    if (own == nullptr)
        return;
    Piece framed = *own;
    framed.framing = framing;
    m_session.perform(replacePiece(m_session.book(), framed, tr("Cropped photo")));
}

void Desk::write(PieceId id, const QString& text)
{
    const Piece* own = piece(id);
    if (own == nullptr || !isWritable(*own))
        return;
    Piece written = asWritten(*own, text);
    if (written == *own)
        return;
    // A caption of more lines takes its room from the picture above it.
    if (isPicture(own->kind) && !own->cell.isEmpty())
        written = placedAt(written, own->cell);
    const QString label = isPicture(own->kind) ? tr("Caption")
        : own->kind != PieceKind::Quote        ? tr("Text: %1").arg(wordFor(own->kind))
        : written.shownWords.isEmpty()         ? tr("All the words")
                                               : tr("Shortened words");
    const int gesture = m_session.newGesture();
    if (m_session.perform(replacePiece(m_session.book(), written, label, gesture))
        && !holdsItsWords(id) && !written.pinned && !isLocked())
        arrangeAgain(gesture, {id});
}

bool Desk::holdsItsWords(PieceId id) const
{
    const Piece* own = piece(id);
    const DrawnPanel* drawn = drawnPanel();
    if (own == nullptr || drawn == nullptr || isPicture(own->kind) || own->cell.isEmpty())
        return true;
    for (const ClearedPiece& cleared : drawn->cleared.pieces()) {
        if (cleared.id != id)
            continue;
        const PanelMeasurer text({cleared}, drawn->style, drawn->cleared.display().language);
        const Mm hair(0.01);
        return text.measure(id.number(), own->cell.width).height <= own->cell.height + hair;
    }
    return true;
}

bool Desk::isWritable(const Piece& piece) const
{
    return ui::isWritable(m_session.book(), piece);
}

Piece Desk::asWritten(const Piece& piece, const QString& typed) const
{
    return ui::asWritten(m_session.book(), piece, typed);
}

QString Desk::fullWords(const Piece& piece) const
{
    const Quote* quote = m_session.book().quotes.find(piece.quote);
    return quote != nullptr ? quote->words : QString();
}

std::vector<Piece> Desk::copies(const PieceIds& ids) const
{
    std::vector<Piece> pieces;
    for (const PieceId id : ids) {
        if (const Piece* own = piece(id))
            pieces.push_back(*own);
    }
    return pieces;
}

void Desk::setPinned(const PieceIds& ids, bool pinned)
{
    std::vector<Piece> changed = copies(ids);
    if (changed.empty())
        return;
    for (Piece& own : changed)
        own.pinned = pinned;
    const QString one = (pinned ? tr("Pinned: %1") : tr("Pin out: %1"));
    m_session.perform(replacePieces(m_session.book(),
        changed,
        one.arg(changed.size() == 1
                ? wordFor(changed.front().kind)
                : counted(int(changed.size()), tr("1 piece"), tr("%1 pieces")))));
}

void Desk::takeOff(const PieceIds& ids)
{
    const std::vector<Piece> off = copies(ids);
    if (off.empty())
        return;
    const QString name = nameFor(m_session.book(), off.front());
    const QString what = off.size() == 1 ? wordFor(off.front().kind)
                                         : counted(int(off.size()), tr("1 piece"), tr("%1 pieces"));
    EditBuilder builder(m_session.book(), tr("Taken off: %1").arg(what));
    for (const Piece& one : off)
        builder.remove<Piece>(one.id);
    if (m_session.perform(builder.take()))
        Q_EMIT announced(off.size() == 1
                ? tr("%1 is back in what you have.").arg(name)
                : tr("%1 pieces are back in what you have.").arg(off.size()));
}

void Desk::swap(PieceId one, PieceId other)
{
    const Piece* first = piece(one);
    const Piece* second = piece(other);
    if (first == nullptr || second == nullptr || one == other)
        return;
    Piece a = placedAt(*first, second->cell);
    Piece b = placedAt(*second, first->cell);
    std::swap(a.order, b.order);
    std::swap(a.group, b.group);
    m_session.perform(replacePieces(m_session.book(), {a, b}, tr("Swapped two pieces")));
}

PieceIds Desk::duplicate(const PieceIds& ids)
{
    EditBuilder builder(m_session.book(), tr("Once more"));
    PieceIds added;
    std::vector<RectMm> taken;
    int last = 0;
    for (const Piece& own : copies(ids)) {
        for (const Piece* other : piecesOf(m_session.book(), own.panel))
            last = std::max(last, other->order);
        Piece twin = own;
        twin.id = builder.newId<Piece>();
        twin.order = ++last;
        twin.pinned = false;
        const RectMm at = bestPlace(own, taken);
        taken.push_back(at);
        twin = placedAt(twin, at);
        builder.put(twin);
        added.push_back(twin.id);
    }
    if (added.empty() || !m_session.perform(builder.take()))
        return {};
    return added;
}

// Onto another panel: to the free places there, in their own sizes.
void Desk::carry(const PieceIds& ids, PanelId to)
{
    const DrawnPanel* drawn = drawnPanel();
    std::vector<Piece> carried = copies(ids);
    if (drawn == nullptr || carried.empty() || carried.front().panel == to)
        return;
    std::vector<RectMm> taken;
    for (const Piece* there : piecesOf(m_session.book(), to))
        taken.push_back(there->cell);
    for (Piece& piece : carried) {
        const RectMm at = freePlace(drawn->style.grid, piece.cell.size(), taken);
        taken.push_back(at);
        piece = placedAt(piece, at);
        piece.pinned = false;
    }
    const QString what = carried.size() == 1
        ? wordFor(carried.front().kind)
        : counted(int(carried.size()), tr("1 piece"), tr("%1 pieces"));
    if (m_session.perform(
            carryPieces(m_session.book(), carried, to, tr("To another panel: %1").arg(what))))
        Q_EMIT announced(tr("%1 hangs on panel %2 now.")
                             .arg(what)
                             .arg(m_session.book().panels.find(to)->number));
}

} // namespace wainscot::ui
