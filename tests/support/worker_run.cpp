#include "tests/support/worker_run.h"

#include <QDir>
#include <QDirIterator>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QProcess>

#include <gtest/gtest.h>

#include <csignal>
#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace wainscot {

namespace {

QString place()
{
    const QString memory = QStringLiteral("/dev/shm");
    const QString where = QFileInfo(memory).isWritable() ? memory : QDir::tempPath();
    return where + QStringLiteral("/wainscot-worker-XXXXXX");
}

} // namespace

Worker::Worker()
    : m_place(place())
{
    QDir(m_place.path()).mkdir(QStringLiteral("tmp"));
}

QString Worker::at(const QString& name) const
{
    return m_place.filePath(name);
}

QProcessEnvironment Worker::preloading(const char* library) const
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("TMPDIR"), at(QStringLiteral("tmp")));
    if (library != nullptr) {
        environment.insert(QStringLiteral("LD_PRELOAD"), QString::fromLatin1(library));
        environment.insert(QStringLiteral("ASAN_OPTIONS"),
            environment.value(QStringLiteral("ASAN_OPTIONS"))
                + QStringLiteral(":verify_asan_link_order=0"));
    }
    return environment;
}

WorkerEnd Worker::run(const QStringList& words, FailingDisk disk) const
{
    const QString told =
        QDir::tempPath() + QStringLiteral("/failing-disk-") + QString::number(::getpid());
    QFile::remove(told);
    auto environment = preloading(disk.at > 0 ? FAILING_DISK : nullptr);
    if (disk.at > 0) {
        environment.insert(QStringLiteral("FAILING_DISK_AT"), QString::number(disk.at));
        environment.insert(QStringLiteral("FAILING_DISK_FROM"), QString::number(int(disk.from)));
        environment.insert(QStringLiteral("FAILING_DISK_UNDER"), m_place.path());
        environment.insert(QStringLiteral("FAILING_DISK_TOLD"), told);
    }
    WorkerEnd end = run(words, environment);
    end.failed = QFile::exists(told);
    QFile::remove(told);
    return end;
}

WorkerEnd Worker::runFarAway(const QStringList& words, FarDisk disk) const
{
    auto environment = preloading(FAR_DISK);
    environment.insert(QStringLiteral("FAR_DISK_SEED"), QString::number(disk.seed));
    environment.insert(QStringLiteral("FAR_DISK_BREAKS"), QString::number(disk.breaks));
    environment.insert(QStringLiteral("FAR_DISK_LOCKS"), QString::number(int(disk.locks)));
    environment.insert(QStringLiteral("FAR_DISK_UNDER"), m_place.path());
    return run(words, environment);
}

WorkerEnd Worker::run(const QStringList& words, const QProcessEnvironment& environment) const
{
    QProcess process;
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(STORE_WORKER), words);
    EXPECT_TRUE(process.waitForFinished(60'000));
    const bool exited = process.exitStatus() == QProcess::NormalExit;
    return {exited ? process.exitCode() : -1,
        int(process.readAllStandardOutput().size()),
        false,
        QString::fromUtf8(process.readAllStandardError())};
}

WorkerEnd Worker::runAndKill(const QStringList& words, int afterDots, unsigned microseconds) const
{
    int pipe[2] = {0, 0};
    EXPECT_EQ(::pipe(pipe), 0);
    std::vector<QByteArray> text{QByteArray(STORE_WORKER)};
    for (const QString& word : words)
        text.push_back(word.toUtf8());
    std::vector<char*> arguments;
    arguments.reserve(text.size() + 1);
    for (QByteArray& word : text)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    const QByteArray temporary = at(QStringLiteral("tmp")).toUtf8();
    const pid_t worker = ::fork();
    if (worker == 0) {
        ::setenv("TMPDIR", temporary.constData(), 1);
        ::dup2(pipe[1], STDOUT_FILENO);
        ::dup2(::open("/dev/null", O_WRONLY), STDERR_FILENO);
        ::close(pipe[0]);
        ::close(pipe[1]);
        ::execv(STORE_WORKER, arguments.data());
        ::_exit(127);
    }
    ::close(pipe[1]);
    WorkerEnd end;
    char dot = 0;
    while (end.acknowledged < afterDots && ::read(pipe[0], &dot, 1) == 1)
        ++end.acknowledged;
    ::usleep(microseconds);
    ::kill(worker, SIGKILL);
    int status = 0;
    ::waitpid(worker, &status, 0);
    while (::read(pipe[0], &dot, 1) == 1)
        ++end.acknowledged;
    ::close(pipe[0]);
    end.exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return end;
}

unsigned Worker::duration(const QStringList& words) const
{
    QElapsedTimer timer;
    timer.start();
    const WorkerEnd end = run(words);
    EXPECT_EQ(end.exit, 0) << end.said.toStdString();
    return unsigned(timer.nsecsElapsed() / 1000);
}

void copyFolder(const QString& from, const QString& to)
{
    QDir(to).removeRecursively();
    QDir().mkpath(to);
    QDirIterator all(from, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (all.hasNext()) {
        const QString file = all.next();
        const QString copy = to + file.mid(from.size());
        QDir().mkpath(QFileInfo(copy).absolutePath());
        EXPECT_TRUE(QFile::copy(file, copy));
    }
}

} // namespace wainscot
