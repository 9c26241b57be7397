#include "app/ui/gather/picture_choice.h"

#include <QHBoxLayout>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

PictureChoice::PictureChoice(Session& session, PictureShelf& shelf, QWidget* parent)
    : QDialog(parent)
    , m_hint(new Label({}, 0.95, QFont::Normal, true))
    , m_list(new PictureList(shelf))
    , m_none(new Button(Button::Form::Word, tr("No picture")))
    , m_take(new Button(Button::Form::Main, tr("Take this picture"), Icon::Photo))
{
    setWindowTitle(tr("A picture"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(5), air(5), air(5), air(5));
    column->setSpacing(air(2));
    if (const Experience* experience = session.experience())
        m_pictures = picturesOf(session.book(), experience->id);
    if (m_pictures.empty()) {
        for (const auto& [id, picture] : session.book().pictures.rows())
            m_pictures.push_back(&picture);
    }
    column->addWidget(new Label(
        m_pictures.empty() ? tr("No picture yet. Add one under Pictures.") : tr("Which picture?"),
        1.25,
        QFont::DemiBold));
    column->addWidget(m_hint);
    m_hint->hide();
    column->addWidget(m_list, 1);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_none);
    foot->addStretch();
    foot->addWidget(m_take);
    column->addLayout(foot);
    m_take->setEnabled(false);
    const auto show = [this, &session] { m_list->refresh(session.book(), m_pictures, m_picture); };
    show();
    connect(&shelf, &PictureShelf::loaded, this, show);
    connect(m_list, &PictureList::chosen, this, [this](PictureId picture) {
        m_picture = picture;
        m_take->setEnabled(true);
    });
    connect(m_take, &Button::clicked, this, &QDialog::accept);
    connect(m_none, &Button::clicked, this, [this] {
        m_picture = {};
        accept();
    });
    resize(scaled(420), scaled(480));
    m_list->setFocus();
}

void PictureChoice::setHint(const QString& hint)
{
    m_hint->setText(hint);
    m_hint->show();
}

void PictureChoice::setNone(const QString& text)
{
    m_none->setText(text);
}

} // namespace wainscot::ui
