#include "app/ui/hang/pictures_dialog.h"

#include <QButtonGroup>
#include <QHBoxLayout>

#include "app/ui/kit/button.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

// Pixels wide; common practice, no source.
constexpr int kForMessage = 1280;
constexpr int kForNewsletter = 2400;
constexpr int kForPrint = 6000;

} // namespace

PicturesDialog::PicturesDialog(PieceId piece, const QString& called, QWidget* parent)
    : QDialog(parent)
    , m_piece(piece)
    , m_panels(new QRadioButton(tr("Every panel of the display")))
    , m_alone(new QRadioButton(called.isEmpty() ? tr("The piece in the hand") : called))
    , m_png(new QRadioButton(tr("PNG: every letter stays sharp")))
    , m_jpeg(new QRadioButton(tr("JPEG: a small file")))
    , m_width(new QSpinBox)
{
    setWindowTitle(tr("As pictures"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(5), air(5), air(5), air(5));
    column->setSpacing(air(2));
    column->addWidget(new Label(tr("As pictures"), 1.25, QFont::DemiBold));
    column->addWidget(
        new Label(tr("Nothing is in them but what is seen, as its audience may see it."),
            0.95,
            QFont::Normal,
            true));
    auto* what = new QButtonGroup(this);
    for (QRadioButton* one : {m_panels, m_alone}) {
        what->addButton(one);
        column->addWidget(one);
    }
    m_alone->setEnabled(piece.isValid());
    (piece.isValid() ? m_alone : m_panels)->setChecked(true);
    if (!piece.isValid()) {
        column->addWidget(
            new Label(tr("For one piece alone, take it in the hand in Compose first."),
                0.85,
                QFont::Normal,
                true));
    }
    addSizes(*column);
    addForms(*column);
    column->addStretch();
    auto* foot = new QHBoxLayout;
    auto* stop = new Button(Button::Form::Word, tr("Not now"));
    auto* make = new Button(Button::Form::Main, tr("Make pictures"), Icon::Photo);
    foot->addWidget(stop);
    foot->addStretch();
    foot->addWidget(make);
    column->addLayout(foot);
    connect(stop, &Button::clicked, this, &QDialog::reject);
    connect(make, &Button::clicked, this, &QDialog::accept);
    resize(scaled(460), scaled(400));
}

void PicturesDialog::addSizes(QVBoxLayout& column)
{
    column.addSpacing(air(2));
    column.addWidget(new Label(tr("How wide"), 1.0, QFont::DemiBold));
    auto* row = new QHBoxLayout;
    row->setSpacing(air(1.5));
    m_width->setRange(16, 20'000);
    m_width->setSingleStep(100);
    m_width->setValue(kForNewsletter);
    m_width->setFixedWidth(scaled(100));
    m_width->setAccessibleName(tr("Width in pixels"));
    row->addWidget(m_width);
    row->addWidget(new Label(tr("pixels")));
    for (const auto& [name, wide] : {std::pair(tr("A message"), kForMessage),
             std::pair(tr("A newsletter"), kForNewsletter),
             std::pair(tr("A print"), kForPrint)}) {
        auto* button = new Button(Button::Form::Word, name);
        connect(
            button, &Button::clicked, m_width, [this, wide = wide] { m_width->setValue(wide); });
        row->addWidget(button);
    }
    row->addStretch();
    column.addLayout(row);
}

void PicturesDialog::addForms(QVBoxLayout& column)
{
    column.addSpacing(air(2));
    column.addWidget(new Label(tr("In which form"), 1.0, QFont::DemiBold));
    auto* form = new QButtonGroup(this);
    for (QRadioButton* one : {m_jpeg, m_png}) {
        form->addButton(one);
        column.addWidget(one);
    }
    m_jpeg->setChecked(true);
}

ExportPictureJob PicturesDialog::job() const
{
    ExportPictureJob job;
    job.form = m_jpeg->isChecked() ? PictureForm::Jpeg : PictureForm::Png;
    job.width = m_width->value();
    if (m_alone->isChecked())
        job.piece = m_piece;
    return job;
}

} // namespace wainscot::ui
