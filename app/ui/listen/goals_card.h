// The goals of the class as a list of its own: written, given a source, and linked to what shows
// them.
#pragma once

#include <QLineEdit>
#include <QWidget>

#include "app/ui/kit/button.h"
#include "app/ui/session/session.h"

class QVBoxLayout;

namespace wainscot::ui {

class GoalsCard : public QWidget {
    Q_OBJECT
public:
    explicit GoalsCard(Session& session, QWidget* parent = nullptr);
    void refresh();
    void add(); // what is written in the field for a new one
    [[nodiscard]] QLineEdit& newGoal() { return *m_text; }
    [[nodiscard]] QLineEdit& newSource() { return *m_source; }
    // One for each goal: "Shown by 2 answers, 1 panel".
    [[nodiscard]] const QVector<Button*>& links() const { return m_links; }

Q_SIGNALS:
    void edited(const wainscot::Edit& edit); // to be performed; `refresh` shows it
    void linksAsked(wainscot::GoalId goal);

private:
    void addGoal(const Goal& goal);

    Session& m_session;
    QWidget* m_list = nullptr;
    QVBoxLayout* m_rows = nullptr;
    QLineEdit* m_text;
    QLineEdit* m_source;
    QVector<Button*> m_links;
};

} // namespace wainscot::ui
