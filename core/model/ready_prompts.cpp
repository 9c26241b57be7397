#include "core/model/ready_prompts.h"

#include <QRegularExpression>

namespace wainscot {

namespace {

struct ReadyPrompt {
    const char* key;
    const char* text;
    PromptSign sign;
};

PromptSet made(const char* name,
    const char* sense,
    const char* ages,
    std::initializer_list<ReadyPrompt> prompts)
{
    PromptSet set;
    set.name = QString::fromLatin1(name);
    set.language = QStringLiteral("en");
    set.sense = QString::fromLatin1(sense);
    set.ages = QString::fromLatin1(ages);
    set.prompts.reserve(prompts.size());
    for (const ReadyPrompt& prompt : prompts)
        set.prompts.push_back(
            {QString::fromLatin1(prompt.key), QString::fromLatin1(prompt.text), {}, prompt.sign});
    return set;
}

} // namespace

std::vector<PromptSet> readyPromptSets()
{
    return {defaultPromptSet(),
        made("Hear, think, wonder",
            "hearing",
            "",
            {{"hear", "What do you hear?", PromptSign::Ear},
                {"think", "What do you think makes it?", PromptSign::Thought},
                {"wonder", "What do you wonder?", PromptSign::Question}}),
        made("Touch, think, wonder",
            "touch",
            "",
            {{"touch", "How does it feel?", PromptSign::Hand},
                {"think", "What does it make you think of?", PromptSign::Thought},
                {"wonder", "What do you wonder?", PromptSign::Question}}),
        made("Taste and smell",
            "taste and smell",
            "",
            {{"taste", "What do you taste?", PromptSign::Mouth},
                {"smell", "What do you smell?", PromptSign::Nose},
                {"think", "Where do you think it comes from?", PromptSign::Thought}}),
        made("One thing",
            "",
            "2 to 4",
            {{"show", "Show me something. What is it doing?", PromptSign::Eye}}),
        made("Before and now",
            "",
            "6 to 8",
            {{"notice", "What do you notice that others may have missed?", PromptSign::Eye},
                {"think", "What do you think, and what makes you think so?", PromptSign::Thought},
                {"change", "Has anything changed your mind?", PromptSign::None},
                {"find", "How could we find out?", PromptSign::Question}})};
}

QString keyForPrompt(const QString& text, const PromptSet& in)
{
    static const QRegularExpression notLetters(QStringLiteral("[^\\p{L}]+"));
    QString key;
    for (const QString& word : text.toLower().split(notLetters, Qt::SkipEmptyParts)) {
        if (word.size() > key.size() && word.size() > 3)
            key = word;
    }
    if (key.isEmpty())
        key = QStringLiteral("question");
    QString free = key;
    for (int n = 2; in.find(free) != nullptr; ++n)
        free = key + QString::number(n);
    return free;
}

} // namespace wainscot
