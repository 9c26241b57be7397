// Undoable edits: values swapped in a book, named for the person, saved as one unit of work.
#pragma once

#include "core/base/result.h"
#include "core/model/book.h"

#include <QString>

#include <optional>
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
    ValueChange<PromptSet>,
    ValueChange<Experience>,
    ValueChange<Quote>,
    ValueChange<Observation>,
    ValueChange<Picture>,
    ValueChange<Group>,
    ValueChange<Meeting>,
    ValueChange<Display>,
    ValueChange<Panel>,
    ValueChange<Piece>>;

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

    // A number for something new; stays reserved even if the edit is dropped.
    template <class T> [[nodiscard]] decltype(T::id) newId();
    template <class T> void put(const T& value);
    template <class T> void remove(decltype(T::id) id);
    void setInfo(const BookInfo& info);

    // Ends the building; changes that change nothing are left out.
    [[nodiscard]] Edit take();

private:
    const Book& m_book;
    Edit m_edit;
    std::map<std::size_t, std::int64_t> m_lastNumbers; // by kind of change
};

void apply(const Edit& edit, Book& book);
void revert(const Edit& edit, Book& book);

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

// Undo and redo by name. Every step is saved before it shows.
class History {
public:
    History(Book& book, EditSink& sink);

    Result<> perform(Edit edit); // an empty edit is done at once
    Result<> undo();
    Result<> redo();
    [[nodiscard]] bool canUndo() const { return m_done > 0; }
    [[nodiscard]] bool canRedo() const { return m_done < m_edits.size(); }
    [[nodiscard]] QString undoLabel() const;
    [[nodiscard]] QString redoLabel() const;
    [[nodiscard]] int newGesture() { return ++m_gesture; }

private:
    Book& m_book;
    EditSink& m_sink;
    std::vector<Edit> m_edits;
    std::size_t m_done = 0;
    int m_gesture = 0;
};

} // namespace wainscot
