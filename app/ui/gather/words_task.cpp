#include "app/ui/gather/words_task.h"

#include <QHBoxLayout>
#include <QInputDialog>
#include <QLineEdit>
#include <QMenu>
#include <QPaintEvent>
#include <QPainter>

#include "app/jobs/sentences.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/kit/words_slip.h"

namespace wainscot::ui {

namespace {

constexpr int kRestMs = 1500; // a pause long enough not to write the file at every letter
constexpr int kRecent = 3;
constexpr int kNarrow = 1150; // px at 10 pt text

} // namespace

WordsTask::WordsTask(Session& session, PictureShelf& shelf, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_desk(session)
    , m_column(new AnswerColumn(session, m_desk, shelf))
    , m_children(new ChildList)
    , m_about(new QWidget)
    , m_order(new Button(Button::Form::Word, tr("Child by child")))
    , m_scribe(new Button(Button::Form::Word, tr("Scribe")))
    , m_pages(new QStackedWidget)
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    auto* capture = new QWidget;
    auto* parts = new QHBoxLayout(capture);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(0);
    parts->addWidget(makeStart());
    parts->addWidget(new Rule(Qt::Vertical));
    auto* ground = new QWidget;
    auto* centred = new QHBoxLayout(ground);
    centred->setContentsMargins(air(9), air(5), air(9), air(4));
    m_column->setMaximumWidth(scaled(900));
    centred->addStretch(1);
    centred->addWidget(m_column, 100);
    centred->addStretch(1);
    m_middle = scrolled(ground);
    parts->addWidget(m_middle, 1);
    m_end = makeEnd();
    parts->addWidget(m_end);
    m_pages->addWidget(capture);
    m_pages->addWidget(makeEmpty());
    row->addWidget(m_pages);
    makeAbout();
    makeActions();
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, &m_desk, &CaptureDesk::keep);
    connect(&field(), &QPlainTextEdit::textChanged, this, [this] { m_rest.start(); });
    connect(m_children, &ChildList::chosen, this, [this](ChildId child) {
        m_desk.goTo(child);
        field().setFocus(Qt::OtherFocusReason);
    });
    connect(&m_column->editor(), &AnswerEditor::pictureAsked, this, &WordsTask::pictureAsked);
    connect(&m_desk, &CaptureDesk::moved, this, [this] {
        refresh();
        field().setFocus(Qt::OtherFocusReason);
        showAnswerInHand();
        Q_EMIT stateChanged();
    });
}

