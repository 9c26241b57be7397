#include "app/jobs/name_eraser.h"

#include "app/jobs/sentences.h"
#include "core/base/wall_text.h"

#include <QFileInfo>

#include <algorithm>

namespace wainscot {

NameEraser::NameEraser(const Book& book, ChildId child)
    : m_book(book)
    , m_child(child)
    , m_names(book.children)
    , m_aChild(wallText(WallText::AChild, book.info.language))
{
}

void NameEraser::inAdultsText(QString& text)
{
    replace(text, m_aChild, capitalised(m_aChild));
}

void NameEraser::inChildsWords(QString& words)
{
    const QString instead = QStringLiteral("[%1]").arg(m_aChild);
    replace(words, instead, instead);
}

bool NameEraser::isInFileName(const QString& fileName) const
{
    // A file name joins words by what is no letter.
    QString text = QFileInfo(fileName).completeBaseName();
    for (QChar& letter : text) {
        if (!letter.isLetter())
            letter = QLatin1Char(' ');
    }
    const auto found = m_names.in(text);
    return std::any_of(found.begin(), found.end(), [this](const NameFinder::Found& name) {
        return isMeant(name);
    });
}

void NameEraser::replace(QString& text, const QString& instead, const QString& atTheBeginning)
{
    const auto found = m_names.in(text);
    QString without = text;
    for (auto name = found.rbegin(); name != found.rend(); ++name) {
        if (!isMeant(*name))
            continue;
        if (name->who.size() > 1) {
            noteOthers(*name);
            continue;
        }
        const bool begins = text.left(name->start).trimmed().isEmpty();
        without.replace(name->start, name->length, begins ? atTheBeginning : instead);
    }
    m_texts += without != text ? 1 : 0;
    text = without;
}

bool NameEraser::isMeant(const NameFinder::Found& name) const
{
    return std::find(name.who.begin(), name.who.end(), m_child) != name.who.end();
}

void NameEraser::noteOthers(const NameFinder::Found& name)
{
    for (const ChildId id : name.who) {
        const Child* child = m_book.children.find(id);
        if (id != m_child && child != nullptr && !m_alsoNamedSo.contains(child->name))
            m_alsoNamedSo << child->name;
    }
}

} // namespace wainscot
