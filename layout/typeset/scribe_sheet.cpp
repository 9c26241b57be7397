#include "layout/typeset/scribe_sheet.h"

#include "layout/typeset/sheet_parts.h"

namespace wainscot {

namespace {

constexpr Mm kNameWidth{38};
constexpr Mm kLeastRow{19}; // two lines of an adult's hand
constexpr Mm kMostRow{30};
constexpr Mm kCell{2}; // from a line of the table to what stands in it
constexpr Mm kNameCap{3.4};
constexpr Mm kQuestionCap{3};
constexpr Mm kTitleCap{4.6};
constexpr Mm kThin{0.3};
constexpr QRgb kLine = 0xff5a6468;

class ScribeSheets {
public:
    ScribeSheets(const ClearedSheets& sheets, SizeMm paper)
        : m_sheets(sheets)
        , m_size(paper.transposed())
    {
        PageDrawing nothing(m_size, sheets.language());
        m_room = SheetParts(nothing, {{}, {}, m_size.width, m_size.height}).body();
        const auto columns = static_cast<double>(sheets.prompts().size());
        m_column = (m_room.width - kNameWidth) / columns;
        for (const ClearedPrompt& prompt : sheets.prompts()) {
            const PromptWording& wording = prompt.wordings.front();
            m_questions.push_back(sheetText(
                wording.text, wording.language, kQuestionCap, m_column - 2 * kCell, Weight::Bold));
            m_heads = std::max(m_heads, m_questions.back().height() + kCell);
        }
        m_fromRight = !m_questions.empty() && m_questions.front().fromRight();
    }

    std::vector<DisplayList> take()
    {
        const std::size_t count = m_sheets.children().size();
        const Mm forRows = m_room.height - m_heads;
        const auto most = std::max<std::size_t>(1, static_cast<std::size_t>(forRows / kLeastRow));
        const std::size_t pages = std::max<std::size_t>(1, (count + most - 1) / most);
        const std::size_t each = (count + pages - 1) / pages;
        const Mm row =
            std::min(kMostRow, forRows / static_cast<double>(std::max<std::size_t>(1, each)));
        std::vector<DisplayList> lists;
        for (std::size_t first = 0; first < count; first += each)
            lists.push_back(page(first, std::min(first + each, count), row));
        return lists;
    }

private:
    DisplayList page(std::size_t first, std::size_t end, Mm row)
    {
        PageDrawing drawing(m_size, m_sheets.language());
        SheetParts parts(drawing, {{}, {}, m_size.width, m_size.height});
        parts.cornerMarks();
        const RectMm head = parts.head();
        const SheetText title = sheetText(
            m_sheets.title(), m_sheets.titleLanguage(), kTitleCap, head.width, Weight::Bold);
        parts.write(title, {head.x, head.y, head.width, title.height()}, Role::Heading1);
        for (std::size_t i = 0; i < m_questions.size(); ++i) {
            const RectMm cell = columnAt(i);
            parts.write(m_questions[i],
                {cell.x, m_room.y + m_heads - m_questions[i].height(), cell.width, m_heads},
                Role::Heading2);
        }
        Mm y = m_room.y + m_heads;
        for (std::size_t i = first; i < end; ++i) {
            drawRow(parts, m_sheets.children()[i], y, row);
            y += row;
        }
        parts.rule({m_room.x, y}, m_room.width, kThin, kLine);
        drawColumns(drawing, m_room.y + m_heads, y);
        parts.foot(codeFor(first, end), aboutSheets(m_sheets), m_sheets.titleLanguage());
        drawing.title(m_sheets.title());
        return drawing.take();
    }

    void drawRow(SheetParts& parts, const ClearedSheetChild& child, Mm y, Mm height)
    {
        parts.rule({m_room.x, y}, m_room.width, kThin, kLine);
        const Mm x = m_fromRight ? m_room.right() - kNameWidth : m_room.x;
        const RectMm cell{x + kCell, y + kCell, kNameWidth - 2 * kCell, height};
        parts.write(sheetText(child.name, m_sheets.language(), kNameCap, cell.width),
            cell,
            Role::Paragraph);
    }

    void drawColumns(PageDrawing& drawing, Mm top, Mm bottom) const
    {
        for (std::size_t i = 0; i < m_questions.size(); ++i) {
            const RectMm cell = columnAt(i);
            const Mm x = m_fromRight ? cell.right() + kCell : cell.x - kCell;
            drawing.fill({x, top, kThin, bottom - top}, kLine);
        }
        for (const Mm x : {m_room.x, m_room.right() - kThin})
            drawing.fill({x, top, kThin, bottom - top}, kLine);
    }

    // What may be written in; questions follow the name in reading direction.
    [[nodiscard]] RectMm columnAt(std::size_t index) const
    {
        const Mm along = kNameWidth + static_cast<double>(index) * m_column;
        const Mm x = m_fromRight ? m_room.right() - along - m_column : m_room.x + along;
        return {x + kCell, m_room.y, m_column - 2 * kCell, m_room.height};
    }

    [[nodiscard]] QString codeFor(std::size_t first, std::size_t end) const
    {
        return QStringLiteral("W1S/%1/%2/%3/%4/%5")
            .arg(m_sheets.experience().number())
            .arg(m_sheets.promptSet().number())
            .arg(m_sheets.children()[first].id.number())
            .arg(m_sheets.children()[end - 1].id.number())
            .arg(end - first);
    }

    const ClearedSheets& m_sheets;
    SizeMm m_size;
    RectMm m_room;
    Mm m_column;
    Mm m_heads;
    bool m_fromRight = false;
    std::vector<SheetText> m_questions;
};

} // namespace

std::vector<DisplayList> scribeSheets(const ClearedSheets& sheets, SizeMm paper)
{
    if (sheets.prompts().empty() || sheets.children().empty())
        return {};
    return ScribeSheets(sheets, paper).take();
}

} // namespace wainscot
