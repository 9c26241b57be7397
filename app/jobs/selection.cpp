#include "app/jobs/selection.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace wainscot {

namespace {

constexpr double kSaysTheSame = 0.6; // likeness from which two tellings repeat each other

// At the usual column a quote of this many letters sets in three to five lines.
constexpr int kLeastLetters = 18;
constexpr int kMostLetters = 90;
constexpr int kLongLetters = 150;

int lengthClass(const QString& words)
{
    const auto letters = words.simplified().size();
    if (letters >= kLeastLetters && letters <= kMostLetters)
        return 0;
    return letters <= kLongLetters ? 1 : 2;
}

class DaySelector {
public:
    explicit DaySelector(const Material& material)
        : m_material(material)
    {
        for (const Quote* quote : material.quotes)
            m_quotesOfDay[material.dayOf(*quote)].push_back(quote);
    }

    Selection select(int moments, int panels)
    {
        Selection selection;
        selection.leads = chooseLeads(panels);
        selection.moments = momentsByDay(moments);
        // Days with few tellings choose first, so that they are not left with none.
        std::vector<Moment*> order;
        for (Moment& moment : selection.moments)
            order.push_back(&moment);
        std::stable_sort(order.begin(), order.end(), [&](const Moment* a, const Moment* b) {
            return m_quotesOfDay[a->day].size() < m_quotesOfDay[b->day].size();
        });
        for (Moment* moment : order)
            chooseQuote(*moment);
        std::erase_if(
            selection.moments, [](const Moment& moment) { return moment.quote == nullptr; });
        for (Moment& moment : selection.moments)
            choosePicture(moment);
        return selection;
    }

private:
    // How many moments each day gets: one each, then more where most was said.
    std::vector<Moment> momentsByDay(int moments)
    {
        std::vector<std::optional<QDate>> days;
        for (const auto& [day, quotes] : m_quotesOfDay)
            days.push_back(day);
        while (static_cast<int>(days.size()) > moments)
            days.erase(quietestDay(days));
        std::map<std::optional<QDate>, int> share;
        for (const auto& day : days)
            share[day] = 1;
        for (int left = moments - static_cast<int>(days.size()); left > 0; --left) {
            const auto fullest =
                std::max_element(days.begin(), days.end(), [&](const auto& a, const auto& b) {
                    return unusedPerMoment(a, share) < unusedPerMoment(b, share);
                });
            // A child may speak twice where the room is there and nobody is left unheard for it.
            if (fullest == days.end()
                || static_cast<int>(m_quotesOfDay[*fullest].size()) <= share[*fullest])
                break;
            ++share[*fullest];
        }
        std::vector<Moment> result;
        for (const auto& day : days) {
            for (int i = 0; i < share[day]; ++i)
                result.push_back({day, {}, nullptr, nullptr});
        }
        return result;
    }

    // The first and the last day tell the beginning and the end, so they stay.
    std::vector<std::optional<QDate>>::iterator quietestDay(std::vector<std::optional<QDate>>& days)
    {
        if (days.size() <= 2)
            return std::prev(days.end());
        return std::min_element(
            std::next(days.begin()), std::prev(days.end()), [&](const auto& a, const auto& b) {
                return m_quotesOfDay[a].size() < m_quotesOfDay[b].size();
            });
    }

    double unusedPerMoment(
        const std::optional<QDate>& day, const std::map<std::optional<QDate>, int>& share)
    {
        std::set<ChildId> children;
        for (const Quote* quote : m_quotesOfDay[day])
            children.insert(quote->child);
        return static_cast<double>(children.size()) / (share.at(day) + 1);
    }

    bool repeatsChosen(const Quote& quote) const
    {
        return std::any_of(m_chosen.begin(), m_chosen.end(), [&](const Quote* chosen) {
            return likeness(chosen->words, quote.words) >= kSaysTheSame;
        });
    }

    bool hasOwnPicture(const Quote& quote, const std::optional<QDate>& day) const
    {
        return std::any_of(
            m_material.photos.begin(), m_material.photos.end(), [&](const Picture* photo) {
                return m_used.count(photo->id) == 0 && m_material.dayOf(*photo) == day
                    && shows(*photo, quote.child);
            });
    }

    void chooseQuote(Moment& moment)
    {
        const auto cost = [&](const Quote* quote) {
            return std::tuple(m_timesHeard[quote->child],
                repeatsChosen(*quote),
                -quote->stars,
                lengthClass(quote->words),
                m_timesAsked[quote->prompt],
                !hasOwnPicture(*quote, moment.day),
                quote->id);
        };
        for (const Quote* quote : m_quotesOfDay[moment.day]) {
            const bool taken = std::find(m_chosen.begin(), m_chosen.end(), quote) != m_chosen.end();
            if (!taken && (moment.quote == nullptr || cost(quote) < cost(moment.quote)))
                moment.quote = quote;
        }
        if (moment.quote == nullptr)
            return;
        m_chosen.push_back(moment.quote);
        ++m_timesHeard[moment.quote->child];
        ++m_timesAsked[moment.quote->prompt];
    }

    static bool shows(const Picture& picture, ChildId child)
    {
        const auto& people = picture.people.children;
        return std::find(people.begin(), people.end(), child) != people.end();
    }

