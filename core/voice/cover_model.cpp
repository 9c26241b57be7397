#include "core/voice/cover_model.h"

#include <algorithm>
#include <cstdlib>

namespace wainscot::cover {

Model::Model(std::vector<Item> items, int rows, int rivalSets, Amount capacity)
    : m_items(std::move(items))
    , m_ofRow(static_cast<std::size_t>(rows))
    , m_ofSet(static_cast<std::size_t>(rivalSets))
    , m_capacity(capacity)
{
    Amount area = 0;
    Amount value = 0;
    for (int at = 0; at < count(); ++at) {
        const Item& one = item(at);
        for (const int row : one.rows)
            m_ofRow[static_cast<std::size_t>(row)].push_back(at);
        if (one.rivals >= 0)
            m_ofSet[static_cast<std::size_t>(one.rivals)].push_back(at);
        if (one.value > 0)
            m_byDensity.push_back(at);
        m_byValue.push_back(at);
        m_leastValue += std::min<Amount>(0, one.value);
        area += one.area;
        value += std::abs(one.value);
    }
    const Amount number = std::max<Amount>(1, count());
    m_meanArea = std::max<Amount>(1, area / number);
    m_meanValue = std::max<Amount>(1, value / number);
    std::stable_sort(m_byValue.begin(), m_byValue.end(), [&](int a, int b) {
        return item(a).value > item(b).value;
    });
    // Compared crosswise: no rounding.
    std::stable_sort(m_byDensity.begin(), m_byDensity.end(), [&](int a, int b) {
        return item(a).value * item(b).area > item(b).value * item(a).area;
    });
}

} // namespace wainscot::cover
