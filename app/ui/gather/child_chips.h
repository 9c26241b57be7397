// The children of the class, one chip each: who is in a picture, who was there.
#pragma once

#include <QGridLayout>
#include <QWidget>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "core/model/book.h"

namespace wainscot::ui {

class ChildChips : public QWidget {
    Q_OBJECT
public:
    explicit ChildChips(QWidget* parent = nullptr);
    // Everybody in the class's order, `chosen` pressed. Chips stay while the class is the same, so
    // that the focus does.
    void setChildren(const Book& book, const std::vector<ChildId>& chosen);
    [[nodiscard]] const std::vector<std::pair<ChildId, Button*>>& chips() const { return m_chips; }

Q_SIGNALS:
    void turned(wainscot::ChildId child, bool on); // by a person

private:
    void build(const std::vector<ChildId>& children);

    QGridLayout* m_grid;
    Rover* m_rover;
    std::vector<std::pair<ChildId, Button*>> m_chips;
};

} // namespace wainscot::ui
