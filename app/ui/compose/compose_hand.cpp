// The hand on the panel: what the canvas means becomes an edit, and what is tried is said.
#include "app/ui/compose/compose_place.h"

#include <QMenu>

#include <algorithm>

#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

void ComposePlace::connectCanvas()
{
    Canvas& panel = canvas();
    panel.setHelpers({[this](const Piece& piece) { return m_desk.preview(piece); },
        [this](const Piece& piece, const RectMm& cell) { return m_desk.placedAt(piece, cell); },
        [this](const Incoming& incoming) { return m_desk.roomFor(incoming); },
        [this](const Incoming& incoming) { return mayCome(incoming); },
        [this](QPoint at) { return m_stage->hung().panelAt(canvas().mapToGlobal(at)); }});
    connect(&panel, &Canvas::taken, this, [this](PieceId id) {
        if (m_swapping.isValid() && id.isValid() && canvas().held().size() == 1)
            swapWith(id);
        refreshNote();
        Q_EMIT stateChanged();
    });
    connect(&panel, &Canvas::placed, this, [this](const std::vector<PlacedCell>& cells) {
        m_desk.place(cells);
    });
    connect(&panel, &Canvas::nudged, &m_desk, &Desk::nudge);
    connect(&panel, &Canvas::swapAsked, &m_desk, &Desk::swap);
    connect(&panel, &Canvas::carried, &m_desk, &Desk::carry);
    connect(&panel, &Canvas::framed, &m_desk, &Desk::frame);
    connect(&panel, &Canvas::writingAsked, this, &ComposePlace::beginWriting);
    connect(&panel, &Canvas::dropped, this, [this](const Incoming& what, const RectMm& cell) {
        m_desk.take(what, cell);
    });
    connect(&panel, &Canvas::trying, this, &ComposePlace::sayAttempt);
    connect(&panel, &Canvas::rested, this, &ComposePlace::workOutAttempt);
    connect(&panel, &Canvas::modeChanged, this, [this] {
        if (!canvas().isBusy() && m_refreshLater)
            QTimer::singleShot(0, this, &ComposePlace::refresh);
        if (!canvas().isBusy() || canvas().isCropping()) {
            m_stage->hung().showGoal({});
            refreshNote();
        }
        Q_EMIT stateChanged();
    });
    connect(
        &m_desk.livePage(), &LivePage::answered, this, [this](const std::vector<Piece>& pieces) {
            canvas().showAround(m_desk.typesetAs(pieces));
            m_stage->note().showMoves(m_desk.movesTo(pieces));
            m_stage->placeNote();
        });
    connect(&m_desk.livePage(), &LivePage::refused, this, [this](const QString& why) {
        m_stage->note().showMoves({why});
        m_stage->placeNote();
    });
    connect(&m_desk, &Desk::brought, this, [this](const PieceIds& pieces) {
        canvas().hold(pieces);
        canvas().setFocus();
        refreshNote();
        Q_EMIT stateChanged();
    });
    WordsEditor& editor = m_stage->editor();
    connect(&editor, &WordsEditor::written, this, [this](const QString& text) {
        const Piece tried = m_desk.asWritten(m_writing, text);
        canvas().tryPiece(m_desk.placedAt(tried, tried.cell));
        m_stage->placeEditor();
    });
    connect(&editor, &WordsEditor::finished, this, [this] { endWriting(true); });
    connect(&editor, &WordsEditor::putBack, this, [this] { endWriting(false); });
}

bool ComposePlace::mayCome(const Incoming& incoming)
{
    const auto why = incoming.item ? m_desk.refusal(*incoming.item) : std::nullopt;
    if (why)
        Q_EMIT announced(*why);
    return !why;
}

void ComposePlace::sayAttempt(const Attempt& attempt)
{
    if (isWriting() || canvas().isCropping())
        return;
    m_stage->hung().showGoal(attempt.panel);
    Note& note = m_stage->note();
    switch (attempt.what) {
    case Attempt::What::Carry:
        note.showTrial(tr("If you let go here"), tr("It goes onto that panel, to a free place."));
        break;
    case Attempt::What::Swap:
        note.showTrial(tr("If you let go here"),
            tr("Trades places with %1.")
                .arg(beginningOf(nameFor(m_session.book(), *m_desk.piece(attempt.with)), 60)));
        break;
    default:
        note.showTrial(tr("If you let go here"), tr("Hold still to see what makes room."));
    }
    m_stage->placeNote();
}

void ComposePlace::workOutAttempt(const Attempt& attempt)
{
    if (isWriting() || canvas().isCropping())
        return;
    if (attempt.what == Attempt::What::Drop)
        m_desk.tryIncoming(canvas().incoming(), attempt.cell);
    else if (attempt.what == Attempt::What::Place || attempt.what == Attempt::What::Resize)
        m_desk.tryCells(canvas().triedCells());
}

