#include "layout/paper/pdf_syntax.h"

#include <array>
#include <cmath>
#include <cstdint>

namespace wainscot::pdf {

std::string number(double value)
{
    // Built from an integer, so that no locale and no rounding mode of printf has a say.
    const auto scaled = static_cast<std::int64_t>(std::llround(std::abs(value) * 10000.0));
    std::string text = std::to_string(scaled / 10000);
    std::int64_t rest = scaled % 10000;
    if (rest > 0) {
        text += '.';
        for (std::int64_t place = 1000; rest > 0; place /= 10) {
            text += static_cast<char>('0' + rest / place);
            rest %= place;
        }
    }
    return value < 0 && scaled > 0 ? "-" + text : text;
}

std::string points(Mm length)
{
    return number(toPt(length).value());
}

std::string hexCode(unsigned code)
{
    static constexpr std::array digits{
        '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'A', 'B', 'C', 'D', 'E', 'F'};
    return {digits[(code >> 12) & 15U],
        digits[(code >> 8) & 15U],
        digits[(code >> 4) & 15U],
        digits[code & 15U]};
}

std::string utf16Hex(const QString& text)
{
    std::string hex;
    hex.reserve(static_cast<std::size_t>(text.size()) * 4);
    for (const QChar unit : text)
        hex += hexCode(unit.unicode());
    return hex;
}

std::string textString(const QString& text)
{
    return "<FEFF" + utf16Hex(text) + ">";
}

std::string rgb(QRgb colour)
{
    const auto channel = [alpha = qAlpha(colour)](int value) {
        return number((value * alpha + 255 * (255 - alpha)) / (255.0 * 255.0));
    };
    return channel(qRed(colour)) + " " + channel(qGreen(colour)) + " " + channel(qBlue(colour));
}

} // namespace wainscot::pdf
