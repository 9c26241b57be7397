// One class's record for a year or term, as plain values in memory.
#pragma once

#include "core/model/child.h"
#include "core/model/display.h"
#include "core/model/experience.h"
#include "core/model/meeting.h"
#include "core/model/panel_template.h"
#include "core/model/permission_record.h"
#include "core/model/prompt.h"
#include "core/model/quote.h"
#include "core/model/wall.h"

#include <map>
#include <vector>

namespace wainscot {

// Values of one kind by id. Numbers are handed out once; a removed one may come back through undo.
template <class T> class Table {
public:
    using ValueType = T;
    using IdType = decltype(T::id);

    [[nodiscard]] const T* find(IdType id) const
    {
        const auto at = m_rows.find(id);
        return at == m_rows.end() ? nullptr : &at->second;
    }
    [[nodiscard]] bool contains(IdType id) const { return m_rows.count(id) > 0; }
    [[nodiscard]] std::size_t size() const { return m_rows.size(); }
    [[nodiscard]] bool isEmpty() const { return m_rows.empty(); }
    [[nodiscard]] const std::map<IdType, T>& rows() const { return m_rows; }

    // Adds, or replaces the value with the same id. REQUIRES: a valid id
    void put(const T& value)
    {
        m_rows[value.id] = value;
        m_last = std::max(m_last, value.id.number());
    }
    void remove(IdType id) { m_rows.erase(id); }

    // The next number never used before.
    [[nodiscard]] IdType newId() { return IdType(++m_last); }
    [[nodiscard]] std::int64_t lastNumber() const { return m_last; }
    void setLastNumber(std::int64_t last) { m_last = std::max(m_last, last); }

private:
    std::map<IdType, T> m_rows;
    std::int64_t m_last = 0;
};

struct BookInfo {
    QString title;
    QString language = QStringLiteral("en"); // of the adult's text, BCP 47
    friend bool operator==(const BookInfo&, const BookInfo&) = default;
};

struct Book {
    BookInfo info;
    Table<Child> children;
    Table<PermissionRecord> permissionRecords;
    Table<PromptSet> promptSets;
    Table<Experience> experiences;
    Table<Quote> quotes;
    Table<NoAnswer> noAnswers;
    Table<Observation> observations;
    Table<Picture> pictures;
    Table<Group> groups;
    Table<KeptPair> keptPairs;
    Table<Meeting> meetings;
    Table<Reflection> reflections;
    Table<Goal> goals;
    Table<Display> displays;
    Table<Panel> panels;
    Table<Piece> pieces;
    Table<Wall> walls;
    Table<Translation> translations;
    Table<PanelTemplate> templates;
};

// Look-ups by what a person types or sees. Names compare without regard to case and outer spaces.
[[nodiscard]] const Child* childByName(const Book& book, const QString& name);
[[nodiscard]] const Experience* experienceByTitle(const Book& book, const QString& title);
[[nodiscard]] const Display* displayByName(const Book& book, const QString& name);
[[nodiscard]] std::vector<const Quote*> quotesOf(const Book& book, ExperienceId experience);
// What can go onto panels: not the photos of walls (wall_photo.h).
[[nodiscard]] std::vector<const Picture*> picturesOf(const Book& book, ExperienceId experience);
[[nodiscard]] const PanelTemplate* templateByName(const Book& book, const QString& name);
// The text's wording in a language; null = nobody has translated it. Languages compare by their
// first part, so "ar" finds "ar-SY".
[[nodiscard]] const Translation* translationOf(
    const Book& book, ExperienceId experience, Translated what, const QString& language);
[[nodiscard]] const Translation* translationOf(
    const Book& book, QuoteId quote, const QString& language);
[[nodiscard]] const Translation* translationOf(
    const Book& book, PictureId picture, const QString& language);
[[nodiscard]] bool sameLanguage(const QString& a, const QString& b);
// The experience's own; while it has none, the book's.
[[nodiscard]] const QString& languageOf(const Book& book, const Experience& experience);
[[nodiscard]] std::vector<const Panel*> panelsOf(const Book& book, DisplayId display); // by number
[[nodiscard]] std::vector<const Piece*> piecesOf(const Book& book, PanelId panel); // by order

} // namespace wainscot
