#include "app/jobs/draft.h"

#include "app/jobs/draft_pieces.h"
#include "app/jobs/sentences.h"
#include "core/base/in_words.h"
#include "core/base/wall_text.h"
#include "layout/engine/plan.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {

namespace {

// Where everything happened on one day, what was asked tells the moments apart.
QString labelOf(const Material& material, const Moment& moment, bool oneDay)
{
    const PromptSet* prompts = material.book->promptSets.find(material.experience.promptSet);
    const Prompt* prompt = prompts != nullptr ? prompts->find(moment.quote->prompt) : nullptr;
    if ((oneDay || !moment.day) && prompt != nullptr)
        return prompt->textIn(material.language());
    return moment.day ? dayInWords(*moment.day, material.language()) : QString();
}

bool isOneDay(const std::vector<Moment>& moments)
{
    return std::all_of(moments.begin(), moments.end(), [&](const Moment& moment) {
        return moment.day == moments.front().day;
    });
}

std::vector<const Quote*> quotesIn(const std::vector<Moment>& moments)
{
    std::vector<const Quote*> quotes;
    quotes.reserve(moments.size());
    for (const Moment& moment : moments)
        quotes.push_back(moment.quote);
    return quotes;
}

void addMoment(PanelDraft& draft, const Material& material, const Moment& moment, bool oneDay)
{
    int group = 0;
    for (const Piece& piece : draft.pieces)
        group = std::max(group, piece.group);
    ++group;
    const QString label = labelOf(material, moment, oneDay);
    if (!label.isEmpty()) {
        draft.pieces.push_back(textPiece(PieceKind::Label, label));
        draft.pieces.back().group = group;
    }
    if (moment.picture != nullptr)
        draft.pieces.push_back(picturePiece(*moment.picture, group, false));
    draft.pieces.push_back(quotePiece(*moment.quote, group));
}

QStringList scribesOf(const std::vector<const Quote*>& quotes)
{
    QStringList scribes;
    for (const Quote* quote : quotes) {
        if (!quote->scribe.isEmpty() && !scribes.contains(quote->scribe))
            scribes.append(quote->scribe);
    }
    return scribes;
}

WallText howTaken(bool exact, bool readBack)
{
    if (exact)
        return readBack ? WallText::AsSpokenReadBack : WallText::AsSpoken;
    return readBack ? WallText::SomeTogetherReadBack : WallText::SomeTogether;
}

} // namespace

QString creditsFor(const Material& material, const std::vector<const Quote*>& quotes)
{
    if (quotes.empty())
        return {};
    std::set<QDate> days;
    bool exact = true;
    bool readBack = true;
    for (const Quote* quote : quotes) {
        if (const auto day = material.dayOf(*quote))
            days.insert(*day);
        exact = exact && quote->dictation == Dictation::Exact;
        readBack = readBack && quote->readBack;
    }
    constexpr qsizetype kMostNamed = 2;
    const QString& language = material.language();
    QString text = wallText(howTaken(exact, readBack), language);
    const QStringList scribes = scribesOf(quotes);
    if (!scribes.isEmpty() && scribes.size() <= kMostNamed)
        text = wallText(WallText::TakenBy, language).arg(text, listInWords(scribes, language));
    text += QLatin1Char('.');
    return days.empty()
        ? text
        : QStringLiteral("%1. %2").arg(daysInWords(*days.begin(), *days.rbegin(), language), text);
}

QString furtherTitle(const Material& material, const std::vector<const Quote*>& quotes, bool oneDay)
{
    QStringList days;
    for (const Quote* quote : quotes) {
        const auto day = material.dayOf(*quote);
        const QString name = day ? weekdayInWords(*day, material.language()) : QString();
        if (day && !days.contains(name))
            days.append(name);
    }
    return oneDay || days.isEmpty() ? material.experience.title
                                    : capitalised(listInWords(days, material.language()));
}

bool isOfDays(const QString& plan)
{
    const engine::Plan* known = engine::planByName(plan.toStdString());
    return known == nullptr || known->name == "days";
}

std::vector<PanelDraft> draftDays(const Material& material, const Selection& selection, int panels)
{
    const auto count = selection.moments.size();
    const auto wanted = std::clamp<std::size_t>(
        static_cast<std::size_t>(panels), 1, std::max<std::size_t>(1, count));
    const Experience& experience = material.experience;
    const bool oneDay = count > 0 && isOneDay(selection.moments);
    std::vector<PanelDraft> drafts(wanted);
    for (std::size_t at = 0; at < wanted; ++at) {
        PanelDraft& draft = drafts[at];
        const std::vector<Moment> moments(
            selection.moments.begin() + static_cast<std::ptrdiff_t>(at * count / wanted),
            selection.moments.begin() + static_cast<std::ptrdiff_t>((at + 1) * count / wanted));
        draft.pieces.push_back(textPiece(PieceKind::Title,
            at == 0 ? experience.title : furtherTitle(material, quotesIn(moments), oneDay)));
        if (at == 0 && !experience.context.isEmpty())
            draft.pieces.push_back(textPiece(PieceKind::Context, experience.context));
        const QString credits = creditsLine(material, quotesIn(selection.moments));
        if (at + 1 == wanted && !credits.isEmpty())
            draft.pieces.push_back(textPiece(PieceKind::Credits, credits));
        if (at < selection.leads.size())
            draft.pieces.push_back(picturePiece(*selection.leads[at], 0, true));
        for (const Moment& moment : moments)
            addMoment(draft, material, moment, oneDay);
    }
    addAdultTexts(drafts.back(), material);
    return drafts;
}

