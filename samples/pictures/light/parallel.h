// Runs fn(row) for every row on all cores; rows are independent, so the
// result does not depend on the number of threads.
#pragma once

#include <atomic>
#include <thread>
#include <vector>

namespace wainscot::samples {

template <class Fn> void parallelRows(int rows, Fn&& fn)
{
    constexpr int kChunk = 8;
    std::atomic<int> next{0};
    const auto work = [&] {
        for (int start = next.fetch_add(kChunk); start < rows; start = next.fetch_add(kChunk))
            for (int row = start; row < std::min(rows, start + kChunk); ++row)
                fn(row);
    };
    const unsigned count = std::max(1u, std::thread::hardware_concurrency());
    std::vector<std::thread> threads;
    for (unsigned i = 1; i < count; ++i)
        threads.emplace_back(work);
    work();
    for (std::thread& thread : threads)
        thread.join();
}

} // namespace wainscot::samples
