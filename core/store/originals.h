// Picture files as they came, never changed, named by their content.
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>

namespace wainscot {

// The folder `pictures` of a book. The file with SHA-256 "ab12..." is `ab/ab12...`, without an
// extension: what it is stands in the book. Safe to use from several threads at once.
class Originals {
public:
    explicit Originals(QString folder);

    [[nodiscard]] const QString& folder() const { return m_folder; }
    [[nodiscard]] QString pathOf(const QString& sha256) const;

    // Copies a file here and answers its SHA-256 (64 lower-case hex digits). The copy is whole and
    // on the disk before it gets its name, so write the row that mentions it afterwards. The same
    // content is kept once; a copy that has been damaged is replaced. NotFound, CannotRead (also
    // when the file changes while being read), CannotWrite. The given file is left untouched.
    Result<QString> keep(const QString& filePath) const;

    // The SHA-256 of a file's content.
    static Result<QString> sha256Of(const QString& filePath);

    // Takes an original away for good; one that is not there is gone already. WrongUse for what is
    // no SHA-256, CannotWrite.
    Result<> remove(const QString& sha256) const;

    // The names of all files here; those left half written by a crash are not among them.
    [[nodiscard]] QStringList all() const;
    void removeHalfWritten() const;

private:
    QString m_folder;
};

} // namespace wainscot
