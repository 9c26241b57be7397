#include <QRegularExpression>

#include <algorithm>

#include "core/permit/cleared.h"
#include "core/permit/reasons.h"

namespace wainscot {

namespace {

QString folded(const QString& text)
{
    return text.normalized(QString::NormalizationForm_C).toCaseFolded();
}

QStringList wordsOf(const QString& label)
{
    static const QRegularExpression gap(
        QStringLiteral("[^\\p{L}\\p{M}\\p{N}]+"), QRegularExpression::UseUnicodePropertiesOption);
    return folded(label).split(gap, Qt::SkipEmptyParts);
}

} // namespace

std::optional<QString> PermissionRules::labelRefusal(const Group& group) const
{
    QString allowed;
    QString refused;
    for (const QuoteId id : group.quotes) {
        if (const Quote* quote = m_book.quotes.find(id)) {
            QString& text = refusal(*quote) ? refused : allowed;
            text += folded(quote->words) + QLatin1Char('\n') + folded(quote->firstWords)
                + QLatin1Char('\n');
        }
    }
    // Looked for inside words too: not every script puts spaces between them.
    const QStringList label = wordsOf(group.label);
    const bool tells = std::any_of(label.begin(), label.end(), [&](const QString& word) {
        return refused.contains(word) && !allowed.contains(word);
    });
    if (!tells)
        return std::nullopt;
    return reasons::labelNotShown(group.label, m_display.audience);
}

} // namespace wainscot
