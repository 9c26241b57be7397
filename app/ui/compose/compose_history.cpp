// Panels to choose from: other ways to arrange this one, and what was done to the display.
#include "app/ui/compose/compose_place.h"

#include "app/ui/compose/panel_picture.h"
#include "app/ui/session/piece_edits.h"
#include "layout/typeset/typesetter.h"

namespace wainscot::ui {

namespace {

constexpr std::size_t kMostSteps = 24;
constexpr int kStepWidthPx = 320;

// The panel as it was, as its audience may see it today.
QPixmap pictureOf(const Book& shown, DisplayId id, PanelId panelId, PictureProvider& pictures)
{
    const Display* display = shown.displays.find(id);
    const Panel* panel = shown.panels.find(panelId);
    if (display == nullptr || panel == nullptr)
        return {};
    const PermissionRules rules(shown, *display, QDate::currentDate());
    const ClearedPanel cleared = rules.clear(*panel);
    return panelPicture(typeset(cleared, styleFor(cleared)), kStepWidthPx, 1.0, pictures);
}

} // namespace

void ComposePlace::stepBack()
{
    if (m_stage->stepBack().isVisible()) {
        m_stage->stepBack().close();
        return;
    }
    endWriting(true);
    canvas().putBack();
    const DrawnPanel* panel = m_desk.drawnPanel();
    if (panel == nullptr)
        return;
    m_stage->choice().close();
    m_stage->stepBack().open(*panel, [this](PieceId id) {
        const Piece* piece = m_desk.piece(id);
        return piece != nullptr ? nameFor(m_session.book(), *piece) : QString();
    });
}

void ComposePlace::showHistory()
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    endWriting(true);
    canvas().putBack();
    m_history = historyOf(m_session.book(), m_session.stepsDone(), display->id, kMostSteps);
    std::vector<PanelChoice::Way> ways;
    for (std::size_t i = 0; i < m_history.size(); ++i) {
        const QString& label = m_history[i].label;
        ways.push_back({label.isEmpty() ? tr("Before all this") : label,
            i == 0 ? tr("as it is now") : counted(int(i), tr("1 step back"), tr("%1 steps back")),
            {}});
    }
    m_stage->choice().open(tr("How this display came about"),
        tr("Choose one to bring the display back to it. That can be undone too."),
        ways,
        display->panelSize.height / display->panelSize.width);
    m_historyPainted = 0;
    m_paintHistory.start();
}

void ComposePlace::showWays(const std::vector<OtherWay>& ways)
{
    const Display* display = m_session.display();
    if (display == nullptr || canvas().isBusy() || isWriting())
        return;
    m_ways.clear();
    static const QStringList names{tr("One way"), tr("Another way"), tr("A third way")};
    std::vector<PanelChoice::Way> shown;
    for (const OtherWay& way : ways) {
        m_ways.push_back(way.pieces);
        const int moves = int(m_desk.movesTo(way.pieces).size());
        shown.push_back({names.value(int(shown.size())),
            counted(moves, tr("1 piece stands elsewhere"), tr("%1 pieces stand elsewhere")),
            panelPicture(way.drawn.list, kStepWidthPx, devicePixelRatioF(), m_shelf)});
    }
    m_stage->choice().open(ways.size() == 3 ? tr("Three other ways") : tr("Other ways"),
        tr("The same pieces, arranged differently. What is pinned stays."),
        shown,
        display->panelSize.height / display->panelSize.width);
}

void ComposePlace::choose(int way)
{
    if (!m_ways.empty()) {
        m_desk.takeWay(m_ways.at(std::size_t(way)));
        return;
    }
    const DisplayStep step = m_history.at(std::size_t(way));
    m_desk.bringBack(step.book, step.label.isEmpty() ? tr("the beginning") : step.label);
}

void ComposePlace::paintNextStep()
{
    const Panel* panel = m_session.panel();
    if (!m_stage->choice().isVisible() || panel == nullptr || m_historyPainted >= m_history.size())
        return;
    const Book shown =
        todayWith(m_session.book(), m_history[m_historyPainted].book, panel->display);
    m_stage->choice().setPicture(
        int(m_historyPainted), pictureOf(shown, panel->display, panel->id, m_shelf));
    ++m_historyPainted;
    m_paintHistory.start();
}

void ComposePlace::showWhereItHangs(DrawerItem item)
{
    const Display* display = m_session.display();
    PieceId found;
    for (const auto& [id, piece] : m_session.book().pieces.rows()) {
        const bool same = item.kind == DrawerItem::Kind::Quote ? piece.quote.number() == item.id
            : item.kind == DrawerItem::Kind::Picture           ? piece.picture.number() == item.id
                                                               : false;
        const Panel* panel = same ? m_session.book().panels.find(piece.panel) : nullptr;
        const bool here = panel != nullptr && display != nullptr && panel->display == display->id;
        if (panel != nullptr && (here || !found.isValid()))
            found = id;
    }
    const Piece* piece = m_desk.piece(found);
    if (piece == nullptr)
        return;
    const Panel& panel = *m_session.book().panels.find(piece->panel);
    if (display == nullptr || panel.display != display->id)
        m_session.chooseDisplay(panel.display);
    m_session.choosePanel(panel.id);
    canvas().takeInHand(found);
    canvas().setFocus();
    refreshNote();
    Q_EMIT stateChanged();
}

} // namespace wainscot::ui
