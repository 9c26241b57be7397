#include "app/ui/gather/capture_desk.h"

#include <QDate>

#include <algorithm>

#include "app/jobs/group_edits.h"
#include "core/edit/removal.h"
#include "core/voice/term.h"

namespace wainscot::ui {

namespace {

// What was typed without the blank lines around it; inside nothing is touched.
QString asTyped(const QString& words)
{
    qsizetype from = 0;
    qsizetype to = words.size();
    while (from < to && words.at(from).isSpace())
        ++from;
    while (to > from && words.at(to - 1).isSpace())
        --to;
    return words.mid(from, to - from);
}

} // namespace

bool CaptureDesk::Draft::isEmpty() const
{
    return words.trimmed().isEmpty() && !sheet.isValid() && !drawing.isValid();
}

CaptureDesk::CaptureDesk(Session& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
{
}

const Child* CaptureDesk::child() const
{
    return m_session.book().children.find(m_child);
}

const Prompt* CaptureDesk::prompt() const
{
    const bool known = m_prompt >= 0 && std::size_t(m_prompt) < m_answers.prompts.size();
    return known ? &m_answers.prompts[std::size_t(m_prompt)] : nullptr;
}

void CaptureDesk::refresh()
{
    const Experience* experience = m_session.experience();
    m_answers = experience != nullptr ? answersIn(m_session.book(), *experience) : AnswersOfClass();
    const ExperienceId now = experience != nullptr ? experience->id : ExperienceId();
    const bool elsewhere = now != m_experience;
    m_experience = now;
    if (m_draft.quote.isValid() && !m_session.book().quotes.contains(m_draft.quote))
        m_draft.quote = {}; // undone; the words are still in the field
    if (m_scribe.isEmpty() && !scribes().isEmpty())
        m_scribe = scribes().front();
    const bool ready = !m_answers.children.empty() && !m_answers.prompts.empty();
    if (elsewhere || (ready && (child() == nullptr || prompt() == nullptr))) {
        const ChildId first = begins();
        begin(first, firstOpen(first));
    }
}

ChildId CaptureDesk::begins() const
{
    // Who was heard least comes first: without this the talkative are asked first every time.
    const QDate today = m_session.today();
    const Term term = termOf(m_session.book(), termBegin(today), today);
    for (const ChildId least : heardLeast(term, term.children.size())) {
        const ChildAnswers* row = m_answers.of(least);
        if (row != nullptr && !row->isComplete() && term.of(least)->weeksHeard() == 0)
            return least;
    }
    const ChildId open = nextToHear(m_answers, ChildId());
    if (open.isValid() || m_answers.children.empty())
        return open;
    return m_answers.children.front().child;
}

int CaptureDesk::firstOpen(ChildId child) const
{
    const ChildAnswers* row = m_answers.of(child);
    if (row == nullptr)
        return 0;
    const auto at = std::find_if(row->marks.begin(), row->marks.end(), [](const AnswerMark& mark) {
        return mark.heard == Heard::NotYet;
    });
    return at == row->marks.end() ? 0 : int(at - row->marks.begin());
}

void CaptureDesk::goTo(ChildId child, int prompt)
{
    if (!keepWhole())
        return;
    begin(child, prompt >= 0 ? prompt : firstOpen(child));
}

void CaptureDesk::begin(ChildId child, int prompt)
{
    m_child = child;
    m_prompt = prompt;
    startDraft();
    Q_EMIT moved();
}

void CaptureDesk::startDraft()
{
    m_draft = {};
    m_isNew = false;
    m_gesture = m_session.newGesture();
}

const Child* CaptureDesk::next() const
{
    const bool byPrompt = m_order == Order::PromptByPrompt && prompt() != nullptr;
    ChildId next = byPrompt ? nextToHear(m_answers, m_child, m_prompt) : ChildId();
    if (!next.isValid())
        next = nextToHear(m_answers, m_child);
    return m_session.book().children.find(next);
}

void CaptureDesk::setTelling(Telling telling)
{
    m_draft.telling = telling;
    // A picture that is there already is what was drawn, or the sheet it was written on.
    const bool drew = telling == Telling::Drew;
    const PictureId wanted = drew ? m_draft.drawing : m_draft.sheet;
    const PictureId other = drew ? m_draft.sheet : m_draft.drawing;
    if (!wanted.isValid() && other.isValid())
        std::swap(m_draft.sheet, m_draft.drawing);
    Q_EMIT changed();
}

void CaptureDesk::setExact(bool exact)
{
    if (m_draft.exact == exact)
        return;
    m_draft.exact = exact;
    if (exact) {
        if (!m_draft.firstWords.isEmpty())
            m_draft.words = m_draft.firstWords;
        m_draft.firstWords.clear();
    } else {
        m_draft.firstWords = asTyped(m_draft.words);
    }
    Q_EMIT changed();
}

void CaptureDesk::setReadBack(bool readBack)
{
    m_draft.readBack = readBack;
    Q_EMIT changed();
}

void CaptureDesk::attach(PictureId picture)
{
    (m_draft.telling == Telling::Drew ? m_draft.drawing : m_draft.sheet) = picture;
    keep();
    Q_EMIT changed();
}

void CaptureDesk::takeUp(QuoteId id)
{
    const Quote* quote = m_session.book().quotes.find(id);
    if (quote == nullptr || !keepWhole())
        return;
    m_child = quote->child;
    for (std::size_t i = 0; i < m_answers.prompts.size(); ++i) {
        if (m_answers.prompts[i].key == quote->prompt)
            m_prompt = int(i);
    }
    startDraft();
    m_draft = {id,
        quote->words,
        quote->firstWords,
        quote->telling,
        quote->dictation == Dictation::Exact,
        quote->readBack,
        quote->sheet,
        quote->drawing};
    Q_EMIT moved();
}

QStringList CaptureDesk::scribes() const
{
    QStringList names;
    const auto& quotes = m_session.book().quotes.rows();
    for (auto at = quotes.rbegin(); at != quotes.rend(); ++at) {
        if (!at->second.scribe.isEmpty() && !names.contains(at->second.scribe))
            names << at->second.scribe;
    }
    return names;
}

Quote CaptureDesk::quoteOfDraft(const Experience& experience) const
{
    Quote quote;
    if (const Quote* known = m_session.book().quotes.find(m_draft.quote)) {
        quote = *known;
    } else {
        quote.experience = experience.id;
        quote.child = m_child;
        quote.prompt = prompt()->key;
        quote.on = m_session.today();
        quote.scribe = m_scribe;
    }
    quote.words = asTyped(m_draft.words);
    quote.firstWords = m_draft.exact ? QString() : m_draft.firstWords;
    quote.telling = m_draft.telling;
    quote.dictation = m_draft.exact ? Dictation::Exact : Dictation::WorkedUp;
    quote.readBack = m_draft.readBack;
    quote.sheet = m_draft.sheet;
    quote.drawing = m_draft.drawing;
    return quote;
}

bool CaptureDesk::keep()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr || child() == nullptr || prompt() == nullptr)
        return true;
    const Book& book = m_session.book();
    if (m_draft.isEmpty() && !m_draft.quote.isValid())
        return true;
    EditBuilder edit(book, tr("%1's words").arg(displayName(*child())), m_gesture);
    Quote quote = quoteOfDraft(*experience);
    if (m_draft.isEmpty()) {
        removeQuote(edit, book, m_draft.quote);
        quote.id = {};
    } else {
        if (!quote.id.isValid()) {
            quote.id = edit.newId<Quote>();
            m_isNew = true;
        }
        edit.put(quote);
        // An answer came after all.
        for (const auto& [id, missing] : book.noAnswers.rows()) {
            if (missing.experience == experience->id && missing.child == m_child
                && missing.prompt == quote.prompt)
                edit.remove<NoAnswer>(id);
        }
    }
    const QuoteId kept = quote.id;
    if (!m_session.perform(edit.take()))
        return false;
    m_draft.quote = kept;
    return true;
}

