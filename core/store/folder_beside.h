// A folder that is filled beside its place and appears there whole, or not at all. Private to
// core/store.
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QTemporaryDir>

namespace wainscot {

class FolderBeside {
public:
    // `doing` names what lies beside while it is worked on: "unpacking".
    FolderBeside(const QString& folder, const QString& doing);

    [[nodiscard]] const QString& place() const { return m_place; } // where it will be, absolute
    // WrongUse when something is there; CannotWrite when nothing can be made beside it.
    [[nodiscard]] Result<> isFree() const;

    [[nodiscard]] QString path() const { return m_beside.path(); }
    [[nodiscard]] QString filePath(const QString& name) const { return m_beside.filePath(name); }

    // For its owner alone. CannotWrite leaves nothing there.
    Result<> moveIntoPlace();

private:
    QString m_place;
    QTemporaryDir m_beside; // removed again unless it was moved
};

} // namespace wainscot
