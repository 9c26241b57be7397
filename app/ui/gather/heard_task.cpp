#include "app/ui/gather/heard_task.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QMenu>
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>

#include "app/ui/kit/tokens.h"
#include "app/ui/kit/voice_mark.h"

namespace wainscot::ui {

namespace {

constexpr std::size_t kMostNamed = 3; // a list of many would be a ranking
constexpr int kNarrow = 1150; // px at 10 pt text

class MarkSample : public QWidget {
public:
    explicit MarkSample(AnswerMark mark)
        : m_mark(mark)
    {
        setFixedSize(scaled(18), scaled(18));
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(this);
        drawVoiceMark(
            painter, m_mark, QRectF(rect()).center(), scaled(10), tokens().accent, tokens().edge);
    }

private:
    AnswerMark m_mark;
};

} // namespace

HeardTask::HeardTask(Session& session, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_grid(session)
    , m_about(new QWidget)
    , m_folded(new Button(Button::Form::Word, tr("Listen to next")))
    , m_empty(
          new Label(tr("After the first words are taken down you see here who has not been asked."),
              1.5,
              QFont::DemiBold))
    , m_table(new MarkTable(m_grid,
          [this](QPainter& painter, const QModelIndex& cell, const QRectF& place) {
              m_grid.draw(painter, cell, place);
          }))
    , m_legend(makeLegend())
    , m_end(makeEnd())
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    auto* column = new QVBoxLayout;
    column->setContentsMargins(air(4), air(3), air(4), air(3));
    column->setSpacing(air(2));
    column->addWidget(m_empty);
    column->addWidget(m_table, 1);
    column->addWidget(m_legend);
    column->addStretch(0);
    row->addLayout(column, 1);
    row->addWidget(m_end);
    m_table->setAccessibleName(tr("Who was heard"));
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->verticalHeader()->setDefaultSectionSize(qMax(28, scaled(32)));
    auto* about = new QHBoxLayout(m_about);
    about->setContentsMargins(0, 0, 0, 0);
    about->addWidget(m_folded);
    m_folded->setOpensList(true);
    connect(m_folded, &Button::clicked, this, &HeardTask::offerNext);
    connect(m_table, &MarkTable::acted, this, [this](const QModelIndex& cell) {
        if (const Child* child = m_grid.child(cell.row()))
            Q_EMIT childAsked(child->id, false);
    });
}

QWidget* HeardTask::makeLegend()
{
    auto* legend = new QWidget;
    auto* row = new QHBoxLayout(legend);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    const std::array<std::pair<AnswerMark, QString>, 7> marks{
        {{{Heard::Answered, Telling::Said}, tr("said")},
            {{Heard::Answered, Telling::Wrote}, tr("wrote")},
            {{Heard::Answered, Telling::Drew}, tr("drew")},
            {{Heard::Answered, Telling::Signed}, tr("signed or pointed")},
            {{Heard::Passed, Telling::Said}, tr("passes for now")},
            {{Heard::Noted, Telling::Said}, tr("noted why not")},
            {{Heard::NotYet, Telling::Said}, tr("not yet")}}};
    for (const auto& [mark, word] : marks) {
        row->addWidget(new MarkSample(mark));
        auto* label = new Label(word, 0.88, QFont::Normal, true);
        label->setWordWrap(false);
        row->addWidget(label);
        row->addSpacing(air(2));
    }
    row->addStretch();
    return legend;
}

QWidget* HeardTask::makeEnd()
{
    const SideColumn side = sideColumn(scaled(284), air(2));
    QVBoxLayout* column = side.content;
    column->addWidget(new Label(tr("Listen to next"), 1.15, QFont::DemiBold));
    m_intro = new Label({}, 0.95, QFont::Normal, true);
    column->addWidget(m_intro);
    m_cards = new QVBoxLayout;
    m_cards->setSpacing(air(2));
    column->addLayout(m_cards);
    column->addStretch();
    column->addWidget(
        new Label(tr("Marks are counted, children are not compared. The order is the class's own."),
            0.9,
            QFont::Normal,
            true));
    return side.whole;
}

std::vector<ChildId> HeardTask::listenToNext() const
{
    std::vector<ChildId> next;
    for (const ChildAnswers& row : m_grid.answers().children) {
        if (!row.isComplete() && next.size() < kMostNamed)
            next.push_back(row.child);
    }
    for (const ChildId least : heardLeast(m_grid.term(), kMostNamed)) {
        if (next.size() < kMostNamed && std::find(next.begin(), next.end(), least) == next.end())
            next.push_back(least);
    }
    std::sort(next.begin(), next.end());
    return next;
}

QString HeardTask::reasonFor(ChildId child) const
{
    QStringList reasons;
    const ChildAnswers* answers = m_grid.answers().of(child);
    const ChildInTerm* term = m_grid.term().of(child);
    if (answers != nullptr && answers->open() > 0)
        reasons << counted(answers->open(), tr("1 question open."), tr("%1 questions open."));
    else
        reasons << tr("Heard here. Few weeks before.");
    if (term != nullptr && !term->lastHeard)
        reasons << tr("Not heard yet this term.");
    else if (term != nullptr)
        reasons << tr("Last heard on %1.")
                       .arg(QLocale().toString(*term->lastHeard, QStringLiteral("d MMMM")));
    if (term != nullptr && term->walls == 0)
        reasons << tr("Not yet on a wall.");
    return reasons.join(QLatin1Char(' '));
}

void HeardTask::addCard(const Child& child)
{
    auto* card = new Card;
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(air(3), air(2), air(3), air(1.5));
    column->setSpacing(air(1));
    column->addWidget(new Label(displayName(child), 1.0, QFont::DemiBold));
    column->addWidget(new Label(reasonFor(child.id), 0.92, QFont::Normal, true));
    auto* row = new QHBoxLayout;
    row->setSpacing(air(1));
    auto* words = new Button(Button::Form::Word, tr("Take words down"));
    auto* whyNot = new Button(Button::Form::Word, tr("Note why not"));
    words->setAccessibleName(tr("Take words down: %1").arg(displayName(child)));
    whyNot->setAccessibleName(tr("Note why not: %1").arg(displayName(child)));
    connect(words, &Button::clicked, this, [this, id = child.id] { Q_EMIT childAsked(id, false); });
    connect(whyNot, &Button::clicked, this, [this, id = child.id] { Q_EMIT childAsked(id, true); });
    const ChildAnswers* answers = m_grid.answers().of(child.id);
    whyNot->setVisible(answers != nullptr && !answers->isComplete());
    for (Button* button : {words, whyNot}) {
        button->setRelativeSize(0.92);
        button->setMayShrink(true);
        row->addWidget(button);
    }
    row->addStretch();
    column->addLayout(row);
    m_cards->addWidget(card);
}

void HeardTask::refreshNext()
{
    while (QLayoutItem* item = m_cards->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // one of its buttons may be the sender
        delete item;
    }
    const std::vector<ChildId> next = listenToNext();
    m_intro->setText(next.empty() ? tr("Everybody was heard in as many weeks.")
                                  : tr("These have told us little so far. There are many reasons "
                                       "for that; you know them."));
    for (const ChildId id : next) {
        if (const Child* child = m_session.book().children.find(id))
            addCard(*child);
    }
    m_folded->setText(tr("Listen to next: %1").arg(next.size()));
    m_folded->setAccessibleName(m_folded->text());
    m_folded->setEnabled(!next.empty());
    m_folded->updateGeometry();
}

void HeardTask::offerNext()
{
    QMenu menu(this);
    for (const ChildId id : listenToNext()) {
        const Child* child = m_session.book().children.find(id);
        menu.addAction(displayName(*child) + QStringLiteral(". ") + reasonFor(id),
            this,
            [this, id] { Q_EMIT childAsked(id, false); });
    }
    menu.exec(m_folded->mapToGlobal(QPoint(0, m_folded->height())));
}

void HeardTask::refresh()
{
    const QModelIndex before = m_table->currentIndex();
    const std::pair cell(before.row(), before.column());
    m_grid.refresh();
    const bool any = m_grid.rowCount() > 0 && !m_session.book().quotes.isEmpty();
    m_empty->setVisible(!any);
    m_table->setVisible(any);
    m_legend->setVisible(any);
    m_end->setVisible(any && width() >= scaled(kNarrow));
    m_about->setVisible(any && width() < scaled(kNarrow));
    const int prompts = m_grid.prompts();
    const int weeks = m_grid.weeks();
    m_table->header().setGroups({{tr("On this"), 0, prompts},
        {tr("The term, week by week"), prompts, weeks},
        {tr("So far"), prompts + weeks, 3}});
    m_table->fitColumns();
    if (any)
        m_table->setCurrentIndex(m_grid.index(qMax(0, cell.first), qMax(0, cell.second)));
    refreshNext();
}

TaskPage::Saying HeardTask::saying()
{
    const AnswersOfClass& answers = m_grid.answers();
    const int incomplete = int(answers.children.size()) - answers.complete();
    const std::vector<ChildId> next = listenToNext();
    Saying saying{tr("%1 of %2 answers. %3")
                      .arg(answers.answered())
                      .arg(answers.asked())
                      .arg(incomplete == 0 ? tr("Every child is complete.")
                                           : counted(incomplete,
                                               tr("1 child is not complete."),
                                               tr("%1 children are not complete."))),
        tr("Complete means an answer to each question, or your note why not."),
        {},
        {}};
    if (next.empty() && answers.answered() > 0) {
        saying.next = tr("Put ideas together");
        saying.takeNext = [this] { Q_EMIT groupsAsked(); };
    }
    if (next.empty())
        return saying;
    saying.next =
        tr("Listen to %1").arg(displayName(*m_session.book().children.find(next.front())));
    saying.takeNext = [this, id = next.front()] { Q_EMIT childAsked(id, false); };
    return saying;
}

void HeardTask::resizeEvent(QResizeEvent* event)
{
    TaskPage::resizeEvent(event);
    const bool any = m_table->isVisibleTo(this);
    m_end->setVisible(any && width() >= scaled(kNarrow));
    m_about->setVisible(any && width() < scaled(kNarrow));
}

void HeardTask::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
