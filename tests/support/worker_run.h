// Starts the worker program on a book, to be struck down or with a failing disk.
#pragma once

#include <QProcessEnvironment>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

namespace wainscot {

struct FailingDisk {
    int at = 0; // which change of the disk fails, from 1; 0 = none
    bool from = false; // and all after it
};

// A disk far away: slow, in pieces, interrupted (seed 0 = not so).
struct FarDisk {
    unsigned seed = 0;
    int breaks = 0; // of a thousand calls so many fail
    bool locks = true;
};

struct WorkerEnd {
    int exit = -1; // -1 = it died
    int acknowledged = 0;
    bool failed = false; // the disk did fail
    QString said; // on standard error
};

class Worker {
public:
    // Everything happens in a folder of its own, in memory where the system has such a place.
    Worker();
    [[nodiscard]] QString at(const QString& name) const;

    // Runs the worker to its end.
    WorkerEnd run(const QStringList& words, FailingDisk disk = {}) const;
    WorkerEnd runFarAway(const QStringList& words, FarDisk disk) const;
    // Kills it (SIGKILL) that many microseconds after it was started, or after the acknowledgement
    // counted. `exit` is 0 when it had ended before.
    WorkerEnd runAndKill(const QStringList& words, int afterDots, unsigned microseconds) const;
    // How long it takes by itself, in microseconds.
    unsigned duration(const QStringList& words) const;

private:
    WorkerEnd run(const QStringList& words, const QProcessEnvironment& environment) const;
    [[nodiscard]] QProcessEnvironment preloading(const char* library) const;

    QTemporaryDir m_place;
};

// Copies a folder and what is in it; what is there is replaced.
void copyFolder(const QString& from, const QString& to);

} // namespace wainscot
