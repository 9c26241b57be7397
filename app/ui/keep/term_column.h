// What the term's file is to hold: from when to when, for whom, which parts, and how many pages
// that makes.
#pragma once

#include <QCheckBox>
#include <QLineEdit>
#include <QThreadPool>

#include "app/jobs/keep_job.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/session.h"

namespace wainscot::ui {

class TermColumn : public QWidget {
    Q_OBJECT
public:
    explicit TermColumn(Session& session, QWidget* parent = nullptr);
    ~TermColumn() override; // waits for the counting

    void begin(); // another book: its days
    void refresh(); // counts again, in its own time
    [[nodiscard]] KeepJob job() const; // without a file
    [[nodiscard]] int pages() const { return m_counted; } // 0 = nothing, or not counted yet
    [[nodiscard]] QWidget* firstStop() const { return m_from; }
    void setDays(QDate from, QDate to);
    void setAudience(Audience audience);

Q_SIGNALS:
    void packAsked();

private:
    void showCount(const Result<KeepOutcome>& planned);
    void chooseAudience();

    Session& m_session;
    Audience m_audience = Audience::Families;
    QLineEdit* m_from;
    QLineEdit* m_to;
    Button* m_for;
    QVector<QCheckBox*> m_parts;
    QVector<Label*> m_pages;
    Label* m_said;
    QThreadPool m_counter;
    int m_round = 0; // of counting, so that late answers are dropped
    int m_counted = 0;
};

} // namespace wainscot::ui
