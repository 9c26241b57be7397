// A file system of a chosen size, mounted for this program and what it starts only. Linux only.
#pragma once

#include <QString>

namespace wainscot {

class SmallDisk {
public:
    // False when this machine lets no program mount anything for itself.
    static bool canBeHad();

    SmallDisk(const QString& folder, qint64 bytes); // makes the folder
    ~SmallDisk();
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;

    void resize(qint64 bytes) const;
    [[nodiscard]] qint64 used() const;

private:
    QString m_folder;
};

} // namespace wainscot
