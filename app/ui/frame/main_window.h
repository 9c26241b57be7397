// The window: menu line, rail, the place one is in, sill.
#pragma once

#include <QLabel>
#include <QMenuBar>
#include <QStackedWidget>

#include "app/jobs/export_job.h"
#include "app/jobs/gather.h"
#include "app/ui/compose/compose_place.h"
#include "app/ui/frame/rail.h"
#include "app/ui/frame/sill.h"
#include "app/ui/places/plain_place.h"
#include "app/ui/session/session.h"
#include "app/ui/session/work.h"

class QPrinter;

namespace wainscot::ui {

class MainWindow : public QWidget {
    Q_OBJECT
public:
    explicit MainWindow(QWidget* parent = nullptr);

    // Each asks nothing; the menus ask first.
    bool openBook(const QString& path);
    void beginBook(const QString& folder, const QString& title);
    void makeSample(const QString& folder);
    void gatherChildren(const QString& file);
    void gatherWords(const QString& file, const QString& experience);
    void gatherPhotos(const QString& folder, const QString& experience);
    void exportPdf(const QString& file);
    void exportSheets(const QString& file, const QString& paper); // its name: "A4"
    void eraseChild(const QString& name, bool sharedToo); // for good
    void packBook(const QString& file);
    void unpackBook(const QString& file, const QString& folder); // and opens it
    // Every panel of the display on a page of its own; false with a sentence in the sill.
    bool printTo(QPrinter& printer);

    void go(Place place);
    [[nodiscard]] Place place() const { return m_place; }
    void takeNextStep();
    [[nodiscard]] Session& session() { return m_session; }
    [[nodiscard]] Work& work() { return m_work; }
    [[nodiscard]] ComposePlace& compose() { return *m_compose; }
    [[nodiscard]] Sill& sill() { return *m_sill; }
    [[nodiscard]] Rail& rail() { return *m_rail; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void makeMenus();
    void makeBookMenu(QMenu& menu);
    void makeEditMenu(QMenu& menu);
    void makeGoMenu(QMenu& menu);
    void makeShowMenu(QMenu& menu);
    void makeHelpMenu(QMenu& menu);
    void moveRegion(int step);
    void chooseExperience();

    [[nodiscard]] static QString documents(); // where files are looked for first
    void askBegin();
    void askOpen();
    void askSample();
    void askChildren();
    void askWords();
    void askPhotos();
    void askExport();
    void askShopPdf(); // with bleed and crop marks
    void askSheets();
    void askPictures();
    void askErase();
    [[nodiscard]] ExportPdfJob pdfJob(const QString& file) const;
    [[nodiscard]] QString askFile(
        const QString& heading, const QString& suffix, const QString& filter);
    template <class Job> void startExport(const QString& doing, const Job& job);
    [[nodiscard]] QString sheetsInWords() const;
    void askPack();
    void askUnpack();
    void askPrint();
    [[nodiscard]] QString askExperience();
    void takeGathered(Result<GatherOutcome> result, const QString& what);
    void showKeys();

    void refresh(); // everything that is said about the book
    void refreshRail();
    void refreshSill();
    void refreshPlaces();
    void fillWelcome();
    void fillGather();
    void fillListen();
    void fillHang();
    void fillKeep();
    void sayCompose();

    Session m_session;
    Work m_work;
    QMenuBar* m_menus;
    QLabel* m_kept;
    Rail* m_rail;
    QStackedWidget* m_places;
    ComposePlace* m_compose;
    PlainPlace* m_plain; // every other place, and the window without a book
    Sill* m_sill;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    QVector<QAction*> m_needBook;
    QVector<QAction*> m_needPanel;
    Place m_place = Place::Compose;
    std::function<void()> m_nextStep;
};

} // namespace wainscot::ui
