// Take words down: the children at the start, one child's answers in the middle, what was just kept
// and the keys at the end.
#pragma once

#include <QAction>
#include <QStackedWidget>
#include <QTimer>

#include "app/ui/gather/answer_column.h"
#include "app/ui/gather/child_list.h"
#include "app/ui/places/task_page.h"

class QLineEdit;

namespace wainscot::ui {

class WordsTask : public TaskPage {
    Q_OBJECT
public:
    WordsTask(Session& session, PictureShelf& shelf, QWidget* parent = nullptr);

    [[nodiscard]] CaptureDesk& desk() { return m_desk; }
    void askWhyNot() { m_column->editor().askWhyNot(); }
    [[nodiscard]] AnswerField& field() { return m_column->editor().field(); }
    [[nodiscard]] Saying saying() override;
    void refresh() override;
    void leave() override { m_desk.keepWhole(); }
    [[nodiscard]] QWidget* about() override { return m_about; }
    [[nodiscard]] QWidget* firstStop() const override;
    // With their keys, for the menus.
    [[nodiscard]] const QVector<QAction*>& actions() const { return m_actions; }

Q_SIGNALS:
    void classAsked(); // there is nobody to listen to
    void heardAsked(); // everybody is complete
    void experienceNamed(const QString& title); // something new begins
    void pictureAsked(); // of the sheet or the drawing, for the answer in hand

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override; // only what is seen can be acted on
    void hideEvent(QHideEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void makeActions();
    void enableActions(bool on);
    void showAnswerInHand();
    void makeAbout();
    [[nodiscard]] QWidget* makeStart();
    [[nodiscard]] QWidget* makeEnd();
    [[nodiscard]] QWidget* makeEmpty();
    void refreshRecent();
    void refreshAbout();
    void chooseOrder();
    void chooseScribe();
    void nameExperience();
    void fold();

    Session& m_session;
    CaptureDesk m_desk;
    AnswerColumn* m_column;
    ChildList* m_children;
    QWidget* m_about;
    Button* m_order;
    Button* m_scribe;
    QStackedWidget* m_pages;
    QWidget* m_end = nullptr;
    QVBoxLayout* m_recent = nullptr;
    QScrollArea* m_middle = nullptr;
    Label* m_emptySays = nullptr;
    QLineEdit* m_title = nullptr;
    Button* m_toClass = nullptr;
    QTimer m_rest; // after a pause in typing what stands there is kept
    QVector<QAction*> m_actions;
};

} // namespace wainscot::ui
