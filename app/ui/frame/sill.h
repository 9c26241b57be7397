// The sill along the bottom: what is done, what is missing, undo by name, and the one next step.
#pragma once

#include <QElapsedTimer>
#include <QProgressBar>
#include <QTimer>
#include <QWidget>

#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

class Sill : public QWidget {
    Q_OBJECT
public:
    explicit Sill(QWidget* parent = nullptr);
    void say(const QString& done, const QString& missing);
    // In place of the second sentence, whatever is said meanwhile: for some seconds at least, and
    // then until somebody presses a key or a button, or `letGo`.
    void announce(const QString& sentence);
    void letGo(); // what is said shows again
    void setUndo(const QString& what); // empty: nothing to undo
    void setNext(const QString& step); // empty: no next step
    [[nodiscard]] QString nextStep() const;
    [[nodiscard]] QString said() const { return m_missing->text(); } // what was announced last
    [[nodiscard]] Button* next() const { return m_next; }
    [[nodiscard]] Button* undoButton() const { return m_undo; }

    void workStarted(const QString& name);
    void workProgressed(const QString& doing, int done, int of);
    void workEnded();

Q_SIGNALS:
    void undoAsked();
    void nextAsked();
    void stopAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    OneLine* m_done;
    OneLine* m_missing;
    QWidget* m_work;
    OneLine* m_doing;
    QProgressBar* m_progress;
    Button* m_undo;
    Button* m_next;
    QTimer m_showWork;
    QElapsedTimer m_announced; // not valid: nothing is
    QString m_waiting; // was said meanwhile
    bool m_hasNext = false;
};

} // namespace wainscot::ui
