#include "layout/typeset/measurer.h"

#include "layout/typeset/piece_text.h"

#include <QLocale>

#include <cmath>
#include <map>
#include <mutex>
#include <optional>

namespace wainscot {

namespace {

constexpr double kMarkInGutter = 0.70; // gutters a hanging mark may take

// One piece, ready to be broken at any width.
struct Measured {
    std::optional<TitleTexts> title;
    PieceText text; // of everything else
    PieceText second; // a caption's other language
    Mm between; // two captions side by side
    Mm indent;
    [[nodiscard]] const PieceText& at(Mm width) const
    {
        return title ? title->at(title->wantedStep(width)) : text;
    }
};

Mm indentFor(const PieceText& text, const Grid& grid, bool pageFromRight)
{
    if (text.parts.empty() || !text.parts.front().mark)
        return {};
    const TextBlock& mark = *text.parts.front().mark;
    const bool against = text.fromRight != pageFromRight;
    return against || mark.widestUnit() > kMarkInGutter * grid.gutter ? grid.gutter : Mm();
}

// As a reader counts: two ideographs are about a word.
int wordsIn(const QString& text)
{
    int words = 0;
    int ideographs = 0;
    bool inside = false;
    for (const QChar c : text) {
        const bool ideograph = c.script() == QChar::Script_Han;
        ideographs += ideograph ? 1 : 0;
        const bool begins =
            !inside && !ideograph && c.isLetterOrNumber(); // after an opening mark too
        words += begins ? 1 : 0;
        inside = begins || (inside && !ideograph && !c.isSpace());
    }
    return words + ideographs / 2;
}

} // namespace

struct PanelMeasurer::State {
    std::map<engine::ItemId, Measured> pieces;
    std::mutex mutex;
    std::map<std::pair<engine::ItemId, long>, engine::TextMetrics> known;
};

PanelMeasurer::PanelMeasurer(
    const std::vector<ClearedPiece>& pieces, const PanelStyle& style, const QString& language)
    : m_state(std::make_unique<State>())
{
    const bool fromRight = QLocale(language).textDirection() == Qt::RightToLeft;
    for (const ClearedPiece& piece : pieces) {
        Measured measured;
        if (piece.kind == PieceKind::Title)
            measured.title.emplace(piece, style, language);
        measured.text = pieceText(piece, style, language, style.scale.titleStep);
        measured.text.spec.words = wordsIn(piece.text);
        measured.second = secondCaption(piece, style);
        measured.between = style.grid.gutter;
        measured.indent = indentFor(measured.text, style.grid, fromRight);
        m_state->pieces.emplace(piece.id.number(), std::move(measured));
    }
}

PanelMeasurer::~PanelMeasurer() = default;

engine::TextMetrics PanelMeasurer::measure(engine::ItemId item, Mm width) const
{
    const auto at = m_state->pieces.find(item);
    if (at == m_state->pieces.end())
        return {};
    // Widths are told apart to a thousandth of a millimetre.
    const std::pair key{item, std::lround(width.value() * 1000)};
    {
        const std::lock_guard lock(m_state->mutex);
        const auto known = m_state->known.find(key);
        if (known != m_state->known.end())
            return known->second;
    }
    const PieceText& text = at->second.at(width);
    const bool two = !at->second.second.parts.empty();
    const Mm own = two ? (width - at->second.between) / 2 : width;
    PieceLines lines = pieceLines(text, own);
    if (two) {
        const PieceLines other = pieceLines(at->second.second, own);
        lines.height = std::max(lines.height, other.height);
        lines.lines = std::max(lines.lines, other.lines);
        lines.fits = lines.fits && other.fits;
        lines.usedWidth = width;
    }
    engine::TextMetrics metrics;
    metrics.lines = lines.lines;
    metrics.usedWidth = lines.usedWidth;
    metrics.fits = lines.fits || text.parts.empty();
    if (!text.parts.empty())
        metrics.height = lines.height;
    const std::lock_guard lock(m_state->mutex);
    return m_state->known.emplace(key, metrics).first->second;
}

engine::TextSpec PanelMeasurer::spec(engine::ItemId item) const
{
    const auto at = m_state->pieces.find(item);
    return at == m_state->pieces.end() ? engine::TextSpec{} : at->second.text.spec;
}

Mm PanelMeasurer::indent(engine::ItemId item) const
{
    const auto at = m_state->pieces.find(item);
    return at == m_state->pieces.end() ? Mm() : at->second.indent;
}

} // namespace wainscot
