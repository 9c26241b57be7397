// What the plain places say about the book.
#include "app/ui/frame/main_window.h"

#include <QDir>

#include "app/jobs/show_job.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

void MainWindow::refreshPlaces()
{
    if (!m_session.isOpen()) {
        fillWelcome();
        return;
    }
    switch (m_place) {
    case Place::Gather:
        fillGather();
        break;
    case Place::Listen:
        fillListen();
        break;
    case Place::Hang:
        fillHang();
        break;
    case Place::Keep:
        fillKeep();
        break;
    case Place::Compose:
        break;
    }
}

void MainWindow::fillWelcome()
{
    m_plain->begin(tr("A book holds one class for one year."),
        tr("Words, pictures and panels stay in one folder on this computer."));
    m_plain->add({tr("Begin a book"),
        {tr("An empty folder, and the name of your class.")},
        tr("Begin a book"),
        Icon::Plus,
        [this] { askBegin(); }});
    m_plain->add({tr("Open a book"),
        {tr("A folder with the file book.wainscot in it.")},
        tr("Open a book"),
        Icon::Sheet,
        [this] { askOpen(); }});
    m_plain->add({tr("Look at a sample class"),
        {tr("An invented class with its words, drawings and photos, made on this computer.")},
        tr("Look at a sample class"),
        Icon::Look,
        [this] { askSample(); }});
    m_plain->end();
}

void MainWindow::fillGather()
{
    const auto shown = ShowJob{}.run(m_session.book(), {});
    const Book& book = m_session.book();
    m_plain->begin(tr("Who is here, what was asked, what they said and made."),
        tr("In this version class, words and pictures come from files. Taking words down here "
           "comes later."));
    QStringList names;
    for (const auto& [id, child] : book.children.rows())
        names << displayName(child);
    m_plain->add({names.isEmpty()
            ? tr("Who is in your class?")
            : tr("Class: %1").arg(counted(int(names.size()), tr("1 child"), tr("%1 children"))),
        {names.isEmpty() ? tr("A class list is a CSV file with the column \u201cname\u201d, and a "
                              "column for each permission.")
                         : names.join(QStringLiteral(", "))},
        tr("Gather a class list"),
        Icon::Words,
        [this] { askChildren(); }});
    QStringList words{tr("A CSV file with the columns child, prompt and words, or child and one "
                         "column for each question.")};
    QStringList photos{tr("A folder of photos and scanned drawings. Nobody sees them until "
                          "somebody says who is in them.")};
    if (shown) {
        for (const ExperienceSummary& one : shown->experiences) {
            QStringList open;
            for (const NotYetHeard& child : one.notYetHeard)
                open << child.child;
            words << tr("%1: %2.").arg(
                         one.title, counted(one.quotes, tr("1 answer"), tr("%1 answers")))
                    + (open.isEmpty() ? QString()
                                      : QLatin1Char(' ')
                                + tr("Not on every question: %1.")
                                      .arg(open.join(QStringLiteral(", "))));
            photos << tr("%1: %2.").arg(
                one.title, counted(one.photos, tr("1 picture"), tr("%1 pictures")));
        }
    }
    m_plain->add(
        {tr("What they said"), words, tr("Gather words"), Icon::Words, [this] { askWords(); }});
    m_plain->add(
        {tr("Pictures"), photos, tr("Gather pictures"), Icon::Photo, [this] { askPhotos(); }});
    m_plain->end();
}

void MainWindow::fillListen()
{
    const int answers = int(m_session.book().quotes.size());
    m_plain->begin(tr("Put like with like, give it back to the class, look back on it."),
        tr("Groups and meetings are not in this version yet."));
    m_plain->add({tr("What can be done now"),
        {tr("%1 in the book, by question in the drawer of Compose.")
                .arg(counted(answers, tr("1 answer is"), tr("%1 answers are")))},
        tr("Go to Compose"),
        Icon::Next,
        [this] { go(Place::Compose); }});
    m_plain->end();
}

void MainWindow::fillHang()
{
    m_plain->begin(tr("Check, place on the wall, print."),
        tr("A plan of the wall is not in this version yet. Checking and printing are."));
    const auto& findings = m_compose->desk().findings();
    QStringList lines;
    for (const Finding& finding : findings) {
        if (finding.severity != Severity::Note)
            lines << (finding.panel > 0 ? tr("Panel %1: %2").arg(finding.panel).arg(finding.says)
                                        : finding.says);
    }
    const bool panel = m_session.panel() != nullptr;
    if (lines.isEmpty() && panel)
        lines << tr("Nothing was found. Measured: type, contrast, pictures, edges, permissions.");
    if (panel) {
        m_plain->add({tr("Check"), lines, tr("Go to the panel"), Icon::Look, [this] {
                          go(Place::Compose);
                          m_compose->goToFinding(1);
                      }});
        m_plain->add({tr("A PDF for a print shop"),
            {tr("True size, one page for each panel, all pictures as sharp as they are.")},
            tr("Make the PDF"),
            Icon::Sheet,
            [this] { askExport(); }});
        m_plain->add({tr("A PDF that is trimmed"),
            {tr("The same with 3 mm of colour beyond the edge and crop marks, as print shops "
                "ask for.")},
            tr("Make it with marks"),
            Icon::Crop,
            [this] { askShopPdf(); }});
        m_plain->add({tr("On sheets from the school's printer"),
            {sheetsInWords(),
                tr("The sheets overlap by 10 mm and carry marks to join them by; a ruler on the "
                   "first shows whether the printer keeps the size.")},
            tr("Make the sheets"),
            Icon::Sheet,
            [this] { askSheets(); }});
        m_plain->add({tr("Pictures of the panels"),
            {tr("For a newsletter or a message. Nothing is in them but what is seen.")},
            tr("Make pictures"),
            Icon::Photo,
            [this] { askPictures(); }});
        m_plain->add({tr("Print here"),
            {tr("On your own printer, through the system.")},
            tr("Print"),
            Icon::Sheet,
            [this] { askPrint(); }});
    } else {
        m_plain->add({tr("There is no panel yet"),
            {tr("Make one in Compose first.")},
            tr("Go to Compose"),
            Icon::Next,
            [this] { go(Place::Compose); }});
    }
    m_plain->end();
}

void MainWindow::fillKeep()
{
    m_plain->begin(tr("The term in one file; carry, put away, erase."),
        tr("The term's file is not in this version yet."));
    m_plain->add({tr("Carry"),
        {tr("The whole book as one file, every part with its checksum. It is not locked: carry it "
            "as you would carry the class list."),
            tr("It is kept in %1.").arg(QDir::toNativeSeparators(m_session.folder()))},
        tr("Pack the whole book to carry"),
        Icon::Sheet,
        [this] { askPack(); }});
    m_plain->add({tr("Bring back"),
        {tr("A packed book becomes a book again, in a folder of its own.")},
        tr("Unpack a book"),
        Icon::Plus,
        [this] { askUnpack(); }});
    m_plain->add({tr("Erase a child"),
        {tr("Words, pictures and name, out of the book for good. This is the one thing that cannot "
            "be undone; you are asked first.")},
        tr("Erase a child..."),
        Icon::TakeOff,
        [this] { askErase(); }});
    m_plain->end();
}

} // namespace wainscot::ui
