// Pictures from the file manager or another program: gathered into the experience, then placed.
#include "app/ui/compose/desk.h"

#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include "app/jobs/gather.h"
#include "app/jobs/sentences.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

namespace {

struct Gathered {
    GatherOutcome outcome;
    QStringList hashes; // of the files, in their order; also of those that were known already
};

QString sha256Of(const QString& path)
{
    QFile file(path);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (!file.open(QIODevice::ReadOnly) || !hash.addData(&file))
        return {};
    return QString::fromLatin1(hash.result().toHex());
}

// The gather job takes folders: these files get one of their own for a moment.
Result<Gathered> gather(
    const Book& book, GatherPhotosJob job, const QStringList& files, const JobRun& run)
{
    const QTemporaryDir folder;
    if (!folder.isValid())
        return Error{ErrorCode::CannotWrite, folder.path(), folder.errorString()};
    Gathered gathered;
    for (const QString& file : files) {
        QString to = folder.filePath(QFileInfo(file).fileName());
        for (int i = 2; QFile::exists(to); ++i)
            to = folder.filePath(QStringLiteral("%1-%2").arg(i).arg(QFileInfo(file).fileName()));
        if (!QFile::copy(file, to))
            return Error{ErrorCode::CannotRead, file, {}};
        gathered.hashes << sha256Of(to);
    }
    job.folder = folder.path();
    Result<GatherOutcome> outcome = job.run(book, run);
    if (!outcome)
        return outcome.error();
    gathered.outcome = std::move(outcome).value();
    return gathered;
}

const Picture* pictureWith(const Book& book, ExperienceId experience, const QString& sha256)
{
    for (const Picture* picture : picturesOf(book, experience)) {
        if (picture->sha256 == sha256)
            return picture;
    }
    return nullptr;
}

} // namespace

void Desk::takePictures(const QStringList& files, const std::optional<RectMm>& cell)
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr || m_session.panel() == nullptr)
        return;
    GatherPhotosJob job;
    job.experience = experience->title;
    job.picturesFolder = m_session.picturesFolder();
    const auto done = [this, cell, panel = m_session.panel()->id, id = experience->id](
                          Result<Gathered> result) {
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
        for (const QString& sha256 : result->hashes) {
            const Picture* picture = pictureWith(m_session.book(), id, sha256);
            const std::optional<Piece> piece = picture != nullptr
                ? pieceFor({DrawerItem::Kind::Picture, picture->id.number()})
                : std::nullopt;
            if (!piece)
                continue;
            const std::optional<RectMm> at = added.empty() ? cell : std::nullopt;
            added.push_back(put(*piece, at, gesture));
        }
        if (!added.empty())
            Q_EMIT brought(added);
        if (!result->outcome.skipped.empty())
            Q_EMIT announced(result->outcome.skipped.front().why);
    };
    const bool started = m_work.start<Gathered>(
        tr("Gathering pictures"),
        [job, files, book = m_session.book()](
            const JobRun& run) { return gather(book, job, files, run); },
        done);
    if (!started)
        Q_EMIT announced(tr("Wait until this is done: %1.").arg(m_work.name()));
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
