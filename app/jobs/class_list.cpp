#include "app/jobs/class_list.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace wainscot {

namespace {

QStringList cellsOf(const QString& line)
{
    static const QRegularExpression separators(QStringLiteral("[\t;,]"));
    QStringList cells;
    for (const QString& cell : line.split(separators)) {
        QString text = cell.simplified();
        if (text.startsWith(QLatin1Char('"')) && text.endsWith(QLatin1Char('"')) && text.size() > 1)
            text = text.mid(1, text.size() - 2).simplified();
        if (!text.isEmpty())
            cells << text;
    }
    return cells;
}

ListedChild childOf(const QString& line)
{
    static const QRegularExpression bullet(
        QStringLiteral("^\\s*(?:\\d+\\s*[.):]?|[-*\u2022\u2013])\\s+"));
    ListedChild child;
    QStringList names;
    const bool isTable = line.contains(QLatin1Char('\t')) || line.contains(QLatin1Char(';'));
    for (const QString& cell : cellsOf(QString(line).remove(bullet))) {
        if (const auto born = birthDateFromText(cell))
            child.born = born;
        else
            names << cell;
    }
    if (names.isEmpty())
        return child;
    // With commas alone, two cells are a family name and a given name.
    child.name = !isTable && names.size() == 2 ? names.at(1) + QLatin1Char(' ') + names.at(0)
                                               : names.front();
    return child;
}

} // namespace

std::vector<ListedChild> childrenFromText(const QString& text)
{
    static const QRegularExpression lineEnds(QStringLiteral("[\r\n]+"));
    std::vector<ListedChild> children;
    for (const QString& line : text.split(lineEnds, Qt::SkipEmptyParts)) {
        const ListedChild child = childOf(line);
        const bool isHead = child.name.compare(QLatin1String("name"), Qt::CaseInsensitive) == 0;
        const bool isKnown =
            std::any_of(children.begin(), children.end(), [&](const ListedChild& other) {
                return other.name.compare(child.name, Qt::CaseInsensitive) == 0;
            });
        if (!child.name.isEmpty() && !isHead && !isKnown)
            children.push_back(child);
    }
    return children;
}

Edit addChildren(const Book& book, const std::vector<ListedChild>& listed, const QString& label)
{
    EditBuilder edit(book, label);
    for (const ListedChild& one : listed) {
        Child child;
        if (const Child* known = childByName(book, one.name))
            child = *known;
        else
            child.id = edit.newId<Child>();
        if (child.name.isEmpty())
            child.name = one.name;
        if (!child.born)
            child.born = one.born;
        edit.put(child);
    }
    return edit.take();
}

} // namespace wainscot
