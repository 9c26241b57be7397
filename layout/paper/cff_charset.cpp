#include "layout/paper/cff_charset.h"

#include <map>

namespace wainscot::pdf {

namespace {

// Reads big-endian numbers; past the end it delivers zeros and remembers the failure.
class Reader {
public:
    Reader(const QByteArray& bytes, std::size_t at)
        : m_bytes(bytes)
        , m_at(at)
    {
    }
    std::uint32_t number(int byteCount)
    {
        std::uint32_t value = 0;
        for (int i = 0; i < byteCount; ++i)
            value = value << 8 | byte();
        return value;
    }
    std::uint32_t byte()
    {
        if (m_at >= static_cast<std::size_t>(m_bytes.size())) {
            m_failed = true;
            return 0;
        }
        return static_cast<std::uint8_t>(m_bytes[static_cast<qsizetype>(m_at++)]);
    }
    void seek(std::size_t at) { m_at = at; }
    [[nodiscard]] std::size_t at() const { return m_at; }
    [[nodiscard]] bool failed() const { return m_failed; }

private:
    const QByteArray& m_bytes;
    std::size_t m_at;
    bool m_failed = false;
};

struct Index {
    std::uint32_t count = 0;
    std::size_t firstBegin = 0;
    std::size_t firstEnd = 0;
    std::size_t end = 0; // behind the whole index
};

Index readIndex(Reader& in)
{
    Index index;
    index.count = in.number(2);
    if (index.count == 0) {
        index.end = in.at();
        return index;
    }
    const int offsetSize = static_cast<int>(in.byte());
    if (offsetSize < 1 || offsetSize > 4)
        return index;
    const std::size_t offsets = in.at();
    const std::size_t data = offsets + (std::size_t(index.count) + 1) * offsetSize - 1;
    index.firstBegin = data + in.number(offsetSize);
    index.firstEnd = data + in.number(offsetSize);
    in.seek(offsets + std::size_t(index.count) * offsetSize);
    index.end = data + in.number(offsetSize);
    return index;
}

constexpr int kCharset = 15;
constexpr int kCharStrings = 17;
constexpr int kRos = 12 << 8 | 30; // registry, ordering, supplement: only in CID-keyed fonts

// Operators of a Top DICT with the last operand of each.
std::map<int, std::uint32_t> readDict(Reader& in, std::size_t end)
{
    std::map<int, std::uint32_t> entries;
    std::uint32_t operand = 0;
    while (in.at() < end && !in.failed()) {
        const std::uint32_t b = in.byte();
        if (b == 12)
            entries[static_cast<int>(12U << 8 | in.byte())] = operand;
        else if (b <= 21)
            entries[static_cast<int>(b)] = operand;
        else if (b == 28)
            operand = in.number(2);
        else if (b == 29)
            operand = in.number(4);
        else if (b == 30) { // a real number: nibbles up to 0xf
            while (!in.failed()) {
                const std::uint32_t pair = in.byte();
                if ((pair & 15U) == 15U || pair >> 4 == 15U)
                    break;
            }
        } else if (b >= 32 && b <= 246)
            operand = b - 139;
        else if (b >= 247 && b <= 250)
            operand = (b - 247) * 256 + in.byte() + 108;
        else if (b >= 251 && b <= 254)
            operand = 0U - (b - 251) * 256 - in.byte() - 108;
    }
    return entries;
}

std::vector<std::uint16_t> readCids(Reader& in, std::uint32_t glyphCount)
{
    std::vector<std::uint16_t> cids{0}; // .notdef is not listed
    cids.reserve(glyphCount);
    const std::uint32_t format = in.byte();
    while (cids.size() < glyphCount && !in.failed() && format <= 2) {
        const std::uint32_t first = in.number(2);
        const std::uint32_t more = format == 0 ? 0 : in.number(format == 1 ? 1 : 2);
        for (std::uint32_t i = 0; i <= more && cids.size() < glyphCount; ++i)
            cids.push_back(static_cast<std::uint16_t>(first + i));
    }
    return cids;
}

} // namespace

std::optional<CffCharset> readCffCharset(const QByteArray& cff)
{
    Reader in(cff, 2);
    in.seek(in.byte()); // the size of the header
    in.seek(readIndex(in).end); // names
    const Index topDicts = readIndex(in);
    in.seek(topDicts.firstBegin);
    const auto top = readDict(in, topDicts.firstEnd);
    const auto charStrings = top.find(kCharStrings);
    if (topDicts.count == 0 || charStrings == top.end() || in.failed())
        return std::nullopt;

    CffCharset charset;
    charset.cidKeyed = top.count(kRos) > 0;
    if (!charset.cidKeyed)
        return charset;
    in.seek(charStrings->second);
    const std::uint32_t glyphCount = readIndex(in).count;
    const auto at = top.find(kCharset);
    if (at == top.end()) // predefined charsets are not for CID-keyed fonts
        return std::nullopt;
    in.seek(at->second);
    charset.cidOfGlyph = readCids(in, glyphCount);
    if (in.failed() || charset.cidOfGlyph.size() != glyphCount)
        return std::nullopt;
    return charset;
}

} // namespace wainscot::pdf
