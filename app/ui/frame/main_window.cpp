#include "app/ui/frame/main_window.h"

#include <QCloseEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/jobs/book_jobs.h"
#include "app/jobs/sentences.h"
#include "app/ui/frame/tab_order.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

MainWindow::MainWindow(QWidget* parent)
    : QWidget(parent)
    , m_menus(new QMenuBar)
    , m_kept(new QLabel)
    , m_rail(new Rail)
    , m_places(new QStackedWidget)
    , m_compose(new ComposePlace(m_session, m_work))
    , m_gather(new GatherPlace(m_session, m_compose->shelf()))
    , m_listen(new ListenPlace(m_session, m_work))
    , m_hang(new HangPlace(m_session, m_compose->shelf()))
    , m_keep(new KeepPlace(m_session, m_compose->shelf()))
    , m_plain(new PlainPlace)
    , m_sill(new Sill)
{
    setWindowTitle(QStringLiteral("Wainscot"));
    setMinimumSize(860, 450); // a screen of 1366 x 768 scaled by half leaves 910 x 490
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_menus->setNativeMenuBar(false);
    // In a right-to-left interface the menu line would grow the least width at every change.
    m_menus->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_kept->setFont(interfaceFont(0.88));
    m_kept->setContentsMargins(0, air(1), air(4), 0);
    // The menu line asks its corner for a size once, so the text's room is set now.
    m_kept->setMinimumWidth(
        m_kept->fontMetrics().horizontalAdvance(tr("Kept %1").arg(QStringLiteral("00:00")))
        + air(5));
    m_menus->setCornerWidget(m_kept, Qt::TopRightCorner);
    m_places->addWidget(m_compose);
    m_places->addWidget(m_gather);
    m_places->addWidget(m_listen);
    m_places->addWidget(m_hang);
    m_places->addWidget(m_keep);
    m_places->addWidget(m_plain);
    for (QWidget* part : {static_cast<QWidget*>(m_menus),
             static_cast<QWidget*>(m_rail),
             static_cast<QWidget*>(new Rule)})
        column->addWidget(part);
    column->addWidget(m_places, 1);
    column->addWidget(new Rule);
    column->addWidget(m_sill);
    makeMenus();

    connect(m_rail, &Rail::chosen, this, &MainWindow::go);
    connect(m_rail, &Rail::experienceAsked, this, &MainWindow::chooseExperience);
    connect(m_sill, &Sill::undoAsked, this, [this] { m_undo->trigger(); });
    connect(m_sill, &Sill::nextAsked, this, &MainWindow::takeNextStep);
    connect(m_sill, &Sill::stopAsked, &m_work, &Work::stop);
    connect(&m_work, &Work::started, m_sill, &Sill::workStarted);
    connect(&m_work, &Work::progressed, m_sill, &Sill::workProgressed);
    connect(&m_work, &Work::ended, m_sill, &Sill::workEnded);
    connect(&m_work, &Work::refused, this, &MainWindow::sayToWait);
    connect(&m_session, &Session::changed, this, &MainWindow::refresh);
    connect(&m_session, &Session::moved, this, &MainWindow::refresh);
    connect(&m_session, &Session::refused, m_sill, &Sill::announce);
    connect(m_compose, &ComposePlace::stateChanged, this, &MainWindow::refreshSill);
    connect(m_compose, &ComposePlace::stateChanged, this, [this] {
        if (shownPlace() == m_hang)
            refreshHang();
    });
    connectHang();
    connectKeep();
    connect(m_compose, &ComposePlace::announced, m_sill, &Sill::announce);
    connect(m_compose, &ComposePlace::gatherAsked, this, [this] { go(Place::Gather); });
    connect(m_compose, &ComposePlace::firstStepsAsked, this, &MainWindow::showFirstSteps);
    makeGather();
    connect(m_listen, &ListenPlace::stateChanged, this, &MainWindow::refreshSill);
    connect(m_listen, &ListenPlace::announced, m_sill, &Sill::announce);
    connect(m_listen, &ListenPlace::wallMade, this, [this] { go(Place::Compose); });
    connect(m_listen, &ListenPlace::gatherAsked, this, [this] { go(Place::Gather); });
    go(m_place);
}

MainWindow::~MainWindow()
{
    keepUnfinished(); // a field that loses the focus later would ask a session that is gone
    delete m_gather; // its tables ask the book even while they are hidden
}

