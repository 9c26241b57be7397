// Every action with its key, in the menus Book, Edit, Go, Show and Help.
#include "app/ui/frame/main_window.h"

#include <QActionGroup>
#include <QApplication>
#include <QShortcut>
#include <QTimer>

#include "app/ui/languages/languages.h"

namespace wainscot::ui {

void MainWindow::makeMenus()
{
    makeBookMenu(*m_menus->addMenu(tr("&Book")));
    makeEditMenu(*m_menus->addMenu(tr("&Edit")));
    makeGoMenu(*m_menus->addMenu(tr("&Go")));
    makeShowMenu(*m_menus->addMenu(tr("&Show")));
    makeHelpMenu(*m_menus->addMenu(tr("&Help")));
}

void MainWindow::makeBookMenu(QMenu& menu)
{
    menu.addAction(tr("Begin a book..."), this, [this] { askBegin(); })
        ->setShortcut(Qt::CTRL | Qt::Key_N);
    menu.addAction(tr("Open a book..."), this, [this] { askOpen(); })
        ->setShortcut(Qt::CTRL | Qt::Key_O);
    menu.addAction(tr("Look at a sample class"), this, [this] { askSample(); });
    m_needBook << menu.addAction(tr("Name and language..."), this, [this] { askAboutBook(); });
    menu.addSeparator();
    m_needBook << menu.addAction(
        tr("Begin something new..."), this, [this] { askNewExperience(); });
    m_needBook << menu.addAction(tr("Gather a class list..."), this, [this] { askChildren(); })
               << menu.addAction(tr("Gather words..."), this, [this] { askWords(); })
               << menu.addAction(tr("Gather pictures..."), this, [this] { askPhotos(); });
    m_needBook << menu.addAction(
        tr("Print sheets to answer on..."), this, [this] { askAnswerSheets(); });
    menu.addSeparator();
    QAction* pdf = menu.addAction(tr("Make the PDF..."), this, [this] { askExport(); });
    pdf->setShortcut(Qt::CTRL | Qt::Key_E);
    QAction* sheets = menu.addAction(tr("On sheets..."), this, [this] { askSheets(); });
    QAction* pictures = menu.addAction(tr("As pictures..."), this, [this] { askPictures(); });
    QAction* shop = menu.addAction(tr("A PDF that is trimmed..."), this, [this] { askShopPdf(); });
    QAction* print = menu.addAction(tr("Print..."), this, [this] { askPrint(); });
    print->setShortcut(Qt::CTRL | Qt::Key_P);
    m_needPanel << pdf << sheets << pictures << shop << print;
    menu.addSeparator();
    m_needBook << menu.addAction(tr("Make the term's file..."), this, [this] { askTerm(); });
    m_needBook << menu.addAction(
        tr("Pack the whole book to carry..."), this, [this] { askPack(); });
    menu.addAction(tr("Unpack a book..."), this, [this] { askUnpack(); });
    m_needBook << menu.addAction(tr("Take the data out..."), this, [this] { askTakeDataOut(); });
    menu.addAction(tr("Bring data in..."), this, [this] { askBringDataIn(); });
    menu.addSeparator();
    m_needBook << menu.addAction(tr("Go back to an earlier day..."), this, [this] { askGoBack(); });
    menu.addAction(tr("Repair a book..."), this, [this] { askRepair(); });
    menu.addSeparator();
    menu.addAction(tr("Close"), this, &QWidget::close)->setShortcut(Qt::CTRL | Qt::Key_Q);
}

void MainWindow::makeEditMenu(QMenu& menu)
{
    m_undo = menu.addAction(tr("Undo"), this, [this] {
        m_compose->endWriting(true);
        m_compose->canvas().putBack();
        m_session.undo();
    });
    m_undo->setShortcut(Qt::CTRL | Qt::Key_Z);
    m_redo = menu.addAction(tr("Do again"), this, [this] {
        m_compose->canvas().putBack();
        m_session.redo();
    });
    m_redo->setShortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_Z);
    menu.addAction(m_compose->actions().history);
    menu.addSeparator();
    const ComposePlace::Actions& a = m_compose->actions();
    menu.addActions({a.cut, a.copy, a.paste, a.onceMore, a.all});
    menu.addSeparator();
    QMenu* piece = menu.addMenu(tr("The piece in hand"));
    piece->addActions({a.write,
        a.allWords,
        a.bigger,
        a.smaller,
        a.crop,
        a.treat,
        a.swap,
        a.pin,
        a.takeOff,
        a.people,
        a.names,
        a.why,
        a.lift,
        a.toEarlier,
        a.toLater,
        a.startPanel});
    QMenu* several = menu.addMenu(tr("Several pieces"));
    several->addActions(a.lines);
    several->addActions({a.arrangeThese, a.together});
    menu.addSeparator();
    menu.addActions({a.arrangeAgain, a.otherWays, a.arrangeDisplay, a.proposeAnew});
    QMenu* look = menu.addMenu(tr("How it looks"));
    look->addActions({a.kinds, a.keepAsKind, a.colours, a.letters, a.pieceColours, a.pieceLetters});
    QMenu* panel = menu.addMenu(tr("Panel"));
    panel->addActions({a.addPanel, a.namePanel, a.panelOnceMore, a.takeDownPanel, a.lockPanel});
    menu.addSeparator();
    menu.addMenu(tr("Taking words down"))->addActions(m_gather->words().actions());
    menu.addSeparator();
    menu.addAction(a.find);
}

