#include "app/jobs/draft_pieces.h"
#include "core/base/wall_text.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <tuple>

namespace wainscot {

namespace {

constexpr std::size_t kMostRows = 3;
constexpr double kFrame = 2.5; // shape of the picture across the panel

struct Heading {
    const char* language;
    const char* text;
};
// "For our families", for languages without other words for walls. Written from memory.
constexpr std::array kHeadings{
    Heading{"ar", "لعائلاتنا"}, Heading{"zh", "写给家人"}, Heading{"tr", "Ailelerimiz için"}};

QString headingIn(const QString& language)
{
    if (hasWallTexts(language))
        return wallText(WallText::ForOurFamilies, language);
    for (const Heading& heading : kHeadings) {
        if (sameLanguage(QLatin1String(heading.language), language))
            return QString::fromUtf8(heading.text);
    }
    return {};
}

class Evening {
public:
    Evening(const Material& material, const QString& second)
        : m_material(material)
        , m_first(material.language())
        , m_second(second)
    {
    }

    PanelDraft draft()
    {
        const Experience& told = m_material.experience;
        addBoth(PieceKind::Title, told.title, Translated::Title);
        addLead();
        addBoth(PieceKind::Context, told.context, Translated::Context);
        addRows();
        addBoth(PieceKind::Invitation, told.invitation, Translated::Invitation);
        return std::move(m_draft);
    }

private:
    // A text nobody has translated stays in one language; the check says what is missing.
    void addBoth(PieceKind kind, const QString& text, Translated what)
    {
        if (text.isEmpty())
            return;
        const bool invites = kind == PieceKind::Invitation;
        m_draft.pieces.push_back(textPiece(kind, text, invites ? headingIn(m_first) : QString()));
        m_draft.pieces.back().language = m_first;
        const Translation* other =
            translationOf(*m_material.book, m_material.experience.id, what, m_second);
        if (other == nullptr)
            return;
        m_draft.pieces.push_back(
            textPiece(kind, other->text, invites ? headingIn(m_second) : QString()));
        m_draft.pieces.back().language = m_second;
    }

    [[nodiscard]] bool captionInBoth(const Picture& picture) const
    {
        return translationOf(*m_material.book, picture.id, m_second) != nullptr;
    }

    void addLead()
    {
        const Picture* best = nullptr;
        const auto cost = [&](const Picture* picture) {
            return std::tuple(
                !captionInBoth(*picture), cutByFrame(*picture, kFrame), -picture->stars);
        };
        for (const Picture* photo : m_material.photos) {
            if (best == nullptr || cost(photo) < cost(best))
                best = photo;
        }
        if (best == nullptr)
            return;
        m_used.insert(best->id);
        Piece piece = picturePiece(*best, 0, true);
        if (captionInBoth(*best))
            piece.secondLanguage = m_second;
        m_draft.pieces.push_back(piece);
    }

    [[nodiscard]] QString languageOf(const Quote& quote) const
    {
        return quote.language.isEmpty() ? m_first : quote.language;
    }

    // The language a quote has to be shown in besides its own; empty = it is in neither.
    [[nodiscard]] QString otherLanguage(const Quote& quote) const
    {
        if (sameLanguage(languageOf(quote), m_first))
            return m_second;
        return sameLanguage(languageOf(quote), m_second) ? m_first : QString();
    }

    // Told in both languages in turn, so that each has its originals; each child once.
    [[nodiscard]] std::vector<const Quote*> chooseQuotes() const
    {
        std::vector<const Quote*> told;
        for (const Quote* quote : m_material.quotes) {
            const QString other = otherLanguage(*quote);
            if (!other.isEmpty() && translationOf(*m_material.book, quote->id, other) != nullptr)
                told.push_back(quote);
        }
        std::stable_sort(told.begin(), told.end(), [](const Quote* a, const Quote* b) {
            return a->stars > b->stars;
        });
        std::vector<const Quote*> chosen;
        std::set<ChildId> heard;
        std::map<bool, int> originals;
        while (chosen.size() < kMostRows) {
            const Quote* next = nullptr;
            const auto rank = [&](const Quote* quote) {
                return originals[sameLanguage(languageOf(*quote), m_second)];
            };
            for (const Quote* quote : told) {
                if (heard.count(quote->child) == 0 && (next == nullptr || rank(quote) < rank(next)))
                    next = quote;
            }
            if (next == nullptr)
                break;
            heard.insert(next->child);
            ++originals[sameLanguage(languageOf(*next), m_second)];
            chosen.push_back(next);
        }
        return chosen;
    }

    const Picture* smallPictureFor(const Quote& quote)
    {
        const Picture* best = nullptr;
        const auto cost = [&](const Picture* photo) {
            return std::tuple(m_material.dayOf(*photo) != m_material.dayOf(quote),
                cutByFrame(*photo, 1),
                -photo->stars,
                photo->id);
        };
        for (const Picture* photo : m_material.photos) {
            if (m_used.count(photo->id) == 0 && (best == nullptr || cost(photo) < cost(best)))
                best = photo;
        }
        if (best != nullptr)
            m_used.insert(best->id);
        return best;
    }

    void addRows()
    {
        int group = 0;
        for (const Quote* quote : chooseQuotes()) {
            ++group;
            const bool own = sameLanguage(languageOf(*quote), m_first);
            m_draft.pieces.push_back(quotePiece(*quote, group));
            m_draft.pieces.back().language = own ? QString() : m_first;
            if (const Picture* picture = smallPictureFor(*quote)) {
                m_draft.pieces.push_back(picturePiece(*picture, group, false));
                m_draft.pieces.back().text.clear(); // paired with a quote in its own row
            }
            m_draft.pieces.push_back(quotePiece(*quote, group));
            m_draft.pieces.back().language = own ? m_second : QString();
        }
    }

    const Material& m_material;
    QString m_first;
    QString m_second;
    PanelDraft m_draft;
    std::set<PictureId> m_used;
};

} // namespace

PanelDraft draftEvening(const Material& material, const QString& second)
{
    return Evening(material, second).draft();
}

QString secondLanguageOf(const Material& material)
{
    struct Count {
        bool title = false;
        int all = 0;
    };
    std::map<QString, Count> counts;
    for (const auto& [id, translation] : material.book->translations.rows()) {
        if (translation.experience != material.experience.id
            || sameLanguage(translation.language, material.language()))
            continue;
        Count& count = counts[translation.language];
        ++count.all;
        count.title = count.title || translation.what == Translated::Title;
    }
    QString best;
    for (const auto& [language, count] : counts) {
        if (count.title && (best.isEmpty() || count.all > counts[best].all))
            best = language;
    }
    return best;
}

} // namespace wainscot
