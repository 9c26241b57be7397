// A child's seat in a meeting: name, letter, and whether the child has spoken yet.
#pragma once

#include <QAbstractButton>

#include "core/model/ids.h"

namespace wainscot::ui {

class Seat : public QAbstractButton {
    Q_OBJECT
public:
    Seat(ChildId child,
        const QString& name,
        QChar letter,
        bool hasSpoken,
        QWidget* parent = nullptr);
    [[nodiscard]] ChildId child() const { return m_child; }
    [[nodiscard]] bool hasSpoken() const { return m_hasSpoken; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    ChildId m_child;
    QChar m_letter;
    bool m_hasSpoken;
};

} // namespace wainscot::ui
