// A picture beside a question, for those who do not read.
#include "app/ui/gather/ask_task.h"
#include "app/ui/gather/picture_choice.h"
#include "app/ui/gather/prompt_sign.h"

namespace wainscot::ui {

void AskTask::showPictures()
{
    if (chosen() == nullptr)
        return;
    for (std::size_t i = 0; i < m_signs.size() && i < chosen()->prompts.size(); ++i) {
        const Picture* picture = m_session.book().pictures.find(chosen()->prompts[i].picture);
        m_signs[i]->setPicture(picture != nullptr ? m_shelf.thumbnail(*picture) : QImage());
    }
}

void AskTask::setPicture(int prompt, PictureId picture)
{
    PromptSet changed = *chosen();
    changed.prompts[std::size_t(prompt)].picture = picture;
    keep(changed, tr("Picture beside a question"));
}

void AskTask::askPicture(int at)
{
    PictureChoice choice(m_session, m_shelf, this);
    choice.setHint(tr("On paper it stands only where everybody in it may be seen in the "
                      "classroom."));
    choice.setNone(tr("No picture, the sign"));
    if (choice.exec() == QDialog::Accepted)
        setPicture(at, choice.picture());
}

} // namespace wainscot::ui
