// wainscot [--light | --dark] [BOOK]: the editor.
#include <QApplication>
#include <QCommandLineParser>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <QToolTip>

#include <memory>

#include "app/ui/canvas/canvas_access.h"
#include "app/ui/frame/main_window.h"
#include "app/ui/kit/style.h"
#include "app/ui/kit/tokens.h"

int main(int argc, char** argv)
{
    const QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("wainscot"));
    QApplication::setApplicationDisplayName(QStringLiteral("Wainscot"));
    using namespace wainscot::ui;
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
    window.resize(1366, 768);
    window.show();
    if (const QStringList books = parser.positionalArguments(); !books.isEmpty())
        window.openBook(books.first());
    return QApplication::exec();
}
