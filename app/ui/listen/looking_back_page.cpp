#include "app/ui/listen/looking_back_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLocale>
#include <QScrollBar>

#include <algorithm>

#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/kit/writing_card.h"
#include "app/ui/listen/goal_links.h"
#include "core/voice/answers.h"

namespace wainscot::ui {

namespace {

QString answerNow(const Book& book, ExperienceId experience, const QString& question)
{
    for (const auto& [id, known] : book.reflections.rows()) {
        if (known.experience == experience && known.question == question)
            return known.answer;
    }
    return {};
}

} // namespace

QStringList questionsForLookingBack()
{
    return {LookingBackPage::tr("Who found it hard? What would help?"),
        LookingBackPage::tr("What surprised you?"),
        LookingBackPage::tr("What does it touch that the class works on, or is about to?"),
        LookingBackPage::tr("Where could it go that nobody had planned?"),
        LookingBackPage::tr("How could you find out more about what they think?")};
}

LookingBackPage::LookingBackPage(Session& session, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_outer(new QVBoxLayout(this))
{
    m_outer->setContentsMargins(0, 0, 0, 0);
}

QWidget* LookingBackPage::firstStop() const
{
    return m_fields.isEmpty() ? nullptr : m_fields.front();
}

// Those answered, then those that are ready and not answered, then the children's own questions.
std::vector<LookingBackPage::Asked> LookingBackPage::questions() const
{
    const Experience* experience = m_session.experience();
    std::vector<Asked> all;
    for (const QString& question : questionsForLookingBack())
        all.push_back({{}, {}, question, {}});
    for (const Prompt& prompt : promptsOf(m_session.book(), *experience))
        all.push_back({{}, prompt.key, tr("%1 (you)").arg(prompt.text), {}});
    for (const auto& row : m_session.book().reflections.rows()) {
        const Reflection& reflection = row.second;
        if (reflection.experience != experience->id)
            continue;
        const auto same = std::find_if(all.begin(), all.end(), [&](const Asked& asked) {
            return asked.question == reflection.question;
        });
        const Asked given{reflection.id, reflection.prompt, reflection.question, reflection.answer};
        if (same != all.end())
            *same = given;
        else
            all.push_back(given);
    }
    return all;
}

TaskPage::Saying LookingBackPage::saying()
{
    if (m_session.experience() == nullptr)
        return {tr("Nothing to look back on yet."), {}, {}, {}};
    const std::vector<Asked> all = questions();
    const auto answered = std::count_if(all.begin(), all.end(), [](const Asked& asked) {
        return !asked.answer.trimmed().isEmpty();
    });
    return {tr("%1 of %2 questions answered.").arg(answered).arg(all.size()),
        tr("Answer when you are ready; nothing waits for it."),
        tr("Make a draft for a wall"),
        [this] { Q_EMIT wallAsked(); }};
}

void LookingBackPage::refresh()
{
    if (m_isKeeping)
        return;
    leave();
    const int above = m_area != nullptr ? m_area->verticalScrollBar()->value() : 0;
    if (m_area != nullptr) {
        m_outer->removeWidget(m_area);
        m_area->hide();
        m_area->deleteLater(); // one of its fields may be the sender
    }
    m_fields.clear();
    m_keepers.clear();
    m_question = nullptr;
    m_goals = nullptr;
    auto* content = new QWidget;
    auto* row = new QHBoxLayout(content);
    row->setContentsMargins(air(5), air(4), air(5), air(4));
    auto* middle = new QWidget;
    middle->setMaximumWidth(scaled(900));
    m_column = new QVBoxLayout(middle);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(air(1));
    row->addStretch(1);
    row->addWidget(middle, 100);
    row->addStretch(1);
    if (const Experience* experience = m_session.experience()) {
        m_shown = experience->id;
        int order = 0;
        for (const Asked& asked : questions())
            addQuestion(asked, ++order);
        m_column->addSpacing(air(2));
        m_column->addWidget(new Label(tr("A question of your own"), 1.0, QFont::DemiBold));
        m_question = addField(tr("A question of your own"), {}, 1);
        m_keepers.emplace_back([this, order](const QString& question) {
            keepAnswer({{}, {}, question.simplified(), {}}, order + 1, {});
        });
        addNextSteps(*experience);
        addGoals();
    }
    m_column->addStretch();
    m_area = scrolled(content);
    m_outer->addWidget(m_area);
    m_outer->activate();
    m_area->verticalScrollBar()->setValue(above);
}

QPlainTextEdit* LookingBackPage::addField(const QString& name, const QString& text, int lines)
{
    auto* card = new WritingCard(name, lines, 1.05);
    QPlainTextEdit* field = card->field();
    field->setPlainText(text);
    field->installEventFilter(this);
    m_column->addWidget(card);
    m_fields << field;
    return field;
}

void LookingBackPage::addQuestion(const Asked& asked, int order)
{
    m_column->addSpacing(air(1.5));
    m_column->addWidget(new Label(asked.question, 1.0, QFont::DemiBold));
    addField(asked.question, asked.answer, 2);
    m_keepers.emplace_back([this, asked, order](const QString& answer) {
        // A field counts as changed already when its letters are chosen.
        if (answerNow(m_session.book(), m_shown, asked.question) != answer.trimmed())
            keepAnswer(asked, order, answer);
    });
}

void LookingBackPage::addNextSteps(const Experience& experience)
{
    m_column->addSpacing(air(3));
    m_column->addWidget(new Label(tr("What you offer next"), 1.25, QFont::DemiBold));
    m_column->addWidget(new Label(tr("It stands on panels as the next step, and can become an "
                                     "experience of its own."),
        0.95,
        QFont::Normal,
        true));
    addField(tr("What you offer next"), experience.nextSteps, 3);
    m_keepers.emplace_back([this](const QString& steps) {
        const Experience* found = m_session.book().experiences.find(m_shown);
        if (found == nullptr || found->nextSteps == steps.trimmed())
            return;
        Experience told = *found;
        told.nextSteps = steps.trimmed();
        EditBuilder edit(m_session.book(), tr("What you offer next"));
        edit.put(told);
        m_session.perform(edit.take());
    });
    auto* next =
        new Button(Button::Form::Plain, tr("Make it the next experience"), Icon::AnotherDay);
    connect(next, &Button::clicked, this, &LookingBackPage::makeNextExperience);
    m_column->addWidget(next);
}

void LookingBackPage::addGoals()
{
    m_column->addSpacing(air(4));
    m_goals = new GoalsCard(m_session);
    // The page is not built anew under the hand that writes in it.
    connect(m_goals, &GoalsCard::edited, this, [this](const Edit& edit) {
        m_isKeeping = true;
        m_session.perform(edit);
        m_isKeeping = false;
        m_goals->refresh();
    });
    connect(m_goals, &GoalsCard::linksAsked, this, [this](GoalId goal) {
        m_isKeeping = true;
        GoalLinks links(m_session, goal, this);
        links.exec();
        m_isKeeping = false;
        m_goals->refresh();
    });
    m_column->addWidget(m_goals);
}

void LookingBackPage::keepAnswer(const Asked& asked, int order, const QString& answer)
{
    if (asked.question.isEmpty())
        return;
    EditBuilder edit(m_session.book(), tr("Looking back"));
    Reflection reflection;
    reflection.experience = m_shown;
    reflection.question = asked.question;
    reflection.prompt = asked.prompt;
    reflection.order = order;
    // Another field may have been kept since this one was shown, so the book is asked.
    for (const auto& [id, known] : m_session.book().reflections.rows()) {
        if (known.experience == m_shown && known.question == asked.question)
            reflection = known;
    }
    if (!reflection.id.isValid())
        reflection.id = edit.newId<Reflection>();
    reflection.answer = answer.trimmed();
    reflection.on = m_session.today();
    edit.put(reflection);
    m_session.perform(edit.take());
}

void LookingBackPage::keep(const QPlainTextEdit* field)
{
    const qsizetype at = m_fields.indexOf(const_cast<QPlainTextEdit*>(field));
    if (at < 0 || !field->document()->isModified() || !m_session.isOpen())
        return;
    field->document()->setModified(false);
    m_isKeeping = true; // the fields stay while one is left for another
    m_keepers[std::size_t(at)](field->toPlainText());
    m_isKeeping = false;
    Q_EMIT stateChanged();
}

void LookingBackPage::leave()
{
    const QVector<QPlainTextEdit*> fields = m_fields;
    for (const QPlainTextEdit* field : fields)
        keep(field);
}

bool LookingBackPage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::FocusOut) {
        if (const auto* field = qobject_cast<QPlainTextEdit*>(watched))
            keep(field);
        // A question of one's own gets its place once it is written.
        if (watched == m_question && !m_question->toPlainText().trimmed().isEmpty())
            QMetaObject::invokeMethod(
                this, [this] { refresh(); }, Qt::QueuedConnection);
    }
    return TaskPage::eventFilter(watched, event);
}

void LookingBackPage::makeNextExperience()
{
    leave();
    const Experience* now = m_session.experience();
    if (now == nullptr)
        return;
    const QString steps = now->nextSteps.section(QLatin1Char('\n'), 0, 0).simplified();
    if (steps.isEmpty()) {
        Q_EMIT announced(tr("Write what you offer next; its first line becomes the title."));
        return;
    }
    if (experienceByTitle(m_session.book(), steps) != nullptr) {
        Q_EMIT announced(tr("There is an experience of that name already."));
        return;
    }
    EditBuilder edit(m_session.book(), tr("The next experience"));
    Experience next;
    next.id = edit.newId<Experience>();
    next.title = steps;
    next.language = now->language;
    next.promptSet = now->promptSet;
    next.follows = now->id;
    edit.put(next);
    if (!m_session.perform(edit.take()))
        return;
    m_session.chooseExperience(next.id);
    Q_EMIT announced(tr("The next experience is begun: %1").arg(next.title));
}

} // namespace wainscot::ui
