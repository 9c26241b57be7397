#include "layout/typeset/typesetter.h"

#include "layout/typeset/group_rules.h"
#include "layout/typeset/hanging_mark.h"
#include "layout/typeset/piece_text.h"
#include "layout/typeset/thread.h"
#include "layout/typeset/writing_lines.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr double kMatBorder = 0.6; // gutters
constexpr double kRuleStrength = 0.55; // adult colour on white
constexpr double kWritingLineStrength = 0.45;

// No transparency on paper: a colour that looks as if laid over white at some strength.
QRgb onWhite(QRgb colour, double strength)
{
    const auto mixed = [&](int part) {
        return static_cast<int>(std::lround(255 - (255 - part) * strength));
    };
    return qRgb(mixed(qRed(colour)), mixed(qGreen(colour)), mixed(qBlue(colour)));
}

// The largest rectangle of a shape (width : height) at the top left of a room.
RectMm fitted(const RectMm& room, double aspect)
{
    const Mm width = std::min(room.width, aspect * room.height);
    return {room.x, room.y, width, width / aspect};
}

double aspectOf(const ClearedPicture& picture)
{
    const double width = picture.size.width * picture.visible.width;
    const double height = picture.size.height * picture.visible.height;
    return width > 0 && height > 0 ? width / height : 1;
}

class PanelTypesetter {
public:
    PanelTypesetter(const ClearedPanel& panel, const PanelStyle& style)
        : m_panel(panel)
        , m_style(style)
    {
        m_list.size = panel.size();
        m_list.title = panel.title();
        m_list.language = panel.display().language;
        Element document;
        document.role = Role::Document;
        document.parent = -1;
        document.language = m_list.language;
        m_list.elements.push_back(document);
    }

    DisplayList take()
    {
        for (const RectMm& rule : groupRules(m_panel.pieces(), m_style.grid, m_style.parting))
            fill({}, rule, onWhite(m_style.palette.adult, kRuleStrength));
        if (m_style.thread)
            setThread();
        const int titleStep = commonTitleStep();
        for (const ClearedPiece& piece : m_panel.pieces()) {
            if (piece.cell.isEmpty())
                continue;
            const PieceText text = pieceText(piece, m_style, m_list.language, titleStep);
            if (isPicture(piece.kind))
                setPicture(piece, text);
            else
                setText(piece, text);
        }
        for (const WritingLine& line : writingLines(m_writing))
            fill(line.piece, line.rect, onWhite(m_style.palette.adult, kWritingLineStrength));
        return std::move(m_list);
    }

private:
    // Titles in two languages have one size.
    [[nodiscard]] int commonTitleStep() const
    {
        int step = titleSteps(m_style.grid.panel).front();
        for (const ClearedPiece& piece : m_panel.pieces()) {
            if (piece.kind == PieceKind::Title && !piece.cell.isEmpty())
                step = std::min(step, wainscot::titleStep(piece, m_style));
        }
        return step;
    }

    void fill(PieceId piece, const RectMm& rect, QRgb colour)
    {
        m_list.marks.push_back({-1, piece, Fill{rect, colour}});
    }

    int addElement(const ClearedPiece& piece, Role role, int parent = 0)
    {
        Element element;
        element.role = role;
        element.parent = parent;
        element.piece = piece.id;
        if (piece.language != m_list.language)
            element.language = piece.language;
        m_list.elements.push_back(element);
        return static_cast<int>(m_list.elements.size()) - 1;
    }

    void setText(const ClearedPiece& piece, const PieceText& text)
    {
        if (text.parts.empty())
            return;
        const PieceLines lines = pieceLines(text, piece.cell.width);
        RectMm room = piece.cell;
        if (text.atFoot)
            room.y = std::max(room.y, room.bottom() - lines.height);
        if (text.tint) {
            const RectMm ground{
                room.x, room.y, room.width, huggedHeight(lines.height, m_style.grid)};
            fill(piece.id, ground, *text.tint);
        }
        const Mm end = setParts(piece, text, lines, room, 0);
        if (text.writing)
            m_writing.push_back({piece.id, piece.cell, end + text.writing->first, *text.writing});
    }

