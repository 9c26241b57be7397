// Hang, Check: everything that was found, by panel, with measure, limit and source.
#pragma once

#include <QVBoxLayout>
#include <QWidget>

#include <functional>
#include <vector>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/session.h"
#include "core/base/finding.h"

namespace wainscot::ui {

class CheckPage : public QWidget {
    Q_OBJECT
public:
    explicit CheckPage(Session& session, QWidget* parent = nullptr);

    void show(const std::vector<Finding>& findings);
    void goTo(int step); // the next finding, or the one before
    void mendCurrent(); // the finding one is at, else the first
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }
    [[nodiscard]] QString summary() const;
    // "Leave it, and say why": kept with the panel; a reason that is empty takes it back.
    void leave(const Finding& finding, const QString& why);

Q_SIGNALS:
    void pieceAsked(int panel, PieceId piece); // to be looked at in Compose
    void mendAsked(const wainscot::Finding& finding);
    void limitsAsked(const QString& rule); // empty = all of them
    void announced(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void addFinding(std::size_t at);
    void addRest(int children); // who was heard and does not speak, beyond the first few
    void addLimits();
    [[nodiscard]] QWidget* makeButtons(std::size_t at, const QString& why);
    void addButton(QBoxLayout& row,
        Button::Form form,
        const QString& text,
        std::size_t at,
        const std::function<void()>& does);
    void askWhy(const Finding& finding);
    [[nodiscard]] QString leftBecause(const Finding& finding) const;
    [[nodiscard]] int current() const; // finding whose buttons have the keyboard; -1 = none

    Session& m_session;
    std::vector<Finding> m_findings;
    QScrollArea* m_area = nullptr;
    QVBoxLayout* m_column = nullptr;
    QVector<QWidget*> m_stops;
    QVector<int> m_findingOfStop;
    QVector<QWidget*> m_more; // buttons that belong to no single finding
    Rover* m_rover;
    int m_left = 0; // findings somebody left as they are
    bool m_everyChild = false; // also beyond the first few
};

} // namespace wainscot::ui
