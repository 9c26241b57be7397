// The kinds of text in a term's file, as blocks that can be broken and drawn.
#pragma once

#include "layout/typeset/term_style.h"
#include "layout/typeset/text_block.h"

namespace wainscot {

class TermText {
public:
    // `language` of what is said in the book's own words; texts may have another.
    TermText(const TermStyle& style, QString language);

    [[nodiscard]] TextBlock title(const QString& text, int step) const; // bold, voice face
    [[nodiscard]] TextBlock body(const QString& text, const QString& language = {}) const;
    [[nodiscard]] TextBlock strong(const QString& text) const; // body, bold
    [[nodiscard]] TextBlock caption(const QString& text, QRgb colour) const;
    [[nodiscard]] TextBlock label(const QString& text) const; // caption, bold, accent
    // A child's words with the mark that closes them. An adult's wording of them has the adult's
    // colour.
    [[nodiscard]] TextBlock words(
        const QString& paragraph, const QString& language, bool last, bool translated) const;
    [[nodiscard]] TextBlock openingMark(
        const QString& paragraph, const QString& language, bool translated) const;

    [[nodiscard]] LineBreaks lines(const TextBlock& block, Mm width) const;
    [[nodiscard]] LineBreaks wordLines(const TextBlock& block, Mm width) const;
    [[nodiscard]] LineBreaks oneLine(const TextBlock& block) const;

    [[nodiscard]] Mm bodyLead() const;
    [[nodiscard]] Mm captionLead() const;
    [[nodiscard]] Mm wordsLead(const QString& paragraph) const;
    [[nodiscard]] Mm titleLead(int step) const;
    [[nodiscard]] const TermStyle& style() const { return m_style; }
    [[nodiscard]] const QString& language() const { return m_language; }

private:
    [[nodiscard]] TextSpan span(const QString& text,
        Voice voice,
        TypeRole role,
        Weight weight,
        Mm cap,
        QRgb colour,
        const QString& language) const;

    const TermStyle& m_style;
    QString m_language;
};

} // namespace wainscot
