#include "app/ui/gather/child_list.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyle>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/kit/voice_mark.h"

namespace wainscot::ui {

ChildRow::ChildRow(const Child& child, const ChildAnswers& answers, QWidget* parent)
    : QAbstractButton(parent)
    , m_child(child.id)
    , m_marks(answers.marks)
{
    setText(displayName(child));
    setCheckable(true);
    setCursor(Qt::PointingHandCursor);
    QStringList marks;
    for (const AnswerMark& mark : m_marks)
        marks << inWords(mark);
    setAccessibleName(tr("Take words down: %1").arg(text()) + QStringLiteral(". ")
        + marks.join(QStringLiteral(", ")));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

QSize ChildRow::sizeHint() const
{
    const int marks = int(m_marks.size()) * scaled(18);
    return {fontMetrics().horizontalAdvance(text()) + marks + 2 * air(2.5) + air(3),
        qMax(qMax(26, scaled(26)), fontMetrics().height() + air(2)) + 2};
}

QSize ChildRow::minimumSizeHint() const
{
    return {scaled(80), sizeHint().height()};
}

void ChildRow::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (isChecked() || underMouse()) {
        painter.setPen(isChecked() ? QPen(t.accent, 1) : QPen(Qt::NoPen));
        painter.setBrush(isChecked() ? t.accentTint : t.card);
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    }
    const auto visual = [this](const QRect& r) {
        return QStyle::visualRect(layoutDirection(), rect(), r);
    };
    const int step = scaled(18);
    const int marks = int(m_marks.size()) * step;
    painter.setFont(interfaceFont(1.0, isChecked() ? QFont::DemiBold : QFont::Normal));
    painter.setPen(t.ink);
    const QRect name(air(2.5), 0, width() - marks - air(5), height());
    painter.drawText(visual(name),
        int(QStyle::visualAlignment(layoutDirection(), Qt::AlignLeading) | Qt::AlignVCenter
            | Qt::AlignAbsolute),
        painter.fontMetrics().elidedText(text(), Qt::ElideRight, name.width()));
    int x = width() - air(2) - marks;
    for (const AnswerMark& mark : m_marks) {
        const QRectF place = visual(QRect(x, 0, step, height()));
        drawVoiceMark(painter, mark, place.center(), scaled(10), t.accent, t.edge);
        x += step;
    }
    if (hasFocus())
        drawFocusRing(painter, rect());
}

void ChildRow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
    } else if (!event->text().isEmpty() && event->text().at(0).isLetter()
        && !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
        Q_EMIT letterTyped(event->text());
    } else {
        QAbstractButton::keyPressEvent(event);
    }
}

ChildList::ChildList(QWidget* parent)
    : QWidget(parent)
    , m_rover(new Rover(this))
{
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
}

void ChildList::refresh(const Book& book, const AnswersOfClass& answers, ChildId current)
{
    const bool hadFocus = m_rover->stop() != nullptr && m_rover->stop()->hasFocus();
    m_rover->setMembers({});
    m_rows.clear();
    if (m_content != nullptr) {
        layout()->removeWidget(m_content);
        m_content->hide();
        m_content->deleteLater(); // one of its rows may be the sender
    }
    m_content = new QWidget;
    m_column = new QVBoxLayout(m_content);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    layout()->addWidget(m_content);
    std::vector<ChildRow*> open;
    std::vector<ChildRow*> complete;
    for (const ChildAnswers& row : answers.children) {
        auto* made = new ChildRow(*book.children.find(row.child), row);
        made->setChecked(row.child == current);
        connect(made, &ChildRow::clicked, this, [this, id = row.child] { Q_EMIT chosen(id); });
        connect(made, &ChildRow::letterTyped, this, &ChildList::goToLetter);
        (row.isComplete() ? complete : open).push_back(made);
    }
    addPart(tr("Next to listen to"), open);
    addPart(tr("Heard on every question"), complete);
    m_column->addStretch();
    QVector<QWidget*> stops;
    int at = 0;
    for (int i = 0; i < m_rows.size(); ++i) {
        stops << m_rows.at(i);
        at = m_rows.at(i)->child() == current ? i : at;
    }
    m_rover->setMembers(stops, at);
    if (hadFocus && at < m_rows.size())
        m_rows.at(at)->setFocus(Qt::OtherFocusReason);
}

void ChildList::addPart(const QString& heading, const std::vector<ChildRow*>& rows)
{
    if (rows.empty())
        return;
    if (!m_rows.isEmpty())
        m_column->addSpacing(air(3));
    m_column->addWidget(new Label(heading, 1.0, QFont::DemiBold));
    m_column->addSpacing(air(1));
    for (ChildRow* row : rows) {
        m_column->addWidget(row);
        m_rows << row;
    }
}

void ChildList::goToLetter(const QString& letter)
{
    qsizetype at = m_rows.size() - 1;
    for (qsizetype i = 0; i < m_rows.size(); ++i)
        at = m_rows.at(i)->hasFocus() ? i : at;
    for (qsizetype step = 1; step <= m_rows.size(); ++step) {
        ChildRow* row = m_rows.at((at + step) % m_rows.size());
        if (row->text().startsWith(letter, Qt::CaseInsensitive)) {
            row->setFocus(Qt::TabFocusReason);
            return;
        }
    }
}

} // namespace wainscot::ui
