#include "app/ui/frame/step_pictures.h"

#include <QStandardPaths>
#include <QTimer>

#include "app/jobs/guide_book.h"
#include "app/jobs/sentences.h"
#include "app/ui/frame/main_window.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

// What was put in has its place only after the event loop has come round a few times.
constexpr int kSettleMs = 60;

QString guideFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)
        + QStringLiteral("/guide");
}

} // namespace

StepPictures::StepPictures(QObject* parent)
    : QObject(parent)
{
}

StepPictures::~StepPictures() = default;

void StepPictures::make()
{
    if (isMaking())
        return;
    m_work.start<QString>(
        tr("Making the pictures of the guide"),
        [job = GuideBookJob{guideFolder()}](const JobRun& run) { return job.run(run); },
        [this](Result<QString> book) {
            if (book)
                open(*book);
            else
                Q_EMIT failed(sentenceFor(book.error()));
        });
}

void StepPictures::open(const QString& book)
{
    m_window = std::make_unique<MainWindow>();
    m_window->setAttribute(Qt::WA_DontShowOnScreen);
    m_window->setAttribute(Qt::WA_QuitOnClose, false);
    m_window->resize(scaled(1280), scaled(880));
    m_window->show();
    if (!m_window->openBook(book)) {
        m_window.reset();
        Q_EMIT failed(tr("The sample class could not be opened."));
        return;
    }
    m_taken = 0;
    takeNext();
}

void StepPictures::takeNext()
{
    if (m_taken == kFirstSteps.size()) {
        m_window.reset();
        return;
    }
    const FirstStep step = kFirstSteps[m_taken++];
    m_window->showStep(step);
    QTimer::singleShot(kSettleMs, this, [this, step] {
        m_window->compose().shelf().waitForAll();
        // What was waited for is put in when the events it left have been seen to.
        QTimer::singleShot(kSettleMs, this, [this, step] { grab(step); });
    });
}

void StepPictures::grab(FirstStep step)
{
    const int top = m_window->rail().geometry().top();
    const int bottom = m_window->sill().geometry().top();
    Q_EMIT made(step, m_window->grab(QRect(0, top, m_window->width(), bottom - top)));
    takeNext();
}

} // namespace wainscot::ui
