#include "app/ui/frame/sill.h"

#include <QAccessible>
#include <QApplication>
#include <QHBoxLayout>
#include <QPaintEvent>
#include <QPainter>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kShowWorkAfterMs = 400; // shorter work needs no words
constexpr qint64 kReadMs = 4000; // two lines can be read in it (common practice, no source)

} // namespace

Sill::Sill(QWidget* parent)
    : QWidget(parent)
    , m_done(new OneLine(1.0, QFont::DemiBold))
    , m_missing(new OneLine(0.88, QFont::Normal, true))
    , m_work(new QWidget)
    , m_doing(new OneLine(0.92))
    , m_progress(new QProgressBar)
    , m_undo(new Button(Button::Form::Word, tr("Undo"), Icon::Undo))
    , m_next(new Button(Button::Form::Main, QString()))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(air(4), air(1.5), air(4), air(1.5));
    row->setSpacing(air(3));
    auto* sentences = new QVBoxLayout;
    sentences->setSpacing(air(0.5));
    sentences->addStretch();
    sentences->addWidget(m_done);
    sentences->addWidget(m_missing);
    sentences->addStretch();
    row->addLayout(sentences, 1);

    auto* work = new QVBoxLayout(m_work);
    work->setContentsMargins(0, 0, 0, 0);
    work->setSpacing(air(0.5));
    auto* words = new QHBoxLayout;
    m_doing->setMinimumWidth(scaled(240));
    words->addWidget(m_doing, 1);
    auto* stop = new Button(Button::Form::Word, tr("Stop"));
    stop->setRelativeSize(0.92);
    connect(stop, &Button::clicked, this, &Sill::stopAsked);
    words->addWidget(stop);
    work->addLayout(words);
    m_progress->setTextVisible(false);
    m_progress->setFixedHeight(scaled(5));
    m_progress->setAccessibleName(tr("How far it is"));
    work->addWidget(m_progress);
    m_work->hide();
    row->addWidget(m_work);

    m_undo->setQuiet(true);
    m_undo->setDetail(QStringLiteral(" "));
    connect(m_undo, &Button::clicked, this, &Sill::undoAsked);
    row->addWidget(m_undo);
    m_next->setKeyHint(QStringLiteral("F9"));
    connect(m_next, &Button::clicked, this, &Sill::nextAsked);
    row->addWidget(m_next);
    m_showWork.setSingleShot(true);
    m_showWork.setInterval(kShowWorkAfterMs);
    connect(&m_showWork, &QTimer::timeout, this, [this] {
        m_work->show();
        m_next->hide();
    });
    qApp->installEventFilter(this);
    setFixedHeight(qMax(scaled(56), sizeHint().height()));
}

void Sill::say(const QString& done, const QString& missing)
{
    m_done->setText(done);
    m_waiting = missing;
    if (!m_announced.isValid())
        m_missing->setText(missing);
}

void Sill::announce(const QString& sentence)
{
    if (!m_announced.isValid())
        m_waiting = m_missing->text();
    m_missing->setText(sentence);
    m_announced.start();
    // Said politely to who does not see the sill.
    QAccessibleEvent alert(m_missing, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void Sill::letGo()
{
    if (!m_announced.isValid())
        return;
    m_announced.invalidate();
    m_missing->setText(m_waiting);
}

// Whoever goes on working has read it.
bool Sill::eventFilter(QObject* watched, QEvent* event)
{
    const bool pressed =
        event->type() == QEvent::KeyPress || event->type() == QEvent::MouseButtonPress;
    if (pressed && m_announced.isValid() && m_announced.elapsed() > kReadMs)
        letGo();
    return QWidget::eventFilter(watched, event);
}

void Sill::setUndo(const QString& what)
{
    m_undo->setVisible(!what.isEmpty());
    m_undo->setDetail(what);
    m_undo->setAccessibleName(tr("Undo: %1").arg(what));
}

void Sill::setNext(const QString& step)
{
    m_hasNext = !step.isEmpty();
    m_next->setText(step);
    m_next->setAccessibleName(step);
    m_next->updateGeometry();
    m_next->update();
    m_next->setVisible(m_hasNext && !m_work->isVisible());
}

QString Sill::nextStep() const
{
    return m_hasNext ? m_next->text() : QString();
}

void Sill::workStarted(const QString& name)
{
    m_doing->setText(name);
    m_progress->setRange(0, 0);
    m_showWork.start();
}

void Sill::workProgressed(const QString& doing, int done, int of)
{
    m_doing->setText(of > 0 ? tr("%1: %2 of %3").arg(doing).arg(done).arg(of) : doing);
    m_progress->setRange(0, of);
    m_progress->setValue(done);
}

void Sill::workEnded()
{
    m_showWork.stop();
    m_work->hide();
    m_next->setVisible(m_hasNext);
}

void Sill::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
