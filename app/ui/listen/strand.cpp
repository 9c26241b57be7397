#include "app/ui/listen/strand.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <QPainter>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kWideWindow = 1450; // px at 10 pt text
constexpr int kHeadWidth = 200;
constexpr int kSlipWidth = 236; // and more, in even columns
constexpr int kWideSlipWidth = 300;
constexpr int kStrandAbove = 12; // the slips

int gapBetweenSlips()
{
    return air(1.5) * 2;
}

QuoteId answerIn(const QMimeData* mime)
{
    return QuoteId(mime->data(QString::fromLatin1(kAnswerMime)).toLongLong());
}

} // namespace

double wordsOnStrands(int width)
{
    return width > scaled(kWideWindow) ? 1.3 : 1.0;
}

Strand::Strand(Kind kind, const QString& name, QWidget* parent)
    : QWidget(parent)
    , m_kind(kind)
    , m_head(new QWidget(this))
    , m_headColumn(new QVBoxLayout(m_head))
{
    setAccessibleName(name);
    m_headColumn->setContentsMargins(0, 0, 0, 0);
    m_headColumn->setSpacing(air(0.5));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void Strand::addHead(QWidget* widget)
{
    m_headColumn->addWidget(widget);
}

void Strand::addSlip(AnswerSlip* slip)
{
    slip->setParent(this);
    m_slips << slip;
    m_shown << slip;
}

void Strand::showOnly(const std::function<bool(const AnswerSlip&)>& fits)
{
    m_shown.clear();
    for (AnswerSlip* slip : std::as_const(m_slips)) {
        const bool shows = fits(*slip);
        slip->setVisible(shows);
        if (shows)
            m_shown << slip;
    }
    updateGeometry();
    placeSlips();
    update();
}

void Strand::setTakesAnswers(bool takes)
{
    setAcceptDrops(takes);
}

void Strand::setAimedAt(bool aimed)
{
    m_isAimedAt = aimed;
    update();
}

int Strand::columnsFor(int width) const
{
    const int slip = scaled(wordsOnStrands(width) > 1 ? kWideSlipWidth : kSlipWidth);
    const int room = width - scaled(kHeadWidth) - air(1.5);
    return std::max(1, (room + gapBetweenSlips()) / (slip + gapBetweenSlips()));
}

QRect Strand::slipPlace(int width, const Row& row, int column) const
{
    const int columns = columnsFor(width);
    const int start = scaled(kHeadWidth) + air(3);
    const int each = (width - start - (columns - 1) * gapBetweenSlips()) / columns;
    const QRect logical(start + column * (each + gapBetweenSlips()), row.top, each, row.height);
    return QStyle::visualRect(layoutDirection(), QRect(0, 0, width, row.top + row.height), logical);
}

QVector<Strand::Row> Strand::rowsFor(int width) const
{
    const int columns = columnsFor(width);
    QVector<Row> rows;
    int top = scaled(kStrandAbove);
    for (int first = 0; first < std::max(1, int(m_shown.size())); first += columns) {
        Row row{top, 0, first, std::min(columns, int(m_shown.size()) - first)};
        for (int column = 0; column < row.count; ++column) {
            const int slip = slipPlace(width, row, column).width();
            row.height = std::max(row.height, m_shown[first + column]->heightForWidth(slip));
        }
        row.height = std::max(row.height, scaled(34));
        rows << row;
        top += row.height + scaled(kStrandAbove) + air(2);
    }
    return rows;
}

int Strand::headHeight() const
{
    const int width = scaled(kHeadWidth) - air(2);
    return m_headColumn->hasHeightForWidth() ? m_headColumn->heightForWidth(width)
                                             : m_headColumn->sizeHint().height();
}

int Strand::heightForWidth(int width) const
{
    const QVector<Row> rows = rowsFor(width);
    return std::max(rows.back().top + rows.back().height, headHeight()) + air(3);
}

QSize Strand::sizeHint() const
{
    const int width = std::max(this->width(), scaled(600));
    return {width, heightForWidth(width)};
}

QSize Strand::minimumSizeHint() const
{
    return {scaled(kHeadWidth + kSlipWidth), heightForWidth(std::max(width(), scaled(600)))};
}

void Strand::resizeEvent(QResizeEvent* event)
{
    if (event->oldSize().width() != event->size().width())
        updateGeometry(); // its least height is another
    m_head->setGeometry(QStyle::visualRect(
        layoutDirection(), rect(), QRect(0, 0, scaled(kHeadWidth) - air(2), headHeight())));
    placeSlips();
}

void Strand::placeSlips()
{
    for (const Row& row : rowsFor(width())) {
        for (int column = 0; column < row.count; ++column) {
            AnswerSlip* slip = m_shown[row.first + column];
            QRect place = slipPlace(width(), row, column);
            place.setHeight(slip->heightForWidth(place.width()));
            slip->setGeometry(place);
        }
    }
}

void Strand::paintPlaceForHand(QPainter& painter, const QVector<Row>& rows) const
{
    const Row& last = rows.back();
    const int columns = columnsFor(width());
    const bool fits = last.count < columns;
    QRect place = slipPlace(width(), last, fits ? last.count : columns - 1);
    if (!fits)
        place = place.adjusted(place.width() - scaled(60), 0, 0, 0);
    painter.setPen(QPen(tokens().hand, 2, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(place).adjusted(1, 1, -1, -1), 2, 2);
    painter.setFont(interfaceFont(0.95));
    painter.setPen(tokens().hand);
    painter.drawText(place, Qt::AlignCenter, tr("here"));
}

void Strand::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QVector<Row> rows = rowsFor(width());
    const QColor colour = m_kind == Kind::Group ? t.accent : t.edge;
    for (const Row& row : rows) {
        const double y = row.top - scaled(kStrandAbove) + 6;
        const QRect line = QStyle::visualRect(layoutDirection(),
            rect(),
            QRect(scaled(kHeadWidth), int(y), width() - scaled(kHeadWidth), 1));
        painter.setPen(QPen(colour,
            m_kind == Kind::Group ? 2 : 1.4,
            m_kind == Kind::Group ? Qt::SolidLine : Qt::DotLine));
        painter.drawLine(QPointF(line.left(), y), QPointF(line.right(), y));
        painter.setPen(QPen(colour, 1));
        painter.setBrush(colour);
        for (int column = 0; column < row.count; ++column) {
            const QRect slip = slipPlace(width(), row, column);
            const double x = layoutDirection() == Qt::RightToLeft ? slip.right() - scaled(20)
                                                                  : slip.left() + scaled(20);
            painter.drawLine(QPointF(x, y), QPointF(x, row.top + 1));
            painter.drawEllipse(QPointF(x, y), 3, 3);
        }
    }
    if (m_isAimedAt)
        paintPlaceForHand(painter, rows);
}

void Strand::dragEnterEvent(QDragEnterEvent* event)
{
    if (!event->mimeData()->hasFormat(QString::fromLatin1(kAnswerMime)))
        return;
    event->acceptProposedAction();
    setAimedAt(true);
}

void Strand::dragLeaveEvent(QDragLeaveEvent* /*event*/)
{
    setAimedAt(false);
}

void Strand::dropEvent(QDropEvent* event)
{
    setAimedAt(false);
    event->acceptProposedAction();
    QuoteId beside;
    for (const AnswerSlip* slip : std::as_const(m_shown)) {
        if (slip->geometry().contains(event->position().toPoint()))
            beside = slip->quote();
    }
    Q_EMIT dropped(answerIn(event->mimeData()), beside);
}

} // namespace wainscot::ui
