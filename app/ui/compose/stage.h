// The wall: the panel, the note beside the piece in hand with its thread, the hung panels.
#pragma once

#include <QWidget>

#include "app/ui/canvas/canvas.h"
#include "app/ui/compose/empty_stage.h"
#include "app/ui/compose/hung_panels.h"
#include "app/ui/compose/note.h"
#include "app/ui/compose/panel_choice.h"
#include "app/ui/picture/picture_table.h"
#include "app/ui/sight/step_back.h"
#include "app/ui/writing/words_editor.h"

namespace wainscot::ui {

class Stage : public QWidget {
    Q_OBJECT
public:
    Stage(Session& session, Desk& desk, PictureProvider& pictures, QWidget* parent = nullptr);

    [[nodiscard]] Canvas& canvas() { return *m_canvas; }
    [[nodiscard]] Note& note() { return *m_note; }
    [[nodiscard]] HungPanels& hung() { return *m_hung; }
    [[nodiscard]] WordsEditor& editor() { return *m_editor; }
    [[nodiscard]] EmptyStage& emptyStage() { return *m_empty; }
    [[nodiscard]] PanelChoice& choice() { return *m_choice; }
    [[nodiscard]] StepBack& stepBack() { return *m_stepBack; }
    [[nodiscard]] PictureTable& pictureTable() { return *m_pictureTable; }
    void setEmpty(bool empty);
    void placeNote(); // after the piece in hand or the view changed
    void placeEditor(); // after what is written was drawn

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void placeThread(const QRectF& piece);
    class Thread;
    void place();
    Canvas* m_canvas;
    Thread* m_thread;
    Note* m_note;
    HungPanels* m_hung;
    WordsEditor* m_editor;
    EmptyStage* m_empty;
    PanelChoice* m_choice; // over everything else while one chooses
    StepBack* m_stepBack; // over everything else while one looks
    PictureTable* m_pictureTable; // over everything else while a picture is worked on
    QRect m_noteColumn; // where the note may stand
};

} // namespace wainscot::ui
