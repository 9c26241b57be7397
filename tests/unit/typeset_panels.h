// Small panels for the tests of the typesetter: an invented class, pieces placed on the grid by
// hand, cleared by the permission rules.
#pragma once

#include "core/permit/cleared.h"
#include "layout/typeset/style.h"

#include <QString>

#include <optional>

namespace wainscot::testing {

class PanelBuilder {
public:
    PanelBuilder(SizeMm size, Mm readingDistance, const QString& pairing, const QString& palette);

    [[nodiscard]] const Display& display() const { return m_display; }
    [[nodiscard]] PanelStyle style() const { return panelStyle(m_display, m_voiceStep); }
    void setVoiceStep(int step) { m_voiceStep = step; }
    // Pieces that follow belong to this group; 0 = none.
    void group(int number) { m_group = number; }
    void language(const QString& tag) { m_language = tag; }

    // Cells in columns and rows of the grid. Each returns the piece for further changes.
    Piece& text(PieceKind kind, RectMm cell, const QString& text, const QString& heading = {});
    Piece& quote(RectMm cell,
        const QString& words,
        const QString& child,
        Dictation dictation = Dictation::Exact);
    // `lines`: how many lines of caption are kept free below; the picture takes the rest.
    Piece& photo(RectMm cell, const QString& caption, int lines, SizePx size = {4000, 3000});
    Piece& work(RectMm cell, SizePx size, const QString& caption = {});

    Piece& last() { return m_pieces.back(); }
    [[nodiscard]] RectMm cell(int column, int row, int columns, int rows) const
    {
        return style().grid.cell(column, row, columns, rows);
    }
    [[nodiscard]] ClearedPanel cleared() const;

private:
    Piece& add(PieceKind kind, RectMm cell);
    ChildId child(const QString& name);

    Book m_book;
    Display m_display;
    Panel m_panel;
    std::vector<Piece> m_pieces;
    int m_voiceStep = 2;
    int m_group = 0;
    QString m_language;
};

// The puddle: four days of one question on an A1 wall panel (14 pieces), and one drawing with its
// words on A3.
[[nodiscard]] PanelBuilder puddlePanel();
[[nodiscard]] PanelBuilder drawingPanel();
// One quote each in Arabic, Devanagari, Chinese and Hebrew, with a title and a context.
[[nodiscard]] PanelBuilder manyScriptsPanel();
// Two titles, contexts and quotes side by side, an invitation: English and Arabic.
[[nodiscard]] PanelBuilder familiesPanel();
// Many quotes and one picture on A1 portrait, in a serif for the children.
[[nodiscard]] PanelBuilder voicesPanel();

} // namespace wainscot::testing
