// Panels to choose from, each as a large live picture hung in a row over the stage.
#pragma once

#include <QPixmap>
#include <QWidget>

#include <functional>
#include <vector>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

class PanelChoice : public QWidget {
    Q_OBJECT
public:
    struct Way {
        QString name; // "The second way"
        QString about; // "4 pieces stand elsewhere"
        QPixmap picture;
    };
    explicit PanelChoice(QWidget* parent = nullptr);

    // In rows of three; the first has the keyboard. `shape`: height : width of the panels.
    void open(const QString& heading,
        const QString& sentence,
        const std::vector<Way>& ways,
        double shape);
    void setPicture(int way, const QPixmap& picture); // painted later
    [[nodiscard]] int count() const { return int(m_ways.size()); }
    [[nodiscard]] QAbstractButton* way(int index) const;
    void close(); // chooses nothing

Q_SIGNALS:
    void chosen(int way);
    void closed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    class Hung;
    void place();
    Label* m_heading;
    Label* m_sentence;
    Button* m_leave;
    QScrollArea* m_area;
    QWidget* m_row;
    Rover* m_rover;
    std::vector<Hung*> m_ways;
    double m_shape = 1.4;
};

} // namespace wainscot::ui
