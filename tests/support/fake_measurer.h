// Text without fonts: every character has one width, lines break greedily. For the engine's tests.
#pragma once

#include "layout/engine/arrangement.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

namespace wainscot::engine {

// Words of one item and their type, in mm. Numbers as a classroom panel would have them.
struct FakeText {
    std::string words;
    double cap = 5.8; // of the running text
    double lead = 11.3;
    double meanChar = 4;
    double below = 0; // a name or heading, its gap included
    double padding = 0; // of a tint, on each side
    double minChars = 14;
    double maxChars = 50;
    double captionGap = 0; // pictures only
};

class FakeMeasurer : public TextMeasurer {
public:
    void set(ItemId item, FakeText text) { m_texts[item] = std::move(text); }
    [[nodiscard]] const FakeText& text(ItemId item) const { return m_texts.at(item); }

    [[nodiscard]] TextMetrics measure(ItemId item, Mm width) const override
    {
        const FakeText& text = m_texts.at(item);
        TextMetrics out;
        if (text.words.empty())
            return out;
        const double inner = width.value() - 2 * text.padding;
        const auto most = std::size_t(std::max(0.0, std::floor(inner / text.meanChar + 1e-9)));
        std::size_t longest = 0;
        std::size_t line = 0;
        out.lines = 1;
        for (std::size_t at = 0; at < text.words.size();) {
            const std::size_t end = std::min(text.words.find(' ', at), text.words.size());
            const std::size_t word = end - at;
            out.fits = out.fits && word <= most;
            if (line > 0 && line + 1 + word > most) {
                ++out.lines;
                line = word;
            } else {
                line += word + (line > 0 ? 1 : 0);
            }
            longest = std::max(longest, line);
            at = end + 1;
        }
        out.height = Mm(text.cap + (out.lines - 1) * text.lead + text.below + 2 * text.padding);
        out.usedWidth = Mm(double(longest) * text.meanChar + 2 * text.padding);
        return out;
    }

    [[nodiscard]] TextSpec spec(ItemId item) const override
    {
        const FakeText& text = m_texts.at(item);
        return {text.minChars,
            text.maxChars,
            Mm(text.meanChar),
            Mm(text.lead),
            Mm(text.captionGap),
            text.padding > 0};
    }

private:
    std::map<ItemId, FakeText> m_texts;
};

} // namespace wainscot::engine
