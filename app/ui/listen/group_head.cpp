#include "app/ui/listen/group_head.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

GroupName::GroupName(const QString& name, QWidget* parent)
    : QWidget(parent)
    , m_label(new Label(name))
    , m_field(new QLineEdit(name))
    , m_name(name)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Name of the group: %1").arg(name));
    setToolTip(tr("F2 or a double click: write another name"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(2, 2, 2, 2);
    m_label->setFont(wordsFont(1.3, QFont::Bold));
    m_field->setFont(wordsFont(1.15));
    m_field->setAccessibleName(tr("Name of the group"));
    m_field->installEventFilter(this);
    m_field->hide();
    column->addWidget(m_label);
    column->addWidget(m_field);
    connect(m_field, &QLineEdit::editingFinished, this, [this] { endWriting(true); });
}

void GroupName::beginWriting()
{
    m_label->hide();
    m_field->setText(m_name);
    m_field->show();
    m_field->selectAll();
    m_field->setFocus();
}

void GroupName::endWriting(bool keep)
{
    if (m_field->isHidden())
        return;
    const QString written = m_field->text().simplified();
    m_field->hide();
    m_label->show();
    setFocus();
    if (keep && !written.isEmpty() && written != m_name)
        Q_EMIT renamed(written);
}

bool GroupName::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_field && event->type() == QEvent::KeyPress
        && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        endWriting(false);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void GroupName::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_F2 || event->key() == Qt::Key_Return
        || event->key() == Qt::Key_Enter)
        beginWriting();
    else
        QWidget::keyPressEvent(event);
}

void GroupName::mouseDoubleClickEvent(QMouseEvent* /*event*/)
{
    beginWriting();
}

void GroupName::paintEvent(QPaintEvent* /*event*/)
{
    if (!hasFocus())
        return;
    QPainter painter(this);
    drawFocusRing(painter, rect());
}

GroupHead::GroupHead(const Group& group, QWidget* parent)
    : QWidget(parent)
    , m_name(new GroupName(group.label))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(0.5));
    column->addWidget(m_name);
    const QString answers = counted(int(group.quotes.size()), tr("1 answer"), tr("%1 answers"));
    auto* state = new Label(group.keptByHand ? tr("%1. Kept as you made it.").arg(answers)
                                             : tr("%1, proposed").arg(answers),
        0.9,
        QFont::Normal,
        true);
    state->setContentsMargins(2, 0, 0, 0);
    column->addWidget(state);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    auto* meeting = new Button(Button::Form::Word, tr("Into a meeting"), Icon::Next);
    meeting->setAccessibleName(tr("Into a meeting: %1").arg(group.label));
    meeting->setRelativeSize(0.92);
    connect(meeting, &Button::clicked, this, &GroupHead::meetingAsked);
    auto* split = new Button(Button::Form::Word, tr("Split this group"), Icon::Split);
    split->setWordless(true);
    split->setAccessibleName(tr("Split this group: %1").arg(group.label));
    split->setEnabled(group.quotes.size() > 1);
    connect(split, &Button::clicked, this, &GroupHead::splitAsked);
    auto* kept = new Button(Button::Form::Word,
        group.keptByHand ? tr("Let it be proposed anew") : tr("Keep it as it is"),
        group.keptByHand ? Icon::Kept : Icon::Open);
    kept->setWordless(true);
    kept->setAccessibleName(QStringLiteral("%1: %2").arg(kept->text(), group.label));
    connect(kept, &Button::clicked, this, [this, byHand = !group.keptByHand] {
        Q_EMIT keepAsked(byHand);
    });
    row->addWidget(meeting);
    row->addWidget(split);
    row->addWidget(kept);
    row->addStretch();
    column->addLayout(row);
    m_stops = {m_name, meeting, split, kept};
}

} // namespace wainscot::ui