    // Children in the picture who would lose their names on this display by being seen.
    int namesLost(const Picture& picture) const
    {
        int lost = 0;
        const Audience audience = m_material.display.audience;
        for (const ChildId id : picture.people.children) {
            const Child* child = m_material.book->children.find(id);
            if (child == nullptr)
                continue;
            lost += static_cast<int>(child->permissions.allows(Permission::FirstName, audience)
                && !child->permissions.allows(Permission::PhotoWithName, audience));
        }
        return lost;
    }

    static int shapeClass(const Picture& picture)
    {
        const double aspect = picture.size.isEmpty() ? 1 : picture.size.aspect();
        return aspect >= 1.2 && aspect <= 1.9 ? 0 : 1;
    }

    void choosePicture(Moment& moment)
    {
        const auto cost = [&](const Picture* picture) {
            return std::tuple(!m_material.dayOf(*picture).has_value(),
                !shows(*picture, moment.quote->child),
                namesLost(*picture),
                -picture->stars,
                picture->caption.isEmpty(),
                shapeClass(*picture),
                picture->id);
        };
        const auto suits = [&](const Picture* picture) {
            const auto day = m_material.dayOf(*picture);
            return m_used.count(picture->id) == 0 && (!day || day == moment.day);
        };
        for (const Picture* photo : m_material.photos) {
            if (suits(photo) && (moment.picture == nullptr || cost(photo) < cost(moment.picture)))
                moment.picture = photo;
        }
        if (moment.picture == nullptr)
            moment.picture = ownWork(moment.quote->child);
        if (moment.picture != nullptr)
            m_used.insert(moment.picture->id);
    }

    // One drawing may stand where a day has no photo; a second would be one too many.
    const Picture* ownWork(ChildId child)
    {
        if (m_workShown)
            return nullptr;
        for (const Picture* work : m_material.works) {
            if (shows(*work, child) && m_used.count(work->id) == 0) {
                m_workShown = true;
                return work;
            }
        }
        return nullptr;
    }

    // Photos in the order of time, one stretch for each panel, the best of each stretch.
    std::vector<const Picture*> chooseLeads(int panels)
    {
        std::vector<const Picture*> leads;
        const std::size_t count = m_material.photos.size();
        const auto parts = static_cast<std::size_t>(std::max(1, panels));
        for (std::size_t part = 0; part < parts; ++part) {
            const Picture* lead = bestLead(part * count / parts, (part + 1) * count / parts);
            if (lead == nullptr)
                continue;
            leads.push_back(lead);
            m_used.insert(lead->id);
        }
        return leads;
    }

    // Wide, captioned, from a day that has another photo for its own moment.
    const Picture* bestLead(std::size_t first, std::size_t end) const
    {
        std::map<std::optional<QDate>, int> photosOfDay;
        for (const Picture* photo : m_material.photos)
            ++photosOfDay[m_material.dayOf(*photo)];
        const auto cost = [&](const Picture* photo) {
            const bool last = photosOfDay[m_material.dayOf(*photo)] < 2;
            const double pixels = double(photo->size.width) * photo->size.height;
            return std::tuple(-photo->stars,
                last,
                shapeClass(*photo),
                photo->caption.isEmpty(),
                namesLost(*photo),
                -pixels,
                photo->id);
        };
        const Picture* best = nullptr;
        for (std::size_t i = first; i < end; ++i) {
            if (best == nullptr || cost(m_material.photos[i]) < cost(best))
                best = m_material.photos[i];
        }
        return best;
    }

    const Material& m_material;
    std::map<std::optional<QDate>, std::vector<const Quote*>> m_quotesOfDay;
    std::vector<const Quote*> m_chosen;
    std::map<ChildId, int> m_timesHeard;
    std::map<QString, int> m_timesAsked;
    std::set<PictureId> m_used;
    bool m_workShown = false;
};

} // namespace

Selection selectDays(const Material& material, int moments, int panels)
{
    return DaySelector(material).select(moments, panels);
}

std::vector<DrawingChoice> selectDrawings(const Material& material, int count)
{
    std::vector<DrawingChoice> choices;
    std::set<ChildId> told;
    const auto best = [&](const Picture& work) -> const Quote* {
        const Quote* longest = nullptr;
        const auto rank = [](const Quote* quote) {
            return std::tuple(quote->telling == Telling::Drew, quote->stars, quote->words.size());
        };
        for (const Quote* quote : material.quotes) {
            const bool own =
                work.people.children.size() == 1 && work.people.children.front() == quote->child;
            if (own && (longest == nullptr || rank(quote) > rank(longest)))
                longest = quote;
        }
        return longest;
    };
    std::vector<DrawingChoice> all;
    for (const Picture* work : material.works) {
        if (const Quote* quote = best(*work))
            all.push_back({work, quote});
    }
    std::stable_sort(all.begin(), all.end(), [](const DrawingChoice& a, const DrawingChoice& b) {
        return std::tuple(a.work->stars + a.quote->stars, a.quote->words.size())
            > std::tuple(b.work->stars + b.quote->stars, b.quote->words.size());
    });
    for (const DrawingChoice& choice : all) {
        if (static_cast<int>(choices.size()) < count && told.insert(choice.quote->child).second)
            choices.push_back(choice);
    }
    return choices;
}

} // namespace wainscot
