// The actions of Compose with their keys.
#include "app/ui/compose/compose_place.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMenu>
#include <QMimeData>

#include "app/jobs/program_settings.h"

namespace wainscot::ui {

QAction* ComposePlace::action(
    const QString& text, const QKeySequence& key, std::function<void()> does, bool onlyOnPanel)
{
    auto* made = new QAction(text, this);
    made->setShortcut(key);
    // Plain letters are commands only while the panel has the keyboard.
    made->setShortcutContext(onlyOnPanel ? Qt::WidgetShortcut : Qt::WidgetWithChildrenShortcut);
    if (onlyOnPanel)
        canvas().addAction(made);
    else
        addAction(made);
    connect(made, &QAction::triggered, this, std::move(does));
    return made;
}

void ComposePlace::makeActions()
{
    makePieceActions();
    makePanelActions();
    makeFindingActions();
    makeViewActions();
}

void ComposePlace::makePieceActions()
{
    const auto on = [this](const QString& text, const QKeySequence& key, PieceAction what) {
        return action(
            text, key, [this, what] { perform(what); }, true);
    };
    Actions& a = m_actions;
    a.write = on(tr("Write"), {}, PieceAction::Write);
    a.allWords = on(tr("All the words"), Qt::Key_J, PieceAction::AllWords);
    a.bigger = on(tr("Bigger"), Qt::Key_Plus, PieceAction::Bigger);
    a.smaller = on(tr("Smaller"), Qt::Key_Minus, PieceAction::Smaller);
    a.crop = on(tr("Crop"), Qt::Key_C, PieceAction::Crop);
    a.treat = on(tr("Turn, straighten, cover"), Qt::Key_O, PieceAction::Treat);
    a.swap = on(tr("Swap"), Qt::Key_S, PieceAction::Swap);
    a.pin = on(tr("Pin here"), Qt::Key_P, PieceAction::Pin);
    a.takeOff = on(tr("Take off"), Qt::Key_Delete, PieceAction::TakeOff);
    a.onceMore = on(tr("Once more"), Qt::CTRL | Qt::Key_D, PieceAction::OnceMore);
    a.people = on(tr("Say who is in it"), Qt::Key_W, PieceAction::People);
    a.names = on(tr("Name who is in it"), Qt::Key_N, PieceAction::Names);
    a.why = on(tr("Why it is here"), Qt::Key_Y, PieceAction::Why);
    a.lines = {on(tr("Left edges"), Qt::Key_L, PieceAction::AlignLeft),
        on(tr("Centres"), Qt::Key_E, PieceAction::AlignCentre),
        on(tr("Right edges"), Qt::Key_R, PieceAction::AlignRight),
        on(tr("Top edges"), Qt::Key_T, PieceAction::AlignTop),
        on(tr("Middles"), Qt::Key_M, PieceAction::AlignMiddle),
        on(tr("Feet"), Qt::Key_F, PieceAction::AlignFoot),
        on(tr("Even across"), Qt::Key_H, PieceAction::SpreadAcross),
        on(tr("Even down"), Qt::Key_V, PieceAction::SpreadDown)};
    a.arrangeThese = on(tr("Arrange only these"), Qt::Key_A, PieceAction::ArrangeThese);
    a.together = on(tr("Keep together"), Qt::Key_K, PieceAction::Together);
    a.startPanel = on(tr("Start a new panel here"), Qt::Key_B, PieceAction::StartPanel);
    a.lift = action(
        tr("Lift"), {}, [this] { canvas().lift(); }, true);
    a.all = action(
        tr("Take all in hand"), Qt::CTRL | Qt::Key_A, [this] { canvas().holdAll(); }, true);
    a.copy = action(
        tr("Copy"), Qt::CTRL | Qt::Key_C, [this] { copyHeld(false); }, true);
    a.cut = action(
        tr("Cut"), Qt::CTRL | Qt::Key_X, [this] { copyHeld(true); }, true);
    a.paste = action(tr("Paste"), Qt::CTRL | Qt::Key_V, [this] { paste(); });
    a.toEarlier = action(
        tr("To the panel before"), Qt::CTRL | Qt::Key_PageUp, [this] { carryBy(-1); }, true);
    a.toLater = action(
        tr("To the panel after"), Qt::CTRL | Qt::Key_PageDown, [this] { carryBy(1); }, true);
}

void ComposePlace::makePanelActions()
{
    Actions& a = m_actions;
    a.arrangeAgain =
        action(tr("Arrange again"), Qt::CTRL | Qt::Key_R, [this] { m_desk.arrangeAgain(); });
    a.arrangeDisplay = action(tr("Arrange the whole display"),
        Qt::CTRL | Qt::SHIFT | Qt::Key_R,
        [this] { m_desk.arrangeDisplay(); });
    a.otherWays =
        action(tr("Three other ways"), Qt::CTRL | Qt::Key_T, [this] { m_desk.findOtherWays(); });
    a.proposeAnew = action(tr("Propose a panel anew"), {}, [this] { m_desk.propose(); });
    a.addPanel = action(tr("New panel"), {}, [this] { m_desk.addPanelAfter(); });
    a.namePanel = action(
        tr("Name this panel"), {}, [this] { m_stage->hung().askName(m_session.panel()->id); });
    a.panelOnceMore = action(tr("This panel once more"), Qt::CTRL | Qt::SHIFT | Qt::Key_D, [this] {
        m_desk.duplicatePanel(m_session.panel()->id);
    });
    a.takeDownPanel = action(
        tr("Take this panel down"), {}, [this] { m_desk.removePanel(m_session.panel()->id); });
    a.lockPanel =
        action(tr("Lock this panel"), {}, [this] { m_desk.setLocked(!m_desk.isLocked()); });
    a.lockPanel->setCheckable(true);
    a.history =
        action(tr("How this display came about"), Qt::CTRL | Qt::Key_H, [this] { showHistory(); });
    a.kinds = action(
        tr("Kinds of panel"), Qt::CTRL | Qt::SHIFT | Qt::Key_K, [this] { m_desk.findKinds(); });
    a.keepAsKind =
        action(tr("Keep this panel as a kind of your own..."), {}, [this] { askTemplateName(); });
    a.colours =
        action(tr("Colours"), Qt::CTRL | Qt::SHIFT | Qt::Key_C, [this] { chooseColours(false); });
    a.letters =
        action(tr("Letters"), Qt::CTRL | Qt::SHIFT | Qt::Key_F, [this] { chooseLetters(false); });
    a.pieceColours = action(tr("Colours of this piece"), {}, [this] { chooseColours(true); });
    a.pieceLetters = action(tr("Letters of this piece"), {}, [this] { chooseLetters(true); });
}

void ComposePlace::makeViewActions()
{
    Actions& a = m_actions;
    a.drawer = action(tr("What you have"), Qt::Key_F4, [this] {
        m_drawerWanted = !m_drawerWanted;
        m_drawer->setVisible(m_drawerWanted);
        m_rule->setVisible(m_drawerWanted);
    });
    a.find = action(tr("Find in what you have"), Qt::CTRL | Qt::Key_F, [this] {
        if (!m_drawerWanted)
            m_actions.drawer->trigger();
        m_drawer->find();
    });
    a.whole = action(tr("Whole panel"), Qt::CTRL | Qt::Key_0, [this] { canvas().fitWhole(); });
    a.nearer = action(tr("Nearer"), Qt::CTRL | Qt::Key_Plus, [this] { canvas().zoomBy(1.25); });
    a.nearer->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)});
    a.further =
        action(tr("Further"), Qt::CTRL | Qt::Key_Minus, [this] { canvas().zoomBy(1 / 1.25); });
    a.trueSize = action(
        tr("True size"), Qt::CTRL | Qt::ALT | Qt::Key_1, [this] { canvas().zoomToTrueSize(); });
    a.stepBack = action(tr("Step back"), Qt::CTRL | Qt::ALT | Qt::Key_2, [this] { stepBack(); });
    a.rulers = action(tr("Rulers"), Qt::CTRL | Qt::Key_L, [this] { setRulers(); });
    a.inches = action(tr("Inches"), Qt::CTRL | Qt::SHIFT | Qt::Key_L, [this] { setRulers(); });
    const ProgramSettings settings;
    a.rulers->setCheckable(true);
    a.rulers->setChecked(settings.value(QStringLiteral("rulers")).toBool());
    a.inches->setCheckable(true);
    a.inches->setChecked(settings
                             .value(QStringLiteral("inches"),
                                 QLocale().measurementSystem() == QLocale::ImperialUSSystem)
                             .toBool());
    canvas().setRulers(a.rulers->isChecked(), a.inches->isChecked());
    connect(&canvas(), &Canvas::viewChanged, this, &ComposePlace::refreshTaskLine);
    connect(&canvas(), &Canvas::menuAsked, this, &ComposePlace::showMenu);
}

