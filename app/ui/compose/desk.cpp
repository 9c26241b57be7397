#include "app/ui/compose/desk.h"

#include <algorithm>

#include "app/jobs/check_job.h"
#include "app/jobs/kept_limits.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"
#include "app/ui/session/sheet_settings.h"

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
    connect(&m_session, &Session::opened, this, [this] { m_rules.reset(); });
    connect(&m_session, &Session::changed, this, &Desk::leaveAdvice);
    connect(&m_session, &Session::changed, this, &Desk::redraw);
    connect(&m_session, &Session::moved, this, &Desk::leaveAdvice);
    connect(&m_session, &Session::moved, this, &Desk::redraw);
}

void Desk::redraw()
{
    m_drawn.reset();
    m_rules.reset();
    m_measurer.reset();
    m_live.forget();
    if (!m_ownEdit)
        m_nudged.clear();
    ++m_round;
    if (const Display* display = m_session.display()) {
        auto drawn = drawDisplay(m_session.book(), display->name, m_session.today());
        if (drawn)
            m_drawn = std::move(drawn).value();
    } else {
        m_findings.clear();
    }
    Q_EMIT drawnAgain();
    m_checkSoon.start();
}

void Desk::checkAgain()
{
    ++m_round;
    m_checkSoon.start();
}

void Desk::askFindings()
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    const CheckJob job{display->name, keptLimits(), keptSheets()};
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
    std::map<PieceId, const ClearedPiece*> cleared;
    for (const ClearedPiece& piece : drawn->cleared.pieces())
        cleared[piece.id] = &piece;
    CanvasContent content{drawn->style, drawn->list, {}, isLocked()};
    for (const Piece* own : piecesOf(m_session.book(), drawn->cleared.id())) {
        if (own->cell.isEmpty())
            continue;
        CanvasPiece shown{*own, nameFor(m_session.book(), *own), {}, {}};
        shown.finding = gravest(m_findings, own->id);
        if (own->pinned)
            shown.name += tr(". Pinned by you");
        if (own->together > 0)
            shown.name += tr(". Kept together with others");
        if (shown.finding && *shown.finding != Severity::Note)
            shown.name +=
                tr(". %1 to look at")
                    .arg(counted(
                        int(findingsOn(own->id).size()), tr("1 finding"), tr("%1 findings")));
        const auto seen = cleared.find(own->id);
        if (seen == cleared.end())
            shown.waits = refusal(*own).value_or(tr("Not shown to this audience."));
        else if (seen->second->picture)
            shown.pictureSize = seen->second->picture->size;
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

const PermissionRules* Desk::rules() const
{
    const Display* display = m_session.display();
    if (!m_rules && display != nullptr)
        m_rules.emplace(m_session.book(), *display, m_session.today());
    return m_rules ? &*m_rules : nullptr;
}

std::optional<QString> Desk::refusal(const DrawerItem& item) const
{
    const Book& book = m_session.book();
    if (rules() == nullptr)
        return std::nullopt;
    if (item.kind == DrawerItem::Kind::Quote) {
        const Quote* quote = book.quotes.find(QuoteId(item.id));
        return quote != nullptr ? rules()->refusal(*quote) : std::nullopt;
    }
    if (item.kind == DrawerItem::Kind::Picture) {
        const Picture* picture = book.pictures.find(PictureId(item.id));
        return picture != nullptr ? rules()->refusal(*picture) : std::nullopt;
    }
    return std::nullopt;
}

std::optional<QString> Desk::refusal(const Piece& piece) const
{
    if (piece.kind == PieceKind::Quote)
        return refusal({DrawerItem::Kind::Quote, piece.quote.number()});
    if (isPicture(piece.kind))
        return refusal({DrawerItem::Kind::Picture, piece.picture.number()});
    return std::nullopt;
}

} // namespace wainscot::ui
