// What can no longer be read, beside the picture.
#include "app/ui/sight/step_back.h"

#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

QString millimetres(Mm length)
{
    return QLocale().toString(length.value(), 'f', 1);
}

int countOf(const std::vector<SeenText>& texts, wall::Legibility legibility)
{
    return int(std::count_if(texts.begin(), texts.end(), [&](const SeenText& text) {
        return text.legibility == legibility;
    }));
}

} // namespace

void StepBack::list()
{
    m_column = new QWidget;
    auto* column = new QVBoxLayout(m_column);
    column->setContentsMargins(air(2), air(2), air(2), air(2));
    column->setSpacing(air(1));
    const int gone = countOf(m_texts, wall::Legibility::Gone);
    const int effort = countOf(m_texts, wall::Legibility::Effort);
    const auto part =
        [&](wall::Legibility legibility, Icon icon, const QColor& colour, const QString& heading) {
            auto* head = new QHBoxLayout;
            head->setSpacing(air(1.5));
            head->addWidget(new IconMark(icon, colour), 0, Qt::AlignTop);
            head->addWidget(new Label(heading, 1.0, QFont::DemiBold), 1);
            column->addLayout(head);
            for (const SeenText& text : m_texts) {
                if (text.legibility != legibility)
                    continue;
                const QString name = text.use == check::Use::Small && text.kind == PieceKind::Quote
                    ? text.begins
                    : m_nameOf(text.piece);
                auto* row = new Button(Button::Form::Row, name);
                row->setMayShrink(true);
                row->setDetail(tr("%1 mm tall, easy from %2 mm")
                                   .arg(millimetres(text.cap), millimetres(text.easyCap)));
                const PieceId piece = text.piece;
                connect(row, &Button::clicked, this, [this, piece] {
                    close();
                    Q_EMIT pieceWanted(piece);
                });
                column->addWidget(row);
            }
            column->addSpacing(air(1));
        };
    if (gone > 0)
        part(wall::Legibility::Gone,
            Icon::Stop,
            tokens().stop,
            counted(gone,
                tr("1 text cannot be read from here"),
                tr("%1 texts cannot be read from here")));
    if (effort > 0)
        part(wall::Legibility::Effort,
            Icon::Look,
            tokens().look,
            counted(effort, tr("1 text asks for effort"), tr("%1 texts ask for effort")));
    if (gone + effort == 0)
        column->addWidget(new Label(counted(int(m_texts.size()),
                                        tr("The 1 text can be read from here."),
                                        tr("All %1 texts can be read from here.")),
            1.0,
            QFont::DemiBold));
    column->addWidget(new Label(
        tr("With ease: capitals of %1 arcminutes and more (NUREG-0700; for weaker sight in the "
           "proportion of DIN 1450). Lost: below %2. Blur and limits are models of eyes, not a "
           "test of anybody's.")
            .arg(QLocale().toString(wall::easyFrom(m_standing.acuity), 'f', 0),
                QLocale().toString(wall::goneBelow(m_standing.acuity), 'f', 1)),
        0.85,
        QFont::Normal,
        true));
    column->addStretch();
    m_area->setWidget(m_column);
}

} // namespace wainscot::ui
