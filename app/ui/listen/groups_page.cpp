#include "app/ui/listen/groups_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QTimer>

#include "app/jobs/answers_in_hand.h"
#include "app/jobs/group_edits.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kEnoughAnswers = 6; // before groups tell anything

} // namespace

GroupsPage::GroupsPage(Session& session, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_about(new QWidget)
    , m_find(new QLineEdit)
    , m_fewer(new Button(Button::Form::Plain, tr("Fewer"), Icon::Minus))
    , m_more(new Button(Button::Form::Plain, tr("More"), Icon::Plus))
    , m_anew(new Button(Button::Form::Word, tr("Propose again"), Icon::Ways))
    , m_count(new OneLine(1.0, QFont::DemiBold))
    , m_outer(new QVBoxLayout(this))
    , m_rover(new Rover(this))
{
    m_outer->setContentsMargins(0, 0, 0, 0);
    makeAbout();
}

void GroupsPage::makeAbout()
{
    auto* row = new QHBoxLayout(m_about);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1.5));
    makeFind();
    m_fewer->setAccessibleName(tr("Fewer groups"));
    m_more->setAccessibleName(tr("More groups"));
    m_anew->setToolTip(tr("Looks at all answers again; you see it before it is kept"));
    m_count->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    row->addWidget(m_find);
    row->addWidget(m_anew);
    row->addWidget(m_fewer);
    row->addWidget(m_count);
    row->addWidget(m_more);
    connect(m_fewer, &Button::clicked, this, [this] { proposeMore(-1); });
    connect(m_more, &Button::clicked, this, [this] { proposeMore(1); });
    connect(m_anew, &Button::clicked, this, &GroupsPage::previewAnew);
}

const Book& GroupsPage::shown() const
{
    return m_preview ? m_preview->book : m_session.book();
}

QWidget* GroupsPage::firstStop() const
{
    return m_rover->stop();
}

QString GroupsPage::nameOf(QuoteId answer) const
{
    const Quote* quote = shown().quotes.find(answer);
    const Child* child = quote != nullptr ? shown().children.find(quote->child) : nullptr;
    return child != nullptr ? displayName(*child) : QString();
}

AnswerSlip* GroupsPage::slipOf(QuoteId quote) const
{
    for (const Strand* strand : m_strands) {
        for (AnswerSlip* slip : strand->slips()) {
            if (slip->quote() == quote)
                return slip;
        }
    }
    return nullptr;
}

void GroupsPage::perform(const Edit& edit, const QString& nothing)
{
    if (edit.isEmpty()) {
        if (!nothing.isEmpty())
            Q_EMIT announced(nothing);
        return;
    }
    m_session.perform(edit);
}

void GroupsPage::propose()
{
    if (const Experience* experience = m_session.experience())
        perform(proposeGroupsEdit(m_session.book(), *experience, tr("Proposed groups")),
            tr("No three answers have words in common. All stay on their own."));
}

void GroupsPage::proposeMore(int step)
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return;
    const int wished = int(proposedCount(m_session.book(), experience->id)) + step;
    perform(proposeGroupsEdit(m_session.book(),
        *experience,
        step > 0 ? tr("More groups") : tr("Fewer groups"),
        std::size_t(std::max(0, wished))));
}

void GroupsPage::previewAnew()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return;
    Preview preview;
    preview.edit = proposeGroupsEdit(m_session.book(), *experience, tr("Proposed groups again"));
    if (preview.edit.isEmpty()) {
        Q_EMIT announced(tr("Looked at again: the groups stay as they are."));
        return;
    }
    preview.book = m_session.book();
    apply(preview.edit, preview.book);
    preview.moved = answersMoved(m_session.book(), preview.book, *experience);
    m_preview = std::move(preview);
    makeContent();
    Q_EMIT stateChanged();
}

