// wainscot [--light | --dark] [BOOK]: the editor.
#include <QApplication>
#include <QCommandLineParser>
#include <QPalette>
#include <QScreen>
#include <QStyle>
#include <QStyleFactory>
#include <QToolTip>

#include <memory>

#include "app/ui/canvas/canvas_access.h"
#include "app/ui/frame/main_window.h"
#include "app/ui/kit/style.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/languages/languages.h"

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("wainscot"));
    QApplication::setApplicationDisplayName(QStringLiteral("Wainscot"));
    using namespace wainscot::ui;
    speakChosenLanguage(application);
    QCommandLineParser parser;
    parser.addPositionalArgument(QStringLiteral("book"), QStringLiteral("A book to open."));
    const QCommandLineOption light(
        QStringLiteral("light"), QStringLiteral("Light colours, whatever the system's are."));
    const QCommandLineOption dark(
        QStringLiteral("dark"), QStringLiteral("Dark colours, whatever the system's are."));
    parser.addOptions({light, dark});
    parser.addHelpOption();
    parser.process(application);
    const std::unique_ptr<QStyle> usual(QStyleFactory::create(QStringLiteral("Fusion")));
    const QColor usualHighlight = usual->standardPalette().color(QPalette::Highlight);
    setTokens(parser.isSet(dark)  ? darkTokens()
            : parser.isSet(light) ? lightTokens()
                                  : tokensFor(QApplication::palette(), usualHighlight));
    QApplication::setStyle(new WindowStyle);
    QApplication::setPalette(paletteFor(tokens()));
    QToolTip::setFont(interfaceFont(0.95));
    installCanvasAccess();

    MainWindow window;
    // Most of the screen; all of it where title bar and window would not fit on it together.
    const QSize least(1366, 768);
    const QSize screen = window.screen()->availableSize();
    window.resize((screen * 0.85).expandedTo(least).boundedTo(screen));
    if (screen.width() <= least.width() || screen.height() <= least.height() + 40)
        window.showMaximized();
    else
        window.show();
    if (const QStringList books = parser.positionalArguments(); !books.isEmpty())
        window.openBook(books.first());
    return QApplication::exec();
}
