// Class: who is here, and what each family allows for whom.
#pragma once

#include <QAction>

#include "app/ui/gather/cell_note.h"
#include "app/ui/gather/mark_table.h"
#include "app/ui/places/task_page.h"

namespace wainscot::ui {

class ClassTask : public TaskPage {
    Q_OBJECT
public:
    explicit ClassTask(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] MarkTable& table() { return *m_table; }
    [[nodiscard]] CellNote& note() { return *m_note; }
    [[nodiscard]] QLineEdit& nameField() { return *m_name; }
    [[nodiscard]] Saying saying() override;
    void refresh() override;
    [[nodiscard]] QWidget* about() override { return m_about; }
    [[nodiscard]] QWidget* firstStop() const override;
    void add(const QString& text); // names, a line each

Q_SIGNALS:
    void fileAsked();
    void wordsAsked();
    void displayAsked(wainscot::DisplayId display);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void makeAbout();
    [[nodiscard]] QWidget* makeLegend();
    [[nodiscard]] QWidget* makeEntry();
    void paste();
    void change(std::optional<FamilyAnswer> to); // of the chosen cells; nothing: what Space does
    void showCell();
    [[nodiscard]] QModelIndexList chosen() const; // at least the current cell

    Session& m_session;
    PermissionGrid m_grid;
    QWidget* m_about;
    Label* m_empty;
    MarkTable* m_table;
    QLineEdit* m_name = nullptr; // made with the row below the table
    QWidget* m_legend;
    CellNote* m_note;
};

} // namespace wainscot::ui
