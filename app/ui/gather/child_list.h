// The children at the start of taking words down: who is next, who is complete, a mark for each
// question. One stop of the keyboard; a letter goes to the next name that begins with it.
#pragma once

#include <QAbstractButton>
#include <QVBoxLayout>

#include "app/ui/kit/rover.h"
#include "core/voice/answers.h"

namespace wainscot::ui {

class ChildRow : public QAbstractButton {
    Q_OBJECT
public:
    ChildRow(const Child& child, const ChildAnswers& answers, QWidget* parent = nullptr);
    [[nodiscard]] ChildId child() const { return m_child; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void letterTyped(const QString& letter);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    ChildId m_child;
    std::vector<AnswerMark> m_marks;
};

class ChildList : public QWidget {
    Q_OBJECT
public:
    explicit ChildList(QWidget* parent = nullptr);
    void refresh(const Book& book, const AnswersOfClass& answers, ChildId current);
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }

Q_SIGNALS:
    void chosen(wainscot::ChildId child);

private:
    void addPart(const QString& heading, const std::vector<ChildRow*>& rows);
    void goToLetter(const QString& letter);

    QWidget* m_content = nullptr;
    QVBoxLayout* m_column = nullptr;
    Rover* m_rover;
    QVector<ChildRow*> m_rows;
};

} // namespace wainscot::ui
