// Lengths of lines, counts of words.
#include "layout/check/rules.h"

#include <QRegularExpression>

#include <algorithm>
#include <map>

#include "core/base/says.h"
#include "core/model/reading_level.h"

namespace wainscot::check {

namespace {

Limit lineLimitOf(Use use)
{
    if (use == Use::Voice)
        return Limit::VoiceLine;
    return use == Use::Small ? Limit::SmallLine : Limit::BodyLine;
}

std::optional<Limit> wordLimitOf(PieceKind kind)
{
    switch (kind) {
    case PieceKind::Context:
        return Limit::ContextWords;
    case PieceKind::Interpretation:
        return Limit::InterpretationWords;
    case PieceKind::NextStep:
        return Limit::NextStepWords;
    case PieceKind::Credits:
        return Limit::CreditsWords;
    default:
        return std::nullopt;
    }
}

bool isAdultText(PieceKind kind)
{
    return kind == PieceKind::Context || kind == PieceKind::Interpretation
        || kind == PieceKind::NextStep || kind == PieceKind::Question
        || kind == PieceKind::Invitation;
}

} // namespace

void checkLineLengths(const PanelFacts& panel, Notebook& notes)
{
    // One finding for each piece: its longest line.
    std::map<PieceId, const TextLine*> longest;
    for (const TextLine& line : panel.lines) {
        if (line.use == Use::Title)
            continue;
        const TextLine*& known = longest[line.piece];
        const double over = line.text.trimmed().size() / panel.limits.of(lineLimitOf(line.use));
        if (known == nullptr
            || over > known->text.trimmed().size() / panel.limits.of(lineLimitOf(known->use)))
            known = &line;
    }
    for (const auto& [piece, line] : longest) {
        const Limit limit = lineLimitOf(line->use);
        const auto characters = static_cast<double>(line->text.trimmed().size());
        if (characters <= panel.limits.of(limit))
            continue;
        notes.add(limit,
            piece,
            characters,
            Says::tr("A line of %1 has %2 characters; beyond %3 the eye loses the next line.")
                .arg(called(panel, piece),
                    number(characters, 0),
                    number(panel.limits.of(limit), 0)));
    }
}

void checkWordCounts(const PanelFacts& panel, Notebook& notes)
{
    for (const ClearedPiece& piece : panel.pieces) {
        if (piece.kind == PieceKind::Quote)
            continue; // a child's words are as long as they are
        const int words = wordCount(piece.text);
        const double most = panel.limits.of(Limit::LabelWords);
        if (words > most) {
            notes.add(Limit::LabelWords,
                piece.id,
                words,
                Says::tr("There are %1 words in %2; people standing read at most %3.")
                    .arg(words)
                    .arg(called(panel, piece.id), number(most, 0)));
            continue;
        }
        const std::optional<Limit> own = wordLimitOf(piece.kind);
        if (own && words > panel.limits.of(*own)) {
            notes.add(*own,
                piece.id,
                words,
                Says::tr("There are %1 words in %2; %3 leave more room for the children's.")
                    .arg(words)
                    .arg(called(panel, piece.id), number(panel.limits.of(*own), 0)));
        }
    }
}

void checkSentences(const PanelFacts& panel, Notebook& notes)
{
    static const QRegularExpression end(
        QStringLiteral("[.!?\\x{2026}\\x{3002}\\x{061F}]+[\\x{201d}\"')]*(\\s|$)"));
    for (const ClearedPiece& piece : panel.pieces) {
        if (!isAdultText(piece.kind))
            continue;
        int longest = 0;
        const QStringList sentences = piece.text.split(end, Qt::SkipEmptyParts);
        for (const QString& sentence : sentences)
            longest = std::max(longest, wordCount(sentence));
        const double most = panel.limits.of(Limit::SentenceWords);
        if (longest > most) {
            notes.add(Limit::SentenceWords,
                piece.id,
                longest,
                Says::tr("A sentence of %1 has %2 words; %3 is the most that reads well "
                         "standing.")
                    .arg(called(panel, piece.id))
                    .arg(longest)
                    .arg(number(most, 0)));
        }
    }
}

void checkReadingLevel(const PanelFacts& panel, Notebook& notes)
{
    constexpr int kEnoughWords = 20; // a shorter text has no level; common practice, no source
    const double most = panel.limits.of(Limit::ReadingLevel);
    for (const ClearedPiece& piece : panel.pieces) {
        if (!isAdultText(piece.kind) || !hasReadingFormula(piece.language))
            continue;
        const TextCounts counts = countText(piece.text);
        const std::optional<double> grade = fleschKincaidGrade(counts);
        if (!grade || counts.words < kEnoughWords || *grade <= most)
            continue;
        notes.add(Limit::ReadingLevel,
            piece.id,
            *grade,
            Says::tr("%1 reads like school grade %2; shorter sentences and words reach more "
                     "families.")
                .arg(called(panel, piece.id), number(*grade)));
    }
}

void checkWordBalance(const PanelFacts& panel, Notebook& notes)
{
    int adult = 0;
    int child = 0;
    for (const ClearedPiece& piece : panel.pieces) {
        if (piece.kind == PieceKind::Quote)
            child += wordCount(piece.text);
        else if (isAdultText(piece.kind) && piece.kind != PieceKind::Invitation)
            adult += wordCount(piece.text);
    }
    if (adult == 0)
        return;
    const double most = panel.limits.of(Limit::WordBalance);
    if (child == 0) {
        notes.add(Limit::WordBalance,
            {},
            std::nullopt,
            Says::tr("No child speaks on this panel; the adult says %1 words.").arg(adult));
        return;
    }
    const double ratio = double(adult) / child;
    if (ratio > most) {
        notes.add(Limit::WordBalance,
            {},
            ratio,
            Says::tr("The adult says %1 words and the children %2; shorten the adult's text "
                     "or let more children speak.")
                .arg(adult)
                .arg(child));
    }
}

} // namespace wainscot::check
