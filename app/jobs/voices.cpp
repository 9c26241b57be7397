#include "app/jobs/voices.h"

#include "core/base/says.h"
#include "core/voice/participation.h"
#include "core/voice/worth.h"

#include <algorithm>
#include <numeric>

namespace wainscot {

namespace {

constexpr double kSaysTheSame = 0.6; // likeness from which two tellings repeat each other

// At the usual column a quote of this many letters sets in three to five lines.
constexpr int kLeastLetters = 18;
constexpr int kMostLetters = 90;
constexpr int kLongLetters = 150;

// What decides between tellings that are worth the same otherwise; together less than any star.
constexpr std::int64_t kSetsWell = 40;
constexpr std::int64_t kSetsLong = 20;
constexpr std::int64_t kHasOwnPicture = 20;
constexpr std::int64_t kBeginsOrEnds = 30;

std::int64_t worthOfLength(const QString& words)
{
    const auto letters = words.simplified().size();
    if (letters >= kLeastLetters && letters <= kMostLetters)
        return kSetsWell;
    return letters <= kLongLetters ? kSetsLong : 0;
}

class VoiceChooser {
public:
    VoiceChooser(const Material& material, int moments, const QuoteRoom& room)
        : m_material(material)
    {
        const std::int64_t known = room.roomCm2 > 0 ? room.roomCm2 : moments;
        // A moment has a place of its own, so that more than `moments` never fit.
        const std::int64_t place = std::max<std::int64_t>(1, known / moments);
        m_problem.roomCm2 = place * moments;
        for (const Quote* quote : material.quotes) {
            m_days.insert(material.dayOf(*quote));
            const auto measured = room.momentCm2.find(quote->id);
            const bool fits = measured == room.momentCm2.end() || measured->second < place;
            Candidate candidate;
            candidate.id = quote->id.number();
            candidate.voices = {quote->child};
            candidate.areaCm2 = fits ? place : measured->second;
            m_problem.candidates.push_back(candidate);
        }
        askForChildren();
        setWorths();
        setGroups();
        setRepeats();
    }

    VoiceChoice choose()
    {
        SelectedSet set = selectForWall(m_problem);
        if (letRepeatersSpeak(set))
            set = selectForWall(m_problem);
        VoiceChoice choice;
        choice.missingCm2 = set.missingCm2;
        for (const Quote* quote : m_material.quotes) {
            if (std::binary_search(set.chosen.begin(), set.chosen.end(), quote->id.number()))
                choice.quotes.push_back(quote);
        }
        std::stable_sort(
            choice.quotes.begin(), choice.quotes.end(), [&](const Quote* a, const Quote* b) {
                return m_material.dayOf(*a) < m_material.dayOf(*b);
            });
        return choice;
    }

private:
    // Who has nothing to be heard with is told from what came out, not here.
    void askForChildren()
    {
        std::set<ChildId> children;
        for (const Quote* quote : m_material.quotes) {
            if (m_material.heard.count(quote->child) == 0)
                children.insert(quote->child);
        }
        m_problem.children.assign(children.begin(), children.end());
    }

    void setWorths()
    {
        const auto walls = wallsOfChildren(*m_material.book, m_material.display.id);
        int fewest = walls.empty() ? 0 : walls.begin()->second;
        for (const auto& [child, count] : walls)
            fewest = std::min(fewest, count);
        std::map<ChildId, std::vector<std::size_t>> ofChild;
        for (std::size_t at = 0; at < m_problem.candidates.size(); ++at) {
            const Quote& quote = *m_material.quotes[at];
            const auto known = walls.find(quote.child);
            const int count = known == walls.end() ? fewest : known->second;
            m_problem.candidates[at].worth =
                worthOfStars(quote.stars) + preference(quote) + worthOfBeingSeldom(count, fewest);
            ofChild[quote.child].push_back(at);
        }
        // Of one child a second telling counts half, a third a third: room for other voices.
        for (auto& [child, quotes] : ofChild) {
            std::stable_sort(quotes.begin(), quotes.end(), [&](std::size_t a, std::size_t b) {
                return m_problem.candidates[a].worth > m_problem.candidates[b].worth;
            });
            for (std::size_t rank = 0; rank < quotes.size(); ++rank)
                m_problem.candidates[quotes[rank]].worth /= static_cast<std::int64_t>(rank) + 1;
        }
    }

    [[nodiscard]] std::int64_t preference(const Quote& quote) const
    {
        const auto day = m_material.dayOf(quote);
        const bool ends = day == *m_days.begin() || day == *m_days.rbegin();
        const bool pictured = std::any_of(
            m_material.photos.begin(), m_material.photos.end(), [&](const Picture* photo) {
                const auto& people = photo->people.children;
                return m_material.dayOf(*photo) == day
                    && std::find(people.begin(), people.end(), quote.child) != people.end();
            });
        return worthOfLength(quote.words) + (ends ? kBeginsOrEnds : 0)
            + (pictured ? kHasOwnPicture : 0);
    }

