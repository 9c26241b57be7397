#include "app/ui/gather/mark_table.h"

#include <QAbstractButton>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

QColor groundOf(int row)
{
    return row % 2 == 0 ? tokens().field : tokens().card;
}

// The children's names, which stay while the table scrolls sideways.
class NameHeader : public QHeaderView {
public:
    explicit NameHeader(QWidget* parent)
        : QHeaderView(Qt::Vertical, parent)
    {
        setSectionResizeMode(QHeaderView::Fixed);
        setSectionsClickable(true);
        setHighlightSections(false);
        setDefaultSectionSize(qMax(26, scaled(28)));
        setFrameShape(QFrame::NoFrame);
    }
    [[nodiscard]] QSize sizeHint() const override
    {
        int widest = scaled(70);
        for (int i = 0; i < count(); ++i) {
            const QString name = model()->headerData(i, Qt::Vertical).toString();
            widest = qMax(widest, fontMetrics().horizontalAdvance(name) + air(6));
        }
        return {qMin(widest, scaled(170)), QHeaderView::sizeHint().height()};
    }

protected:
    void paintSection(QPainter* painter, const QRect& rect, int row) const override
    {
        painter->fillRect(rect, groundOf(row));
        painter->setPen(tokens().ink);
        painter->setFont(interfaceFont());
        const QString name = model()->headerData(row, Qt::Vertical).toString();
        const QRect text = rect.adjusted(air(3), 0, -air(1), 0);
        painter->drawText(text,
            int(Qt::AlignLeading | Qt::AlignVCenter),
            painter->fontMetrics().elidedText(name, Qt::ElideRight, text.width()));
    }
};

class CellDelegate : public QStyledItemDelegate {
public:
    explicit CellDelegate(MarkTable& table)
        : QStyledItemDelegate(&table)
        , m_table(table)
    {
    }
    void paint(QPainter* painter,
        const QStyleOptionViewItem& option,
        const QModelIndex& index) const override
    {
        painter->save();
        painter->fillRect(option.rect, groundOf(index.row()));
        if (m_table.header().beginsGroup(index.column()))
            painter->fillRect(QRect(option.rect.left(), option.rect.top(), 1, option.rect.height()),
                tokens().line);
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        const bool current = index == m_table.currentIndex();
        if (chosen || current) {
            const QRectF box = QRectF(option.rect).adjusted(2.5, 1.5, -1.5, -1.5);
            painter->setRenderHint(QPainter::Antialiasing);
            painter->setPen(current ? QPen(tokens().edge, 1) : QPen(Qt::NoPen));
            painter->setBrush(tokens().accentTint);
            painter->drawRoundedRect(box, 3, 3);
        }
        m_table.drawCell()(*painter, index, option.rect);
        if (current && m_table.hasFocus())
            drawFocusRing(*painter, option.rect);
        painter->restore();
    }

private:
    MarkTable& m_table;
};

} // namespace

GroupedHeader::GroupedHeader(QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent)
{
    setFrameShape(QFrame::NoFrame);
    setSectionResizeMode(QHeaderView::Fixed);
    setSectionsClickable(true);
    setHighlightSections(false);
    setMinimumSectionSize(scaled(20));
}

void GroupedHeader::setGroups(const std::vector<ColumnGroup>& groups)
{
    m_groups = groups;
    viewport()->update();
}

bool GroupedHeader::beginsGroup(int column) const
{
    return std::any_of(m_groups.begin(), m_groups.end(), [column](const ColumnGroup& group) {
        return group.first == column;
    });
}

QSize GroupedHeader::sizeHint() const
{
    const int name = QFontMetrics(interfaceFont(0.92, QFont::DemiBold)).height();
    return {QHeaderView::sizeHint().width(),
        name + 2 * QFontMetrics(interfaceFont(0.85)).height() + air(4)};
}

QRect GroupedHeader::headOf(const ColumnGroup& group) const
{
    const int last = group.first + group.count - 1;
    if (group.count == 0 || last >= count())
        return {};
    const int a = sectionViewportPosition(group.first);
    const int b = sectionViewportPosition(last);
    const int left = qMin(a, b);
    const int right = qMax(a + sectionSize(group.first), b + sectionSize(last));
    const int line = QFontMetrics(interfaceFont(0.92, QFont::DemiBold)).height();
    return {left + air(2), air(1), right - left - air(4), line};
}

