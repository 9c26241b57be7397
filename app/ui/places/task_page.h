// One task of a place: a page, what stands at the end of its task line, what the sill says.
#pragma once

#include <QWidget>

#include <functional>

namespace wainscot::ui {

class TaskPage : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;

    // What is done, what is missing, and the one next step; without one the place offers its own.
    struct Saying {
        QString done;
        QString missing;
        QString next;
        std::function<void()> takeNext;
    };
    [[nodiscard]] virtual Saying saying() = 0;
    virtual void refresh() = 0; // to what the book holds
    virtual void leave() { } // what is unfinished is kept
    [[nodiscard]] virtual QWidget* about() { return nullptr; } // at the end of the task line
    [[nodiscard]] virtual QWidget* firstStop() const = 0;

Q_SIGNALS:
    void stateChanged(); // what the sill says
    void announced(const QString& sentence);
};

} // namespace wainscot::ui
