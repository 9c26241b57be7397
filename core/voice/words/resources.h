// The files of this folder that the program carries inside itself.
#pragma once

#include <QByteArray>

namespace wainscot {

// "everyday_en.txt", "word_vectors.bin", "NOTICE.wordnet"
[[nodiscard]] QByteArray wordResource(const char* name);

} // namespace wainscot
