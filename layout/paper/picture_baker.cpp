#include "layout/paper/picture_baker.h"

#include "layout/paper/qpdf.h"

#include <QFileInfo>

#include <algorithm>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <stdexcept>
#include <thread>

namespace wainscot::pdf {

namespace {

using Handle = QPDFObjectHandle;

QString nameOf(const ClearedPicture& picture)
{
    const QString number = QStringLiteral("picture %1").arg(picture.id.number());
    return picture.alternative.isEmpty()
        ? number
        : QStringLiteral("%1 (%2)").arg(number, picture.alternative);
}

class PictureProvider final : public Handle::StreamDataProvider {
public:
    PictureProvider(
        BakedPicture picture, std::shared_ptr<Spool> spool, std::shared_ptr<FileNumber> number)
        : m_picture(std::move(picture))
        , m_spool(std::move(spool))
        , m_number(std::move(number))
    {
    }
    void provideStreamData(const QPDFObjGen& /*object*/, Pipeline* pipeline) override
    {
        const QByteArray bytes = m_picture.passedThrough()
            ? m_picture.again()
            : m_spool->read(m_picture.offset, m_picture.length);
        if (bytes.size() != m_picture.length)
            throw std::runtime_error("a picture cannot be read a second time");
        if (m_picture.passedThrough())
            m_number->expect(m_picture.original, m_picture.length);
        pipeline->write(bytes.constData(), static_cast<std::size_t>(bytes.size()));
        pipeline->finish();
    }

private:
    BakedPicture m_picture;
    std::shared_ptr<Spool> m_spool;
    std::shared_ptr<FileNumber> m_number;
};

// Shared by the workers and the thread that waits for them.
class Bench {
public:
    Bench(const std::vector<PlannedPicture>& wanted,
        PictureSource& source,
        QString target,
        Spool& spool)
        : m_wanted(wanted)
        , m_source(source)
        , m_target(std::move(target))
        , m_spool(spool)
        , m_baked(wanted.size())
    {
    }

    void work()
    {
        for (std::optional<std::size_t> index = next(); index; index = next())
            bakeOne(*index);
        const std::lock_guard lock(m_mutex);
        --m_working;
        m_changed.notify_one();
    }

    Result<std::vector<BakedPicture>> run(int workers, const PaperWatch& watch)
    {
        m_working = workers;
        std::vector<std::thread> threads;
        threads.reserve(static_cast<std::size_t>(workers));
        for (int i = 0; i < workers; ++i)
            threads.emplace_back([this] { work(); });
        waitAndTell(watch);
        for (std::thread& thread : threads)
            thread.join();
        if (m_error)
            return std::move(*m_error);
        return std::move(m_baked);
    }

private:
    std::optional<std::size_t> next()
    {
        const std::lock_guard lock(m_mutex);
        if (m_error || m_next >= m_baked.size())
            return std::nullopt;
        return m_next++;
    }

    void fail(Error error)
    {
        const std::lock_guard lock(m_mutex);
        if (!m_error)
            m_error = std::move(error);
        m_changed.notify_one();
    }

    void bakeOne(std::size_t index)
    {
        const PlannedPicture& planned = m_wanted[index];
        Result<BakedJpeg> jpeg = askSource(planned);
        if (!jpeg) {
            const Error& why = jpeg.error();
            const QString detail = why.subject.isEmpty()
                ? why.detail
                : QStringLiteral("%1: %2").arg(QFileInfo(why.subject).fileName(), why.detail);
            return fail({why.code, nameOf(planned.picture), detail});
        }
        const std::lock_guard lock(m_mutex);
        BakedPicture& baked = m_baked[index];
        QString error;
        if (!jpeg->passedThrough && !m_spool.append(jpeg->bytes, baked.offset, error)) {
            if (!m_error)
                m_error = Error{ErrorCode::CannotWrite, m_target, error};
        } else {
            baked.length = jpeg->bytes.size();
            baked.size = jpeg->size;
            baked.components = jpeg->components;
            if (jpeg->passedThrough) {
                baked.original = planned.picture.sha256.toUtf8();
                baked.again = [&source = m_source, planned] {
                    const Result<BakedJpeg> same = source.bake(planned.picture, planned.largest);
                    return same ? same->bytes : QByteArray();
                };
            }
            ++m_done;
        }
        m_changed.notify_one();
    }

