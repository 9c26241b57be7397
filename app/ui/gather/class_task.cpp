#include "app/ui/gather/class_task.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>

#include "app/jobs/class_list.h"
#include "app/ui/compose/drawer.h"
#include "app/ui/gather/child_sheet.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/permission_edits.h"
#include "core/base/in_words.h"
#include "core/permit/family_answers.h"

namespace wainscot::ui {

namespace {

// One mark with its word, beneath the table.
class AnswerSample : public QWidget {
public:
    explicit AnswerSample(FamilyAnswer answer)
        : m_answer(answer)
    {
        setFixedSize(scaled(18), scaled(18));
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(this);
        drawFamilyAnswer(painter, m_answer, rect());
    }

private:
    FamilyAnswer m_answer;
};

} // namespace

ClassTask::ClassTask(Session& session, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_grid(session)
    , m_about(new QWidget)
    , m_empty(new Label(
          tr("Who is in your class? Type a name, or paste the list."), 1.5, QFont::DemiBold))
    , m_table(new MarkTable(m_grid,
          [](QPainter& painter, const QModelIndex& cell, const QRectF& place) {
              drawFamilyAnswer(painter, FamilyAnswer(cell.data(Qt::UserRole).toInt()), place);
          }))
    , m_legend(makeLegend())
    , m_note(new CellNote(session))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(4), air(3), air(4), air(3));
    column->setSpacing(air(2));
    column->addWidget(m_empty);
    column->addWidget(m_table, 1);
    column->addWidget(makeEntry());
    column->addWidget(m_note);
    column->addStretch(0);
    makeAbout();
    m_table->setAccessibleName(tr("What is allowed"));
    m_table->setLeastColumn(scaled(60));
    std::vector<ColumnGroup> groups;
    for (std::size_t i = 0; i < kAudiences.size(); ++i)
        groups.push_back({capitalised(inWords(kAudiences[i])),
            int(i * kPermissions.size()),
            int(kPermissions.size())});
    m_table->header().setGroups(groups);
    connect(m_table, &MarkTable::acted, this, [this] { change(std::nullopt); });
    connect(m_table, &MarkTable::currentMoved, this, &ClassTask::showCell);
    connect(m_note, &CellNote::answerChosen, this, [this](FamilyAnswer to) { change(to); });
    connect(m_note, &CellNote::displayAsked, this, &ClassTask::displayAsked);
    connect(m_note, &CellNote::childAsked, this, [this](ChildId child) {
        ChildSheet(m_session, child, this).exec();
    });
}

QWidget* ClassTask::makeLegend()
{
    auto* legend = new QWidget;
    auto* row = new QHBoxLayout(legend);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    for (const FamilyAnswer answer :
        {FamilyAnswer::Yes, FamilyAnswer::No, FamilyAnswer::NotSaid, FamilyAnswer::Withdrawn}) {
        row->addWidget(new AnswerSample(answer));
        auto* word = new Label(inWords(answer), 0.88, QFont::Normal, true);
        word->setWordWrap(false);
        row->addWidget(word);
        row->addSpacing(air(3));
    }
    return legend;
}

QWidget* ClassTask::makeEntry()
{
    auto* entry = new QWidget;
    auto* row = new QHBoxLayout(entry);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(2));
    row->addWidget(m_legend);
    m_name = new QLineEdit;
    m_name->setTextMargins(air(1), 0, air(1), 0);
    m_name->setPlaceholderText(tr("A name; Enter adds the child"));
    m_name->setAccessibleName(tr("Add a child: name"));
    m_name->setMinimumWidth(scaled(180));
    m_name->setMaximumWidth(scaled(300));
    row->addWidget(m_name, 1);
    row->addStretch(1);
    connect(m_name, &QLineEdit::returnPressed, this, [this] {
        add(m_name->text());
        m_name->clear();
    });
    return entry;
}

void ClassTask::makeAbout()
{
    auto* row = new QHBoxLayout(m_about);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    auto* file = new Button(Button::Form::Word, tr("From a file"));
    auto* list = new Button(Button::Form::Plain, tr("Paste a list"), Icon::Sheet);
    auto* one = new Button(Button::Form::Plain, tr("Add a child"), Icon::Plus);
    connect(file, &Button::clicked, this, &ClassTask::fileAsked);
    connect(list, &Button::clicked, this, &ClassTask::paste);
    connect(one, &Button::clicked, m_name, [this] { m_name->setFocus(Qt::OtherFocusReason); });
    for (Button* button : {file, list, one})
        row->addWidget(button);
}

