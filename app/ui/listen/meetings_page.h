// Meetings: the next one planned from groups, and those that were held.
#pragma once

#include <QScrollArea>

#include "app/ui/kit/rover.h"
#include "app/ui/listen/strand.h"
#include "app/ui/places/task_page.h"
#include "app/ui/session/session.h"

class QVBoxLayout;

namespace wainscot::ui {

class MeetingsPage : public TaskPage {
    Q_OBJECT
public:
    explicit MeetingsPage(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] Saying saying() override;
    void refresh() override;
    [[nodiscard]] QWidget* firstStop() const override
    {
        return m_first != nullptr ? m_first : m_rover->stop();
    }

    // Puts the groups into the next meeting; without any, plans one all the same.
    void plan(const std::vector<GroupId>& groups);
    [[nodiscard]] const QVector<Strand*>& strands() const { return m_strands; }

Q_SIGNALS:
    void beginAsked(wainscot::MeetingId meeting);
    void groupsAsked();
    void wallAsked(const std::vector<wainscot::GroupId>& groups);

private:
    void addEmpty();
    void addPlanned(const Meeting& meeting);
    void addPlannedGroup(const Meeting& meeting, const Group& group, int place);
    void addOthers(const Meeting& meeting);
    void addHeld(const Meeting& meeting);
    [[nodiscard]] QString nameOf(GroupId group) const;
    [[nodiscard]] QString childName(ChildId child) const;

    Session& m_session;
    QVBoxLayout* m_outer;
    QScrollArea* m_area = nullptr;
    QVBoxLayout* m_column = nullptr;
    QVector<Strand*> m_strands; // of the planned meeting, in its order
    Rover* m_rover;
    QVector<QWidget*> m_stops;
    QWidget* m_first = nullptr; // of them the one to begin with
};

// "Thursday, 12 November"
[[nodiscard]] QString dayOfMeeting(QDate day);

} // namespace wainscot::ui
