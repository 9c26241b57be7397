#include "app/ui/compose/live_page.h"

#include <QCoreApplication>

namespace wainscot::ui {

LivePage::LivePage(QObject* parent)
    : QObject(parent)
{
    m_worker.setMaxThreadCount(1);
}

LivePage::~LivePage()
{
    forget();
    m_worker.waitForDone();
}

void LivePage::ask(std::vector<Piece> pieces, Rearrangement arrangement)
{
    if (m_asked && m_question == pieces)
        return;
    forget();
    m_asked = true;
    m_question = std::move(pieces);
    m_cancel = std::make_shared<std::atomic<bool>>(false);
    m_worker.start(
        [this, arrangement = std::move(arrangement), cancel = m_cancel, round = m_round] {
            JobRun run;
            run.cancel = cancel.get();
            auto result = std::make_shared<Result<std::vector<Piece>>>(arrangement.run(run));
            QMetaObject::invokeMethod(
                this,
                [this, result, round] {
                    if (round != m_round)
                        return;
                    if (!result->ok()) {
                        Q_EMIT refused(result->error().detail);
                        return;
                    }
                    m_answer = std::move(*result).value();
                    m_known = true;
                    Q_EMIT answered(m_answer);
                },
                Qt::QueuedConnection);
        });
}

void LivePage::forget()
{
    if (m_cancel)
        *m_cancel = true;
    m_worker.clear();
    ++m_round;
    m_asked = false;
    m_known = false;
}

const std::vector<Piece>* LivePage::answerTo(const std::vector<Piece>& pieces) const
{
    return m_known && m_question == pieces ? &m_answer : nullptr;
}

void LivePage::waitForAnswer()
{
    m_worker.waitForDone();
    QCoreApplication::processEvents();
}

} // namespace wainscot::ui
