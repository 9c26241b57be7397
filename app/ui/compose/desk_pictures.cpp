// Pictures from the file manager or another program: gathered into the experience, then placed.
#include "app/ui/compose/desk.h"

#include <QDateTime>
#include <QTemporaryDir>

#include "app/jobs/gather_files.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

void Desk::takePictures(const QStringList& files, const std::optional<RectMm>& cell)
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr || m_session.panel() == nullptr)
        return;
    GatherFilesJob job;
    job.files = files;
    job.experience = experience->id;
    job.picturesFolder = m_session.picturesFolder();
    const auto done = [this, cell, panel = m_session.panel()->id](Result<GatheredFiles> result) {
        if (!result) {
            Q_EMIT announced(sentenceFor(result.error()));
            return;
        }
        const int gesture = m_session.newGesture();
        Edit& edit = result->outcome.edit;
        edit.gesture = gesture;
        edit.label = tr("Onto the panel: %1").arg(wordFor(PieceKind::Photo));
        if (!m_session.perform(std::move(edit)))
            return;
        m_session.choosePanel(panel);
        PieceIds added;
        // Of a scanned pile the first page; the others wait in the drawer.
        for (const PictureId picture : result->firsts) {
            const std::optional<Piece> piece =
                pieceFor({DrawerItem::Kind::Picture, picture.number()});
            if (!piece)
                continue;
            const std::optional<RectMm> at = added.empty() ? cell : std::nullopt;
            added.push_back(put(*piece, at, gesture));
        }
        if (!added.empty())
            Q_EMIT brought(added);
        const auto waiting = int(result->pictures.size() - result->firsts.size());
        if (!result->outcome.skipped.empty())
            Q_EMIT announced(result->outcome.skipped.front().why);
        else if (waiting > 0)
            Q_EMIT announced(counted(waiting,
                tr("1 more page is under What you have (F4)."),
                tr("%1 more pages are under What you have (F4).")));
    };
    m_work.start<GatheredFiles>(
        tr("Gathering pictures"),
        [job, book = m_session.book()](const JobRun& run) { return job.run(book, run); },
        done);
}

void Desk::takeImage(const QImage& image, const std::optional<RectMm>& cell)
{
    const auto folder = std::make_shared<QTemporaryDir>();
    const QString file = folder->filePath(
        tr("Pasted %1.png")
            .arg(QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH.mm.ss"))));
    if (!folder->isValid() || !image.save(file, "PNG")) {
        Q_EMIT announced(tr("The picture could not be kept."));
        return;
    }
    takePictures({file}, cell);
    // The folder goes when the work that reads from it has ended.
    connect(
        &m_work, &Work::ended, this, [folder] {}, Qt::SingleShotConnection);
}

} // namespace wainscot::ui
