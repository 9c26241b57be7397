#include "app/ui/gather/ask_task.h"

#include <QHBoxLayout>
#include <QInputDialog>
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>

#include "app/ui/gather/prompt_sign.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/prompt_edits.h"
#include "core/base/language_name.h"
#include "core/model/ready_prompts.h"

namespace wainscot::ui {

AskTask::AskTask(Session& session, PictureShelf& shelf, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_shelf(shelf)
    , m_about(new QWidget)
    , m_rover(new Rover(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    m_list = scrolled(new QWidget);
    m_list->setFixedWidth(scaled(250));
    row->addWidget(m_list);
    row->addWidget(new Rule(Qt::Vertical));
    m_set = scrolled(new QWidget);
    row->addWidget(m_set, 1);
    auto* about = new QHBoxLayout(m_about);
    about->setContentsMargins(0, 0, 0, 0);
    about->setSpacing(air(1));
    auto* language = new Button(Button::Form::Word, tr("Add a language"));
    auto* own = new Button(Button::Form::Plain, tr("A set of your own"), Icon::Plus);
    connect(language, &Button::clicked, this, &AskTask::addLanguage);
    connect(own, &Button::clicked, this, &AskTask::makeOwn);
    // A picture may come long after the page.
    connect(&m_shelf, &PictureShelf::loaded, this, [this] {
        if (isVisible())
            showPictures();
    });
    about->addWidget(language);
    about->addWidget(own);
}

const PromptSet* AskTask::chosen() const
{
    return std::size_t(m_chosen) < m_sets.size() ? &m_sets[std::size_t(m_chosen)] : nullptr;
}

bool AskTask::isAsked(const PromptSet& set) const
{
    const Experience* experience = m_session.experience();
    return experience != nullptr && set.id.isValid() && experience->promptSet == set.id;
}

void AskTask::refresh()
{
    const std::vector<PromptSet> before = m_sets;
    m_sets.clear();
    for (const auto& [id, set] : m_session.book().promptSets.rows()) {
        if (set.asked == Asked::Children)
            m_sets.push_back(set);
    }
    const std::size_t own = m_sets.size();
    for (const PromptSet& ready : readyPromptSets(m_session.book().info.language)) {
        const bool known = std::any_of(m_sets.begin(),
            m_sets.begin() + std::ptrdiff_t(own),
            [&](const PromptSet& set) { return set.name == ready.name; });
        if (!known)
            m_sets.push_back(ready);
    }
    if (before.empty()) {
        const auto at = std::find_if(
            m_sets.begin(), m_sets.end(), [this](const PromptSet& set) { return isAsked(set); });
        m_chosen = at == m_sets.end() ? 0 : int(at - m_sets.begin());
    }
    build();
}

void AskTask::choose(int set)
{
    m_chosen = set;
    build();
    Q_EMIT stateChanged();
}

// What the fields show; while it is the same they stay, and with them the cursor.
QStringList AskTask::shapeOf(const PromptSet& set)
{
    QStringList all{set.name, set.sense, set.ages};
    for (const Prompt& prompt : set.prompts) {
        all << prompt.key << prompt.text << nameOf(prompt.sign)
            << QString::number(prompt.picture.number());
        for (const PromptWording& wording : prompt.others)
            all << wording.language << wording.text;
    }
    return all;
}

void AskTask::build()
{
    buildList();
    if (chosen() == nullptr || shapeOf(*chosen()) != m_shape)
        buildSet();
}

void AskTask::keepText(const PromptSet& set, const QString& label)
{
    m_shape = shapeOf(set); // the field that was written in shows it already
    keep(set, label);
}

void AskTask::keep(const PromptSet& set, const QString& label)
{
    if (chosen() != nullptr && set == *chosen())
        return;
    const QString name = set.name;
    if (!m_session.perform(putSet(m_session.book(), set, label)))
        return;
    // A ready set that was changed is now one of the book's own.
    for (int i = 0; i < int(m_sets.size()); ++i) {
        if (m_sets[std::size_t(i)].name == name)
            m_chosen = i;
    }
    build();
    Q_EMIT stateChanged();
}

void AskTask::use()
{
    const Experience* experience = m_session.experience();
    const PromptSet* set = chosen();
    if (experience == nullptr || set == nullptr)
        return;
    const QString name = set->name;
    m_session.perform(useSet(m_session.book(), *experience, *set));
    for (int i = 0; i < int(m_sets.size()); ++i) {
        if (m_sets[std::size_t(i)].name == name)
            m_chosen = i;
    }
    m_shape.clear(); // the remark on other answers goes
    build();
    Q_EMIT stateChanged();
}

void AskTask::addLanguage()
{
    if (chosen() == nullptr)
        return;
    QStringList names;
    QStringList codes;
    for (const QString& code : {QStringLiteral("ar"),
             QStringLiteral("de"),
             QStringLiteral("en"),
             QStringLiteral("es"),
             QStringLiteral("fa"),
             QStringLiteral("fr"),
             QStringLiteral("pl"),
             QStringLiteral("pt"),
             QStringLiteral("so"),
             QStringLiteral("tr"),
             QStringLiteral("uk"),
             QStringLiteral("ur"),
             QStringLiteral("vi"),
             QStringLiteral("zh")}) {
        codes << code;
        names << languageInWords(code);
    }
    bool ok = false;
    const QString name = QInputDialog::getItem(this,
        tr("Ask in a further language"),
        tr("Choose, or write its code (BCP 47)"),
        names,
        0,
        true,
        &ok);
    if (!ok || name.trimmed().isEmpty())
        return;
    const qsizetype at = names.indexOf(name);
    const QString code = at >= 0 ? codes.at(at) : name.trimmed();
    PromptSet changed = *chosen();
    for (Prompt& prompt : changed.prompts)
        prompt.others.push_back({code, {}});
    keep(changed, tr("Ask in %1").arg(name));
}

void AskTask::makeOwn()
{
    PromptSet own = defaultPromptSet(m_session.book().info.language);
    own.name = tr("Our questions");
    for (int n = 2; std::any_of(m_sets.begin(),
             m_sets.end(),
             [&](const PromptSet& set) { return set.name == own.name; });
         ++n)
        own.name = tr("Our questions %1").arg(n);
    keep(own, tr("A set of your own"));
}

TaskPage::Saying AskTask::saying()
{
    const PromptSet* set = chosen();
    const Experience* experience = m_session.experience();
    if (set == nullptr || experience == nullptr)
        return {tr("Three questions are ready: notice, think, wonder."),
            tr("Change them if yours are different."),
            tr("Take words down"),
            [this] { Q_EMIT wordsAsked(); }};
    const QString questions =
        counted(int(set->prompts.size()), tr("1 question"), tr("%1 questions"));
    if (isAsked(*set))
        return {tr("%1 here: %2").arg(questions, experience->title),
            tr("Changes count from the next answer on."),
            tr("Take words down"),
            [this] { Q_EMIT wordsAsked(); }};
    return {tr("%1: %2.").arg(set->name, questions),
        tr("Not asked here yet."),
        tr("Ask these"),
        [this] { use(); }};
}

void AskTask::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
    QRect middle = m_set->geometry();
    QPainter(this).fillRect(middle, tokens().card);
}

} // namespace wainscot::ui
