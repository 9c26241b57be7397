// The wall on one printed page.
#include <QPrintPreviewDialog>
#include <QPrinter>

#include "app/jobs/kept_limits.h"
#include "app/jobs/made_files.h"
#include "app/ui/hang/hanging_list.h"
#include "app/ui/hang/wall_page.h"

namespace wainscot::ui {

void WallPage::askPrint()
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageOrientation(QPageLayout::Landscape);
    QPrintPreviewDialog preview(&printer, this);
    preview.setWindowTitle(tr("The hanging list"));
    connect(&preview, &QPrintPreviewDialog::paintRequested, this, [this](QPrinter* to) {
        (void)printList(*to);
    });
    if (preview.exec() == QDialog::Accepted)
        rememberPrinted();
}

// Its small picture shows what hangs there, so a family's no concerns it too.
void WallPage::rememberPrinted()
{
    if (wall() == nullptr)
        return;
    for (const MadeFile& made : printedHangingList(m_session.book(), *wall(), m_session.today()))
        rememberMade(m_session.folder(), made);
}

bool WallPage::printList(QPrinter& printer)
{
    if (wall() == nullptr)
        return false;
    const WallPlan plan = planOf(m_session.book(), *wall(), keptStandOut());
    HangingList list(*wall(), plan, [this](PanelId panel, int width) {
        return m_view->panelPixmap(panel, qMin(width, 800));
    });
    const bool printed = list.print(printer);
    if (!printed)
        Q_EMIT announced(tr("The printer does not answer."));
    return printed;
}

} // namespace wainscot::ui
