// What the plain places say about the book.
#include "app/ui/frame/main_window.h"

#include <QDir>

#include "app/jobs/book_jobs.h"
#include "app/jobs/data_job.h"
#include "app/jobs/go_back.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

void MainWindow::refreshPlaces()
{
    if (!m_session.isOpen()) {
        fillWelcome();
        return;
    }
    switch (m_place) {
    case Place::Gather:
        m_gather->refresh();
        break;
    case Place::Keep:
        fillKeep();
        break;
    case Place::Listen:
        m_listen->refresh();
        break;
    case Place::Hang:
        refreshHang();
        break;
    case Place::Compose:
        break;
    }
}

void MainWindow::fillWelcome()
{
    m_plain->begin(tr("A book holds one class for one year."),
        tr("Words, pictures and panels stay in one folder on this computer."));
    m_className = new QLineEdit;
    m_className->setTextMargins(air(1), 0, air(1), 0);
    m_className->setPlaceholderText(tr("The Wrens, autumn"));
    m_className->setAccessibleName(tr("Name of the class"));
    m_plain->add({tr("Begin a book"),
        {tr("Write the name of your class. The book is kept in %1; the menu Book begins one "
            "elsewhere.")
                .arg(QDir::toNativeSeparators(documents()))},
        tr("Begin a book"),
        Icon::Plus,
        [this] { beginNamedBook(); },
        m_className});
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
    m_plain->add({tr("First steps"),
        {tr("Six short steps with pictures, from nothing to a panel on the wall.")},
        tr("Show the first steps"),
        Icon::Note,
        [this] { showFirstSteps(); }});
    m_plain->end();
}

void MainWindow::fillKeep()
{
    m_keep->refresh();
    PlainPlace& away = m_keep->away();
    away.begin(tr("Carry, bring back, erase."),
        tr("The term's file asks again what families allow. A packed book and data hold "
           "everything."));
    const QStringList against = toTakeDown();
    if (!against.isEmpty())
        away.add({tr("To take down or make anew"), against, {}, Icon::None, {}});
    if (!m_notSaved.isEmpty())
        away.add({tr("What could not be saved as it was"), m_notSaved, {}, Icon::None, {}});
    away.add({tr("Carry"),
        {tr("The whole book as one file, every part with its checksum. With a passphrase it is "
            "locked. Without one, carry it like the class list."),
            tr("It is kept in %1.").arg(QDir::toNativeSeparators(m_session.folder()))},
        tr("Pack the whole book to carry"),
        Icon::Sheet,
        [this] { askPack(); }});
    away.add({tr("Bring back"),
        {tr("A packed book becomes a book again, in a folder of its own.")},
        tr("Unpack a book"),
        Icon::Plus,
        [this] { askUnpack(); }});
    away.add({tr("Take the data out"),
        {tr("Everything in the book as JSON, as CSV files for a spreadsheet, and as pictures, with "
            "a page that tells what is what."),
            dataCaution()},
        tr("Take the data out"),
        Icon::Sheet,
        [this] { askTakeDataOut(); }});
    away.add({tr("Bring data in"),
        {tr("A folder of data becomes the same book again, in a folder of its own.")},
        tr("Bring data in"),
        Icon::Plus,
        [this] { askBringDataIn(); }});
    const auto kept = EarlierStatesJob{m_session.folder()}.run({});
    const int days = kept ? int(kept->size()) : 0;
    away.add({tr("Go back"),
        {days == 0 ? tr("Before the first change of each day the book keeps its state here.")
                   : tr("%1 kept, thinned out with time. Nothing is lost by going back: undo "
                        "brings today back.")
                         .arg(counted(days, tr("1 earlier day is"), tr("%1 earlier days are")))},
        tr("Go back to an earlier day"),
        Icon::Undo,
        [this] { askGoBack(); }});
    const auto retention = RetentionJob{m_session.folder()}.run({});
    away.add({tr("How long it is kept"),
        {inWords(retention ? *retention : Retention{}),
            tr("After that day the book asks to be packed away or erased.")},
        tr("Set the day"),
        Icon::Note,
        [this] { askKeepUntil(); }});
    away.add({tr("Erase a child"),
        {tr("Words, pictures and name, out of the book for good. This is the one thing that cannot "
            "be undone; you are asked first.")},
        tr("Erase a child..."),
        Icon::TakeOff,
        [this] { askErase(); }});
    away.end();
}

} // namespace wainscot::ui
