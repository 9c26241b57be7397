#include "tests/support/many_quotes.h"

#include <random>

namespace wainscot {

namespace {

// Words as they come in talk about weather, snails and puddles; the second part rarely.
const QStringList& words()
{
    static const QStringList all = QStringLiteral(
        "the it is a and in i to water puddle because when goes up down rain worm snail leaf "
        "sun cloud cold wet gos wuz sno drip drop under my mum said we saw think why how like "
        "moves eats sleeps sky mud boots splash tree bird nest egg shell slow fast big little "
        "ni\u00f1a agua \u00e1rbol caracol \u00bfpor qu\u00e9 sube lluvia se\u00f1or "
        "fr\u00e5n sm\u00f8r \u0142\u00f3d\u017a \u00e9t\u00e9 na\u00efve "
        "\u5c0f\u96e8\u8bf4\u6c34\u5728\u5929\u4e0a \u8717\u725b\u5f88\u6162 "
        "\u0e1d\u0e19\u0e15\u0e01\u0e17\u0e35\u0e48\u0e1a\u0e49\u0e32\u0e19 "
        "\u0627\u0644\u0645\u0627\u0621 \u0645\u064e\u0637\u064e\u0631 "
        "\u0431\u0430\u0431\u043e\u0447\u043a\u0430 \u0627\u0644\u062d\u0644\u0632\u0648\u0646 "
        "\u0915\u094d\u092f\u094b\u0902 \u05d2\u05e9\u05dd evaporation dinosaur condensation "
        "caterpillar rainbow magnet shadow icicle whirlpool")
                                       .split(QLatin1Char(' '));
    return all;
}

} // namespace

std::vector<QString> manyQuotes(unsigned seed, std::size_t count)
{
    std::mt19937 random(seed);
    const auto number = [&random](int from, int to) {
        return std::uniform_int_distribution<int>(from, to)(random);
    };
    std::vector<QString> quotes;
    quotes.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        QStringList one;
        for (int left = number(3, 16); left > 0; --left) {
            // Few words are said often, many seldom.
            const int most = number(1, int(words().size()) - 1);
            one << words().at(number(0, most));
        }
        quotes.push_back(one.join(QLatin1Char(' ')));
    }
    return quotes;
}

QStringList typedOnTheWay()
{
    QStringList typed;
    for (const QString& word : QStringLiteral("puddle/water goes up/EVAPORATION/nina/smor/lodz/"
                                              "\u8717\u725b/\u5929\u4e0a/\u0e15\u0e01\u0e17/"
                                              "\u0645\u0637\u0631/\u0431\u0430\u0431\u043e\u0447/"
                                              "\u0915\u094d\u092f/worm snail/icicle/zebra")
                                   .split(QLatin1Char('/'))) {
        for (qsizetype end = 1; end <= word.size(); ++end)
            typed << word.left(end);
    }
    return typed;
}

} // namespace wainscot
