#include "app/jobs/why_job.h"

#include "app/jobs/placed_panel.h"
#include "app/jobs/plan_sentences.h"
#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "layout/engine/alternatives.h"

#include <algorithm>
#include <array>

namespace wainscot {

namespace {

constexpr double kWorthSaying = 0.005; // shares below it are nothing to a reader
constexpr double kAsAimed = 0.15; // sizes nearer to their aim than that are as aimed
constexpr int kWordsOfACaption = 6;
constexpr double kLeads = 2.0; // panel style 7

int percent(double share)
{
    return qRound(share * 100);
}

// The beginning of a caption, whole words, without a full stop.
QString firstWords(const QString& caption)
{
    const QStringList words = caption.simplified().split(QLatin1Char(' '));
    QString out = words.mid(0, kWordsOfACaption).join(QLatin1Char(' '));
    while (out.endsWith(QLatin1Char('.')) || out.endsWith(QLatin1Char(',')))
        out.chop(1);
    return words.size() > kWordsOfACaption ? out + QChar(0x2026) : out;
}

// Sentences about the pieces of one panel.
class Teller {
public:
    Teller(const Book& book, const PlacedPanel& panel, const engine::PageReasons& page)
        : m_book(book)
        , m_panel(panel)
        , m_page(page)
    {
    }

    [[nodiscard]] QStringList piece(std::size_t at) const
    {
        const engine::PieceReasons& one = m_page.pieces[at];
        const QString it = capitalised(called(one.id));
        QStringList out = {place(at)};
        if (one.leads >= kLeads) {
            out.append(Says::tr("It is the largest picture, %1 times the next, so that the "
                                "eye has one way in.")
                           .arg(one.leads, 0, 'f', 1));
        }
        if (const QString crop = cropOf(one); !crop.isEmpty())
            out.append(Says::tr("%1 is %2.").arg(it, crop));
        if (one.sizeByAim > 0 && one.leads < kLeads && std::abs(one.sizeByAim - 1) > kAsAimed) {
            out.append(Says::tr("It is %1 % %2 than its share of the room.")
                           .arg(percent(std::abs(one.sizeByAim - 1)))
                           .arg(one.sizeByAim > 1 ? Says::tr("larger") : Says::tr("smaller")));
        }
        if (const QString size = sizeOfText(one.id); !size.isEmpty())
            out.append(size);
        return out;
    }

    [[nodiscard]] QStringList page() const
    {
        QStringList out;
        for (const engine::PieceReasons& one : m_page.pieces) {
            if (const QString crop = cropOf(one); !crop.isEmpty())
                out.append(Says::tr("%1 is %2.").arg(capitalised(called(one.id)), crop));
        }
        if (m_page.orderInversions > 0) {
            out.append(Says::tr("Read row by row, %1 of its pieces come in another order "
                                "than they happened.")
                           .arg(m_page.orderInversions));
        }
        if (const QString most = dearest(); !most.isEmpty())
            out.append(most);
        return out;
    }

private:
    [[nodiscard]] const Piece* pieceOf(engine::ItemId id) const
    {
        return m_book.pieces.find(PieceId(id));
    }

    [[nodiscard]] QString called(engine::ItemId id) const
    {
        const Piece* piece = pieceOf(id);
        if (piece == nullptr)
            return {};
        if (!isPicture(piece->kind) || piece->text.trimmed().isEmpty())
            return calledFor(*piece, m_book);
        const QString kind =
            piece->kind == PieceKind::Work ? Says::tr("the work sample") : Says::tr("the photo");
        return QStringLiteral("%1 %2%3%4")
            .arg(kind, QChar(0x201c), firstWords(piece->text), QChar(0x201d));
    }

    [[nodiscard]] QString cropOf(const engine::PieceReasons& one) const
    {
        for (const ClearedPiece& piece : m_panel.cleared.pieces()) {
            if (piece.id.number() == one.id && piece.picture)
                return cropInWords(piece.picture->visible, one.cropShare);
        }
        return {};
    }

    // Why running text is as large as it is: panel style 1.
    [[nodiscard]] QString sizeOfText(engine::ItemId id) const
    {
        const Piece* piece = pieceOf(id);
        const PanelStyle& style = m_panel.style;
        Mm cap;
        switch (piece != nullptr ? piece->kind : PieceKind::Title) {
        case PieceKind::Quote:
            cap = style.scale.voice();
            break;
        case PieceKind::Context:
        case PieceKind::Interpretation:
        case PieceKind::NextStep:
            cap = style.scale.body;
            break;
        default:
            return {};
        }
        return Says::tr("Its capitals are %1 mm high, because it is read from %2 m (%3 "
                        "arcminutes).")
            .arg(cap.value(), 0, 'f', 1)
            .arg(style.readingDistance.value() / 1000, 0, 'g', 2)
            .arg(arcminutes(cap, style.readingDistance), 0, 'f', 0);
    }

