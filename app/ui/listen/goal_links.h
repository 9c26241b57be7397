// Which words and panels show a goal: a list to tick.
#pragma once

#include <QDialog>
#include <QListWidget>

#include "app/ui/session/session.h"

namespace wainscot::ui {

class GoalLinks : public QDialog {
    Q_OBJECT
public:
    // Words and panels of the experience one is in. Every tick is kept at once.
    GoalLinks(Session& session, GoalId goal, QWidget* parent = nullptr);
    [[nodiscard]] QListWidget& list() { return *m_list; }

private:
    void fill();
    void take(const QListWidgetItem& item);

    Session& m_session;
    GoalId m_goal;
    QListWidget* m_list;
    bool m_isFilling = false;
};

} // namespace wainscot::ui
