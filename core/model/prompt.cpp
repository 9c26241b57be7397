#include "core/model/prompt.h"

#include <algorithm>
#include <array>

namespace wainscot {

namespace {

constexpr std::array kSigns{PromptSign::None,
    PromptSign::Eye,
    PromptSign::Ear,
    PromptSign::Hand,
    PromptSign::Mouth,
    PromptSign::Nose,
    PromptSign::Thought,
    PromptSign::Question};

} // namespace

const QString& Prompt::textIn(const QString& language) const
{
    const auto at = std::find_if(others.begin(), others.end(), [&](const PromptWording& wording) {
        return wording.language.compare(language, Qt::CaseInsensitive) == 0;
    });
    return at == others.end() ? text : at->text;
}

const Prompt* PromptSet::find(const QString& key) const
{
    const QString wanted = key.trimmed();
    const auto at = std::find_if(prompts.begin(), prompts.end(), [&](const Prompt& prompt) {
        return prompt.key.compare(wanted, Qt::CaseInsensitive) == 0;
    });
    return at == prompts.end() ? nullptr : &*at;
}

QString nameOf(PromptSign sign)
{
    switch (sign) {
    case PromptSign::None:
        return QStringLiteral("");
    case PromptSign::Eye:
        return QStringLiteral("eye");
    case PromptSign::Ear:
        return QStringLiteral("ear");
    case PromptSign::Hand:
        return QStringLiteral("hand");
    case PromptSign::Mouth:
        return QStringLiteral("mouth");
    case PromptSign::Nose:
        return QStringLiteral("nose");
    case PromptSign::Thought:
        return QStringLiteral("thought");
    case PromptSign::Question:
        return QStringLiteral("question");
    }
    return {};
}

std::optional<PromptSign> promptSignFromName(const QString& name)
{
    const auto* const at = std::find_if(
        kSigns.begin(), kSigns.end(), [&](PromptSign sign) { return nameOf(sign) == name; });
    return at == kSigns.end() ? std::nullopt : std::optional(*at);
}

QString nameOf(Asked asked)
{
    return asked == Asked::Children ? QStringLiteral("children") : QStringLiteral("adults");
}

std::optional<Asked> askedFromName(const QString& name)
{
    for (const Asked asked : {Asked::Children, Asked::Adults}) {
        if (nameOf(asked) == name)
            return asked;
    }
    return std::nullopt;
}

} // namespace wainscot
