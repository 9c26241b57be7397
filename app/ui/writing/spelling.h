// Words of an adult's text that no dictionary knows. A child's words are never looked at, nor is
// what an adult quotes of them.
#pragma once

#include "layout/typeset/writing.h"

#include <QHash>
#include <QStringList>

#include <memory>
#include <set>
#include <vector>

class Hunspell;

namespace wainscot::ui {

// Where dictionaries (NAME.aff, NAME.dic) may be, the nearest first.
[[nodiscard]] QStringList dictionaryFolders();

class Spelling {
public:
    // The dictionary of a language (BCP 47), or of another country's form of it; null when none is
    // installed or its letters cannot be read. Loaded once and kept.
    [[nodiscard]] static std::shared_ptr<Spelling> of(const QString& language);
    // `path` without its ending. Null when it cannot be read.
    [[nodiscard]] static std::shared_ptr<Spelling> fromFiles(const QString& path);
    ~Spelling();

    [[nodiscard]] bool knows(const QString& word) const;
    [[nodiscard]] QStringList suggestions(const QString& word, int most) const;
    // In the order of the text. `own`: names and words that are right here, compared without case.
    [[nodiscard]] std::vector<TextRange> doubtful(
        const QString& text, const std::set<QString>& own) const;

private:
    Spelling(std::unique_ptr<Hunspell> dictionary, bool utf8);
    [[nodiscard]] std::string encoded(const QString& word) const;
    [[nodiscard]] QString decoded(const std::string& word) const;

    std::unique_ptr<Hunspell> m_dictionary;
    bool m_utf8 = true; // else Latin 1
    mutable QHash<QString, bool> m_known; // asked at every key
};

// Words somebody said are right, on this computer; folded, as `doubtful` takes them.
[[nodiscard]] std::set<QString> ownWords();
void keepOwnWord(const QString& word);
[[nodiscard]] QString foldedWord(const QString& word);

} // namespace wainscot::ui
