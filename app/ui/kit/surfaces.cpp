#include "app/ui/kit/surfaces.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyle>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

Card::Card(Tone tone, QWidget* parent)
    : QFrame(parent)
    , m_tone(tone)
{
}

void Card::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QColor fill = t.card;
    QColor border = t.line;
    switch (m_tone) {
    case Tone::Card:
        break;
    case Tone::Field:
        fill = t.field;
        border = t.edge;
        break;
    case Tone::Stop:
        fill = t.stopTint;
        border = t.stop;
        break;
    case Tone::Look:
        fill = t.lookTint;
        border = t.look;
        break;
    case Tone::Note:
        fill = t.noteTint;
        border = t.note;
        break;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(border, 1));
    painter.setBrush(fill);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
}

Ground::Ground(Tone tone, QWidget* parent)
    : QWidget(parent)
    , m_tone(tone)
{
}

void Ground::paintEvent(QPaintEvent* event)
{
    const Tokens& t = tokens();
    QPainter(this).fillRect(event->rect(),
        m_tone == Tone::Window ? t.window : (m_tone == Tone::Wall ? t.wall : t.field));
}

Rule::Rule(Qt::Orientation orientation, QWidget* parent)
    : QWidget(parent)
{
    if (orientation == Qt::Vertical)
        setFixedWidth(1);
    else
        setFixedHeight(1);
}

void Rule::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().line);
}

Label::Label(
    const QString& text, double relative, QFont::Weight weight, bool quiet, QWidget* parent)
    : QLabel(text, parent)
{
    setFont(interfaceFont(relative, weight));
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    if (quiet) {
        QPalette own = palette();
        own.setColor(QPalette::WindowText, tokens().quiet);
        setPalette(own);
    }
    // Setting a policy drops height-for-width, which a wrapping label needs to be given its lines.
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

OneLine::OneLine(double relative, QFont::Weight weight, bool quiet, QWidget* parent)
    : QWidget(parent)
    , m_quiet(quiet)
{
    setFont(interfaceFont(relative, weight));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void OneLine::setText(const QString& text)
{
    if (m_text == text)
        return;
    m_text = text;
    setAccessibleName(text);
    setToolTip(text);
    updateGeometry();
    update();
}

QSize OneLine::sizeHint() const
{
    return {fontMetrics().horizontalAdvance(m_text) + 2, fontMetrics().height()};
}

QSize OneLine::minimumSizeHint() const
{
    return {scaled(50), fontMetrics().height()};
}

void OneLine::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setPen(m_quiet ? tokens().quiet : tokens().ink);
    const Qt::Alignment start = QStyle::visualAlignment(layoutDirection(), Qt::AlignLeading);
    painter.drawText(rect(),
        int(start | Qt::AlignVCenter | Qt::AlignAbsolute),
        fontMetrics().elidedText(m_text, Qt::ElideRight, width()));
}

IconMark::IconMark(Icon icon, const QColor& colour, double side, QWidget* parent)
    : QWidget(parent)
    , m_icon(icon)
    , m_colour(colour)
{
    setFixedSize(scaled(side), scaled(side));
}

void IconMark::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    drawIcon(
        painter, m_icon, rect(), m_colour, m_icon == Icon::Stop ? tokens().stopTint : m_colour);
}

QString counted(int number, const QString& one, const QString& many)
{
    return number == 1 ? one : many.arg(number);
}

namespace {

// What is put in while it is hidden asks for its room when it is shown.
class ScrolledArea : public QScrollArea {
protected:
    void showEvent(QShowEvent* event) override
    {
        QScrollArea::showEvent(event);
        QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
    }
};

} // namespace

QScrollArea* scrolled(QWidget* content)
{
    auto* area = new ScrolledArea;
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->viewport()->setAutoFillBackground(false);
    content->setAutoFillBackground(false);
    return area;
}

SideColumn sideColumn(int width, int spacing)
{
    SideColumn side{new QWidget, nullptr};
    auto* row = new QHBoxLayout(side.whole);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(new Rule(Qt::Vertical));
    auto* content = new QWidget;
    side.content = new QVBoxLayout(content);
    side.content->setContentsMargins(air(4), air(4), air(4), air(3));
    side.content->setSpacing(spacing);
    row->addWidget(scrolled(content));
    side.whole->setFixedWidth(width);
    return side;
}

} // namespace wainscot::ui
