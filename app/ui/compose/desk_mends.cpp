// Findings mended with one press, or left with a reason.
#include "app/ui/compose/desk.h"

#include <algorithm>

#include "app/jobs/hang_at_eyes.h"
#include "app/jobs/small_print.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

namespace {

constexpr int kVoiceSteps = 3; // of the type scale, at most

} // namespace

void Desk::mendVoices(int step, const QString& does)
{
    const DrawnPanel* drawn = drawnPanel();
    if (drawn == nullptr)
        return;
    Display changed = *m_session.display();
    changed.voiceStep = std::clamp(drawn->style.scale.voiceStep + step, 1, kVoiceSteps);
    if (changed.voiceStep == drawn->style.scale.voiceStep)
        Q_EMIT announced(tr("There is no further step. Another kind of panel may help."));
    else
        changeDisplay(changed, does, true);
}

void Desk::mendLook(PieceId id, bool letters, const QString& does)
{
    const Book& book = m_session.book();
    EditBuilder builder(book, does);
    const Piece* own = piece(id);
    if (own != nullptr && !(letters ? own->pairing : own->palette).isEmpty()) {
        Piece changed = *own;
        (letters ? changed.pairing : changed.palette).clear();
        builder.put(changed);
    } else {
        Display changed = *m_session.display();
        if (letters)
            changed.pairing = Display().pairing;
        else
            changed.palette = Display().palette;
        builder.put(changed);
    }
    Edit edit = builder.take();
    if (!edit.isEmpty())
        m_session.perform(std::move(edit));
    else
        Q_EMIT announced(tr("These are the ones that stand out most. Choose others by hand."));
}

void Desk::mendWithText(PieceKind kind, const QString& text, const QString& does)
{
    if (text.isEmpty()) {
        Q_EMIT announced(tr("The book does not know it. Say it in Gather, or write it here."));
        return;
    }
    // The day goes to the end of the credits that are there.
    for (const Panel* panel : panelsOf(m_session.book(), m_session.display()->id)) {
        for (const Piece* own : piecesOf(m_session.book(), panel->id)) {
            if (own->kind != kind || kind != PieceKind::Credits)
                continue;
            Piece written = *own;
            written.text = QStringLiteral("%1 %2.").arg(own->text.trimmed(), text);
            m_session.choosePanel(panel->id);
            m_session.perform(replacePiece(m_session.book(), written, does));
            return;
        }
    }
    Piece fresh;
    fresh.kind = kind;
    fresh.text = text;
    const PieceId added = put(fresh, std::nullopt, m_session.newGesture(), does);
    if (added.isValid())
        Q_EMIT brought({added});
}

void Desk::mendVoice(const Finding& finding, const QString& does)
{
    const Quote* quote = wordsToAdd(m_session.book(), m_session.display()->experience, finding);
    if (quote == nullptr)
        return;
    if (const auto why = refusal({DrawerItem::Kind::Quote, quote->id.number()})) {
        Q_EMIT announced(*why);
        return;
    }
    // Onto the panel with the most room.
    const Panel* roomiest = nullptr;
    double least = 0;
    for (const Panel* panel : panelsOf(m_session.book(), m_session.display()->id)) {
        double taken = 0;
        for (const Piece* one : piecesOf(m_session.book(), panel->id))
            taken += one->cell.areaMm2();
        if (!panel->locked && (roomiest == nullptr || taken < least)) {
            roomiest = panel;
            least = taken;
        }
    }
    if (roomiest == nullptr) {
        Q_EMIT announced(tr("Every panel is locked."));
        return;
    }
    m_session.choosePanel(roomiest->id);
    Piece fresh;
    fresh.kind = PieceKind::Quote;
    fresh.quote = quote->id;
    const PieceId added = put(fresh, std::nullopt, m_session.newGesture(), does);
    if (added.isValid())
        Q_EMIT brought({added});
}

void Desk::mendWords(PieceId id, const QString& does)
{
    const Piece* own = piece(id);
    if (own == nullptr)
        return;
    Piece whole = *own;
    whole.shownWords.clear();
    m_session.perform(replacePiece(m_session.book(), whole, does));
}

void Desk::mendHanging(const QString& does)
{
    const std::optional<Wall> moved = withPanelAtEyes(m_session.book(), m_session.panel()->id);
    if (!moved) {
        Q_EMIT announced(tr("There is no better place for it on its wall. Larger letters help."));
        return;
    }
    EditBuilder edit(m_session.book(), does);
    edit.put(*moved);
    m_session.perform(edit.take());
}

Mend Desk::mendOf(const Finding& finding) const
{
    return mendFor(m_session.book(), finding);
}

QString Desk::reasonLeft(const Finding& finding) const
{
    const Panel* panel = panelNumbered(m_session.book(), m_session.display(), finding.panel);
    return panel != nullptr ? reasonIn(*panel, finding) : QString();
}

void Desk::leave(const Finding& finding, const QString& why)
{
    const Panel* panel = panelNumbered(m_session.book(), m_session.display(), finding.panel);
    if (panel == nullptr)
        return;
    Edit edit = leaveFinding(m_session.book(), *panel, finding, why);
    if (m_session.perform(std::move(edit)) && !why.isEmpty())
        Q_EMIT announced(tr("Your reason is kept with the panel."));
}

void Desk::mend(const Finding& finding)
{
    const Book& book = m_session.book();
    if (const Panel* panel = panelNumbered(book, m_session.display(), finding.panel))
        m_session.choosePanel(panel->id);
    if (drawnPanel() == nullptr)
        return;
    const Mend mend = mendFor(book, finding);
    const PieceId id(finding.piece);
    switch (mend.way) {
    case MendWay::Show:
    case MendWay::Write:
        break; // for who shows the panel
    case MendWay::TakeOff:
        takeOff({id});
        break;
    case MendWay::Place:
        mendPlace(id, finding, mend.does);
        break;
    case MendWay::Frame:
        mendFrame(id, finding, mend.does);
        break;
    case MendWay::NextSmaller:
        mendSecondPicture(finding, mend.does);
        break;
    case MendWay::MakeRoom:
        mendOverlap(id, mend.does);
        break;
    case MendWay::ArrangeAgain:
        arrangeAgain();
        break;
    case MendWay::Letters:
    case MendWay::Colours:
        mendLook(id, mend.way == MendWay::Letters, mend.does);
        break;
    case MendWay::LouderVoices:
    case MendWay::QuieterVoices:
        mendVoices(mend.way == MendWay::LouderVoices ? 1 : -1, mend.does);
        break;
    case MendWay::AddTitle:
        mendWithText(PieceKind::Title,
            book.experiences.find(m_session.display()->experience)->title,
            mend.does);
        break;
    case MendWay::AddCredits:
        mendWithText(PieceKind::Credits, creditsOf(book, *m_session.display()), mend.does);
        break;
    case MendWay::AddDay:
        mendWithText(PieceKind::Credits, daysOf(book, *m_session.display()), mend.does);
        break;
    case MendWay::AddVoice:
        mendVoice(finding, mend.does);
        break;
    case MendWay::AllWords:
        mendWords(id, mend.does);
        break;
    case MendWay::HangAtEyes:
        mendHanging(mend.does);
        break;
    }
}

} // namespace wainscot::ui
