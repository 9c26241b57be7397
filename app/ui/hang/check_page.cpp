#include "app/ui/hang/check_page.h"

#include <QInputDialog>
#include <QLocale>
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>

#include "app/ui/kit/finding_mark.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/mends.h"

namespace wainscot::ui {

namespace {

constexpr int kChildrenAtFirst = 3; // of those who do not speak on a display

bool isOfAChild(const Finding& finding)
{
    return finding.rule == QLatin1String("voices.child");
}

} // namespace

CheckPage::CheckPage(Session& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_rover(new Rover(this))
{
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
}

void CheckPage::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().field);
}

void CheckPage::show(const std::vector<Finding>& findings)
{
    m_findings = findings;
    std::stable_sort(m_findings.begin(), m_findings.end(), [](const Finding& a, const Finding& b) {
        return std::pair(a.panel, int(a.severity)) < std::pair(b.panel, int(b.severity));
    });
    m_left = 0;
    if (m_area != nullptr) {
        layout()->removeWidget(m_area);
        m_area->hide();
        m_area->deleteLater(); // one of its buttons may be the sender
    }
    const int before = current();
    m_stops.clear();
    m_findingOfStop.clear();
    m_more.clear();
    auto* content = new QWidget;
    auto* row = new QHBoxLayout(content);
    row->setContentsMargins(air(9), air(7), air(9), air(7));
    auto* middle = new QWidget;
    middle->setMaximumWidth(scaled(900));
    m_column = new QVBoxLayout(middle);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(air(2));
    row->addStretch(1);
    row->addWidget(middle, 100);
    row->addStretch(1);
    int panel = -1;
    int children = 0;
    const auto everyChild = std::count_if(m_findings.begin(), m_findings.end(), isOfAChild);
    for (std::size_t at = 0; at < m_findings.size(); ++at) {
        const Finding& finding = m_findings[at];
        if (finding.panel != panel) {
            panel = finding.panel;
            m_column->addSpacing(air(2));
            m_column->addWidget(
                new Label(panel == 0 ? tr("The whole display") : tr("Panel %1").arg(panel),
                    1.25,
                    QFont::DemiBold));
        }
        children += isOfAChild(finding) ? 1 : 0;
        const bool folded = isOfAChild(finding) && !m_everyChild && children > kChildrenAtFirst
            && everyChild > kChildrenAtFirst + 1;
        if (!folded)
            addFinding(at);
        else if (children == everyChild)
            addRest(children - kChildrenAtFirst);
    }
    if (m_findings.empty()) {
        m_column->addWidget(new Label(m_session.panel() == nullptr
                ? tr("There is no panel yet. Make one in Compose first.")
                : tr("Nothing was found. Measured: type, contrast, pictures, edges, permissions."),
            1.25,
            QFont::DemiBold));
    }
    addLimits();
    m_column->addStretch();
    m_area = scrolled(content);
    layout()->addWidget(m_area);
    m_rover->setMembers(m_stops + m_more);
    // After a mend the keyboard stays with the finding that took its place.
    const auto at = std::find_if(m_findingOfStop.begin(), m_findingOfStop.end(), [&](int finding) {
        return finding >= before;
    });
    if (before >= 0 && at != m_findingOfStop.end())
        m_stops[at - m_findingOfStop.begin()]->setFocus(Qt::OtherFocusReason);
}

QString CheckPage::leftBecause(const Finding& finding) const
{
    const Panel* panel = panelNumbered(m_session.book(), m_session.display(), finding.panel);
    return panel != nullptr ? reasonIn(*panel, finding) : QString();
}

void CheckPage::askWhy(const Finding& finding)
{
    bool done = false;
    const QString why = QInputDialog::getText(this,
        tr("Leave it, and say why"),
        finding.says,
        QLineEdit::Normal,
        leftBecause(finding),
        &done);
    if (done)
        leave(finding, why.trimmed());
}

void CheckPage::leave(const Finding& finding, const QString& why)
{
    const Panel* panel = panelNumbered(m_session.book(), m_session.display(), finding.panel);
    if (panel == nullptr)
        return;
    if (m_session.perform(leaveFinding(m_session.book(), *panel, finding, why)) && !why.isEmpty())
        Q_EMIT announced(tr("Your reason is kept with the panel."));
}

int CheckPage::current() const
{
    for (int i = 0; i < m_stops.size(); ++i) {
        if (m_stops[i]->hasFocus())
            return m_findingOfStop[i];
    }
    return -1;
}

void CheckPage::goTo(int step)
{
    if (m_stops.isEmpty())
        return;
    // Findings that nothing can be done about here have no stop.
    QVector<int> stops;
    for (int i = 0; i < m_stops.size(); ++i) {
        if (i == 0 || m_findingOfStop[i] != m_findingOfStop[i - 1])
            stops << i;
    }
    int at = step > 0 ? -1 : 0;
    for (int i = 0; i < stops.size(); ++i) {
        if (m_findingOfStop[stops[i]] == current())
            at = i;
    }
    QWidget* next = m_stops[stops[(at + step + stops.size()) % stops.size()]];
    next->setFocus(Qt::OtherFocusReason);
    m_area->ensureWidgetVisible(next);
}

void CheckPage::mendCurrent()
{
    int at = current();
    if (at < 0 && !m_findingOfStop.isEmpty())
        at = m_findingOfStop.front();
    if (at < 0)
        Q_EMIT announced(tr("Nothing was found."));
    else if (mendFor(m_session.book(), m_findings[std::size_t(at)]).way == MendWay::Show)
        Q_EMIT announced(tr("This one is yours to decide."));
    else
        Q_EMIT mendAsked(m_findings[std::size_t(at)]);
}

QString CheckPage::summary() const
{
    const auto count = [&](Severity severity) {
        return int(std::count_if(m_findings.begin(), m_findings.end(), [&](const Finding& one) {
            return one.severity == severity;
        }));
    };
    if (m_findings.empty())
        return tr("Nothing was found.");
    QStringList parts;
    if (const int stop = count(Severity::Stop); stop > 0)
        parts << counted(stop, tr("1 thing to mend first"), tr("%1 things to mend first"));
    if (const int look = count(Severity::Look); look > 0)
        parts << tr("%1 to look at").arg(look);
    if (m_left > 0)
        parts << tr("%1 left as they are").arg(m_left);
    if (parts.isEmpty())
        parts << counted(count(Severity::Note), tr("1 note"), tr("%1 notes"));
    return parts.join(QStringLiteral(", ")) + QLatin1Char('.');
}

} // namespace wainscot::ui
