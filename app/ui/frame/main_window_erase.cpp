// Erasing a child: the only thing that is asked about first, because nothing brings it back.
#include "app/ui/frame/main_window.h"

#include <QCheckBox>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>

#include "app/jobs/covered_copies.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

namespace {

QString consequences(const ErasePlan& plan, const QString& child, const QStringList& stillHeld)
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
        lines << MainWindow::tr("These pictures show other children too: %1. To keep one for them, "
                                "cover %2 in it first.")
                     .arg(listInWords(plan.shared), child);
    if (!plan.takeDown.isEmpty())
        lines << MainWindow::tr("To be taken down from the wall: %1.")
                     .arg(listInWords(plan.takeDown));
    if (!stillHeld.isEmpty())
        lines << MainWindow::tr("To be deleted or made anew by hand: %1.")
                     .arg(listInWords(stillHeld));
    if (!plan.alsoNamedSo.isEmpty())
        lines << MainWindow::tr("%1 goes by the same name, so it stays in texts.")
                     .arg(listInWords(plan.alsoNamedSo));
    lines << MainWindow::tr(
        "Packed books, data taken out, backups and prints made before are out of reach.");
    return lines.join(QStringLiteral("\n\n"));
}

QStringList coveredOnes(const Book& book, const QString& child)
{
    QStringList names;
    if (const auto shared = sharedPictures(book, child)) {
        for (const Picture& picture : *shared) {
            if (isCovered(picture))
                names << picture.fileName;
        }
    }
    return names;
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
    asks.setInformativeText(
        consequences(*plan, name, filesThatHold(m_session.folder(), m_session.book(), name)));
    const QStringList covered = coveredOnes(m_session.book(), name);
    QCheckBox* keeps = nullptr; // the box's own
    if (!covered.isEmpty()) {
        keeps = new QCheckBox(
            tr("Keep for the others, with what is covered in them: %1").arg(listInWords(covered)));
        keeps->setChecked(true);
        asks.setCheckBox(keeps);
    }
    const QAbstractButton* erase =
        asks.addButton(tr("Erase %1").arg(name), QMessageBox::DestructiveRole);
    asks.setDefaultButton(asks.addButton(tr("Leave everything"), QMessageBox::RejectRole));
    asks.exec();
    if (asks.clickedButton() == erase)
        eraseChild(name,
            keeps != nullptr && keeps->isChecked() ? SharedPictures::KeepCovered
                                                   : SharedPictures::Delete);
}

void MainWindow::eraseChild(const QString& name, SharedPictures shared)
{
    const auto together = sharedPictures(m_session.book(), name);
    if (!together) {
        m_sill->announce(sentenceFor(together.error()));
        return;
    }
    if (shared == SharedPictures::Ask && !together->empty()) {
        m_sill->announce(tr("%1 is in pictures with other children; nothing was done.").arg(name));
        return;
    }
    if (shared != SharedPictures::KeepCovered) {
        eraseNow(name, {});
        return;
    }
    const auto place = std::make_shared<QTemporaryDir>();
    std::map<QString, QString> paths;
    for (const Picture& picture : *together)
        paths.emplace(picture.sha256, m_session.originalPath(picture.sha256));
    m_work.start<std::vector<CoveredCopy>>(
        tr("Covering pictures for good"),
        [pictures = *together, child = childByName(m_session.book(), name)->id, paths, place](
            const JobRun& run) {
            return coveredCopies(
                pictures,
                child,
                [&paths](const QString& sha256) { return paths.at(sha256); },
                place->path(),
                run);
        },
        [this, name, place](const Result<std::vector<CoveredCopy>>& copies) {
            if (!copies) {
                m_sill->announce(sentenceFor(copies.error()));
                return;
            }
            KeptPictures kept;
            for (const CoveredCopy& copy : *copies) {
                const Picture* now = m_session.book().pictures.find(copy.picture.id);
                if (now == nullptr || !(now->treatment == copy.before.treatment)) {
                    m_sill->announce(tr("%1 was changed meanwhile; nothing was done.")
                                         .arg(copy.before.fileName));
                    return;
                }
                if (!m_session.keepOriginal(copy.file))
                    return;
                kept.emplace(copy.picture.id, copy.picture);
            }
            eraseNow(name, kept);
        });
}

void MainWindow::eraseNow(const QString& name, const KeptPictures& kept)
{
    m_compose->endWriting(false);
    const auto plan = planErasing(m_session.book(), name, kept);
    if (!plan)
        m_sill->announce(sentenceFor(plan.error()));
    else if (m_session.eraseForever(*plan))
        m_sill->announce(plan->takeDown.isEmpty() ? tr("%1 is erased.").arg(name)
                                                  : tr("%1 is erased. Take down what hangs: %2.")
                                                        .arg(name, listInWords(plan->takeDown)));
}

} // namespace wainscot::ui
