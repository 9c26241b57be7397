#include "app/jobs/draft_pieces.h"
#include "app/jobs/meeting_edits.h"

#include <algorithm>

namespace wainscot {

namespace {

// The words of a group as they are talked about: each followed by what was answered to it.
std::vector<QuoteId> inTurn(const Book& book, const Group& group)
{
    std::vector<QuoteId> words;
    for (const QuoteId idea : group.quotes) {
        words.push_back(idea);
        for (const Reply& reply : threadUnder(book, idea))
            words.push_back(reply.quote);
    }
    return words;
}

const Moment* momentOf(const Selection& selection, QuoteId quote)
{
    const auto found = std::find_if(selection.moments.begin(),
        selection.moments.end(),
        [&](const Moment& moment) { return moment.quote->id == quote; });
    return found == selection.moments.end() ? nullptr : &*found;
}

void addIdea(
    PanelDraft& draft, const Group& group, int number, const std::vector<const Moment*>& told)
{
    if (!group.label.isEmpty()) {
        draft.pieces.push_back(textPiece(PieceKind::Label, group.label));
        draft.pieces.back().group = number;
    }
    const auto pictured = std::find_if(
        told.begin(), told.end(), [](const Moment* moment) { return moment->picture != nullptr; });
    if (pictured != told.end())
        draft.pieces.push_back(picturePiece(*(*pictured)->picture, number, false));
    for (const Moment* moment : told)
        draft.pieces.push_back(quotePiece(*moment->quote, number));
}

} // namespace

PanelDraft draftIdeas(const Material& material, const Selection& selection)
{
    const Experience& experience = material.experience;
    std::vector<const Quote*> all;
    for (const Moment& moment : selection.moments)
        all.push_back(moment.quote);
    PanelDraft draft;
    draft.pieces.push_back(textPiece(PieceKind::Title, experience.title));
    if (!experience.context.isEmpty())
        draft.pieces.push_back(textPiece(PieceKind::Context, experience.context));
    if (const QString credits = creditsLine(material, all); !credits.isEmpty())
        draft.pieces.push_back(textPiece(PieceKind::Credits, credits));
    if (!selection.leads.empty())
        draft.pieces.push_back(picturePiece(*selection.leads.front(), 0, true));
    int number = 0;
    for (const GroupId id : material.ideas) {
        const Group* group = material.book->groups.find(id);
        std::vector<const Moment*> told;
        for (const QuoteId quote :
            group != nullptr ? inTurn(*material.book, *group) : std::vector<QuoteId>{}) {
            if (const Moment* moment = momentOf(selection, quote))
                told.push_back(moment);
        }
        if (!told.empty())
            addIdea(draft, *group, ++number, told);
    }
    addAdultTexts(draft, material);
    return draft;
}

} // namespace wainscot
