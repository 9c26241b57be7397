// Hang, Print: how many sheets the panels take on the school's printer, what is set for it, and
// every way out of the book.
#pragma once

#include <QCheckBox>
#include <QLineEdit>
#include <QVBoxLayout>
#include <QWidget>

#include <functional>
#include <optional>
#include <utility>

#include "app/jobs/drawn_display.h"
#include "app/jobs/export_job.h"
#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/hang/sheets_picture.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/session.h"
#include "app/ui/session/sheet_settings.h"
#include "layout/paper/sheets.h"

namespace wainscot::ui {

class PrintPage : public QWidget {
    Q_OBJECT
public:
    PrintPage(Session& session, PictureShelf& pictures, QWidget* parent = nullptr);

    void refresh(const DrawnDisplay* drawn);
    [[nodiscard]] SheetWishes wishes() const;
    [[nodiscard]] QString paper() const;
    void setPaper(const QString& name); // "A4"; remembered for the printer
    // The sheets are for this one, or for any; what is set counts for it alone.
    void setPrinter(const QString& name);
    // In place of those the system knows.
    struct Printers {
        std::function<QStringList()> names = printerNames;
        std::function<PrinterFacts(const QString&)> facts = printerFacts;
    };
    void setPrinters(Printers printers) { m_printers = std::move(printers); }
    // What the 100 mm ruler of a printed first sheet measures, 90 to 110 mm; the next sheets are
    // drawn larger or smaller so that it measures 100.
    void setRuler(Mm measured);
    // The PDF at true size carries the display's data.
    [[nodiscard]] bool withData() const;
    // Of more than one panel: a PDF of its own for each, at true size and trimmed.
    [[nodiscard]] bool fileForEach() const { return m_panels > 1 && m_each->isChecked(); }
    [[nodiscard]] bool trimmedFileForEach() const
    {
        return m_panels > 1 && m_eachTrimmed->isChecked();
    }
    [[nodiscard]] QWidget* firstStop() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] int sheets() const; // of all panels, without the one that shows how they join
    // Of all panels' paper, how much pictures and grounds print on, 0 to 100.
    [[nodiscard]] int colouredPercent() const { return m_coloured; }

Q_SIGNALS:
    void changed();
    void sheetsAsked(); // as a PDF
    void printerAsked(); // the sheets straight to it
    void shopPdfAsked();
    void pdfAsked();
    void picturesAsked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void makeSettings(QVBoxLayout* column);
    void makeWays(QVBoxLayout* column);
    void choosePrinter();
    void choose(Button* button, SheetSetting setting, const QStringList& values);
    void sayPrinter();
    void say();
    // For all panels; empty where there is none, or the paper takes none.
    [[nodiscard]] std::vector<SheetPlan> plans() const;
    [[nodiscard]] static int sheetsOf(const std::vector<SheetPlan>& plans);

    Session& m_session;
    SheetsPicture* m_picture;
    Label* m_count;
    Label* m_detail;
    Printers m_printers;
    QCheckBox* m_white;
    Button* m_printer;
    Label* m_edge; // when the printer cannot reach as far as the margin says
    Button* m_paper;
    Button* m_overlap;
    Button* m_margin;
    QLineEdit* m_ruler;
    QCheckBox* m_withData;
    QCheckBox* m_each;
    QCheckBox* m_eachTrimmed;
    int m_panels = 0;
    int m_coloured = 0;
    SizeMm m_panelSize;
    std::vector<DisplayList> m_lists; // of all panels
    std::size_t m_at = 0; // the panel one is at
};

} // namespace wainscot::ui
