// What the book is called and which language its walls speak.
#pragma once

#include <QComboBox>
#include <QDialog>
#include <QLineEdit>

#include "app/ui/kit/surfaces.h"
#include "app/ui/session/session.h"

namespace wainscot::ui {

class BookSheet : public QDialog {
    Q_OBJECT
public:
    explicit BookSheet(Session& session, QWidget* parent = nullptr);

    void accept() override;
    [[nodiscard]] QLineEdit& name() { return *m_name; }
    [[nodiscard]] QComboBox& language() { return *m_language; } // a code may be written

private:
    [[nodiscard]] QString written() const; // the code chosen or written
    void tell();

    Session& m_session;
    QLineEdit* m_name;
    QComboBox* m_language;
    Label* m_about;
};

} // namespace wainscot::ui
