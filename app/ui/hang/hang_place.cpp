#include "app/ui/hang/hang_place.h"

#include <QVBoxLayout>

#include <algorithm>

#include "app/ui/places/pages.h"

namespace wainscot::ui {

HangPlace::HangPlace(Session& session, PictureShelf& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_tasks(new TaskLine({tr("Check"), tr("Wall"), tr("Print")}))
    , m_pages(new QStackedWidget)
    , m_check(new CheckPage(session))
    , m_wall(new WallPage(session, pictures))
    , m_print(new PrintPage(session, pictures))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_tasks->addToEnd(m_wall->taskLineEnd());
    column->addWidget(m_tasks);
    column->addWidget(new Rule);
    for (QWidget* page : {static_cast<QWidget*>(m_check),
             static_cast<QWidget*>(m_wall),
             static_cast<QWidget*>(m_print)})
        m_pages->addWidget(page);
    column->addWidget(m_pages, 1);
    connect(m_tasks, &TaskLine::asked, this, [this](int task) { setTask(Task(task)); });
    connect(m_wall, &WallPage::changed, this, &HangPlace::stateChanged);
    connect(m_wall, &WallPage::announced, this, &HangPlace::announced);
    connect(m_check, &CheckPage::announced, this, &HangPlace::announced);
    connect(m_print, &PrintPage::changed, this, &HangPlace::stateChanged);
    setTask(Task::Wall);
}

void HangPlace::setTask(Task task)
{
    m_task = task;
    m_tasks->setOpen(int(task));
    showOnly(*m_pages, int(task));
    m_wall->taskLineEnd()->setVisible(task == Task::Wall && m_wall->wall() != nullptr);
    Q_EMIT stateChanged();
}

void HangPlace::refresh(const DrawnDisplay* drawn, const std::vector<Finding>& findings)
{
    m_check->show(findings);
    // Panels are drawn anew only when something on them is another thing than before.
    const Book& book = m_session.book();
    if (book.pieces.rows() != m_pieces || book.displays.rows() != m_displays
        || book.children.rows() != m_children) {
        m_pieces = book.pieces.rows();
        m_displays = book.displays.rows();
        m_children = book.children.rows();
        m_wall->view().forgetPictures();
    }
    m_wall->refresh();
    m_wall->taskLineEnd()->setVisible(m_task == Task::Wall && m_wall->wall() != nullptr);
    m_print->refresh(drawn);
}

QWidget* HangPlace::firstStop()
{
    switch (m_task) {
    case Task::Check:
        return m_check->firstStop();
    case Task::Wall:
        return m_wall->firstStop();
    case Task::Print:
        return m_print->firstStop();
    }
    return nullptr;
}

QList<QWidget*> HangPlace::regions()
{
    QList<QWidget*> all{m_tasks->stop()};
    if (QWidget* first = firstStop())
        all << first;
    return all;
}

QString HangPlace::done() const
{
    const Wall* wall = m_wall->wall();
    const auto& list = m_wall->view().plan().list;
    if (m_task == Task::Wall && wall != nullptr) {
        return list.empty()
            ? tr("Nothing hangs on %1 yet.").arg(wall->name)
            : tr("%1 on %2.")
                  .arg(counted(int(list.size()), tr("1 panel"), tr("%1 panels")), wall->name);
    }
    if (m_task == Task::Check)
        return m_check->summary();
    return m_task == Task::Print ? m_print->summary() : tr("No wall is measured yet.");
}

QString HangPlace::missing() const
{
    const auto& findings = m_wall->view().plan().findings;
    const int look = int(std::count_if(findings.begin(), findings.end(), [](const Finding& one) {
        return one.severity != Severity::Note;
    }));
    if (m_task == Task::Wall && m_wall->wall() != nullptr && look > 0)
        return tr("%1 to look at.").arg(counted(look, tr("1 finding"), tr("%1 findings")));
    return tr("Limits are yours to change. Ask your fire authority.");
}

} // namespace wainscot::ui