    // Why it stands where it stands.
    [[nodiscard]] QString place(std::size_t at) const
    {
        const engine::PieceReasons& one = m_page.pieces[at];
        const QString it = capitalised(called(one.id));
        if (one.pinned)
            return Says::tr("%1 stands here because you pinned it; no arranging moves it.").arg(it);
        if (!one.mates.empty()) {
            return Says::tr("%1 stands here because it belongs with %2.")
                .arg(it, called(one.mates.front()));
        }
        if (at == 0)
            return Says::tr("%1 stands here because the panel begins with it.").arg(it);
        return Says::tr("%1 stands here because it is read after %2.")
            .arg(it, called(m_page.pieces[at - 1].id));
    }

    // What weighs most against the page.
    [[nodiscard]] QString dearest() const
    {
        const engine::CostTerms& cost = m_page.cost;
        struct Reason {
            std::int64_t cost;
            const char* says;
        };
        const std::array reasons{
            Reason{cost.crop,
                "What weighs most against this panel is how much its photos are cropped."},
            Reason{
                cost.white, "What weighs most against this panel is the white inside its cells."},
            Reason{cost.size,
                "What weighs most against this panel is that pictures are not the size they aim "
                "at."},
            Reason{cost.measure,
                "What weighs most against this panel is that lines are short or captions long."},
            Reason{cost.alignment,
                "What weighs most against this panel is that edges do not line up."}};
        const auto most = std::max_element(reasons.begin(),
            reasons.end(),
            [](const Reason& a, const Reason& b) { return a.cost < b.cost; });
        return most->cost > 0 ? QString::fromLatin1(most->says) : QString();
    }

    const Book& m_book;
    const PlacedPanel& m_panel;
    const engine::PageReasons& m_page;
};

// The cheapest other page that looks different.
Result<QString> comparison(PlacedPanel& panel, double white, const JobRun& run)
{
    panel.request.cancel = run.cancel;
    const engine::Outcome outcome = engine::arrange(panel.request, *panel.text);
    const auto* best = std::get_if<engine::Arrangement>(&outcome);
    if (run.cancelled())
        return stoppedByPerson();
    if (best == nullptr)
        return QString();
    engine::AlternativesWish wish;
    wish.most = 1;
    const auto now = engine::difference(best->items, panel.places, panel.request);
    const engine::Arrangement* next = now.pieces >= wish.difference ? best : nullptr;
    const engine::Alternatives others =
        engine::alternatives(panel.request, *best, *panel.text, wish, {panel.places});
    if (run.cancelled())
        return stoppedByPerson();
    if (next == nullptr && !others.found.empty())
        next = &others.found.front();
    if (next == nullptr)
        return Says::tr("No other arrangement that looks different is nearly as good.");
    return emptinessInWords(white, engine::explain(panel.request, next->items, *panel.text).white);
}

} // namespace

QString cropInWords(const RectFraction& visible, double share)
{
    if (share < kWorthSaying)
        return {};
    struct Side {
        double cut;
        QString name;
    };
    const std::array sides{Side{visible.y, Says::tr("at the top")},
        Side{1 - visible.y - visible.height, Says::tr("at the foot")},
        Side{visible.x, Says::tr("at the left")},
        Side{1 - visible.x - visible.width, Says::tr("at the right")}};
    QStringList says;
    for (const Side& side : sides) {
        if (side.cut >= kWorthSaying)
            says.append(Says::tr("%1 % cropped %2").arg(percent(side.cut)).arg(side.name));
    }
    return says.isEmpty() ? Says::tr("%1 % cropped").arg(percent(share)) : listInWords(says);
}

QString emptinessInWords(double white, double nextWhite)
{
    const int more = percent(white - nextWhite);
    if (more == 0)
        return Says::tr("This panel is as full as the next best arrangement.");
    return Says::tr("This panel is %1 % %2 than the next best arrangement.")
        .arg(std::abs(more))
        .arg(more > 0 ? Says::tr("emptier") : Says::tr("fuller"));
}

Result<WhyOutcome> WhyJob::run(const Book& book, const JobRun& run) const
{
    Result<PlacedPanel> placed = placedPanel(book, panel, run.today);
    if (!placed)
        return placed.error();
    WhyOutcome out;
    out.reasons = engine::explain(placed->request, placed->places, *placed->text);
    const Teller teller(book, *placed, out.reasons);
    if (!piece.isValid()) {
        out.says = teller.page();
        if (compare && !placed->places.empty()) {
            const Result<QString> next = comparison(*placed, out.reasons.white, run);
            if (!next)
                return next.error();
            if (!next->isEmpty())
                out.says.prepend(*next);
        }
        return out;
    }
    for (std::size_t at = 0; at < out.reasons.pieces.size(); ++at) {
        if (out.reasons.pieces[at].id == piece.number()) {
            out.says = teller.piece(at);
            return out;
        }
    }
    return Error{
        ErrorCode::NotFound, Says::tr("The piece"), Says::tr("it has no place on this panel")};
}

} // namespace wainscot
