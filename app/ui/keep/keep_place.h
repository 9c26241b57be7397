// Keep: the term and its file; carry, put away, erase.
#pragma once

#include <QStackedWidget>

#include "app/ui/keep/term_column.h"
#include "app/ui/keep/term_view.h"
#include "app/ui/places/plain_place.h"
#include "app/ui/places/task_line.h"

namespace wainscot::ui {

class KeepPlace : public QWidget {
    Q_OBJECT
public:
    enum class Task { Term, Away };
    KeepPlace(Session& session, PictureShelf& pictures, QWidget* parent = nullptr);

    void refresh(); // the term; what lies beside it is filled by the window
    void setTask(Task task);
    [[nodiscard]] Task task() const { return m_task; }
    [[nodiscard]] TermView& term() { return *m_term; }
    [[nodiscard]] TermColumn& file() { return *m_file; }
    [[nodiscard]] PlainPlace& away() { return *m_away; }
    [[nodiscard]] QWidget* firstStop() const;
    [[nodiscard]] QList<QWidget*> regions() const;
    // What the sill says: "4 experiences, 7 meetings, 4 walls since September."
    [[nodiscard]] QString done() const;
    [[nodiscard]] QString missing() const;

Q_SIGNALS:
    void stateChanged();

private:
    Session& m_session;
    Task m_task = Task::Term;
    TaskLine* m_tasks;
    QStackedWidget* m_pages;
    TermView* m_term;
    QStackedWidget* m_drawn; // the term, or what to do before there is one
    TermColumn* m_file;
    PlainPlace* m_away;
    QString m_folder; // of the book that is shown
};

} // namespace wainscot::ui
