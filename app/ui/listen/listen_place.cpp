#include "app/ui/listen/listen_place.h"

#include <QHBoxLayout>
#include <QPaintEvent>
#include <QPainter>

#include "app/jobs/group_edits.h"
#include "app/jobs/meeting_edits.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/places/pages.h"
#include "core/base/paper_size.h"

namespace wainscot::ui {

namespace {

QString draftName(const Book& book, const QString& title)
{
    const QString name = ListenPlace::tr("%1, draft").arg(title);
    QString free = name;
    for (int number = 2; displayByName(book, free) != nullptr; ++number)
        free = QStringLiteral("%1 %2").arg(name).arg(number);
    return free;
}

} // namespace

ListenPlace::ListenPlace(Session& session, Work& work, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_work(work)
    , m_tasks(new TaskLine({tr("Groups"), tr("Meetings"), tr("Looking back")}))
    , m_pages(new QStackedWidget)
    , m_abouts(new QStackedWidget)
    , m_groups(new GroupsPage(session))
    , m_meetings(new MeetingsPage(session))
    , m_lookingBack(new LookingBackPage(session))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_tasks);
    column->addWidget(new Rule);
    column->addWidget(m_pages, 1);
    for (TaskPage* page : {static_cast<TaskPage*>(m_groups),
             static_cast<TaskPage*>(m_meetings),
             static_cast<TaskPage*>(m_lookingBack)})
        add(page);
    m_abouts->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    m_tasks->addToEnd(m_abouts);
    connect(m_tasks, &TaskLine::asked, this, [this](int task) { show(Task(task)); });
    connect(m_groups, &GroupsPage::gatherAsked, this, &ListenPlace::gatherAsked);
    connect(m_groups, &GroupsPage::meetingAsked, this, [this](const std::vector<GroupId>& groups) {
        m_meetings->plan(groups);
        show(Task::Meetings);
        if (QWidget* stop = m_meetings->firstStop())
            stop->setFocus(Qt::OtherFocusReason);
    });
    connect(m_meetings, &MeetingsPage::groupsAsked, this, [this] { show(Task::Groups); });
    connect(m_meetings, &MeetingsPage::beginAsked, this, &ListenPlace::beginMeeting);
    connect(m_meetings, &MeetingsPage::wallAsked, this, &ListenPlace::makeWall);
    connect(m_lookingBack, &LookingBackPage::wallAsked, this, [this] { makeDraft(); });
    show(Task::Groups);
}

void ListenPlace::add(TaskPage* page)
{
    m_pages->addWidget(page);
    m_abouts->addWidget(page->about() != nullptr ? page->about() : new QWidget);
    connect(page, &TaskPage::stateChanged, this, &ListenPlace::stateChanged);
    connect(page, &TaskPage::announced, this, &ListenPlace::announced);
}

TaskPage& ListenPlace::page() const
{
    return *qobject_cast<TaskPage*>(m_pages->currentWidget());
}

void ListenPlace::show(Task task)
{
    const int at = int(task);
    if (m_pages->currentIndex() != at)
        page().leave();
    m_tasks->setOpen(at);
    showOnly(*m_pages, at);
    m_abouts->setCurrentIndex(at);
    page().refresh();
    Q_EMIT stateChanged();
}

void ListenPlace::refresh()
{
    page().refresh();
}

void ListenPlace::leave()
{
    page().leave();
}

QWidget* ListenPlace::firstStop() const
{
    QWidget* stop = page().firstStop();
    return stop != nullptr ? stop : m_tasks->stop();
}

QVector<QWidget*> ListenPlace::regions() const
{
    return {m_tasks->stop(), page().firstStop()};
}

void ListenPlace::beginMeeting(MeetingId meeting)
{
    endMeeting();
    m_run = new MeetingRun(m_session, meeting, window());
    window()->installEventFilter(this);
    connect(m_run, &MeetingRun::ended, this, &ListenPlace::endMeeting);
    m_run->setGeometry(window()->rect());
    m_run->QWidget::show();
    m_run->raise();
    m_run->setFocus();
}

void ListenPlace::endMeeting()
{
    if (m_run == nullptr)
        return;
    window()->removeEventFilter(this);
    m_run->hide();
    m_run->deleteLater(); // one of its buttons may be the sender
    m_run = nullptr;
    show(Task::Meetings);
    if (QWidget* stop = firstStop())
        stop->setFocus(Qt::OtherFocusReason);
}

std::vector<GroupId> ListenPlace::groupsForWall() const
{
    std::vector<GroupId> talkedAbout;
    std::vector<GroupId> all;
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return {};
    for (const Meeting* meeting : meetingsOf(m_session.book(), experience->id)) {
        if (meeting->done)
            talkedAbout.insert(talkedAbout.end(), meeting->groups.begin(), meeting->groups.end());
    }
    for (const Group* group : groupsOf(m_session.book(), experience->id))
        all.push_back(group->id);
    return talkedAbout.empty() ? all : talkedAbout;
}

void ListenPlace::makeWall(const std::vector<GroupId>& groups)
{
    page().leave(); // what is being written belongs on it
    const Experience* experience = m_session.experience();
    if (experience == nullptr || groups.empty()) {
        Q_EMIT announced(tr("A draft needs groups. Propose them first."));
        return;
    }
    WallDraftJob job;
    job.experience = experience->id;
    job.groups = groups;
    job.display = draftName(m_session.book(), experience->title);
    using Outcome = std::variant<ArrangeOutcome, ArrangeFailure>;
    m_work.start<Outcome>(
        tr("Making a draft for a wall"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](Result<Outcome> result) {
            if (!result)
                Q_EMIT announced(result.error().code == ErrorCode::Refused
                        ? tr("None of these words may hang in the hallway yet. Say in Gather, "
                             "Class, what families allow.")
                        : sentenceFor(result.error()));
            else if (const auto* failure = std::get_if<ArrangeFailure>(&*result))
                Q_EMIT announced(failure->says);
            else
                takeWall(std::get<ArrangeOutcome>(*result));
        });
}

void ListenPlace::takeWall(const ArrangeOutcome& outcome)
{
    Edit edit = outcome.edit;
    edit.label = tr("A draft for a wall");
    if (!m_session.perform(edit))
        return;
    m_session.chooseDisplay(outcome.display.id);
    Q_EMIT wallMade();
    Q_EMIT announced(outcome.display.panelSize == ArrangeJob{}.panelSize
            ? tr("This is a draft from the groups. Change what should be otherwise.")
            : tr("This is a draft from the groups, on %1, which their words fill. Change what "
                 "should be otherwise.")
                  .arg(nameOfPaper(outcome.display.panelSize)));
}

bool ListenPlace::eventFilter(QObject* watched, QEvent* event)
{
    if (m_run != nullptr && watched == window() && event->type() == QEvent::Resize)
        m_run->setGeometry(window()->rect());
    return QWidget::eventFilter(watched, event);
}

void ListenPlace::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
