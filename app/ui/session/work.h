// Long work off the window's thread: one at a time, with progress and a way to stop it.
#pragma once

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>

#include "app/jobs/job_run.h"

namespace wainscot::ui {

class Work : public QObject {
    Q_OBJECT
public:
    explicit Work(QObject* parent = nullptr);
    ~Work() override; // stops what is running and waits for it

    // Runs `job` in a worker and then `done` with its answer in this object's thread. While
    // something else is running it does nothing but say `refused`, and answers false.
    template <class T>
    bool start(const QString& name,
        std::function<Result<T>(const JobRun&)> job,
        std::function<void(Result<T>)> done)
    {
        return startAny(name, [job, done](const JobRun& run) -> std::function<void()> {
            auto answer = std::make_shared<Result<T>>(job(run));
            return [done, answer] { done(std::move(*answer)); };
        });
    }

    void stop();
    [[nodiscard]] bool isBusy() const { return m_busy; }
    [[nodiscard]] const QString& name() const { return m_name; }
    void waitForEnd(); // for tests: until `done` has run

Q_SIGNALS:
    void started(const QString& name);
    void refused(const QString& running);
    void progressed(const QString& doing, int done, int of);
    void ended();

private:
    using Body = std::function<std::function<void()>(const JobRun&)>;
    bool startAny(const QString& name, Body body);

    QThreadPool m_thread;
    std::atomic<bool> m_cancel = false;
    bool m_busy = false;
    QString m_name;
};

} // namespace wainscot::ui
