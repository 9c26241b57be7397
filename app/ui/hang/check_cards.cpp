// The cards of Check: what was found, what can be done about it.
#include <QHBoxLayout>

#include "app/jobs/sentences.h"
#include "app/ui/hang/check_page.h"
#include "app/ui/kit/finding_mark.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/mends.h"
#include "layout/check/limits.h"

namespace wainscot::ui {

namespace {

bool canBeSet(const Finding& finding)
{
    const check::LimitRow* row = check::limitCalled(finding.rule);
    return row != nullptr && check::isMeasure(*row);
}

} // namespace

void CheckPage::addFinding(std::size_t at)
{
    const Finding& finding = m_findings[at];
    auto* card = new Card(toneOf(finding.severity));
    card->setAccessibleName(spoken(finding));
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(air(3.5), air(2.5), air(3.5), air(2.5));
    row->setSpacing(air(2));
    row->addWidget(markOf(finding.severity), 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(air(0.5));
    words->addWidget(new Label(saysInLine(finding), 1.0, QFont::DemiBold));
    if (const QString measured = measuredInWords(finding); !measured.isEmpty())
        words->addWidget(new Label(measured, 0.92));
    if (!finding.source.isEmpty()) {
        const QString source = canBeSet(finding) ? tr("%1. Yours to change.") : tr("%1.");
        words->addWidget(
            new Label(source.arg(capitalised(sourceInWords(finding))), 0.85, QFont::Normal, true));
    }
    const QString why = leftBecause(finding);
    if (!why.isEmpty()) {
        ++m_left;
        words->addWidget(new Label(tr("Left as it is: %1").arg(why), 0.92, QFont::DemiBold));
    }
    row->addLayout(words, 1);
    if (QWidget* buttons = makeButtons(at, why))
        row->addWidget(buttons, 0, Qt::AlignTop);
    m_column->addWidget(card);
}

void CheckPage::addRest(int children)
{
    auto* button = new Button(
        Button::Form::Word, tr("%1 more children were heard and do not speak here").arg(children));
    connect(button, &Button::clicked, this, [this] {
        m_everyChild = true;
        show(std::vector<Finding>(m_findings));
    });
    m_column->addWidget(button, 0, Qt::AlignLeading);
    m_more << button;
}

void CheckPage::addLimits()
{
    auto* button = new Button(Button::Form::Word, tr("All limits and who set them"));
    connect(button, &Button::clicked, this, [this] { Q_EMIT limitsAsked({}); });
    m_column->addWidget(button, 0, Qt::AlignLeading);
    m_more << button;
}

void CheckPage::addButton(QBoxLayout& row,
    Button::Form form,
    const QString& text,
    std::size_t at,
    const std::function<void()>& does)
{
    auto* button = new Button(form, text);
    button->setAccessibleName(QStringLiteral("%1: %2").arg(text, m_findings[at].says));
    connect(button, &Button::clicked, this, does);
    row.addWidget(button, 0, Qt::AlignTrailing);
    m_stops << button;
    m_findingOfStop << int(at);
}

// The mend first, then a look at it, then leaving it. What must not be printed so cannot be left.
QWidget* CheckPage::makeButtons(std::size_t at, const QString& why)
{
    const Finding finding = m_findings[at];
    const Mend mend = mendFor(m_session.book(), finding);
    const bool shows = mend.way == MendWay::Show;
    if (shows && finding.panel == 0)
        return nullptr;
    auto* buttons = new QWidget;
    auto* column = new QVBoxLayout(buttons);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(1));
    const auto look = [this, finding] { Q_EMIT pieceAsked(finding.panel, PieceId(finding.piece)); };
    if (shows)
        addButton(*column, Button::Form::Plain, mend.does, at, look);
    else
        addButton(*column, Button::Form::Plain, mend.does, at, [this, finding] {
            Q_EMIT mendAsked(finding);
        });
    auto* quieter = new QHBoxLayout;
    quieter->setSpacing(air(1));
    quieter->addStretch();
    if (!shows && finding.panel > 0 && mend.way != MendWay::Write)
        addButton(*quieter, Button::Form::Word, tr("Go to it"), at, look);
    if (finding.panel > 0 && finding.severity != Severity::Stop) {
        addButton(*quieter,
            Button::Form::Word,
            why.isEmpty() ? tr("Leave it, and say why") : tr("Another reason"),
            at,
            [this, finding] { askWhy(finding); });
    }
    if (canBeSet(finding)) {
        addButton(*quieter, Button::Form::Word, tr("Change the limit"), at, [this, finding] {
            Q_EMIT limitsAsked(finding.rule);
        });
    }
    column->addLayout(quieter);
    return buttons;
}

} // namespace wainscot::ui
