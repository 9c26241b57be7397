// A place in a few plain blocks: what is there, and what can be done about it now.
#pragma once

#include <QLineEdit>
#include <QPointer>
#include <QVBoxLayout>
#include <QWidget>

#include <functional>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

class PlainPlace : public QWidget {
    Q_OBJECT
public:
    explicit PlainPlace(QWidget* parent = nullptr);
    void begin(const QString& heading, const QString& sentence); // empties the place first
    // A note with a heading, some lines and at most one action.
    struct Block {
        QString heading;
        QStringList lines;
        QString action;
        Icon icon = Icon::None;
        std::function<void()> does;
        QLineEdit* field = nullptr; // to write on first; Enter in it acts; belongs to the place
    };
    void add(const Block& block);
    void end();
    [[nodiscard]] QWidget* firstStop() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QWidget* m_content = nullptr;
    QVBoxLayout* m_column = nullptr;
    QScrollArea* m_area = nullptr;
    Rover* m_rover;
    QVector<QWidget*> m_stops;
    QPointer<QWidget> m_field;
};

} // namespace wainscot::ui
