// The tasks of a place in one line, one of them open; what belongs to the open one stands at its
// end.
#pragma once

#include <QHBoxLayout>
#include <QStringList>
#include <QWidget>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"

namespace wainscot::ui {

class TaskLine : public QWidget {
    Q_OBJECT
public:
    explicit TaskLine(const QStringList& names, QWidget* parent = nullptr);

    void setOpen(int task);
    void addToEnd(QWidget* widget) { m_row->addWidget(widget); }
    [[nodiscard]] QWidget* stop() const { return m_rover->stop(); } // of the Tab key

Q_SIGNALS:
    void asked(int task);

private:
    QHBoxLayout* m_row;
    QVector<Button*> m_tasks;
    Rover* m_rover;
};

} // namespace wainscot::ui
