#include "core/store/folder_beside.h"

#include "core/store/disk.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace wainscot {

FolderBeside::FolderBeside(const QString& folder, const QString& doing)
    : m_place(QDir(folder).absolutePath())
    , m_beside(QStringLiteral("%1.%2-XXXXXX").arg(m_place, doing))
{
}

Result<> FolderBeside::isFree() const
{
    const QFileInfo there(m_place);
    if (there.exists() && !(there.isDir() && QDir(m_place).isEmpty()))
        return Error{ErrorCode::WrongUse, m_place, QStringLiteral("it is not empty")};
    if (!m_beside.isValid())
        return Error{ErrorCode::CannotWrite, there.absolutePath(), {}};
    return Done{};
}

Result<> FolderBeside::moveIntoPlace()
{
    QFile::setPermissions(m_beside.path(),
        QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner); // the class's words are private
    QDir().rmdir(m_place);
    if (!renameSafely(m_beside.path(), m_place))
        return Error{ErrorCode::CannotWrite, m_place, {}};
    m_beside.setAutoRemove(false);
    return Done{};
}

} // namespace wainscot