void ComposePlace::setRulers()
{
    ProgramSettings settings;
    settings.setValue(QStringLiteral("rulers"), m_actions.rulers->isChecked());
    settings.setValue(QStringLiteral("inches"), m_actions.inches->isChecked());
    canvas().setRulers(m_actions.rulers->isChecked(), m_actions.inches->isChecked());
}

// What can be done here, for who looks for it where the piece is.
void ComposePlace::showMenu(QPoint global)
{
    const Actions& a = m_actions;
    QMenu menu(this);
    const auto offer = [&menu](const QVector<QAction*>& actions) {
        for (QAction* one : actions) {
            if (one->isEnabled())
                menu.addAction(one);
        }
        menu.addSeparator();
    };
    if (canvas().inHand().isValid()) {
        offer({a.write, a.bigger, a.smaller, a.crop, a.treat, a.swap, a.pin, a.people, a.names});
        offer(a.lines + QVector<QAction*>{a.arrangeThese});
        offer({a.together, a.startPanel, a.toEarlier, a.toLater, a.pieceColours, a.pieceLetters});
        offer({a.cut, a.copy, a.onceMore, a.takeOff});
    }
    offer({a.paste, a.all, a.arrangeAgain});
    offer({a.kinds, a.colours, a.letters});
    menu.exec(global);
}

