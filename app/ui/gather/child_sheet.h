// What is known about one child: the name, how it is written on a wall, birth, languages.
#pragma once

#include <QDialog>
#include <QLineEdit>

#include "app/ui/session/session.h"

namespace wainscot::ui {

class Label;

class ChildSheet : public QDialog {
    Q_OBJECT
public:
    ChildSheet(Session& session, ChildId child, QWidget* parent = nullptr);

public Q_SLOTS:
    void accept() override; // keeps it, or says what cannot be kept

private:
    void tellAge();

    Session& m_session;
    ChildId m_child;
    QLineEdit* m_name;
    QLineEdit* m_shownAs;
    QLineEdit* m_born;
    QLineEdit* m_languages;
    Label* m_age;
};

} // namespace wainscot::ui
