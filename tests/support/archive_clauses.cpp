#include "tests/support/archive_clauses.h"

namespace wainscot::archive {

const std::vector<Clause>& clauses()
{
    static const std::vector<Clause> all = [] {
        std::vector<Clause> joined;
        for (const auto* theme : {&structureClauses(),
                 &graphicsClauses(),
                 &fontsClauses(),
                 &actsClauses(),
                 &metadataClauses()})
            joined.insert(joined.end(), theme->begin(), theme->end());
        return joined;
    }();
    return all;
}

QStringList faultsOf(const QByteArray& raw)
{
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("file", raw.constData(), static_cast<std::size_t>(raw.size()));
    const File file{raw, &pdf};
    QStringList faults;
    for (const Clause& clause : clauses()) {
        const QStringList found = clause.faults(file);
        for (const QString& fault : found)
            faults << QStringLiteral("%1: %2").arg(QLatin1String(clause.number), fault);
    }
    return faults;
}

} // namespace wainscot::archive
