// What is known about the permission in the current cell, and the ways to change it.
#pragma once

#include <QDateEdit>
#include <QLineEdit>

#include <array>

#include "app/ui/gather/permission_grid.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"

class QBoxLayout;

namespace wainscot::ui {

class CellNote : public Card {
    Q_OBJECT
public:
    explicit CellNote(Session& session, QWidget* parent = nullptr);
    void showCell(const Child* child, Audience audience, Permission to);
    // So many cells are chosen, and what is said goes to all; none = they differ.
    void showSeveral(int cells, std::optional<FamilyAnswer> same);
    [[nodiscard]] QString saidBy() const { return m_by->text().simplified(); }
    [[nodiscard]] QLineEdit& byField() { return *m_by; }

Q_SIGNALS:
    void answerChosen(wainscot::FamilyAnswer answer);
    void displayAsked(wainscot::DisplayId display); // that still shows the child
    void childAsked(wainscot::ChildId child); // name, birth, languages

private:
    void makeAnswers(QBoxLayout& row);
    void check(std::optional<FamilyAnswer> answer);
    void showRecord();
    void showDisplays();
    void showFiles();
    void offerDisplays();
    void keepRecord(); // the person and the day of the record that is shown
    [[nodiscard]] const PermissionRecord* record() const;

    Session& m_session;
    ChildId m_child;
    Audience m_audience = Audience::Classroom;
    Permission m_to = Permission::Photo;
    Label* m_head;
    Label* m_story;
    std::array<Button*, 4> m_answers{};
    Rover* m_rover;
    QLineEdit* m_by;
    QDateEdit* m_on;
    Button* m_display;
    Button* m_about;
    Label* m_files; // made of the book, holding what is not allowed
    std::vector<DisplayId> m_still; // displays that hold the child although it is not allowed
    bool m_showing = false;
    bool m_isSeveral = false;
};

} // namespace wainscot::ui
