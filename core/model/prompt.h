// What is asked: of the children on the day, and of the adults afterwards.
#pragma once

#include "core/model/ids.h"

#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

// A small drawing beside a prompt, for those who do not read.
enum class PromptSign { None, Eye, Ear, Hand, Mouth, Nose, Thought, Question };

// The same question in another language.
struct PromptWording {
    QString language; // BCP 47
    QString text;
    friend bool operator==(const PromptWording&, const PromptWording&) = default;
};

struct Prompt {
    QString key; // stable, lower case: "notice"
    QString text; // as asked: "What do you notice?"
    std::vector<PromptWording> others{}; // in further languages, in the order they are shown
    PromptSign sign = PromptSign::None;
    PictureId picture{}; // beside the question instead of the sign; invalid = none
    // The wording in a language; the main one when there is no other.
    [[nodiscard]] const QString& textIn(const QString& language) const;
    friend bool operator==(const Prompt&, const Prompt&) = default;
};

enum class Asked { Children, Adults };

struct PromptSet {
    PromptSetId id;
    QString name;
    QString language; // of the prompts' `text`, BCP 47
    std::vector<Prompt> prompts; // in the order they are asked
    Asked asked = Asked::Children;
    QString sense; // what it speaks to, in the teacher's words: "hearing"
    QString ages; // whom it suits, in the teacher's words: "3 to 4"
    [[nodiscard]] const Prompt* find(const QString& key) const; // any letter case
    friend bool operator==(const PromptSet&, const PromptSet&) = default;
};

// notice / think / wonder, in that language where there is a wording (wall_text.h), else in English
[[nodiscard]] PromptSet defaultPromptSet(const QString& language = QStringLiteral("en"));

// "", "eye", "ear", "hand", "mouth", "nose", "thought", "question"
[[nodiscard]] QString nameOf(PromptSign sign);
[[nodiscard]] std::optional<PromptSign> promptSignFromName(const QString& name);
// "children", "adults"
[[nodiscard]] QString nameOf(Asked asked);
[[nodiscard]] std::optional<Asked> askedFromName(const QString& name);

} // namespace wainscot