void GroupedHeader::mousePressEvent(QMouseEvent* event)
{
    for (const ColumnGroup& group : m_groups) {
        if (headOf(group).contains(event->pos())) {
            Q_EMIT groupPressed(group);
            return;
        }
    }
    QHeaderView::mousePressEvent(event);
}

void GroupedHeader::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), t.window);
    for (const ColumnGroup& group : m_groups) {
        const QRect head = headOf(group);
        if (head.isEmpty())
            continue;
        const int last = group.first + group.count - 1;
        painter.setFont(interfaceFont(0.92, QFont::DemiBold));
        painter.setPen(t.ink);
        painter.drawText(head,
            Qt::AlignCenter,
            painter.fontMetrics().elidedText(group.name, Qt::ElideRight, head.width()));
        painter.fillRect(QRect(head.left(), head.bottom() + air(0.5), head.width(), 1), t.quiet);
        painter.setFont(interfaceFont(0.85));
        painter.setPen(t.quiet);
        for (int column = group.first; column <= last; ++column) {
            const QRect cell(sectionViewportPosition(column),
                head.bottom() + air(1),
                sectionSize(column),
                height() - head.bottom() - air(1.5));
            painter.drawText(cell,
                Qt::AlignCenter | Qt::TextWordWrap,
                model()->headerData(column, Qt::Horizontal).toString());
        }
    }
    painter.fillRect(QRect(0, height() - 1, width(), 1), t.line);
}

MarkTable::MarkTable(QAbstractItemModel& cells, DrawCell draw, QWidget* parent)
    : QTableView(parent)
    , m_header(new GroupedHeader(this))
    , m_draw(std::move(draw))
    , m_least(scaled(40))
{
    setModel(&cells);
    setHorizontalHeader(m_header);
    setVerticalHeader(new NameHeader(this));
    setCornerButtonEnabled(false);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setTabKeyNavigation(false); // Tab leaves the table: it is one stop
    setSelectionMode(QAbstractItemView::ContiguousSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setItemDelegate(new CellDelegate(*this));
    setMinimumHeight(scaled(64));
    m_corner = findChild<QAbstractButton*>();
    if (m_corner != nullptr)
        m_corner->installEventFilter(this);
    QPalette own = palette();
    own.setColor(QPalette::Base, tokens().window);
    setPalette(own);
    viewport()->setMouseTracking(true);
    connect(m_header, &GroupedHeader::groupPressed, this, &MarkTable::choose);
}

void MarkTable::choose(const ColumnGroup& group)
{
    const int last = model()->rowCount() - 1;
    if (last < 0)
        return;
    const QModelIndex first = model()->index(0, group.first);
    selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
    selectionModel()->select(
        QItemSelection(first, model()->index(last, group.first + group.count - 1)),
        QItemSelectionModel::ClearAndSelect);
}

void MarkTable::selectionChanged(const QItemSelection& chosen, const QItemSelection& before)
{
    QTableView::selectionChanged(chosen, before);
    Q_EMIT currentMoved();
}

void MarkTable::fitColumns()
{
    const int columns = m_header->count();
    if (columns == 0)
        return;
    const int room = viewport()->width();
    for (int column = 0; column < columns; ++column) {
        const int share = (column + 1) * room / columns - column * room / columns;
        m_header->resizeSection(column, qMax(m_least, share));
    }
}

void MarkTable::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if ((enter || event->key() == Qt::Key_Space) && currentIndex().isValid()) {
        Q_EMIT acted(currentIndex());
        return;
    }
    QTableView::keyPressEvent(event);
}

void MarkTable::mouseDoubleClickEvent(QMouseEvent* event)
{
    const QModelIndex cell = indexAt(event->pos());
    if (cell.isValid())
        Q_EMIT acted(cell);
}

bool MarkTable::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_corner || event->type() != QEvent::Paint)
        return QTableView::eventFilter(watched, event);
    QPainter painter(m_corner);
    painter.fillRect(m_corner->rect(), tokens().window);
    painter.fillRect(QRect(0, m_corner->height() - 1, m_corner->width(), 1), tokens().line);
    return true;
}

void MarkTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fitColumns();
}

void MarkTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    viewport()->update();
    Q_EMIT currentMoved();
}

} // namespace wainscot::ui
