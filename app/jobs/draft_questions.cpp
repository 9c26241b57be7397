// A book of one child's questions.
#include "app/jobs/draft_pieces.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace wainscot {

namespace {

constexpr std::size_t kOnAPage = 3;
constexpr std::size_t kOnAnUprightPage = 2; // below the picture there is less room than beside it

// The question marks of Latin, Greek, Arabic and Chinese writing.
bool isQuestion(const Quote& quote)
{
    return std::any_of(quote.words.begin(), quote.words.end(), [](QChar letter) {
        return letter == QLatin1Char('?') || letter == QChar(0x037e) || letter == QChar(0x061f)
            || letter == QChar(0xff1f);
    });
}

struct Asker {
    ChildId child;
    int questions = 0;
    int words = 0; // tellings, questions among them
    int stars = 0;
};

// Who asked most; the most starred of them, then the first.
Asker mostAsking(const Material& material)
{
    std::map<ChildId, Asker> askers;
    for (const Quote* quote : material.quotes) {
        Asker& asker = askers[quote->child];
        asker.child = quote->child;
        asker.questions += isQuestion(*quote) ? 1 : 0;
        asker.stars += quote->stars;
        ++asker.words;
    }
    Asker most;
    for (const auto& [child, asker] : askers) {
        if (std::tuple(asker.questions, asker.stars) > std::tuple(most.questions, most.stars))
            most = asker;
    }
    return most;
}

bool isOf(const Picture& picture, ChildId child)
{
    const auto& who = picture.people.children;
    return std::find(who.begin(), who.end(), child) != who.end();
}

// What the child made first, then pictures of the child, then any other.
std::vector<const Picture*> picturesFor(const Material& material, ChildId child)
{
    std::vector<const Picture*> pictures = material.works;
    pictures.insert(pictures.end(), material.photos.begin(), material.photos.end());
    std::erase_if(pictures, [child](const Picture* picture) {
        return picture->kind == PictureKind::Work && !isOf(*picture, child);
    });
    std::stable_sort(pictures.begin(), pictures.end(), [child](const Picture* a, const Picture* b) {
        const auto cost = [child](const Picture& picture) {
            return std::tuple(picture.kind != PictureKind::Work,
                !isOf(picture, child),
                -picture.stars,
                picture.caption.isEmpty());
        };
        return cost(*a) < cost(*b);
    });
    return pictures;
}

// In the order of time. Where there are more questions than room only questions.
std::vector<const Quote*> tellingsOf(const Material& material, const Asker& asker, std::size_t most)
{
    const bool onlyQuestions = std::size_t(asker.questions) >= most;
    std::vector<const Quote*> tellings;
    for (const Quote* quote : material.quotes) {
        if (quote->child == asker.child && (!onlyQuestions || isQuestion(*quote)))
            tellings.push_back(quote);
    }
    std::stable_sort(tellings.begin(), tellings.end(), [&](const Quote* a, const Quote* b) {
        return std::pair(isQuestion(*b), b->stars) < std::pair(isQuestion(*a), a->stars);
    });
    if (tellings.size() > most)
        tellings.resize(most);
    std::sort(tellings.begin(), tellings.end(), [&](const Quote* a, const Quote* b) {
        return std::tuple(material.dayOf(*a), a->id) < std::tuple(material.dayOf(*b), b->id);
    });
    return tellings;
}

} // namespace

std::vector<PanelDraft> draftQuestions(const Material& material, int panels)
{
    const Asker asker = mostAsking(material);
    if (asker.questions == 0)
        return {};
    const std::size_t wanted = std::size_t(std::max(1, panels));
    const SizeMm size = material.display.panelSize;
    const std::size_t onAPage = size.height > size.width ? kOnAnUprightPage : kOnAPage;
    const auto tellings = tellingsOf(material, asker, wanted * onAPage);
    const auto pictures = picturesFor(material, asker.child);
    const std::size_t pages = std::min(wanted, tellings.size());
    std::vector<PanelDraft> drafts(pages);
    for (std::size_t page = 0; page < pages; ++page) {
        PanelDraft& draft = drafts[page];
        const std::vector<const Quote*> here(
            tellings.begin() + std::ptrdiff_t(page * tellings.size() / pages),
            tellings.begin() + std::ptrdiff_t((page + 1) * tellings.size() / pages));
        draft.pieces.push_back(textPiece(PieceKind::Title, material.experience.title));
        if (page < pictures.size())
            draft.pieces.push_back(picturePiece(*pictures[page], 0, true));
        for (const Quote* quote : here)
            draft.pieces.push_back(quotePiece(*quote, 0));
        const QString credits = creditsLine(material, tellings);
        if (page + 1 == pages && !credits.isEmpty())
            draft.pieces.push_back(textPiece(PieceKind::Credits, credits));
    }
    return drafts;
}

bool isOneChildsQuestions(const Material& material)
{
    const Asker asker = mostAsking(material);
    return asker.questions >= 2 && asker.words == int(material.quotes.size())
        && 2 * asker.questions >= asker.words;
}

} // namespace wainscot
