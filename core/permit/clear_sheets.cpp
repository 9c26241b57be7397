#include "core/permit/cleared_sheets.h"

#include "core/permit/piece_clearing.h"
#include "core/permit/reasons.h"

#include <algorithm>

namespace wainscot {

namespace {

PromptSet askedIn(const Book& book, const Experience& experience)
{
    const PromptSet* set = book.promptSets.find(experience.promptSet);
    return set != nullptr ? *set : defaultPromptSet(book.info.language);
}

Display classroom(const Book& book)
{
    Display display;
    display.audience = Audience::Classroom;
    display.language = book.info.language;
    return display;
}

std::vector<PictureId> picturesBeside(const PromptSet& set)
{
    std::vector<PictureId> pictures;
    for (const Prompt& prompt : set.prompts) {
        if (prompt.picture.isValid())
            pictures.push_back(prompt.picture);
    }
    return pictures;
}

} // namespace

class SheetClearing {
public:
    SheetClearing(const Book& book, const Experience& experience, QStringList languages, QDate on)
        : m_book(book)
        , m_set(askedIn(book, experience))
        , m_languages(std::move(languages))
        , m_today(on)
        , m_rules(book, classroom(book), on, picturesBeside(m_set))
    {
        if (m_languages.isEmpty())
            m_languages.append(m_set.language);
        m_sheets.m_experience = experience.id;
        m_sheets.m_promptSet = m_set.id;
        m_sheets.m_title = m_rules.withPermittedNames(experience.title, false);
        m_sheets.m_language = m_languages.first();
        m_sheets.m_titleLanguage = languageOf(book, experience);
        m_sheets.m_on = experience.on;
        for (const Prompt& prompt : m_set.prompts)
            m_sheets.m_prompts.push_back(cleared(prompt));
    }

    void add(const Child& child)
    {
        ClearedSheetChild shown{child.id, displayName(child), std::nullopt};
        if (m_rules.namingRefusal(child)) {
            shown.name.clear();
            addLeftOut(m_sheets.m_leftOut,
                {QStringLiteral("name"),
                    child.id.number(),
                    {},
                    reasons::lineForName(child, Audience::Classroom)});
        }
        if (child.born)
            shown.months = ageInMonths(*child.born, m_today);
        m_sheets.m_children.push_back(shown);
    }
    void addNobody() { m_sheets.m_children.emplace_back(); }

    ClearedSheets take() { return std::move(m_sheets); }

private:
    ClearedPrompt cleared(const Prompt& prompt)
    {
        ClearedPrompt shown;
        shown.sign = prompt.sign;
        for (const QString& language : m_languages) {
            const QString& words = prompt.textIn(language);
            const bool own = words == prompt.text;
            const bool known = std::any_of(shown.wordings.begin(),
                shown.wordings.end(),
                [&](const PromptWording& one) { return one.text == words; });
            if (!known)
                shown.wordings.push_back(
                    {own ? m_set.language : language, m_rules.withPermittedNames(words, false)});
        }
        if (prompt.picture.isValid())
            addPicture(prompt, shown);
        return shown;
    }

    void addPicture(const Prompt& prompt, ClearedPrompt& shown)
    {
        const Picture* picture = m_book.pictures.find(prompt.picture);
        if (picture == nullptr)
            return; // taken out of the book: the sign stands there again
        if (const auto why = m_rules.refusal(*picture)) {
            const bool photo = picture->kind == PictureKind::Photo;
            addLeftOut(m_sheets.m_leftOut,
                {photo ? QStringLiteral("photo") : QStringLiteral("work"),
                    picture->id.number(),
                    {},
                    *why});
            return;
        }
        shown.picture = pixelsOf(*picture);
        shown.picture->alternative = m_rules.withPermittedNames(prompt.text, false);
    }

    const Book& m_book;
    PromptSet m_set;
    QStringList m_languages;
    QDate m_today;
    PermissionRules m_rules;
    ClearedSheets m_sheets;
};

ClearedSheets ClearedSheets::of(const Book& book,
    ExperienceId experience,
    const std::vector<ChildId>& children,
    const QStringList& languages,
    QDate on)
{
    SheetClearing clearing(book, *book.experiences.find(experience), languages, on);
    if (children.empty()) {
        for (const auto& [id, child] : book.children.rows())
            clearing.add(child);
    }
    for (const ChildId id : children) {
        if (const Child* child = book.children.find(id))
            clearing.add(*child);
    }
    return clearing.take();
}

ClearedSheets ClearedSheets::forNobody(
    const Book& book, ExperienceId experience, const QStringList& languages, QDate on)
{
    SheetClearing clearing(book, *book.experiences.find(experience), languages, on);
    clearing.addNobody();
    return clearing.take();
}

} // namespace wainscot
