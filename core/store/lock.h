// Locks a file with a passphrase, and opens it again.
//
// The key is made of the phrase by Argon2id (RFC 9106); the content is sealed in frames of 64 KiB
// by libsodium's secretstream (XChaCha20-Poly1305), so that a frame changed, left out, put
// elsewhere or cut off at the end is noticed. What was not noticed as whole is never handed out.
#pragma once

#include "core/store/pack.h"

#include <QIODevice>
#include <QString>

#include <functional>
#include <memory>

namespace wainscot {

// Takes what is written and writes it sealed to another device.
class LockingDevice final : public QIODevice {
public:
    // REQUIRES: `to` is open and outlives this
    explicit LockingDevice(QIODevice& to);
    ~LockingDevice() override;

    // Before anything else. WrongUse for a phrase that is too short; CannotWrite.
    Result<> begin(const PackLock& lock);
    Result<> finish(); // nothing counts before
    [[nodiscard]] bool isSequential() const override { return true; }

protected:
    qint64 readData(char* data, qint64 most) override;
    qint64 writeData(const char* data, qint64 count) override;

private:
    struct State;
    bool seal(unsigned char tag);
    std::unique_ptr<State> m_state;
};

// By its first bytes.
[[nodiscard]] bool isLocked(QIODevice& from);

// Opens a locked file into another. Refused when the phrase does not fit; Damaged when the file has
// been changed or cut off: what is in `to` then must not be used. `goesOn` is told bytes done.
Result<> unlock(QIODevice& from,
    const QString& phrase,
    QIODevice& to,
    const std::function<bool(qint64)>& goesOn);

} // namespace wainscot
