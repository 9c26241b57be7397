#include "core/base/finding.h"

namespace wainscot {

QString nameOf(Severity severity)
{
    switch (severity) {
    case Severity::Stop:
        return QStringLiteral("stop");
    case Severity::Look:
        return QStringLiteral("look");
    case Severity::Note:
        return QStringLiteral("note");
    }
    return {};
}

} // namespace wainscot
