#include "tests/support/selection_problems.h"

#include "core/voice/worth.h"

#include <sys/resource.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <numeric>
#include <random>
#include <set>
#include <sstream>

namespace wainscot {

namespace {

class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : m_engine(seed * 7919 + 13)
    {
    }
    int in(int least, int most) // standard distributions differ between libraries
    {
        return least + static_cast<int>(m_engine() % static_cast<std::uint64_t>(most - least + 1));
    }
    bool chance(int percent) { return in(1, 100) <= percent; }
    int stars() { return chance(55) ? 0 : chance(55) ? 1 : chance(60) ? 2 : 3; }

private:
    std::mt19937_64 m_engine;
};

Candidate quoteOf(Dice& dice, int child, const std::vector<int>& walls, int groups)
{
    Candidate quote;
    quote.kind = CandidateKind::Words;
    quote.voices = {ChildId(child + 1)};
    quote.group = dice.in(1, groups);
    quote.worth = worthOfStars(dice.stars())
        + worthOfBeingSeldom(
            walls[std::size_t(child)], *std::min_element(walls.begin(), walls.end()))
        + dice.in(0, 99);
    quote.areaCm2 = dice.in(100, 550);
    return quote;
}

Candidate pictureOf(Dice& dice, bool work, int burst, const ClassMeasures& measures)
{
    Candidate picture;
    picture.kind = work ? CandidateKind::Work : CandidateKind::Photo;
    picture.group = dice.in(1, measures.groups);
    picture.burst = work ? 0 : burst;
    picture.worth = worthOfPicture(dice.stars()) + dice.in(0, 99);
    picture.areaCm2 = dice.in(600, 2200);
    std::set<int> children;
    for (int i = dice.in(1, work ? 2 : 3); i > 0; --i)
        children.insert(dice.in(0, measures.children - 1));
    for (const int child : children)
        picture.voices.push_back(ChildId(child + 1));
    return picture;
}

double childCpuSeconds()
{
    rusage usage{};
    getrusage(RUSAGE_CHILDREN, &usage);
    const auto seconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) * 1e-6;
    };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

// Runs a command and looks for the last number after `label` in `file`.
Solved solvedBy(const std::string& command, const std::string& file, const std::string& label)
{
    Solved solved;
    const double before = childCpuSeconds();
    if (std::system(command.c_str()) != 0) // NOLINT(cert-env33-c): a test's own command
        return solved;
    solved.cpuSeconds = childCpuSeconds() - before;
    std::ifstream answer(file);
    for (std::string line; std::getline(answer, line);) {
        const auto at = line.find(label);
        if (at == std::string::npos)
            continue;
        solved.solved = true;
        solved.worth = std::llround(std::fabs(std::atof(line.c_str() + at + label.size())));
    }
    return solved;
}

} // namespace

SelectionProblem selectionProblem(std::uint64_t seed, const ClassMeasures& measures)
{
    Dice dice(seed);
    SelectionProblem problem;
    std::vector<int> walls;
    for (int child = 0; child < measures.children; ++child) {
        problem.children.push_back(ChildId(child + 1));
        walls.push_back(dice.in(0, 5));
    }
    for (int i = 0; i < measures.quotes; ++i) {
        int child = i < measures.children ? i : dice.in(0, measures.children - 1);
        if (i >= measures.children && dice.chance(33))
            child = dice.in(0, measures.children / 4); // who talks much
        problem.candidates.push_back(quoteOf(dice, child, walls, measures.groups));
    }
    int burst = 1;
    for (int i = 0; i < measures.pictures; ++i) {
        burst += dice.chance(67) ? 1 : 0;
        problem.candidates.push_back(pictureOf(dice, dice.chance(25), burst, measures));
    }
    std::int64_t area = 0;
    for (std::size_t at = 0; at < problem.candidates.size(); ++at) {
        problem.candidates[at].id = static_cast<std::int64_t>(at) + 1;
        area += problem.candidates[at].areaCm2;
    }
    problem.roomCm2 = area * measures.roomPercent / 100;
    return problem;
}

