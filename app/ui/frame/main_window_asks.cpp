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
#include <QRegularExpression>
#include <QStandardPaths>

#include "app/jobs/book_jobs.h"
#include "app/jobs/export_job.h"
#include "app/jobs/gather_common.h"
#include "app/jobs/gather_files.h"
#include "app/jobs/group_edits.h"
#include "app/jobs/sentences.h"
#include "app/ui/frame/book_sheet.h"
#include "app/ui/hang/sheet_printer.h"
#include "app/ui/languages/languages.h"

namespace wainscot::ui {

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

void MainWindow::beginNamedBook()
{
    const QString title = m_className != nullptr ? m_className->text().simplified() : QString();
    // A name that cannot be one of a folder needs a folder of another name.
    static const QRegularExpression unfit(QStringLiteral("[/\\\\:*?\"<>|]|^\\.|\\.$"));
    if (title.isEmpty() && m_className != nullptr)
        m_className->setFocus(Qt::OtherFocusReason);
    else if (title.contains(unfit))
        m_sill->announce(tr("A folder cannot be called so. Begin it from the menu Book."));
    else
        beginBook(documents() + QLatin1Char('/') + title, title);
}

void MainWindow::beginBook(const QString& folder, const QString& title)
{
    if (m_work.isBusy()) { // as openBook, before a folder is made
        sayToWait();
        return;
    }
    const Result<> made = NewBookJob{folder, title, usualWallLanguage()}.run({});
    if (!made)
        m_sill->announce(sentenceFor(made.error()));
    else
        openBook(folder);
}

QString MainWindow::documents()
{
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void MainWindow::askAboutBook()
{
    BookSheet(m_session, this).exec();
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

void MainWindow::askPicture()
{
    const QString file = QFileDialog::getOpenFileName(this,
        tr("A photo or scan of the sheet"),
        documents(),
        tr("Pictures and scans (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.pdf)"));
    if (!file.isEmpty())
        attachPicture(file);
}

void MainWindow::attachPicture(const QString& file)
{
    CaptureDesk& desk = m_gather->words().desk();
    if (desk.child() == nullptr || m_session.experience() == nullptr)
        return;
    GatherFilesJob job;
    job.files = {file};
    job.experience = m_session.experience()->id;
    job.picturesFolder = m_session.picturesFolder();
    job.kind = PictureKind::Work;
    job.people = {true, {desk.child()->id}};
    job.mostPages = 1; // the other sheets of a pile are other children's
    m_work.start<GatheredFiles>(
        tr("Taking in the sheet"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this, child = desk.child()->id](Result<GatheredFiles> result) {
            if (!result || result->pictures.empty()) {
                m_sill->announce(
                    !result ? sentenceFor(result.error()) : result->outcome.skipped.front().why);
                return;
            }
            CaptureDesk& now = m_gather->words().desk();
            const bool same = now.child() != nullptr && now.child()->id == child;
            if (m_session.perform(std::move(result->outcome.edit)) && same)
                now.attach(result->pictures.front());
        });
}

QStringList MainWindow::askPicturePaths(const QString& title)
{
    return QFileDialog::getOpenFileNames(this,
        title,
        documents(),
        tr("Pictures and scans (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.pdf)"));
}

void MainWindow::askPictureFiles()
{
    const QStringList files = askPicturePaths(tr("Add pictures"));
    if (!files.isEmpty())
        takePictures(files);
}

void MainWindow::takePictures(const QStringList& files)
{
    if (m_session.experience() == nullptr) {
        m_sill->announce(tr("Begin something new first: pictures belong to what happened."));
        return;
    }
    GatherFilesJob job;
    job.files = files;
    job.experience = m_session.experience()->id;
    job.picturesFolder = m_session.picturesFolder();
    m_work.start<GatherOutcome>(
        tr("Gathering pictures"),
        [job, book = m_session.book()](const JobRun& run) -> Result<GatherOutcome> {
            auto gathered = job.run(book, run);
            if (!gathered)
                return gathered.error();
            return std::move(gathered->outcome);
        },
        [this](Result<GatherOutcome> r) { takeGathered(std::move(r), tr("Pictures")); });
}

void MainWindow::askNewExperience()
{
    bool ok = false;
    const QString title = QInputDialog::getText(this,
        tr("Begin something new"),
        tr("What happened? Give it a name."),
        QLineEdit::Normal,
        {},
        &ok);
    if (ok && !title.trimmed().isEmpty())
        beginExperience(title.simplified());
}

void MainWindow::beginExperience(const QString& title)
{
    EditBuilder edit(m_session.book(), tr("Begin: %1").arg(title));
    const GatheredExperience made = experienceFor(m_session.book(), edit, title, m_session.today());
    if (!m_session.perform(edit.take()))
        return;
    m_session.chooseExperience(made.experience.id);
    go(Place::Gather);
}

namespace {

std::vector<QuoteId> newQuotesIn(const Edit& edit)
{
    std::vector<QuoteId> added;
    for (const Change& change : edit.changes) {
        const auto* quote = std::get_if<ValueChange<Quote>>(&change);
        if (quote != nullptr && !quote->before)
            added.push_back(quote->id);
    }
    return added;
}

} // namespace

void MainWindow::takeGathered(Result<GatherOutcome> result, const QString& what)
{
    if (!result) {
        m_sill->announce(sentenceFor(result.error()));
        return;
    }
    result->edit.label = what;
    result->edit.gesture = m_session.newGesture();
    const int gesture = result->edit.gesture;
    const std::vector<QuoteId> taken = newQuotesIn(result->edit);
    if (!m_session.perform(std::move(result->edit)))
        return;
    m_session.perform(joinLikeOnesEdit(m_session.book(), taken, what, gesture));
    QString said = tr("%1: %2 new, %3 changed.").arg(what).arg(result->added).arg(result->updated);
    if (!result->skipped.empty()) {
        said += QLatin1Char(' ') + tr("Left out: %1. ").arg(result->skipped.size())
            + result->skipped.front().why;
    }
    if (!result->remarks.empty())
        said += QLatin1Char(' ') + result->remarks.front();
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
    if (dialog.exec() != QDialog::Accepted || !printTo(printer))
        return;
    rememberPrinted(Earlier::Replaced);
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
    menu.addSeparator();
    menu.addAction(tr("Begin something new..."), this, [this] { askNewExperience(); });
    Button* button = m_rail->experience();
    menu.exec(button->mapToGlobal(QPoint(0, button->height())));
}

} // namespace wainscot::ui
