// What is set for the school's printers.
#include "app/ui/hang/print_page.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QMenu>

#include "app/ui/kit/tokens.h"
#include "app/ui/session/sheet_settings.h"

namespace wainscot::ui {

namespace {

template <std::size_t Count> QStringList inText(const std::array<int, Count>& lengths)
{
    QStringList texts;
    for (const int length : lengths)
        texts << QString::number(length);
    return texts;
}

} // namespace

void PrintPage::makeSettings(QVBoxLayout* column)
{
    auto* printer = new QHBoxLayout;
    printer->setSpacing(air(1.5));
    m_printer->setOpensList(true);
    printer->addWidget(m_printer);
    printer->addStretch();
    column->addLayout(printer);
    auto* settings = new QHBoxLayout;
    settings->setSpacing(air(1.5));
    for (Button* button : {m_paper, m_overlap, m_margin}) {
        button->setOpensList(true);
        settings->addWidget(button);
    }
    settings->addStretch();
    column->addLayout(settings);
    column->addWidget(m_white);
    connect(m_white, &QCheckBox::clicked, this, [this](bool leaveOut) {
        keepLeaveOutWhite(leaveOut);
        say();
        Q_EMIT changed();
    });
    m_edge->setVisible(false);
    column->addWidget(m_edge);
    connect(m_printer, &Button::clicked, this, &PrintPage::choosePrinter);
    connect(m_paper, &Button::clicked, this, [this] {
        choose(m_paper, SheetSetting::Paper, kSheetPapers);
    });
    connect(m_overlap, &Button::clicked, this, [this] {
        choose(m_overlap, SheetSetting::Overlap, inText(kSheetOverlapsMm));
    });
    connect(m_margin, &Button::clicked, this, [this] {
        choose(m_margin, SheetSetting::Margin, inText(kSheetMarginsMm));
    });
}

void PrintPage::choosePrinter()
{
    QMenu menu(this);
    connect(
        menu.addAction(tr("Any printer")), &QAction::triggered, this, [this] { setPrinter({}); });
    menu.addSeparator();
    const QStringList names = m_printers.names();
    if (names.isEmpty())
        menu.addAction(tr("This computer knows no printer"))->setEnabled(false);
    for (const QString& name : names) {
        // An ampersand in a name is not a key to press.
        connect(menu.addAction(QString(name).replace(u'&', QStringLiteral("&&"))),
            &QAction::triggered,
            this,
            [this, name] { setPrinter(name); });
    }
    menu.exec(m_printer->mapToGlobal(QPoint(0, m_printer->height())));
}

void PrintPage::setPrinter(const QString& name)
{
    if (name.isEmpty())
        chooseAnyPrinter();
    else
        ui::choosePrinter(m_printers.facts(name));
    say();
    Q_EMIT changed();
}

void PrintPage::choose(Button* button, SheetSetting setting, const QStringList& values)
{
    QMenu menu(this);
    for (const QString& value : values) {
        QAction* one =
            menu.addAction(setting == SheetSetting::Paper ? value : tr("%1 mm").arg(value));
        connect(one, &QAction::triggered, this, [this, setting, value] {
            keep(setting, value);
            say();
            Q_EMIT changed();
        });
    }
    menu.exec(button->mapToGlobal(QPoint(0, button->height())));
}

void PrintPage::sayPrinter()
{
    const QString printer = keptPrinter();
    m_printer->setText(printer.isEmpty() ? tr("Any printer") : tr("Printer %1").arg(printer));
    const Mm edge = keptUnreachable();
    const bool cut = edge > keptMargin();
    m_edge->setVisible(cut);
    if (cut)
        m_edge->setText(
            tr("This printer leaves %1 mm at the edge white. With a smaller margin something of "
               "every sheet is missing.")
                .arg(QLocale().toString(edge.value(), 'f', 1)));
}

} // namespace wainscot::ui
