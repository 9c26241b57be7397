#include "tests/support/wall_texts.h"
#include "tests/support/places.h"

#include <QFile>
#include <QTextStream>

namespace wainscot::walls {

TextPool::TextPool(const QString& set, const QString& language)
{
    QFile file(testData("walls/%1.%2.txt").arg(set, language));
    if (!file.open(QIODevice::ReadOnly))
        qFatal("no texts in %s", qPrintable(file.fileName()));
    QTextStream lines(&file);
    for (QString line = lines.readLine(); !line.isNull(); line = lines.readLine()) {
        const auto bar = line.indexOf(QLatin1Char('|'));
        if (bar > 0)
            m_texts[line.left(bar)].push_back(line.mid(bar + 1));
    }
}

QString TextPool::draw(const QString& kind, engine::Dice& dice)
{
    const QStringList& texts = m_texts[kind];
    std::set<int>& drawn = m_drawn[kind];
    const auto count = int(texts.size());
    if (count == 0)
        return {};
    if (int(drawn.size()) == count)
        drawn.clear();
    int at = dice.between(0, count - 1);
    while (drawn.count(at) > 0)
        at = (at + 1) % count;
    drawn.insert(at);
    return texts[at];
}

int wordsIn(const QString& text)
{
    int words = 0;
    int ideographs = 0;
    bool inside = false;
    for (const QChar c : text) {
        const bool ideograph = c.script() == QChar::Script_Han;
        ideographs += ideograph ? 1 : 0;
        const bool begins = !inside && !ideograph && c.isLetterOrNumber();
        words += begins ? 1 : 0;
        inside = begins || (inside && !ideograph && !c.isSpace());
    }
    return words + ideographs / 2;
}

} // namespace wainscot::walls
