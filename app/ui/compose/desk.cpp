#include "app/ui/compose/desk.h"

#include <algorithm>
#include <limits>

#include "app/jobs/check_job.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/typesetter.h"

namespace wainscot::ui {

namespace {

constexpr int kCheckAfterMs = 500; // of rest: checking while somebody moves things helps nobody

std::optional<Severity> gravest(const std::vector<Finding>& findings, PieceId piece)
{
    std::optional<Severity> worst;
    for (const Finding& finding : findings) {
        if (finding.piece == piece.number() && (!worst || finding.severity < *worst))
            worst = finding.severity;
    }
    return worst;
}

} // namespace

Desk::Desk(Session& session, Work& work, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_work(work)
{
    m_checkSoon.setSingleShot(true);
    m_checkSoon.setInterval(kCheckAfterMs);
    m_checker.setMaxThreadCount(1);
    connect(&m_checkSoon, &QTimer::timeout, this, &Desk::askFindings);
    connect(&m_session, &Session::changed, this, &Desk::redraw);
    connect(&m_session, &Session::moved, this, &Desk::redraw);
}

void Desk::redraw()
{
    m_drawn.reset();
    ++m_round;
    if (const Display* display = m_session.display()) {
        auto drawn = drawDisplay(m_session.book(), display->name, QDate::currentDate());
        if (drawn)
            m_drawn = std::move(drawn).value();
    } else {
        m_findings.clear();
    }
    Q_EMIT drawnAgain();
    m_checkSoon.start();
}

void Desk::askFindings()
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    const CheckJob job{display->name};
    m_checker.start([this, job, book = m_session.book(), round = m_round] {
        Result<CheckOutcome> outcome = job.run(book, {});
        if (!outcome)
            return;
        QMetaObject::invokeMethod(
            this,
            [this, round, findings = std::move(outcome->findings)] {
                if (round != m_round)
                    return;
                m_findings = findings;
                Q_EMIT drawnAgain();
            },
            Qt::QueuedConnection);
    });
}

const DrawnPanel* Desk::drawnPanel() const
{
    const Panel* panel = m_session.panel();
    if (panel == nullptr || !m_drawn)
        return nullptr;
    for (const DrawnPanel& drawn : m_drawn->panels) {
        if (drawn.cleared.id() == panel->id)
            return &drawn;
    }
    return nullptr;
}

const Piece* Desk::piece(PieceId id) const
{
    return m_session.book().pieces.find(id);
}

std::optional<CanvasContent> Desk::content() const
{
    const DrawnPanel* drawn = drawnPanel();
    if (drawn == nullptr)
        return std::nullopt;
    CanvasContent content{drawn->style, drawn->list, {}};
    for (const ClearedPiece& cleared : drawn->cleared.pieces()) {
        const Piece* own = piece(cleared.id);
        if (own == nullptr || own->cell.isEmpty())
            continue;
        CanvasPiece shown{*own, nameFor(m_session.book(), *own), {}, {}};
        shown.finding = gravest(m_findings, own->id);
        if (own->pinned)
            shown.name += tr(". Pinned by you");
        if (shown.finding && *shown.finding != Severity::Note)
            shown.name +=
                tr(". %1 to look at")
                    .arg(counted(
                        int(findingsOn(own->id).size()), tr("1 finding"), tr("%1 findings")));
        if (cleared.picture)
            shown.pictureSize = cleared.picture->size;
        content.pieces.push_back(shown);
    }
    return content;
}

std::vector<Finding> Desk::findingsOn(PieceId id) const
{
    std::vector<Finding> on;
    for (const Finding& finding : m_findings) {
        if (finding.piece == id.number())
            on.push_back(finding);
    }
    std::stable_sort(on.begin(), on.end(), [](const Finding& a, const Finding& b) {
        return a.severity < b.severity;
    });
    return on;
}

Mm Desk::captionBlock(const Piece& piece, Mm width) const
{
    const DrawnPanel* drawn = drawnPanel();
    const Panel* panel = m_session.panel();
    if (drawn == nullptr || panel == nullptr || piece.text.isEmpty())
        return Mm(0);
    const PermissionRules rules(m_session.book(), m_drawn->display, QDate::currentDate());
    Piece named = piece;
    if (!named.id.isValid())
        named.id = PieceId(std::numeric_limits<std::int64_t>::max()); // not in the book yet
    const ClearedPanel cleared = rules.clear(*panel, {named});
    const PanelMeasurer text(cleared.pieces(), drawn->style, m_drawn->display.language);
    const engine::TextMetrics metrics = text.measure(named.id.number(), width);
    return metrics.lines == 0 ? Mm(0) : metrics.height + text.spec(named.id.number()).captionGap;
}

Piece Desk::placedAt(const Piece& piece, const RectMm& cell) const
{
    Piece placed = piece;
    placed.cell = cell;
    placed.picturePlace = {};
    if (!isPicture(piece.kind))
        return placed;
    RectMm room = cell;
    const Mm caption = captionBlock(piece, cell.width);
    room.height = std::max(cell.height - caption, cell.height * 0.3);
    const Picture* picture = m_session.book().pictures.find(piece.picture);
    if (piece.kind == PieceKind::Work && picture != nullptr && !picture->size.isEmpty()) {
        // Whole, on a mat of 0.6 gutters that hugs it; several in a row stand on one line.
        const DrawnPanel* drawn = drawnPanel();
        const Mm mat = drawn != nullptr ? 0.6 * drawn->style.grid.gutter : Mm(0);
        const SizeMm most{room.width - 2 * mat, room.height - 2 * mat};
        const double aspect = picture->size.aspect();
        const Mm width = std::min(most.width, most.height * aspect);
        const SizeMm size{width, width / aspect};
        room = {room.x + mat, room.bottom() - mat - size.height, size.width, size.height};
    }
    placed.picturePlace = room;
    return placed;
}

DisplayList Desk::preview(const Piece& piece) const
{
    const Panel* panel = m_session.panel();
    const DrawnPanel* drawn = drawnPanel();
    if (panel == nullptr || drawn == nullptr)
        return {};
    const PermissionRules rules(m_session.book(), m_drawn->display, QDate::currentDate());
    return typeset(rules.clear(*panel, {piece}), drawn->style);
}

QStringList Desk::underneath(PieceId except, const RectMm& cell) const
{
    QStringList names;
    const Panel* panel = m_session.panel();
    if (panel == nullptr)
        return names;
    for (const Piece* other : piecesOf(m_session.book(), panel->id)) {
        if (other->id != except && !other->cell.isEmpty()
            && !intersection(other->cell, cell).isEmpty())
            names << nameFor(m_session.book(), *other);
    }
    return names;
}

std::optional<QString> Desk::refusal(const DrawerItem& item) const
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return std::nullopt;
    const Book& book = m_session.book();
    const PermissionRules rules(book, *display, QDate::currentDate());
    if (item.kind == DrawerItem::Kind::Quote) {
        const Quote* quote = book.quotes.find(QuoteId(item.id));
        return quote != nullptr ? rules.refusal(*quote) : std::nullopt;
    }
    if (item.kind == DrawerItem::Kind::Picture) {
        const Picture* picture = book.pictures.find(PictureId(item.id));
        return picture != nullptr ? rules.refusal(*picture) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace wainscot::ui
