#include "app/ui/compose/compose_place.h"

#include <QAccessible>
#include <QHBoxLayout>

#include "app/ui/kit/tokens.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

namespace {

// Of what is written on the piece: its own, else its display's.
QString languageOf(const Book& book, const Piece& piece)
{
    if (!piece.language.isEmpty())
        return piece.language;
    const Panel* panel = book.panels.find(piece.panel);
    const Display* display = panel != nullptr ? book.displays.find(panel->display) : nullptr;
    return display != nullptr ? display->language : QString();
}

} // namespace

ComposePlace::ComposePlace(Session& session, Work& work, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_work(work)
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
    connect(&m_desk, &Desk::advised, this, &ComposePlace::refreshNote);
    connect(m_drawer, &Drawer::wanted, this, &ComposePlace::take);
    connect(m_drawer, &Drawer::shownWanted, this, &ComposePlace::showWhereItHangs);
    connect(m_drawer, &Drawer::putAwayAsked, this, [this] { m_actions.drawer->trigger(); });
    connect(&m_shelf, &PictureShelf::loaded, this, [this] {
        if (!canvas().isBusy() && !isWriting()) // what is being tried keeps its layer
            canvas().refreshPictures();
        m_stage->hung().paintSoon();
        m_stage->stepBack().refreshPictures();
        m_offersPainted = 0;
        if (m_stage->choice().isVisible())
            m_paintOffers.start();
    });
    connectOffers();
    connectStage();
    refresh();
}

// Live pictures to choose from are painted one by one, between events.
void ComposePlace::connectOffers()
{
    m_paintOffers.setSingleShot(true);
    m_paintOffers.setInterval(10);
    connect(&m_paintOffers, &QTimer::timeout, this, &ComposePlace::paintNextOffer);
    connect(&m_desk, &Desk::kindsFound, this, &ComposePlace::showKinds);
    connect(&m_desk, &Desk::waysFound, this, &ComposePlace::showWays);
    connect(&m_stage->choice(), &PanelChoice::chosen, this, [this](int way) {
        const auto take = m_offers.at(std::size_t(way)).take; // closing forgets the offers
        take();
    });
    connect(&m_stage->choice(), &PanelChoice::closed, this, [this] {
        m_offers.clear();
        canvas().setFocus();
    });
}

void ComposePlace::connectStage()
{
    connect(&m_stage->pictureTable(), &PictureTable::closed, this, [this] {
        canvas().setFocus();
        Q_EMIT stateChanged();
    });
    connect(&m_stage->pictureTable(), &PictureTable::said, this, &ComposePlace::announced);
    connect(&m_session, &Session::changed, &m_stage->pictureTable(), &PictureTable::refresh);
    connect(&m_stage->stepBack(), &StepBack::closed, this, [this] { canvas().setFocus(); });
    connect(&m_stage->stepBack(), &StepBack::pieceWanted, this, [this](PieceId piece) {
        canvas().takeInHand(piece);
        refreshNote();
    });
    connect(&m_stage->hung(), &HungPanels::chosen, this, [this](PanelId panel) {
        endWriting(true);
        m_session.choosePanel(panel);
    });
    connect(&m_stage->note(), &Note::asked, this, &ComposePlace::perform);
    connect(&m_stage->note(), &Note::mendAsked, this, &ComposePlace::mend);
    connect(&m_stage->note(), &Note::leaveAsked, this, &ComposePlace::leave);
    connect(&m_stage->note(), &Note::adviceTaken, &m_desk, &Desk::takeAdvice);
    connect(&m_stage->note(), &Note::adviceLeft, &m_desk, &Desk::leaveAdvice);
    EmptyStage& empty = m_stage->emptyStage();
    connect(&empty, &EmptyStage::proposeAsked, &m_desk, &Desk::propose);
    connect(&empty, &EmptyStage::gatherAsked, this, &ComposePlace::gatherAsked);
    connect(&empty, &EmptyStage::firstStepsAsked, this, &ComposePlace::firstStepsAsked);
    connect(&empty, &EmptyStage::wordsAsked, this, [this] { emptyPanel(DrawerItem::Kind::Quote); });
    connect(&empty, &EmptyStage::picturesAsked, this, [this] {
        emptyPanel(DrawerItem::Kind::Picture);
    });
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
    if (m_stage->stepBack().isVisible()) {
        if (const DrawnPanel* panel = m_desk.drawnPanel())
            m_stage->stepBack().setPanel(*panel);
        else
            m_stage->stepBack().close();
    }
    refreshTaskLine();
    refreshNote();
    Q_EMIT stateChanged();
}

