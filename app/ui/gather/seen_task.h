// What you saw: quick notes of a moment, with who was there, a picture and the time.
#pragma once

#include <QDateTimeEdit>
#include <QPlainTextEdit>

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/gather/child_chips.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/places/task_page.h"
#include "app/ui/session/session.h"

class QLabel;
class QScrollArea;

namespace wainscot::ui {

class SeenTask : public TaskPage {
    Q_OBJECT
public:
    SeenTask(Session& session, PictureShelf& shelf, QWidget* parent = nullptr);

    void begin(); // a new note, of now
    void choose(ObservationId id); // to be changed
    void keep(); // what is being written; nothing while there are no words and no picture
    void takeOut(); // the chosen note
    void setSeen(ChildId child, bool seen);
    void setPicture(PictureId picture); // invalid = none
    [[nodiscard]] ObservationId chosen() const { return m_draft.id; } // invalid: a new one
    [[nodiscard]] QPlainTextEdit& field() { return *m_words; }
    [[nodiscard]] QDateTimeEdit& time() { return *m_time; }
    [[nodiscard]] const std::vector<std::pair<ChildId, Button*>>& chips() const
    {
        return m_people->chips();
    }
    [[nodiscard]] Saying saying() override;
    void refresh() override;
    void leave() override { keep(); }
    [[nodiscard]] QWidget* about() override { return m_about; }
    [[nodiscard]] QWidget* firstStop() const override { return m_words; }

Q_SIGNALS:
    void wordsAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QWidget* makeMiddle();
    void buildList();
    void show(const Observation& seen);
    void showPicture();
    void askPicture();
    [[nodiscard]] Observation written() const; // the draft with what stands in the fields
    [[nodiscard]] QString whoWasThere(const Observation& seen) const;

    Session& m_session;
    PictureShelf& m_shelf;
    Observation m_draft; // as it was last kept, or the beginning of a new one
    QWidget* m_about;
    QScrollArea* m_list;
    QPlainTextEdit* m_words = nullptr;
    ChildChips* m_people = nullptr;
    QDateTimeEdit* m_time = nullptr;
    QLabel* m_picture = nullptr;
    Button* m_add = nullptr;
    Button* m_takeOut = nullptr;
    Rover* m_notes;
};

} // namespace wainscot::ui
