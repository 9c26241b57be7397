// Taking words down: whose turn it is, which question, and the answer being written. Every answer
// is one step of undo. Nothing is suggested, finished or corrected.
#pragma once

#include <QObject>

#include "app/ui/session/session.h"
#include "core/voice/answers.h"

namespace wainscot::ui {

class CaptureDesk : public QObject {
    Q_OBJECT
public:
    enum class Order { ChildByChild, PromptByPrompt };
    explicit CaptureDesk(Session& session, QObject* parent = nullptr);

    // Where one is. Begins with a child not heard yet this term, if there is one.
    [[nodiscard]] const AnswersOfClass& answers() const { return m_answers; }
    [[nodiscard]] const Child* child() const;
    [[nodiscard]] const Prompt* prompt() const;
    [[nodiscard]] int promptAt() const { return m_prompt; }
    [[nodiscard]] Order order() const { return m_order; }
    void setOrder(Order order) { m_order = order; }
    void refresh(); // to what the book holds
    void goTo(ChildId child, int prompt = -1); // -1: the child's first open one
    // Whose turn is next in this order; null when everybody is complete.
    [[nodiscard]] const Child* next() const;

    // The answer being written. Turning `exact` off keeps what stands there as first said.
    struct Draft {
        QuoteId quote; // in the book already: kept while it is written, or taken up again
        QString words;
        QString firstWords;
        Telling telling = Telling::Said;
        bool exact = true;
        bool readBack = false;
        PictureId sheet;
        PictureId drawing;
        [[nodiscard]] bool isEmpty() const;
    };
    [[nodiscard]] const Draft& draft() const { return m_draft; }
    void write(const QString& words) { m_draft.words = words; }
    void setTelling(Telling telling);
    void setExact(bool exact);
    void setReadBack(bool readBack);
    void attach(PictureId picture); // a drawing when the child drew, else the sheet
    void takeUp(QuoteId id);
    [[nodiscard]] const QString& scribe() const { return m_scribe; }
    void setScribe(const QString& scribe) { m_scribe = scribe; }
    [[nodiscard]] QStringList scribes() const; // of the book, the latest first

    // An emptied answer is taken back. Each of these keeps what stands in the draft.
    bool keep();
    // And the answer, if it is a new one, joins the group most like it; one step of undo with it.
    bool keepWhole();
    void keepAndNextPrompt();
    void keepAndNextChild();
    // The current prompt; the draft must be empty or is kept first.
    void passes();
    void noteWhyNot(const QString& note);

Q_SIGNALS:
    void moved(); // another child, prompt or answer
    void changed(); // the draft's own states

private:
    void begin(ChildId child, int prompt);
    void askOn();
    void startDraft();
    void noteReason(WhyNoAnswer why, const QString& note, const QString& label);
    [[nodiscard]] int firstOpen(ChildId child) const;
    [[nodiscard]] Quote quoteOfDraft(const Experience& experience) const;
    [[nodiscard]] ChildId begins() const;

    Session& m_session;
    AnswersOfClass m_answers;
    ExperienceId m_experience;
    ChildId m_child;
    int m_prompt = 0;
    Order m_order = Order::ChildByChild;
    Draft m_draft;
    bool m_isNew = false; // the draft is an answer the book did not hold before
    int m_gesture = 0;
    QString m_scribe;
};

} // namespace wainscot::ui
