// What a hand does with the slips on the page of groups: moved, lifted, held together and apart.
#include "app/ui/listen/groups_page.h"

#include <QMenu>

#include "app/jobs/answers_in_hand.h"

namespace wainscot::ui {

namespace {

constexpr int kMostLetters = 48; // of an answer in a menu

QString shortened(const QString& words)
{
    const QString line = words.simplified();
    return line.size() <= kMostLetters ? line : line.left(kMostLetters - 1) + QChar(0x2026);
}

// In a menu an ampersand would name a key.
QString forMenu(QString text)
{
    return text.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

QString keptWords(bool apart)
{
    return apart ? GroupsPage::tr("Kept apart from %1") : GroupsPage::tr("Kept together with %1");
}

} // namespace

QString GroupsPage::whoAndWhat(QuoteId answer) const
{
    const Quote* quote = shown().quotes.find(answer);
    return QStringLiteral("%1: %2").arg(
        nameOf(answer), quote != nullptr ? shortened(quote->words) : QString());
}

void GroupsPage::showHeld(AnswerSlip* slip) const
{
    QVector<QuoteId> with;
    QVector<QuoteId> apart; // from those it was taken from; said on its own slip alone
    QStringList all;
    for (const KeptPair& pair : pairsWith(shown(), slip->quote())) {
        const bool own = pair.answer == slip->quote();
        const QuoteId other = own ? pair.other : pair.answer;
        all << keptWords(pair.apart).arg(whoAndWhat(other));
        if (!pair.apart)
            with << other;
        else if (own)
            apart << other;
    }
    QString said;
    if (with.size() == 1)
        said = tr("with %1").arg(nameOf(with.front()));
    else if (with.size() > 1)
        said = tr("with %1 others").arg(with.size());
    else if (apart.size() == 1)
        said = tr("apart from %1").arg(nameOf(apart.front()));
    else if (apart.size() > 1)
        said = tr("apart from %1 others").arg(apart.size());
    slip->setHeld(said, all);
}

void GroupsPage::move(QuoteId answer, const Strand* to, QuoteId beside)
{
    const QString label = tr("Moved %1's words").arg(nameOf(answer));
    const int at = int(m_strands.indexOf(const_cast<Strand*>(to)));
    if (at + 1 == m_strands.size()) {
        GroupId added;
        perform(newGroupEdit(m_session.book(), answer, label, added));
    } else
        perform(moveAnswerEdit(m_session.book(), answer, to->group(), label, beside));
    if (AnswerSlip* slip = slipOf(answer))
        slip->setFocus(Qt::OtherFocusReason);
}

void GroupsPage::keepPair(QuoteId answer, QuoteId other, bool apart)
{
    const Book& book = m_session.book();
    perform(apart ? keepApartEdit(book, answer, other, tr("Kept two answers apart"))
                  : keepTogetherEdit(book, answer, other, tr("Kept two answers together")));
    if (AnswerSlip* slip = slipOf(answer))
        slip->setFocus(Qt::OtherFocusReason);
}

void GroupsPage::offerPlaces(QuoteId answer, QPoint global)
{
    if (m_preview)
        return;
    QMenu menu(this);
    const AnswerSlip* slip = slipOf(answer);
    for (Strand* strand : std::as_const(m_strands)) {
        if (slip != nullptr && slip->parentWidget() == strand)
            continue;
        menu.addAction(forMenu(tr("To: %1").arg(strand->accessibleName())),
            this,
            [this, answer, strand] { move(answer, strand); });
    }
    menu.addSeparator();
    offerOthers(menu, answer, false);
    offerOthers(menu, answer, true);
    offerLettingGo(menu, answer);
    menu.exec(global);
}

// Those of the same strand first, the others by their groups.
void GroupsPage::offerOthers(QMenu& menu, QuoteId answer, bool apart)
{
    QMenu* choices = menu.addMenu(apart ? tr("Keep apart from") : tr("Keep together with"));
    const auto add = [&](QMenu* to, QuoteId other) {
        for (const KeptPair& pair : pairsWith(m_session.book(), answer)) {
            if ((pair.answer == other || pair.other == other) && pair.apart == apart)
                return;
        }
        to->addAction(forMenu(whoAndWhat(other)), this, [this, answer, other, apart] {
            keepPair(answer, other, apart);
        });
    };
    const AnswerSlip* slip = slipOf(answer);
    const auto* own = slip != nullptr ? qobject_cast<Strand*>(slip->parentWidget()) : nullptr;
    if (own != nullptr) {
        for (const AnswerSlip* other : own->slips()) {
            if (other != slip)
                add(choices, other->quote());
        }
    }
    choices->addSeparator();
    for (const Strand* strand : std::as_const(m_strands)) {
        if (strand == own || strand->slips().isEmpty())
            continue;
        QMenu* further = choices->addMenu(forMenu(strand->accessibleName()));
        for (const AnswerSlip* other : strand->slips())
            add(further, other->quote());
        further->menuAction()->setVisible(!further->isEmpty());
    }
}

void GroupsPage::offerLettingGo(QMenu& menu, QuoteId answer)
{
    const std::vector<KeptPair> pairs = pairsWith(m_session.book(), answer);
    if (pairs.empty())
        return;
    const auto letGo = [this](const std::vector<KeptPairId>& ids) {
        perform(letGoEdit(m_session.book(), ids, tr("Let answers go their own way")));
    };
    QMenu* held = menu.addMenu(tr("Let go of"));
    std::vector<KeptPairId> all;
    for (const KeptPair& pair : pairs) {
        const QuoteId other = pair.answer == answer ? pair.other : pair.answer;
        const KeptPairId id = pair.id;
        held->addAction(forMenu(keptWords(pair.apart).arg(whoAndWhat(other))), this, [letGo, id] {
            letGo({id});
        });
        all.push_back(id);
    }
    if (all.size() > 1) {
        held->addSeparator();
        held->addAction(tr("All of these"), this, [letGo, all] { letGo(all); });
    }
}

void GroupsPage::lift(QuoteId answer)
{
    AnswerSlip* slip = slipOf(answer);
    if (slip == nullptr)
        return;
    m_lifted = answer;
    m_rover->setMembers({}); // the arrow keys are the hand's now
    slip->setLifted(true);
    m_aim = int(m_strands.indexOf(qobject_cast<Strand*>(slip->parentWidget())));
    Q_EMIT announced(tr("%1's words are in your hand. Arrow keys choose a strand, Enter sets down.")
                         .arg(nameOf(answer)));
}

void GroupsPage::steer(int key)
{
    if (key == Qt::Key_Escape) {
        endLift();
        return;
    }
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space) {
        const QuoteId answer = m_lifted;
        Strand* to = m_strands.value(m_aim);
        endLift();
        if (to != nullptr)
            move(answer, to);
        return;
    }
    m_strands[m_aim]->setAimedAt(false);
    m_aim = std::clamp(m_aim + (key == Qt::Key_Down ? 1 : -1), 0, int(m_strands.size()) - 1);
    m_strands[m_aim]->setAimedAt(true);
    m_area->ensureWidgetVisible(m_strands[m_aim]);
    Q_EMIT announced(tr("Here: %1").arg(m_strands[m_aim]->accessibleName()));
}

void GroupsPage::endLift()
{
    if (!m_lifted.isValid())
        return;
    AnswerSlip* slip = slipOf(m_lifted);
    if (slip != nullptr)
        slip->setLifted(false);
    if (m_aim < m_strands.size())
        m_strands[m_aim]->setAimedAt(false);
    m_lifted = {};
    m_rover->setMembers(m_stops, int(m_stops.indexOf(slip)));
    if (!m_find->text().isEmpty())
        showFound();
}

} // namespace wainscot::ui
