#include "layout/typeset/breaking.h"

#include <QSet>

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>

namespace wainscot {

namespace {

constexpr double kImpossible = 1e9;

// Lines of one text: what may stand on a line, in constant time.
class Lines {
public:
    Lines(const std::vector<BreakUnit>& units, Measure measure)
        : m_units(units)
        , m_measure(measure)
        , m_width(units.size() + 1, 0)
        , m_characters(units.size() + 1, 0)
    {
        for (std::size_t i = 0; i < units.size(); ++i) {
            m_width[i + 1] = m_width[i] + units[i].width + units[i].space;
            m_characters[i + 1] = m_characters[i] + units[i].characters + units[i].spaces;
        }
    }

    [[nodiscard]] int count() const { return static_cast<int>(m_units.size()); }
    [[nodiscard]] const BreakUnit& unit(int i) const { return m_units[index(i)]; }
    [[nodiscard]] double column() const { return m_measure.column; }

    [[nodiscard]] double width(int first, int end) const
    {
        return m_width[index(end)] - m_width[index(first)] - unit(end - 1).space;
    }
    // A unit that is too wide by itself still has to stand somewhere.
    [[nodiscard]] bool mayStand(int first, int end) const
    {
        if (end == first + 1)
            return true;
        const int characters =
            m_characters[index(end)] - m_characters[index(first)] - unit(end - 1).spaces;
        return width(first, end) <= m_measure.column
            && (m_measure.characters == 0 || characters <= m_measure.characters);
    }
    [[nodiscard]] bool mayEnd(int end) const { return end == count() || !unit(end - 1).noBreak; }
    [[nodiscard]] bool fits() const
    {
        return std::all_of(m_units.begin(), m_units.end(), [&](const BreakUnit& one) {
            return one.width <= m_measure.column;
        });
    }
    // Fewest lines for the units from `first` on. Forbidden ends are given up when nothing else
    // goes.
    [[nodiscard]] int fewest() const
    {
        std::vector<int> lines(index(count()) + 1, std::numeric_limits<int>::max() / 2);
        lines[index(count())] = 0;
        for (int first = count() - 1; first >= 0; --first) {
            for (int end = first + 1; end <= count() && mayStand(first, end); ++end) {
                if (mayEnd(end))
                    lines[index(first)] = std::min(lines[index(first)], 1 + lines[index(end)]);
            }
        }
        return lines.front();
    }

private:
    static std::size_t index(int i) { return static_cast<std::size_t>(i); }
    const std::vector<BreakUnit>& m_units;
    Measure m_measure;
    std::vector<double> m_width;
    std::vector<int> m_characters;
};

// Least total cost over exactly `lines` lines; cost(first, end) of one line. Ties keep the earliest
// break, so that the result is the same everywhere.
struct Best {
    double cost = kImpossible;
    std::vector<int> ends;
};

template <class Cost> Best leastCost(const Lines& text, int lines, const Cost& cost)
{
    const int n = text.count();
    const std::size_t stride = static_cast<std::size_t>(n) + 1;
    std::vector<double> best(stride * (static_cast<std::size_t>(lines) + 1), kImpossible);
    std::vector<int> next(best.size(), -1);
    const auto at = [&](int left, int first) {
        return static_cast<std::size_t>(left) * stride + static_cast<std::size_t>(first);
    };
    best[at(0, n)] = 0;
    for (int left = 1; left <= lines; ++left) {
        for (int first = 0; first < n; ++first) {
            for (int end = first + 1; end <= n && text.mayStand(first, end); ++end) {
                if (!text.mayEnd(end) || best[at(left - 1, end)] >= kImpossible)
                    continue;
                const double total = cost(first, end) + best[at(left - 1, end)];
                if (total < best[at(left, first)]) {
                    best[at(left, first)] = total;
                    next[at(left, first)] = end;
                }
            }
        }
    }
    Best result{best[at(lines, 0)], {}};
    if (result.cost >= kImpossible)
        return result;
    int first = 0;
    for (int left = lines; left > 0; --left) {
        first = next[at(left, first)];
        result.ends.push_back(first);
    }
    return result;
}

bool endsWith(const QString& word, const QString& points)
{
    return !word.isEmpty() && points.contains(word.back());
}

// The last character of a word but for a closing mark that hangs on it.
bool endsSentence(const QString& word)
{
    return endsWith(word, QStringLiteral(".!?…。！？"));
}

bool endsClause(const QString& word)
{
    return endsWith(word, QStringLiteral(",;:，、；：،؛"));
}

int letters(const QString& word)
{
    return static_cast<int>(
        std::count_if(word.begin(), word.end(), [](QChar c) { return c.isLetterOrNumber(); }));
}

bool isSmallWord(const QString& word)
{
    static const QSet<QString> small{QStringLiteral("a"),
        QStringLiteral("the"),
        QStringLiteral("to"),
        QStringLiteral("of"),
        QStringLiteral("and"),
        QStringLiteral("but"),
        QStringLiteral("so"),
        QStringLiteral("or"),
        QStringLiteral("it"),
        QStringLiteral("is"),
        QStringLiteral("in"),
        QStringLiteral("on"),
        QStringLiteral("at"),
        QStringLiteral("i"),
        QStringLiteral("we"),
        QStringLiteral("you"),
        QStringLiteral("my")};
    return small.contains(word.toLower());
}

class SenseCost {
public:
    SenseCost(const Lines& text, double target, bool english)
        : m_text(text)
        , m_target(target)
        , m_english(english)
    {
    }