void MainWindow::makeGather()
{
    connect(m_gather, &GatherPlace::stateChanged, this, &MainWindow::refreshSill);
    connect(m_gather, &GatherPlace::announced, m_sill, &Sill::announce);
    connect(m_gather, &GatherPlace::classFileAsked, this, &MainWindow::askChildren);
    connect(m_gather, &GatherPlace::experienceNamed, this, &MainWindow::beginExperience);
    connect(m_gather, &GatherPlace::pictureAsked, this, &MainWindow::askPicture);
    connect(m_gather, &GatherPlace::sheetsAsked, this, &MainWindow::askAnswerSheets);
    connect(m_gather, &GatherPlace::groupsAsked, this, [this] {
        go(Place::Listen);
        m_listen->show(ListenPlace::Task::Groups);
    });
    connect(m_gather, &GatherPlace::filesDropped, this, &MainWindow::takePictures);
    connect(m_gather, &GatherPlace::filesAsked, this, &MainWindow::askPictureFiles);
    connect(m_gather, &GatherPlace::folderAsked, this, &MainWindow::askPhotos);
    connect(m_gather, &GatherPlace::displayAsked, this, [this](DisplayId display) {
        m_session.chooseDisplay(display);
        go(Place::Compose);
    });
}

void MainWindow::noteWhatYouSee()
{
    go(Place::Gather);
    m_gather->go(GatherPart::Seen);
    m_gather->seen().begin();
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    keepUnfinished();
    QWidget::closeEvent(event);
}

void MainWindow::keepUnfinished()
{
    m_gather->leave();
    m_listen->leave();
    m_compose->endWriting(true);
}

bool MainWindow::focusNextPrevChild(bool next)
{
    QWidget* stop = nextStop(*this, focusWidget(), next);
    if (stop == nullptr)
        return false;
    stop->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    for (QWidget* around = stop->parentWidget(); around != nullptr;
         around = around->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(around))
            area->ensureWidgetVisible(stop);
    }
    return true;
}

void MainWindow::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

void MainWindow::sayToWait()
{
    m_sill->announce(tr("Wait until this is done: %1.").arg(m_work.name()));
}

void MainWindow::go(Place place)
{
    if (m_place == Place::Gather)
        m_gather->leave();
    m_listen->leave();
    m_place = place;
    m_sill->letGo();
    m_compose->endWriting(true);
    refresh();
    // What was just put in is not shown before the event loop comes round.
    QTimer::singleShot(0, this, [this] {
        if (QWidget* stop = firstStop())
            stop->setFocus(Qt::OtherFocusReason);
    });
}

QWidget* MainWindow::shownPlace() const
{
    if (m_session.isOpen() && m_place == Place::Compose)
        return m_compose;
    if (m_session.isOpen() && m_place == Place::Gather)
        return m_gather;
    if (m_session.isOpen() && m_place == Place::Listen)
        return m_listen;
    if (m_session.isOpen() && m_place == Place::Hang)
        return m_hang;
    if (m_session.isOpen() && m_place == Place::Keep)
        return m_keep;
    return m_plain;
}

QWidget* MainWindow::firstStop() const
{
    const QWidget* shown = shownPlace();
    if (shown == m_compose)
        return m_compose->firstStop();
    if (shown == m_listen)
        return m_listen->firstStop();
    if (shown == m_hang)
        return m_hang->firstStop();
    if (shown == m_keep)
        return m_keep->firstStop();
    return shown == m_gather ? m_gather->firstStop() : m_plain->firstStop();
}

void MainWindow::takeNextStep()
{
    if (m_nextStep && m_sill->next()->isVisibleTo(m_sill))
        m_nextStep();
}

void MainWindow::refresh()
{
    m_rail->setPlace(m_place);
    QWidget* shown = shownPlace();
    // A page that is not shown forces no size on the window.
    for (int i = 0; i < m_places->count(); ++i) {
        QWidget* page = m_places->widget(i);
        const auto policy = page == shown ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        page->setSizePolicy(policy, policy);
    }
    m_places->setCurrentWidget(shown);
    refreshPlaces();
    refreshRail();
    refreshSill();
}

bool MainWindow::openBook(const QString& path)
{
    if (m_work.isBusy()) { // what it finds belongs to the book it was begun for
        sayToWait();
        return false;
    }
    const Result<> opened = m_session.open(path);
    if (!opened) {
        m_sill->announce(sentenceFor(opened.error()));
        return false;
    }
    m_notSaved.clear();
    const bool hasWords =
        !m_session.book().quotes.isEmpty() || !m_session.book().pictures.isEmpty();
    if (m_session.book().children.isEmpty())
        m_gather->go(GatherPart::Class); // the first thing missing
    go(hasWords ? Place::Compose : Place::Gather);
    if (m_session.isReadOnly())
        m_sill->announce(tr("Open for looking only: somebody else writes in this book, or the "
                            "folder may not be written."));
    if (const auto kept = RetentionJob{m_session.folder()}.run({}); kept && kept->isOver)
        m_sill->announce(inWords(*kept));
    return true;
}

} // namespace wainscot::ui
