// Which company words keep in a dictionary, as a direction for each word: "puddle" points to where
// "mud" points. Made from WordNet by words/make_word_vectors.py; the file's form is told there.
#pragma once

#include <QByteArray>
#include <QString>

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace wainscot {

inline constexpr std::size_t vectorDimensions = 100;
using WordVector = std::array<double, vectorDimensions>;

[[nodiscard]] double dot(const WordVector& one, const WordVector& other);
// All zeros stay all zeros.
[[nodiscard]] WordVector ofLengthOne(WordVector vector);

class WordVectors {
public:
    // The table the program carries; read once, then the same for all threads.
    [[nodiscard]] static const WordVectors& english();
    // A table whose size or form is wrong knows no word.
    explicit WordVectors(const QByteArray& file);

    [[nodiscard]] std::size_t size() const { return m_words.size(); }
    // Adds a stem's vector to a sum; false = the table does not know it.
    bool addTo(WordVector& sum, const QString& stem) const;

private:
    [[nodiscard]] std::optional<std::size_t> find(const QByteArray& stem) const;

    QByteArray m_file;
    std::vector<QByteArrayView> m_words; // in byte order
    const std::uint8_t* m_rows = nullptr;
};

} // namespace wainscot
