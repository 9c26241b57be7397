// A meeting being held: over the whole window, the words large for the class to see. Letters are
// children, commands are function keys.
#pragma once

#include <QElapsedTimer>
#include <QLineEdit>
#include <QWidget>

#include <optional>

#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/session.h"

class QVBoxLayout;
class QHBoxLayout;

namespace wainscot::ui {

class IdeaInTurn;
class Seat;

class MeetingRun : public QWidget {
    Q_OBJECT
public:
    MeetingRun(Session& session, MeetingId meeting, QWidget* parent);
    ~MeetingRun() override; // the window's colours come back

    [[nodiscard]] GroupId groupInTurn() const;
    [[nodiscard]] QuoteId ideaInTurn() const;
    [[nodiscard]] bool isWriting() const { return m_writing.has_value(); }
    [[nodiscard]] QLineEdit& field() { return *m_field; }
    [[nodiscard]] const QVector<Seat*>& seats() const { return m_seats; }
    [[nodiscard]] bool isDark() const { return tokens().dark; }
    void end(); // keeps it as held

Q_SIGNALS:
    void ended();

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    // What the field takes down.
    struct Writing {
        std::optional<MeetingNoteKind> note; // none: a child's answer
        ChildId child;
    };
    [[nodiscard]] const Meeting& meeting() const;
    [[nodiscard]] std::vector<QuoteId>
    ideas() const; // of the group: read out, then answers to them
    [[nodiscard]] QString nameOf(ChildId child) const;
    [[nodiscard]] QString whoSaid(QuoteId quote) const;
    void goToGroup(int step);
    void goToIdea(int step);
    void carryOver();
    void switchLight();
    void childCalled(ChildId child);
    void beginWriting(const Writing& writing, const QString& prompt);
    void askWhoChanged();
    void endWriting(bool keep);
    bool commandKey(int key);

    void fill();
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeMiddle();
    [[nodiscard]] QWidget* makeOthers();
    [[nodiscard]] QWidget* makeReplies();
    [[nodiscard]] QWidget* makeSeats();
    [[nodiscard]] QWidget* makeFoot();
    void tellTime();

    Session& m_session;
    MeetingId m_meeting;
    Tokens m_windowTokens;
    std::size_t m_group = 0; // of the meeting's
    std::size_t m_idea = 0; // of the group's
    std::optional<Writing> m_writing;
    bool m_asksWhoChanged = false;
    QElapsedTimer m_since;
    QVBoxLayout* m_column;
    QWidget* m_content = nullptr;
    OneLine* m_when = nullptr;
    Label* m_prompt = nullptr;
    QLineEdit* m_field;
    QVector<Seat*> m_seats;
};

} // namespace wainscot::ui
