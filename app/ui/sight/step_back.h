// Step back: the panel as somebody sees it from a chosen place, and what can no longer be read.
#pragma once

#include <QWidget>

#include <functional>
#include <optional>

#include "app/jobs/drawn_display.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/sight/eye_picture.h"
#include "app/ui/sight/walk_line.h"

class QVBoxLayout;

namespace wainscot::ui {

class StepBack : public QWidget {
    Q_OBJECT
public:
    explicit StepBack(PictureProvider& pictures, QWidget* parent = nullptr);

    // `nameOf` tells what a row calls a piece. Eyes, sight and height are those of the last time.
    void open(const DrawnPanel& panel, std::function<QString(PieceId)> nameOf);
    void setPanel(const DrawnPanel& panel); // the same one after a change, or another
    void close();
    void refreshPictures() { m_picture->refreshPictures(); }

    [[nodiscard]] const wall::Standing& standing() const { return m_standing; }
    [[nodiscard]] const std::vector<SeenText>& texts() const { return m_texts; }
    [[nodiscard]] EyePicture& picture() { return *m_picture; }
    [[nodiscard]] WalkLine& walk() { return *m_walk; }
    void setEyes(int preset); // of wall::eyesPresets
    void setSight(int preset); // of wall::sightPresets
    void setMiddle(Mm above);

Q_SIGNALS:
    void closed();
    void pieceWanted(wainscot::PieceId piece); // to be taken in hand

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLayout* makeHead();
    void chooseEyes();
    void chooseSight();
    void chooseMiddle();
    void look(); // works out again what is seen
    void say();
    void list();

    std::optional<DrawnPanel> m_panel;
    check::PanelFacts m_facts;
    std::function<QString(PieceId)> m_nameOf;
    wall::Standing m_standing;
    std::vector<SeenText> m_texts;
    int m_eyesPreset = 1;
    int m_sightPreset = 0;

    Label* m_heading;
    Label* m_scale;
    Button* m_eyes;
    Button* m_sight;
    Button* m_middle;
    Button* m_larger;
    EyePicture* m_picture;
    WalkLine* m_walk;
    QWidget* m_column; // what cannot be read
    QScrollArea* m_area;
};

} // namespace wainscot::ui
