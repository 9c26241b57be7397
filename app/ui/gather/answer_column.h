// The middle of taking words down: one child, the questions in their order, what was answered, and
// the answer in hand.
#pragma once

#include <QVBoxLayout>

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/gather/answer_editor.h"

namespace wainscot::ui {

class AnswerColumn : public QWidget {
    Q_OBJECT
public:
    AnswerColumn(
        Session& session, CaptureDesk& desk, PictureShelf& shelf, QWidget* parent = nullptr);
    void refresh(); // builds anew only what has changed
    void showDraft(); // another child, prompt or answer is in hand
    [[nodiscard]] AnswerEditor& editor() { return *m_editor; }

private:
    // What stands in the column, to see whether it must be built anew.
    [[nodiscard]] QStringList shape() const;
    void build();
    void showAttached();
    void addPrompt(int at, const Prompt& prompt);
    void addQuestion(const Prompt& prompt);
    void addKept(const Quote& quote);
    [[nodiscard]] std::vector<const Quote*> kept(const Prompt& prompt) const;
    // Empty until the small copy is there; `room` in px at 10 pt text.
    [[nodiscard]] QPixmap pixmapOf(PictureId id, QSize room);
    [[nodiscard]] const NoAnswer* reason(const Prompt& prompt) const;

    Session& m_session;
    CaptureDesk& m_desk;
    PictureShelf& m_shelf;
    AnswerEditor* m_editor;
    QWidget* m_content = nullptr;
    QVBoxLayout* m_column = nullptr;
    QStringList m_shape;
    bool m_waits = false; // for a small copy
};

// "Said. Exact words. Read back.": how words came about.
[[nodiscard]] QString howGiven(const Quote& quote);
// "4;7. Portuguese and some English.": what helps to listen to a child on a day.
[[nodiscard]] QString aboutChild(const Child& child, QDate on);

} // namespace wainscot::ui
