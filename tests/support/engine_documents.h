// Seeded, realistic documents for the engine: what a class might put on one display. Invented.
#pragma once

#include "tests/support/fake_measurer.h"

#include <memory>

namespace wainscot::engine {

enum class Format { A1Landscape, A1Portrait, A2Portrait, A3Landscape, Poster24x36 };

// Repeatable random numbers (xorshift64), the same on every platform.
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : m_state(seed * 0x9E3779B97F4A7C15ULL + 77)
    {
        for (int k = 0; k < 5; ++k)
            next();
    }
    int between(int low, int high) { return low + int(next() % std::uint32_t(high - low + 1)); }
    double share() { return next() / 4294967296.0; }

private:
    std::uint32_t next()
    {
        m_state ^= m_state << 13;
        m_state ^= m_state >> 7;
        m_state ^= m_state << 17;
        return std::uint32_t(m_state >> 16);
    }
    std::uint64_t m_state;
};

struct Document {
    Request request;
    FakeMeasurer text;
    double readingDistance = 1.5; // m
};

// Margins, gutter and rows by the panel style's rules (S/18, S/42, one body line).
[[nodiscard]] PageSpec pageFor(Format format);

// A free document of about `count` pieces: title, context, groups of photos and quotes, adult text.
[[nodiscard]] std::unique_ptr<Document> makeDocument(int seed, int count, Format format);

// Days on a wall: title, context, credits, a dominant photo, per day {label, photo, quote}, adult
// text. With 4 days it has the 17 pieces of the style's own panel.
[[nodiscard]] std::unique_ptr<Document> makeDays(
    int seed, int days, Format format, bool credits = true, bool adults = true);

// One drawing and its words.
[[nodiscard]] std::unique_ptr<Document> makeDrawing(int seed, Format format, bool note = true);

} // namespace wainscot::engine
