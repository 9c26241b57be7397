// Sentences a person reads that are made outside the window. They are English, unless the program
// that runs speaks another language.
#pragma once

#include <QCoreApplication>

namespace wainscot {

struct Says {
    Q_DECLARE_TR_FUNCTIONS(Says)
};

} // namespace wainscot
