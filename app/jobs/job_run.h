// What every job is handed besides its own wishes: whom to tell, when to stop, what day it is.
#pragma once

#include "core/base/result.h"

#include <QDate>
#include <QString>

#include <atomic>
#include <functional>

namespace wainscot {

namespace engine {
struct Arrangement;
}

struct Progress {
    QString doing; // "Reading rain-3.jpg"
    int done = 0;
    int of = 0; // 0 = not known
};

struct JobRun {
    std::function<void(const Progress&)> onProgress; // may be empty; called from the job's thread
    // Told a plainer arrangement of a panel (1..) long before a job that arranges is done, to be
    // shown meanwhile; may be empty. Called from the job's thread, again when the panel's pieces
    // change.
    std::function<void(int panel, const engine::Arrangement&)> onFirst;
    const std::atomic<bool>* cancel = nullptr;
    QDate today = QDate::currentDate(); // ages are told for this day

    void report(const QString& doing, int done = 0, int of = 0) const
    {
        if (onProgress)
            onProgress({doing, done, of});
    }
    [[nodiscard]] bool cancelled() const { return cancel != nullptr && cancel->load(); }
};

// What a job answers when the person stopped it; the book is as it was.
[[nodiscard]] inline Error stoppedByPerson()
{
    return {ErrorCode::Cancelled, {}, {}};
}

} // namespace wainscot
