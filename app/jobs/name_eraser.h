// Takes one child's name out of texts.
#pragma once

#include "core/model/book.h"
#include "core/permit/name_finder.h"

#include <QStringList>

namespace wainscot {

class NameEraser {
public:
    NameEraser(const Book& book, ChildId child);

    // What an adult wrote: "a child", or "A child" where the text begins.
    void inAdultsText(QString& text);
    // What a child said: "[a child]".
    void inChildsWords(QString& words);
    // Whether a file name names the child: "wren_on_the_step.jpg".
    [[nodiscard]] bool isInFileName(const QString& fileName) const;

    [[nodiscard]] int texts() const { return m_texts; } // changed so far
    // Other children with the same first name, which therefore stayed in some text.
    [[nodiscard]] const QStringList& alsoNamedSo() const { return m_alsoNamedSo; }

private:
    void replace(QString& text, const QString& instead, const QString& atTheBeginning);
    [[nodiscard]] bool isMeant(const NameFinder::Found& name) const;
    void noteOthers(const NameFinder::Found& name);

    const Book& m_book;
    ChildId m_child;
    NameFinder m_names;
    QString m_aChild; // in the book's language
    int m_texts = 0;
    QStringList m_alsoNamedSo;
};

} // namespace wainscot
