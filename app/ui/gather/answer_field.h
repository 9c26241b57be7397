// Where an adult types what a child says, as it is said. No letter is ever a command here.
#pragma once

#include <QPlainTextEdit>

namespace wainscot::ui {

class AnswerField : public QPlainTextEdit {
    Q_OBJECT
public:
    explicit AnswerField(QWidget* parent = nullptr);

Q_SIGNALS:
    void enterPressed(); // Enter alone; with Shift it begins a new line

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void insertFromMimeData(const QMimeData* source) override; // text without form
    void paintEvent(QPaintEvent* event) override;
};

} // namespace wainscot::ui
