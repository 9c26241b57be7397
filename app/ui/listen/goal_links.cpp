#include "app/ui/listen/goal_links.h"

#include <QHBoxLayout>

#include <algorithm>

#include "app/jobs/goal_edits.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kNumberRole = Qt::UserRole;
constexpr int kPanelRole = Qt::UserRole + 1; // a panel, not words

bool has(const std::vector<GoalId>& goals, GoalId goal)
{
    return std::find(goals.begin(), goals.end(), goal) != goals.end();
}

} // namespace

GoalLinks::GoalLinks(Session& session, GoalId goal, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
    , m_goal(goal)
    , m_list(new QListWidget)
{
    setWindowTitle(tr("What shows this goal"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(5), air(5), air(5), air(5));
    column->setSpacing(air(2));
    const Goal* found = session.book().goals.find(goal);
    column->addWidget(new Label(found != nullptr ? found->text : QString(), 1.25, QFont::DemiBold));
    column->addWidget(
        new Label(tr("Tick the words and panels that show it. It says nothing about a child."),
            0.95,
            QFont::Normal,
            true));
    m_list->setAccessibleName(tr("Words and panels"));
    m_list->setWordWrap(true);
    column->addWidget(m_list, 1);
    auto* done = new Button(Button::Form::Main, tr("Done"));
    column->addWidget(done, 0, Qt::AlignTrailing);
    connect(done, &Button::clicked, this, &QDialog::accept);
    connect(m_list, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
        if (!m_isFilling)
            take(*item);
    });
    fill();
    resize(scaled(520), scaled(480));
    m_list->setFocus();
}

void GoalLinks::fill()
{
    m_isFilling = true;
    const Book& book = m_session.book();
    const auto add = [this](const QString& text, bool shows, std::int64_t number, bool panel) {
        auto* item = new QListWidgetItem(text, m_list);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(shows ? Qt::Checked : Qt::Unchecked);
        item->setData(kNumberRole, qlonglong(number));
        item->setData(kPanelRole, panel);
    };
    const Experience* experience = m_session.experience();
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (experience == nullptr || quote.experience != experience->id)
            continue;
        const Child* child = book.children.find(quote.child);
        const QString words = quote.words.simplified();
        add(tr("%1: %2").arg(child != nullptr ? displayName(*child) : QString(),
                words.isEmpty() ? tr("a drawing") : words),
            has(quote.goals, m_goal),
            id.number(),
            false);
    }
    for (const auto& [id, panel] : book.panels.rows()) {
        const Display* display = book.displays.find(panel.display);
        if (experience != nullptr && display != nullptr && display->experience == experience->id)
            add(tr("Panel %1 of %2").arg(panel.number).arg(display->name),
                has(panel.goals, m_goal),
                id.number(),
                true);
    }
    m_isFilling = false;
}

void GoalLinks::take(const QListWidgetItem& item)
{
    const bool shows = item.checkState() == Qt::Checked;
    const auto number = item.data(kNumberRole).toLongLong();
    const QString label = tr("What shows a goal");
    m_session.perform(item.data(kPanelRole).toBool()
            ? panelShowsGoalEdit(m_session.book(), PanelId(number), m_goal, shows, label)
            : quoteShowsGoalEdit(m_session.book(), QuoteId(number), m_goal, shows, label));
}

} // namespace wainscot::ui
