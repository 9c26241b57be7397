#include "app/ui/frame/main_window.h"

#include <QPaintEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "app/jobs/sentences.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

MainWindow::MainWindow(QWidget* parent)
    : QWidget(parent)
    , m_menus(new QMenuBar)
    , m_kept(new QLabel)
    , m_rail(new Rail)
    , m_places(new QStackedWidget)
    , m_compose(new ComposePlace(m_session, m_work))
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
    connect(&m_session, &Session::changed, this, &MainWindow::refresh);
    connect(&m_session, &Session::moved, this, &MainWindow::refresh);
    connect(&m_session, &Session::refused, m_sill, &Sill::announce);
    connect(m_compose, &ComposePlace::stateChanged, this, &MainWindow::refreshSill);
    connect(m_compose, &ComposePlace::announced, m_sill, &Sill::announce);
    connect(m_compose, &ComposePlace::gatherAsked, this, [this] { go(Place::Gather); });
    refresh();
}

void MainWindow::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

void MainWindow::go(Place place)
{
    m_place = place;
    m_compose->endWriting(true);
    refresh();
    // What was just put in is not shown before the event loop comes round.
    QTimer::singleShot(0, this, [this] {
        QWidget* stop = m_session.isOpen() && m_place == Place::Compose ? m_compose->firstStop()
                                                                        : m_plain->firstStop();
        if (stop != nullptr)
            stop->setFocus(Qt::OtherFocusReason);
    });
}

void MainWindow::takeNextStep()
{
    if (m_nextStep && m_sill->next()->isVisibleTo(m_sill))
        m_nextStep();
}

void MainWindow::refresh()
{
    m_rail->setPlace(m_place);
    const bool compose = m_session.isOpen() && m_place == Place::Compose;
    QWidget* shown = compose ? static_cast<QWidget*>(m_compose) : m_plain;
    QWidget* hidden = compose ? static_cast<QWidget*>(m_plain) : m_compose;
    // A page that is not shown forces no size on the window.
    hidden->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    shown->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    m_places->setCurrentWidget(shown);
    if (!compose)
        refreshPlaces();
    refreshRail();
    refreshSill();
}

bool MainWindow::openBook(const QString& path)
{
    const Result<> opened = m_session.open(path);
    if (!opened) {
        m_sill->announce(sentenceFor(opened.error()));
        return false;
    }
    setWindowTitle(QStringLiteral("%1 \u2013 Wainscot").arg(m_session.book().info.title));
    const bool hasWords =
        !m_session.book().quotes.isEmpty() || !m_session.book().pictures.isEmpty();
    go(hasWords ? Place::Compose : Place::Gather);
    if (m_session.isReadOnly())
        m_sill->announce(tr("Open for looking only: somebody else writes in this book, or the "
                            "folder may not be written."));
    return true;
}

} // namespace wainscot::ui
