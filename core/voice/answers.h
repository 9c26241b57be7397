// Who has answered which prompt of one experience, and who comes next. Marks, never a measure of a
// child: complete means an answer, a pass or an adult's note why not for every prompt.
#pragma once

#include "core/model/book.h"

#include <vector>

namespace wainscot {

enum class Heard { NotYet, Answered, Passed, Noted };

// What there is of one child on one prompt.
struct AnswerMark {
    Heard heard = Heard::NotYet;
    Telling telling = Telling::Said; // of the first answer
    friend bool operator==(const AnswerMark&, const AnswerMark&) = default;
};

struct ChildAnswers {
    ChildId child;
    std::vector<AnswerMark> marks; // by prompt, in the order they are asked
    [[nodiscard]] int answered() const;
    [[nodiscard]] int open() const; // prompts with neither answer nor reason
    [[nodiscard]] bool isComplete() const { return open() == 0; }
    friend bool operator==(const ChildAnswers&, const ChildAnswers&) = default;
};

struct AnswersOfClass {
    std::vector<Prompt> prompts;
    std::vector<ChildAnswers> children; // the class's order
    [[nodiscard]] const ChildAnswers* of(ChildId child) const;
    [[nodiscard]] int answered() const; // child and prompt pairs
    [[nodiscard]] int asked() const { return int(prompts.size() * children.size()); }
    [[nodiscard]] int complete() const; // children
};

// The prompts of an experience; the default ones when it names no set.
[[nodiscard]] std::vector<Prompt> promptsOf(const Book& book, const Experience& experience);

[[nodiscard]] AnswersOfClass answersIn(const Book& book, const Experience& experience);

// The first child after `child` in the class's order, round the class, who has a prompt open;
// with `prompt` 0 or more: that prompt. Invalid when there is none but the child itself.
[[nodiscard]] ChildId nextToHear(const AnswersOfClass& answers, ChildId child, int prompt = -1);

} // namespace wainscot
