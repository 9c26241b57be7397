#include "tests/fuzz/mutator.h"
#include "tests/support/places.h"

#include <QDir>
#include <QFile>

#include <array>

namespace wainscot::fuzz {

QByteArray Mutator::next()
{
    QByteArray bytes = m_seeds[std::size_t(below(qsizetype(m_seeds.size())))];
    const qsizetype changes = 1 + below(8);
    const bool inPlace = below(2) == 0;
    for (qsizetype i = 0; i < changes; ++i)
        change(bytes, inPlace);
    return bytes;
}

void Mutator::change(QByteArray& bytes, bool inPlace)
{
    static constexpr std::array<unsigned char, 8> kOdd{
        0x00, 0x01, 0x7f, 0x80, 0xff, 0xfe, '"', '\n'};
    const qsizetype at = below(bytes.size());
    const qsizetype length = 1 + below(std::min<qsizetype>(bytes.size() - at, 64));
    switch (below(inPlace ? 4 : 9)) {
    case 0:
        if (!bytes.isEmpty())
            bytes[at] = char(bytes.at(at) ^ (1 << below(8)));
        break;
    case 1:
        if (!bytes.isEmpty())
            bytes[at] = char(kOdd[std::size_t(below(qsizetype(kOdd.size())))]);
        break;
    case 2:
        for (qsizetype i = at; i < std::min(at + 4, bytes.size()); ++i)
            bytes[i] = char(0xff);
        break;
    case 3:
        bytes.replace(at, length, partOfAny(length).leftJustified(length, '\0'));
        break;
    case 4:
        bytes.remove(at, length);
        break;
    case 5:
        bytes.insert(at, bytes.mid(at, length));
        break;
    case 6:
        bytes.insert(at, char(m_random()));
        break;
    case 7:
        bytes.truncate(at);
        break;
    default:
        bytes.insert(at, partOfAny(length));
    }
}

QByteArray Mutator::partOfAny(qsizetype length)
{
    const QByteArray& other = m_seeds[std::size_t(below(qsizetype(m_seeds.size())))];
    return other.mid(below(other.size()), length);
}

std::vector<QByteArray> seedsOf(const char* name)
{
    std::vector<QByteArray> seeds;
    const QDir folder(testData("fuzz/") + QString::fromLatin1(name));
    for (const QString& file : folder.entryList(QDir::Files, QDir::Name)) {
        QFile seed(folder.filePath(file));
        if (seed.open(QIODevice::ReadOnly))
            seeds.push_back(seed.readAll());
    }
    return seeds;
}

} // namespace wainscot::fuzz
