#include "core/model/plain_name.h"

namespace wainscot {

namespace {

bool isUnseen(QChar letter)
{
    const char16_t code = letter.unicode();
    const bool joins = code == 0x200c || code == 0x200d;
    const bool lineEnds = code == 0x2028 || code == 0x2029;
    return lineEnds || (letter.category() == QChar::Other_Format && !joins)
        || (letter.category() == QChar::Other_Control && !letter.isSpace());
}

} // namespace

QString plainName(const QString& name)
{
    QString plain;
    plain.reserve(name.size());
    for (const QChar letter : name) {
        if (!isUnseen(letter))
            plain.append(letter);
    }
    return plain.simplified();
}

} // namespace wainscot
