// The ways out of the book, each on a card.
#include "app/ui/hang/print_page.h"

#include <QHBoxLayout>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

void PrintPage::makeWays(QVBoxLayout* column)
{
    const auto way = [&](const QString& heading,
                         const QString& line,
                         const QString& action,
                         Icon icon,
                         void (PrintPage::*asked)(),
                         const QList<QCheckBox*>& wishes = {}) {
        auto* card = new Card;
        card->setAccessibleName(heading);
        auto* row = new QHBoxLayout(card);
        row->setContentsMargins(air(3.5), air(2), air(3.5), air(2));
        auto* words = new QVBoxLayout;
        words->setSpacing(0);
        words->addWidget(new Label(heading, 1.0, QFont::DemiBold));
        words->addWidget(new Label(line, 0.88, QFont::Normal, true));
        for (QCheckBox* wish : wishes) {
            wish->setAccessibleName(QStringLiteral("%1: %2").arg(heading, wish->text()));
            words->addWidget(wish);
        }
        row->addLayout(words, 1);
        auto* button = new Button(Button::Form::Plain, action, icon);
        button->setAccessibleName(QStringLiteral("%1: %2").arg(action, heading));
        connect(button, &Button::clicked, this, asked);
        row->addWidget(button);
        column->addWidget(card);
    };
    way(tr("Sheets to the printer"),
        tr("You see them first; single sheets can be printed again."),
        tr("Print"),
        Icon::Sheet,
        &PrintPage::printerAsked);
    way(tr("Sheets as a PDF"),
        tr("With one that shows how they go together."),
        tr("Make the sheets"),
        Icon::Sheet,
        &PrintPage::sheetsAsked);
    way(tr("A PDF that is trimmed"),
        tr("3 mm of colour beyond the edge and crop marks, for a print shop."),
        tr("Make it with marks"),
        Icon::Crop,
        &PrintPage::shopPdfAsked,
        {m_eachTrimmed});
    way(tr("A PDF at true size"),
        tr("One page for each panel, to keep or to send."),
        tr("Make the PDF"),
        Icon::Sheet,
        &PrintPage::pdfAsked,
        {m_each, m_withData});
    way(tr("Pictures of the panels"),
        tr("For a newsletter or a message. Nothing is in them but what is seen."),
        tr("Make pictures"),
        Icon::Photo,
        &PrintPage::picturesAsked);
}

} // namespace wainscot::ui
