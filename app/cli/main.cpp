// The command line: the same jobs as the window, without a screen.
#include "app/cli/program.h"

#include <QGuiApplication>

#include <csignal>
#include <cstdio>

namespace {

// Set by Ctrl+C; every job looks at it and leaves the book as it was.
std::atomic<bool> stopped{false};
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler may only set such a flag");

extern "C" void onInterrupt(int /*signal*/)
{
    stopped.store(true);
}

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("Wainscot"));
    std::signal(SIGINT, onInterrupt);
    std::signal(SIGTERM, onInterrupt);
    QTextStream out(stdout);
    QTextStream err(stderr);
    return wainscot::cli::runProgram(QCoreApplication::arguments().mid(1), out, err, &stopped);
}
