#include "layout/typeset/faces.h"

#include <QFontDatabase>
#include <QMutex>
#include <QPainterPath>

#include <array>
#include <map>
#include <utility>

namespace wainscot {

namespace {

constexpr int kMeasuringPixels = 2048; // large enough that rounding in the font engine is nothing

// Letters of English text in per mille; the rest of the alphabet is too rare to count.
constexpr std::array kLetterFrequency{std::pair{' ', 18.0},
    std::pair{'e', 10.2},
    std::pair{'t', 7.4},
    std::pair{'a', 6.6},
    std::pair{'o', 6.2},
    std::pair{'n', 5.7},
    std::pair{'i', 5.6},
    std::pair{'s', 5.1},
    std::pair{'h', 5.0},
    std::pair{'r', 4.8},
    std::pair{'d', 3.5},
    std::pair{'l', 3.3},
    std::pair{'u', 2.4},
    std::pair{'c', 2.3},
    std::pair{'m', 2.0},
    std::pair{'w', 2.0},
    std::pair{'f', 1.8},
    std::pair{'g', 1.6},
    std::pair{'y', 1.6},
    std::pair{'p', 1.5},
    std::pair{'b', 1.2},
    std::pair{'v', 0.8},
    std::pair{'k', 0.7},
    std::pair{'.', 1.0},
    std::pair{',', 1.0}};

double advance(const QRawFont& font, QChar character)
{
    const auto glyphs = font.glyphIndexesForString(QString(character));
    const auto advances = font.advancesForGlyphIndexes(glyphs, QRawFont::UseDesignMetrics);
    return advances.isEmpty() ? 0 : advances.front().x() / font.pixelSize();
}

double heightOf(const QRawFont& font, QChar character)
{
    const auto glyphs = font.glyphIndexesForString(QString(character));
    if (glyphs.isEmpty())
        return 0;
    return -font.pathForGlyph(glyphs.front()).boundingRect().top() / font.pixelSize();
}

double meanCharacter(const QRawFont& font)
{
    double sum = 0;
    double weights = 0;
    for (const auto& [letter, frequency] : kLetterFrequency) {
        sum += frequency * advance(font, QLatin1Char(letter));
        weights += frequency;
    }
    return sum / weights;
}

FaceMetrics measured(const QRawFont& font)
{
    FaceMetrics metrics;
    metrics.capHeight = heightOf(font, u'H');
    metrics.xHeight = heightOf(font, u'x');
    metrics.meanCharacter = meanCharacter(font);
    metrics.openingMark = advance(font, u'\u201C');
    return metrics;
}

// What every thread may share: names and numbers, never a font.
struct Known {
    QMutex mutex;
    std::map<QString, bool> installed;
    std::map<std::pair<QString, Weight>, FaceMetrics> metrics;
};

Known& known()
{
    static Known all;
    return all;
}

} // namespace

bool isInstalled(const QString& family)
{
    Known& all = known();
    const QMutexLocker lock(&all.mutex);
    const auto at = all.installed.find(family);
    if (at != all.installed.end())
        return at->second;
    return all.installed[family] = QFontDatabase::hasFamily(family);
}

std::optional<FaceMetrics> faceMetrics(const QString& family, Weight weight)
{
    if (!isInstalled(family))
        return std::nullopt;
    Known& all = known();
    {
        const QMutexLocker lock(&all.mutex);
        const auto at = all.metrics.find({family, weight});
        if (at != all.metrics.end())
            return at->second;
    }
    const Result<QRawFont> font = rawFont(family, weight, kMeasuringPixels);
    if (!font)
        return std::nullopt;
    const FaceMetrics metrics = measured(*font);
    const QMutexLocker lock(&all.mutex);
    return all.metrics[{family, weight}] = metrics;
}

} // namespace wainscot
