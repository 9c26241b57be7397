#include "app/ui/session/session.h"

#include <QCryptographicHash>
#include <QDir>
#include <QStandardPaths>

#include "app/jobs/proxies_folder.h"
#include "app/jobs/sentences.h"
#include "core/media/proxies.h"
#include "core/store/book_store.h"

namespace wainscot::ui {

struct Session::Open {
    std::unique_ptr<BookStore> store;
};

Session::Session(QObject* parent)
    : QObject(parent)
{
}

Session::~Session() = default;

Result<> Session::open(const QString& path)
{
    Result<std::unique_ptr<BookStore>> store = BookStore::open(path);
    // Somebody else writes it, or the place is read-only: looking and printing still work.
    if (!store
        && (store.error().code == ErrorCode::InUse || store.error().code == ErrorCode::CannotWrite))
        store = BookStore::open(path, Access::ReadOnly);
    if (!store)
        return store.error();
    m_open = std::make_unique<Open>();
    m_open->store = std::move(store).value();
    m_experience = {};
    m_display = {};
    m_panel = {};
    m_keptAt = QDateTime::currentDateTime();
    settle();
    Q_EMIT opened();
    Q_EMIT changed();
    return Done{};
}

bool Session::isOpen() const
{
    return m_open != nullptr;
}

bool Session::isReadOnly() const
{
    return m_open != nullptr && m_open->store->isReadOnly();
}

const Book& Session::book() const
{
    static const Book none;
    return m_open != nullptr ? m_open->store->book() : none;
}

QString Session::folder() const
{
    return m_open != nullptr ? m_open->store->folder() : QString();
}

QString Session::picturesFolder() const
{
    return m_open != nullptr ? m_open->store->picturesFolder() : QString();
}

QString Session::originalPath(const QString& sha256) const
{
    return m_open != nullptr ? m_open->store->originalPath(sha256) : QString();
}

bool Session::keepOriginal(const QString& file)
{
    if (m_open == nullptr)
        return false;
    const auto kept = m_open->store->keepOriginal(file);
    if (!kept)
        Q_EMIT refused(sentenceFor(kept.error()));
    return kept.ok();
}

QString Session::proxiesFolder() const
{
    return proxiesFolderOf(folder());
}

const Experience* Session::experience() const
{
    return book().experiences.find(m_experience);
}

const Display* Session::display() const
{
    return book().displays.find(m_display);
}

const Panel* Session::panel() const
{
    return book().panels.find(m_panel);
}

void Session::chooseExperience(ExperienceId id)
{
    m_experience = id;
    m_display = {};
    m_panel = {};
    settle();
    Q_EMIT moved();
}

void Session::chooseDisplay(DisplayId id)
{
    m_display = id;
    m_panel = {};
    if (const Display* chosen = display())
        m_experience = chosen->experience;
    settle();
    Q_EMIT moved();
}

void Session::choosePanel(PanelId id)
{
    if (m_panel == id)
        return;
    m_panel = id;
    settle();
    Q_EMIT moved();
}

void Session::settle()
{
    const Book& all = book();
    if (experience() == nullptr)
        m_experience =
            all.experiences.isEmpty() ? ExperienceId() : all.experiences.rows().begin()->first;
    const Display* shown = display();
    if (shown == nullptr || shown->experience != m_experience) {
        m_display = {};
        for (const auto& [id, value] : all.displays.rows()) {
            if (value.experience == m_experience && !m_display.isValid())
                m_display = id;
        }
    }
    const Panel* at = panel();
    if (at == nullptr || at->display != m_display) {
        const auto panels = panelsOf(all, m_display);
        m_panel = panels.empty() ? PanelId() : panels.front()->id;
    }
}

bool Session::finish(const Result<>& result)
{
    if (!result) {
        Q_EMIT refused(sentenceFor(result.error()));
        return false;
    }
    m_keptAt = QDateTime::currentDateTime();
    settle();
    Q_EMIT changed();
    return true;
}

bool Session::perform(Edit edit)
{
    if (m_open == nullptr)
        return false;
    if (edit.isEmpty())
        return true;
    if (isReadOnly()) {
        Q_EMIT refused(tr("This book is open for looking only. Nothing can be changed in it."));
        return false;
    }
    return finish(m_open->store->history().perform(std::move(edit)));
}

bool Session::eraseForever(const ErasePlan& plan)
{
    if (m_open == nullptr)
        return false;
    const Proxies copies(proxiesFolder());
    for (const QString& sha256 : plan.sha256)
        copies.forget(sha256);
    return finish(m_open->store->eraseForever(plan.edit));
}

bool Session::undo()
{
    return canUndo() && finish(m_open->store->history().undo());
}

bool Session::redo()
{
    return canRedo() && finish(m_open->store->history().redo());
}

bool Session::canUndo() const
{
    return m_open != nullptr && m_open->store->history().canUndo();
}

bool Session::canRedo() const
{
    return m_open != nullptr && m_open->store->history().canRedo();
}

QString Session::undoLabel() const
{
    return canUndo() ? m_open->store->history().undoLabel() : QString();
}

QString Session::redoLabel() const
{
    return canRedo() ? m_open->store->history().redoLabel() : QString();
}

std::vector<const Edit*> Session::stepsDone() const
{
    std::vector<const Edit*> steps;
    if (m_open == nullptr)
        return steps;
    const History& history = m_open->store->history();
    for (std::size_t i = 0; i < history.done(); ++i)
        steps.push_back(&history.steps()[i]);
    return steps;
}

int Session::newGesture()
{
    return m_open != nullptr ? m_open->store->history().newGesture() : 0;
}

} // namespace wainscot::ui
