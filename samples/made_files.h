// What a sample folder holds of ours, so that a second run makes only what is missing or damaged
// and nothing of anybody else's is ever written over.
#pragma once

#include <QByteArray>
#include <QDir>
#include <QHash>
#include <QString>
#include <QStringList>

#include <functional>

#include "core/base/result.h"

namespace wainscot::samples {

// A hidden list in the folder says for each file by which recipe it was made and what it was then.
class MadeFiles {
public:
    // CannotWrite when the folder cannot be made.
    static Result<MadeFiles> openIn(const QString& folder);

    // Writes a list unless the same text was written before: what the teacher has changed in it
    // since then stays. Refused when somebody else's file of that name is there.
    Result<> putText(const QString& file, const QString& text);

    // Calls `make` with the full path unless the file made by that recipe is there unharmed.
    // Refused as above.
    Result<> putMade(const QString& file,
        const QString& recipe,
        const std::function<Result<>(const QString& path)>& make);

    // Removes pictures of earlier runs that are not among `wanted`, unless they were changed.
    Result<> removeOthers(const QString& subfolder, const QStringList& wanted);

    [[nodiscard]] QString pathOf(const QString& file) const { return m_folder.filePath(file); }

private:
    struct Entry {
        QString recipe;
        QByteArray sha256; // hex
    };

    explicit MadeFiles(const QString& folder)
        : m_folder(folder)
    {
    }
    [[nodiscard]] Result<> makeRoomFor(const QString& file) const;
    Result<> note(const QString& file, const QString& recipe);
    [[nodiscard]] Result<> save() const;

    QDir m_folder;
    QHash<QString, Entry> m_made; // by path inside the folder
};

} // namespace wainscot::samples
