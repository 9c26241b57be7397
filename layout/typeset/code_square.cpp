#include "layout/typeset/code_square.h"

#include <qrencode.h>

#include <memory>

namespace wainscot {

CodeSquare codeSquareOf(const QString& text)
{
    constexpr int kAnySize = 0;
    constexpr int kLettersAsTheyAre = 1;
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeString(
            text.toUtf8().constData(), kAnySize, QR_ECLEVEL_M, QR_MODE_8, kLettersAsTheyAre),
        &QRcode_free);
    CodeSquare square;
    if (!code)
        return square;
    square.side = code->width;
    const auto modules = std::size_t(square.side) * std::size_t(square.side);
    square.dark.reserve(modules);
    for (std::size_t i = 0; i < modules; ++i)
        square.dark.push_back((code->data[i] & 1U) != 0);
    return square;
}

std::vector<RectMm> darkOf(const CodeSquare& code, PointMm topLeft, Mm module)
{
    std::vector<RectMm> rects;
    for (int row = 0; row < code.side; ++row) {
        for (int column = 0; column < code.side; ++column) {
            const int first = column;
            while (column < code.side && code.isDark(column, row))
                ++column;
            if (column > first)
                rects.push_back({topLeft.x + first * module,
                    topLeft.y + row * module,
                    (column - first) * module,
                    module});
        }
    }
    return rects;
}

} // namespace wainscot
