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

// Where no desktop session runs, Qt remarks that a folder for it is missing; the command line needs
// none, so that a person need not read it.
void passOn(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    if (!message.startsWith(QLatin1String("QStandardPaths: XDG_RUNTIME_DIR")))
        std::fprintf(stderr, "%s\n", qPrintable(qFormatLogMessage(type, context, message)));
}

} // namespace

int main(int argc, char** argv)
{
    qInstallMessageHandler(passOn);
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
