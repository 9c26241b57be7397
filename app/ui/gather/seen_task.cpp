#include "app/ui/gather/seen_task.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include "app/jobs/observation_edits.h"
#include "app/ui/gather/picture_choice.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

SeenTask::SeenTask(Session& session, PictureShelf& shelf, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_shelf(shelf)
    , m_about(new QWidget)
    , m_list(scrolled(new QWidget))
    , m_notes(new Rover(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    m_list->setFixedWidth(scaled(280));
    row->addWidget(m_list);
    row->addWidget(new Rule(Qt::Vertical));
    row->addWidget(makeMiddle(), 1);
    auto* about = new QHBoxLayout(m_about);
    about->setContentsMargins(0, 0, 0, 0);
    about->setSpacing(air(1));
    m_takeOut = new Button(Button::Form::Word, tr("Take the note out"), Icon::TakeOff);
    auto* another = new Button(Button::Form::Plain, tr("Another note"), Icon::Plus);
    connect(m_takeOut, &Button::clicked, this, &SeenTask::takeOut);
    connect(another, &Button::clicked, this, &SeenTask::begin);
    about->addWidget(m_takeOut);
    about->addWidget(another);
    connect(&m_shelf, &PictureShelf::loaded, this, [this] {
        if (isVisible())
            showPicture();
    });
    m_draft.at = QDateTime::currentDateTime();
}

void SeenTask::begin()
{
    keep();
    Observation fresh;
    fresh.at = QDateTime::currentDateTime();
    show(fresh);
    refresh();
    m_words->setFocus(Qt::OtherFocusReason);
    Q_EMIT stateChanged();
}

void SeenTask::choose(ObservationId id)
{
    keep();
    if (const Observation* seen = m_session.book().observations.find(id))
        show(*seen);
    refresh();
    Q_EMIT stateChanged();
}

void SeenTask::show(const Observation& seen)
{
    m_draft = seen;
    if (!m_draft.experience.isValid() && m_session.experience() != nullptr)
        m_draft.experience = m_session.experience()->id; // also if another is chosen meanwhile
    const QSignalBlocker quiet(m_words);
    m_words->setPlainText(seen.words);
    m_time->setDateTime(seen.at.value_or(QDateTime::currentDateTime()));
}

Observation SeenTask::written() const
{
    Observation seen = m_draft;
    seen.words = m_words->toPlainText().trimmed();
    // The field tells minutes only; a moment that nobody changed keeps its seconds.
    const QDateTime shown = m_time->dateTime();
    const bool changed = !seen.at || qAbs(seen.at->secsTo(shown)) >= 60;
    if (changed && (m_draft.at || m_time->hasFocus()))
        seen.at = shown;
    return seen;
}

void SeenTask::keep()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr || !m_session.isOpen())
        return;
    Observation seen = written();
    if (!m_session.book().experiences.contains(seen.experience))
        seen.experience = experience->id;
    if (!seen.id.isValid() && seen.words.isEmpty() && !seen.picture.isValid())
        return;
    if (seen.id.isValid() && seen == m_draft)
        return;
    Edit edit = keepObservationEdit(m_session.book(), seen, tr("What you saw"));
    if (edit.isEmpty() || !m_session.perform(std::move(edit)))
        return;
    const auto& all = m_session.book().observations;
    const ObservationId id = seen.id.isValid() ? seen.id : ObservationId(all.lastNumber());
    if (const Observation* kept = all.find(id))
        m_draft = *kept;
    Q_EMIT announced(tr("Kept: what you saw."));
}

void SeenTask::takeOut()
{
    if (!m_draft.id.isValid())
        return;
    m_session.perform(removeObservationEdit(m_session.book(), m_draft.id, tr("Take the note out")));
    Observation fresh;
    fresh.at = QDateTime::currentDateTime();
    show(fresh);
    refresh();
    Q_EMIT stateChanged();
}

void SeenTask::setSeen(ChildId child, bool seen)
{
    std::erase(m_draft.children, child);
    if (seen)
        m_draft.children.push_back(child);
    if (m_draft.id.isValid())
        m_session.perform(keepObservationEdit(m_session.book(), written(), tr("Who was there")));
    m_people->setChildren(m_session.book(), m_draft.children);
    Q_EMIT stateChanged();
}

void SeenTask::setPicture(PictureId picture)
{
    m_draft.picture = picture;
    if (m_draft.id.isValid())
        m_session.perform(
            keepObservationEdit(m_session.book(), written(), tr("Picture of what you saw")));
    showPicture();
    Q_EMIT stateChanged();
}

void SeenTask::askPicture()
{
    PictureChoice choice(m_session, m_shelf, this);
    if (choice.exec() == QDialog::Accepted)
        setPicture(choice.picture());
}

void SeenTask::refresh()
{
    const Observation* known = m_session.book().observations.find(m_draft.id);
    const Experience* experience = m_session.experience();
    const bool elsewhere = m_draft.id.isValid()
        && (known == nullptr || experience == nullptr || known->experience != experience->id);
    if (elsewhere) { // undone, erased, or another experience was chosen
        Observation fresh;
        fresh.at = QDateTime::currentDateTime();
        show(fresh);
    } else if (known != nullptr && *known != m_draft) {
        show(*known); // undone or done again
    } else if (!m_draft.id.isValid() && !m_time->hasFocus()) {
        m_time->setDateTime(m_draft.at.value_or(QDateTime::currentDateTime()));
    }
    if (!m_draft.id.isValid() && experience != nullptr && m_words->toPlainText().isEmpty())
        m_draft.experience = experience->id;
    m_words->setEnabled(experience != nullptr);
    m_takeOut->setVisible(m_draft.id.isValid());
    buildList();
    m_people->setChildren(m_session.book(), m_draft.children);
    showPicture();
}

TaskPage::Saying SeenTask::saying()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return {tr("Say first what happened."),
            tr("A note belongs to an experience."),
            tr("Take words down"),
            [this] { Q_EMIT wordsAsked(); }};
    const int notes = int(observationsOf(m_session.book(), experience->id).size());
    const QString done = notes == 0
        ? tr("Nothing noted yet.")
        : counted(notes, tr("1 note of what you saw."), tr("%1 notes of what you saw."));
    const Observation now = written();
    if (!now.words.isEmpty() && !(now == m_draft))
        return {done, tr("This one is not kept yet."), tr("Keep the note"), [this] { begin(); }};
    return {done,
        tr("What you see is yours; the children's own words go under Take words down."),
        tr("Take words down"),
        [this] { Q_EMIT wordsAsked(); }};
}

bool SeenTask::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_words && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && key->modifiers().testFlag(Qt::ControlModifier)) {
            begin();
            return true;
        }
    }
    return TaskPage::eventFilter(watched, event);
}

void SeenTask::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
