// What is asked before something is begun, and the work that follows.
#include "app/ui/frame/main_window.h"

#include <QDir>
#include <QFileDialog>
#include <QInputDialog>
#include <QMenu>
#include <QPageLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QStandardPaths>

#include "app/jobs/book_jobs.h"
#include "app/jobs/export_job.h"
#include "app/jobs/sentences.h"
#include "core/media/bake.h"

namespace wainscot::ui {

namespace {

// Pictures for the printer: baked from the original at the size they are printed.
class PrintedPictures final : public PictureProvider {
public:
    explicit PrintedPictures(Session& session)
        : m_session(session)
    {
    }
    [[nodiscard]] ProvidedPicture picture(const ClearedPicture& picture, SizePx wanted) override
    {
        const PictureRecipe recipe{m_session.originalPath(picture.sha256),
            picture.format,
            picture.orientation,
            picture.size,
            picture.visible,
            picture.treatment};
        const Result<QImage> baked = bakeImage(recipe, wanted);
        return {baked.ok() ? *baked : QImage(), picture.visible};
    }

private:
    Session& m_session;
};

} // namespace

void MainWindow::askBegin()
{
    bool ok = false;
    const QString title = QInputDialog::getText(
        this, tr("Begin a book"), tr("Name of the class"), QLineEdit::Normal, {}, &ok);
    if (!ok || title.trimmed().isEmpty())
        return;
    const QString folder = QFileDialog::getSaveFileName(this,
        tr("A folder for the book"),
        documents() + QLatin1Char('/') + title.trimmed(),
        {},
        nullptr,
        QFileDialog::DontConfirmOverwrite);
    if (!folder.isEmpty())
        beginBook(folder, title.trimmed());
}

void MainWindow::beginBook(const QString& folder, const QString& title)
{
    const Result<> made = NewBookJob{folder, title}.run({});
    if (!made)
        m_sill->announce(sentenceFor(made.error()));
    else
        openBook(folder);
}

QString MainWindow::documents()
{
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void MainWindow::askOpen()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Open a book"), documents(), tr("Books (book.wainscot)"));
    if (!file.isEmpty())
        openBook(file);
}

void MainWindow::askSample()
{
    makeSample(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)
        + QStringLiteral("/sample"));
}

void MainWindow::makeSample(const QString& folder)
{
    SampleJob job;
    job.folder = folder;
    m_work.start<SampleOutcome>(
        tr("Making the sample class"),
        [job](const JobRun& run) { return job.run(run); },
        [this](Result<SampleOutcome> result) {
            if (result)
                openBook(result->book);
            else
                m_sill->announce(sentenceFor(result.error()));
        });
}

QString MainWindow::askExperience()
{
    QStringList titles;
    for (const auto& [id, experience] : m_session.book().experiences.rows())
        titles << experience.title;
    bool ok = false;
    const QString title = QInputDialog::getItem(this,
        tr("Which experience?"),
        tr("What happened: choose, or write a new title"),
        titles,
        0,
        true,
        &ok);
    return ok ? title.trimmed() : QString();
}

void MainWindow::askChildren()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Gather a class list"), documents(), tr("Tables (*.csv *.tsv *.txt)"));
    if (!file.isEmpty())
        gatherChildren(file);
}

void MainWindow::askWords()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Gather words"), documents(), tr("Tables (*.csv *.tsv *.txt)"));
    const QString experience = file.isEmpty() ? QString() : askExperience();
    if (!experience.isEmpty())
        gatherWords(file, experience);
}

void MainWindow::askPhotos()
{
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Gather pictures"), documents());
    const QString experience = folder.isEmpty() ? QString() : askExperience();
    if (!experience.isEmpty())
        gatherPhotos(folder, experience);
}

void MainWindow::takeGathered(Result<GatherOutcome> result, const QString& what)
{
    if (!result) {
        m_sill->announce(sentenceFor(result.error()));
        return;
    }
    result->edit.label = what;
    if (!m_session.perform(std::move(result->edit)))
        return;
    QString said = tr("%1: %2 new, %3 changed.").arg(what).arg(result->added).arg(result->updated);
    if (!result->skipped.empty()) {
        said += QLatin1Char(' ') + tr("Left out: %1. ").arg(result->skipped.size())
            + result->skipped.front().why;
    }
    m_sill->announce(said);
}

void MainWindow::gatherChildren(const QString& file)
{
    GatherChildrenJob job{file};
    m_work.start<GatherOutcome>(
        tr("Reading the class list"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](Result<GatherOutcome> r) { takeGathered(std::move(r), tr("Class list")); });
}

void MainWindow::gatherWords(const QString& file, const QString& experience)
{
    GatherQuotesJob job;
    job.file = file;
    job.experience = experience;
    m_work.start<GatherOutcome>(
        tr("Reading the words"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](Result<GatherOutcome> r) { takeGathered(std::move(r), tr("Words")); });
}

void MainWindow::gatherPhotos(const QString& folder, const QString& experience)
{
    GatherPhotosJob job;
    job.folder = folder;
    job.experience = experience;
    job.picturesFolder = m_session.picturesFolder();
    m_work.start<GatherOutcome>(
        tr("Gathering pictures"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](Result<GatherOutcome> r) { takeGathered(std::move(r), tr("Pictures")); });
}

void MainWindow::askPrint()
{
    if (m_session.panel() == nullptr)
        return;
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print"));
    if (dialog.exec() == QDialog::Accepted && printTo(printer))
        m_sill->announce(tr("Sent to the printer."));
}

bool MainWindow::printTo(QPrinter& printer)
{
    const DrawnDisplay* drawn = m_compose->desk().drawn();
    if (drawn == nullptr)
        return false;
    PrintedPictures pictures(m_session);
    QPainter painter;
    for (const DrawnPanel& panel : drawn->panels) {
        const SizeMm size = panel.cleared.size();
        printer.setPageOrientation(
            size.width > size.height ? QPageLayout::Landscape : QPageLayout::Portrait);
        if (!painter.isActive() ? !painter.begin(&printer) : !printer.newPage()) {
            m_sill->announce(tr("The printer does not answer."));
            return false;
        }
        // True size where the paper is large enough, else as large as the paper allows.
        const QRectF paper = printer.pageLayout().paintRect(QPageLayout::Millimeter);
        const double share = std::min(
            {1.0, paper.width() / size.width.value(), paper.height() / size.height.value()});
        painter.resetTransform();
        const double scale = printer.resolution() / kMmPerInch * share;
        painter.scale(scale, scale);
        const Result<> painted = paint(painter, panel.list, pictures, PaintPurpose::Output);
        if (!painted) {
            m_sill->announce(sentenceFor(painted.error()));
            return false;
        }
    }
    return painter.isActive();
}

void MainWindow::chooseExperience()
{
    QMenu menu(this);
    for (const auto& [id, experience] : m_session.book().experiences.rows()) {
        QAction* one = menu.addAction(experience.title);
        one->setCheckable(true);
        one->setChecked(m_session.experience() != nullptr && m_session.experience()->id == id);
        connect(one, &QAction::triggered, this, [this, chosen = id] {
            m_session.chooseExperience(chosen);
        });
    }
    Button* button = m_rail->experience();
    menu.exec(button->mapToGlobal(QPoint(0, button->height())));
}

} // namespace wainscot::ui