    // The teacher's groups of the experience, or the days where there are none.
    void setGroups()
    {
        std::map<QuoteId, int> groups;
        int count = 0;
        for (const auto& [id, group] : m_material.book->groups.rows()) {
            if (group.experience != m_material.experience.id)
                continue;
            ++count;
            for (const QuoteId quote : group.quotes)
                groups.try_emplace(quote, count);
        }
        // An answer belongs to the group of the idea it answers.
        const auto groupOf = [&](const Quote& told) {
            std::set<QuoteId> seen;
            for (const Quote* one = &told; one != nullptr && seen.insert(one->id).second;
                 one = m_material.book->quotes.find(one->repliesTo)) {
                if (const auto known = groups.find(one->id); known != groups.end())
                    return known->second;
            }
            return 0;
        };
        for (std::size_t at = 0; at < m_problem.candidates.size(); ++at) {
            const Quote& quote = *m_material.quotes[at];
            const auto day = m_days.find(m_material.dayOf(quote));
            m_problem.candidates[at].group = count == 0
                ? static_cast<int>(std::distance(m_days.begin(), day)) + 1
                : groupOf(quote);
        }
    }

    // Tellings that repeat one another, directly or over a third, are rivals.
    void setRepeats()
    {
        std::vector<std::set<QString>> words;
        for (const Quote* quote : m_material.quotes)
            words.push_back(wordSet(quote->words));
        std::vector<Candidate>& all = m_problem.candidates;
        std::vector<int> set(all.size());
        std::iota(set.begin(), set.end(), 1);
        for (std::size_t a = 0; a < all.size(); ++a) {
            for (std::size_t b = 0; b < a; ++b) {
                if (set[a] != set[b] && likeness(words[a], words[b]) >= kSaysTheSame)
                    std::replace(set.begin(), set.end(), int(set[a]), int(set[b]));
            }
        }
        for (std::size_t at = 0; at < all.size(); ++at) {
            const auto alone = std::count(set.begin(), set.end(), set[at]) == 1;
            all[at].burst = alone ? 0 : set[at];
        }
    }

    // A child who only says what somebody else has said is heard all the same.
    bool letRepeatersSpeak(const SelectedSet& set)
    {
        bool changed = false;
        for (const UnheardChild& unheard : set.unheard) {
            if (unheard.why != WhyUnheard::NearEqual)
                continue;
            for (Candidate& candidate : m_problem.candidates) {
                if (candidate.voices.front() == unheard.child) {
                    candidate.burst = 0;
                    changed = true;
                }
            }
        }
        return changed;
    }

    const Material& m_material;
    std::set<std::optional<QDate>> m_days;
    SelectionProblem m_problem;
};

QString whyUnheard(const Material& material, const Child& child, std::int64_t missingCm2)
{
    const QString name = displayName(child);
    const auto isOf = [&](const Quote* quote) { return quote->child == child.id; };
    if (std::any_of(material.quotes.begin(), material.quotes.end(), isOf)) {
        const QString more = missingCm2 > 0
            ? Says::tr("; about %1 square centimetres more would let everybody speak")
                  .arg(missingCm2)
            : QString();
        return Says::tr("%1 is not heard on this display: there is no room beside the "
                        "others%2.")
            .arg(name, more);
    }
    const bool gathered = std::any_of(material.book->quotes.rows().begin(),
        material.book->quotes.rows().end(),
        [&](const auto& row) {
            return row.second.child == child.id && row.second.experience == material.experience.id;
        });
    if (gathered)
        return Says::tr("%1 is not heard on this display: none of the words may be shown "
                        "to this audience.")
            .arg(name);
    return Says::tr("%1 is not heard on this display: no words have been gathered yet.").arg(name);
}

} // namespace

VoiceChoice chooseVoices(const Material& material, int moments, const QuoteRoom& room)
{
    return VoiceChooser(material, std::max(1, moments), room).choose();
}

std::vector<LeftOut> childrenUnheard(
    const Material& material, const std::vector<Piece>& pieces, std::int64_t missingCm2)
{
    std::set<ChildId> heard;
    for (const Piece& piece : pieces)
        heard.merge(voicesIn(*material.book, piece));
    std::vector<LeftOut> unheard;
    for (const auto& [id, child] : material.book->children.rows()) {
        if (heard.count(id) == 0)
            unheard.push_back({QStringLiteral("child"),
                id.number(),
                {},
                whyUnheard(material, child, missingCm2)});
    }
    return unheard;
}

} // namespace wainscot
