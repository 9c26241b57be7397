// Panels of the display, and what holds for all of them.
#include "app/ui/compose/desk.h"

#include "app/ui/session/panel_edits.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

void Desk::beginEmpty()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr || m_session.panel() != nullptr)
        return;
    EditBuilder builder(m_session.book(), tr("An empty panel"));
    Display display;
    if (const Display* there = m_session.display()) {
        display = *there;
    } else {
        display.id = builder.newId<Display>();
        display.experience = experience->id;
        display.name = tr("Hallway");
        for (int i = 2; displayByName(m_session.book(), display.name) != nullptr; ++i)
            display.name = tr("Hallway %1").arg(i);
        display.audience = Audience::Building;
        display.language = languageOf(m_session.book(), *experience);
        builder.put(display);
    }
    Panel panel;
    panel.id = builder.newId<Panel>();
    panel.display = display.id;
    builder.put(panel);
    if (m_session.perform(builder.take()))
        m_session.chooseDisplay(display.id);
}

void Desk::addPanelAfter()
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    PanelId added;
    if (m_session.perform(addPanel(m_session.book(), display->id, tr("New panel"), added)))
        m_session.choosePanel(added);
}

void Desk::duplicatePanel(PanelId panel)
{
    PanelId added;
    if (m_session.perform(
            ui::duplicatePanel(m_session.book(), panel, tr("Panel once more"), added)))
        m_session.choosePanel(added);
}

void Desk::movePanel(PanelId panel, int number)
{
    m_session.perform(
        ui::movePanel(m_session.book(), panel, number, tr("Panel to place %1").arg(number)));
}

void Desk::removePanel(PanelId panel)
{
    const Panel* own = m_session.book().panels.find(panel);
    if (own == nullptr)
        return;
    const int number = own->number;
    if (m_session.perform(
            ui::removePanel(m_session.book(), panel, tr("Taken down: panel %1").arg(number))))
        Q_EMIT announced(
            tr("Panel %1 is taken down. Its pieces are back in what you have.").arg(number));
}

// A panel is called what its title says; one without a title gets one.
void Desk::renamePanel(PanelId panel, const QString& title)
{
    const QString said = title.simplified();
    if (said.isEmpty())
        return;
    if (const Piece* own = titleOf(m_session.book(), panel)) {
        Piece renamed = *own;
        renamed.text = said;
        m_session.perform(
            replacePiece(m_session.book(), renamed, tr("Text: %1").arg(wordFor(renamed.kind))));
        return;
    }
    m_session.choosePanel(panel);
    Piece piece;
    piece.kind = PieceKind::Title;
    piece.text = said;
    if (put(piece, std::nullopt, m_session.newGesture()).isValid())
        Q_EMIT announced(tr("The panel has a title now."));
}

void Desk::bringBack(const Book& then, const QString& step)
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    m_session.perform(
        displayAsIn(m_session.book(), then, display->id, tr("Back to: %1").arg(step)));
}

void Desk::changeDisplay(const Display& changed, const QString& label, bool rearrange)
{
    EditBuilder builder(m_session.book(), label, m_session.newGesture());
    builder.put(changed);
    Edit edit = builder.take();
    const int gesture = edit.gesture;
    if (!edit.isEmpty() && m_session.perform(std::move(edit)) && rearrange)
        arrangeAgain(gesture);
}

void Desk::setAudience(Audience audience)
{
    if (m_session.display() == nullptr)
        return;
    Display changed = *m_session.display();
    changed.audience = audience;
    changeDisplay(changed, tr("Another audience"), false);
}

void Desk::setPanelSize(SizeMm size)
{
    if (m_session.display() == nullptr)
        return;
    Display changed = *m_session.display();
    changed.panelSize = size;
    changeDisplay(changed, tr("Another panel size"), true);
}

void Desk::setReadingDistance(Mm distance)
{
    if (m_session.display() == nullptr)
        return;
    Display changed = *m_session.display();
    changed.readingDistance = distance;
    changeDisplay(changed, tr("Another reading distance"), true);
}

} // namespace wainscot::ui
