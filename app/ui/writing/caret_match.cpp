#include "app/ui/writing/caret_match.h"

#include <algorithm>

namespace wainscot::ui {

namespace {

// Longest common subsequence of what is left between equal beginnings and ends: names that gave
// way, marks that stand around. Both are short then.
void matchMiddle(const QString& written,
    const QString& drawn,
    int from,
    int writtenEnd,
    int drawnFrom,
    int drawnEnd,
    std::vector<int>& match)
{
    const int rows = writtenEnd - from;
    const int columns = drawnEnd - drawnFrom;
    if (rows <= 0 || columns <= 0)
        return;
    const std::size_t width = std::size_t(columns) + 1;
    std::vector<quint16> longest((std::size_t(rows) + 1) * width, 0); // from (row, column) on
    const auto at = [&](int row, int column) -> quint16& {
        return longest[std::size_t(row) * width + std::size_t(column)];
    };
    for (int row = rows - 1; row >= 0; --row) {
        for (int column = columns - 1; column >= 0; --column) {
            at(row, column) = written[from + row] == drawn[drawnFrom + column]
                ? quint16(at(row + 1, column + 1) + 1)
                : std::max(at(row + 1, column), at(row, column + 1));
        }
    }
    for (int row = 0, column = 0; row < rows && column < columns;) {
        if (written[from + row] == drawn[drawnFrom + column]) {
            match[std::size_t(from) + std::size_t(row)] = drawnFrom + column;
            ++row;
            ++column;
        } else if (at(row, column + 1) > at(row + 1, column)) {
            ++column;
        } else {
            ++row;
        }
    }
}

} // namespace

std::vector<int> matchLetters(const QString& written, const QString& drawn)
{
    std::vector<int> match(std::size_t(written.size()), -1);
    int from = 0;
    const int shorter = int(std::min(written.size(), drawn.size()));
    while (from < shorter && written[from] == drawn[from]) {
        match[std::size_t(from)] = from;
        ++from;
    }
    int writtenEnd = int(written.size());
    int drawnEnd = int(drawn.size());
    // What is written is often all drawn, with more behind it: then there is no middle.
    while (writtenEnd > from && drawnEnd > from && written[writtenEnd - 1] == drawn[drawnEnd - 1]) {
        match[std::size_t(--writtenEnd)] = --drawnEnd;
    }
    matchMiddle(written, drawn, from, writtenEnd, from, drawnEnd, match);
    return match;
}

} // namespace wainscot::ui
