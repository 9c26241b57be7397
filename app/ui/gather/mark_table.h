// A table of marks: children down the start, columns in named groups along the top. One stop of the
// keyboard; arrows, Home and End move the current cell, Space and Enter act on it. A press on a
// child's name, a column or the name of a group chooses all of its cells.
#pragma once

#include <QHeaderView>
#include <QItemSelection>
#include <QStyledItemDelegate>
#include <QTableView>

#include <functional>
#include <vector>

namespace wainscot::ui {

// Columns that belong together, under one name.
struct ColumnGroup {
    QString name;
    int first = 0;
    int count = 0;
};

// Two lines: the group's name over a hairline, beneath it the name of each column.
class GroupedHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit GroupedHeader(QWidget* parent = nullptr);
    void setGroups(const std::vector<ColumnGroup>& groups);
    [[nodiscard]] const std::vector<ColumnGroup>& groups() const { return m_groups; }
    [[nodiscard]] bool beginsGroup(int column) const;
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void groupPressed(const wainscot::ui::ColumnGroup& group); // its name was

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] QRect headOf(const ColumnGroup& group) const;
    std::vector<ColumnGroup> m_groups;
};

class MarkTable : public QTableView {
    Q_OBJECT
public:
    // Draws what stands in a cell, inside `place`.
    using DrawCell = std::function<void(QPainter&, const QModelIndex&, const QRectF& place)>;
    MarkTable(QAbstractItemModel& cells, DrawCell draw, QWidget* parent = nullptr);

    [[nodiscard]] GroupedHeader& header() { return *m_header; }
    void setLeastColumn(int px) { m_least = px; } // narrower, the table scrolls
    void fitColumns(); // shares the width; groups may have different least widths
    [[nodiscard]] const DrawCell& drawCell() const { return m_draw; }

Q_SIGNALS:
    void acted(const QModelIndex& cell); // Space, Enter or a double click
    void currentMoved(); // or other cells are chosen

protected:
    void selectionChanged(const QItemSelection& chosen, const QItemSelection& before) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    bool eventFilter(QObject* watched, QEvent* event) override; // the corner is plain ground

private:
    void choose(const ColumnGroup& group); // its columns
    GroupedHeader* m_header;
    QWidget* m_corner = nullptr;
    DrawCell m_draw;
    int m_least = 0;
};

} // namespace wainscot::ui