std::string faultIn(const SelectionProblem& problem, const SelectedSet& set)
{
    std::int64_t area = 0;
    std::int64_t worth = 0;
    std::set<ChildId> heard;
    std::set<std::pair<int, bool>> groups;
    std::set<std::pair<int, bool>> possible;
    std::set<int> bursts;
    for (const Candidate& one : problem.candidates) {
        const bool words = one.kind == CandidateKind::Words;
        if (one.group > 0)
            possible.insert({one.group, words});
        if (!std::binary_search(set.chosen.begin(), set.chosen.end(), one.id))
            continue;
        area += one.areaCm2;
        worth += one.worth;
        if (one.kind != CandidateKind::Photo)
            heard.insert(one.voices.begin(), one.voices.end());
        groups.insert({one.group, words});
        if (one.burst > 0 && !bursts.insert(one.burst).second)
            return "two of burst " + std::to_string(one.burst);
    }
    if (area > problem.roomCm2)
        return "too much area: " + std::to_string(area);
    if (worth != set.worth)
        return "worth adds up to " + std::to_string(worth);
    for (const UnheardChild& unheard : set.unheard)
        heard.insert(unheard.child);
    for (const UnshownGroup& unshown : set.unshown)
        groups.insert({unshown.group, unshown.words});
    for (const ChildId child : problem.children) {
        if (heard.count(child) == 0)
            return "child " + std::to_string(child.number()) + " is missing without a word";
    }
    for (const auto& group : possible) {
        if (groups.count(group) == 0)
            return "group " + std::to_string(group.first) + " is missing without a word";
    }
    return {};
}

void writeLinearProgram(const SelectionProblem& problem, const std::string& file)
{
    using Terms = std::vector<std::string>;
    std::map<std::string, Terms> atLeastOne;
    std::map<std::string, Terms> atMostOne;
    std::ostringstream worth;
    std::ostringstream area;
    std::ostringstream binary;
    for (const Candidate& one : problem.candidates) {
        const std::string x = "x" + std::to_string(one.id);
        worth << " + " << one.worth << ' ' << x;
        area << " + " << one.areaCm2 << ' ' << x;
        binary << ' ' << x << '\n';
        if (one.kind != CandidateKind::Photo) {
            for (const ChildId child : one.voices)
                atLeastOne["child" + std::to_string(child.number())].push_back(x);
        }
        if (one.group > 0) {
            const char* kind = one.kind == CandidateKind::Words ? "words" : "picture";
            atLeastOne[kind + std::to_string(one.group)].push_back(x);
        }
        if (one.burst > 0)
            atMostOne["burst" + std::to_string(one.burst)].push_back(x);
    }
    std::ofstream out(file);
    out << "Maximize\n worth:" << worth.str() << "\nSubject To\n room:" << area.str()
        << " <= " << problem.roomCm2 << '\n';
    const auto write = [&](const std::map<std::string, Terms>& rows, const char* relation) {
        for (const auto& [name, terms] : rows) {
            out << ' ' << name << ':';
            for (const std::string& x : terms)
                out << " + " << x;
            out << relation << '\n';
        }
    };
    write(atLeastOne, " >= 1");
    write(atMostOne, " <= 1");
    out << "Binary\n" << binary.str() << "End\n";
}

Solved solvedByCbc(const std::string& linearProgram)
{
    const std::string answer = linearProgram + ".cbc";
    return solvedBy("cbc " + linearProgram + " ratio 0 allow 0 solve > " + answer + " 2>&1",
        answer,
        "Objective value:");
}

Solved solvedByGlpk(const std::string& linearProgram)
{
    const std::string answer = linearProgram + ".glpk";
    return solvedBy("glpsol --lp " + linearProgram + " -o " + answer + " > /dev/null 2>&1",
        answer,
        "Objective:  worth =");
}

} // namespace wainscot