std::vector<PanelDraft> draftDrawings(
    const Material& material, const std::vector<DrawingChoice>& drawings)
{
    std::vector<PanelDraft> drafts;
    for (const DrawingChoice& choice : drawings) {
        PanelDraft draft;
        Piece work = picturePiece(*choice.work, 0, true);
        // What an adult says of one drawing stands beside it, not under it.
        const QString note = work.text;
        work.text.clear();
        draft.pieces.push_back(work);
        draft.pieces.push_back(quotePiece(*choice.quote, 0));
        if (!note.isEmpty())
            draft.pieces.push_back(textPiece(PieceKind::Interpretation, note));
        draft.pieces.push_back(
            textPiece(PieceKind::Credits, creditsLine(material, {choice.quote})));
        drafts.push_back(draft);
    }
    return drafts;
}

bool isOnLocked(const Piece& piece, const Book& book)
{
    const Panel* panel = book.panels.find(piece.panel);
    return panel != nullptr && panel->locked;
}

void withoutPinned(
    std::vector<PanelDraft>& drafts, const std::vector<Piece>& pinned, const Book& book)
{
    const auto isThere = [&](PieceKind kind) {
        return std::any_of(pinned.begin(), pinned.end(), [&](const Piece& piece) {
            return piece.kind == kind && (kind != PieceKind::Title || !isOnLocked(piece, book));
        });
    };
    const bool hasDominant = std::any_of(pinned.begin(), pinned.end(), [&](const Piece& piece) {
        return piece.dominant && !isOnLocked(piece, book);
    });
    const auto signedPanels = std::count_if(drafts.begin(), drafts.end(), [](const auto& draft) {
        return std::any_of(draft.pieces.begin(), draft.pieces.end(), [](const Piece& piece) {
            return piece.kind == PieceKind::Credits;
        });
    });
    for (std::size_t at = 0; at < drafts.size(); ++at) {
        std::erase_if(drafts[at].pieces, [&](const Piece& piece) {
            switch (piece.kind) {
            case PieceKind::Title:
            case PieceKind::Context:
                return at == 0 && isThere(piece.kind);
            case PieceKind::Credits:
                return (at == 0 || signedPanels == 1) && isThere(piece.kind);
            case PieceKind::Interpretation:
            case PieceKind::NextStep:
                return isThere(piece.kind);
            default:
                return at == 0 && piece.dominant && hasDominant;
            }
        });
    }
}

bool dropLongestMoment(PanelDraft& draft, const Book& book, std::vector<Piece>& dropped)
{
    std::map<int, qsizetype> letters;
    for (const Piece& piece : draft.pieces) {
        if (const Quote* quote = book.quotes.find(piece.quote); quote && piece.group > 0)
            letters[piece.group] += quote->words.size();
    }
    if (letters.size() < 2)
        return false;
    const auto longest = std::max_element(letters.begin(),
        letters.end(),
        [](const auto& a, const auto& b) { return a.second < b.second; });
    std::erase_if(draft.pieces, [&](const Piece& piece) {
        const bool goes = piece.group == longest->first;
        if (goes)
            dropped.push_back(piece);
        return goes;
    });
    return true;
}

bool dropLongestQuote(PanelDraft& draft, const Book& book, int least, std::vector<Piece>& dropped)
{
    std::map<int, int> inGroup;
    int quotes = 0;
    for (const Piece& piece : draft.pieces) {
        if (piece.kind != PieceKind::Quote)
            continue;
        ++quotes;
        ++inGroup[piece.group];
    }
    if (quotes <= least)
        return false;
    auto longest = draft.pieces.end();
    qsizetype letters = -1;
    for (auto at = draft.pieces.begin(); at != draft.pieces.end(); ++at) {
        const Quote* quote = book.quotes.find(at->quote);
        const bool mayGo = quote != nullptr && !at->pinned && inGroup[at->group] > 1;
        if (mayGo && quote->words.size() > letters) {
            longest = at;
            letters = quote->words.size();
        }
    }
    if (longest == draft.pieces.end())
        return false;
    dropped.push_back(*longest);
    draft.pieces.erase(longest);
    return true;
}

} // namespace wainscot