void MainWindow::makeGoMenu(QMenu& menu)
{
    for (int i = 0; i < kPlaces; ++i) {
        const Place place = static_cast<Place>(i);
        QAction* one = menu.addAction(nameOf(place), this, [this, place] { go(place); });
        one->setShortcut(QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + i)));
        m_needBook << one;
    }
    makeListenMenu(*menu.addMenu(tr("In Listen")));
    QAction* find = menu.addAction(tr("Find in the whole book..."), this, [this] { askFind(); });
    find->setShortcut(Qt::CTRL | Qt::ALT | Qt::Key_F);
    m_needBook << find;
    menu.addSeparator();
    QAction* seen = menu.addAction(tr("Note what you see"), this, [this] { noteWhatYouSee(); });
    seen->setShortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_N);
    m_needBook << seen;
    menu.addAction(tr("Next step"), this, [this] { takeNextStep(); })->setShortcut(Qt::Key_F9);
    menu.addAction(tr("Next region"), this, [this] { moveRegion(1); })->setShortcut(Qt::Key_F6);
    menu.addAction(tr("Region before"), this, [this] { moveRegion(-1); })
        ->setShortcut(Qt::SHIFT | Qt::Key_F6);
    menu.addSeparator();
    menu.addActions({m_compose->actions().nextFinding,
        m_compose->actions().earlierFinding,
        m_compose->actions().mend});
}

void MainWindow::makeListenMenu(QMenu& menu)
{
    const auto add = [&](const QString& name, Qt::Key key, const std::function<void()>& does) {
        QAction* one = menu.addAction(name, this, [this, does] {
            go(Place::Listen);
            does();
        });
        one->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | key));
        m_needBook << one;
    };
    using Task = ListenPlace::Task;
    add(tr("Groups"), Qt::Key_G, [this] { m_listen->show(Task::Groups); });
    add(tr("Meetings"), Qt::Key_M, [this] { m_listen->show(Task::Meetings); });
    add(tr("Looking back"), Qt::Key_B, [this] { m_listen->show(Task::LookingBack); });
    add(tr("A draft for a wall"), Qt::Key_W, [this] { m_listen->makeDraft(); });
    QAction* find = menu.addAction(tr("Find in the groups"), this, [this] {
        go(Place::Listen);
        m_listen->show(Task::Groups);
        // After the place has given the keyboard to its first stop.
        QTimer::singleShot(0, &m_listen->groups(), &GroupsPage::find);
    });
    find->setShortcut(Qt::CTRL | Qt::Key_F);
    find->setShortcutContext(Qt::WidgetWithChildrenShortcut); // elsewhere the key finds otherwise
    m_listen->addAction(find);
    m_needBook << find;
}

void MainWindow::makeShowMenu(QMenu& menu)
{
    const ComposePlace::Actions& a = m_compose->actions();
    menu.addAction(a.drawer);
    menu.addSeparator();
    menu.addActions({a.whole, a.nearer, a.further, a.trueSize, a.stepBack});
    menu.addSeparator();
    menu.addActions({a.rulers, a.inches});
    menu.addSeparator();
    makeLanguageMenu(*menu.addMenu(tr("Language")));
}

void MainWindow::makeLanguageMenu(QMenu& menu)
{
    auto* one = new QActionGroup(&menu);
    for (const QString& language : QStringList{QString()} + windowLanguages()) {
        QAction* choice =
            menu.addAction(language.isEmpty() ? tr("As this computer's") : nameOfLanguage(language),
                this,
                [this, language] {
                    chooseLanguage(language);
                    m_sill->announce(tr("The window speaks it from the next start."));
                });
        choice->setCheckable(true);
        choice->setChecked(language == chosenLanguage());
        one->addAction(choice);
    }
}

void MainWindow::makeHelpMenu(QMenu& menu)
{
    menu.addAction(tr("First steps"), this, [this] { showFirstSteps(); })->setShortcut(Qt::Key_F1);
    QAction* keys = menu.addAction(tr("All keys"), this, [this] { showKeys(); });
    keys->setShortcut(Qt::CTRL | Qt::Key_Slash);
    // A question mark is a letter wherever one writes, so it asks only on the panel.
    QObject::connect(new QShortcut(QKeySequence(Qt::Key_Question),
                         &m_compose->canvas(),
                         nullptr,
                         nullptr,
                         Qt::WidgetShortcut),
        &QShortcut::activated,
        this,
        &MainWindow::showKeys);
}

void MainWindow::moveRegion(int step)
{
    QVector<QWidget*> regions;
    if (m_rail->isVisible())
        regions << m_rail->firstStop();
    if (shownPlace() == m_compose)
        regions << m_compose->regions();
    else if (shownPlace() == m_gather)
        regions << m_gather->regions();
    else if (shownPlace() == m_listen)
        regions << m_listen->regions();
    else if (shownPlace() == m_hang)
        regions << m_hang->regions();
    else if (shownPlace() == m_keep)
        regions << m_keep->regions();
    else if (m_plain->firstStop() != nullptr)
        regions << m_plain->firstStop();
    if (m_sill->next()->isVisible())
        regions << m_sill->next();
    regions.removeAll(nullptr);
    if (regions.isEmpty())
        return;
    // The region one is in holds the focus widget in the same parent as its first stop.
    QWidget* focus = QApplication::focusWidget();
    int at = -1;
    for (int i = 0; i < regions.size(); ++i) {
        if (focus != nullptr
            && (regions.at(i) == focus || regions.at(i)->parentWidget() == focus->parentWidget()))
            at = i;
    }
    regions.at((at + step + regions.size()) % regions.size())->setFocus(Qt::TabFocusReason);
}

} // namespace wainscot::ui
