#include "tests/fuzz/mutator.h"
#include "tests/fuzz/targets.h"

#include <string_view>

namespace wainscot::fuzz {

std::vector<QByteArray> allSeedsOf(const char* name)
{
    const std::string_view asked = name;
    if (asked == "pixels")
        return seedsOf("picture");
    std::vector<QByteArray> seeds = seedsOf(name);
    const bool isData = asked == "data";
    if (!isData && asked != "book")
        return seeds;
    const std::vector<QByteArray> books = broughtUp(seedsOf("book"));
    seeds.reserve(seeds.size() + books.size());
    for (const QByteArray& present : books)
        seeds.push_back(isData ? dataOf(present) : present);
    return seeds;
}

} // namespace wainscot::fuzz
