#include "app/ui/session/work.h"

#include <QEventLoop>

namespace wainscot::ui {

Work::Work(QObject* parent)
    : QObject(parent)
{
    m_thread.setMaxThreadCount(1);
}

Work::~Work()
{
    m_cancel = true;
    m_thread.waitForDone();
}

bool Work::startAny(const QString& name, Body body)
{
    if (m_busy) {
        Q_EMIT refused(m_name);
        return false;
    }
    m_busy = true;
    m_cancel = false;
    m_name = name;
    Q_EMIT started(name);
    m_thread.start([this, body = std::move(body)] {
        JobRun run;
        run.cancel = &m_cancel;
        run.onProgress = [this](const Progress& progress) {
            QMetaObject::invokeMethod(
                this,
                [this, progress] { Q_EMIT progressed(progress.doing, progress.done, progress.of); },
                Qt::QueuedConnection);
        };
        const std::function<void()> done = body(run);
        QMetaObject::invokeMethod(
            this,
            [this, done] {
                m_busy = false;
                Q_EMIT ended();
                done();
            },
            Qt::QueuedConnection);
    });
    return true;
}

void Work::stop()
{
    m_cancel = true;
}

void Work::waitForEnd()
{
    // Not processEvents(WaitForMoreEvents): outside glib it may tell the end and then wait for
    // more.
    QEventLoop loop;
    connect(this, &Work::ended, &loop, &QEventLoop::quit);
    while (m_busy)
        loop.exec();
}

} // namespace wainscot::ui
