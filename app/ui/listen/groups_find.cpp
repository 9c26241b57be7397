// Narrowing the slips on the page of groups while one types.
#include "app/ui/listen/groups_page.h"

#include <QKeyEvent>

#include <algorithm>

#include "app/ui/kit/tokens.h"
#include "core/voice/fold_words.h"

namespace wainscot::ui {

void GroupsPage::makeFind()
{
    m_find->setPlaceholderText(tr("Find words or a child"));
    m_find->setAccessibleName(tr("Find in the groups"));
    m_find->setTextMargins(air(1.5), 0, air(1.5), 0);
    m_find->setFixedWidth(scaled(170));
    m_find->installEventFilter(this);
    connect(m_find, &QLineEdit::textChanged, this, &GroupsPage::showFound);
}

void GroupsPage::find()
{
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

// Strands stay, also without a slip, so that what was found can be moved to any of them.
void GroupsPage::showFound()
{
    const FindQuery query(m_find->text());
    const auto fits = [&query](const AnswerSlip& slip) {
        return query.isEmpty() || query.fits(slip.forFinding());
    };
    int found = 0;
    for (Strand* strand : std::as_const(m_strands)) {
        strand->showOnly(fits);
        found += int(std::count_if(strand->slips().begin(),
            strand->slips().end(),
            [&fits](const AnswerSlip* slip) { return fits(*slip); }));
    }
    QVector<QWidget*> stops;
    for (QWidget* stop : std::as_const(m_stops)) {
        if (!stop->isHidden())
            stops << stop;
    }
    m_rover->setMembers(stops);
    if (!query.isEmpty())
        Q_EMIT announced(counted(found, tr("1 answer found."), tr("%1 answers found.")));
}

bool GroupsPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_find || event->type() != QEvent::KeyPress)
        return TaskPage::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Escape)
        m_find->clear();
    else if (key != Qt::Key_Return && key != Qt::Key_Enter && key != Qt::Key_Down)
        return false;
    for (const Strand* strand : std::as_const(m_strands)) {
        for (AnswerSlip* slip : strand->slips()) {
            if (!slip->isHidden()) {
                slip->setFocus(Qt::OtherFocusReason);
                return true;
            }
        }
    }
    return true;
}

} // namespace wainscot::ui
