#include "app/ui/listen/meetings_page.h"

#include <QHBoxLayout>
#include <QLocale>

#include <algorithm>

#include "app/jobs/group_edits.h"
#include "app/jobs/meeting_edits.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/listen/who_answers.h"

namespace wainscot::ui {

QString dayOfMeeting(QDate day)
{
    return QLocale().toString(day, QLocale::LongFormat);
}

MeetingsPage::MeetingsPage(Session& session, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_outer(new QVBoxLayout(this))
    , m_rover(new Rover(this))
{
    m_outer->setContentsMargins(0, 0, 0, 0);
}

QString MeetingsPage::nameOf(GroupId group) const
{
    const Group* found = m_session.book().groups.find(group);
    return found != nullptr ? found->label : QString();
}

QString MeetingsPage::childName(ChildId child) const
{
    const Child* found = m_session.book().children.find(child);
    return found != nullptr ? displayName(*found) : QString();
}

void MeetingsPage::plan(const std::vector<GroupId>& groups)
{
    if (const Experience* experience = m_session.experience())
        m_session.perform(planMeetingEdit(m_session.book(),
            experience->id,
            groups,
            m_session.today(),
            groups.empty() ? tr("Planned a meeting") : tr("Put a group into a meeting")));
    if (groups.empty() && m_first != nullptr)
        m_first->setFocus(Qt::OtherFocusReason);
}

TaskPage::Saying MeetingsPage::saying()
{
    const Experience* experience = m_session.experience();
    const Meeting* planned =
        experience != nullptr ? plannedMeeting(m_session.book(), experience->id) : nullptr;
    const int held = experience != nullptr
        ? int(meetingsOf(m_session.book(), experience->id).size()) - (planned != nullptr ? 1 : 0)
        : 0;
    const QString done = held == 0 ? tr("No meeting was held yet.")
                                   : counted(held, tr("1 meeting held."), tr("%1 meetings held."));
    if (planned != nullptr && !planned->groups.empty()) {
        const MeetingId id = planned->id;
        return {
            tr("%1 The next has %2.")
                .arg(done, counted(int(planned->groups.size()), tr("1 group"), tr("%1 groups"))),
            tr("The words are shown large; a child's letter takes down what the child answers."),
            tr("Begin the meeting"),
            [this, id] { Q_EMIT beginAsked(id); }};
    }
    const bool hasGroups =
        experience != nullptr && !groupsOf(m_session.book(), experience->id).empty();
    if (!hasGroups)
        return {done,
            tr("Choose two or three groups to give back to the class."),
            tr("Go to the groups"),
            [this] { Q_EMIT groupsAsked(); }};
    if (planned == nullptr)
        return {done,
            tr("Choose two or three groups to give back to the class."),
            tr("Plan a meeting"),
            [this] { plan({}); }};
    return {done, tr("Choose two or three groups to give back to the class."), {}, {}};
}

void MeetingsPage::refresh()
{
    const LastStop last(m_stops);
    if (m_area != nullptr) {
        m_outer->removeWidget(m_area);
        m_area->hide();
        m_area->deleteLater(); // one of its buttons may be the sender
    }
    m_strands.clear();
    m_stops.clear();
    m_first = nullptr;
    m_rover->setMembers({});
    auto* content = new QWidget;
    m_column = new QVBoxLayout(content);
    m_column->setContentsMargins(air(5), air(3), air(4), air(4));
    m_column->setSpacing(air(2));
    const Experience* experience = m_session.experience();
    const auto meetings = experience != nullptr ? meetingsOf(m_session.book(), experience->id)
                                                : std::vector<const Meeting*>{};
    const Meeting* planned =
        experience != nullptr ? plannedMeeting(m_session.book(), experience->id) : nullptr;
    if (meetings.empty())
        addEmpty();
    if (planned != nullptr)
        addPlanned(*planned);
    for (auto at = meetings.rbegin(); at != meetings.rend(); ++at) {
        if (*at != planned)
            addHeld(**at);
    }
    m_column->addStretch();
    m_area = scrolled(content);
    m_outer->addWidget(m_area);
    m_rover->setMembers(m_stops, int(m_stops.indexOf(m_first)));
    if (QWidget* stop = last.among(m_stops))
        stop->setFocus(Qt::OtherFocusReason);
}

void MeetingsPage::addEmpty()
{
    m_column->addSpacing(air(7));
    m_column->addWidget(new Label(
        tr("Choose two or three groups to give back to the class."), 1.5, QFont::DemiBold));
    m_column->addWidget(new Label(tr("In a meeting the children's words stand large, one idea at a "
                                     "time, and what others answer is kept under it."),
        1.05,
        QFont::Normal,
        true));
}

void MeetingsPage::addPlanned(const Meeting& meeting)
{
    const MeetingId id = meeting.id;
    auto* row = new QHBoxLayout;
    row->setSpacing(air(1));
    auto* heading =
        new Label(tr("The next meeting: %1").arg(dayOfMeeting(meeting.on)), 1.25, QFont::DemiBold);
    row->addWidget(heading, 1);
    for (const int step : {-1, 1}) {
        auto* day = new Button(Button::Form::Word,
            step < 0 ? tr("A day earlier") : tr("A day later"),
            step < 0 ? Icon::Previous : Icon::Next);
        connect(day, &Button::clicked, this, [this, id, step] {
            const Meeting* found = m_session.book().meetings.find(id);
            m_session.perform(meetingDayEdit(
                m_session.book(), id, found->on.addDays(step), tr("Another day for the meeting")));
        });
        row->addWidget(day);
        m_stops << day;
    }
    m_column->addLayout(row);
    m_column->addWidget(new Label(meeting.groups.empty()
            ? tr("Choose two or three groups to give back to the class.")
            : tr("In this order. Press a slip to leave it out of what is read, or to take it in "
                 "again."),
        0.95,
        QFont::Normal,
        true));
    int place = 0;
    for (const GroupId group : meeting.groups) {
        if (const Group* found = m_session.book().groups.find(group))
            addPlannedGroup(meeting, *found, ++place);
    }
    addOthers(meeting);
}

void MeetingsPage::addPlannedGroup(const Meeting& meeting, const Group& group, int place)
{
    const MeetingId id = meeting.id;
    const GroupId groupId = group.id;
    auto* strand = new Strand(Strand::Kind::Group, group.label);
    auto* name = new Label(QStringLiteral("%1. %2").arg(place).arg(group.label));
    name->setFont(wordsFont(1.3, QFont::Bold));
    strand->addHead(name);
    auto* row = new QWidget;
    auto* buttons = new QHBoxLayout(row);
    buttons->setContentsMargins(0, 0, 0, 0);
    buttons->setSpacing(0);
    const auto button = [&](const QString& text, Icon icon, bool can, std::function<void()> does) {
        auto* one = new Button(Button::Form::Word, text, icon);
        one->setWordless(true);
        one->setEnabled(can);
        one->setAccessibleName(QStringLiteral("%1: %2").arg(text, group.label));
        connect(one, &Button::clicked, this, [does = std::move(does)] { does(); });
        buttons->addWidget(one);
        m_stops << one;
    };
    button(tr("Earlier"), Icon::Up, place > 1, [this, id, groupId] {
        m_session.perform(
            groupOrderEdit(m_session.book(), id, groupId, -1, tr("Order of the groups")));
    });
    button(tr("Later"), Icon::Down, place < int(meeting.groups.size()), [this, id, groupId] {
        m_session.perform(
            groupOrderEdit(m_session.book(), id, groupId, 1, tr("Order of the groups")));
    });
    button(tr("Not in this meeting"), Icon::TakeOff, true, [this, id, groupId] {
        m_session.perform(
            groupInMeetingEdit(m_session.book(), id, groupId, false, tr("Left a group out")));
    });
    buttons->addStretch();
    strand->addHead(row);
    for (const QuoteId quoteId : group.quotes) {
        const Quote* quote = m_session.book().quotes.find(quoteId);
        if (quote == nullptr)
            continue;
        const bool reads = std::find(meeting.readOut.begin(), meeting.readOut.end(), quoteId)
            != meeting.readOut.end();
        const QString state = reads ? tr("read out") : tr("not read out");
        auto* slip = new AnswerSlip(quoteId,
            quote->words,
            QStringLiteral("%1, %2").arg(childName(quote->child), state),
            wordsOnStrands(width()));
        slip->setMovable(false);
        slip->setQuiet(!reads);
        connect(slip, &AnswerSlip::clicked, this, [this, id, quoteId, reads] {
            m_session.perform(
                readOutEdit(m_session.book(), id, quoteId, !reads, tr("Whose words are read out")));
        });
        strand->addSlip(slip);
        m_stops << slip;
    }
    m_strands << strand;
    m_column->addWidget(strand);
}

void MeetingsPage::addOthers(const Meeting& meeting)
{
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, air(1), 0, air(2));
    row->setSpacing(air(1.5));
    int others = 0;
    for (const Group* group : groupsOf(m_session.book(), meeting.experience)) {
        if (std::find(meeting.groups.begin(), meeting.groups.end(), group->id)
            != meeting.groups.end())
            continue;
        auto* chip = new Button(Button::Form::Plain, group->label, Icon::Plus);
        chip->setMayShrink(true);
        chip->setAccessibleName(tr("Into the meeting: %1").arg(group->label));
        connect(chip, &Button::clicked, this, [this, id = group->id] { plan({id}); });
        row->addWidget(chip);
        m_stops << chip;
        if (meeting.groups.empty() && m_first == nullptr)
            m_first = chip;
        ++others;
    }
    row->addStretch();
    if (others > 0)
        m_column->addWidget(new Label(tr("Not in it yet"), 1.0, QFont::DemiBold));
    m_column->addWidget(line);
}

void MeetingsPage::addHeld(const Meeting& meeting)
{
    const Book& book = m_session.book();
    auto* card = new Card;
    card->setAccessibleName(dayOfMeeting(meeting.on));
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(air(4), air(3), air(4), air(3));
    column->setSpacing(air(0.5));
    auto* head = new QHBoxLayout;
    head->addWidget(new Label(dayOfMeeting(meeting.on), 1.08, QFont::DemiBold), 1);
    if (!meeting.groups.empty()) {
        auto* wall = new Button(Button::Form::Plain, tr("Make a draft for a wall"), Icon::Sheet);
        connect(wall, &Button::clicked, this, [this, groups = meeting.groups] {
            Q_EMIT wallAsked(groups);
        });
        head->addWidget(wall);
        m_stops << wall;
    }
    column->addLayout(head);
    QStringList names;
    for (const GroupId group : meeting.groups)
        names << nameOf(group);
    if (!names.isEmpty())
        column->addWidget(new Label(names.join(QStringLiteral("; ")), 0.95, QFont::Normal, true));
    QStringList carried;
    for (const GroupId group : meeting.carriedOver)
        carried << nameOf(group);
    if (!carried.isEmpty())
        column->addWidget(
            new Label(tr("For another day: %1").arg(carried.join(QStringLiteral("; "))), 0.95));
    if (!meeting.notes.isEmpty())
        column->addWidget(new Label(meeting.notes, 0.95));
    for (const MeetingNote& note : meeting.happened) {
        const QString who = childName(note.child);
        const QString kind = note.kind == MeetingNoteKind::Agreement ? tr("We agree")
            : note.kind == MeetingNoteKind::Disagreement             ? tr("We do not agree")
                                                         : tr("%1 changed their mind").arg(who);
        column->addWidget(new Label(QStringLiteral("%1: %2").arg(kind, note.text), 0.95));
    }
    for (const auto& [id, quote] : book.quotes.rows()) {
        if (quote.meeting != meeting.id)
            continue;
        auto* words = new AnswerSlip(id, quote.words, whoAnswers(book, quote), 1.0);
        words->setMovable(false);
        m_stops << words;
        column->addWidget(words);
    }
    m_column->addWidget(card);
}

} // namespace wainscot::ui
