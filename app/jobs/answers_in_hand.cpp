#include "app/jobs/answers_in_hand.h"

#include "app/jobs/group_edits.h"
#include "core/edit/removal.h"

#include <algorithm>
#include <set>

namespace wainscot {

namespace {

bool holds(const std::vector<QuoteId>& answers, QuoteId one)
{
    return std::find(answers.begin(), answers.end(), one) != answers.end();
}

QuoteId partnerOf(const KeptPair& pair, QuoteId answer)
{
    return pair.answer == answer ? pair.other : pair.answer;
}

const Experience* experienceOf(const Book& book, QuoteId answer)
{
    const Quote* quote = book.quotes.find(answer);
    return quote != nullptr ? book.experiences.find(quote->experience) : nullptr;
}

// One step of the hand: answers leave and come, pairs are made and go.
class Hand {
public:
    Hand(const Book& book, const QString& label)
        : m_book(book)
        , m_edit(book, label)
    {
    }

    // Out of the group it is in; what held it there, or apart from `company`, goes.
    void takeOut(QuoteId answer, const std::vector<QuoteId>& company)
    {
        for (const KeptPair& pair : pairsWith(m_book, answer)) {
            if (pair.apart == holds(company, partnerOf(pair, answer)))
                m_edit.remove<KeptPair>(pair.id);
        }
        const Group* from = groupWith(m_book, answer);
        if (from == nullptr)
            return;
        Group left = *from;
        std::erase(left.quotes, answer);
        if (left.quotes.empty())
            removeGroup(m_edit, m_book, left.id);
        else
            m_edit.put(left);
    }

    void moveInto(QuoteId answer, const Group& to)
    {
        takeOut(answer, to.quotes);
        Group more = to;
        more.quotes.push_back(answer);
        m_edit.put(more);
    }

    GroupId begin(const Experience& experience, const std::vector<QuoteId>& answers, bool byHand)
    {
        const auto groups = groupsOf(m_book, experience.id);
        Group group;
        group.id = m_edit.newId<Group>();
        group.experience = experience.id;
        group.quotes = answers;
        std::sort(group.quotes.begin(), group.quotes.end());
        group.label = wordsOfGroups(answersTo(m_book, experience), {{group.quotes}}).front().label;
        group.keptByHand = byHand;
        group.order = groups.empty() ? 1 : groups.back()->order + 1;
        m_edit.put(group);
        return group.id;
    }

    void hold(QuoteId answer, QuoteId other, bool apart)
    {
        KeptPair pair{{}, answer, other, apart};
        for (const KeptPair& known : pairsWith(m_book, answer)) {
            if (partnerOf(known, answer) == other)
                pair.id = known.id;
        }
        if (!pair.id.isValid())
            pair.id = m_edit.newId<KeptPair>();
        m_edit.put(pair);
    }

    void holdApartFromThoseLeft(QuoteId answer)
    {
        if (const Group* from = groupWith(m_book, answer)) {
            for (const QuoteId other : from->quotes) {
                if (other != answer)
                    hold(answer, other, true);
            }
        }
    }

    [[nodiscard]] Edit take() { return m_edit.take(); }

private:
    const Book& m_book;
    EditBuilder m_edit;
};

// Of the company the answer most like it, ties to the lowest; invalid where none has words.
QuoteId mostAlike(const Book& book, QuoteId answer, const std::vector<QuoteId>& company)
{
    const Experience* experience = experienceOf(book, answer);
    const std::vector<Answer> answers =
        experience != nullptr ? answersTo(book, *experience) : std::vector<Answer>{};
    const auto at = std::find_if(
        answers.begin(), answers.end(), [answer](const Answer& one) { return one.id == answer; });
    if (at == answers.end())
        return {};
    const LikenessTable likeness = likenessOf(answers);
    const auto row = std::size_t(at - answers.begin());
    QuoteId best;
    double most = -1;
    for (std::size_t other = 0; other < answers.size(); ++other) {
        const double likes = likeness.at(row, other);
        const QuoteId id = answers[other].id;
        if (holds(company, id) && (likes > most || (likes == most && id < best))) {
            most = likes;
            best = id;
        }
    }
    return best;
}

} // namespace

std::vector<KeptPair> keptPairsOf(const Book& book)
{
    std::vector<KeptPair> pairs;
    for (const auto& [id, pair] : book.keptPairs.rows())
        pairs.push_back(pair);
    return pairs;
}

std::vector<KeptPair> pairsWith(const Book& book, QuoteId answer)
{
    std::vector<KeptPair> pairs;
    for (const auto& [id, pair] : book.keptPairs.rows()) {
        if (pair.answer == answer || pair.other == answer)
            pairs.push_back(pair);
    }
    return pairs;
}

std::size_t answersHeld(const Book& book, ExperienceId experience)
{
    std::set<QuoteId> held;
    for (const auto& [id, pair] : book.keptPairs.rows()) {
        const Quote* quote = book.quotes.find(pair.answer);
        if (quote != nullptr && quote->experience == experience)
            held.insert(quote->id);
    }
    return held.size();
}

Edit moveAnswerEdit(
    const Book& book, QuoteId answer, GroupId into, const QString& label, QuoteId beside)
{
    Hand hand(book, label);
    const Group* to = book.groups.find(into);
    const Group* from = groupWith(book, answer);
    if (to == from)
        return hand.take();
    if (to == nullptr)
        hand.takeOut(answer, {});
    else {
        hand.moveInto(answer, *to);
        const QuoteId with =
            holds(to->quotes, beside) ? beside : mostAlike(book, answer, to->quotes);
        if (with.isValid())
            hand.hold(answer, with, false);
    }
    hand.holdApartFromThoseLeft(answer);
    return hand.take();
}

Edit newGroupEdit(const Book& book, QuoteId answer, const QString& label, GroupId& added)
{
    Hand hand(book, label);
    const Experience* experience = experienceOf(book, answer);
    if (experience == nullptr)
        return hand.take();
    hand.takeOut(answer, {});
    hand.holdApartFromThoseLeft(answer);
    added = hand.begin(*experience, {answer}, true);
    return hand.take();
}

Edit keepTogetherEdit(const Book& book, QuoteId answer, QuoteId other, const QString& label)
{
    Hand hand(book, label);
    const Experience* experience = experienceOf(book, answer);
    if (answer == other || experience == nullptr || experience != experienceOf(book, other))
        return hand.take();
    const Group* group = groupWith(book, answer);
    const Group* others = groupWith(book, other);
    if (group == nullptr && others == nullptr) {
        hand.takeOut(answer, {other});
        hand.takeOut(other, {answer});
        (void)hand.begin(*experience, {answer, other}, false);
    } else if (others != nullptr && group != others)
        hand.moveInto(answer, *others);
    else if (others == nullptr)
        hand.moveInto(other, *group);
    hand.hold(answer, other, false);
    return hand.take();
}

Edit keepApartEdit(const Book& book, QuoteId answer, QuoteId other, const QString& label)
{
    Hand hand(book, label);
    if (answer == other || !book.quotes.contains(answer) || !book.quotes.contains(other))
        return hand.take();
    const Group* group = groupWith(book, answer);
    if (group != nullptr && group == groupWith(book, other))
        hand.takeOut(answer, {});
    hand.hold(answer, other, true);
    return hand.take();
}

Edit letGoEdit(const Book& book, const std::vector<KeptPairId>& pairs, const QString& label)
{
    EditBuilder edit(book, label);
    for (const KeptPairId pair : pairs) {
        if (book.keptPairs.contains(pair))
            edit.remove<KeptPair>(pair);
    }
    return edit.take();
}

} // namespace wainscot