void ComposePlace::refreshNote()
{
    const PieceId hand = canvas().inHand();
    const bool has = hand.isValid() && m_desk.piece(hand) != nullptr;
    if (has && canvas().held().size() > 1)
        m_stage->note().showSeveral(canvas().held());
    else if (has)
        m_stage->note().showPiece(hand, canvas().isCropping(), m_swapping == hand);
    else if (!m_desk.advice().empty() || m_stage->note().showsAdvice())
        m_stage->note().showAdvice(m_desk.advice());
    m_stage->placeNote();
    const Piece* piece = m_desk.piece(hand);
    const Actions& a = m_actions;
    const auto enable = [](const QVector<QAction*>& actions, bool on) {
        for (QAction* one : actions)
            one->setEnabled(on);
    };
    const std::size_t held = canvas().held().size();
    enable({a.pin, a.takeOff, a.lift, a.onceMore, a.copy, a.cut}, has);
    enable({a.bigger, a.smaller, a.swap, a.why, a.pieceColours, a.pieceLetters}, has && held == 1);
    enable(a.lines.mid(0, 6) + QVector<QAction*>{a.arrangeThese}, held > 1);
    enable(a.lines.mid(6), held > 2);
    const bool apart = m_desk.areTogether(canvas().held());
    a.together->setText(apart ? tr("No longer together") : tr("Keep together"));
    a.together->setEnabled(held > 1 || apart);
    a.startPanel->setEnabled(has && held == 1);
    a.lockPanel->setChecked(m_desk.isLocked());
    a.crop->setEnabled(has && held == 1 && piece->kind == PieceKind::Photo);
    a.treat->setEnabled(has && held == 1 && isPicture(piece->kind));
    const bool names = has && held == 1 && isPicture(piece->kind)
        && (piece->text.contains(kNamesHere) || !m_desk.namesFor(*piece).isEmpty());
    a.names->setEnabled(names);
    a.names->setText(names && piece->text.contains(kNamesHere) ? tr("Leave the names out")
                                                               : tr("Name who is in it"));
    a.write->setEnabled(has && held == 1 && isWritable(m_session.book(), *piece));
    a.write->setText(has && piece->kind == PieceKind::Quote ? tr("Shorten") : tr("Write"));
    a.allWords->setEnabled(has && held == 1 && !piece->shownWords.isEmpty());
    a.people->setEnabled(has && held == 1 && isPicture(piece->kind));
    a.pin->setText(has && piece->pinned ? tr("Pin out") : tr("Pin here"));
    const bool panel = m_session.panel() != nullptr;
    a.mend->setEnabled(panel);
    enable({a.arrangeAgain,
               a.arrangeDisplay,
               a.otherWays,
               a.addPanel,
               a.namePanel,
               a.panelOnceMore,
               a.takeDownPanel,
               a.lockPanel,
               a.stepBack,
               a.history,
               a.keepAsKind,
               a.colours,
               a.letters,
               a.all,
               a.whole,
               a.nearer,
               a.further,
               a.trueSize},
        panel);
    const bool several = panel && panelsOf(m_session.book(), m_session.display()->id).size() > 1;
    enable({a.toEarlier, a.toLater}, has && several);
    m_actions.proposeAnew->setEnabled(m_session.experience() != nullptr);
}

bool ComposePlace::isWriting() const
{
    return m_stage->editor().isVisible();
}

void ComposePlace::beginWriting(PieceId id, QPointF at)
{
    const Piece* piece = m_desk.piece(id);
    if (piece == nullptr)
        return;
    if (!isWritable(m_session.book(), *piece)) {
        Q_EMIT announced(tr("A translation is changed where it was written."));
        return;
    }
    canvas().setCropping(false);
    canvas().takeInHand(id);
    m_writing = *piece;
    const QString text = writtenText(m_session.book(), *piece);
    m_stage->editor().begin(*piece,
        text,
        nameFor(m_session.book(), *piece),
        languageOf(m_session.book(), *piece),
        wordsOfNames(m_session.book()));
    const Piece shown = m_desk.asWritten(*piece, text);
    canvas().tryPiece(m_desk.placedAt(shown, shown.cell));
    m_stage->placeEditor();
    if (!at.isNull())
        m_stage->editor().field().putCaretAt(at);
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
        m_desk.write(editor.piece(), text);
    if (m_refreshLater)
        refresh();
    canvas().setFocus();
    refreshNote();
    Q_EMIT stateChanged();
}

void ComposePlace::emptyPanel(DrawerItem::Kind kind)
{
    m_desk.beginEmpty();
    m_drawer->show(kind);
    if (QWidget* stop = m_drawer->firstStop())
        stop->setFocus();
}

QWidget* ComposePlace::firstStop() const
{
    return m_stage->emptyStage().isVisible() ? m_stage->emptyStage().firstStop()
                                             : &m_stage->canvas();
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
    m_otherWays->setWordless(narrow);
}

} // namespace wainscot::ui
