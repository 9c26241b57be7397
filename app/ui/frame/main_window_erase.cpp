// Erasing a child: the only thing that is asked about first, because nothing brings it back.
#include "app/ui/frame/main_window.h"

#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>

#include "app/jobs/erase_plan.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

namespace {

QString consequences(const ErasePlan& plan)
{
    QStringList lines{
        MainWindow::tr("%1, %2 and %3 on panels go, and the name from %4. Nothing of "
                       "it can be brought back.")
            .arg(counted(plan.quotes, MainWindow::tr("1 answer"), MainWindow::tr("%1 answers")),
                counted(int(plan.pictures.size()),
                    MainWindow::tr("1 picture"),
                    MainWindow::tr("%1 pictures")),
                counted(plan.pieces, MainWindow::tr("1 piece"), MainWindow::tr("%1 pieces")),
                counted(plan.texts, MainWindow::tr("1 text"), MainWindow::tr("%1 texts")))};
    if (!plan.shared.isEmpty())
        lines << MainWindow::tr("These pictures show other children too: %1.")
                     .arg(listInWords(plan.shared));
    if (!plan.takeDown.isEmpty())
        lines << MainWindow::tr("To be taken down from the wall: %1.")
                     .arg(listInWords(plan.takeDown));
    if (!plan.alsoNamedSo.isEmpty())
        lines << MainWindow::tr("%1 goes by the same name, so it stays in texts.")
                     .arg(listInWords(plan.alsoNamedSo));
    lines << MainWindow::tr("Packed books, backups and prints made before are out of reach.");
    return lines.join(QStringLiteral("\n\n"));
}

} // namespace

void MainWindow::askErase()
{
    QStringList names;
    for (const auto& [id, child] : m_session.book().children.rows())
        names << child.name;
    names.sort(Qt::CaseInsensitive);
    bool chosen = false;
    const QString name = names.isEmpty()
        ? QString()
        : QInputDialog::getItem(
            this, tr("Erase a child"), tr("Who is to be forgotten:"), names, 0, false, &chosen);
    if (!chosen)
        return;
    const auto plan = planErasing(m_session.book(), name);
    if (!plan) {
        m_sill->announce(sentenceFor(plan.error()));
        return;
    }
    QMessageBox asks(QMessageBox::NoIcon,
        tr("Erase a child"),
        tr("Erase %1 from this book for good?").arg(name),
        QMessageBox::NoButton,
        this);
    asks.setInformativeText(consequences(*plan));
    const QAbstractButton* erase =
        asks.addButton(tr("Erase %1").arg(name), QMessageBox::DestructiveRole);
    asks.setDefaultButton(asks.addButton(tr("Leave everything"), QMessageBox::RejectRole));
    asks.exec();
    if (asks.clickedButton() == erase)
        eraseChild(name, true);
}

void MainWindow::eraseChild(const QString& name, bool sharedToo)
{
    m_compose->endWriting(false);
    const auto plan = planErasing(m_session.book(), name);
    if (!plan)
        m_sill->announce(sentenceFor(plan.error()));
    else if (!plan->shared.isEmpty() && !sharedToo)
        m_sill->announce(
            tr("%1 show other children too; nothing was done.").arg(listInWords(plan->shared)));
    else if (m_session.eraseForever(*plan))
        m_sill->announce(plan->takeDown.isEmpty() ? tr("%1 is erased.").arg(name)
                                                  : tr("%1 is erased. Take down what hangs: %2.")
                                                        .arg(name, listInWords(plan->takeDown)));
}

} // namespace wainscot::ui
