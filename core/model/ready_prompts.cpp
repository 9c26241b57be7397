#include "core/model/ready_prompts.h"

#include "core/base/wall_text.h"

#include <QRegularExpression>

namespace wainscot {

namespace {

struct ReadyPrompt {
    const char* key;
    WallText text;
    PromptSign sign;
};

class Making {
public:
    explicit Making(const QString& language)
        : m_language(hasWallTexts(language) ? language : QStringLiteral("en"))
    {
    }

    [[nodiscard]] PromptSet operator()(WallText name,
        std::optional<WallText> sense,
        std::pair<int, int> ages, // 0, 0 = all
        std::initializer_list<ReadyPrompt> prompts) const
    {
        PromptSet set;
        set.name = wallText(name, m_language);
        set.language = m_language;
        if (sense)
            set.sense = wallText(*sense, m_language);
        if (ages.second > 0)
            set.ages = wallText(WallText::AgesFromTo, m_language).arg(ages.first).arg(ages.second);
        set.prompts.reserve(prompts.size());
        for (const ReadyPrompt& prompt : prompts)
            set.prompts.push_back({QString::fromLatin1(prompt.key),
                wallText(prompt.text, m_language),
                {},
                prompt.sign});
        return set;
    }

private:
    QString m_language;
};

} // namespace

PromptSet defaultPromptSet(const QString& language)
{
    return Making(language)(WallText::NoticeThinkWonder,
        {},
        {},
        {{"notice", WallText::WhatNotice, PromptSign::Eye},
            {"think", WallText::WhatThink, PromptSign::Thought},
            {"wonder", WallText::WhatWonder, PromptSign::Question}});
}

std::vector<PromptSet> readyPromptSets(const QString& language)
{
    const Making made(language);
    return {defaultPromptSet(language),
        made(WallText::HearThinkWonder,
            WallText::Hearing,
            {},
            {{"hear", WallText::WhatHear, PromptSign::Ear},
                {"think", WallText::WhatMakesIt, PromptSign::Thought},
                {"wonder", WallText::WhatWonder, PromptSign::Question}}),
        made(WallText::TouchThinkWonder,
            WallText::Touch,
            {},
            {{"touch", WallText::HowFeels, PromptSign::Hand},
                {"think", WallText::WhatItMakesThinkOf, PromptSign::Thought},
                {"wonder", WallText::WhatWonder, PromptSign::Question}}),
        made(WallText::TasteAndSmell,
            WallText::TasteOrSmell,
            {},
            {{"taste", WallText::WhatTaste, PromptSign::Mouth},
                {"smell", WallText::WhatSmell, PromptSign::Nose},
                {"think", WallText::WhereFrom, PromptSign::Thought}}),
        made(WallText::OneThing, {}, {2, 4}, {{"show", WallText::ShowMe, PromptSign::Eye}}),
        made(WallText::BeforeAndNow,
            {},
            {6, 8},
            {{"notice", WallText::WhatOthersMissed, PromptSign::Eye},
                {"think", WallText::WhatMakesYouThinkSo, PromptSign::Thought},
                {"change", WallText::ChangedYourMind, PromptSign::None},
                {"find", WallText::HowFindOut, PromptSign::Question}})};
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
