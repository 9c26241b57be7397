#include "core/base/paper_size.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <cmath>

namespace wainscot {

namespace {

struct NamedPaper {
    const char* name = "";
    SizeMm size;
};

// ISO 216; the US sizes are exact in inches. Both as in libcups 2.4.2.
constexpr std::array kPapers{
    NamedPaper{"A0", {Mm(841), Mm(1189)}},
    NamedPaper{"A1", {Mm(594), Mm(841)}},
    NamedPaper{"A2", {Mm(420), Mm(594)}},
    NamedPaper{"A3", {Mm(297), Mm(420)}},
    NamedPaper{"A4", {Mm(210), Mm(297)}},
    NamedPaper{"A5", {Mm(148), Mm(210)}},
    NamedPaper{"Letter", {inches(8.5), inches(11)}},
    NamedPaper{"Legal", {inches(8.5), inches(14)}},
    NamedPaper{"Tabloid", {inches(11), inches(17)}},
};

constexpr Mm kShortestSide{25};
constexpr Mm kLongestSide{5080};

bool nearlySame(Mm a, Mm b)
{
    return std::abs((a - b).value()) <= 0.5;
}

double numberFrom(QString text)
{
    return text.replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
}

} // namespace

Result<SizeMm> paperSizeFromText(const QString& text)
{
    const QString wanted = text.trimmed();
    for (const NamedPaper& paper : kPapers) {
        if (wanted.compare(QLatin1String(paper.name), Qt::CaseInsensitive) == 0)
            return paper.size;
    }
    static const QRegularExpression form(QStringLiteral(
        "^(\\d{1,5}(?:[.,]\\d{1,6})?)\\s*[x\u00d7]\\s*(\\d{1,5}(?:[.,]\\d{1,6})?)\\s*(mm|in)$"));
    const QRegularExpressionMatch match = form.match(wanted.toLower());
    if (!match.hasMatch()) {
        return Error{ErrorCode::WrongUse,
            text,
            QStringLiteral("a size is one of %1, or a measure such as 24x36in or 600x900mm")
                .arg(paperSizeNames().join(QStringLiteral(", ")))};
    }
    const Mm unit = match.captured(3) == QLatin1String("in") ? inches(1) : Mm(1);
    const Mm one = numberFrom(match.captured(1)) * unit;
    const Mm other = numberFrom(match.captured(2)) * unit;
    const SizeMm size{std::min(one, other), std::max(one, other)};
    if (size.width < kShortestSide || size.height > kLongestSide) {
        return Error{ErrorCode::WrongUse,
            text,
            QStringLiteral("each side must be between 25 mm and 5080 mm")};
    }
    return size;
}

QStringList paperSizeNames()
{
    QStringList names;
    for (const NamedPaper& paper : kPapers)
        names << QLatin1String(paper.name);
    return names;
}

QString nameOfPaper(SizeMm size)
{
    const SizeMm upright = size.width <= size.height ? size : size.transposed();
    for (const NamedPaper& paper : kPapers) {
        if (nearlySame(paper.size.width, upright.width)
            && nearlySame(paper.size.height, upright.height))
            return QLatin1String(paper.name);
    }
    return QStringLiteral("%1 \u00d7 %2 mm")
        .arg(std::round(size.width.value()))
        .arg(std::round(size.height.value()));
}

} // namespace wainscot
