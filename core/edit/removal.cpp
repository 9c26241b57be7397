#include "core/edit/removal.h"

#include <algorithm>

namespace wainscot {

namespace {

bool letGo(std::vector<QuoteId>& quotes, QuoteId quote)
{
    return std::erase(quotes, quote) > 0;
}

} // namespace

void removeQuote(EditBuilder& edit, const Book& book, QuoteId quote)
{
    for (const auto& [id, piece] : book.pieces.rows()) {
        if (piece.quote == quote)
            edit.remove<Piece>(id);
    }
    for (const auto& [id, translation] : book.translations.rows()) {
        if (translation.quote == quote)
            edit.remove<Translation>(id);
    }
    for (const auto& [id, pair] : book.keptPairs.rows()) {
        if (pair.answer == quote || pair.other == quote)
            edit.remove<KeptPair>(id);
    }
    for (const auto& [id, group] : book.groups.rows()) {
        Group left = group;
        if (letGo(left.quotes, quote))
            edit.put(left);
    }
    for (const auto& [id, meeting] : book.meetings.rows()) {
        Meeting left = meeting;
        if (letGo(left.readOut, quote))
            edit.put(left);
    }
    for (const auto& [id, reply] : book.quotes.rows()) {
        if (reply.repliesTo != quote || id == quote)
            continue;
        Quote left = reply;
        left.repliesTo = {};
        edit.put(left);
    }
    edit.remove<Quote>(quote);
}

void removeGroup(EditBuilder& edit, const Book& book, GroupId group)
{
    for (const auto& [id, meeting] : book.meetings.rows()) {
        Meeting left = meeting;
        std::erase(left.groups, group);
        std::erase(left.carriedOver, group);
        for (MeetingNote& note : left.happened) {
            if (note.group == group)
                note.group = {};
        }
        if (!(left == meeting))
            edit.put(left);
    }
    edit.remove<Group>(group);
}

} // namespace wainscot
