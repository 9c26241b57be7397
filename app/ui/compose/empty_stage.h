// What stands on the stage before there is a panel: a blank sheet with pale frames of what a panel
// holds, and the ways to begin.
#pragma once

#include <QVBoxLayout>
#include <QWidget>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

class EmptyStage : public QWidget {
    Q_OBJECT
public:
    explicit EmptyStage(QWidget* parent = nullptr);
    // `words` and `pictures`: how many there are that may hang.
    void refresh(int words, int pictures, bool hasExperience);
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }

Q_SIGNALS:
    void proposeAsked();
    void wordsAsked(); // an empty panel, and the drawer at the words
    void picturesAsked();
    void gatherAsked();
    void firstStepsAsked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();
    Button* addWay(Icon icon, const QString& text, const QString& detail);
    QRectF m_sheet;
    Card* m_card;
    QVBoxLayout* m_column;
    Rover* m_rover;
};

} // namespace wainscot::ui
