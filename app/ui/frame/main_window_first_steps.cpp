// The guide beside the window, and the places its steps are done in.
#include "app/ui/frame/main_window.h"
#include "app/ui/frame/step_pictures.h"

namespace wainscot::ui {

void MainWindow::showFirstSteps()
{
    if (m_firstSteps == nullptr) {
        m_firstSteps = new FirstSteps(this);
        m_stepPictures = new StepPictures(this);
        connect(m_stepPictures, &StepPictures::made, m_firstSteps, &FirstSteps::setPicture);
        connect(m_stepPictures, &StepPictures::failed, m_firstSteps, &FirstSteps::setNoPictures);
        connect(m_firstSteps, &FirstSteps::placeAsked, this, [this](FirstStep step) {
            showStep(step);
            activateWindow();
        });
    }
    if (!m_firstSteps->hasPicture(kFirstSteps.back()))
        m_stepPictures->make();
    m_firstSteps->setMayGo(m_session.isOpen());
    m_firstSteps->QDialog::show();
    m_firstSteps->raise();
    m_firstSteps->activateWindow();
    m_firstSteps->entry(m_firstSteps->step()).setFocus(Qt::TabFocusReason);
}

void MainWindow::showStep(FirstStep step)
{
    switch (step) {
    case FirstStep::Class:
    case FirstStep::Words:
    case FirstStep::Pictures:
        go(Place::Gather);
        m_gather->go(step == FirstStep::Class ? GatherPart::Class
                : step == FirstStep::Words    ? GatherPart::Words
                                              : GatherPart::Pictures);
        break;
    case FirstStep::Groups:
        go(Place::Listen);
        m_listen->show(ListenPlace::Task::Groups);
        break;
    case FirstStep::Panel:
        go(Place::Compose);
        break;
    case FirstStep::Wall:
        go(Place::Hang);
        m_hang->setTask(HangPlace::Task::Wall);
        break;
    }
}

} // namespace wainscot::ui
