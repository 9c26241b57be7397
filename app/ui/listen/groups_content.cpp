// What stands on the page of groups.
#include "app/ui/listen/groups_page.h"

#include <QApplication>
#include <QHBoxLayout>

#include "app/jobs/group_edits.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/listen/group_head.h"

namespace wainscot::ui {

namespace {

QString asked(const Book& book, const Quote& quote)
{
    const Child* child = book.children.find(quote.child);
    const QString name = child != nullptr ? displayName(*child) : QString();
    return quote.prompt.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, quote.prompt);
}

QWidget* hint(const QString& text, Icon icon)
{
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(2));
    row->addWidget(new IconMark(icon, tokens().quiet));
    row->addWidget(new Label(text, 0.95, QFont::Normal, true), 1);
    return line;
}

} // namespace

void GroupsPage::makeContent()
{
    const auto* had = qobject_cast<AnswerSlip*>(QApplication::focusWidget());
    const QuoteId focused = had != nullptr && isAncestorOf(had) ? had->quote() : QuoteId();
    endLift();
    if (m_area != nullptr) {
        m_outer->removeWidget(m_area);
        m_area->hide();
        m_area->deleteLater(); // one of its buttons may be the sender
    }
    m_strands.clear();
    m_stops.clear();
    m_rover->setMembers({});
    auto* content = new QWidget;
    m_column = new QVBoxLayout(content);
    m_column->setContentsMargins(air(5), air(2), air(4), air(4));
    m_column->setSpacing(air(2));
    const Experience* experience = m_session.experience();
    const auto groups =
        experience != nullptr ? groupsOf(shown(), experience->id) : std::vector<const Group*>{};
    if (experience == nullptr || groups.empty()) {
        m_column->addSpacing(air(7));
        const int answers = experience != nullptr ? int(answersTo(shown(), *experience).size()) : 0;
        m_column->addWidget(
            new Label(answers < 6 ? tr("Groups need words. Take down six answers or more.")
                                  : tr("%1 wait to be put with their like.")
                                        .arg(counted(answers, tr("1 answer"), tr("%1 answers"))),
                1.5,
                QFont::DemiBold));
        m_column->addWidget(new Label(tr("Groups are proposed by the words the answers share. What "
                                         "a child meant, only you and "
                                         "the child know: you move, name and keep them."),
            1.05,
            QFont::Normal,
            true));
    } else {
        m_column->addWidget(hint(
            tr("Proposed because words are alike; the words shared are underlined. What a child "
               "meant, only you and the child know. Drag a slip to another group, or lift it with "
               "Space; its menu keeps two together or apart."),
            Icon::Why));
        if (m_preview) {
            auto* back = new Button(Button::Form::Plain, tr("Leave the groups as they were"));
            connect(back, &Button::clicked, this, &GroupsPage::dropPreview);
            m_column->addWidget(back);
            m_stops << back;
        }
        const std::vector<GroupWords> words = wordsOfGroupsIn(shown(), *experience);
        for (std::size_t at = 0; at < groups.size(); ++at)
            addGroup(*groups[at], words[at].shared);
        addLoose(onTheirOwn(shown(), *experience));
        if (!m_preview)
            addBeginning();
    }
    m_column->addStretch();
    m_area = scrolled(content);
    m_outer->addWidget(m_area);
    m_rover->setMembers(m_stops);
    refreshAbout();
    if (!m_find->text().isEmpty())
        showFound();
    if (AnswerSlip* slip = slipOf(focused))
        slip->setFocus(Qt::OtherFocusReason);
}

void GroupsPage::connectHead(GroupHead* head, const Group& group)
{
    const GroupId id = group.id;
    connect(head, &GroupHead::meetingAsked, this, [this, id] { Q_EMIT meetingAsked({id}); });
    connect(head, &GroupHead::splitAsked, this, [this, id] {
        perform(splitGroupEdit(m_session.book(), id, tr("Split a group")));
    });
    connect(head, &GroupHead::keepAsked, this, [this, id](bool byHand) {
        perform(keepGroupEdit(m_session.book(),
            id,
            byHand,
            byHand ? tr("Kept a group") : tr("Let a group be proposed anew")));
    });
    connect(&head->name(), &GroupName::renamed, this, [this, id](const QString& name) {
        perform(renameGroupEdit(m_session.book(), id, name, tr("Named a group")));
    });
}

void GroupsPage::addGroup(
    const Group& group, const std::map<QuoteId, std::vector<WordSpan>>& shared)
{
    auto* strand = new Strand(Strand::Kind::Group, group.label);
    strand->setGroup(group.id);
    auto* head = new GroupHead(group);
    head->setEnabled(!m_preview);
    connectHead(head, group);
    strand->addHead(head);
    m_stops << head->stops();
    fillStrand(strand, group.quotes, shared);
}

void GroupsPage::addLoose(const std::vector<QuoteId>& answers)
{
    auto* strand = new Strand(Strand::Kind::Loose, tr("On their own"));
    strand->addHead(new Label(tr("On their own"), 1.08, QFont::DemiBold));
    strand->addHead(
        new Label(tr("Like no other. Often worth a meeting."), 0.9, QFont::Normal, true));
    const Edit join = placeNewcomersEdit(
        m_session.book(), *m_session.experience(), tr("Put answers with their like"));
    if (!m_preview && !join.isEmpty()) {
        auto* with = new Button(Button::Form::Word, tr("Put with their like"), Icon::Arrange);
        with->setRelativeSize(0.92);
        with->setToolTip(tr("Answers alike enough join a group; no other moves"));
        connect(with, &Button::clicked, this, [this, join] { perform(join); });
        strand->addHead(with);
        m_stops << with;
    }
    fillStrand(strand, answers, {});
}

void GroupsPage::addBeginning()
{
    auto* strand = new Strand(Strand::Kind::Loose, tr("A new group"));
    strand->addHead(new Label(tr("A new group"), 1.08, QFont::DemiBold));
    strand->addHead(new Label(tr("Set a slip down here."), 0.9, QFont::Normal, true));
    fillStrand(strand, {}, {});
}

void GroupsPage::fillStrand(Strand* strand,
    const std::vector<QuoteId>& answers,
    const std::map<QuoteId, std::vector<WordSpan>>& shared)
{
    for (const QuoteId id : answers) {
        const Quote* quote = shown().quotes.find(id);
        if (quote == nullptr)
            continue;
        auto* slip =
            new AnswerSlip(id, quote->words, asked(shown(), *quote), wordsOnStrands(width()));
        if (const auto at = shared.find(id); at != shared.end())
            slip->setShared(at->second);
        showHeld(slip);
        slip->setMovable(!m_preview);
        connect(slip, &AnswerSlip::liftAsked, this, &GroupsPage::lift);
        connect(slip, &AnswerSlip::keyInHand, this, &GroupsPage::steer);
        connect(slip, &AnswerSlip::menuAsked, this, &GroupsPage::offerPlaces);
        strand->addSlip(slip);
        m_stops << slip;
    }
    strand->setTakesAnswers(!m_preview);
    connect(strand, &Strand::dropped, this, [this, strand](QuoteId answer, QuoteId beside) {
        move(answer, strand, beside);
    });
    m_strands << strand;
    m_column->addWidget(strand);
}

} // namespace wainscot::ui
