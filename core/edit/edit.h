// Undoable edits: values swapped in a book, named for the person, saved as one unit of work.
#pragma once

#include "core/base/result.h"
#include "core/model/book.h"

#include <QString>

#include <map>
#include <optional>
#include <utility>
#include <variant>
#include <vector>

namespace wainscot {

// One value added (no before), removed (no after) or replaced.
template <class T> struct ValueChange {
    decltype(T::id) id;
    std::optional<T> before;
    std::optional<T> after;
};

struct InfoChange {
    BookInfo before;
    BookInfo after;
};

using Change = std::variant<InfoChange,
    ValueChange<Child>,
    ValueChange<PermissionRecord>,
    ValueChange<PromptSet>,
    ValueChange<Experience>,
    ValueChange<Quote>,
    ValueChange<NoAnswer>,
    ValueChange<Observation>,
    ValueChange<Picture>,
    ValueChange<Group>,
    ValueChange<KeptPair>,
    ValueChange<Meeting>,
    ValueChange<Reflection>,
    ValueChange<Goal>,
    ValueChange<Display>,
    ValueChange<Panel>,
    ValueChange<Piece>,
    ValueChange<Wall>,
    ValueChange<Translation>,
    ValueChange<PanelTemplate>>;

[[nodiscard]] bool changesNothing(const Change& change);

// What one action of the person changes. Applied whole or not at all.
struct Edit {
    QString label; // what undo would undo: "Bigger photo"
    int gesture = 0; // edits with the same number > 0 merge into one (a drag, a word being typed)
    std::vector<Change> changes;
    [[nodiscard]] bool isEmpty() const { return changes.empty(); }
};

// Collects changes against a book without touching it; a value changed twice keeps its first
// before.
class EditBuilder {
public:
    explicit EditBuilder(const Book& book, QString label, int gesture = 0);

    // A number for something new: never used in the book and not given twice by this builder.
    template <class T> [[nodiscard]] decltype(T::id) newId();
    template <class T> void put(const T& value);
    template <class T> void remove(decltype(T::id) id);
    void setInfo(const BookInfo& info);

    // Ends the building; changes that change nothing are left out.
    [[nodiscard]] Edit take();

private:
    using Place = std::pair<std::size_t, std::int64_t>; // kind of change and number
    template <class T> [[nodiscard]] ValueChange<T>& changeOf(decltype(T::id) id);

    const Book& m_book;
    Edit m_edit;
    std::map<Place, std::size_t> m_places; // where a value's change stands in m_edit
    std::map<std::size_t, std::int64_t> m_lastNumbers; // by kind of change
};

void apply(const Edit& edit, Book& book);
void revert(const Edit& edit, Book& book);

// Whether the book holds exactly what the edit expects to find ("before" of every change).
[[nodiscard]] bool fits(const Edit& edit, const Book& book);

// Takes a later edit of the same gesture into an earlier one: first "before", last "after". What
// ends where it started is left out, so the result may be empty.
void merge(Edit& earlier, const Edit& later);

// Where applied edits are kept. REQUIRES: all or nothing; on an error nothing has changed.
class EditSink {
public:
    EditSink() = default;
    EditSink(const EditSink&) = delete;
    EditSink& operator=(const EditSink&) = delete;
    virtual ~EditSink() = default;
    virtual Result<> save(const Edit& edit) = 0; // write the "after" of every change
    virtual Result<> saveReverted(const Edit& edit) = 0; // write the "before" of every change
};

// Undo and redo by name. Every step is saved before it shows: if saving fails, the book in memory
// and the steps stay as they were. REQUIRES: book and sink outlive it.
class History {
public:
    History(Book& book, EditSink& sink);

    // An empty edit is done at once. WrongUse when the book has changed since the edit was built.
    Result<> perform(Edit edit);
    Result<> undo();
    Result<> redo();
    [[nodiscard]] bool canUndo() const { return m_done > 0; }
    [[nodiscard]] bool canRedo() const { return m_done < m_edits.size(); }
    [[nodiscard]] QString undoLabel() const;
    [[nodiscard]] QString redoLabel() const;
    [[nodiscard]] int newGesture() { return ++m_gesture; }
    // Everything that was done, oldest first; from `done()` on it is undone and can be redone.
    [[nodiscard]] const std::vector<Edit>& steps() const { return m_edits; }
    [[nodiscard]] std::size_t done() const { return m_done; }

private:
    Book& m_book;
    EditSink& m_sink;
    std::vector<Edit> m_edits;
    std::size_t m_done = 0;
    int m_gesture = 0;
};

} // namespace wainscot
