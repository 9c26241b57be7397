#include "layout/check/rules.h"

#include <QRegularExpression>

#include <cmath>

#include "core/base/says.h"
#include "core/model/kind_words.h"

namespace wainscot::check {

void Notebook::addAgainst(
    Limit limit, double value, PieceId piece, std::optional<double> measured, const QString& says)
{
    const LimitRow& row = limitOf(limit);
    Finding finding;
    finding.severity = row.severity;
    finding.rule = QString::fromLatin1(row.rule);
    finding.panel = m_panel;
    finding.piece = piece.number();
    finding.measured = measured;
    finding.limit = value;
    finding.unit = QString::fromLatin1(row.unit);
    finding.source = QString::fromLatin1(row.source);
    if (m_limits.isOwn(limit)) {
        finding.source =
            Says::tr("set here; %1 is usual (%2)").arg(number(row.value, 2), Says::tr(row.source));
    }
    finding.says = says;
    m_findings.push_back(finding);
}

void Notebook::add(Limit limit, PieceId piece, std::optional<double> measured, const QString& says)
{
    addAgainst(limit, m_limits.of(limit), piece, measured, says);
}

QString number(double value, int decimals)
{
    QString text = QString::number(value, 'f', decimals);
    if (text.contains(QLatin1Char('.'))) {
        while (text.endsWith(QLatin1Char('0')))
            text.chop(1);
        if (text.endsWith(QLatin1Char('.')))
            text.chop(1);
    }
    return text;
}

QString called(const PanelFacts& panel, PieceId piece)
{
    const ClearedPiece* one = panel.piece(piece);
    if (one == nullptr)
        return Says::tr("a piece");
    QString text = one->text.simplified();
    if (text.isEmpty() && one->picture)
        text = one->picture->alternative.simplified();
    const QString kind = inSentence(one->kind);
    if (text.isEmpty())
        return kind;
    if (text.size() > 32)
        text = text.left(30).trimmed() + QChar(0x2026);
    return QStringLiteral("%1 %2%3%4").arg(kind, QChar(0x201c), text, QChar(0x201d));
}

int wordCount(const QString& text)
{
    static const QRegularExpression spaces(QStringLiteral("\\s+"));
    return static_cast<int>(text.split(spaces, Qt::SkipEmptyParts).size());
}

} // namespace wainscot::check
