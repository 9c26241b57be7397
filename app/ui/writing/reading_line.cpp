#include "app/ui/writing/reading_line.h"

#include <QCoreApplication>

#include "app/jobs/kept_limits.h"
#include "core/model/reading_level.h"
#include "layout/check/limits.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ReadingLine)
};

} // namespace

QString readingLine(const QString& text, const QString& language, bool running)
{
    const TextCounts counts = countText(text);
    if (counts.words == 0)
        return {};
    const QString words = counts.words == 1
        ? Words::tr("1 word.")
        : Words::tr("%1 words, longest sentence %2.").arg(counts.words).arg(counts.longestSentence);
    if (!running)
        return words;
    if (!hasReadingFormula(language))
        return Words::tr("%1 No reading formula for this language.").arg(words);
    return Words::tr("%1 Flesch %2, grade %3.")
        .arg(words)
        .arg(*fleschEase(counts), 0, 'f', 0)
        .arg(*fleschKincaidGrade(counts), 0, 'f', 1);
}

QString readingLimits()
{
    const check::Limits limits = keptLimits();
    const check::LimitRow& sentence = check::limitOf(check::Limit::SentenceWords);
    return Words::tr(
        "At most %1 words, %2 in a sentence (%3). Flesch: higher is easier; grade: years of "
        "school, by an English formula with syllables estimated.")
        .arg(limits.of(check::Limit::LabelWords), 0, 'f', 0)
        .arg(limits.of(check::Limit::SentenceWords), 0, 'f', 0)
        .arg(limits.own().empty() ? QString::fromUtf8(sentence.source)
                                  : Words::tr("limits set here"));
}

} // namespace wainscot::ui
