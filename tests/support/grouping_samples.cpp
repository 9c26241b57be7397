#include "tests/support/grouping_samples.h"

#include "core/voice/grouping.h"

#include <QFile>

#include <algorithm>
#include <map>

namespace wainscot {
namespace {

double pairsOf(double count)
{
    return count * (count - 1) / 2;
}

std::vector<std::size_t> shuffled(std::size_t count, std::mt19937& random)
{
    std::vector<std::size_t> order(count);
    for (std::size_t at = 0; at < count; ++at)
        order[at] = at;
    for (std::size_t at = count; at > 1; --at) // not std::shuffle: the same everywhere
        std::swap(order[at - 1], order[random() % at]);
    return order;
}

} // namespace

SortedTexts sortedTextsFrom(const QString& file)
{
    SortedTexts all;
    std::map<QString, int> numbers;
    QFile lines(file);
    if (!lines.open(QIODevice::ReadOnly))
        return all;
    while (!lines.atEnd()) {
        const QString line = QString::fromUtf8(lines.readLine()).trimmed();
        if (line.startsWith(QLatin1Char('#')) || !line.contains(QLatin1Char('\t')))
            continue;
        const QString name = line.section(QLatin1Char('\t'), 0, 0);
        all.classes.push_back(numbers.try_emplace(name, int(numbers.size())).first->second);
        all.texts.push_back({QuoteId(std::int64_t(all.texts.size()) + 1),
            line.section(QLatin1Char('\t'), 1),
            QStringLiteral("en")});
    }
    return all;
}

SortedTexts sampleOf(const SortedTexts& all, std::mt19937& random)
{
    const int most = *std::max_element(all.classes.begin(), all.classes.end()) + 1;
    const std::size_t texts = 60 + random() % 31;
    const std::size_t classes = 8 + random() % 8;
    const std::vector<std::size_t> classOrder = shuffled(std::size_t(most), random);
    const std::vector<std::size_t> textOrder = shuffled(all.texts.size(), random);
    SortedTexts sample;
    std::size_t share = texts;
    for (std::size_t at = 0; at < std::min(classes, classOrder.size()); ++at) {
        share = std::max<std::size_t>(2, (texts - sample.texts.size()) / 4 + random() % 4);
        for (const std::size_t text : textOrder) {
            if (share > 0 && all.classes[text] == int(classOrder[at])) {
                sample.texts.push_back(all.texts[text]);
                sample.classes.push_back(all.classes[text]);
                --share;
            }
        }
    }
    return sample;
}

double agreement(const std::vector<int>& one, const std::vector<int>& other)
{
    std::map<std::pair<int, int>, double> both;
    std::map<int, double> first;
    std::map<int, double> second;
    for (std::size_t at = 0; at < one.size(); ++at) {
        ++both[{one[at], other[at]}];
        ++first[one[at]];
        ++second[other[at]];
    }
    double together = 0;
    double inFirst = 0;
    double inSecond = 0;
    for (const auto& [pair, count] : both)
        together += pairsOf(count);
    for (const auto& [set, count] : first)
        inFirst += pairsOf(count);
    for (const auto& [set, count] : second)
        inSecond += pairsOf(count);
    const double chance = inFirst * inSecond / pairsOf(double(one.size()));
    return (together - chance) / ((inFirst + inSecond) / 2 - chance);
}

std::vector<int> setOfEach(const std::vector<std::vector<std::size_t>>& sets, std::size_t texts)
{
    std::vector<int> set(texts, -1);
    for (std::size_t at = 0; at < sets.size(); ++at) {
        for (const std::size_t text : sets[at])
            set[text] = int(at);
    }
    return set;
}

double meanAgreement(const SortedTexts& all, Likeness likeness, Cut cut, unsigned seed, int samples)
{
    std::mt19937 random(seed);
    double sum = 0;
    for (int at = 0; at < samples; ++at) {
        const SortedTexts sample = sampleOf(all, random);
        const std::size_t texts = sample.texts.size();
        std::map<int, int> classes;
        for (const int one : sample.classes)
            ++classes[one];
        const GroupingWish usual;
        const LikenessTable table = likeness(sample.texts);
        const std::vector<Joining> made = cut == Cut::TrueNumber
            ? joinings(table, -1, texts)
            : joinings(table, usual.leastLikeness, usual.mostAnswers);
        const std::size_t steps = cut == Cut::TrueNumber ? texts - classes.size() : made.size();
        const auto sets = setsAfter(made, steps, texts);
        sum += agreement(sample.classes, setOfEach(sets, texts));
    }
    return sum / samples;
}

} // namespace wainscot
