#include "app/jobs/draft_pieces.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace wainscot {

namespace {

constexpr double kSaysTheSame = 0.6; // likeness from which two tellings repeat each other
constexpr int kShortLetters = 42; // two lines at the template's column
constexpr std::size_t kBesidePicture = 2;
constexpr int kManyTellings = 12; // among which short ones are looked for
constexpr double kFrame = 4.0 / 3; // shape of the template's picture

// One quote of each child, the most starred, told in time order; repetitions come last.
std::vector<const Quote*> chooseVoices(const Material& material, const QString& key, int count)
{
    std::vector<const Quote*> order;
    for (const Quote* quote : material.quotes) {
        if (quote->prompt == key)
            order.push_back(quote);
    }
    std::stable_sort(order.begin(), order.end(), [](const Quote* a, const Quote* b) {
        return a->stars > b->stars;
    });
    std::vector<const Quote*> chosen;
    std::set<ChildId> heard;
    for (const bool repeating : {false, true}) {
        for (const Quote* quote : order) {
            const bool same = std::any_of(chosen.begin(), chosen.end(), [&](const Quote* one) {
                return likeness(one->words, quote->words) >= kSaysTheSame;
            });
            if (static_cast<int>(chosen.size()) < count && same == repeating
                && heard.count(quote->child) == 0) {
                heard.insert(quote->child);
                chosen.push_back(quote);
            }
        }
    }
    std::sort(chosen.begin(), chosen.end(), [&](const Quote* a, const Quote* b) {
        return std::tuple(material.dayOf(*a), a->id) < std::tuple(material.dayOf(*b), b->id);
    });
    return chosen;
}

// Two short ones stand beside the picture; the others keep their order.
void shortOnesFirst(std::vector<const Quote*>& quotes)
{
    std::size_t placed = 0;
    for (std::size_t i = 0; i < quotes.size() && placed < kBesidePicture; ++i) {
        if (quotes[i]->words.size() > kShortLetters)
            continue;
        std::rotate(quotes.begin() + static_cast<std::ptrdiff_t>(placed),
            quotes.begin() + static_cast<std::ptrdiff_t>(i),
            quotes.begin() + static_cast<std::ptrdiff_t>(i) + 1);
        ++placed;
    }
}

const Picture* pictureFor(const Material& material)
{
    const Picture* best = nullptr;
    const auto cost = [](const Picture* picture) {
        return std::tuple(-picture->stars,
            cutByFrame(*picture, kFrame) > 0.3,
            picture->caption.isEmpty(),
            picture->id);
    };
    for (const Picture* photo : material.photos) {
        if (best == nullptr || cost(photo) < cost(best))
            best = photo;
    }
    return best;
}

// The experience's title where it is a question already, otherwise what was asked.
QString questionOf(const Material& material, const QString& key)
{
    const QString title = material.experience.title.trimmed();
    if (title.endsWith(QLatin1Char('?')))
        return title;
    const PromptSet* prompts = material.book->promptSets.find(material.experience.promptSet);
    const Prompt* prompt = prompts != nullptr ? prompts->find(key) : nullptr;
    return prompt != nullptr ? prompt->text : title;
}

} // namespace

AnsweredPrompt mostAnswered(const Material& material)
{
    std::map<QString, std::set<ChildId>> children;
    for (const Quote* quote : material.quotes) {
        if (!quote->prompt.isEmpty())
            children[quote->prompt].insert(quote->child);
    }
    AnsweredPrompt most;
    for (const auto& [key, who] : children) {
        if (static_cast<int>(who.size()) > most.children)
            most = {key, static_cast<int>(who.size())};
    }
    return most;
}

PanelDraft draftVoices(const Material& material, int quotes)
{
    PanelDraft draft;
    const QString key = mostAnswered(material).key;
    std::vector<const Quote*> chosen = chooseVoices(material, key, quotes);
    const QString credits = creditsLine(material, chosen);
    draft.pieces.push_back(textPiece(PieceKind::Title, questionOf(material, key)));
    if (const Picture* picture = pictureFor(material)) {
        draft.pieces.push_back(picturePiece(*picture, 0, true));
        shortOnesFirst(chosen);
    }
    for (const Quote* quote : chosen)
        draft.pieces.push_back(quotePiece(*quote, 0));
    // How the children were asked; nothing here says what their answers mean.
    if (!material.experience.context.isEmpty())
        draft.pieces.push_back(textPiece(PieceKind::Interpretation, material.experience.context));
    if (!credits.isEmpty())
        draft.pieces.push_back(textPiece(PieceKind::Credits, credits));
    return draft;
}

PanelDraft draftDoor(const Material& material)
{
    constexpr int kVoices = 2;
    PanelDraft draft;
    const Picture* picture = pictureFor(material);
    const QString key = mostAnswered(material).key;
    std::vector<const Quote*> chosen = chooseVoices(material, key, kManyTellings);
    shortOnesFirst(chosen);
    if (picture == nullptr || chosen.size() < kVoices)
        return draft;
    chosen.resize(kVoices);
    draft.pieces.push_back(textPiece(PieceKind::Title, questionOf(material, key)));
    draft.pieces.push_back(picturePiece(*picture, 0, true));
    for (const Quote* quote : chosen)
        draft.pieces.push_back(quotePiece(*quote, 0));
    if (!material.experience.nextSteps.isEmpty())
        draft.pieces.push_back(nextStepPiece(material));
    if (const QString credits = creditsLine(material, chosen); !credits.isEmpty())
        draft.pieces.push_back(textPiece(PieceKind::Credits, credits));
    return draft;
}

} // namespace wainscot
