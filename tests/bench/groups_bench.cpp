// bench_groups speed ANSWERS PYTHON: CPU of letter likeness and average linkage of ninety answers
// against scikit-learn and scipy doing the same in their process (groups_reference.py).
// bench_groups quality FILE...: agreement with the sorting of public texts (public_texts.py), by
// each measure alone and by all; ends with 1 where one alone is clearly better at the true number.
// bench_groups spelling FILE...: the same when none, 20 and 40 in 100 words are respelled.
#include "core/voice/joining.h"
#include "core/voice/word_likeness.h"
#include "tests/support/grouping_samples.h"
#include "tests/support/invented_spelling.h"
#include "tests/support/places.h"

#include <QCoreApplication>
#include <QProcess>
#include <QTextStream>

#include <algorithm>
#include <ctime>
#include <utility>
#include <vector>

namespace wainscot {
namespace {

constexpr std::size_t answersOfAClass = 90;
constexpr int rounds = 200;
constexpr double mostOfReference = 0.2;
constexpr unsigned seed = 11;
constexpr int samples = 50;

double millisecondsOfCpu()
{
    return 1000.0 * double(std::clock()) / CLOCKS_PER_SEC;
}

template <class Does> double millisecondsFor(const Does& does)
{
    does();
    const double before = millisecondsOfCpu();
    for (int round = 0; round < rounds; ++round)
        does();
    return (millisecondsOfCpu() - before) / rounds;
}

// The first texts of every twentieth line, so that they are of many classes.
std::vector<Answer> ninety(const SortedTexts& all)
{
    std::vector<Answer> answers;
    for (std::size_t at = 0; at < all.texts.size() && answers.size() < answersOfAClass; at += 20)
        answers.push_back(all.texts[at]);
    return answers;
}

double referenceMilliseconds(const QString& python, const std::vector<Answer>& answers)
{
    QProcess reference;
    reference.start(python, {sourceFile("tests/bench/groups_reference.py")});
    for (const Answer& answer : answers)
        reference.write(answer.words.toUtf8() + '\n');
    reference.closeWriteChannel();
    reference.waitForFinished(300'000);
    return reference.readAllStandardOutput().trimmed().toDouble();
}

int speed(const QString& file, const QString& python)
{
    QTextStream out(stdout);
    const std::vector<Answer> answers = ninety(sortedTextsFrom(file));
    std::size_t steps = 0;
    const double exact = millisecondsFor(
        [&] { steps += joinings(letterLikeness(answers), -1, answers.size()).size(); });
    const double all =
        millisecondsFor([&] { steps += joinings(likenessOf(answers), 0.1, 8).size(); });
    const double reference = referenceMilliseconds(python, answers);
    const double share = reference > 0 ? exact / reference : 1;
    out << answers.size() << " answers: exact parts " << exact << " ms, reference " << reference
        << " ms, share " << share << "; everything " << all << " ms (" << steps << " steps)\n";
    return reference > 0 && share <= mostOfReference ? 0 : 1;
}

LikenessTable companyAlone(const std::vector<Answer>& answers)
{
    return companyLikeness(answers).likeness;
}

int quality(const QStringList& files)
{
    constexpr double standardError = 0.015; // of a mean over the samples
    const std::vector<std::pair<QString, Likeness>> measures{
        {QStringLiteral("letters"), letterLikeness},
        {QStringLiteral("sounds"), soundLikeness},
        {QStringLiteral("company"), companyAlone},
        {QStringLiteral("all"), likenessOf}};
    QTextStream out(stdout);
    bool holds = true;
    for (const QString& file : files) {
        const SortedTexts texts = sortedTextsFrom(file);
        out << file << ": " << texts.texts.size() << " texts\n";
        double best = 0;
        for (const auto& [name, likeness] : measures) {
            const double whole = meanAgreement(texts, likeness, Cut::TrueNumber, seed, samples);
            const double proposed = meanAgreement(texts, likeness, Cut::AsProposed, seed, samples);
            out << "  " << name << ' ' << whole << ", as proposed " << proposed << '\n';
            out.flush();
            holds = holds && (name != QLatin1String("all") || whole >= best - standardError);
            best = std::max(best, whole);
        }
    }
    return holds ? 0 : 1;
}

int spelling(const QStringList& files)
{
    QTextStream out(stdout);
    for (const QString& file : files) {
        const SortedTexts all = sortedTextsFrom(file);
        for (const int share : {0, 20, 40}) {
            const SortedTexts texts = respelled(all, share / 100.0, seed);
            out << file << ", " << share << " in 100 words: letters "
                << meanAgreement(texts, letterLikeness, Cut::TrueNumber, seed, samples) << ", all "
                << meanAgreement(texts, likenessOf, Cut::TrueNumber, seed, samples)
                << "; as proposed: all "
                << meanAgreement(texts, likenessOf, Cut::AsProposed, seed, samples) << '\n';
            out.flush();
        }
    }
    return 0;
}

} // namespace
} // namespace wainscot

int main(int count, char** values)
{
    const QCoreApplication application(count, values);
    const QStringList words = QCoreApplication::arguments().mid(1);
    if (words.size() == 3 && words[0] == QLatin1String("speed"))
        return wainscot::speed(words[1], words[2]);
    if (words.size() > 1 && words[0] == QLatin1String("quality"))
        return wainscot::quality(words.mid(1));
    if (words.size() > 1 && words[0] == QLatin1String("spelling"))
        return wainscot::spelling(words.mid(1));
    QTextStream(stderr) << "bench_groups speed FILE PYTHON | quality FILE... | spelling FILE...\n";
    return 2;
}
