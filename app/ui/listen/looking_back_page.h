// Looking back: what the adults ask themselves after an experience, and what comes of it.
#pragma once

#include <QPlainTextEdit>
#include <QScrollArea>

#include "app/ui/kit/rover.h"
#include "app/ui/listen/goals_card.h"
#include "app/ui/places/task_page.h"
#include "app/ui/session/session.h"

class QVBoxLayout;

namespace wainscot::ui {

class LookingBackPage : public TaskPage {
    Q_OBJECT
public:
    explicit LookingBackPage(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] Saying saying() override;
    void refresh() override;
    void leave() override; // keeps what is being written
    [[nodiscard]] QWidget* firstStop() const override;

    void makeNextExperience();
    [[nodiscard]] const QVector<QPlainTextEdit*>& fields() const { return m_fields; }
    [[nodiscard]] GoalsCard& goals() { return *m_goals; }
    [[nodiscard]] QPlainTextEdit& questionField() { return *m_question; }

Q_SIGNALS:
    void wallAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Asked {
        ReflectionId id; // invalid: not answered yet
        QString prompt; // the children were asked it too
        QString question;
        QString answer;
    };
    [[nodiscard]] std::vector<Asked> questions() const;
    void addQuestion(const Asked& asked, int order);
    void addNextSteps(const Experience& experience);
    void addGoals();
    QPlainTextEdit* addField(const QString& name, const QString& text, int lines);
    void keep(const QPlainTextEdit* field);
    void keepAnswer(const Asked& asked, int order, const QString& answer);

    Session& m_session;
    QVBoxLayout* m_outer;
    QScrollArea* m_area = nullptr;
    QVBoxLayout* m_column = nullptr;
    ExperienceId m_shown;
    QVector<QPlainTextEdit*> m_fields;
    std::vector<std::function<void(const QString&)>> m_keepers; // one for each field
    QPlainTextEdit* m_question = nullptr; // a further one
    GoalsCard* m_goals = nullptr;
    bool m_isKeeping = false;
};

// The questions that are ready: who found it hard, what surprised, where it leads.
[[nodiscard]] QStringList questionsForLookingBack();

} // namespace wainscot::ui
