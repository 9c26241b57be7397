#include "layout/typeset/answer_sheet.h"

#include "core/base/in_words.h"
#include "core/base/wall_text.h"
#include "layout/typeset/scribe_sheet.h"
#include "layout/typeset/sheet_parts.h"

#include <QLocale>

#include <array>

namespace wainscot {

namespace {

constexpr Mm kBetweenQuestions{6};
constexpr Mm kToBox{2.5}; // from a question to its box
constexpr Mm kFromSign{4}; // from a sign to its question
constexpr Mm kLineInset{6};
constexpr QRgb kLineColour = 0xff8d9599;
constexpr double kFurtherLanguage = 0.72; // of the first one's size
constexpr double kOnHalf = 0.82; // type and signs on half a page
constexpr std::array kNameCaps{Mm(7), Mm(5.6), Mm(4.4)}; // the first in which it is one line

// A question as it stands over its box.
struct Question {
    const ClearedPrompt* prompt = nullptr;
    std::vector<SheetText> wordings;
    SizeMm sign; // none = empty
    [[nodiscard]] Mm height() const
    {
        Mm all;
        for (const SheetText& wording : wordings)
            all += wording.height();
        return std::max(all, sign.height);
    }
};

class ChildSheets {
public:
    ChildSheets(const ClearedSheets& sheets, const AnswerSheetWishes& wishes)
        : m_sheets(sheets)
        , m_wishes(wishes)
        , m_page(wishes.perPage == 2 ? wishes.paper.transposed() : wishes.paper)
        , m_size{m_page.width / wishes.perPage, m_page.height}
        , m_scale(wishes.perPage == 2 ? kOnHalf : 1)
        , m_drawing(m_page, sheets.language())
    {
    }

    std::vector<DisplayList> take()
    {
        for (const ClearedSheetChild& child : m_sheets.children())
            add(child);
        finishPage();
        return std::move(m_pages);
    }

private:
    // As many pages as the boxes need, about as many questions on each.
    void add(const ClearedSheetChild& child)
    {
        const AgeMeasures measures = measuresForAge(child.months);
        const std::vector<Question> questions = measured(measures);
        const std::size_t count = questions.size();
        std::size_t pages = 1;
        while (pages < count && !fit(questions, (count + pages - 1) / pages, measures.leastBox))
            ++pages;
        const std::size_t each = (count + pages - 1) / pages;
        for (std::size_t first = 0; first < count; first += each) {
            const std::size_t end = std::min(first + each, count);
            draw(child, measures, questions, first, end);
        }
    }

    [[nodiscard]] RectMm body()
    {
        return SheetParts(m_drawing, {{}, {}, m_size.width, m_size.height}).body();
    }

    std::vector<Question> measured(const AgeMeasures& measures)
    {
        const Mm width = body().width;
        std::vector<Question> questions;
        questions.reserve(m_sheets.prompts().size());
        for (const ClearedPrompt& prompt : m_sheets.prompts()) {
            Question question;
            question.prompt = &prompt;
            if (prompt.picture)
                question.sign = {m_scale * Mm(34), m_scale * Mm(26)};
            else if (prompt.sign != PromptSign::None)
                question.sign = {m_scale * Mm(16), m_scale * Mm(16)};
            const Mm beside = question.sign.isEmpty() ? Mm() : question.sign.width + kFromSign;
            Mm cap = m_scale * measures.promptCap;
            for (const PromptWording& wording : prompt.wordings) {
                question.wordings.push_back(
                    sheetText(wording.text, wording.language, cap, width - beside));
                cap = m_scale * kFurtherLanguage * measures.promptCap;
            }
            questions.push_back(std::move(question));
        }
        return questions;
    }

    bool fit(const std::vector<Question>& questions, std::size_t each, Mm leastBox)
    {
        for (std::size_t first = 0; first < questions.size(); first += each) {
            const std::size_t end = std::min(first + each, questions.size());
            if (boxHeight(questions, first, end) < leastBox)
                return false;
        }
        return true;
    }

    Mm boxHeight(const std::vector<Question>& questions, std::size_t first, std::size_t end)
    {
        const auto count = static_cast<double>(end - first);
        Mm left = body().height - (count - 1) * kBetweenQuestions;
        for (std::size_t i = first; i < end; ++i)
            left -= questions[i].height() + kToBox;
        return left / count;
    }

    void draw(const ClearedSheetChild& child,
        const AgeMeasures& measures,
        const std::vector<Question>& questions,
        std::size_t first,
        std::size_t end)
    {
        if (m_onPage == m_wishes.perPage)
            finishPage();
        const RectMm sheet{m_onPage * m_size.width, Mm(), m_size.width, m_size.height};
        ++m_onPage;
        SheetParts parts(m_drawing, sheet);
        parts.cornerMarks();
        drawName(parts, child);
        const Mm box = boxHeight(questions, first, end);
        RectMm room = parts.body();
        for (std::size_t i = first; i < end; ++i) {
            drawQuestion(parts, questions[i], room);
            const Mm top = room.y + questions[i].height() + kToBox;
            parts.frame({room.x, top, room.width, box});
            if (m_wishes.lines)
                drawLines(parts, {room.x, top, room.width, box}, measures.lineDistance);
            room.y = top + box + kBetweenQuestions;
        }
        parts.foot(codeFor(child, first, end), about(first, end), m_sheets.titleLanguage());
    }

