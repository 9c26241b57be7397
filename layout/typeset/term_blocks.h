// What the pages of a term's file are made of: headings, adult's prose, a child's words with the
// name beside them, rows of pictures, and who was heard.
#pragma once

#include "core/permit/cleared_term.h"
#include "layout/typeset/page_flow.h"
#include "layout/typeset/term_text.h"

namespace wainscot {

class TermBlocks {
public:
    // REQUIRES: both outlive it
    TermBlocks(const TermText& text, PageFlow& flow)
        : m_text(text)
        , m_style(text.style())
        , m_flow(flow)
    {
    }

    void title(const QString& text, const QString& bookmark); // of an experience
    void heading(const QString& text, const QString& bookmark); // of a part of it
    void question(const QString& text);
    // A label in the narrow column, the text beside it. Either may be empty.
    void prose(const QString& label, const QString& text, const QString& language = {});
    void saying(const ClearedPiece& piece);
    // As many pictures side by side as make a row of about one height, captions below.
    void pictures(const std::vector<ClearedPiece>& pieces);
    // One picture over the whole width.
    void largePicture(const ClearedPiece& piece, Mm greatestHeight);
    // A row for every child, a mark for every column; what a column stands for is said below where
    // its name is a number.
    void heard(const QStringList& columns, const std::vector<HeardRow>& rows);

private:
    void headingBlock(TextBlock block, int step, Mm before, Role role, std::vector<Bookmark> marks);
    void pictureRow(const std::vector<const ClearedPiece*>& row, Mm height);
    void heardHead(const QStringList& columns);
    void heardRow(const QStringList& columns, const HeardRow& row, bool last, bool keep);
    [[nodiscard]] Mm heardColumn(std::size_t count) const;
    [[nodiscard]] int nextKey() { return ++m_key; }

    const TermText& m_text;
    const TermStyle& m_style;
    PageFlow& m_flow;
    int m_key = 0;
};

// Width to height of what is seen of a picture.
[[nodiscard]] double aspectOf(const ClearedPicture& picture);

} // namespace wainscot
