#include "app/ui/session/prompt_edits.h"

#include <QCoreApplication>

#include <algorithm>

namespace wainscot::ui {

Edit useSet(const Book& book, const Experience& experience, PromptSet set)
{
    EditBuilder edit(book, QCoreApplication::translate("Ask", "Ask: %1").arg(set.name));
    if (!set.id.isValid()) {
        set.id = edit.newId<PromptSet>();
        edit.put(set);
    }
    Experience asked = experience;
    asked.promptSet = set.id;
    edit.put(asked);
    return edit.take();
}

Edit putSet(const Book& book, const PromptSet& set, const QString& label)
{
    EditBuilder edit(book, label);
    PromptSet kept = set;
    if (!kept.id.isValid())
        kept.id = edit.newId<PromptSet>();
    edit.put(kept);
    return edit.take();
}

int answersOutside(const Book& book, ExperienceId experience, const PromptSet& set)
{
    const auto quotes = quotesOf(book, experience);
    return int(std::count_if(quotes.begin(), quotes.end(), [&](const Quote* quote) {
        return !quote->prompt.isEmpty() && set.find(quote->prompt) == nullptr;
    }));
}

bool isUsed(const Book& book, PromptSetId set)
{
    const auto& all = book.experiences.rows();
    return std::any_of(
        all.begin(), all.end(), [set](const auto& one) { return one.second.promptSet == set; });
}

} // namespace wainscot::ui
