// How children's words are set, and what permission keeps off the panel.
#include "layout/check/rules.h"

#include <algorithm>

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
        if (ratio < limitOf(Limit::QuotesApart).value) {
            notes.add(Limit::QuotesApart,
                next->piece,
                ratio,
                QStringLiteral("%1 begins too near the name above it; whose words are whose?")
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
                    QStringLiteral("%1 has a hyphen the child did not say.")
                        .arg(called(panel, piece.id)));
            }
            const bool alone = line->endsParagraph && line != lines.front()
                && !text.contains(QLatin1Char(' ')) && isLatin(text);
            if (alone && text.size() < limitOf(Limit::LastWord).value
                && wordCount(piece.text) > 3) {
                notes.add(Limit::LastWord,
                    piece.id,
                    static_cast<double>(text.size()),
                    QStringLiteral("The last line of %1 is a single short word.")
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
        if (joined > 0) {
            notes.add(Limit::Ligature,
                piece.id,
                joined,
                QStringLiteral("Letters of %1 are joined into one; a new reader looks for each.")
                    .arg(called(panel, piece.id)));
        }
    }
}

void checkPermission(const PanelFacts& panel, Notebook& notes)
{
    for (const LeftOut& left : panel.leftOut) {
        const bool onlyName = left.what == QLatin1String("name");
        if (!onlyName && !left.piece.isValid())
            continue; // never came onto the panel
        notes.add(
            onlyName ? Limit::NotNamed : Limit::NotCleared, left.piece, std::nullopt, left.why);
    }
}

} // namespace wainscot::check
