#include "app/ui/places/plain_place.h"

#include <QHBoxLayout>
#include <QPaintEvent>
#include <QPainter>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

PlainPlace::PlainPlace(QWidget* parent)
    : QWidget(parent)
    , m_rover(new Rover(this))
{
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
}

void PlainPlace::begin(const QString& heading, const QString& sentence)
{
    if (m_area != nullptr) {
        layout()->removeWidget(m_area);
        m_area->hide();
        m_area->deleteLater(); // one of its buttons may be the sender
    }
    m_rover->setMembers({});
    m_stops.clear();
    m_field.clear();
    m_content = new QWidget;
    auto* row = new QHBoxLayout(m_content);
    row->setContentsMargins(air(9), air(7), air(9), air(7));
    auto* middle = new QWidget;
    middle->setMaximumWidth(scaled(900));
    m_column = new QVBoxLayout(middle);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(air(3));
    row->addStretch(1);
    row->addWidget(middle, 100);
    row->addStretch(1);
    m_column->addWidget(new Label(heading, 1.5, QFont::DemiBold));
    m_column->addWidget(new Label(sentence, 1.05));
    m_column->addSpacing(air(1));
    m_area = scrolled(m_content);
    layout()->addWidget(m_area);
}

void PlainPlace::add(const Block& block)
{
    auto* card = new Card;
    card->setAccessibleName(block.heading);
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(air(4), air(3), air(4), air(3));
    row->setSpacing(air(4));
    auto* words = new QVBoxLayout;
    words->setSpacing(air(0.5));
    words->addWidget(new Label(block.heading, 1.08, QFont::DemiBold));
    for (const QString& line : block.lines)
        words->addWidget(new Label(line, 0.95, QFont::Normal, true));
    if (block.field != nullptr) {
        words->addSpacing(air(1));
        block.field->setFixedWidth(scaled(320));
        words->addWidget(block.field, 0, Qt::AlignLeading);
        connect(block.field, &QLineEdit::returnPressed, this, block.does);
        m_field = block.field;
    }
    row->addLayout(words, 1);
    if (!block.action.isEmpty()) {
        auto* button = new Button(Button::Form::Plain, block.action, block.icon);
        button->setAccessibleName(block.action);
        connect(button, &Button::clicked, this, [does = block.does] { does(); });
        row->addWidget(button, 0, Qt::AlignVCenter);
        m_stops << button;
    }
    m_column->addWidget(card);
}

QWidget* PlainPlace::firstStop() const
{
    return m_field != nullptr ? m_field.data() : m_rover->stop();
}

void PlainPlace::end()
{
    m_column->addStretch();
    m_rover->setMembers(m_stops);
}

void PlainPlace::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().field);
}

} // namespace wainscot::ui
