#include "core/store/lock.h"

#include <QtEndian>

#include <array>
#include <cstring>
#include <sodium.h>

namespace wainscot {

namespace {

constexpr char kMagic[16] = {
    'W', 'a', 'i', 'n', 's', 'c', 'o', 't', ' ', 'l', 'o', 'c', 'k', 'e', 'd', '1'};
constexpr std::size_t kFrame = 64 * 1024;
constexpr std::size_t kSealed = kFrame + crypto_secretstream_xchacha20poly1305_ABYTES;
// Nobody's book asks for more; a file made to hurt might.
constexpr unsigned long long kMostPasses = 16;
constexpr unsigned long long kMostBytes = 1024ULL * 1024 * 1024;
constexpr char kContext[crypto_kdf_CONTEXTBYTES + 1] = "wainscot";

// What stands at the front of a locked file, byte by byte.
struct Front {
    std::array<char, sizeof kMagic> magic{};
    std::array<unsigned char, crypto_pwhash_SALTBYTES> salt{};
    std::array<unsigned char, 8> passes{}; // little-endian
    std::array<unsigned char, 8> bytes{};
    std::array<unsigned char, crypto_secretstream_xchacha20poly1305_HEADERBYTES> stream{};
    std::array<unsigned char, 16> whole{}; // hash of all before: tells damage from a wrong phrase
    std::array<unsigned char, 16> fits{}; // the same with a key: tells whether the phrase fits
};
constexpr std::size_t kHashed = offsetof(Front, whole);
static_assert(sizeof(Front) == kHashed + 32); // no padding

template <std::size_t Size> class Secret { // wiped when it is not needed any more
public:
    Secret() = default;
    Secret(const Secret&) = delete;
    Secret& operator=(const Secret&) = delete;
    ~Secret() { sodium_memzero(m_bytes.data(), Size); }
    [[nodiscard]] unsigned char* data() { return m_bytes.data(); }

private:
    std::array<unsigned char, Size> m_bytes{};
};

struct Keys {
    Secret<crypto_secretstream_xchacha20poly1305_KEYBYTES> content;
    Secret<crypto_generichash_KEYBYTES> check;
};

const unsigned char* bytesOf(const Front& front)
{
    return reinterpret_cast<const unsigned char*>(&front);
}

void hash(const Front& front, std::array<unsigned char, 16>& into, unsigned char* key)
{
    crypto_generichash(into.data(),
        into.size(),
        bytesOf(front),
        kHashed,
        key,
        key != nullptr ? std::size_t(crypto_generichash_KEYBYTES) : 0);
}

// The same phrase typed on another keyboard may come as other characters (RFC 8265, 4.2).
QByteArray utf8Of(const QString& phrase)
{
    return phrase.normalized(QString::NormalizationForm_C).toUtf8();
}

Result<> makeKeys(const QString& phrase, const Front& front, Keys& keys)
{
    QByteArray text = utf8Of(phrase);
    Secret<crypto_kdf_KEYBYTES> master;
    const int made = crypto_pwhash(master.data(),
        crypto_kdf_KEYBYTES,
        text.constData(),
        static_cast<unsigned long long>(text.size()),
        front.salt.data(),
        qFromLittleEndian<quint64>(front.passes.data()),
        qFromLittleEndian<quint64>(front.bytes.data()),
        crypto_pwhash_ALG_ARGON2ID13);
    sodium_memzero(text.data(), std::size_t(text.size()));
    if (made != 0)
        return Error{
            ErrorCode::Refused, {}, QStringLiteral("there is too little memory to make the key")};
    crypto_kdf_derive_from_key(
        keys.content.data(), sizeof keys.content, 1, kContext, master.data());
    crypto_kdf_derive_from_key(keys.check.data(), sizeof keys.check, 2, kContext, master.data());
    return Done{};
}

Error damaged()
{
    return Error{ErrorCode::Damaged,
        {},
        QStringLiteral("it has been changed or cut off since it was locked")};
}

Result<Front> readFront(QIODevice& from)
{
    Front front;
    if (from.read(reinterpret_cast<char*>(&front), sizeof front) != qint64(sizeof front))
        return damaged();
    std::array<unsigned char, 16> whole{};
    hash(front, whole, nullptr);
    if (std::memcmp(front.magic.data(), kMagic, sizeof kMagic) != 0 || whole != front.whole
        || qFromLittleEndian<quint64>(front.passes.data()) > kMostPasses
        || qFromLittleEndian<quint64>(front.bytes.data()) > kMostBytes)
        return damaged();
    return front;
}

} // namespace

struct LockingDevice::State {
    QIODevice& to;
    crypto_secretstream_xchacha20poly1305_state stream{};
    QByteArray waiting = {}; // for its frame to be full
};

LockingDevice::LockingDevice(QIODevice& to)
    : m_state(new State{to})
{
}

LockingDevice::~LockingDevice()
{
    sodium_memzero(&m_state->stream, sizeof m_state->stream);
    sodium_memzero(m_state->waiting.data(), std::size_t(m_state->waiting.size()));
}

Result<> LockingDevice::begin(const PackLock& lock)
{
    if (lock.phrase.size() < kShortestPhrase)
        return Error{ErrorCode::WrongUse,
            QStringLiteral("A passphrase needs %1 characters").arg(kShortestPhrase),
            {}};
    if (sodium_init() < 0)
        return Error{ErrorCode::Internal, {}, QStringLiteral("no random numbers")};
    Front front;
    std::memcpy(front.magic.data(), kMagic, sizeof kMagic);
    randombytes_buf(front.salt.data(), front.salt.size());
    qToLittleEndian<quint64>(lock.passes, front.passes.data());
    qToLittleEndian<quint64>(lock.bytes, front.bytes.data());
    Keys keys;
    if (auto made = makeKeys(lock.phrase, front, keys); !made)
        return made;
    crypto_secretstream_xchacha20poly1305_init_push(
        &m_state->stream, front.stream.data(), keys.content.data());
    hash(front, front.whole, nullptr);
    hash(front, front.fits, keys.check.data());
    if (m_state->to.write(reinterpret_cast<const char*>(&front), sizeof front)
        != qint64(sizeof front))
        return Error{ErrorCode::CannotWrite, {}, m_state->to.errorString()};
    open(QIODevice::WriteOnly | QIODevice::Unbuffered);
    return Done{};
}

bool LockingDevice::seal(unsigned char tag)
{
    QByteArray& plain = m_state->waiting;
    QByteArray sealed(
        plain.size() + qsizetype(crypto_secretstream_xchacha20poly1305_ABYTES), Qt::Uninitialized);
    crypto_secretstream_xchacha20poly1305_push(&m_state->stream,
        reinterpret_cast<unsigned char*>(sealed.data()),
        nullptr,
        reinterpret_cast<const unsigned char*>(plain.constData()),
        static_cast<unsigned long long>(plain.size()),
        nullptr,
        0,
        tag);
    plain.clear();
    if (m_state->to.write(sealed) == sealed.size())
        return true;
    setErrorString(m_state->to.errorString());
    return false;
}

qint64 LockingDevice::writeData(const char* data, qint64 count)
{
    for (qint64 done = 0; done < count;) {
        const qint64 room = qint64(kFrame) - m_state->waiting.size();
        if (room == 0) {
            if (!seal(crypto_secretstream_xchacha20poly1305_TAG_MESSAGE))
                return -1;
            continue;
        }
        const qint64 part = std::min(room, count - done);
        m_state->waiting.append(data + done, part);
        done += part;
    }
    return count;
}

qint64 LockingDevice::readData(char* /*data*/, qint64 /*most*/)
{
    return -1;
}

Result<> LockingDevice::finish()
{
    if (!seal(crypto_secretstream_xchacha20poly1305_TAG_FINAL))
        return Error{ErrorCode::CannotWrite, {}, errorString()};
    close();
    return Done{};
}

bool isLocked(QIODevice& from)
{
    const QByteArray first = from.peek(sizeof kMagic);
    return first == QByteArray::fromRawData(kMagic, sizeof kMagic);
}

Result<> unlock(QIODevice& from,
    const QString& phrase,
    QIODevice& to,
    const std::function<bool(qint64)>& goesOn)
{
    if (sodium_init() < 0)
        return Error{ErrorCode::Internal, {}, {}};
    const auto front = readFront(from);
    if (!front)
        return front.error();
    Keys keys;
    if (auto made = makeKeys(phrase, *front, keys); !made)
        return made;
    std::array<unsigned char, 16> fits{};
    hash(*front, fits, keys.check.data());
    if (sodium_memcmp(fits.data(), front->fits.data(), fits.size()) != 0)
        return Error{ErrorCode::Refused, {}, QStringLiteral("the passphrase does not fit")};
    crypto_secretstream_xchacha20poly1305_state stream;
    if (crypto_secretstream_xchacha20poly1305_init_pull(
            &stream, front->stream.data(), keys.content.data())
        != 0)
        return damaged();
    QByteArray plain(kFrame, Qt::Uninitialized);
    unsigned char tag = 0;
    while (tag != crypto_secretstream_xchacha20poly1305_TAG_FINAL) {
        const QByteArray sealed = from.read(kSealed);
        unsigned long long count = 0;
        if (crypto_secretstream_xchacha20poly1305_pull(&stream,
                reinterpret_cast<unsigned char*>(plain.data()),
                &count,
                &tag,
                reinterpret_cast<const unsigned char*>(sealed.constData()),
                static_cast<unsigned long long>(sealed.size()),
                nullptr,
                0)
            != 0)
            return damaged();
        if (to.write(plain.constData(), qint64(count)) != qint64(count))
            return Error{ErrorCode::CannotWrite, {}, to.errorString()};
        if (goesOn && !goesOn(from.pos()))
            return Error{ErrorCode::Cancelled, {}, {}};
    }
    sodium_memzero(&stream, sizeof stream);
    return from.atEnd() ? Result<>(Done{}) : Result<>(damaged());
}

} // namespace wainscot
