// How children's words are set, and what permission keeps off the panel.
#include "layout/check/rules.h"

#include <QRegularExpression>

#include <algorithm>
#include <set>

#include "core/base/says.h"
#include "core/model/verbatim.h"

namespace wainscot::check {

namespace {

bool overlapsAcross(const TextLine& a, const TextLine& b)
{
    return a.left < b.right && b.left < a.right;
}

// The first line of another quote below a line, in the same columns.
const TextLine* nextQuoteBelow(const PanelFacts& panel, const TextLine& line)
{
    const TextLine* nearest = nullptr;
    for (const TextLine& other : panel.lines) {
        if (other.piece == line.piece || other.kind != PieceKind::Quote
            || other.baseline <= line.baseline || !overlapsAcross(other, line))
            continue;
        if (nearest == nullptr || other.baseline < nearest->baseline)
            nearest = &other;
    }
    return nearest;
}

bool isLatin(const QString& text)
{
    return std::any_of(text.begin(), text.end(), [](QChar c) {
        return c.isLetter() && c.script() == QChar::Script_Latin;
    });
}

// Letters and digits, and the traces of shortening; how they are broken into lines and marked as
// speech does not count. Where letters run from right to left lines are drawn in another order than
// they are read in, so there only what letters there are counts.
QString lettersOf(const QString& text)
{
    QString letters;
    for (const QChar c : text) {
        if (c.isLetterOrNumber() || c.isMark() || c.isSurrogate() || c == u'[' || c == u']'
            || c == QChar(0x2026))
            letters += c;
    }
    if (letters.isRightToLeft())
        std::sort(letters.begin(), letters.end());
    return letters;
}

// Words of one text that the other does not have, at least 1.
int strangeWords(const QString& shown, const QString& words)
{
    static const QRegularExpression apart(QStringLiteral("[^\\p{L}\\p{M}\\p{N}'\\x{2019}]+"));
    const QStringList own = words.split(apart, Qt::SkipEmptyParts);
    const QStringList all = shown.split(apart, Qt::SkipEmptyParts);
    const auto strange = std::count_if(
        all.begin(), all.end(), [&](const QString& word) { return !own.contains(word); });
    return std::max(1, static_cast<int>(strange));
}

} // namespace

void checkQuotesApart(const PanelFacts& panel, Notebook& notes)
{
    for (const ClearedPiece& piece : panel.pieces) {
        if (piece.kind != PieceKind::Quote)
            continue;
        const auto lines = panel.linesOf(piece.id);
        const auto name = std::find_if(lines.begin(), lines.end(), [](const TextLine* line) {
            return line->use == Use::Small;
        });
        if (name == lines.end() || name == lines.begin())
            continue;
        const Mm toName = (*name)->capLine() - (*std::prev(name))->baseline;
        const TextLine* next = nextQuoteBelow(panel, *lines.back());
        if (next == nullptr || toName <= Mm(0))
            continue;
        const double ratio = (next->capLine() - lines.back()->baseline) / toName;
        if (ratio < panel.limits.of(Limit::QuotesApart)) {
            notes.add(Limit::QuotesApart,
                next->piece,
                ratio,
                Says::tr("%1 begins too near the name above it; whose words are whose?")
                    .arg(called(panel, next->piece)));
        }
    }
}

void checkRag(const PanelFacts& panel, Notebook& notes)
{
    for (const ClearedPiece& piece : panel.pieces) {
        if (piece.kind != PieceKind::Quote)
            continue;
        const auto lines = panel.linesOf(piece.id);
        for (const TextLine* line : lines) {
            const QString text = line->text.trimmed();
            if (line->use != Use::Voice)
                continue;
            if (!line->endsParagraph && text.endsWith(QLatin1Char('-'))
                && !piece.text.contains(text.right(std::min<qsizetype>(text.size(), 4)))) {
                notes.add(Limit::AddedHyphen,
                    piece.id,
                    1,
                    Says::tr("%1 has a hyphen the child did not say.")
                        .arg(called(panel, piece.id)));
            }
            const bool alone = line->endsParagraph && line != lines.front()
                && !text.contains(QLatin1Char(' ')) && isLatin(text);
            if (alone && text.size() < panel.limits.of(Limit::LastWord)
                && wordCount(piece.text) > 3) {
                notes.add(Limit::LastWord,
                    piece.id,
                    static_cast<double>(text.size()),
                    Says::tr("The last line of %1 is a single short word.")
                        .arg(called(panel, piece.id)));
            }
        }
    }
}

void checkLigatures(const PanelFacts& panel, Notebook& notes)
{
    for (const ClearedPiece& piece : panel.pieces) {
        if (piece.kind != PieceKind::Quote)
            continue;
        int joined = 0;
        for (const TextLine* line : panel.linesOf(piece.id))
            joined += line->joinedLetters;
        if (joined > panel.limits.of(Limit::Ligature)) {
            notes.add(Limit::Ligature,
                piece.id,
                joined,
                Says::tr("Letters of %1 are joined into one; a new reader looks for each.")
                    .arg(called(panel, piece.id)));
        }
    }
}

void checkDrawnWords(const PanelFacts& panel, Notebook& notes)
{
    for (const ClearedPiece& piece : panel.pieces) {
        if (piece.kind != PieceKind::Quote || piece.text.isEmpty())
            continue;
        QStringList drawn;
        for (const TextLine* line : panel.linesOf(piece.id)) {
            if (line->use == Use::Voice)
                drawn.append(line->text);
        }
        const QString said = drawn.join(QLatin1Char(' '));
        if (lettersOf(said) == lettersOf(piece.text))
            continue;
        notes.add(Limit::NotVerbatim,
            piece.id,
            strangeWords(said, piece.text),
            Says::tr("What is drawn of %1 is not what the child said.")
                .arg(called(panel, piece.id)));
    }
}

void checkShownWords(const Book& book, const PanelFacts& panel, Notebook& notes)
{
    for (const ClearedPiece& cleared : panel.pieces) {
        if (cleared.kind != PieceKind::Quote)
            continue;
        const Piece* piece = book.pieces.find(cleared.id);
        const Quote* quote = piece != nullptr ? book.quotes.find(piece->quote) : nullptr;
        if (quote == nullptr || piece->shownWords.isEmpty()
            || isVerbatim(piece->shownWords, quote->words))
            continue;
        notes.add(Limit::NotVerbatim,
            cleared.id,
            strangeWords(piece->shownWords, quote->words),
            Says::tr("What was shortened of %1 is no longer in the words taken down; all of "
                     "them are shown.")
                .arg(called(panel, cleared.id)));
    }
}

void checkPermission(const PanelFacts& panel, Notebook& notes)
{
    std::set<QString>
        named; // of a child on a panel it is said once, however often the name is there
    for (const LeftOut& left : panel.leftOut) {
        const bool onlyName = left.what == QLatin1String("name");
        if (!onlyName && !left.piece.isValid())
            continue; // never came onto the panel
        if (onlyName && !named.insert(left.why).second)
            continue;
        notes.add(
            onlyName ? Limit::NotNamed : Limit::NotCleared, left.piece, std::nullopt, left.why);
    }
}

} // namespace wainscot::check
