// One Tab stop for a row, a list or a grid; arrows, Home and End move inside it.
#pragma once

#include <QObject>
#include <QPointer>
#include <QVector>
#include <QWidget>

namespace wainscot::ui {

class Rover : public QObject {
    Q_OBJECT
public:
    // Lives as long as `owner`.
    explicit Rover(QObject* owner);
    // The members in their order; the stop stays on the one that had it, else on `current`.
    void setMembers(const QVector<QWidget*>& members, int current = 0);
    [[nodiscard]] QWidget* stop() const; // null when there are no members

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void putStopOn(QWidget* stop);
    bool moveFrom(int index, int key);
    QVector<QPointer<QWidget>> m_members;
};

} // namespace wainscot::ui
