// A strand: what belongs together hangs from one line, its name at the start.
#pragma once

#include <QWidget>

#include <functional>

#include "app/ui/listen/answer_slip.h"

class QVBoxLayout;

namespace wainscot::ui {

class Strand : public QWidget {
    Q_OBJECT
public:
    // Proposed and kept strands are drawn through, the loose ones dotted: on their own, a new
    // group.
    enum class Kind { Group, Loose };
    Strand(Kind kind, const QString& name, QWidget* parent = nullptr);

    // At the start, beneath the name; the strand takes it.
    void addHead(QWidget* widget);
    void addSlip(AnswerSlip* slip); // the strand takes it
    [[nodiscard]] const QVector<AnswerSlip*>& slips() const { return m_slips; }
    void showOnly(const std::function<bool(const AnswerSlip&)>& fits); // the others step aside
    void setGroup(GroupId group) { m_group = group; }
    [[nodiscard]] GroupId group() const { return m_group; }
    void setTakesAnswers(bool takes); // slips can be dropped here
    void setAimedAt(bool aimed); // where what is in the hand would go
    [[nodiscard]] bool isAimedAt() const { return m_isAimedAt; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    // `beside`: the slip it was let go over; invalid = beside none.
    void dropped(wainscot::QuoteId answer, wainscot::QuoteId beside);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    struct Row {
        int top = 0; // of the slips; their line is above
        int height = 0;
        int first = 0; // of its slips
        int count = 0;
    };
    [[nodiscard]] QVector<Row> rowsFor(int width) const;
    [[nodiscard]] int columnsFor(int width) const;
    [[nodiscard]] QRect slipPlace(int width, const Row& row, int column) const;
    [[nodiscard]] int headHeight() const;
    void placeSlips();
    void paintPlaceForHand(QPainter& painter, const QVector<Row>& rows) const;

    Kind m_kind;
    GroupId m_group;
    QWidget* m_head;
    QVBoxLayout* m_headColumn;
    QVector<AnswerSlip*> m_slips;
    QVector<AnswerSlip*> m_shown; // of them
    bool m_isAimedAt = false;
};

// Slips and their words are larger where there is much room.
[[nodiscard]] double wordsOnStrands(int width);

} // namespace wainscot::ui
