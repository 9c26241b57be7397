// Sheets to answer on: for whom, in which languages, on what paper; each page is shown as it will
// be printed.
#pragma once

#include <QCheckBox>
#include <QDialog>

#include "app/jobs/sheets_job.h"
#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/session.h"

class QVBoxLayout;

namespace wainscot::ui {

// One page on white paper, as large as there is room.
class SheetPreview : public QWidget {
    Q_OBJECT
public:
    explicit SheetPreview(PictureShelf& shelf, QWidget* parent = nullptr);
    void setPage(const DisplayList& page);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    PictureShelf& m_shelf;
    DisplayList m_page;
};

class SheetsDialog : public QDialog {
    Q_OBJECT
public:
    // REQUIRES: an experience is chosen
    SheetsDialog(Session& session, PictureShelf& shelf, QWidget* parent = nullptr);

    [[nodiscard]] SheetsJob job() const; // without a file
    [[nodiscard]] const std::vector<DisplayList>& pages() const { return m_pages; }
    [[nodiscard]] bool wantsPrinter() const { return m_wantsPrinter; } // else a PDF
    void setChild(const QString& name); // empty = the whole class
    void showPage(int page); // from 0
    [[nodiscard]] QCheckBox& forChildren() { return *m_forChildren; }
    [[nodiscard]] QCheckBox& forScribe() { return *m_forScribe; }
    [[nodiscard]] QCheckBox& twoOnPage() { return *m_two; }
    [[nodiscard]] QCheckBox& lines() { return *m_lines; }
    [[nodiscard]] Button& makePdf() { return *m_pdf; }
    [[nodiscard]] Button& print() { return *m_print; }
    [[nodiscard]] QString said() const { return m_said->text(); }

private:
    [[nodiscard]] QWidget* makeChoices();
    [[nodiscard]] QWidget* makePreview();
    void addLanguages(QVBoxLayout& column);
    QCheckBox* addBox(QVBoxLayout& column, const QString& text, bool on);
    void chooseChild();
    void choosePaper();
    void setLetter(bool letter);
    void refresh();

    Session& m_session;
    PictureShelf& m_shelf;
    QString m_child;
    bool m_letter = false;
    bool m_wantsPrinter = false;
    int m_shown = 0;
    std::vector<DisplayList> m_pages;
    Button* m_for = nullptr;
    Button* m_paper = nullptr;
    QCheckBox* m_forChildren = nullptr;
    QCheckBox* m_forScribe = nullptr;
    QCheckBox* m_two = nullptr;
    QCheckBox* m_lines = nullptr;
    QVector<QCheckBox*> m_languages;
    QStringList m_codes; // of the languages, BCP 47
    Label* m_said = nullptr;
    SheetPreview* m_preview = nullptr;
    Button* m_before = nullptr;
    Button* m_after = nullptr;
    QLabel* m_at = nullptr;
    Button* m_pdf = nullptr;
    Button* m_print = nullptr;
};

} // namespace wainscot::ui
