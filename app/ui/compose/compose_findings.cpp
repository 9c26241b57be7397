// Findings in Compose: from one to the next, mended, left.
#include "app/ui/compose/compose_place.h"

#include <QInputDialog>

namespace wainscot::ui {

// They hold in Hang too, so their keys are the window's.
void ComposePlace::makeFindingActions()
{
    Actions& a = m_actions;
    a.nextFinding = action(tr("Next finding"), Qt::Key_F7, [this] { goToFinding(1); });
    a.earlierFinding =
        action(tr("Finding before"), Qt::SHIFT | Qt::Key_F7, [this] { goToFinding(-1); });
    a.mend = action(tr("Mend this finding"), Qt::CTRL | Qt::Key_M, [this] { mendWhatIsInHand(); });
    for (QAction* one : {a.nextFinding, a.earlierFinding, a.mend})
        one->setShortcutContext(Qt::WindowShortcut);
}

void ComposePlace::goToFinding(int step)
{
    if (!isVisible())
        return; // Hang goes its own way
    QVector<PieceId> marked; // in reading order
    PieceId next;
    const auto& pieces = canvas().content().pieces;
    int at = -1;
    for (const CanvasPiece& piece : pieces) {
        if (piece.piece.id == canvas().inHand())
            at = int(marked.size()) - (step > 0 ? 1 : 0);
        if (piece.finding && *piece.finding != Severity::Note) {
            if (piece.piece.id == canvas().inHand())
                at = int(marked.size());
            marked << piece.piece.id;
        }
    }
    if (marked.isEmpty()) {
        Q_EMIT announced(tr("Nothing was found on this panel."));
        return;
    }
    next = marked.at((at + step + marked.size()) % marked.size());
    canvas().takeInHand(next);
    canvas().setFocus();
    refreshNote();
    Q_EMIT stateChanged();
}

void ComposePlace::mendWhatIsInHand()
{
    if (!isVisible())
        return;
    const std::vector<Finding> findings = m_desk.findingsOn(canvas().inHand());
    for (const Finding& finding : findings) {
        if (m_desk.mendOf(finding).way != MendWay::Show) {
            mend(finding);
            return;
        }
    }
    Q_EMIT announced(findings.empty() ? tr("Nothing was found on what is in your hand.")
                                      : tr("This one is yours to decide."));
}

void ComposePlace::mend(const Finding& finding)
{
    const MendWay way = m_desk.mendOf(finding).way;
    if (way != MendWay::Show && way != MendWay::Write) {
        m_desk.mend(finding);
        return;
    }
    const Panel* panel = panelNumbered(m_session.book(), m_session.display(), finding.panel);
    if (panel == nullptr)
        return;
    m_session.choosePanel(panel->id);
    if (way == MendWay::Write)
        beginWriting(pieceToWrite(m_session.book(), panel->id, finding), {});
    else if (finding.piece > 0)
        canvas().takeInHand(PieceId(finding.piece));
}

void ComposePlace::leave(const Finding& finding)
{
    bool done = false;
    const QString why = QInputDialog::getText(this,
        tr("Leave it, and say why"),
        finding.says,
        QLineEdit::Normal,
        m_desk.reasonLeft(finding),
        &done);
    if (done)
        m_desk.leave(finding, why.trimmed());
}

} // namespace wainscot::ui
