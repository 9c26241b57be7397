// A place to write several lines in, for texts that are not an answer of a child.
#pragma once

#include <QPlainTextEdit>

#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

// At least as high as `lines` of its letters, and grows with its text to four times that, at least
// to eight lines. Tab goes on to the next control; a ring shows where one is.
class WritingCard : public Card {
    Q_OBJECT
public:
    WritingCard(const QString& name, int lines, double relative, QWidget* parent = nullptr);
    [[nodiscard]] QPlainTextEdit* field() const { return m_field; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void grow();

    QPlainTextEdit* m_field;
    int m_lines;
};

} // namespace wainscot::ui