// Only when it is whole: half an answer is like something else.
bool CaptureDesk::keepWhole()
{
    if (!keep())
        return false;
    if (!m_isNew || !m_draft.quote.isValid())
        return true;
    m_isNew = false; // what a hand does with it from now on stays
    const Child* who = child();
    return m_session.perform(joinLikeOnesEdit(m_session.book(),
        {m_draft.quote},
        who != nullptr ? tr("%1's words").arg(displayName(*who)) : QString(),
        m_gesture));
}

void CaptureDesk::keepAndNextPrompt()
{
    if (!keepWhole())
        return;
    refresh();
    const ChildAnswers* row = m_answers.of(m_child);
    if (row == nullptr)
        return;
    const int prompts = int(m_answers.prompts.size());
    if (m_order == Order::PromptByPrompt) {
        askOn();
        return;
    }
    // On through the questions; after the last one to the next child.
    for (int at = m_prompt + 1; at < prompts; ++at) {
        if (row->marks[std::size_t(at)].heard == Heard::NotYet) {
            begin(m_child, at);
            return;
        }
    }
    keepAndNextChild();
}

// The same question to the next child; when all have it, the next question.
void CaptureDesk::askOn()
{
    ChildId other = nextToHear(m_answers, m_child, m_prompt);
    int at = m_prompt;
    while (!other.isValid() && at + 1 < int(m_answers.prompts.size()))
        other = nextToHear(m_answers, ChildId(), ++at);
    begin(other.isValid() ? other : m_child, other.isValid() ? at : m_prompt);
}

void CaptureDesk::keepAndNextChild()
{
    if (!keepWhole())
        return;
    refresh();
    const Child* other = next();
    const bool byPrompt = m_order == Order::PromptByPrompt;
    if (other == nullptr)
        begin(m_child, m_prompt);
    else
        begin(other->id, byPrompt ? m_prompt : firstOpen(other->id));
}

void CaptureDesk::passes()
{
    if (const Child* who = child())
        noteReason(WhyNoAnswer::Passes, {}, tr("%1 passes for now").arg(displayName(*who)));
}

void CaptureDesk::noteWhyNot(const QString& note)
{
    if (const Child* who = child())
        noteReason(WhyNoAnswer::Noted, note, tr("Why not: %1").arg(displayName(*who)));
}

void CaptureDesk::noteReason(WhyNoAnswer why, const QString& note, const QString& label)
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr || prompt() == nullptr || !keepWhole())
        return;
    EditBuilder edit(m_session.book(), label);
    NoAnswer missing;
    missing.experience = experience->id;
    missing.child = m_child;
    missing.prompt = prompt()->key;
    for (const auto& [id, known] : m_session.book().noAnswers.rows()) {
        if (known.experience == missing.experience && known.child == m_child
            && known.prompt == missing.prompt)
            missing = known;
    }
    if (!missing.id.isValid())
        missing.id = edit.newId<NoAnswer>();
    missing.why = why;
    missing.note = note;
    missing.on = m_session.today();
    missing.by = m_scribe;
    edit.put(missing);
    if (m_session.perform(edit.take())) {
        startDraft();
        keepAndNextPrompt();
    }
}

} // namespace wainscot::ui
