// The window: menu line, rail, the place one is in, sill.
#pragma once

#include <QLabel>
#include <QMenuBar>
#include <QStackedWidget>

#include "app/jobs/erase_job.h"
#include "app/jobs/export_job.h"
#include "app/jobs/gather.h"
#include "app/jobs/go_back.h"
#include "app/jobs/keep_job.h"
#include "app/jobs/sheets_job.h"
#include "app/ui/compose/compose_place.h"
#include "app/ui/first_steps/first_steps.h"
#include "app/ui/frame/rail.h"
#include "app/ui/frame/sill.h"
#include "app/ui/gather/gather_place.h"
#include "app/ui/hang/hang_place.h"
#include "app/ui/keep/keep_place.h"
#include "app/ui/listen/listen_place.h"
#include "app/ui/places/plain_place.h"
#include "app/ui/session/session.h"
#include "app/ui/session/work.h"
#include "core/voice/quote_finder.h"

class QPrinter;

namespace wainscot::ui {

class StepPictures;

class MainWindow : public QWidget {
    Q_OBJECT
public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    // Each asks nothing; the menus ask first.
    bool openBook(const QString& path);
    void beginBook(const QString& folder, const QString& title);
    void makeSample(const QString& folder);
    void gatherChildren(const QString& file);
    void gatherWords(const QString& file, const QString& experience);
    void gatherPhotos(const QString& folder, const QString& experience);
    void takePictures(const QStringList& files); // of the experience one is in
    void takeWallPhotos(const QStringList& files); // of the display one is at, as it hangs
    void attachPicture(const QString& file); // to the answer being taken down
    void beginExperience(const QString& title);
    // As set in Hang, Print: with data, a file for each panel.
    void exportPdf(const QString& file);
    void exportShopPdf(const QString& file); // with bleed and crop marks
    void exportSheets(const QString& file, const QString& paper); // its name: "A4"
    void exportSheets(const QString& file, const SheetWishes& wishes);
    // Of the display one is at; its name and folder are this book's. Suffix by form.
    void exportPictures(ExportPictureJob job);
    void takeLimits(const check::Limits& limits, Mm standsOut); // and checks again
    // For good; pictures that are kept covered are worked out off the window's thread.
    void eraseChild(const QString& name, SharedPictures shared);
    void packBook(const QString& file, const QString& phrase = {}); // empty: not locked
    // And opens it.
    void unpackBook(const QString& file, const QString& folder, const QString& phrase = {});
    void takeDataOut(const QString& folder);
    void bringDataIn(const QString& from, const QString& folder); // and opens it
    void keepUntil(const QString& day); // "2027-07-31"; empty = no day
    void goBackTo(const QString& state); // by its name; undone like any other step
    void repairBook(const QString& folder, const QString& newFolder); // and opens the new one
    // Every panel of the display on a page of its own; false with a sentence in the sill.
    bool printTo(QPrinter& printer);
    // The display in parts; false when the printer does not answer.
    bool printSheets(QPrinter& printer, const SheetWishes& wishes);
    // What hangs and lies about is asked for again when a family changes its mind.
    void rememberPrinted(Earlier earlier); // the display; joined = not all of its sheets
    void rememberPrinted(const SheetsJob& job); // the sheets to answer on
    void makeAnswerSheets(SheetsJob job); // with its file; the pictures are this book's
    // False when the printer does not answer.
    bool printAnswerSheets(QPrinter& printer, const std::vector<DisplayList>& pages);
    void keepTerm(KeepJob job); // with its file; the pictures are this book's

