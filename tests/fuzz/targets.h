// Everything that reads what others made, as functions that take any bytes. They end in an answer
// or a reason; what must hold of the answer is checked, and broken promises abort.
#pragma once

#include <QByteArray>
#include <QString>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace wainscot::fuzz {

// Not assert: it must hold in every build.
void must(bool holds, const char* promise);
[[nodiscard]] QByteArray view(const std::uint8_t* bytes, std::size_t count);
// A folder for files of this run, in memory where the system has such a place.
[[nodiscard]] QString place();
void put(const QString& path, const std::uint8_t* bytes, std::size_t count);

using Target = void (*)(const std::uint8_t* bytes, std::size_t count);

void csv(const std::uint8_t* bytes, std::size_t count); // a table
void templateFile(const std::uint8_t* bytes, std::size_t count); // a shared template, JSON
void picture(const std::uint8_t* bytes, std::size_t count); // header, metadata, without decoding
void pixels(const std::uint8_t* bytes, std::size_t count); // decoded, with its middle covered
void treatment(const std::uint8_t* bytes, std::size_t count); // what was done to a picture, a text
void data(const std::uint8_t* bytes, std::size_t count); // a book's tables as JSON
void table(const std::uint8_t* bytes, std::size_t count); // one of these tables as CSV
void book(const std::uint8_t* bytes, std::size_t count); // a book's database
void pack(const std::uint8_t* bytes, std::size_t count); // a packed book
void scan(const std::uint8_t* bytes, std::size_t count); // a scanned PDF, drawn page by page
void wall(const std::uint8_t* bytes, std::size_t count); // a measured wall, JSON, and its plan
void classList(const std::uint8_t* bytes, std::size_t count); // CSV with permissions, gathered
void words(const std::uint8_t* bytes, std::size_t count); // CSV of children's words, gathered
void photoList(const std::uint8_t* bytes, std::size_t count); // CSV beside pictures, gathered

// Those of the books that open, as they are then: of the present version.
[[nodiscard]] std::vector<QByteArray> broughtUp(const std::vector<QByteArray>& books);
// What the data target reads, of a book of the present version.
[[nodiscard]] QByteArray dataOf(const QByteArray& book);

struct Named {
    const char* name; // of the seeds' folder in tests/data/fuzz, and of the program
    Target target;
    int quickRuns; // mutated inputs in the tests
};
[[nodiscard]] const std::vector<Named>& targets();

// The seeds of a target; for books and their data also as the present version keeps them.
[[nodiscard]] std::vector<QByteArray> allSeedsOf(const char* name);

} // namespace wainscot::fuzz
