#include "app/ui/compose/panel_choice.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QVBoxLayout>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kInRow = 3;

} // namespace

// One way: the paper on its nail, its name and what is said about it.
class PanelChoice::Hung : public QAbstractButton {
public:
    Hung(const Way& way, QWidget* parent)
        : QAbstractButton(parent)
        , m_about(way.about)
        , m_picture(way.picture)
    {
        setText(way.name);
        setAccessibleName(
            way.about.isEmpty() ? way.name : way.name + QStringLiteral(": ") + way.about);
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
    }
    void setPicture(const QPixmap& picture)
    {
        m_picture = picture;
        update();
    }
    void setShape(double shape) { m_shape = shape; }
    [[nodiscard]] int heightFor(int width) const
    {
        return int((width - 10) * m_shape) + air(5) + 2 * fontMetrics().height() + air(3);
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        const Tokens& t = tokens();
        QPainter painter(this);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
        const QRectF paper(5, air(5), width() - 10, (width() - 10) * m_shape);
        painter.setPen(QPen(t.quiet, 1));
        painter.drawLine(QPointF(width() / 2.0, 4), paper.topLeft() + QPointF(8, 0));
        painter.drawLine(QPointF(width() / 2.0, 4), paper.topRight() - QPointF(8, 0));
        painter.setPen(Qt::NoPen);
        painter.setBrush(underMouse() || hasFocus() ? t.accent : t.quiet);
        painter.drawEllipse(QPointF(width() / 2.0, 4), 3, 3);
        painter.fillRect(paper.translated(2, 3), QColor(0, 0, 0, 46));
        painter.fillRect(paper, Qt::white);
        if (!m_picture.isNull())
            painter.drawPixmap(paper, m_picture, QRectF(m_picture.rect()));
        if (underMouse()) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(t.accent, 2));
            painter.drawRect(paper.adjusted(-1, -1, 1, 1));
        }
        QRectF line(0, paper.bottom() + air(1.5), width(), fontMetrics().height());
        painter.setFont(interfaceFont(1.0, QFont::DemiBold));
        painter.setPen(t.ink);
        painter.drawText(line, Qt::AlignCenter, text());
        line.translate(0, line.height());
        const QFont small = interfaceFont(0.88);
        painter.setFont(small);
        painter.setPen(t.quiet);
        painter.drawText(line,
            Qt::AlignCenter,
            QFontMetrics(small).elidedText(m_about, Qt::ElideRight, width()));
        if (hasFocus())
            drawFocusRing(painter, rect());
    }
    void enterEvent(QEnterEvent* event) override
    {
        QAbstractButton::enterEvent(event);
        update();
    }
    void leaveEvent(QEvent* event) override
    {
        QAbstractButton::leaveEvent(event);
        update();
    }

private:
    QString m_about;
    QPixmap m_picture;
    double m_shape = 1.4;
};

PanelChoice::PanelChoice(QWidget* parent)
    : QWidget(parent)
    , m_heading(new Label(QString(), 1.25, QFont::DemiBold))
    , m_sentence(new Label(QString(), 0.95, QFont::Normal, true))
    , m_leave(new Button(Button::Form::Plain, tr("Leave it as it is")))
    , m_row(new QWidget)
    , m_rover(new Rover(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(7), air(4), air(7), air(4));
    column->setSpacing(air(1));
    auto* head = new QHBoxLayout;
    auto* words = new QVBoxLayout;
    words->addWidget(m_heading);
    words->addWidget(m_sentence);
    head->addLayout(words, 1);
    m_leave->setKeyHint(tr("Esc"));
    connect(m_leave, &Button::clicked, this, &PanelChoice::close);
    head->addWidget(m_leave, 0, Qt::AlignTop);
    column->addLayout(head);
    m_area = scrolled(m_row);
    m_area->setWidgetResizable(false);
    column->addWidget(m_area, 1);
    hide();
}

void PanelChoice::open(
    const QString& heading, const QString& sentence, const std::vector<Way>& ways, double shape)
{
    m_rover->setMembers({});
    for (Hung* old : m_ways) {
        old->hide();
        old->deleteLater();
    }
    m_ways.clear();
    m_shape = shape;
    m_heading->setText(heading);
    m_sentence->setText(sentence);
    setAccessibleName(heading);
    QVector<QWidget*> members;
    for (const Way& way : ways) {
        auto* hung = new Hung(way, m_row);
        hung->setShape(shape);
        hung->installEventFilter(this);
        const int index = int(m_ways.size());
        connect(hung, &QAbstractButton::clicked, this, [this, index] {
            hide();
            Q_EMIT chosen(index);
            Q_EMIT closed();
        });
        hung->show();
        m_ways.push_back(hung);
        members << hung;
    }
    m_rover->setMembers(members);
    show();
    raise();
    place();
    if (!m_ways.empty())
        m_ways.front()->setFocus(Qt::TabFocusReason);
}

void PanelChoice::setPicture(int way, const QPixmap& picture)
{
    if (way < count())
        m_ways[std::size_t(way)]->setPicture(picture);
}

QAbstractButton* PanelChoice::way(int index) const
{
    return m_ways.at(std::size_t(index));
}

void PanelChoice::close()
{
    if (!isVisible())
        return;
    hide();
    Q_EMIT closed();
}

void PanelChoice::place()
{
    layout()->activate();
    // The bar's room is kept before one knows whether there is a bar: nothing lies under it.
    const int room = m_area->width() - m_area->verticalScrollBar()->sizeHint().width();
    const int gap = air(7);
    // Whole panels, as large as three of them fit beside each other and one below the other.
    const int names = air(8) + 2 * fontMetrics().height();
    int wide = (room - (kInRow - 1) * gap) / kInRow;
    wide = qMin(wide, int((m_area->height() - names) / m_shape) + 10);
    wide = qMax(wide, scaled(120));
    const int high = m_ways.empty() ? 0 : m_ways.front()->heightFor(wide);
    const int columns = qMin(kInRow, count());
    const int left = qMax(0, (room - columns * wide - (columns - 1) * gap) / 2);
    for (int i = 0; i < count(); ++i) {
        const QRect logical(
            left + i % kInRow * (wide + gap), i / kInRow * (high + air(3)), wide, high);
        m_ways[std::size_t(i)]->setGeometry(
            QStyle::visualRect(layoutDirection(), QRect(0, 0, room, high), logical));
    }
    const int rows = (count() + kInRow - 1) / kInRow;
    m_row->resize(room, rows * (high + air(3)));
}

void PanelChoice::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().wall);
}

void PanelChoice::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    place();
}

void PanelChoice::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        close();
    else
        QWidget::keyPressEvent(event);
}

// Enter chooses, as on a slip; the toolkit's buttons know Space only.
bool PanelChoice::eventFilter(QObject* watched, QEvent* event)
{
    auto* hung = qobject_cast<QAbstractButton*>(watched);
    if (hung != nullptr && event->type() == QEvent::FocusIn)
        m_area->ensureWidgetVisible(hung, 0, air(2));
    if (hung != nullptr && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            hung->click();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace wainscot::ui
