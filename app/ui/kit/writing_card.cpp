#include "app/ui/kit/writing_card.h"

#include <QAbstractTextDocumentLayout>
#include <QEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

WritingCard::WritingCard(const QString& name, int lines, double relative, QWidget* parent)
    : Card(Tone::Field, parent)
    , m_field(new QPlainTextEdit)
    , m_lines(lines)
{
    auto* inside = new QVBoxLayout(this);
    inside->setContentsMargins(4, 4, 4, 4); // the ring is drawn here
    m_field->setFont(interfaceFont(relative));
    m_field->setFrameShape(QFrame::NoFrame);
    m_field->setTabChangesFocus(true);
    m_field->setAccessibleName(name);
    m_field->document()->setDocumentMargin(air(2) - 2);
    m_field->viewport()->setAutoFillBackground(false);
    m_field->installEventFilter(this);
    inside->addWidget(m_field);
    connect(m_field->document()->documentLayout(),
        &QAbstractTextDocumentLayout::documentSizeChanged,
        this,
        &WritingCard::grow);
    grow();
}

void WritingCard::grow()
{
    const int written = qRound(m_field->document()->size().height()); // in lines, for plain text
    const int lines = qBound(m_lines, written, qMax(8, 4 * m_lines));
    m_field->setFixedHeight(m_field->fontMetrics().lineSpacing() * lines + air(5) - 4);
}

bool WritingCard::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut)
        update();
    return Card::eventFilter(watched, event);
}

void WritingCard::paintEvent(QPaintEvent* event)
{
    Card::paintEvent(event);
    if (!m_field->hasFocus())
        return;
    QPainter painter(this);
    drawFocusRing(painter, rect());
}

} // namespace wainscot::ui