    void go(Place place);
    [[nodiscard]] Place place() const { return m_place; }
    void takeNextStep();
    void showFirstSteps();
    void showStep(FirstStep step); // the place it is done in
    [[nodiscard]] FirstSteps* firstSteps() const
    {
        return m_firstSteps;
    } // null before it was asked for
    [[nodiscard]] Session& session() { return m_session; }
    [[nodiscard]] Work& work() { return m_work; }
    [[nodiscard]] ComposePlace& compose() { return *m_compose; }
    [[nodiscard]] GatherPlace& gather() { return *m_gather; }
    [[nodiscard]] ListenPlace& listen() { return *m_listen; }
    [[nodiscard]] HangPlace& hang() { return *m_hang; }
    [[nodiscard]] KeepPlace& keep() { return *m_keep; }
    [[nodiscard]] Sill& sill() { return *m_sill; }
    [[nodiscard]] Rail& rail() { return *m_rail; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void makeMenus();
    void makeBookMenu(QMenu& menu);
    void makeEditMenu(QMenu& menu);
    void makeGoMenu(QMenu& menu);
    void makeListenMenu(QMenu& menu);
    void makeShowMenu(QMenu& menu);
    void makeLanguageMenu(QMenu& menu);
    void makeHelpMenu(QMenu& menu);
    void keepUnfinished(); // words half written, in every place
    void moveRegion(int step);
    void chooseExperience();

    [[nodiscard]] static QString documents(); // where files are looked for first
    void askBegin();
    void beginNamedBook(); // by the name written on the first page
    void askAboutBook();
    void askOpen();
    void askSample();
    void askChildren();
    void askWords();
    void askPhotos();
    void askPicture();
    void askPictureFiles();
    QStringList askPicturePaths(const QString& title); // empty = thought better of it
    void askNewExperience();
    void askExport();
    void askShopPdf(); // with bleed and crop marks
    void askSheets();
    void askAnswerSheets();
    void noteWhatYouSee();
    void askPictures();
    void askLimits(const QString& rule); // the one one comes from; empty = all
    void askErase();
    void eraseNow(const QString& name, const KeptPictures& kept);
    [[nodiscard]] ExportPdfJob pdfJob(const QString& file) const;
    [[nodiscard]] QString askFile(
        const QString& heading, const QString& suffix, const QString& filter);
    [[nodiscard]] bool mayReplaceFurther(const QString& file); // asks, where there are any
    template <class Job> void startExport(const QString& doing, const Job& job);
    void askPack();
    void askUnpack();
    void askTakeDataOut();
    void askBringDataIn();
    void askFind();
    void goToWords(QuoteId id);
    void askGoBack();
    void offerDays(const std::vector<EarlierDay>& days);
    void askRepair();
    void askKeepUntil();
    [[nodiscard]] QStringList toTakeDown() const; // what panels show against a family's word
    void tellRepaired(const QStringList& problems);
    void askPrint();
    [[nodiscard]] QString askExperience();
    void takeGathered(Result<GatherOutcome> result, const QString& what);
    void showKeys();

    void refresh(); // everything that is said about the book
    void refreshRail();
    void refreshSill();
    void sayToWait(); // for the work that is running
    void refreshPlaces();
    void fillWelcome();
    void makeGather();
    [[nodiscard]] QWidget* shownPlace() const;
    [[nodiscard]] QWidget* firstStop() const;
    void sayGather();
    void connectHang();
    void refreshHang();
    void sayHang();
    void goToPiece(int panel, PieceId piece);
    void askPrintSheets();
    void askTerm();
    void connectKeep();
    void fillKeep();
    void sayKeep();
    void sayCompose();
    void sayListen();

    Session m_session;
    Work m_work;
    QMenuBar* m_menus;
    QLabel* m_kept;
    Rail* m_rail;
    QStackedWidget* m_places;
    ComposePlace* m_compose;
    GatherPlace* m_gather;
    ListenPlace* m_listen;
    HangPlace* m_hang;
    KeepPlace* m_keep;
    PlainPlace* m_plain; // the window without a book
    QPointer<QLineEdit> m_className; // on the first page
    Sill* m_sill;
    FirstSteps* m_firstSteps = nullptr;
    StepPictures* m_stepPictures = nullptr;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    QVector<QAction*> m_needBook;
    QVector<QAction*> m_needPanel;
    Place m_place = Place::Compose;
    QuoteFinder m_finder; // follows the book when something is looked for
    QStringList m_notSaved; // when the open book was repaired or made of data
    std::function<void()> m_nextStep;
};

} // namespace wainscot::ui
