// The panel as it would become if the hand let go: worked out off the window's thread, and only for
// the newest question.
#pragma once

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <memory>
#include <vector>

#include "app/ui/compose/rearrange.h"

namespace wainscot::ui {

class LivePage : public QObject {
    Q_OBJECT
public:
    explicit LivePage(QObject* parent = nullptr);
    ~LivePage() override;

    // `pieces`: the whole panel as tried, what is in the hand pinned.
    void ask(std::vector<Piece> pieces, Rearrangement arrangement);
    void forget(); // nothing is tried any more
    // What the same pieces became; null while it is worked out, or when there was no room.
    [[nodiscard]] const std::vector<Piece>* answerTo(const std::vector<Piece>& pieces) const;
    void waitForAnswer(); // for tests

Q_SIGNALS:
    void answered(const std::vector<wainscot::Piece>& pieces);
    void refused(const QString& why);

private:
    std::vector<Piece> m_question;
    std::vector<Piece> m_answer;
    bool m_asked = false;
    bool m_known = false;
    int m_round = 0; // late answers to earlier questions are dropped
    std::shared_ptr<std::atomic<bool>> m_cancel;
    QThreadPool m_worker;
};

} // namespace wainscot::ui
