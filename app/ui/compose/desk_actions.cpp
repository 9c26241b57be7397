#include "app/ui/compose/desk.h"

#include <cmath>

#include "app/jobs/arrange_job.h"
#include "app/jobs/sentences.h"
#include "app/ui/compose/rearrange.h"
#include "app/ui/session/piece_edits.h"
#include "layout/typeset/measurer.h"

namespace wainscot::ui {

void Desk::place(PieceId id, const RectMm& cell, const QString& label)
{
    const Piece* own = piece(id);
    if (own == nullptr)
        return;
    Piece placed = placedAt(*own, cell);
    placed.pinned = true;
    const int gesture = m_session.newGesture();
    // Sums of columns and gutters differ in their last digits.
    const bool sized = std::abs((cell.width - own->cell.width).value()) > 0.01
        || std::abs((cell.height - own->cell.height).value()) > 0.01;
    const QString said = !label.isEmpty() ? label
        : sized                           ? tr("Another size: %1").arg(wordFor(own->kind))
                                          : tr("Moved: %1").arg(wordFor(own->kind));
    if (m_session.perform(replacePiece(m_session.book(), placed, said, gesture)))
        makeRoom(id, gesture);
}

void Desk::makeRoom(PieceId placed, int gesture)
{
    const Piece* own = piece(placed);
    if (own != nullptr && !underneath(placed, own->cell).isEmpty())
        arrangeAgain(gesture);
}

void Desk::resizeBy(PieceId id, int step)
{
    const Piece* own = piece(id);
    const DrawnPanel* drawn = drawnPanel();
    if (own == nullptr || drawn == nullptr || own->cell.isEmpty())
        return;
    const Grid& grid = drawn->style.grid;
    GridCell cell = stepped(grid, nearestCell(grid, own->cell), step);
    if (!isPicture(own->kind)) {
        // Words keep their size: another width gives another number of lines.
        for (const ClearedPiece& cleared : drawn->cleared.pieces()) {
            if (cleared.id != id)
                continue;
            const PanelMeasurer text({cleared}, drawn->style, drawn->cleared.display().language);
            const Mm height = text.measure(id.number(), grid.width(cell.columns)).height;
            cell.rows = 1;
            while (cell.rows < grid.rows && grid.height(cell.rows) < height)
                ++cell.rows;
            cell.row = std::min(cell.row, grid.rows - cell.rows);
        }
    }
    const QString label = step > 0 ? tr("Bigger: %1") : tr("Smaller: %1");
    place(id, rectOf(grid, cell), label.arg(wordFor(own->kind)));
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

void Desk::write(PieceId id, const QString& text, int gesture)
{
    const Piece* own = piece(id);
    if (own == nullptr || !isWritable(own->kind) || own->text == text)
        return;
    Piece written = *own;
    written.text = text;
    // A caption of more lines takes its room from the picture above it.
    if (isPicture(own->kind) && !own->cell.isEmpty())
        written = placedAt(written, own->cell);
    m_session.perform(replacePiece(m_session.book(),
        written,
        isPicture(own->kind) ? tr("Caption") : tr("Text: %1").arg(wordFor(own->kind)),
        gesture));
}

void Desk::setPinned(PieceId id, bool pinned)
{
    const Piece* own = piece(id);
    if (own == nullptr || own->pinned == pinned)
        return;
    Piece changed = *own;
    changed.pinned = pinned;
    m_session.perform(replacePiece(m_session.book(),
        changed,
        (pinned ? tr("Pinned: %1") : tr("Pin out: %1")).arg(wordFor(own->kind))));
}

void Desk::takeOff(PieceId id)
{
    const Piece* own = piece(id);
    if (own == nullptr)
        return;
    const QString name = nameFor(m_session.book(), *own);
    if (m_session.perform(
            removePiece(m_session.book(), id, tr("Taken off: %1").arg(wordFor(own->kind)))))
        Q_EMIT announced(tr("%1 is back in what you have.").arg(name));
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

std::optional<Piece> Desk::pieceFor(const DrawerItem& item) const
{
    const Panel* panel = m_session.panel();
    const Experience* experience = m_session.experience();
    if (panel == nullptr || experience == nullptr)
        return std::nullopt;
    Piece piece;
    piece.panel = panel->id;
    if (item.kind == DrawerItem::Kind::Quote) {
        piece.kind = PieceKind::Quote;
        piece.quote = QuoteId(item.id);
        return piece;
    }
    if (item.kind == DrawerItem::Kind::Picture) {
        const Picture* picture = m_session.book().pictures.find(PictureId(item.id));
        if (picture == nullptr)
            return std::nullopt;
        piece.kind = picture->kind == PictureKind::Work ? PieceKind::Work : PieceKind::Photo;
        piece.picture = picture->id;
        piece.text = picture->caption;
        return piece;
    }
    piece.kind = static_cast<PieceKind>(item.id);
    switch (piece.kind) {
    case PieceKind::Title:
        piece.text = experience->title;
        break;
    case PieceKind::Context:
        piece.text = experience->context;
        break;
    case PieceKind::Interpretation:
        piece.heading = wordFor(piece.kind);
        piece.text = experience->interpretation;
        break;
    case PieceKind::NextStep:
        piece.heading = wordFor(piece.kind);
        piece.text = experience->nextSteps;
        break;
    case PieceKind::Credits:
        piece.text = experience->credits;
        break;
    default:
        break;
    }
    return piece;
}

// The free place of the grid nearest the top that holds the piece; else the foot of the panel.
RectMm Desk::bestPlace(const Piece& piece) const
{
    const Grid& grid = drawnPanel()->style.grid;
    const int columns = std::max(1, grid.columns / 4);
    int rows = std::max(1, grid.rows / 6);
    if (isPicture(piece.kind)) {
        const Picture* picture = m_session.book().pictures.find(piece.picture);
        const double aspect = picture != nullptr ? picture->size.aspect() : 1.5;
        rows = nearestCell(grid,
            {Mm(0), Mm(0), grid.width(columns), grid.width(columns) / aspect + 2 * grid.rowUnit})
                   .rows;
    }
    for (int row = 0; row + rows <= grid.rows; ++row) {
        for (int column = 0; column + columns <= grid.columns; ++column) {
            const RectMm cell = grid.cell(column, row, columns, rows);
            if (underneath({}, cell).isEmpty())
                return cell;
        }
    }
    return grid.cell(grid.columns - columns, grid.rows - rows, columns, rows);
}

PieceId Desk::add(const DrawerItem& item, const std::optional<RectMm>& cell)
{
    if (const auto why = refusal(item)) {
        Q_EMIT announced(*why);
        return {};
    }
    std::optional<Piece> piece = pieceFor(item);
    if (!piece || drawnPanel() == nullptr)
        return {};
    const RectMm at = cell ? *cell : bestPlace(*piece);
    *piece = placedAt(*piece, at);
    PieceId added;
    Edit edit = addPiece(
        m_session.book(), *piece, tr("Onto the panel: %1").arg(wordFor(piece->kind)), added);
    edit.gesture = m_session.newGesture();
    const int gesture = edit.gesture;
    if (!m_session.perform(std::move(edit)))
        return {};
    makeRoom(added, gesture);
    return added;
}

void Desk::arrangeAgain(int gesture)
{
    const DrawnPanel* drawn = drawnPanel();
    if (drawn == nullptr)
        return;
    std::vector<Piece> pieces;
    for (const Piece* own : piecesOf(m_session.book(), drawn->cleared.id()))
        pieces.push_back(*own);
    auto arrangement =
        std::make_shared<Rearrangement>(drawn->cleared, drawn->style, std::move(pieces));
    const bool started = m_work.start<std::vector<Piece>>(
        tr("Arranging around what is pinned"),
        [arrangement](const JobRun& run) { return arrangement->run(run); },
        [this, gesture](Result<std::vector<Piece>> result) {
            if (!result) {
                Q_EMIT announced(result.error().detail.isEmpty() ? sentenceFor(result.error())
                                                                 : result.error().detail);
                return;
            }
            // Only places are taken over: a text may have been written meanwhile.
            std::vector<Piece> moved;
            for (const Piece& arranged : *result) {
                const Piece* own = piece(arranged.id);
                if (own == nullptr || own->pinned)
                    continue;
                moved.push_back(*own);
                moved.back().cell = arranged.cell;
                moved.back().picturePlace = arranged.picturePlace;
            }
            m_session.perform(
                replacePieces(m_session.book(), moved, tr("Arranged again"), gesture));
        });
    if (!started)
        Q_EMIT announced(tr("Wait until this is done: %1.").arg(m_work.name()));
}

void Desk::propose()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return;
    ArrangeJob job;
    job.experience = experience->title;
    job.display = tr("Hallway");
    job.audience = Audience::Building;
    if (const Display* display = m_session.display()) {
        job.display = display->name;
        job.audience = display->audience;
        job.panelSize = display->panelSize;
        job.readingDistance = display->readingDistance;
    }
    using Answer = std::variant<ArrangeOutcome, ArrangeFailure>;
    m_work.start<Answer>(
        tr("Proposing a panel"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](Result<Answer> result) {
            if (!result) {
                Q_EMIT announced(sentenceFor(result.error()));
            } else if (const auto* failure = std::get_if<ArrangeFailure>(&*result)) {
                Q_EMIT announced(failure->says);
            } else {
                auto& outcome = std::get<ArrangeOutcome>(*result);
                const DisplayId display = outcome.display.id;
                outcome.edit.label = tr("Proposed panel");
                if (m_session.perform(std::move(outcome.edit)))
                    m_session.chooseDisplay(display);
            }
        });
}

void Desk::beginEmpty()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr || m_session.panel() != nullptr)
        return;
    EditBuilder builder(m_session.book(), tr("An empty panel"));
    Display display;
    if (const Display* there = m_session.display()) {
        display = *there;
    } else {
        display.id = builder.newId<Display>();
        display.experience = experience->id;
        display.name = tr("Hallway");
        for (int i = 2; displayByName(m_session.book(), display.name) != nullptr; ++i)
            display.name = tr("Hallway %1").arg(i);
        display.audience = Audience::Building;
        builder.put(display);
    }
    Panel panel;
    panel.id = builder.newId<Panel>();
    panel.display = display.id;
    builder.put(panel);
    if (m_session.perform(builder.take()))
        m_session.chooseDisplay(display.id);
}

void Desk::addPanelAfter()
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    PanelId added;
    if (m_session.perform(addPanel(m_session.book(), display->id, tr("New panel"), added)))
        m_session.choosePanel(added);
}

void Desk::setAudience(Audience audience)
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    EditBuilder builder(m_session.book(), tr("Another audience"));
    Display changed = *display;
    changed.audience = audience;
    builder.put(changed);
    m_session.perform(builder.take());
}

void Desk::setPanelSize(SizeMm size)
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    EditBuilder builder(m_session.book(), tr("Another panel size"), m_session.newGesture());
    Display changed = *display;
    changed.panelSize = size;
    builder.put(changed);
    Edit edit = builder.take();
    const int gesture = edit.gesture;
    if (m_session.perform(std::move(edit)))
        arrangeAgain(gesture);
}

void Desk::setReadingDistance(Mm distance)
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    EditBuilder builder(m_session.book(), tr("Another reading distance"), m_session.newGesture());
    Display changed = *display;
    changed.readingDistance = distance;
    builder.put(changed);
    Edit edit = builder.take();
    const int gesture = edit.gesture;
    if (m_session.perform(std::move(edit)))
        arrangeAgain(gesture);
}

} // namespace wainscot::ui
