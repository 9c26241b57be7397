#include "app/ui/compose/note.h"

#include <QGridLayout>
#include <QTimer>

#include "app/ui/compose/drawer.h"
#include "app/ui/kit/finding_mark.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/piece_edits.h"
#include "core/base/paper_size.h"

namespace wainscot::ui {

namespace {

Icon iconFor(PieceKind kind)
{
    switch (kind) {
    case PieceKind::Photo:
        return Icon::Photo;
    case PieceKind::Work:
        return Icon::Drawing;
    case PieceKind::Quote:
        return Icon::Words;
    default:
        return Icon::Note;
    }
}

// What doing it is called; empty = there is nothing to do.
QString adviceInWords(const Advice& advice)
{
    switch (advice.kind) {
    case AdviceKind::SmallerPanel:
        return Note::tr("Make it %1").arg(nameOfPaper(advice.panelSize));
    case AdviceKind::LargerWords:
        return Note::tr("Larger words");
    case AdviceKind::MorePanels:
        return Note::tr("On %1 panels").arg(advice.panels);
    case AdviceKind::LessOnIt:
        break;
    }
    return {};
}

} // namespace

Note::Note(Desk& desk, QWidget* parent)
    : Card(Tone::Card, parent)
    , m_desk(desk)
{
    setAccessibleName(tr("Beside the piece in hand"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(1, 1, 1, 1);
    m_rover = new Rover(this);
    restart();
}

void Note::restart()
{
    auto* old = m_area;
    m_rover->setMembers({});
    m_actions.clear();
    m_trialHeading.clear();
    m_advises = false;
    m_content = new QWidget;
    m_column = new QVBoxLayout(m_content);
    m_column->setContentsMargins(air(3.5), air(3), air(3.5), air(3));
    m_column->setSpacing(air(1));
    m_area = scrolled(m_content);
    layout()->addWidget(m_area);
    if (old != nullptr) {
        layout()->removeWidget(old);
        old->hide();
        old->deleteLater(); // one of its buttons may be the sender
    }
}

int Note::heightFor(int width) const
{
    // The scroll area makes its widget no lower than this, whatever the width.
    const int least = m_content->minimumSizeHint().height();
    return qMax(m_column->heightForWidth(width - 2), least) + 2;
}

void Note::setScrolls(bool scrolls)
{
    m_area->setVerticalScrollBarPolicy(scrolls ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
}

void Note::addHead(const Piece& piece, const QString& second)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(air(2));
    row->addWidget(new IconMark(iconFor(piece.kind), tokens().hand, 18), 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(new Label(wordFor(piece.kind), 1.08, QFont::DemiBold));
    if (!second.isEmpty())
        words->addWidget(new Label(second, 0.92, QFont::Normal, true));
    row->addLayout(words, 1);
    m_column->addLayout(row);
    m_column->addSpacing(air(1));
}

void Note::addFindings(const std::vector<Finding>& findings)
{
    for (const Finding& finding : findings) {
        auto* card = new Card(toneOf(finding.severity));
        card->setAccessibleName(spoken(finding));
        auto* column = new QVBoxLayout(card);
        column->setContentsMargins(air(2.5), air(2), air(2.5), air(2.5));
        column->setSpacing(air(1));
        auto* row = new QHBoxLayout;
        row->setSpacing(air(1.5));
        row->addWidget(markOf(finding.severity), 0, Qt::AlignTop);
        row->addWidget(new Label(saysInLine(finding), 1.0, QFont::DemiBold), 1);
        column->addLayout(row);
        if (const QString measured = measuredInWords(finding); !measured.isEmpty())
            column->addWidget(new Label(measured, 0.92));
        if (!finding.source.isEmpty())
            column->addWidget(
                new Label(tr("Limit: %1.").arg(sourceInWords(finding)), 0.85, QFont::Normal, true));
        addMends(finding, *column);
        m_column->addWidget(card);
    }
}

// What must not be printed so cannot be left.
void Note::addMends(const Finding& finding, QVBoxLayout& column)
{
    const Mend mend = m_desk.mendOf(finding);
    if (mend.way != MendWay::Show) {
        auto* button = new Button(Button::Form::Plain, mend.does, Icon::Mend);
        button->setAccessibleName(QStringLiteral("%1: %2").arg(mend.does, finding.says));
        button->setMayShrink(true);
        connect(button, &Button::clicked, this, [this, finding] { Q_EMIT mendAsked(finding); });
        column.addWidget(button, 0, Qt::AlignLeading);
        m_actions << button;
    }
    const QString why = m_desk.reasonLeft(finding);
    if (!why.isEmpty())
        column.addWidget(new Label(tr("Left as it is: %1").arg(why), 0.92, QFont::DemiBold));
    if (finding.panel == 0 || finding.severity == Severity::Stop)
        return;
    auto* leave = new Button(
        Button::Form::Word, why.isEmpty() ? tr("Leave it, and say why") : tr("Another reason"));
    leave->setAccessibleName(QStringLiteral("%1: %2").arg(leave->text(), finding.says));
    connect(leave, &Button::clicked, this, [this, finding] { Q_EMIT leaveAsked(finding); });
    column.addWidget(leave, 0, Qt::AlignLeading);
    m_actions << leave;
}

Button* Note::addAction(PieceAction action, Icon icon, const QString& text, const QString& key)
{
    auto* button = new Button(Button::Form::Row, text, icon);
    button->setKeyHint(key);
    button->setMinimumHeight(scaled(30));
    connect(button, &Button::clicked, this, [this, action] { Q_EMIT asked(action); });
    m_actions << button;
    return button;
}

void Note::addActions(const Piece& piece, bool cropping, bool swapping)
{
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(air(1));
    grid->setVerticalSpacing(air(0.5));
    QVector<Button*> buttons{
        addAction(PieceAction::Bigger, Icon::Bigger, tr("Bigger"), QStringLiteral("+")),
        addAction(PieceAction::Smaller, Icon::Smaller, tr("Smaller"), QStringLiteral("\u2212"))};
    if (piece.kind == PieceKind::Photo) {
        Button* crop = addAction(PieceAction::Crop, Icon::Crop, tr("Crop"), QStringLiteral("C"));
        crop->setCheckable(true);
        crop->setChecked(cropping);
        buttons << crop;
    }
    Button* swap = addAction(PieceAction::Swap, Icon::Swap, tr("Swap"), QStringLiteral("S"));
    swap->setCheckable(true);
    swap->setChecked(swapping);
    Button* pin = addAction(PieceAction::Pin,
        Icon::Pin,
        piece.pinned ? tr("Pin out") : tr("Pin here"),
        QStringLiteral("P"));
    Button* off = addAction(PieceAction::TakeOff, Icon::TakeOff, tr("Take off"), tr("Del"));
    buttons << swap << pin << off;
    for (int i = 0; i < buttons.size(); ++i)
        grid->addWidget(buttons.at(i), i / 2, i % 2);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    m_column->addLayout(grid);
    if (isPicture(piece.kind)) {
        m_column->addWidget(addAction(PieceAction::Treat,
            Icon::Straighten,
            tr("Turn, straighten, cover"),
            QStringLiteral("O")));
    }
    m_column->addWidget(
        addAction(PieceAction::OnceMore, Icon::Plus, tr("Once more"), tr("Ctrl+D")));
    if (m_desk.isWritable(piece)) {
        m_column->addWidget(addAction(PieceAction::Write,
            Icon::Words,
            isPicture(piece.kind)                ? tr("Write the caption")
                : piece.kind == PieceKind::Quote ? tr("Shorten")
                                                 : tr("Write"),
            tr("Enter")));
    }
    if (!piece.shownWords.isEmpty()) {
        m_column->addWidget(addAction(
            PieceAction::AllWords, Icon::Words, tr("All the words"), QStringLiteral("J")));
    }
    const bool named = isPicture(piece.kind) && piece.text.contains(kNamesHere);
    if (const QString names = m_desk.namesFor(piece); named || !names.isEmpty()) {
        Button* button = addAction(PieceAction::Names,
            Icon::Words,
            named ? tr("Leave the names out") : tr("Name who is in it"),
            QStringLiteral("N"));
        button->setDetail(
            names.isEmpty() ? tr("Nobody here may be named.") : tr("On this wall: %1").arg(names));
        m_column->addWidget(button);
    }
}

void Note::addFacts(const Piece& piece)
{
    QStringList facts;
    if (piece.kind == PieceKind::Quote && piece.shownWords.isEmpty())
        facts << tr("The words stay as they were said, here in full.");
    if (!piece.shownWords.isEmpty())
        facts << tr("Said in full: %1").arg(m_desk.fullWords(piece));
    if (const auto why = m_desk.refusal(piece))
        facts << tr("Not shown: %1").arg(*why);
    else if (const DrawnDisplay* drawn = m_desk.drawn())
        facts << tr("Cleared for %1.").arg(inWords(drawn->display.audience));
    const RectMm box = isPicture(piece.kind) ? piece.picturePlace : piece.cell;
    facts << tr("%1 \u00d7 %2 mm.").arg(qRound(box.width.value())).arg(qRound(box.height.value()));
    if (piece.pinned)
        facts << tr("Pinned by you.");
    if (piece.together > 0)
        facts << tr("Kept together with others.");
    if (m_desk.isLocked())
        facts << tr("The panel is locked: no arranging changes it.");
    m_column->addSpacing(air(1));
    m_column->addWidget(new Label(facts.join(QLatin1Char(' ')), 0.85, QFont::Normal, true));
}

void Note::showPiece(PieceId id, bool cropping, bool swapping)
{
    const bool focused = isAncestorOf(focusWidget());
    const int stopIndex = int(m_actions.indexOf(m_rover->stop()));
    restart();
    const Piece* piece = m_desk.piece(id);
    if (piece == nullptr)
        return;
    QString second = piece->text.simplified();
    if (cropping)
        second = tr("Drag the picture in its frame, or use the arrow keys. + and \u2212 look "
                    "nearer or wider. Enter when it is right.");
    else if (swapping)
        second = tr("Now choose the piece to trade places with. Esc leaves it.");
    addHead(*piece, beginningOf(second, 140));
    addFindings(m_desk.findingsOn(id));
    if (cropping)
        m_column->addWidget(new Label(m_desk.sharpnessInWords(*piece), 0.92));
    if (isPicture(piece->kind) && m_desk.refusal(*piece))
        m_column->addWidget(addAction(
            PieceAction::People, Icon::Look, tr("Say who is in it"), QStringLiteral("W")));
    addActions(*piece, cropping, swapping);
    Button* why = addAction(PieceAction::Why, Icon::Why, tr("Why it is here"), QStringLiteral("Y"));
    why->setCheckable(true);
    why->setChecked(m_whyShown);
    m_column->addWidget(why);
    if (m_whyShown) {
        for (const QString& reason : m_desk.whyHere(id))
            m_column->addWidget(new Label(reason, 0.92));
    }
    addFacts(*piece);
    m_rover->setMembers(m_actions, qMax(0, stopIndex));
    if (focused && m_rover->stop() != nullptr)
        m_rover->stop()->setFocus();
}

void Note::showSeveral(const PieceIds& ids)
{
    const bool focused = isAncestorOf(focusWidget());
    const int stopIndex = int(m_actions.indexOf(m_rover->stop()));
    restart();
    m_column->addWidget(
        new Label(tr("%1 pieces in your hand").arg(ids.size()), 1.08, QFont::DemiBold));
    if (const Piece* first = m_desk.piece(ids.front())) {
        m_column->addWidget(
            new Label(tr("Into one line with the first (%1), or the same room between them.")
                          .arg(wordFor(first->kind)),
                0.92,
                QFont::Normal,
                true));
    }
    m_column->addSpacing(air(1));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(air(1));
    grid->setVerticalSpacing(air(0.5));
    const struct {
        PieceAction action;
        Icon icon;
        QString text;
        QString key;
    } all[] = {{PieceAction::AlignLeft, Icon::AlignLeft, tr("Left"), QStringLiteral("L")},
        {PieceAction::AlignTop, Icon::AlignTop, tr("Top"), QStringLiteral("T")},
        {PieceAction::AlignCentre, Icon::AlignCentre, tr("Centre"), QStringLiteral("E")},
        {PieceAction::AlignMiddle, Icon::AlignMiddle, tr("Middle"), QStringLiteral("M")},
        {PieceAction::AlignRight, Icon::AlignRight, tr("Right"), QStringLiteral("R")},
        {PieceAction::AlignFoot, Icon::AlignFoot, tr("Foot"), QStringLiteral("F")},
        {PieceAction::SpreadAcross, Icon::SpreadAcross, tr("Across"), QStringLiteral("H")},
        {PieceAction::SpreadDown, Icon::SpreadDown, tr("Down"), QStringLiteral("V")},
        {PieceAction::Pin, Icon::Pin, tr("Pin here"), QStringLiteral("P")},
        {PieceAction::TakeOff, Icon::TakeOff, tr("Take off"), tr("Del")}};
    int at = 0;
    for (const auto& one : all) {
        Button* button = addAction(one.action, one.icon, one.text, one.key);
        const bool spreads =
            one.action == PieceAction::SpreadAcross || one.action == PieceAction::SpreadDown;
        const bool lines =
            !spreads && one.action != PieceAction::Pin && one.action != PieceAction::TakeOff;
        button->setEnabled(!spreads || ids.size() > 2);
        if (lines)
            button->setAccessibleName(tr("Bring into line: %1").arg(one.text));
        else if (spreads)
            button->setAccessibleName(tr("The same room between: %1").arg(one.text));
        grid->addWidget(button, at / 2, at % 2);
        ++at;
    }
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    m_column->addLayout(grid);
    m_column->addWidget(
        addAction(PieceAction::OnceMore, Icon::Plus, tr("Once more"), tr("Ctrl+D")));
    m_column->addWidget(addAction(
        PieceAction::ArrangeThese, Icon::Ways, tr("Arrange only these"), QStringLiteral("A")));
    m_column->addWidget(addAction(PieceAction::Together,
        Icon::Pin,
        m_desk.areTogether(ids) ? tr("No longer together") : tr("Keep together"),
        QStringLiteral("K")));
    m_rover->setMembers(m_actions, qMax(0, stopIndex));
    if (focused && m_rover->stop() != nullptr)
        m_rover->stop()->setFocus();
}

void Note::showAdvice(const std::vector<Advice>& advice)
{
    restart();
    if (advice.empty())
        return;
    m_advises = true;
    m_column->addWidget(new Label(tr("What would suit better"), 1.08, QFont::DemiBold));
    for (const Advice& one : advice) {
        m_column->addSpacing(air(1));
        m_column->addWidget(new Label(one.says, 0.95));
        const QString text = adviceInWords(one);
        if (text.isEmpty())
            continue;
        auto* take = new Button(Button::Form::Plain, text, Icon::Mend);
        connect(take, &Button::clicked, this, [this, one] { Q_EMIT adviceTaken(one); });
        m_column->addWidget(take, 0, Qt::AlignLeading);
        m_actions << take;
    }
    m_column->addSpacing(air(1));
    auto* leave = new Button(Button::Form::Word, tr("Leave it so"));
    leave->setQuiet(true);
    connect(leave, &Button::clicked, this, &Note::adviceLeft);
    m_column->addWidget(leave, 0, Qt::AlignLeading);
    m_actions << leave;
    m_rover->setMembers(m_actions);
}

void Note::showTrial(const QString& heading, const QString& sentence)
{
    restart();
    m_trialHeading = heading;
    m_column->addWidget(new Label(heading, 1.08, QFont::DemiBold));
    m_column->addWidget(new Label(sentence, 0.95));
    m_column->addSpacing(air(1));
    m_column->addWidget(new Rule);
    m_column->addWidget(new Label(tr("Words keep their size. Shift trades places with the piece "
                                     "under it, Ctrl leaves the grid."),
        0.88,
        QFont::Normal,
        true));
}

void Note::showMoves(const QStringList& moves)
{
    constexpr int kMost = 4;
    if (m_trialHeading.isEmpty())
        return;
    QStringList said = moves.mid(0, kMost);
    if (moves.size() > kMost)
        said << counted(int(moves.size()) - kMost, tr("And 1 other."), tr("And %1 others."));
    if (moves.isEmpty())
        said << tr("Nothing else moves.");
    said << tr("Nothing leaves the panel.");
    const QString heading = m_trialHeading; // the note starts anew
    showTrial(heading, said.join(QLatin1Char('\n')));
}

} // namespace wainscot::ui