void ClassTask::paste()
{
    add(QGuiApplication::clipboard()->text());
}

void ClassTask::add(const QString& text)
{
    const std::vector<ListedChild> listed = childrenFromText(text);
    if (listed.empty()) {
        Q_EMIT announced(tr("There is no name in it. A list has a name in each line."));
        return;
    }
    const int before = m_grid.rowCount();
    const QString label = listed.size() == 1 ? tr("Add %1").arg(listed.front().name)
                                             : tr("Add %1 children").arg(listed.size());
    if (!m_session.perform(addChildren(m_session.book(), listed, label)))
        return;
    const int added = m_grid.rowCount() - before;
    if (added < int(listed.size()))
        Q_EMIT announced(tr("%1 of %2 were in the class already.")
                             .arg(int(listed.size()) - added)
                             .arg(listed.size()));
}

void ClassTask::change(std::optional<FamilyAnswer> to)
{
    const QModelIndex current = m_table->currentIndex();
    const Child* first = m_grid.child(current.row());
    if (first == nullptr)
        return;
    const Audience audience = PermissionGrid::audience(current.column());
    const Permission permission = PermissionGrid::permission(current.column());
    const FamilyAnswer answer =
        to.value_or(nextAnswer(m_session.book(), *first, audience, permission, m_session.today()));
    const QModelIndexList cells = chosen();
    std::vector<SaidPermission> said;
    said.reserve(std::size_t(cells.size()));
    for (const QModelIndex& cell : cells) {
        if (const Child* child = m_grid.child(cell.row()))
            said.push_back({child->id,
                PermissionGrid::audience(cell.column()),
                PermissionGrid::permission(cell.column()),
                answer});
    }
    const QString label = said.size() > 1
        ? tr("%1 answers of families").arg(said.size())
        : tr("%1 %2").arg(capitalised(inWords(permission)), inWords(answer));
    m_session.perform(
        notePermissions(m_session.book(), said, {m_note->saidBy(), m_session.today(), {}}, label));
}

QModelIndexList ClassTask::chosen() const
{
    const QModelIndex current = m_table->currentIndex();
    const QModelIndexList cells = m_table->selectionModel()->selectedIndexes();
    return cells.contains(current) ? cells : QModelIndexList{current};
}

void ClassTask::showCell()
{
    const QModelIndex cell = m_table->currentIndex();
    m_note->showCell(m_grid.child(cell.row()),
        cell.isValid() ? PermissionGrid::audience(cell.column()) : Audience::Classroom,
        cell.isValid() ? PermissionGrid::permission(cell.column()) : Permission::Photo);
    const QModelIndexList cells = chosen();
    if (cells.size() < 2)
        return;
    const int first = cells.front().data(Qt::UserRole).toInt();
    const bool same = std::all_of(cells.begin(), cells.end(), [first](const QModelIndex& one) {
        return one.data(Qt::UserRole).toInt() == first;
    });
    m_note->showSeveral(
        int(cells.size()), same ? std::optional(FamilyAnswer(first)) : std::nullopt);
}

void ClassTask::refresh()
{
    m_grid.refresh();
    const bool any = m_grid.rowCount() > 0;
    m_empty->setVisible(!any);
    m_table->setVisible(any);
    m_legend->setVisible(any);
    if (any && !m_table->currentIndex().isValid())
        m_table->setCurrentIndex(m_grid.index(0, 0));
    m_table->fitColumns();
    showCell();
}

QWidget* ClassTask::firstStop() const
{
    return m_grid.rowCount() > 0 ? static_cast<QWidget*>(m_table) : m_name;
}

TaskPage::Saying ClassTask::saying()
{
    const int children = m_grid.rowCount();
    if (children == 0)
        return {tr("Nobody is in the class yet."),
            tr("Not said counts as no. Nothing is shown that is not allowed."),
            tr("Paste a list"),
            [this] { paste(); }};
    const int missing = answersMissing(m_session.book());
    const QString class_ = counted(children, tr("1 child."), tr("%1 children."));
    return {missing == 0 ? class_ + QLatin1Char(' ') + tr("Every family has answered.")
                         : class_ + QLatin1Char(' ')
                + counted(missing,
                    tr("1 answer from a family is missing."),
                    tr("%1 answers from families are missing.")),
        tr("Not said counts as no. Nothing is shown that is not allowed."),
        tr("Take words down"),
        [this] { Q_EMIT wordsAsked(); }};
}

void ClassTask::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
