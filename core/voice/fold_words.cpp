#include "core/voice/fold_words.h"

#include <QHash>

#include <algorithm>

namespace wainscot {

namespace {

// Letters with a stroke are letters of their own to Unicode; whoever looks types them without.
QString withoutStroke(QChar letter)
{
    static const QHash<QChar, QString> letters{{QChar(0xf8), QStringLiteral("o")},
        {QChar(0x142), QStringLiteral("l")},
        {QChar(0x111), QStringLiteral("d")},
        {QChar(0xf0), QStringLiteral("d")},
        {QChar(0x127), QStringLiteral("h")},
        {QChar(0x131), QStringLiteral("i")},
        {QChar(0xdf), QStringLiteral("ss")},
        {QChar(0xe6), QStringLiteral("ae")},
        {QChar(0x153), QStringLiteral("oe")},
        {QChar(0xfe), QStringLiteral("th")},
        {QChar(0x2019), QStringLiteral("'")},
        {QChar(0x2018), QStringLiteral("'")},
        {QChar(0x640), QString()}};
    const auto at = letters.constFind(letter);
    return at == letters.constEnd() ? QString(letter) : *at;
}

bool isAscii(const QString& text)
{
    return std::all_of(text.begin(), text.end(), [](QChar c) { return c.unicode() < 0x80; });
}

} // namespace

QString foldedForFind(const QString& text)
{
    if (isAscii(text))
        return text.toLower();
    QString folded;
    folded.reserve(text.size());
    for (const QChar c : text.normalized(QString::NormalizationForm_KD).toCaseFolded()) {
        if (c.unicode() < 0x80)
            folded += c;
        else if (!c.isMark())
            folded += withoutStroke(c);
    }
    return folded;
}

FindQuery::FindQuery(const QString& typed)
    : m_parts(foldedForFind(typed).simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts))
{
}

bool FindQuery::fitsFolded(const QString& folded) const
{
    return std::all_of(m_parts.begin(), m_parts.end(), [&folded](const QString& part) {
        return folded.contains(part);
    });
}

} // namespace wainscot
