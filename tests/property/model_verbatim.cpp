// Whatever an adult does to a child's words, the result is verbatim or bears its traces.
#include "core/model/verbatim.h"

#include <gtest/gtest.h>

#include <QStringList>

#include <random>

namespace wainscot {
namespace {

class Typist {
public:
    explicit Typist(unsigned seed)
        : m_random(seed)
    {
    }
    int number(int from, int to) { return std::uniform_int_distribution<int>(from, to)(m_random); }

    QString words(int least)
    {
        static const QStringList some{QStringLiteral("the"),
            QStringLiteral("water"),
            QStringLiteral("went"),
            QStringLiteral("went,"),
            QStringLiteral("down."),
            QStringLiteral("can't"),
            QStringLiteral("…"),
            QStringLiteral("[sic]"),
            QStringLiteral("wobly"),
            QStringLiteral("水走了"),
            QStringLiteral("مرحبا"),
            QStringLiteral("🐌")};
        QStringList row;
        for (int i = number(least, 12); i > 0; --i)
            row << some.at(number(0, int(some.size()) - 1));
        return row.join(QLatin1Char(' '));
    }

    // Cuts and insertions anywhere, also in the middle of a word or a mark.
    QString edited(QString text)
    {
        for (int i = number(0, 4); i > 0; --i) {
            const int at = number(0, int(text.size()));
            if (number(0, 1) == 0)
                text.remove(at, number(0, 8));
            else
                text.insert(at, words(0));
        }
        return text;
    }

private:
    std::mt19937 m_random;
};

bool isEdited(const QString& shown, const QString& words)
{
    return shown.simplified() != words.simplified();
}

TEST(VerbatimProperty, EveryEditLeavesItsTraces)
{
    int changed = 0;
    for (unsigned seed = 1; seed <= 4000; ++seed) {
        Typist typist(seed);
        const QString words = typist.words(1);
        const QString shown = withTraces(typist.edited(words), words);
        EXPECT_TRUE(isVerbatim(shown, words)) << "seed " << seed << "\n"
                                              << qPrintable(words) << "\n"
                                              << qPrintable(shown);
        changed += isEdited(shown, words) ? 1 : 0;
        // What is changed shows it.
        if (isEdited(shown, words)) {
            const auto marks = [](const QString& text) {
                return text.count(QChar(0x2026)) + text.count(QLatin1Char('['));
            };
            EXPECT_GT(marks(shown) + marks(words), 0) << "seed " << seed;
        }
        // And stays as it is when taken up again.
        const QString again = withTraces(shown, words);
        EXPECT_TRUE(isVerbatim(again, words)) << "seed " << seed << qPrintable(again);
    }
    EXPECT_GT(changed, 1000); // the edits were not all undone
}

TEST(VerbatimProperty, OneForeignWordIsNeverTakenForTheChilds)
{
    for (unsigned seed = 1; seed <= 2000; ++seed) {
        Typist typist(seed);
        const QString words = typist.words(2);
        QStringList shown = words.split(QLatin1Char(' '));
        shown.insert(typist.number(0, int(shown.size())), QStringLiteral("foreign"));
        if (words.contains(QLatin1Char('[')))
            continue; // it may have fallen between brackets
        EXPECT_FALSE(isVerbatim(shown.join(QLatin1Char(' ')), words)) << "seed " << seed;
    }
}

} // namespace
} // namespace wainscot
