// One Tab stop for a row, a list or a grid; arrows, Home and End move inside it.
#pragma once

#include <QObject>
#include <QPointer>
#include <QStringList>
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

// A page that is built anew forgets where the keyboard was: the stop of the same accessible name or
// place, else the next one that is still there, else the one before it; null = none.
class LastStop {
public:
    // Of the members that are there now; nothing is remembered when none of them has the focus.
    explicit LastStop(const QVector<QWidget*>& members);
    [[nodiscard]] bool isKnown() const { return m_at >= 0; }
    [[nodiscard]] QWidget* among(const QVector<QWidget*>& members) const;

private:
    QStringList m_names;
    int m_at = -1;
};

} // namespace wainscot::ui
