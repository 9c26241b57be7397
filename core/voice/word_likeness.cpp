#include "core/voice/word_likeness.h"

#include <QRegularExpression>

#include <cmath>
#include <map>
#include <string>

namespace wainscot {
namespace {

constexpr std::size_t shortestRun = 3;
constexpr std::size_t longestRun = 5;

struct Share {
    std::size_t answer;
    double weight;
};

// For every run of letters, the answers it occurs in, in order, with their weights.
using Runs = std::map<std::u32string, std::vector<Share>>;

void countRun(Runs& runs, std::size_t answer, const std::u32string& run)
{
    std::vector<Share>& shares = runs[run];
    if (!shares.empty() && shares.back().answer == answer)
        shares.back().weight += 1;
    else
        shares.push_back({answer, 1});
}

// A word shorter than a run counts once as a whole, and longer runs are not looked for.
void countWord(Runs& runs, std::size_t answer, const QString& word)
{
    const std::u32string padded = U' ' + word.toStdU32String() + U' ';
    for (std::size_t length = shortestRun; length <= longestRun; ++length) {
        if (padded.size() <= length) {
            countRun(runs, answer, padded);
            return;
        }
        for (std::size_t start = 0; start + length <= padded.size(); ++start)
            countRun(runs, answer, padded.substr(start, length));
    }
}

// Turns counts into weights and answers the length of each answer's row.
std::vector<double> weigh(Runs& runs, std::size_t answers)
{
    std::vector<double> lengths(answers, 0);
    for (auto& [run, shares] : runs) {
        const double rarity = std::log((1.0 + double(answers)) / (1.0 + double(shares.size()))) + 1;
        for (Share& share : shares) {
            share.weight = (std::log(share.weight) + 1) * rarity;
            lengths[share.answer] += share.weight * share.weight;
        }
    }
    for (double& length : lengths)
        length = std::sqrt(length);
    return lengths;
}

} // namespace

LikenessTable::LikenessTable(std::size_t size)
    : m_size(size)
    , m_values(size * size, 0)
{
}

std::vector<QString> comparedWords(const QString& answer)
{
    static const QRegularExpression word(
        QStringLiteral("[\\p{L}\\p{M}]+(?:['\u2019][\\p{L}\\p{M}]+)*"),
        QRegularExpression::UseUnicodePropertiesOption);
    const QString prepared = answer.normalized(QString::NormalizationForm_C).toLower();
    std::vector<QString> words;
    QRegularExpressionMatchIterator found = word.globalMatch(prepared);
    while (found.hasNext())
        words.push_back(found.next().captured());
    return words;
}

LikenessTable likenessOf(const std::vector<QString>& answers)
{
    Runs runs;
    for (std::size_t answer = 0; answer < answers.size(); ++answer) {
        for (const QString& word : comparedWords(answers[answer]))
            countWord(runs, answer, word);
    }
    const std::vector<double> lengths = weigh(runs, answers.size());
    LikenessTable table(answers.size());
    for (const auto& [run, shares] : runs) {
        for (const Share& one : shares) {
            const double part = one.weight / lengths[one.answer];
            for (const Share& other : shares)
                table.add(one.answer, other.answer, part * other.weight / lengths[other.answer]);
        }
    }
    return table;
}

} // namespace wainscot
