// Hang: what the place asks of the window.
#include "app/ui/frame/main_window.h"

#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QPrinterInfo>

#include "app/jobs/gather_files.h"
#include "app/jobs/kept_limits.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "app/ui/hang/limits_dialog.h"
#include "app/ui/hang/sheet_printer.h"
#include "app/ui/session/sheet_settings.h"

namespace wainscot::ui {

void MainWindow::connectHang()
{
    connect(m_hang, &HangPlace::stateChanged, this, &MainWindow::refreshSill);
    connect(m_hang, &HangPlace::announced, m_sill, &Sill::announce);
    connect(&m_hang->check(), &CheckPage::pieceAsked, this, [this](int panel, PieceId piece) {
        goToPiece(panel, piece);
    });
    connect(&m_hang->check(), &CheckPage::mendAsked, this, [this](const Finding& finding) {
        if (mendFor(m_session.book(), finding).way == MendWay::Write)
            go(Place::Compose);
        m_compose->mend(finding);
    });
    connect(&m_hang->check(), &CheckPage::limitsAsked, this, &MainWindow::askLimits);
    const ComposePlace::Actions& actions = m_compose->actions();
    connect(actions.mend, &QAction::triggered, this, [this] {
        if (shownPlace() == m_hang && m_hang->task() == HangPlace::Task::Check)
            m_hang->check().mendCurrent();
    });
    for (const auto& [action, step] :
        {std::pair(actions.nextFinding, 1), std::pair(actions.earlierFinding, -1)}) {
        connect(action, &QAction::triggered, this, [this, step = step] {
            if (shownPlace() != m_hang)
                return;
            m_hang->setTask(HangPlace::Task::Check);
            m_hang->check().goTo(step);
        });
    }
    connect(&m_hang->wall(), &WallPage::photosGiven, this, [this](const QStringList& files) {
        takeWallPhotos(files.isEmpty() ? askPicturePaths(tr("Add a photo of the wall")) : files);
    });
    PrintPage& print = m_hang->print();
    connect(&print, &PrintPage::sheetsAsked, this, &MainWindow::askSheets);
    connect(&print, &PrintPage::printerAsked, this, &MainWindow::askPrintSheets);
    connect(&print, &PrintPage::shopPdfAsked, this, &MainWindow::askShopPdf);
    connect(&print, &PrintPage::pdfAsked, this, &MainWindow::askExport);
    connect(&print, &PrintPage::picturesAsked, this, &MainWindow::askPictures);
    // The seams are elsewhere on other paper.
    connect(&print, &PrintPage::changed, &m_compose->desk(), &Desk::checkAgain);
}

void MainWindow::askLimits(const QString& rule)
{
    LimitsDialog dialog(keptLimits(), keptStandOut(), rule, this);
    if (dialog.exec() == QDialog::Accepted)
        takeLimits(dialog.limits(), dialog.standsOut());
}

void MainWindow::takeLimits(const check::Limits& limits, Mm standsOut)
{
    keepLimits(limits);
    keepStandOut(standsOut);
    m_compose->desk().checkAgain();
    refreshHang();
    m_sill->announce(tr("The limits are kept on this computer."));
}

// Whoever stands in front of it is said where all pictures are looked at.
void MainWindow::takeWallPhotos(const QStringList& files)
{
    if (files.isEmpty() || m_session.display() == nullptr)
        return;
    GatherFilesJob job;
    job.files = files;
    job.ofWall = m_session.display()->id;
    job.mostPages = 1;
    job.picturesFolder = m_session.picturesFolder();
    m_work.start<GatheredFiles>(
        tr("Taking in the photo"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        [this](Result<GatheredFiles> result) {
            if (!result || result->pictures.empty()) {
                m_sill->announce(
                    !result ? sentenceFor(result.error()) : result->outcome.skipped.front().why);
                return;
            }
            result->outcome.edit.label = tr("Photo of the wall");
            if (!m_session.perform(std::move(result->outcome.edit)))
                return;
            m_session.chooseExperience(
                m_session.book().pictures.find(result->pictures.front())->experience);
            go(Place::Gather);
            m_gather->go(GatherPart::Pictures);
            m_gather->pictures().choose(result->pictures.front());
            m_sill->announce(
                tr("Say who stands in front of it; then the term's file can show it."));
        });
}

void MainWindow::refreshHang()
{
    m_hang->refresh(m_compose->desk().drawn(), m_compose->desk().findings());
}

void MainWindow::goToPiece(int panel, PieceId piece)
{
    const Display* display = m_session.display();
    if (display == nullptr)
        return;
    for (const Panel* one : panelsOf(m_session.book(), display->id)) {
        if (one->number == panel)
            m_session.choosePanel(one->id);
    }
    go(Place::Compose);
    if (piece.isValid())
        m_compose->canvas().takeInHand(piece);
}

void MainWindow::sayHang()
{
    m_sill->say(m_hang->done(), m_hang->missing());
    const int sheets = m_hang->print().sheets();
    if (m_session.panel() == nullptr) {
        m_nextStep = [this] { go(Place::Compose); };
        m_sill->setNext(tr("Go to Compose"));
    } else if (m_hang->task() == HangPlace::Task::Print) {
        m_nextStep = [this] { askPrintSheets(); };
        m_sill->setNext(tr("Print %1").arg(counted(sheets, tr("1 sheet"), tr("%1 sheets"))));
    } else {
        m_nextStep = [this] { m_hang->setTask(HangPlace::Task::Print); };
        m_sill->setNext(tr("Print %1").arg(counted(sheets, tr("1 sheet"), tr("%1 sheets"))));
    }
}

void MainWindow::askPrintSheets()
{
    if (m_session.panel() == nullptr)
        return;
    const SheetWishes wishes = m_hang->print().wishes();
    const QPrinterInfo chosen = QPrinterInfo::printerInfo(keptPrinter());
    QPrinter printer(
        chosen.isNull() ? QPrinterInfo::defaultPrinter() : chosen, QPrinter::HighResolution);
    setSheetPaper(printer, m_session.display()->panelSize, wishes);
    QPrintPreviewDialog preview(&printer, this);
    preview.setWindowTitle(tr("Sheets"));
    const auto print = [this, wishes, from = printer.printerName()](QPrinter* to) {
        if (!printSheets(*to, sheetsAfterTurning(wishes, from, to->printerName())))
            m_sill->announce(tr("The printer does not answer."));
    };
    connect(&preview, &QPrintPreviewDialog::paintRequested, this, print);
    if (preview.exec() != QDialog::Accepted)
        return;
    rememberPrinted(printer.fromPage() == 0 ? Earlier::Replaced : Earlier::Joined);
    m_sill->announce(tr("Sent to the printer. Measure the ruler on the first sheet."));
}

void MainWindow::rememberPrinted(Earlier earlier)
{
    const DrawnDisplay* drawn = m_compose->desk().drawn();
    if (drawn == nullptr)
        return;
    rememberMade(m_session.folder(),
        madeFileOf(m_session.book(),
            drawn->display,
            drawn->clearedPanels(),
            MadeFileKind::PrintedPanels,
            drawn->display.name,
            m_session.today()),
        earlier);
}

bool MainWindow::printSheets(QPrinter& printer, const SheetWishes& wishes)
{
    const DrawnDisplay* drawn = m_compose->desk().drawn();
    PrintedPictures pictures(m_session);
    return drawn != nullptr && wainscot::ui::printSheets(printer, *drawn, wishes, pictures);
}

} // namespace wainscot::ui
