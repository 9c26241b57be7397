#include "layout/typeset/writing_lines.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr Mm kLineHeight{0.3};
constexpr Mm kLevel{0.5}; // cells whose tops differ by less stand side by side
constexpr Mm kTouch{0.1}; // a line this little below its cell is still at its foot

WritingRoom joined(WritingRoom a, const WritingRoom& b)
{
    const Mm left = std::min(a.cell.x, b.cell.x);
    const Mm right = std::max(a.cell.right(), b.cell.right());
    const Mm bottom = std::max(a.cell.bottom(), b.cell.bottom());
    a.cell = {left, a.cell.y, right - left, bottom - a.cell.y};
    a.first = std::max(a.first, b.first);
    return a;
}

std::vector<WritingRoom> sideBySideJoined(const std::vector<WritingRoom>& rooms)
{
    std::vector<WritingRoom> result;
    for (const WritingRoom& room : rooms) {
        const auto beside = std::find_if(result.begin(), result.end(), [&](const WritingRoom& one) {
            return one.cell.y - room.cell.y < kLevel && room.cell.y - one.cell.y < kLevel;
        });
        if (beside == result.end())
            result.push_back(room);
        else
            *beside = joined(*beside, room);
    }
    return result;
}

} // namespace

std::vector<WritingLine> writingLines(const std::vector<WritingRoom>& rooms)
{
    std::vector<WritingLine> lines;
    for (const WritingRoom& room : sideBySideJoined(rooms)) {
        for (int i = 0;; ++i) {
            const Mm y = room.first + i * room.space.pitch;
            if (i >= room.space.lines && y > room.cell.bottom() + kTouch)
                break;
            const RectMm rect{room.cell.x, y - kLineHeight / 2, room.cell.width, kLineHeight};
            lines.push_back({room.piece, rect});
        }
    }
    return lines;
}

} // namespace wainscot