    // Returns the last baseline.
    Mm setParts(const ClearedPiece& piece,
        const PieceText& text,
        const PieceLines& lines,
        const RectMm& room,
        int parent)
    {
        TextBlock::Place place;
        place.edgeIsRight = text.fromRight;
        place.edge = text.fromRight ? room.right() - text.padding : room.x + text.padding;
        Mm at = room.y + text.padding;
        int element = -1;
        for (std::size_t i = 0; i < text.parts.size(); ++i) {
            const TextPart& part = text.parts[i];
            if (part.block.isEmpty())
                continue;
            if (element < 0 || !part.joins)
                element = addElement(piece, part.role, parent);
            else
                joinLines();
            place.firstBaseline = at + part.above + part.cap;
            place.lead = part.lead;
            if (part.mark)
                setMark(piece, *part.mark, part.cap, place, element);
            add(piece, element, part.block.draw(lines.parts[i], place));
            at = place.firstBaseline
                + static_cast<double>(lines.parts[i].ends.size() - 1) * part.lead;
        }
        return at;
    }

    void add(const ClearedPiece& piece, int element, TextBlock::Drawn drawn)
    {
        for (GlyphRun& run : drawn.runs)
            m_list.marks.push_back({element, piece.id, std::move(run)});
        for (FontGap& gap : drawn.gaps) {
            gap.piece = piece.id;
            m_list.fontGaps.push_back(std::move(gap));
        }
    }

    // Text goes on in the same element: the last word is parted from what follows.
    void joinLines()
    {
        if (m_list.marks.empty())
            return;
        if (auto* run = std::get_if<GlyphRun>(&m_list.marks.back().shape))
            run->endsLine = true;
    }

    void setMark(const ClearedPiece& piece,
        const TextBlock& mark,
        Mm cap,
        const TextBlock::Place& place,
        int element)
    {
        add(piece, element, hangingMark(mark, m_style.pairing.voiceFamily, cap, place));
    }

    void setThread()
    {
        const Thread thread = threadOf(m_panel.pieces(), m_style);
        for (const Fill& line : thread.lines)
            m_list.marks.push_back({-1, {}, line});
        for (const Disc& knot : thread.knots)
            m_list.marks.push_back({-1, {}, knot});
    }

    void setPicture(const ClearedPiece& piece, const PieceText& text)
    {
        if (!piece.picture)
            return;
        const Mm width = captionWidth(piece, m_style, piece.cell.width);
        const PieceLines lines = pieceLines(text, width);
        const bool sample = piece.kind == PieceKind::Work;
        const Mm border = sample ? kMatBorder * m_style.grid.gutter : Mm();
        RectMm place = piece.picturePlace;
        if (place.isEmpty()) {
            RectMm room = piece.cell;
            if (!text.parts.empty())
                room.height -= text.spec.captionGap + lines.height; // of the first language
            room = room.grown(-border);
            place = sample && !room.isEmpty() ? fitted(room, aspectOf(*piece.picture)) : room;
        }
        if (place.isEmpty())
            return;
        if (sample)
            fill(piece.id, place.grown(border), styleOf(piece, m_style).palette.tint1);
        const int figure = addElement(piece, Role::Figure);
        m_list.elements.back().alternative = piece.picture->alternative;
        m_list.elements.back().bounds = place;
        m_list.marks.push_back({figure, piece.id, PlacedPicture{*piece.picture, place}});
        const Mm edge = place.grown(border).bottom();
        const RectMm below{piece.cell.x, edge + text.spec.captionGap, width, lines.height};
        setParts(piece, text, lines, below, figure);
        const PieceText other = secondCaption(piece, m_style);
        if (other.parts.empty())
            return;
        ClearedPiece second = piece;
        second.language = piece.secondLanguage;
        setParts(second,
            other,
            pieceLines(other, width),
            {piece.cell.right() - width, below.y, width, lines.height},
            figure);
    }

    const ClearedPanel& m_panel;
    const PanelStyle& m_style;
    DisplayList m_list;
    std::vector<WritingRoom> m_writing;
};

} // namespace

DisplayList typeset(const ClearedPanel& panel, const PanelStyle& style)
{
    return PanelTypesetter(panel, style).take();
}

int titleStep(const ClearedPiece& title, const PanelStyle& style)
{
    return TitleTexts(title, style, title.language).stepFor(title.cell.size());
}

} // namespace wainscot
