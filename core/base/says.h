// Sentences a person reads that are made outside the window. They are English, unless the program
// that runs speaks another language.
#pragma once

#include <QCoreApplication>

namespace wainscot {

struct Says {
    Q_DECLARE_TR_FUNCTIONS(Says)
};

// BCP 47
inline QString languageOfSentences()
{
    return Says::tr("en", "the language these sentences are written in");
}

} // namespace wainscot
