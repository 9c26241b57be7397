#include "app/jobs/selection.h"

#include "core/media/likeness.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace wainscot {

namespace {

// The best of each burst of near-equal photos, none where one stands on the display already.
std::vector<const Picture*> oneOfEachBurst(const Material& material)
{
    std::vector<const Picture*> all = material.photos;
    all.insert(all.end(), material.placed.begin(), material.placed.end());
    const std::map<PictureId, int> bursts = burstsOf(all);
    std::map<int, const Picture*> best;
    for (const Picture* picture : all) {
        const auto burst = bursts.find(picture->id);
        if (burst == bursts.end())
            continue;
        const Picture*& known = best[burst->second];
        const bool isPlaced = std::find(material.placed.begin(), material.placed.end(), picture)
            != material.placed.end();
        if (known == nullptr || isPlaced || isProposedBefore(*picture, *known))
            known = picture;
    }
    std::vector<const Picture*> photos;
    for (const Picture* photo : material.photos) {
        const auto burst = bursts.find(photo->id);
        if (burst == bursts.end() || best.at(burst->second) == photo)
            photos.push_back(photo);
    }
    return photos;
}

// A break inside a day counts as so many moments off the even share.
constexpr double kDayWhole = 2;

class DaySelector {
public:
    explicit DaySelector(const Material& material)
        : m_material(material)
        , m_photos(oneOfEachBurst(material))
    {
    }

    Selection select(int moments, int panels, const QuoteRoom& room)
    {
        Selection selection;
        const VoiceChoice voices = chooseVoices(m_material, moments, room);
        selection.leads = chooseLeads(panels, voices.quotes);
        selection.missingCm2 = voices.missingCm2;
        for (const Quote* quote : voices.quotes) {
            selection.moments.push_back({m_material.dayOf(*quote), {}, quote, nullptr});
            choosePicture(selection.moments.back());
        }
        return selection;
    }

private:
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
        for (const Picture* photo : m_photos) {
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

    // Where a panel is likely to begin: near an even share of the words, between two days.
    [[nodiscard]] std::size_t likelyBegin(
        const std::vector<const Quote*>& quotes, std::size_t part, std::size_t parts) const
    {
        const double even = double(part * quotes.size()) / double(parts);
        const auto distance = [&](std::size_t at) {
            const bool inside = at > 0 && at < quotes.size()
                && m_material.dayOf(*quotes[at - 1]) == m_material.dayOf(*quotes[at]);
            return std::abs(double(at) - even) + (inside ? kDayWhole : 0);
        };
        std::size_t best = 0;
        for (std::size_t at = 1; at <= quotes.size(); ++at) {
            if (distance(at) < distance(best))
                best = at;
        }
        return best;
    }

    // Photos not used yet that may lead a panel: of the days of its words, else an even share of
    // all in the order of time.
    [[nodiscard]] std::vector<const Picture*> leadsFor(
        const std::vector<const Quote*>& quotes, std::size_t part, std::size_t parts) const
    {
        std::set<std::optional<QDate>> days;
        const std::size_t end = likelyBegin(quotes, part + 1, parts);
        for (std::size_t i = likelyBegin(quotes, part, parts); i < end; ++i)
            days.insert(m_material.dayOf(*quotes[i]));
        std::vector<const Picture*> found;
        for (const Picture* photo : m_photos) {
            if (m_used.count(photo->id) == 0 && days.count(m_material.dayOf(*photo)) > 0)
                found.push_back(photo);
        }
        const auto share = [&](std::size_t which) {
            return m_photos.begin() + static_cast<std::ptrdiff_t>(which * m_photos.size() / parts);
        };
        if (found.empty() || parts == 1)
            found.assign(share(part), share(part + 1));
        return found;
    }

    std::vector<const Picture*> chooseLeads(int panels, const std::vector<const Quote*>& quotes)
    {
        std::vector<const Picture*> leads;
        const auto parts = static_cast<std::size_t>(std::max(1, panels));
        for (std::size_t part = 0; part < parts; ++part) {
            const Picture* lead = bestLead(leadsFor(quotes, part, parts));
            if (lead == nullptr)
                continue;
            leads.push_back(lead);
            m_used.insert(lead->id);
        }
        return leads;
    }

    // Wide, captioned, from a day that has another photo for its own moment.
    const Picture* bestLead(const std::vector<const Picture*>& among) const
    {
        std::map<std::optional<QDate>, int> photosOfDay;
        for (const Picture* photo : m_photos)
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
        for (const Picture* photo : among) {
            if (m_used.count(photo->id) == 0 && (best == nullptr || cost(photo) < cost(best)))
                best = photo;
        }
        return best;
    }

    const Material& m_material;
    std::vector<const Picture*> m_photos; // by time taken
    std::set<PictureId> m_used;
    bool m_workShown = false;
};

} // namespace

Selection selectDays(const Material& material, int moments, int panels, const QuoteRoom& room)
{
    return DaySelector(material).select(moments, panels, room);
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