void ComposePlace::copyHeld(bool cut)
{
    const PieceIds held = canvas().held();
    if (held.empty())
        return;
    QGuiApplication::clipboard()->setMimeData(m_desk.copyOf(held));
    if (cut)
        m_desk.takeOff(held);
    else
        Q_EMIT announced(
            held.size() == 1 ? tr("Copied.") : tr("Copied %1 pieces.").arg(held.size()));
}

void ComposePlace::paste()
{
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    if (mime == nullptr || m_session.experience() == nullptr)
        return;
    const Incoming incoming = incomingFrom(*mime, true);
    if (incoming.isEmpty()) {
        Q_EMIT announced(tr("There is nothing to paste that can hang on a panel."));
        return;
    }
    if (m_session.panel() == nullptr)
        m_desk.beginEmpty();
    m_desk.take(incoming, std::nullopt);
}

void ComposePlace::carryBy(int step)
{
    if (m_session.panel() == nullptr)
        return;
    const auto panels = panelsOf(m_session.book(), m_session.display()->id);
    for (int i = 0; i < int(panels.size()); ++i) {
        const int to = i + step;
        if (panels.at(std::size_t(i))->id != m_session.panel()->id || to < 0
            || to >= int(panels.size()))
            continue;
        m_desk.carry(canvas().held(), panels.at(std::size_t(to))->id);
        return;
    }
    Q_EMIT announced(tr("There is no panel on that side."));
}

} // namespace wainscot::ui
