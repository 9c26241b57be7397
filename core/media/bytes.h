// Numbers out of a file's bytes, in either order, that cannot be read past the end.
#pragma once

#include <QByteArrayView>

#include <cstdint>
#include <optional>

namespace wainscot {

enum class ByteOrder { Big, Little };

// Everything past the end reads as zero; `has` asks first where that would matter.
class Bytes {
public:
    explicit Bytes(QByteArrayView data, ByteOrder order = ByteOrder::Big)
        : m_data(data)
        , m_order(order)
    {
    }

    [[nodiscard]] qsizetype size() const { return m_data.size(); }
    [[nodiscard]] bool has(qsizetype at, qsizetype count) const
    {
        return at >= 0 && count >= 0 && at <= m_data.size() && count <= m_data.size() - at;
    }
    [[nodiscard]] std::uint8_t u8(qsizetype at) const
    {
        return has(at, 1) ? static_cast<std::uint8_t>(m_data[at]) : std::uint8_t(0);
    }
    [[nodiscard]] std::uint16_t u16(qsizetype at) const
    {
        const unsigned first = u8(at);
        const unsigned second = u8(at + 1);
        return static_cast<std::uint16_t>(
            m_order == ByteOrder::Big ? first << 8 | second : second << 8 | first);
    }
    [[nodiscard]] std::uint32_t u32(qsizetype at) const
    {
        const std::uint32_t first = u16(at);
        const std::uint32_t second = u16(at + 2);
        return m_order == ByteOrder::Big ? first << 16 | second : second << 16 | first;
    }
    // Empty when any of it lies past the end.
    [[nodiscard]] QByteArrayView part(qsizetype at, qsizetype count) const
    {
        return has(at, count) ? m_data.sliced(at, count) : QByteArrayView();
    }
    [[nodiscard]] bool says(qsizetype at, QByteArrayView text) const
    {
        return has(at, text.size()) && m_data.sliced(at, text.size()) == text;
    }

private:
    QByteArrayView m_data;
    ByteOrder m_order;
};

} // namespace wainscot
