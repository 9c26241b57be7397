// Before and after.
#include "app/jobs/draft_pieces.h"
#include "app/jobs/sentences.h"
#include "core/base/in_words.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {

namespace {

constexpr std::size_t kWordsBefore = 1;
constexpr std::size_t kWordsAfter = 2;
constexpr int kLongEnough = 7; // days, for something to have become another thing
constexpr double kFrame = 3.0 / 2; // shape of the large picture

struct DayOfWork {
    const Picture* picture = nullptr;
    std::vector<const Quote*> quotes;
};

bool isBetter(const Picture& a, const Picture& b)
{
    const auto cost = [](const Picture& picture) {
        return std::tuple(-picture.stars,
            picture.kind == PictureKind::Work,
            cutByFrame(picture, kFrame) > 0.3,
            picture.caption.isEmpty(),
            picture.id);
    };
    return cost(a) < cost(b);
}

// The days that have both a picture and words.
std::map<QDate, DayOfWork> daysOf(const Material& material)
{
    std::map<QDate, DayOfWork> days;
    for (const auto* list : {&material.photos, &material.works}) {
        for (const Picture* picture : *list) {
            const auto day = material.dayOf(*picture);
            if (!day)
                continue;
            const Picture*& best = days[*day].picture;
            if (best == nullptr || isBetter(*picture, *best))
                best = picture;
        }
    }
    for (const Quote* quote : material.quotes) {
        if (const auto day = material.dayOf(*quote))
            days[*day].quotes.push_back(quote);
    }
    std::erase_if(days,
        [](const auto& day) { return day.second.picture == nullptr || day.second.quotes.empty(); });
    return days;
}

// Of different children, those who spoke on the other day first, then by stars.
std::vector<const Quote*> chosen(
    std::vector<const Quote*> quotes, const std::set<ChildId>& heard, std::size_t count)
{
    std::stable_sort(quotes.begin(), quotes.end(), [&](const Quote* a, const Quote* b) {
        return std::pair(heard.count(a->child) == 0, -a->stars)
            < std::pair(heard.count(b->child) == 0, -b->stars);
    });
    std::vector<const Quote*> kept;
    std::set<ChildId> speaking;
    for (const Quote* quote : quotes) {
        if (kept.size() < count && speaking.insert(quote->child).second)
            kept.push_back(quote);
    }
    return kept;
}

std::set<ChildId> speakersOf(const std::vector<const Quote*>& quotes)
{
    std::set<ChildId> speakers;
    for (const Quote* quote : quotes)
        speakers.insert(quote->child);
    return speakers;
}

void addDay(PanelDraft& draft,
    const QString& day,
    const Picture& picture,
    const std::vector<const Quote*>& quotes,
    int group)
{
    draft.pieces.push_back(textPiece(PieceKind::Label, day));
    draft.pieces.back().group = group;
    draft.pieces.push_back(picturePiece(picture, group, group == 0));
    for (const Quote* quote : quotes)
        draft.pieces.push_back(quotePiece(*quote, group));
}

} // namespace

PanelDraft draftBefore(const Material& material)
{
    PanelDraft draft;
    const std::map<QDate, DayOfWork> days = daysOf(material);
    if (days.size() < 2)
        return draft;
    const auto& [first, before] = *days.begin();
    const auto& [last, after] = *days.rbegin();
    const auto then = chosen(before.quotes, speakersOf(after.quotes), kWordsBefore);
    const auto now = chosen(after.quotes, speakersOf(then), kWordsAfter);
    const Experience& told = material.experience;
    draft.pieces.push_back(textPiece(PieceKind::Title, told.title));
    addDay(draft, dayInWords(first, material.language()), *before.picture, then, 1);
    addDay(draft, dayInWords(last, material.language()), *after.picture, now, 0);
    if (!told.interpretation.isEmpty())
        draft.pieces.push_back(interpretationPiece(material));
    std::vector<const Quote*> all = then;
    all.insert(all.end(), now.begin(), now.end());
    if (const QString credits = creditsLine(material, all); !credits.isEmpty())
        draft.pieces.push_back(textPiece(PieceKind::Credits, credits));
    return draft;
}

bool isBeforeAndAfter(const Material& material)
{
    const std::map<QDate, DayOfWork> days = daysOf(material);
    return days.size() == 2 && days.begin()->first.daysTo(days.rbegin()->first) >= kLongEnough;
}

} // namespace wainscot
