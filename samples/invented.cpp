#include "samples/invented.h"

#include <QDate>
#include <QStringList>

#include <array>
#include <random>

namespace wainscot::samples {

namespace {

constexpr std::array kFirst{"Abe",
    "Bronwen",
    "Cyra",
    "Dilan",
    "Esme",
    "Farid",
    "Greta",
    "Hamza",
    "Ilse",
    "Jonas",
    "Kaia",
    "Lucía",
    "Mehmet",
    "Nadia",
    "Otis",
    "Paloma",
    "Quentin",
    "Rosa",
    "Selim",
    "Tove",
    "Uma",
    "Vito",
    "Wanda",
    "Xenia",
    "Yara",
    "Zeno",
    "阳光",
    "ليلى",
    "मीरा",
    "Åse"};
constexpr std::array kLast{"Alder",
    "Birk",
    "Castaño",
    "Dogan",
    "Ekwueme",
    "Falk",
    "Grau",
    "Holm",
    "Ito",
    "Jansen",
    "Kaur",
    "Lima",
    "Moreau",
    "Novak",
    "Owusu",
    "Petrov",
    "Quist",
    "Reyes",
    "Suzuki",
    "Tóth"};
constexpr std::array kAudienceLists{
    "all", "none", "", "classroom", "classroom;building", "classroom;building;families"};
constexpr std::array kBegin{"The water",
    "My boot",
    "A bird",
    "The sun",
    "The wall",
    "The worm",
    "Somebody",
    "The wind",
    "The ground",
    "The chalk"};
constexpr std::array kMiddle{"took it away",
    "is thirsty for it",
    "keeps a bit of it",
    "went inside the line",
    "made it thin",
    "hid it under the stones",
    "carried it to the shed",
    "only borrowed it"};
constexpr std::array kEnd{"when nobody looked.",
    "and it did not splash.",
    "but it comes back.",
    "because it was warm.",
    "all night.",
    "so now it is small.",
    "and that is fair."};
constexpr std::array kPrompts{"notice", "think", "wonder"};

// The standard's distributions differ between libraries; the engine's own numbers do not.
class Dice {
public:
    explicit Dice(unsigned seed)
        : m_engine(seed)
    {
    }
    template <std::size_t N> QString pick(const std::array<const char*, N>& from)
    {
        return QString::fromUtf8(from[below(N)]);
    }
    std::size_t below(std::size_t count) { return m_engine() % count; }

private:
    std::mt19937 m_engine;
};

} // namespace

InventedClass inventClass(unsigned seed, int children)
{
    Dice dice(seed);
    InventedClass made;
    made.childrenCsv = QStringLiteral("name,born,photo,first_name,words,work,photo_with_name\n");
    made.quotesCsv = QStringLiteral("child,prompt,words,how,on\n");
    for (int i = 0; i < children; ++i) {
        // The number keeps names apart when the list of names has been through.
        QString name = QString::fromUtf8(kFirst[static_cast<std::size_t>(i) % kFirst.size()])
            + QLatin1Char(' ') + dice.pick(kLast);
        if (i >= static_cast<int>(kFirst.size()))
            name += QStringLiteral(" %1").arg(i / static_cast<int>(kFirst.size()) + 1);
        QStringList row{
            name, QStringLiteral("2021-%1").arg(1 + dice.below(12), 2, 10, QLatin1Char('0'))};
        for (int permission = 0; permission < 5; ++permission)
            row.append(dice.pick(kAudienceLists));
        made.childrenCsv += row.join(QLatin1Char(',')) + QLatin1Char('\n');
        for (const char* prompt : kPrompts) {
            if (dice.below(12) == 0)
                continue; // not asked yet
            // One statement for each throw: the order inside one is the compiler's.
            const QString begin = dice.pick(kBegin);
            const QString middle = dice.pick(kMiddle);
            const QString end = dice.pick(kEnd);
            const QDate on = QDate(2026, 11, 2).addDays(static_cast<qint64>(dice.below(4)));
            made.quotesCsv +=
                QStringLiteral("%1,%2,%3 %4 %5,said,%6\n")
                    .arg(name, QLatin1String(prompt), begin, middle, end, on.toString(Qt::ISODate));
        }
    }
    return made;
}

} // namespace wainscot::samples
