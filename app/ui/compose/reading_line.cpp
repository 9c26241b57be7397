#include "app/ui/compose/reading_line.h"

#include <QCoreApplication>

#include "core/model/reading_level.h"
#include "layout/check/limits.h"

namespace wainscot::ui {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("ReadingLine", text);
}

} // namespace

QString readingLine(const QString& text, const QString& language, bool running)
{
    const TextCounts counts = countText(text);
    if (counts.words == 0)
        return {};
    const QString words = counts.words == 1
        ? said("1 word.")
        : said("%1 words, longest sentence %2.").arg(counts.words).arg(counts.longestSentence);
    if (!running)
        return words;
    if (!hasReadingFormula(language))
        return said("%1 No reading formula for this language.").arg(words);
    return said("%1 Flesch %2, grade %3.")
        .arg(words)
        .arg(*fleschEase(counts), 0, 'f', 0)
        .arg(*fleschKincaidGrade(counts), 0, 'f', 1);
}

QString readingLimits()
{
    const check::LimitRow& label = check::limitOf(check::Limit::LabelWords);
    const check::LimitRow& sentence = check::limitOf(check::Limit::SentenceWords);
    return said(
        "At most %1 words, %2 in a sentence (%3). Flesch: higher is easier; grade: years of "
        "school, by an English formula with syllables estimated.")
        .arg(label.value, 0, 'f', 0)
        .arg(sentence.value, 0, 'f', 0)
        .arg(QString::fromUtf8(sentence.source));
}

} // namespace wainscot::ui
