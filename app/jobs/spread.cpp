#include "app/jobs/spread.h"

#include "app/jobs/plan_sentences.h"
#include "app/jobs/reading_order.h"
#include "app/jobs/sentences.h"

#include <algorithm>
#include <iterator>
#include <map>

namespace wainscot {

namespace {

// In the engine's units, settled by looking at panels.
constexpr double kUneven = 400; // squared share of a panel by which it is fuller than the mean
constexpr double kDaySplit = 26; // a day that goes on over a break
constexpr double kStrangeLead = 30; // a large picture of a day that the panel does not tell
constexpr double kNothingSaid = 500; // a panel without a moment
constexpr double kWish = 10000; // of the teacher

bool flows(const Piece& piece)
{
    return !piece.pinned && !piece.dominant
        && (isPicture(piece.kind) || piece.kind == PieceKind::Quote
            || piece.kind == PieceKind::Label);
}

} // namespace

const Piece* Spread::Block::starting() const
{
    const auto found = std::find_if(
        pieces.begin(), pieces.end(), [](const Piece& piece) { return piece.startsPanel; });
    return found == pieces.end() ? nullptr : &*found;
}

QString Spread::Block::label(bool last) const
{
    QString text;
    for (const Piece& piece : pieces) {
        if (piece.kind == PieceKind::Label && (last || text.isEmpty()))
            text = piece.text;
    }
    return text;
}

Spread::Spread(const Material& material, const std::vector<PanelDraft>& drafts, const Need& need)
    : m_material(material)
{
    gather(drafts);
    joinKeptTogether();
    double all = 0;
    std::set<std::optional<QDate>> days;
    for (Block& block : m_blocks) {
        block.need = need(block.pieces);
        all += block.need;
        days.insert(block.days.begin(), block.days.end());
    }
    for (const PanelDraft& draft : m_stays) {
        m_needs.push_back(need(draft.pieces));
        all += m_needs.back();
    }
    m_mean = all / std::max(1, panels());
    m_oneDay = days.size() == 1;
}

// Moments are numbered on each panel: blocks are the runs of one panel's one group.
void Spread::gather(const std::vector<PanelDraft>& drafts)
{
    for (const PanelDraft& draft : drafts) {
        m_stays.emplace_back();
        std::map<int, std::size_t> ofGroup;
        for (const Piece& piece : draft.pieces) {
            if (!flows(piece)) {
                m_stays.back().pieces.push_back(piece);
                m_groups = std::max(m_groups, piece.group);
                continue;
            }
            const bool known = piece.group > 0 && ofGroup.count(piece.group) > 0;
            if (!known) {
                ofGroup[piece.group] = m_blocks.size();
                m_blocks.emplace_back();
            }
            Block& block = m_blocks[ofGroup[piece.group]];
            block.pieces.push_back(piece);
            if (piece.kind == PieceKind::Label)
                block.pieces.back().text = withoutContinued(piece.text);
            if (const Quote* quote = m_material.book->quotes.find(piece.quote))
                block.days.insert(m_material.dayOf(*quote));
        }
    }
}

// Blocks that share a number come together where the first of them is; a number that something
// unmovable has too binds them to its panel.
void Spread::joinKeptTogether()
{
    std::map<int, int> panelOf;
    for (int panel = 0; panel < panels(); ++panel) {
        for (const Piece& piece : m_stays[static_cast<std::size_t>(panel)].pieces) {
            if (piece.together > 0)
                panelOf.try_emplace(piece.together, panel);
        }
    }
    std::vector<Block> joined;
    std::map<int, std::size_t> home;
    int group = m_groups;
    for (Block& block : m_blocks) {
        std::size_t at = joined.size();
        for (const Piece& piece : block.pieces) {
            if (const auto known = home.find(piece.together); known != home.end())
                at = std::min(at, known->second);
        }
        if (at == joined.size())
            joined.emplace_back();
        ++group;
        for (Piece& piece : block.pieces) {
            piece.group = piece.group > 0 ? group : 0;
            if (piece.together > 0) {
                home.try_emplace(piece.together, at);
                if (const auto bound = panelOf.find(piece.together); bound != panelOf.end())
                    joined[at].only = bound->second;
            }
            joined[at].pieces.push_back(piece);
        }
        joined[at].days.merge(block.days);
    }
    m_blocks = std::move(joined);
}

bool Spread::continues(int block) const
{
    if (block <= 0 || block >= blocks())
        return false;
    const QString here = m_blocks[static_cast<std::size_t>(block)].label(false);
    return !here.isEmpty() && here == m_blocks[static_cast<std::size_t>(block) - 1].label(true);
}

std::vector<Piece> Spread::pieces(int panel, int first, int last) const
{
    std::vector<Piece> out = m_stays[static_cast<std::size_t>(panel)].pieces;
    std::vector<const Quote*> told;
    bool label = continues(first) && first < last; // the first one says that the day goes on
    for (int at = first; at < last; ++at) {
        for (Piece piece : m_blocks[static_cast<std::size_t>(at)].pieces) {
            if (const Quote* quote = m_material.book->quotes.find(piece.quote))
                told.push_back(quote);
            if (label && piece.kind == PieceKind::Label) {
                piece.text = continued(piece.text, m_material.language());
                label = false;
            }
            out.push_back(piece);
        }
    }
    for (Piece& piece : out) {
        if (panel > 0 && piece.kind == PieceKind::Title && !piece.pinned)
            piece.text = furtherTitle(m_material, told, m_oneDay);
    }
    sortForReading(out, m_material.display.plan);
    return out;
}

int Spread::wishesBroken(int panel, int first, int last) const
{
    int broken = 0;
    for (int at = first; at < last; ++at) {
        const Block& block = m_blocks[static_cast<std::size_t>(at)];
        broken += at > first && block.starting() != nullptr ? 1 : 0;
        broken += block.only >= 0 && block.only != panel ? 1 : 0;
    }
    return broken;
}

double Spread::price(int panel, int first, int last) const
{
    const auto here = static_cast<std::size_t>(panel);
    double need = m_needs[here];
    std::set<std::optional<QDate>> days;
    for (int at = first; at < last; ++at) {
        const Block& block = m_blocks[static_cast<std::size_t>(at)];
        need += block.need;
        days.insert(block.days.begin(), block.days.end());
    }
    double sum = kUneven * (need - m_mean) * (need - m_mean);
    sum += kWish * wishesBroken(panel, first, last);
    sum += first == last ? kNothingSaid : 0;
    sum += first < last && continues(first) ? kDaySplit : 0;
    for (const Piece& piece : m_stays[here].pieces) {
        const Picture* picture =
            piece.dominant ? m_material.book->pictures.find(piece.picture) : nullptr;
        const auto day = picture != nullptr ? m_material.dayOf(*picture) : std::nullopt;
        sum += day && days.count(day) == 0 ? kStrangeLead : 0;
    }
    return sum;
}

QStringList Spread::unkept(const std::vector<int>& begins, const Book& book) const
{
    QStringList sentences;
    for (int at = 1; at < blocks(); ++at) {
        const Piece* piece = m_blocks[static_cast<std::size_t>(at)].starting();
        if (piece != nullptr && std::count(begins.begin(), begins.end(), at) == 0)
            sentences << QStringLiteral("%1 was to begin a panel, and there is no further one: ask "
                                        "for one panel more.")
                             .arg(capitalised(calledFor(*piece, book)));
    }
    return sentences;
}

} // namespace wainscot