void WordsTask::nameExperience()
{
    const QString title = m_title->text().simplified();
    if (title.isEmpty()) {
        m_title->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_title->clear();
    Q_EMIT experienceNamed(title);
}

void WordsTask::makeAbout()
{
    auto* row = new QHBoxLayout(m_about);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    for (Button* button : {m_order, m_scribe}) {
        button->setOpensList(true);
        row->addWidget(button);
    }
    connect(m_order, &Button::clicked, this, &WordsTask::chooseOrder);
    connect(m_scribe, &Button::clicked, this, &WordsTask::chooseScribe);
}

void WordsTask::chooseOrder()
{
    QMenu menu(this);
    const auto offer = [&](const QString& text, CaptureDesk::Order order) {
        QAction* one = menu.addAction(text, this, [this, order] {
            m_desk.setOrder(order);
            refreshAbout();
            Q_EMIT stateChanged();
        });
        one->setCheckable(true);
        one->setChecked(m_desk.order() == order);
    };
    offer(tr("Child by child: all questions to one child"), CaptureDesk::Order::ChildByChild);
    offer(tr("Question by question: one question to all"), CaptureDesk::Order::PromptByPrompt);
    menu.exec(m_order->mapToGlobal(QPoint(0, m_order->height())));
    field().setFocus(Qt::OtherFocusReason);
}

void WordsTask::chooseScribe()
{
    QMenu menu(this);
    const QStringList known = m_desk.scribes();
    for (const QString& name : known) {
        QAction* one = menu.addAction(name, this, [this, name] { m_desk.setScribe(name); });
        one->setCheckable(true);
        one->setChecked(name == m_desk.scribe());
    }
    menu.addSeparator();
    menu.addAction(tr("Somebody else..."), this, [this] {
        bool ok = false;
        const QString name = QInputDialog::getText(
            this, tr("Who takes the words down?"), tr("Name"), QLineEdit::Normal, {}, &ok);
        if (ok)
            m_desk.setScribe(name.simplified());
    });
    menu.exec(m_scribe->mapToGlobal(QPoint(0, m_scribe->height())));
    refreshAbout();
    field().setFocus(Qt::OtherFocusReason);
}

void WordsTask::makeActions()
{
    const auto add = [this](const QString& text, const QKeySequence& key, auto does) {
        auto* made = new QAction(text, this);
        made->setShortcut(key);
        made->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        addAction(made);
        connect(made, &QAction::triggered, this, does);
        made->setEnabled(false);
        m_actions << made;
    };
    add(tr("Keep, next child"), Qt::CTRL | Qt::Key_Return, [this] { m_desk.keepAndNextChild(); });
    const std::array<std::pair<QString, Telling>, 5> tellings{{{tr("Said"), Telling::Said},
        {tr("Wrote"), Telling::Wrote},
        {tr("Drew"), Telling::Drew},
        {tr("Signed"), Telling::Signed},
        {tr("Pointed"), Telling::Pointed}}};
    for (std::size_t i = 0; i < tellings.size(); ++i)
        add(tellings[i].first,
            QKeySequence(Qt::ALT | Qt::Key(int(Qt::Key_1) + int(i))),
            [this, telling = tellings[i].second] { m_desk.setTelling(telling); });
    add(tr("Read back"), Qt::CTRL | Qt::Key_R, [this] {
        m_desk.setReadBack(!m_desk.draft().readBack);
    });
    add(tr("Passes for now"), Qt::Key_F2, [this] { m_desk.passes(); });
    add(tr("Note why not"), Qt::Key_F3, [this] { m_column->editor().askWhyNot(); });
    add(tr("Go to a child"), Qt::CTRL | Qt::Key_J, [this] {
        if (QWidget* stop = m_children->firstStop())
            stop->setFocus(Qt::TabFocusReason);
    });
}

void WordsTask::showAnswerInHand()
{
    // What was just built has no place before the event loop comes round.
    QTimer::singleShot(0, this, [this] { m_middle->ensureWidgetVisible(&m_column->editor()); });
}

void WordsTask::enableActions(bool on)
{
    for (QAction* action : std::as_const(m_actions))
        action->setEnabled(on);
}

void WordsTask::showEvent(QShowEvent* event)
{
    TaskPage::showEvent(event);
    enableActions(true);
    showAnswerInHand();
}

void WordsTask::hideEvent(QHideEvent* event)
{
    TaskPage::hideEvent(event);
    enableActions(false);
}

QWidget* WordsTask::firstStop() const
{
    if (m_pages->currentIndex() == 0)
        return &m_column->editor().field();
    return m_title->isVisibleTo(m_title->parentWidget()) ? static_cast<QWidget*>(m_title)
                                                         : m_toClass;
}

void WordsTask::refresh()
{
    const bool children = !m_session.book().children.isEmpty();
    const bool ready = children && m_session.experience() != nullptr;
    m_pages->setCurrentIndex(ready ? 0 : 1);
    m_about->setVisible(ready);
    m_emptySays->setText(
        children ? tr("What happened? Give it a name.") : tr("There is nobody to listen to yet."));
    m_title->setVisible(children);
    m_toClass->setVisible(!children);
    m_desk.refresh();
    if (!ready)
        return;
    m_column->refresh();
    m_children->refresh(m_session.book(),
        m_desk.answers(),
        m_desk.child() != nullptr ? m_desk.child()->id : ChildId());
    refreshRecent();
    refreshAbout();
}

void WordsTask::refreshAbout()
{
    const bool byChild = m_desk.order() == CaptureDesk::Order::ChildByChild;
    m_order->setText(byChild ? tr("Child by child") : tr("Question by question"));
    m_scribe->setText(m_desk.scribe().isEmpty() ? tr("Scribe: nobody yet")
                                                : tr("Scribe: %1").arg(m_desk.scribe()));
    for (Button* button : {m_order, m_scribe}) {
        button->setAccessibleName(button->text());
        button->updateGeometry();
    }
}

void WordsTask::refreshRecent()
{
    while (QLayoutItem* item = m_recent->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    int shown = 0;
    const auto& quotes = m_session.book().quotes.rows();
    for (auto at = quotes.rbegin(); at != quotes.rend() && shown < kRecent; ++at) {
        const Quote& quote = at->second;
        const Child* child = m_session.book().children.find(quote.child);
        const bool here = quote.experience == m_session.experience()->id && !quote.prompt.isEmpty();
        if (!here || child == nullptr || at->first == m_desk.draft().quote)
            continue;
        auto* slip = new WordsSlip(
            quote.words, displayName(*child) + QStringLiteral(", ") + quote.prompt, 1.0);
        slip->setFocusPolicy(Qt::ClickFocus); // the same words are a stop in the middle
        connect(slip, &WordsSlip::clicked, this, [this, id = at->first] { m_desk.takeUp(id); });
        m_recent->addWidget(slip);
        ++shown;
    }
    if (shown == 0)
        m_recent->addWidget(new Label(tr("Nobody has been heard on this yet. Begin with the child "
                                         "who talks least."),
            0.95,
            QFont::Normal,
            true));
}

TaskPage::Saying WordsTask::saying()
{
    const Book& book = m_session.book();
    if (book.children.isEmpty())
        return {tr("Nobody is in the class yet."), {}, tr("Enter the class"), [this] {
                    Q_EMIT classAsked();
                }};
    if (m_session.experience() == nullptr)
        return {tr("Nothing has happened yet."),
            tr("Give it a name; the questions are ready."),
            tr("Begin it"),
            [this] { nameExperience(); }};
    const AnswersOfClass& answers = m_desk.answers();
    QStringList open;
    for (const ChildAnswers& row : answers.children) {
        const Child* child = book.children.find(row.child);
        if (!row.isComplete() && child != nullptr)
            open << displayName(*child);
    }
    const QString done = tr("%1 of %2 answers. %3 of %4 children on every question.")
                             .arg(answers.answered())
                             .arg(answers.asked())
                             .arg(answers.complete())
                             .arg(answers.children.size());
    const QString missing = open.isEmpty() ? tr("Everybody was asked everything.")
        : open.size() > 5 ? tr("%1 children have a question open.").arg(open.size())
                          : tr("A question is open for %1.").arg(listInWords(open));
    if (const Child* next = m_desk.next())
        return {done, missing, tr("Next child: %1").arg(displayName(*next)), [this] {
                    m_desk.keepAndNextChild();
                }};
    return {done, missing, tr("See who was heard"), [this] {
                m_desk.keep();
                Q_EMIT heardAsked();
            }};
}

void WordsTask::resizeEvent(QResizeEvent* event)
{
    TaskPage::resizeEvent(event);
    fold();
}

void WordsTask::fold()
{
    const bool narrow = width() < scaled(kNarrow);
    m_end->setVisible(!narrow);
}

void WordsTask::paintEvent(QPaintEvent* event)
{
    QPainter painter(this);
    painter.fillRect(event->rect(), tokens().window);
    if (m_pages->currentIndex() == 1)
        return;
    // The middle is the page one writes on.
    QRect middle = m_middle->geometry();
    middle.moveTopLeft(m_middle->mapTo(this, QPoint(0, 0)));
    painter.fillRect(middle, tokens().card);
}

} // namespace wainscot::ui
