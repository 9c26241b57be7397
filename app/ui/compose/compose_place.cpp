#include "app/ui/compose/compose_place.h"

#include <QAccessible>
#include <QHBoxLayout>

#include "app/ui/kit/tokens.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

ComposePlace::ComposePlace(Session& session, Work& work, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_desk(session, work)
{
    m_drawer = new Drawer(session, m_desk, m_shelf);
    m_rule = new Rule(Qt::Vertical);
    m_stage = new Stage(session, m_desk, m_shelf);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(m_drawer);
    row->addWidget(m_rule);
    auto* right = new Ground(Ground::Tone::Wall);
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_taskLine = makeTaskLine();
    column->addWidget(m_taskLine);
    column->addWidget(m_stage, 1);
    row->addWidget(right, 1);

    makeActions();
    connectCanvas();
    connect(&m_session, &Session::opened, this, [this] {
        m_shelf.setPaths([this](const QString& sha) { return m_session.originalPath(sha); },
            m_session.proxiesFolder());
        m_stage->canvas().clearContent();
    });
    connect(&m_desk, &Desk::drawnAgain, this, &ComposePlace::refresh);
    connect(&m_desk, &Desk::announced, this, &ComposePlace::announced);
    connect(m_drawer, &Drawer::wanted, this, &ComposePlace::take);
    connect(m_drawer, &Drawer::putAwayAsked, this, [this] { m_actions.drawer->trigger(); });
    connect(&m_shelf, &PictureShelf::loaded, this, [this] {
        if (!canvas().isBusy() && !isWriting()) // what is being tried keeps its layer
            canvas().refreshPictures();
    });
    connect(&m_stage->note(), &Note::asked, this, &ComposePlace::perform);
    EmptyStage& empty = m_stage->emptyStage();
    connect(&empty, &EmptyStage::proposeAsked, &m_desk, &Desk::propose);
    connect(&empty, &EmptyStage::gatherAsked, this, &ComposePlace::gatherAsked);
    connect(&empty, &EmptyStage::wordsAsked, this, [this] { emptyPanel(DrawerItem::Kind::Quote); });
    connect(&empty, &EmptyStage::picturesAsked, this, [this] {
        emptyPanel(DrawerItem::Kind::Picture);
    });
    refresh();
}

void ComposePlace::connectCanvas()
{
    Canvas& panel = canvas();
    panel.setHelpers([this](const Piece& piece) { return m_desk.preview(piece); },
        [this](const Piece& piece, const RectMm& cell) { return m_desk.placedAt(piece, cell); });
    connect(&panel, &Canvas::taken, this, [this](PieceId id) {
        if (m_swapping.isValid() && id.isValid())
            swapWith(id);
        refreshNote();
        Q_EMIT stateChanged();
    });
    connect(&panel, &Canvas::placed, this, [this](PieceId id, const RectMm& cell) {
        m_desk.place(id, cell);
    });
    connect(&panel, &Canvas::framed, this, [this](PieceId id, const Framing& framing) {
        m_desk.frame(id, framing);
    });
    connect(&panel, &Canvas::writingAsked, this, &ComposePlace::beginWriting);
    connect(&panel, &Canvas::dropped, this, [this](DrawerItem item, const RectMm& cell) {
        canvas().takeInHand(m_desk.add(item, cell));
        refreshNote();
    });
    connect(&panel, &Canvas::trying, this, [this](const RectMm& cell) {
        if (isWriting() || canvas().isCropping())
            return;
        m_stage->note().showTrial(
            m_desk.underneath(canvas().inHand(), cell), tr("If you let go here"));
        m_stage->placeNote();
    });
    connect(&panel, &Canvas::modeChanged, this, [this] {
        if (!canvas().isBusy() && m_refreshLater)
            QTimer::singleShot(0, this, &ComposePlace::refresh);
        if (!canvas().isBusy() || canvas().isCropping())
            refreshNote();
        Q_EMIT stateChanged();
    });
    WordsEditor& editor = m_stage->editor();
    connect(&editor, &WordsEditor::written, this, [this](const QString& text) {
        Piece tried = m_writing;
        tried.text = text;
        canvas().tryPiece(m_desk.placedAt(tried, tried.cell));
    });
    connect(&editor, &WordsEditor::finished, this, [this] { endWriting(true); });
    connect(&editor, &WordsEditor::putBack, this, [this] { endWriting(false); });
}

void ComposePlace::refresh()
{
    // New findings must not take a piece out of a hand or words out of the editor.
    m_refreshLater = (canvas().isBusy() && !canvas().isCropping()) || isWriting();
    if (m_refreshLater)
        return;
    const std::optional<CanvasContent> content = m_desk.content();
    int words = 0;
    int pictures = 0;
    if (const Experience* experience = m_session.experience()) {
        words = int(quotesOf(m_session.book(), experience->id).size());
        pictures = int(picturesOf(m_session.book(), experience->id).size());
    }
    const bool empty = !content || (content->pieces.empty() && m_session.panel() == nullptr);
    if (content)
        canvas().setContent(*content);
    else
        canvas().clearContent();
    if (empty)
        m_stage->emptyStage().refresh(words, pictures, m_session.experience() != nullptr);
    m_stage->setEmpty(empty);
    m_stage->hung().refresh();
    refreshTaskLine();
    refreshNote();
    Q_EMIT stateChanged();
}

void ComposePlace::refreshNote()
{
    const PieceId hand = canvas().inHand();
    const bool has = hand.isValid() && m_desk.piece(hand) != nullptr;
    if (has)
        m_stage->note().showPiece(hand, canvas().isCropping(), m_swapping == hand);
    m_stage->placeNote();
    const Piece* piece = m_desk.piece(hand);
    for (QAction* one : {m_actions.bigger,
             m_actions.smaller,
             m_actions.swap,
             m_actions.pin,
             m_actions.takeOff,
             m_actions.lift})
        one->setEnabled(has);
    m_actions.crop->setEnabled(has && piece->kind == PieceKind::Photo);
    m_actions.write->setEnabled(has && isWritable(piece->kind));
    m_actions.pin->setText(has && piece->pinned ? tr("Pin out") : tr("Pin here"));
    const bool panel = m_session.panel() != nullptr;
    for (QAction* one : {m_actions.arrangeAgain,
             m_actions.addPanel,
             m_actions.whole,
             m_actions.nearer,
             m_actions.further,
             m_actions.trueSize})
        one->setEnabled(panel);
    m_actions.proposeAnew->setEnabled(m_session.experience() != nullptr);
}

bool ComposePlace::isWriting() const
{
    return m_stage->editor().isVisible();
}

void ComposePlace::beginWriting(PieceId id)
{
    const Piece* piece = m_desk.piece(id);
    if (piece == nullptr)
        return;
    if (!isWritable(piece->kind)) {
        Q_EMIT announced(tr("A child's words stay as they were said."));
        return;
    }
    canvas().setCropping(false);
    canvas().takeInHand(id);
    m_writing = *piece;
    m_stage->editor().begin(*piece, nameFor(m_session.book(), *piece));
    refreshNote();
    Q_EMIT stateChanged();
}

void ComposePlace::endWriting(bool keep)
{
    if (!isWriting())
        return;
    WordsEditor& editor = m_stage->editor();
    const QString text = editor.text();
    editor.hide();
    canvas().tryPiece(std::nullopt);
    if (keep)
        m_desk.write(editor.piece(), text, 0);
    if (m_refreshLater)
        refresh();
    canvas().setFocus();
    refreshNote();
    Q_EMIT stateChanged();
}

void ComposePlace::perform(PieceAction action)
{
    const PieceId hand = canvas().inHand();
    const Piece* piece = m_desk.piece(hand);
    if (piece == nullptr)
        return;
    switch (action) {
    case PieceAction::Bigger:
        m_desk.resizeBy(hand, 1);
        break;
    case PieceAction::Smaller:
        m_desk.resizeBy(hand, -1);
        break;
    case PieceAction::Crop:
        canvas().setCropping(!canvas().isCropping());
        break;
    case PieceAction::Pin:
        m_desk.setPinned(hand, !piece->pinned);
        break;
    case PieceAction::TakeOff:
        m_desk.takeOff(hand);
        break;
    case PieceAction::Write:
        beginWriting(hand);
        break;
    case PieceAction::Swap:
        m_swapping = m_swapping.isValid() ? PieceId() : hand;
        canvas().setFocus();
        break;
    case PieceAction::Why:
        break;
    }
    refreshNote();
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

void ComposePlace::emptyPanel(DrawerItem::Kind kind)
{
    m_desk.beginEmpty();
    m_drawer->show(kind);
    if (QWidget* stop = m_drawer->firstStop())
        stop->setFocus();
}

void ComposePlace::goToFinding(int step)
{
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

QVector<QWidget*> ComposePlace::regions() const
{
    QVector<QWidget*> all{m_audience};
    if (m_drawer->isVisible())
        all << m_drawer->firstStop();
    if (m_stage->canvas().isVisible())
        all << &m_stage->canvas();
    if (m_stage->emptyStage().isVisible())
        all << m_stage->emptyStage().firstStop();
    if (m_stage->note().isVisible())
        all << m_stage->note().firstStop();
    if (m_stage->hung().isVisible())
        all << m_stage->hung().firstStop();
    all.removeAll(nullptr);
    return all;
}

void ComposePlace::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_drawer->setFixedWidth(qMin(scaled(308), int(window()->width() * 0.3)));
    const bool narrow = width() < scaled(1150);
    m_again->setWordless(narrow);
}

} // namespace wainscot::ui
