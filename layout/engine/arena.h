// Room for many small arrays that are all given up together.
#pragma once

#include <algorithm>
#include <cstddef>
#include <memory>
#include <vector>

namespace wainscot::engine {

template <typename T> class Arena {
public:
    // Value-initialised once, then reused as it was left. `spare` more may be read after the array.
    explicit Arena(std::size_t spare = 0)
        : m_spare(spare)
    {
    }
    [[nodiscard]] T* take(std::size_t count)
    {
        while (m_block < m_blocks.size() && m_used + count + m_spare > m_blocks[m_block].size) {
            ++m_block;
            m_used = 0;
        }
        if (m_block == m_blocks.size()) {
            const std::size_t size = std::max(kBlock, count + m_spare);
            m_blocks.push_back({std::make_unique<T[]>(size), size});
        }
        T* at = m_blocks[m_block].data.get() + m_used;
        m_used += count;
        return at;
    }
    void clear()
    {
        m_block = 0;
        m_used = 0;
    }
    [[nodiscard]] std::size_t bytes() const
    {
        std::size_t sum = 0;
        for (const Block& block : m_blocks)
            sum += block.size * sizeof(T);
        return sum;
    }

private:
    static constexpr std::size_t kBlock = std::size_t(1 << 16) / sizeof(T); // 64 KiB
    struct Block {
        std::unique_ptr<T[]> data;
        std::size_t size;
    };
    std::vector<Block> m_blocks;
    std::size_t m_block = 0; // the one being filled
    std::size_t m_used = 0;
    std::size_t m_spare;
};

} // namespace wainscot::engine
