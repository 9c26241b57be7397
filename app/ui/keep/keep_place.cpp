#include "app/ui/keep/keep_place.h"

#include <QHBoxLayout>
#include <QLocale>

#include <algorithm>

#include "app/ui/kit/tokens.h"
#include "app/ui/places/pages.h"

namespace wainscot::ui {

namespace {

// What the marks on a strand are.
QWidget* makeLegend()
{
    auto* legend = new QWidget;
    auto* row = new QHBoxLayout(legend);
    row->setContentsMargins(air(7), air(1), air(7), air(2));
    row->setSpacing(air(2));
    for (const auto& [icon, text] :
        {std::pair(Icon::Pin, KeepPlace::tr("a nail on a strand is a class meeting")),
            std::pair(Icon::Sheet,
                KeepPlace::tr("a picture hanging is a wall, with who stood in front of it"))}) {
        row->addWidget(new IconMark(icon, tokens().ink));
        auto* words = new OneLine(0.88, QFont::Normal, true); // shortened in a small window
        words->setText(text);
        row->addWidget(words, 1);
    }
    return legend;
}

} // namespace

KeepPlace::KeepPlace(Session& session, PictureShelf& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_tasks(new TaskLine({tr("The term"), tr("Put away, carry, erase")}))
    , m_pages(new QStackedWidget)
    , m_term(new TermView(session, pictures))
    , m_drawn(new QStackedWidget)
    , m_file(new TermColumn(session))
    , m_away(new PlainPlace)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    connect(m_tasks, &TaskLine::asked, this, [this](int task) { setTask(Task(task)); });
    column->addWidget(m_tasks);
    column->addWidget(new Rule);
    auto* term = new QWidget;
    auto* side = new QHBoxLayout(term);
    side->setContentsMargins(0, 0, 0, 0);
    side->setSpacing(0);
    auto* empty = new QWidget;
    auto* middle = new QVBoxLayout(empty);
    auto* first =
        new Label(tr("After the first wall, the term begins to show here."), 1.5, QFont::DemiBold);
    first->setAlignment(Qt::AlignCenter);
    middle->addWidget(first, 0, Qt::AlignVCenter);
    auto* drawn = new QWidget;
    auto* under = new QVBoxLayout(drawn);
    under->setContentsMargins(0, 0, 0, 0);
    under->setSpacing(0);
    under->addWidget(scrolled(m_term), 1);
    under->addWidget(makeLegend());
    m_drawn->addWidget(empty);
    m_drawn->addWidget(drawn);
    side->addWidget(m_drawn, 1);
    side->addWidget(new Rule(Qt::Vertical));
    QScrollArea* file = scrolled(m_file);
    file->setFixedWidth(m_file->width() + air(3));
    side->addWidget(file);
    m_pages->addWidget(term);
    m_pages->addWidget(m_away);
    column->addWidget(m_pages, 1);
    setTask(Task::Term);
}

void KeepPlace::setTask(Task task)
{
    m_task = task;
    m_tasks->setOpen(int(task));
    showOnly(*m_pages, int(task));
    Q_EMIT stateChanged();
}

void KeepPlace::refresh()
{
    if (m_session.folder() != m_folder) {
        m_folder = m_session.folder();
        m_file->begin();
    }
    m_term->refresh();
    m_drawn->setCurrentIndex(m_term->strands().empty() ? 0 : 1);
    m_file->refresh();
}

QWidget* KeepPlace::firstStop() const
{
    if (m_task == Task::Away)
        return m_away->firstStop();
    return m_term->strands().empty() ? m_file->firstStop() : m_term->firstStop();
}

QList<QWidget*> KeepPlace::regions() const
{
    QList<QWidget*> all{m_tasks->stop(), firstStop()};
    if (m_task == Task::Term && !m_term->strands().empty())
        all << m_file->firstStop();
    all.removeAll(nullptr);
    return all;
}

QString KeepPlace::done() const
{
    const auto& strands = m_term->strands();
    int meetings = 0;
    int walls = 0;
    QDate first;
    for (const TermStrand& strand : strands) {
        meetings += int(strand.meetings.size());
        walls += int(strand.walls.size());
        if (strand.first.isValid() && (!first.isValid() || strand.first < first))
            first = strand.first;
    }
    if (strands.empty())
        return tr("The term has not begun.");
    const QString held =
        QStringLiteral("%1, %2, %3")
            .arg(counted(int(strands.size()), tr("1 experience"), tr("%1 experiences")),
                counted(meetings, tr("1 meeting"), tr("%1 meetings")),
                counted(walls, tr("1 wall"), tr("%1 walls")));
    return first.isValid()
        ? tr("%1 since %2.").arg(held, QLocale().standaloneMonthName(first.month()))
        : held + QLatin1Char('.');
}

QString KeepPlace::missing() const
{
    return tr("What families allow is asked again whenever something leaves the book.");
}

} // namespace wainscot::ui
