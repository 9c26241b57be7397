#include "app/ui/gather/gather_place.h"

#include <QHBoxLayout>
#include <QPaintEvent>
#include <QPainter>

#include "app/ui/kit/tokens.h"
#include "app/ui/places/pages.h"

namespace wainscot::ui {

namespace {

// A page of a stack; what is in it may hide by itself.
QWidget* held(QWidget* content)
{
    auto* page = new QWidget;
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(0, 0, 0, 0);
    row->addStretch();
    row->addWidget(content);
    return page;
}

} // namespace

GatherPlace::GatherPlace(Session& session, PictureShelf& shelf, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_class(new ClassTask(session))
    , m_ask(new AskTask(session, shelf))
    , m_words(new WordsTask(session, shelf))
    , m_seen(new SeenTask(session, shelf))
    , m_pictures(new PicturesTask(session, shelf))
    , m_heard(new HeardTask(session))
    , m_tasks(new QStackedWidget)
    , m_abouts(new QStackedWidget)
    , m_rover(new Rover(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (TaskPage* one : {static_cast<TaskPage*>(m_class),
             static_cast<TaskPage*>(m_ask),
             static_cast<TaskPage*>(m_words),
             static_cast<TaskPage*>(m_seen),
             static_cast<TaskPage*>(m_pictures),
             static_cast<TaskPage*>(m_heard)}) {
        m_tasks->addWidget(one);
        m_abouts->addWidget(held(one->about()));
        connect(one, &TaskPage::stateChanged, this, &GatherPlace::stateChanged);
        connect(one, &TaskPage::announced, this, &GatherPlace::announced);
    }
    makeTaskLine(*column);
    column->addWidget(new Rule);
    column->addWidget(m_tasks, 1);
    connect(m_class, &ClassTask::fileAsked, this, &GatherPlace::classFileAsked);
    connect(m_class, &ClassTask::wordsAsked, this, [this] { go(GatherPart::Words); });
    connect(m_class, &ClassTask::displayAsked, this, &GatherPlace::displayAsked);
    connect(m_ask, &AskTask::sheetsAsked, this, &GatherPlace::sheetsAsked);
    connect(m_ask, &AskTask::wordsAsked, this, [this] { go(GatherPart::Words); });
    connect(m_seen, &SeenTask::wordsAsked, this, [this] { go(GatherPart::Words); });
    connect(m_pictures, &PicturesTask::wordsAsked, this, [this] { go(GatherPart::Words); });
    connect(m_pictures, &PicturesTask::filesDropped, this, &GatherPlace::filesDropped);
    connect(m_pictures, &PicturesTask::filesAsked, this, &GatherPlace::filesAsked);
    connect(m_pictures, &PicturesTask::folderAsked, this, &GatherPlace::folderAsked);
    connect(m_words, &WordsTask::classAsked, this, [this] { go(GatherPart::Class); });
    connect(m_words, &WordsTask::heardAsked, this, [this] { go(GatherPart::Heard); });
    connect(m_words, &WordsTask::experienceNamed, this, &GatherPlace::experienceNamed);
    connect(m_words, &WordsTask::pictureAsked, this, &GatherPlace::pictureAsked);
    connect(m_heard, &HeardTask::groupsAsked, this, &GatherPlace::groupsAsked);
    connect(m_heard, &HeardTask::childAsked, this, [this](ChildId child, bool whyNot) {
        go(GatherPart::Words);
        m_words->desk().goTo(child);
        if (whyNot)
            m_words->askWhyNot();
    });
}

void GatherPlace::makeTaskLine(QVBoxLayout& column)
{
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(air(4), air(2), air(4), air(2));
    row->setSpacing(0);
    const std::array<QString, kGatherParts> names{tr("Class"),
        tr("Ask"),
        tr("Take words down"),
        tr("What you saw"),
        tr("Pictures"),
        tr("Who was heard")};
    QVector<QWidget*> stops;
    for (int i = 0; i < kGatherParts; ++i) {
        auto* name = new Button(Button::Form::Task, names[std::size_t(i)]);
        name->setCheckable(true);
        name->setAutoExclusive(true);
        connect(name, &Button::clicked, this, [this, i] { go(GatherPart(i)); });
        row->addWidget(name);
        m_names[std::size_t(i)] = name;
        stops << name;
    }
    m_rover->setMembers(stops);
    row->addStretch();
    row->addWidget(m_abouts);
    column.addWidget(line);
}

TaskPage& GatherPlace::task()
{
    switch (m_part) {
    case GatherPart::Class:
        return *m_class;
    case GatherPart::Ask:
        return *m_ask;
    case GatherPart::Words:
        return *m_words;
    case GatherPart::Seen:
        return *m_seen;
    case GatherPart::Pictures:
        return *m_pictures;
    case GatherPart::Heard:
        return *m_heard;
    }
    return *m_words;
}

void GatherPlace::go(GatherPart part)
{
    if (part != m_part)
        task().leave();
    m_part = part;
    refresh();
    if (QWidget* stop = firstStop())
        stop->setFocus(Qt::OtherFocusReason);
    Q_EMIT stateChanged();
}

void GatherPlace::refresh()
{
    showOnly(*m_tasks, int(m_part));
    showOnly(*m_abouts, int(m_part));
    m_names[std::size_t(m_part)]->setChecked(true);
    task().refresh();
}

QVector<QWidget*> GatherPlace::regions()
{
    return {m_rover->stop(), firstStop()};
}

void GatherPlace::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
