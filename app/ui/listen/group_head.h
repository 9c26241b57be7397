// What stands at the start of a group's strand: its name, its state, what can be done with it.
#pragma once

#include <QLineEdit>
#include <QWidget>

#include "app/ui/kit/button.h"
#include "core/model/meeting.h"

namespace wainscot::ui {

// A name in the children's face that can be written anew: F2, Enter or a double click.
class GroupName : public QWidget {
    Q_OBJECT
public:
    explicit GroupName(const QString& name, QWidget* parent = nullptr);
    void beginWriting();
    [[nodiscard]] QLineEdit& field() { return *m_field; }

Q_SIGNALS:
    void renamed(const QString& name);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void endWriting(bool keep);
    QWidget* m_label;
    QLineEdit* m_field;
    QString m_name;
};

class GroupHead : public QWidget {
    Q_OBJECT
public:
    explicit GroupHead(const Group& group, QWidget* parent = nullptr);
    [[nodiscard]] GroupName& name() { return *m_name; }
    [[nodiscard]] QVector<QWidget*> stops() const { return m_stops; }

Q_SIGNALS:
    void meetingAsked();
    void splitAsked();
    void keepAsked(bool byHand);

private:
    GroupName* m_name;
    QVector<QWidget*> m_stops;
};

} // namespace wainscot::ui