    double operator()(int first, int end) const
    {
        const double width = m_text.width(first, end);
        const bool last = end == m_text.count();
        const double off = (width - m_target) / m_target;
        double cost = off * off * (last ? 0.45 : 1);
        if (last)
            return cost + lastLine(first, end, width);
        const BreakUnit& word = m_text.unit(end - 1);
        if (endsSentence(word.text))
            cost -= 0.16;
        else if (endsClause(word.text))
            cost -= 0.09;
        else if (m_english && isSmallWord(word.text))
            cost += 0.07;
        if (end - first >= 2 && endsSentence(m_text.unit(end - 2).text))
            cost += 0.12;
        if (word.insidePhrase)
            cost += 0.5;
        return cost;
    }

private:
    [[nodiscard]] double lastLine(int first, int end, double width) const
    {
        double cost = 0;
        if (width < 0.40 * m_target)
            cost += 1.0;
        if (end - first == 1 && letters(m_text.unit(first).text) < 8)
            cost += 0.25;
        return cost;
    }

    const Lines& m_text;
    double m_target;
    bool m_english;
};

// Every unit by itself: what is left when forbidden ends allow nothing else.
std::vector<int> oneUnitALine(int count)
{
    std::vector<int> ends(static_cast<std::size_t>(count));
    std::iota(ends.begin(), ends.end(), 1);
    return ends;
}

} // namespace

double lineWidth(const std::vector<BreakUnit>& units, int first, int end)
{
    double width = 0;
    for (int i = first; i < end; ++i) {
        const BreakUnit& unit = units[static_cast<std::size_t>(i)];
        width += unit.width + (i + 1 < end ? unit.space : 0);
    }
    return width;
}

int lineCharacters(const std::vector<BreakUnit>& units, int first, int end)
{
    int characters = 0;
    for (int i = first; i < end; ++i) {
        const BreakUnit& unit = units[static_cast<std::size_t>(i)];
        characters += unit.characters + (i + 1 < end ? unit.spaces : 0);
    }
    return characters;
}

LineBreaks breakBySense(
    const std::vector<BreakUnit>& units, Measure measure, const QString& language)
{
    if (units.empty())
        return {};
    const Lines text(units, measure);
    const bool english = language.isEmpty() || language.startsWith(QLatin1String("en"));
    const int fewest = text.fewest();
    if (fewest > text.count())
        return {oneUnitALine(text.count()), text.fits()};
    if (fewest == 1)
        return {{text.count()}, text.fits()};
    const double all = text.width(0, text.count());
    const double meanSpace = units.front().space;
    Best best;
    for (const int lines : {fewest, fewest + 1}) {
        const double total = all - (lines - 1) * meanSpace;
        const double target = std::min(measure.column, 1.04 * total / lines);
        Best found = leastCost(text, lines, SenseCost(text, target, english));
        found.cost += 0.22 * (lines - fewest);
        if (found.cost < best.cost)
            best = std::move(found);
    }
    return {best.ends, text.fits()};
}

LineBreaks breakParagraph(const std::vector<BreakUnit>& units, Measure measure)
{
    if (units.empty())
        return {};
    const Lines text(units, measure);
    const int lines = text.fewest();
    if (lines > text.count())
        return {oneUnitALine(text.count()), text.fits()};
    // Even lines at the width of the column; the last one may be short, but not a stub.
    const auto cost = [&](int first, int end) {
        const double width = text.width(first, end);
        if (end == text.count())
            return lines > 1 && width < 0.33 * measure.column ? 10.0 : 0.0;
        const double off = (measure.column - width) / measure.column;
        double extra = text.unit(end - 1).insidePhrase ? 0.0 : -0.001;
        if (end - first >= 2 && endsSentence(text.unit(end - 2).text))
            extra += 0.04; // the first word of a sentence would end the line
        return off * off + extra;
    };
    return {leastCost(text, lines, cost).ends, text.fits()};
}

} // namespace wainscot
