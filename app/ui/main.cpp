// wainscot [BOOK]: the editor.
#include <QApplication>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <QTimer>
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
    const std::unique_ptr<QStyle> usual(QStyleFactory::create(QStringLiteral("Fusion")));
    const QColor usualHighlight = usual->standardPalette().color(QPalette::Highlight);
    setTokens(tokensFor(QApplication::palette(), usualHighlight));
    QApplication::setStyle(new WindowStyle);
    QApplication::setPalette(paletteFor(tokens()));
    QToolTip::setFont(interfaceFont(0.95));
    installCanvasAccess();

    MainWindow window;
    window.resize(1366, 768);
    window.show();
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() > 1)
        window.openBook(arguments.at(1));
    return QApplication::exec();
}
