// Listen: put like with like, give it back to the class, look back on it.
#pragma once

#include <QPointer>
#include <QStackedWidget>

#include <array>

#include "app/jobs/wall_draft_job.h"
#include "app/ui/listen/groups_page.h"
#include "app/ui/listen/looking_back_page.h"
#include "app/ui/listen/meeting_run.h"
#include "app/ui/listen/meetings_page.h"
#include "app/ui/places/task_line.h"
#include "app/ui/session/work.h"

class QHBoxLayout;

namespace wainscot::ui {

class ListenPlace : public QWidget {
    Q_OBJECT
public:
    enum class Task { Groups, Meetings, LookingBack };
    ListenPlace(Session& session, Work& work, QWidget* parent = nullptr);

    void show(Task task);
    void refresh(); // to what the book holds; for when the place is shown
    void leave(); // to another place
    [[nodiscard]] TaskPage::Saying saying() { return page().saying(); }
    [[nodiscard]] QWidget* firstStop() const;
    [[nodiscard]] QVector<QWidget*> regions() const;
    [[nodiscard]] GroupsPage& groups() { return *m_groups; }
    [[nodiscard]] MeetingsPage& meetings() { return *m_meetings; }
    [[nodiscard]] LookingBackPage& lookingBack() { return *m_lookingBack; }
    [[nodiscard]] MeetingRun* meetingRun() { return m_run; } // null: none is held
    void beginMeeting(MeetingId meeting);
    void endMeeting();
    // A display from the words of these groups, as a draft to be edited.
    void makeWall(const std::vector<GroupId>& groups);
    // From the groups the class has talked about; before any meeting from all of them.
    void makeDraft() { makeWall(groupsForWall()); }

Q_SIGNALS:
    void stateChanged();
    void announced(const QString& sentence);
    void gatherAsked();
    void wallMade();

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] std::vector<GroupId> groupsForWall() const;
    void takeWall(const ArrangeOutcome& outcome);
    void add(TaskPage* page);
    [[nodiscard]] TaskPage& page() const;

    Session& m_session;
    Work& m_work;
    TaskLine* m_tasks;
    QStackedWidget* m_pages;
    QStackedWidget* m_abouts;
    GroupsPage* m_groups;
    MeetingsPage* m_meetings;
    LookingBackPage* m_lookingBack;
    QPointer<MeetingRun> m_run;
};

} // namespace wainscot::ui