void GroupsPage::keepPreview()
{
    if (!m_preview)
        return;
    const Edit edit = m_preview->edit;
    m_preview.reset();
    m_session.perform(edit);
}

void GroupsPage::dropPreview()
{
    if (!m_preview)
        return;
    m_preview.reset();
    makeContent();
    Q_EMIT stateChanged();
}

void GroupsPage::refresh()
{
    m_preview.reset();
    makeContent();
}

void GroupsPage::leave()
{
    endLift();
    m_preview.reset();
}

QString GroupsPage::saidOfHand(const QString& groups, const Experience& experience) const
{
    const Book& book = m_session.book();
    const int byHand =
        int(groupsOf(book, experience.id).size() - proposedCount(book, experience.id));
    const int held = int(answersHeld(book, experience.id));
    const QString placed = counted(held, tr("1 answer"), tr("%1 answers"));
    if (byHand > 0 && held > 0)
        return tr("%1, %2 made by you, %3 placed by you.").arg(groups).arg(byHand).arg(placed);
    if (byHand > 0)
        return tr("%1, %2 made by you.").arg(groups).arg(byHand);
    return held > 0 ? tr("%1, %2 placed by you.").arg(groups, placed)
                    : tr("%1, as proposed.").arg(groups);
}

TaskPage::Saying GroupsPage::saying()
{
    const Experience* experience = m_session.experience();
    const int answers =
        experience != nullptr ? int(answersTo(m_session.book(), *experience).size()) : 0;
    const QString given = counted(answers, tr("1 answer"), tr("%1 answers"));
    if (answers < kEnoughAnswers)
        return {tr("%1, no groups yet.").arg(given),
            tr("Groups need words. Take down six answers or more."),
            tr("Go to Gather"),
            [this] { Q_EMIT gatherAsked(); }};
    const auto groups = groupsOf(shown(), experience->id);
    const int alone = int(onTheirOwn(shown(), *experience).size());
    const QString said = counted(int(groups.size()), tr("1 group"), tr("%1 groups"));
    if (m_preview)
        return {tr("As it would be: %1. %2 would change company.")
                    .arg(said, counted(m_preview->moved, tr("1 answer"), tr("%1 answers"))),
            tr("What you made and placed stays. Nothing is kept yet."),
            tr("Keep these groups"),
            [this] { keepPreview(); }};
    if (groups.empty())
        return {tr("%1, no groups yet.").arg(given),
            tr("Proposed by the words the answers share. You move what does not belong."),
            tr("Propose groups"),
            [this] { propose(); }};
    return {QStringLiteral("%1 %2").arg(saidOfHand(said, *experience),
                tr("%1 on their own.").arg(counted(alone, tr("1 answer"), tr("%1 answers")))),
        tr("One more answer moves no other."),
        tr("Plan a meeting"),
        [this] { Q_EMIT meetingAsked({}); }};
}

void GroupsPage::refreshAbout()
{
    const Experience* experience = m_session.experience();
    const auto groups =
        experience != nullptr ? groupsOf(shown(), experience->id) : std::vector<const Group*>{};
    const std::size_t proposed = experience != nullptr ? proposedCount(shown(), experience->id) : 0;
    m_about->setVisible(!groups.empty());
    m_count->setText(counted(int(groups.size()), tr("1 group"), tr("%1 groups")));
    m_count->setFixedWidth(m_count->sizeHint().width());
    m_anew->setEnabled(!m_preview);
    const auto canHave = [&](std::size_t wished) {
        if (experience == nullptr)
            return proposed;
        const Edit edit = proposeGroupsEdit(shown(), *experience, {}, wished);
        Book after = shown();
        apply(edit, after);
        return proposedCount(after, experience->id);
    };
    m_fewer->setEnabled(!m_preview && proposed > 0 && canHave(proposed - 1) < proposed);
    m_more->setEnabled(!m_preview && !groups.empty() && canHave(proposed + 1) > proposed);
}

} // namespace wainscot::ui