    // Their own name, to read and to copy; or a line for it.
    void drawName(SheetParts& parts, const ClearedSheetChild& child)
    {
        const RectMm head = parts.head();
        for (const Mm cap : kNameCaps) {
            const SheetText name = sheetText(child.name, m_sheets.language(), cap, head.width);
            if (name.breaks.ends.size() > 1 && cap != kNameCaps.back())
                continue;
            parts.write(name,
                {head.x, head.bottom() - name.height() - Mm(0.5), head.width, name.height()},
                Role::Heading1);
            break;
        }
        parts.rule({head.x, head.bottom()}, head.width, Mm(0.4), kLineColour);
    }

    static void drawQuestion(SheetParts& parts, const Question& question, const RectMm& room)
    {
        const bool fromRight = !question.wordings.empty() && question.wordings.front().fromRight();
        const Mm height = question.height();
        RectMm words = room;
        if (!question.sign.isEmpty()) {
            const Mm beside = question.sign.width + kFromSign;
            words.width -= beside;
            words.x += fromRight ? Mm() : beside;
            const Mm x = fromRight ? room.right() - question.sign.width : room.x;
            parts.beside(*question.prompt, {x, room.y, question.sign.width, question.sign.height});
        }
        Mm all;
        for (const SheetText& wording : question.wordings)
            all += wording.height();
        words.y += (height - all) / 2;
        for (const SheetText& wording : question.wordings) {
            parts.write(wording, words, Role::Paragraph);
            words.y += wording.height();
        }
    }

    static void drawLines(SheetParts& parts, const RectMm& box, Mm distance)
    {
        for (Mm y = box.y + distance; y < box.bottom() - Mm(4); y += distance)
            parts.rule({box.x + kLineInset, y}, box.width - 2 * kLineInset, Mm(0.3), kLineColour);
    }

    [[nodiscard]] QString codeFor(
        const ClearedSheetChild& child, std::size_t first, std::size_t end) const
    {
        return QStringLiteral("W1A/%1/%2/%3/%4/%5")
            .arg(m_sheets.experience().number())
            .arg(child.id.number())
            .arg(m_sheets.promptSet().number())
            .arg(first + 1)
            .arg(end - first);
    }

    [[nodiscard]] QString about(std::size_t first, std::size_t end) const
    {
        const std::size_t count = m_sheets.prompts().size();
        if (end - first == count)
            return aboutSheets(m_sheets);
        const QString which = end - first == 1 ? QString::number(end)
                                               : QStringLiteral("%1-%2").arg(first + 1).arg(end);
        return QStringLiteral("%1  \u00b7  %2 / %3").arg(aboutSheets(m_sheets), which).arg(count);
    }

    void finishPage()
    {
        if (m_onPage == 0)
            return;
        if (m_wishes.perPage == 2)
            cutLine();
        m_drawing.title(m_sheets.title());
        m_pages.push_back(m_drawing.take());
        m_drawing = PageDrawing(m_page, m_sheets.language());
        m_onPage = 0;
    }

    void cutLine()
    {
        constexpr Mm kDash{2};
        for (Mm y = kDash; y < m_page.height - kDash; y += 2 * kDash)
            m_drawing.fill({m_size.width - Mm(0.1), y, Mm(0.2), kDash}, kLineColour);
    }

    const ClearedSheets& m_sheets;
    const AnswerSheetWishes& m_wishes;
    SizeMm m_page;
    SizeMm m_size; // of one sheet
    double m_scale;
    PageDrawing m_drawing;
    int m_onPage = 0; // sheets
    std::vector<DisplayList> m_pages;
};

} // namespace

AgeMeasures measuresForAge(std::optional<int> months)
{
    struct Row {
        int below = 0; // months
        AgeMeasures measures;
    };
    static constexpr std::array kRows{Row{48, {Mm(85), Mm(24), Mm(6.4)}},
        Row{72, {Mm(48), Mm(20), Mm(6.4)}},
        Row{96, {Mm(40), Mm(14), Mm(5.2)}}};
    constexpr int kUsualMonths = 60; // where no birth date is known
    for (const Row& row : kRows) {
        if (months.value_or(kUsualMonths) < row.below)
            return row.measures;
    }
    return {Mm(34), Mm(10), Mm(4.4)};
}

QString aboutSheets(const ClearedSheets& sheets)
{
    if (!sheets.on())
        return sheets.title();
    const QString& language = sheets.titleLanguage();
    const QString day = hasWallTexts(language)
        ? dateInWords(*sheets.on(), language)
        : QLocale(language).toString(*sheets.on(), QStringLiteral("d MMMM yyyy"));
    return QStringLiteral("%1  \u00b7  %2").arg(sheets.title(), day);
}

std::vector<DisplayList> answerSheets(const ClearedSheets& sheets, const AnswerSheetWishes& wishes)
{
    std::vector<DisplayList> pages;
    if (wishes.forChildren)
        pages = ChildSheets(sheets, wishes).take();
    if (wishes.forScribe) {
        for (DisplayList& page : scribeSheets(sheets, wishes.paper))
            pages.push_back(std::move(page));
    }
    return pages;
}

} // namespace wainscot
