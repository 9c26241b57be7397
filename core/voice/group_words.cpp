#include "core/voice/group_words.h"

#include <QStringList>

#include <algorithm>
#include <set>

namespace wainscot {
namespace {

constexpr int longestLabel = 40;
constexpr std::size_t wordsInLabel = 2;

struct Said {
    WordSpan at;
    QString stem;
};

using Sayings = std::map<QuoteId, std::vector<Said>>;

Sayings sayingsOf(const std::vector<Answer>& answers)
{
    Sayings sayings;
    std::map<QString, Stemmer> stemmers;
    for (const Answer& answer : answers) {
        const Stemmer& stemmer =
            stemmers.try_emplace(answer.language, answer.language).first->second;
        std::vector<Said>& said = sayings[answer.id];
        for (const ComparedWord& word : comparedWords(answer.words)) {
            if (!isEveryday(word.text))
                said.push_back({word.at, stemmer.stem(word.text)});
        }
    }
    return sayings;
}

// For each stem the answers that have it.
std::map<QString, std::set<QuoteId>> answersWith(
    const Sayings& sayings, const std::vector<QuoteId>& among)
{
    std::map<QString, std::set<QuoteId>> with;
    for (const QuoteId answer : among) {
        for (const Said& said : sayings.at(answer))
            with[said.stem].insert(answer);
    }
    return with;
}

struct Candidate {
    double score;
    QString stem;
};

std::vector<Candidate> candidates(const std::map<QString, std::set<QuoteId>>& inGroup,
    const std::map<QString, std::set<QuoteId>>& everywhere,
    std::size_t groupSize)
{
    std::vector<Candidate> found;
    for (const auto& [stem, answers] : inGroup) {
        if (answers.size() < 2)
            continue;
        const double coverage = double(answers.size()) / double(groupSize);
        const double exclusive = double(answers.size()) / double(everywhere.at(stem).size());
        found.push_back({2 * coverage * exclusive / (coverage + exclusive), stem});
    }
    std::stable_sort(found.begin(), found.end(), [](const Candidate& one, const Candidate& other) {
        return one.score > other.score;
    });
    return found;
}

// The form of a stem that most answers of the group have; ties to the first answer's.
QString commonestForm(const QString& stem,
    const ProposedGroup& group,
    const std::map<QuoteId, const Answer*>& answers,
    const Sayings& sayings)
{
    std::vector<std::pair<QString, int>> forms;
    for (const QuoteId id : group.answers) {
        for (const Said& said : sayings.at(id)) {
            if (said.stem != stem)
                continue;
            const QString form = answers.at(id)->words.mid(said.at.start, said.at.length);
            const auto known = std::find_if(
                forms.begin(), forms.end(), [&form](const auto& one) { return one.first == form; });
            if (known == forms.end())
                forms.emplace_back(form, 1);
            else
                ++known->second;
        }
    }
    const auto most = std::max_element(forms.begin(),
        forms.end(),
        [](const auto& one, const auto& other) { return one.second < other.second; });
    return most->first;
}

QString shortened(const QString& words)
{
    const QString line = words.simplified();
    if (line.size() <= longestLabel)
        return line;
    const int blank = int(line.lastIndexOf(QLatin1Char(' '), longestLabel));
    return line.left(blank > 0 ? blank : longestLabel) + QChar(0x2026);
}

// The answer most like the others on average, ties to the first, in quotation marks.
QString mostTypical(const ProposedGroup& group, const std::map<QuoteId, const Answer*>& answers)
{
    std::vector<Answer> members;
    for (const QuoteId id : group.answers)
        members.push_back(*answers.at(id));
    const LikenessTable likeness = likenessOf(members);
    std::size_t best = 0;
    double most = -1;
    for (std::size_t one = 0; one < members.size(); ++one) {
        double sum = 0;
        for (std::size_t other = 0; other < members.size(); ++other)
            sum += one == other ? 0 : likeness.at(one, other);
        if (sum > most) {
            most = sum;
            best = one;
        }
    }
    return QChar(0x201C) + shortened(members[best].words) + QChar(0x201D);
}

QString labelOf(const ProposedGroup& group,
    const std::vector<Candidate>& words,
    const std::map<QuoteId, const Answer*>& answers,
    const Sayings& sayings)
{
    if (words.empty())
        return group.answers.empty() ? QString() : mostTypical(group, answers);
    QStringList label;
    for (std::size_t at = 0; at < std::min(words.size(), wordsInLabel); ++at)
        label << commonestForm(words[at].stem, group, answers, sayings);
    return label.join(QStringLiteral(" \u00b7 "));
}

std::map<QuoteId, std::vector<WordSpan>> sharedWords(const ProposedGroup& group,
    const std::map<QString, std::set<QuoteId>>& inGroup,
    const Sayings& sayings)
{
    std::map<QuoteId, std::vector<WordSpan>> shared;
    for (const QuoteId id : group.answers) {
        for (const Said& said : sayings.at(id)) {
            if (inGroup.at(said.stem).size() > 1)
                shared[id].push_back(said.at);
        }
    }
    return shared;
}

} // namespace

std::vector<GroupWords> wordsOfGroups(
    const std::vector<Answer>& answers, const std::vector<ProposedGroup>& groups)
{
    std::map<QuoteId, const Answer*> byId;
    std::vector<QuoteId> all;
    for (const Answer& answer : answers) {
        byId[answer.id] = &answer;
        all.push_back(answer.id);
    }
    const Sayings sayings = sayingsOf(answers);
    const auto everywhere = answersWith(sayings, all);
    std::vector<GroupWords> described;
    for (const ProposedGroup& group : groups) {
        const auto inGroup = answersWith(sayings, group.answers);
        const auto words = candidates(inGroup, everywhere, group.answers.size());
        described.push_back(
            {labelOf(group, words, byId, sayings), sharedWords(group, inGroup, sayings)});
    }
    return described;
}

} // namespace wainscot
