#include "app/jobs/panel_wishes.h"

#include "app/jobs/plan_sentences.h"
#include "app/jobs/sentences.h"
#include "core/base/says.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace wainscot {

namespace {

// What children said and made, and the pictures and labels with it; the rest frames a panel.
bool isOfMoment(const Piece& piece)
{
    return !piece.dominant
        && (isPicture(piece.kind) || piece.kind == PieceKind::Quote
            || piece.kind == PieceKind::Label);
}

bool inOneBlock(const Piece& a, const Piece& b)
{
    return (a.group > 0 && a.group == b.group) || (a.together > 0 && a.together == b.together);
}

// Groups are numbered by panel: those that arrive get numbers of their own.
template <class Goes> void move(PanelDraft& from, PanelDraft& to, bool toFront, Goes goes)
{
    int last = 0;
    bool led = false;
    for (const Piece& piece : to.pieces) {
        last = std::max(last, piece.group);
        led = led || piece.dominant;
    }
    std::vector<Piece> moved;
    std::vector<Piece> staying;
    for (const Piece& piece : from.pieces)
        (!piece.pinned && goes(piece) ? moved : staying).push_back(piece);
    std::map<int, int> numbers;
    for (Piece& piece : moved) {
        if (piece.group > 0)
            piece.group =
                numbers.try_emplace(piece.group, last + static_cast<int>(numbers.size()) + 1)
                    .first->second;
        piece.dominant = piece.dominant && !led;
        if (!to.pieces.empty())
            piece.panel = to.pieces.front().panel;
    }
    from.pieces = std::move(staying);
    to.pieces.insert(toFront ? to.pieces.begin() : to.pieces.end(), moved.begin(), moved.end());
}

// Where the block of the piece that starts a panel begins, if something stands before it.
std::vector<Piece>::iterator breakIn(PanelDraft& draft)
{
    auto& pieces = draft.pieces;
    const auto none = pieces.end();
    const auto starts = std::find_if(pieces.begin(), none, [](const Piece& piece) {
        return piece.startsPanel && !piece.pinned && isOfMoment(piece);
    });
    if (starts == none)
        return none;
    const auto first = std::find_if(pieces.begin(), starts, [&](const Piece& piece) {
        return isOfMoment(piece) && inOneBlock(piece, *starts);
    });
    return std::any_of(pieces.begin(), first, isOfMoment) ? first : none;
}

QStringList beginPanels(const std::vector<PanelDraft*>& panels, const Book& book)
{
    QStringList undone;
    for (std::size_t at = 0; at < panels.size(); ++at) {
        const auto from = breakIn(*panels[at]);
        if (from == panels[at]->pieces.end())
            continue;
        if (at + 1 == panels.size()) {
            undone << Says::tr("%1 was to begin a panel, and there is no further one: ask "
                               "for one panel more.")
                          .arg(capitalised(calledFor(*from, book)));
            continue;
        }
        std::set<PieceId> after;
        for (auto piece = from; piece != panels[at]->pieces.end(); ++piece) {
            if (isOfMoment(*piece))
                after.insert(piece->id);
        }
        move(*panels[at], *panels[at + 1], true, [&](const Piece& piece) {
            return after.count(piece.id) > 0;
        });
    }
    return undone;
}

// Pieces go to where one of them is pinned, else to where the first of them is.
void bringOntoOnePanel(int together, const std::vector<PanelDraft*>& panels)
{
    const auto is = [&](const Piece& piece) { return piece.together == together; };
    const auto holds = [&](const PanelDraft* draft) {
        return std::any_of(draft->pieces.begin(), draft->pieces.end(), is);
    };
    const auto pins = [&](const PanelDraft* draft) {
        return std::any_of(draft->pieces.begin(), draft->pieces.end(), [&](const Piece& piece) {
            return is(piece) && piece.pinned;
        });
    };
    auto home = std::find_if(panels.begin(), panels.end(), pins);
    if (home == panels.end())
        home = std::find_if(panels.begin(), panels.end(), holds);
    for (PanelDraft* draft : panels) {
        if (draft == *home || !holds(draft))
            continue;
        std::vector<Piece> members;
        std::copy_if(draft->pieces.begin(), draft->pieces.end(), std::back_inserter(members), is);
        move(*draft, **home, false, [&](const Piece& piece) {
            return std::any_of(members.begin(), members.end(), [&](const Piece& member) {
                return inOneBlock(piece, member);
            });
        });
    }
}

} // namespace

QStringList heedPanelWishes(const std::vector<PanelDraft*>& panels, const Book& book)
{
    const QStringList undone = beginPanels(panels, book);
    std::set<int> blocks;
    for (const PanelDraft* draft : panels) {
        for (const Piece& piece : draft->pieces)
            blocks.insert(piece.together);
    }
    blocks.erase(0);
    for (const int together : blocks)
        bringOntoOnePanel(together, panels);
    return undone;
}

} // namespace wainscot
