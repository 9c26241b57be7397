// Sheets to answer on, as they may lie open in the classroom.
#pragma once

#include "core/permit/cleared.h"

#include <QDate>

#include <optional>
#include <vector>

namespace wainscot {

struct ClearedPrompt {
    std::vector<PromptWording> wordings; // the first is the one that is printed large
    PromptSign sign = PromptSign::None;
    std::optional<ClearedPicture> picture; // beside the question instead of the sign
};

struct ClearedSheetChild {
    ChildId id; // invalid = a sheet for nobody in particular
    QString name; // empty = may not be named here; a line is left to write on
    std::optional<int> months; // of age
};

// Only permission rules can build one; the writer of sheets takes nothing else.
//
// A sheet lies on the table, so its audience is the classroom, and the whole pile counts as one
// display: a child that is seen on a picture beside a question is named only with the permission
// for both. Who may not be named gets a line instead of the name; the number in the code still
// tells the adult whose sheet it is.
class ClearedSheets {
public:
    // For `children` in that order; none = the whole class. `languages` (BCP 47) in which to ask,
    // the first large; none = the set's own. A wording that is missing falls back to the main one.
    // REQUIRES: the experience is in the book
    static ClearedSheets of(const Book& book,
        ExperienceId experience,
        const std::vector<ChildId>& children,
        const QStringList& languages,
        QDate on);
    // The same without anybody: one sheet with a line for the name.
    static ClearedSheets forNobody(
        const Book& book, ExperienceId experience, const QStringList& languages, QDate on);

    [[nodiscard]] ExperienceId experience() const { return m_experience; }
    [[nodiscard]] PromptSetId promptSet() const { return m_promptSet; } // invalid = the default
    [[nodiscard]] const QString& title() const { return m_title; }
    [[nodiscard]] const QString& language() const { return m_language; } // of the questions
    [[nodiscard]] const QString& titleLanguage() const { return m_titleLanguage; }
    [[nodiscard]] std::optional<QDate> on() const { return m_on; }
    [[nodiscard]] const std::vector<ClearedPrompt>& prompts() const { return m_prompts; }
    [[nodiscard]] const std::vector<ClearedSheetChild>& children() const { return m_children; }
    [[nodiscard]] const std::vector<LeftOut>& leftOut() const { return m_leftOut; }

private:
    friend class SheetClearing;
    ClearedSheets() = default;
    ExperienceId m_experience;
    PromptSetId m_promptSet;
    QString m_title;
    QString m_language;
    QString m_titleLanguage;
    std::optional<QDate> m_on;
    std::vector<ClearedPrompt> m_prompts;
    std::vector<ClearedSheetChild> m_children;
    std::vector<LeftOut> m_leftOut;
};

} // namespace wainscot
