#include "core/voice/word_vectors.h"

#include "core/voice/words/resources.h"

#include <QtEndian>

#include <algorithm>
#include <cmath>

namespace wainscot {
namespace {

constexpr int headBytes = 12;
constexpr std::size_t rowBytes = 1 + vectorDimensions / 2;

// Four bits as a number from -8 to 7.
int signedPart(unsigned bits)
{
    return bits > 7 ? int(bits) - 16 : int(bits);
}

} // namespace

double dot(const WordVector& one, const WordVector& other)
{
    double sum = 0;
    for (std::size_t at = 0; at < vectorDimensions; ++at)
        sum += one[at] * other[at];
    return sum;
}

WordVector ofLengthOne(WordVector vector)
{
    const double length = std::sqrt(dot(vector, vector));
    for (double& part : vector)
        part = length > 0 ? part / length : 0;
    return vector;
}

const WordVectors& WordVectors::english()
{
    static const WordVectors vectors(wordResource("word_vectors.bin"));
    return vectors;
}

WordVectors::WordVectors(const QByteArray& file)
    : m_file(file)
{
    if (m_file.size() < headBytes || !m_file.startsWith("WVT1")
        || qFromLittleEndian<quint32>(m_file.constData() + 8) != vectorDimensions)
        return;
    const std::size_t count = qFromLittleEndian<quint32>(m_file.constData() + 4);
    std::vector<QByteArrayView> words;
    qsizetype at = headBytes;
    while (words.size() < count) {
        const qsizetype end = m_file.indexOf('\n', at);
        if (end < 0)
            return;
        words.push_back(QByteArrayView(m_file).sliced(at, end - at));
        at = end + 1;
    }
    if (std::size_t(m_file.size() - at) != count * rowBytes)
        return;
    m_words = std::move(words);
    m_rows = reinterpret_cast<const std::uint8_t*>(m_file.constData()) + at;
}

std::optional<std::size_t> WordVectors::find(const QByteArray& stem) const
{
    const auto at = std::lower_bound(m_words.begin(), m_words.end(), QByteArrayView(stem));
    if (at == m_words.end() || *at != stem)
        return std::nullopt;
    return std::size_t(at - m_words.begin());
}

bool WordVectors::addTo(WordVector& sum, const QString& stem) const
{
    const std::optional<std::size_t> found = find(stem.toUtf8());
    if (!found)
        return false;
    const std::uint8_t* row = m_rows + *found * rowBytes;
    const double unit = row[0] / (255.0 * 7.0);
    for (std::size_t pair = 0; pair < vectorDimensions / 2; ++pair) {
        sum[2 * pair] += unit * signedPart(row[1 + pair] & 15U);
        sum[2 * pair + 1] += unit * signedPart(row[1 + pair] >> 4U);
    }
    return true;
}

} // namespace wainscot
