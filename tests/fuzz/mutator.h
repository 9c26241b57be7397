// Seeded changes to bytes, for builds without a fuzzing compiler.
#pragma once

#include <QByteArray>

#include <random>
#include <vector>

namespace wainscot::fuzz {

class Mutator {
public:
    Mutator(std::vector<QByteArray> seeds, unsigned seed)
        : m_seeds(std::move(seeds))
        , m_random(seed)
    {
    }
    // One of the seeds with one to eight changes: bits, bytes, numbers that are often wrong, parts
    // left out, doubled, cut off or taken from another seed. Half of them keep their length, so
    // that what is found by counting (pages of a database, parts of an archive) is still found.
    [[nodiscard]] QByteArray next();

private:
    void change(QByteArray& bytes, bool inPlace);
    [[nodiscard]] QByteArray partOfAny(qsizetype length);
    [[nodiscard]] qsizetype below(qsizetype end)
    {
        return end <= 0 ? 0 : qsizetype(m_random() % quint32(end));
    }
    std::vector<QByteArray> m_seeds;
    std::mt19937 m_random;
};

// Every file of tests/data/fuzz/NAME, in the order of their names.
[[nodiscard]] std::vector<QByteArray> seedsOf(const char* name);

} // namespace wainscot::fuzz