void ComposePlace::perform(PieceAction action)
{
    const PieceId hand = canvas().inHand();
    const PieceIds held = canvas().held();
    const Piece* piece = m_desk.piece(hand);
    if (piece == nullptr || performOnSeveral(action, held))
        return;
    switch (action) {
    case PieceAction::Bigger:
    case PieceAction::Smaller:
        m_desk.resizeBy(hand, action == PieceAction::Bigger ? 1 : -1);
        break;
    case PieceAction::Crop:
        canvas().setCropping(!canvas().isCropping());
        break;
    case PieceAction::Treat:
        canvas().setCropping(false);
        m_stage->pictureTable().open(hand);
        break;
    case PieceAction::Pin:
        m_desk.setPinned(held, !piece->pinned);
        break;
    case PieceAction::TakeOff:
        m_desk.takeOff(held);
        break;
    case PieceAction::Write:
        beginWriting(hand, {});
        break;
    case PieceAction::AllWords:
        m_desk.write(hand, m_desk.fullWords(*piece));
        break;
    case PieceAction::Swap:
        m_swapping = m_swapping.isValid() ? PieceId() : hand;
        canvas().setFocus();
        break;
    case PieceAction::OnceMore:
        if (const PieceIds added = m_desk.duplicate(held); !added.empty())
            canvas().hold(added);
        break;
    case PieceAction::Why:
        m_stage->note().setWhyShown(!m_stage->note().isWhyShown());
        break;
    case PieceAction::Names:
        m_desk.nameInCaption(hand);
        break;
    case PieceAction::People:
        askPeople(piece->picture);
        break;
    case PieceAction::StartPanel:
        m_desk.startPanelHere(hand);
        break;
    default:
        break;
    }
    refreshNote();
}

bool ComposePlace::performOnSeveral(PieceAction action, const PieceIds& held)
{
    switch (action) {
    case PieceAction::AlignLeft:
    case PieceAction::AlignCentre:
    case PieceAction::AlignRight:
    case PieceAction::AlignTop:
    case PieceAction::AlignMiddle:
    case PieceAction::AlignFoot:
        m_desk.align(held, static_cast<Line>(int(action) - int(PieceAction::AlignLeft)));
        return true;
    case PieceAction::SpreadAcross:
        m_desk.spread(held, Qt::Horizontal);
        return true;
    case PieceAction::SpreadDown:
        m_desk.spread(held, Qt::Vertical);
        return true;
    case PieceAction::ArrangeThese:
        m_desk.arrangeOnly(held);
        return true;
    case PieceAction::Together:
        m_desk.setTogether(held, !m_desk.areTogether(held));
        return true;
    default:
        return false;
    }
}

// A picture nobody has looked at hangs nowhere, so this is asked where it stands.
void ComposePlace::askPeople(PictureId id)
{
    const Picture* picture = m_session.book().pictures.find(id);
    if (picture == nullptr)
        return;
    People people = picture->people;
    QMenu menu(this);
    menu.addAction(tr("Nobody to recognise"), this, [this, id] {
        m_desk.setPeople(id, {true, {}});
    });
    menu.addSeparator();
    for (const auto& [childId, child] : m_session.book().children.rows()) {
        QAction* one = menu.addAction(displayName(child));
        const auto at = std::find(people.children.begin(), people.children.end(), childId);
        one->setCheckable(true);
        one->setChecked(at != people.children.end());
        connect(one, &QAction::triggered, this, [this, id, people, childId = childId](bool on) {
            People said = people;
            said.lookedAt = true;
            if (on)
                said.children.push_back(childId);
            else
                std::erase(said.children, childId);
            m_desk.setPeople(id, said);
        });
    }
    menu.exec(canvas().mapToGlobal(canvas().pieceRect(canvas().inHand()).center().toPoint()));
}

void ComposePlace::swapWith(PieceId other)
{
    const PieceId one = std::exchange(m_swapping, PieceId());
    if (one == other)
        return;
    m_desk.swap(one, other);
    canvas().takeInHand(one);
}

void ComposePlace::take(DrawerItem item)
{
    if (m_session.panel() == nullptr && !m_desk.refusal(item))
        emptyPanel(item.kind);
    const PieceId added = m_desk.add(item, std::nullopt);
    if (!added.isValid())
        return;
    canvas().takeInHand(added);
    refreshNote();
    Q_EMIT announced(tr("On the panel: %1").arg(nameFor(m_session.book(), *m_desk.piece(added))));
}

} // namespace wainscot::ui
