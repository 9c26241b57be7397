#include "tests/fuzz/targets.h"

namespace wainscot::fuzz {

const std::vector<Named>& targets()
{
    static const std::vector<Named> all{
        {"csv", csv, 100'000},
        {"template", templateFile, 50'000},
        {"picture", picture, 100'000},
        {"pixels", pixels, 10'000},
        {"scan", scan, 10'000},
        {"treatment", treatment, 20'000},
        {"wall", wall, 50'000},
        {"data", data, 20'000},
        {"table", table, 20'000},
        {"book", book, 2'000},
        {"pack", pack, 5'000},
        {"class", classList, 10'000},
        {"words", words, 10'000},
        {"photos", photoList, 5'000},
    };
    return all;
}

} // namespace wainscot::fuzz
