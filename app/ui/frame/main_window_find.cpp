// Finding words of any year, and going to where they were taken down.
#include "app/ui/frame/find_dialog.h"
#include "app/ui/frame/main_window.h"

namespace wainscot::ui {

void MainWindow::askFind()
{
    if (!m_session.isOpen())
        return;
    m_gather->leave(); // what is being taken down is found too
    m_compose->endWriting(true);
    m_finder.follow(m_session.book());
    auto* dialog = new FindDialog(m_session.book(), m_finder, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &FindDialog::chosen, this, &MainWindow::goToWords);
    dialog->open();
}

void MainWindow::goToWords(QuoteId id)
{
    const Quote* quote = m_session.book().quotes.find(id);
    if (quote == nullptr)
        return;
    const bool inMeeting = quote->prompt.isEmpty();
    m_session.chooseExperience(quote->experience);
    go(inMeeting ? Place::Listen : Place::Gather);
    if (inMeeting) {
        m_listen->show(ListenPlace::Task::Meetings);
        return;
    }
    m_gather->go(GatherPart::Words);
    m_gather->words().desk().takeUp(id);
}

} // namespace wainscot::ui
