#include "core/voice/answers.h"

#include <algorithm>
#include <map>

namespace wainscot {

namespace {

bool isKey(const Prompt& prompt, const QString& key)
{
    return prompt.key.compare(key, Qt::CaseInsensitive) == 0;
}

// The marks of all children while they are collected.
class Collecting {
public:
    Collecting(const Book& book, AnswersOfClass& into)
        : m_into(into)
    {
        m_into.children.reserve(book.children.size());
        for (const auto& [id, child] : book.children.rows()) {
            m_rowOf[id] = m_into.children.size();
            m_into.children.push_back({id, std::vector<AnswerMark>(m_into.prompts.size())});
        }
    }

    // REQUIRES: answers before reasons, because an answer outweighs a reason
    void answer(const Quote& quote)
    {
        AnswerMark* mark = markOf(quote.child, quote.prompt);
        if (mark != nullptr && mark->heard == Heard::NotYet)
            *mark = {Heard::Answered, quote.telling};
    }
    void reason(const NoAnswer& missing)
    {
        const Heard why = missing.why == WhyNoAnswer::Passes ? Heard::Passed : Heard::Noted;
        for (const Prompt& prompt : m_into.prompts) {
            AnswerMark* mark = markOf(missing.child, prompt.key);
            const bool meant = missing.prompt.isEmpty() || isKey(prompt, missing.prompt);
            if (mark != nullptr && meant && mark->heard == Heard::NotYet)
                mark->heard = why;
        }
    }

private:
    AnswerMark* markOf(ChildId child, const QString& key)
    {
        const auto row = m_rowOf.find(child);
        const auto& prompts = m_into.prompts;
        const auto at = std::find_if(prompts.begin(), prompts.end(), [&](const Prompt& prompt) {
            return isKey(prompt, key);
        });
        if (row == m_rowOf.end() || at == prompts.end())
            return nullptr;
        return &m_into.children[row->second].marks[std::size_t(at - prompts.begin())];
    }

    AnswersOfClass& m_into;
    std::map<ChildId, std::size_t> m_rowOf;
};

int countOf(const std::vector<AnswerMark>& marks, Heard heard)
{
    return int(std::count_if(marks.begin(), marks.end(), [heard](const AnswerMark& mark) {
        return mark.heard == heard;
    }));
}

} // namespace

int ChildAnswers::answered() const
{
    return countOf(marks, Heard::Answered);
}

int ChildAnswers::open() const
{
    return countOf(marks, Heard::NotYet);
}

const ChildAnswers* AnswersOfClass::of(ChildId child) const
{
    const auto at = std::find_if(
        children.begin(), children.end(), [child](const auto& row) { return row.child == child; });
    return at == children.end() ? nullptr : &*at;
}

int AnswersOfClass::answered() const
{
    int all = 0;
    for (const ChildAnswers& row : children)
        all += row.answered();
    return all;
}

int AnswersOfClass::complete() const
{
    return int(std::count_if(children.begin(), children.end(), [](const ChildAnswers& row) {
        return row.isComplete();
    }));
}

std::vector<Prompt> promptsOf(const Book& book, const Experience& experience)
{
    const PromptSet* set = book.promptSets.find(experience.promptSet);
    return set != nullptr ? set->prompts : defaultPromptSet(book.info.language).prompts;
}

AnswersOfClass answersIn(const Book& book, const Experience& experience)
{
    AnswersOfClass answers;
    answers.prompts = promptsOf(book, experience);
    Collecting collecting(book, answers);
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (quote.experience == experience.id)
            collecting.answer(quote);
    }
    for (const auto& [id, missing] : book.noAnswers.rows()) {
        if (missing.experience == experience.id)
            collecting.reason(missing);
    }
    return answers;
}

ChildId nextToHear(const AnswersOfClass& answers, ChildId child, int prompt)
{
    const auto& rows = answers.children;
    const auto at = std::find_if(
        rows.begin(), rows.end(), [child](const ChildAnswers& row) { return row.child == child; });
    const std::size_t start = at == rows.end() ? rows.size() - 1 : std::size_t(at - rows.begin());
    for (std::size_t step = 1; step <= rows.size(); ++step) {
        const ChildAnswers& row = rows[(start + step) % rows.size()];
        const bool open =
            prompt < 0 ? !row.isComplete() : row.marks[std::size_t(prompt)].heard == Heard::NotYet;
        if (open && row.child != child)
            return row.child;
    }
    return {};
}

} // namespace wainscot
