#include "app/ui/listen/goals_card.h"

#include <QHBoxLayout>

#include "app/jobs/goal_edits.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

QLineEdit* lineFor(const QString& name, const QString& text)
{
    auto* line = new QLineEdit(text);
    line->setAccessibleName(name);
    line->setTextMargins(air(1), 0, air(1), 0);
    return line;
}

QString shownBy(const ShowsGoal& shows)
{
    QStringList parts;
    if (!shows.quotes.empty())
        parts << counted(
            int(shows.quotes.size()), GoalsCard::tr("1 answer"), GoalsCard::tr("%1 answers"));
    if (!shows.panels.empty())
        parts << counted(
            int(shows.panels.size()), GoalsCard::tr("1 panel"), GoalsCard::tr("%1 panels"));
    return parts.isEmpty() ? GoalsCard::tr("Say what shows it")
                           : GoalsCard::tr("Shown by %1").arg(parts.join(QStringLiteral(", ")));
}

} // namespace

GoalsCard::GoalsCard(Session& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_text(lineFor(tr("A further goal"), {}))
    , m_source(lineFor(tr("Where it comes from"), {}))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(1));
    column->addWidget(new Label(tr("Goals"), 1.25, QFont::DemiBold));
    column->addWidget(
        new Label(tr("Your own list, for all experiences. Words and panels can show a goal."),
            0.95,
            QFont::Normal,
            true));
    m_list = new QWidget;
    m_rows = new QVBoxLayout(m_list);
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(air(1));
    column->addWidget(m_list);
    auto* row = new QHBoxLayout;
    row->setSpacing(air(2));
    m_text->setPlaceholderText(tr("A further goal"));
    m_source->setPlaceholderText(tr("Where it comes from"));
    row->addWidget(m_text, 3);
    row->addWidget(m_source, 2);
    auto* add = new Button(Button::Form::Word, tr("Add the goal"), Icon::Plus);
    row->addWidget(add);
    column->addLayout(row);
    connect(add, &Button::clicked, this, &GoalsCard::add);
    connect(m_text, &QLineEdit::returnPressed, this, &GoalsCard::add);
    connect(m_source, &QLineEdit::returnPressed, this, &GoalsCard::add);
    refresh();
}

void GoalsCard::add()
{
    const Edit edit = addGoalEdit(m_session.book(), m_text->text(), m_source->text(), tr("A goal"));
    if (edit.isEmpty())
        return;
    m_text->clear();
    m_text->setFocus();
    Q_EMIT edited(edit);
}

void GoalsCard::refresh()
{
    m_links.clear();
    while (QLayoutItem* item = m_rows->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // one of its fields may be the sender
        delete item;
    }
    for (const Goal* goal : goalsOf(m_session.book()))
        addGoal(*goal);
}

void GoalsCard::addGoal(const Goal& goal)
{
    auto* holder = new QWidget;
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(2));
    auto* text = lineFor(tr("Goal: %1").arg(goal.text), goal.text);
    auto* source = lineFor(tr("Where it comes from: %1").arg(goal.text), goal.source);
    const auto keep = [this, text, source, id = goal.id] {
        const QString label =
            text->text().simplified().isEmpty() ? tr("Take the goal out") : tr("A goal");
        const Edit edit = goalTextEdit(m_session.book(), id, text->text(), source->text(), label);
        if (!edit.isEmpty())
            Q_EMIT edited(edit);
    };
    connect(text, &QLineEdit::editingFinished, this, keep);
    connect(source, &QLineEdit::editingFinished, this, keep);
    row->addWidget(text, 3);
    row->addWidget(source, 2);
    auto* links = new Button(Button::Form::Word, shownBy(whatShows(m_session.book(), goal.id)));
    links->setAccessibleName(links->text() + QStringLiteral(": ") + goal.text);
    connect(links, &Button::clicked, this, [this, id = goal.id] { Q_EMIT linksAsked(id); });
    row->addWidget(links);
    auto* out = new Button(Button::Form::Word, tr("Take the goal out"), Icon::TakeOff);
    out->setWordless(true);
    out->setAccessibleName(tr("Take the goal out: %1").arg(goal.text));
    connect(out, &Button::clicked, this, [this, id = goal.id] {
        Q_EMIT edited(removeGoalEdit(m_session.book(), id, tr("Take the goal out")));
    });
    row->addWidget(out);
    m_rows->addWidget(holder);
    m_links << links;
}

} // namespace wainscot::ui
