// The main of tests of the window: a Qt application without a screen, in the program's own look.
#include <QApplication>
#include <QStandardPaths>

#include <gmock/gmock.h>

#include "app/ui/canvas/canvas_access.h"
#include "app/ui/kit/style.h"
#include "app/ui/kit/tokens.h"

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    QStandardPaths::setTestModeEnabled(true); // small copies of pictures go to a folder of tests
    QApplication::setStyle(new wainscot::ui::WindowStyle);
    QApplication::setPalette(wainscot::ui::paletteFor(wainscot::ui::tokens()));
    wainscot::ui::installCanvasAccess();
    ::testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
