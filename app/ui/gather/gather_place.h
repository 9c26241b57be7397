// Gather: who is here, what was asked, what they said and made. A line of tasks, and the one in
// hand.
#pragma once

#include <QStackedWidget>

#include <array>

#include "app/ui/gather/ask_task.h"
#include "app/ui/gather/class_task.h"
#include "app/ui/gather/heard_task.h"
#include "app/ui/gather/pictures_task.h"
#include "app/ui/gather/seen_task.h"
#include "app/ui/gather/words_task.h"

namespace wainscot::ui {

enum class GatherPart { Class, Ask, Words, Seen, Pictures, Heard };
inline constexpr int kGatherParts = 6;

class GatherPlace : public QWidget {
    Q_OBJECT
public:
    GatherPlace(Session& session, PictureShelf& shelf, QWidget* parent = nullptr);

    [[nodiscard]] GatherPart part() const { return m_part; }
    void go(GatherPart part);
    void refresh(); // the task in hand
    void leave() { task().leave(); } // another place is gone to
    [[nodiscard]] TaskPage& task();
    [[nodiscard]] ClassTask& classTask() { return *m_class; }
    [[nodiscard]] AskTask& ask() { return *m_ask; }
    [[nodiscard]] SeenTask& seen() { return *m_seen; }
    [[nodiscard]] PicturesTask& pictures() { return *m_pictures; }
    [[nodiscard]] WordsTask& words() { return *m_words; }
    [[nodiscard]] HeardTask& heard() { return *m_heard; }
    [[nodiscard]] QWidget* firstStop() { return task().firstStop(); }
    [[nodiscard]] QVector<QWidget*> regions(); // task line, the task

Q_SIGNALS:
    void stateChanged(); // what the sill says
    void announced(const QString& sentence);
    void classFileAsked();
    void experienceNamed(const QString& title); // something new begins
    void pictureAsked(); // for the answer in hand
    void filesDropped(const QStringList& files); // pictures of the experience
    void filesAsked();
    void sheetsAsked(); // to answer on
    void groupsAsked(); // on to Listen
    void folderAsked();
    void displayAsked(wainscot::DisplayId display);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void makeTaskLine(QVBoxLayout& column);

    Session& m_session;
    ClassTask* m_class;
    AskTask* m_ask;
    WordsTask* m_words;
    SeenTask* m_seen;
    PicturesTask* m_pictures;
    HeardTask* m_heard;
    GatherPart m_part = GatherPart::Words;
    QStackedWidget* m_tasks;
    QStackedWidget* m_abouts;
    std::array<Button*, kGatherParts> m_names{};
    Rover* m_rover;
};

} // namespace wainscot::ui
