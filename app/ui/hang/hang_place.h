// Hang: check, place on the wall, print. Three tasks of one place.
#pragma once

#include <QStackedWidget>

#include <map>

#include "app/jobs/drawn_display.h"
#include "app/ui/hang/check_page.h"
#include "app/ui/hang/print_page.h"
#include "app/ui/hang/wall_page.h"
#include "app/ui/places/task_line.h"

namespace wainscot::ui {

class HangPlace : public QWidget {
    Q_OBJECT
public:
    enum class Task { Check, Wall, Print };
    HangPlace(Session& session, PictureShelf& pictures, QWidget* parent = nullptr);

    // `drawn`: the display as its audience may see it; null = none.
    void refresh(const DrawnDisplay* drawn, const std::vector<Finding>& findings);
    void setTask(Task task);
    [[nodiscard]] Task task() const { return m_task; }
    [[nodiscard]] WallPage& wall() { return *m_wall; }
    [[nodiscard]] CheckPage& check() { return *m_check; }
    [[nodiscard]] PrintPage& print() { return *m_print; }
    [[nodiscard]] QWidget* firstStop();
    [[nodiscard]] QList<QWidget*> regions();
    // What the sill says.
    [[nodiscard]] QString done() const;
    [[nodiscard]] QString missing() const;

Q_SIGNALS:
    void stateChanged();
    void announced(const QString& sentence);

private:
    Session& m_session;
    Task m_task = Task::Wall;
    TaskLine* m_tasks;
    QStackedWidget* m_pages;
    CheckPage* m_check;
    WallPage* m_wall;
    PrintPage* m_print;
    std::map<PieceId, Piece> m_pieces; // as they were when the panels were drawn last
    std::map<DisplayId, Display> m_displays;
    std::map<ChildId, Child> m_children;
};

} // namespace wainscot::ui
