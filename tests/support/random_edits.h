// Seeded random edits that keep a book whole: everything in it still points at something there.
#pragma once

#include "core/edit/edit.h"

#include <random>

namespace wainscot {

class RandomEdits {
public:
    explicit RandomEdits(unsigned seed)
        : m_random(seed)
    {
    }
    // A random step that touches one or several kinds of value.
    [[nodiscard]] Edit next(const Book& book);
    [[nodiscard]] int number(int from, int to); // both may come out
    [[nodiscard]] QString words();

private:
    void step(EditBuilder& edit, const Book& book);
    void addPeople(EditBuilder& edit, const Book& book);
    void addPermissionRecord(EditBuilder& edit, ChildId child);
    [[nodiscard]] PromptSetId addPrompts(EditBuilder& edit, const Book& book);
    void addExperience(EditBuilder& edit, const Book& book);
    void addToExperience(EditBuilder& edit, const Book& book);
    void addMeeting(EditBuilder& edit, const Book& book, Quote quote);
    void addLookingBack(EditBuilder& edit, ExperienceId experience);
    void addPicture(EditBuilder& edit, const Book& book, ExperienceId experience, ChildId child);
    void addToWall(EditBuilder& edit, const Book& book);
    void addTranslation(EditBuilder& edit, const Book& book);
    void addTemplate(EditBuilder& edit);
    void addWall(EditBuilder& edit, const Book& book);
    void change(EditBuilder& edit, const Book& book);
    void removePiece(EditBuilder& edit, const Book& book);

    std::mt19937 m_random;
};

} // namespace wainscot