    Result<BakedJpeg> askSource(const PlannedPicture& planned)
    {
        try {
            Result<BakedJpeg> jpeg = m_source.bake(planned.picture, planned.largest);
            if (jpeg && (jpeg->bytes.isEmpty() || jpeg->size.isEmpty()))
                return Error{ErrorCode::CannotRead, {}, QStringLiteral("no pixels were delivered")};
            return jpeg;
        } catch (const std::exception& thrown) { // a worker must not end the program
            return Error{ErrorCode::Internal, {}, QString::fromUtf8(thrown.what())};
        }
    }

    void waitAndTell(const PaperWatch& watch)
    {
        using namespace std::chrono_literals;
        const int all = static_cast<int>(m_baked.size());
        int told = -1;
        std::unique_lock lock(m_mutex);
        while (true) {
            if (watch.cancelled() && !m_error)
                m_error = Error{ErrorCode::Cancelled, m_target, {}};
            if (m_done != told && watch.onProgress) {
                told = m_done;
                lock.unlock();
                watch.onProgress(told, all);
                lock.lock();
                continue; // cancelled meanwhile?
            }
            if (m_working == 0)
                return;
            // By this clock, because the thread sanitizer does not see waiting by the other one.
            m_changed.wait_until(lock, std::chrono::system_clock::now() + 50ms);
        }
    }

    const std::vector<PlannedPicture>& m_wanted;
    PictureSource& m_source;
    QString m_target;
    Spool& m_spool;
    std::mutex m_mutex; // guards everything below and the spool
    std::condition_variable m_changed;
    std::vector<BakedPicture> m_baked;
    std::optional<Error> m_error;
    std::size_t m_next = 0;
    int m_done = 0;
    int m_working = 0;
};

} // namespace

Spool::Spool(const QString& targetPath)
    : m_file(QFileInfo(targetPath).absolutePath() + QStringLiteral("/.XXXXXX"))
{
}

bool Spool::open(QString& error)
{
    if (m_file.open())
        return true;
    error = m_file.errorString();
    return false;
}

bool Spool::append(const QByteArray& bytes, qint64& offset, QString& error)
{
    offset = m_end;
    if (!m_file.seek(m_end) || m_file.write(bytes) != bytes.size() || !m_file.flush()) {
        error = m_file.errorString();
        return false;
    }
    m_end += bytes.size();
    return true;
}

QByteArray Spool::read(qint64 offset, qint64 length)
{
    return m_file.seek(offset) ? m_file.read(length) : QByteArray();
}

Result<std::vector<BakedPicture>> bakeAll(const std::vector<PlannedPicture>& wanted,
    PictureSource& source,
    int workers,
    const QString& targetPath,
    Spool& spool,
    const PaperWatch& watch)
{
    const int useful = std::clamp(workers, 1, 16);
    return Bench(wanted, source, targetPath, spool).run(useful, watch);
}

Handle imageObject(QPDF& file,
    const BakedPicture& picture,
    const std::shared_ptr<Spool>& spool,
    const std::shared_ptr<FileNumber>& number)
{
    Handle stream = Handle::newStream(&file);
    Handle dict = stream.getDict();
    dict.replaceKey("/Type", Handle::newName("/XObject"));
    dict.replaceKey("/Subtype", Handle::newName("/Image"));
    dict.replaceKey("/Width", Handle::newInteger(picture.size.width));
    dict.replaceKey("/Height", Handle::newInteger(picture.size.height));
    dict.replaceKey("/BitsPerComponent", Handle::newInteger(8));
    dict.replaceKey(
        "/ColorSpace", Handle::newName(picture.components == 1 ? "/DeviceGray" : "/DeviceRGB"));
    const auto provider = std::make_shared<PictureProvider>(picture, spool, number);
    stream.replaceStreamData(provider, Handle::newName("/DCTDecode"), Handle::newNull());
    return stream;
}

} // namespace wainscot::pdf
