#include "app/ui/places/task_line.h"

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

TaskLine::TaskLine(const QStringList& names, QWidget* parent)
    : QWidget(parent)
    , m_row(new QHBoxLayout(this))
    , m_rover(new Rover(this))
{
    m_row->setContentsMargins(air(4), air(2), air(4), air(1));
    m_row->setSpacing(air(1));
    QVector<QWidget*> stops;
    for (const QString& name : names) {
        auto* button = new Button(Button::Form::Task, name);
        const int task = int(m_tasks.size());
        connect(button, &Button::clicked, this, [this, task] { Q_EMIT asked(task); });
        m_row->addWidget(button);
        m_tasks << button;
        stops << button;
    }
    m_row->addStretch();
    m_rover->setMembers(stops);
}

void TaskLine::setOpen(int task)
{
    for (int i = 0; i < m_tasks.size(); ++i)
        m_tasks[i]->setChecked(i == task);
}

} // namespace wainscot::ui
