#include "layout/typeset/sheet_parts.h"

#include "layout/typeset/code_square.h"
#include "layout/typeset/composer.h"
#include "layout/typeset/prompt_sign_path.h"

#include <QPen>

namespace wainscot {

namespace {

constexpr Mm kHeadHeight{17};
constexpr Mm kFootHeight{15};
constexpr Mm kFromHead{5};
constexpr Mm kFromMark{4};
constexpr Mm kFrameLine{0.7};
constexpr Mm kFootCap{2.1};
constexpr QRgb kInk = 0xff1e2326;
constexpr QRgb kQuiet = 0xff5a6468;
constexpr double kAboveCaps = 0.35; // accents, in cap heights
constexpr double kBelowBaseline = 0.5; // descenders

// Scripts that go further from the baseline than Latin take more room on both sides.
double roomFactor(const SheetText& text)
{
    return text.lead / (kVoiceLead * text.cap);
}

} // namespace

Mm SheetText::height() const
{
    if (block.isEmpty())
        return Mm();
    const double around = (1 + kAboveCaps) * roomFactor(*this) + kBelowBaseline * roomFactor(*this);
    return around * cap + (static_cast<double>(breaks.ends.size()) - 1) * lead;
}

SheetText sheetText(
    const QString& text, const QString& language, Mm cap, Mm width, Weight weight, QRgb colour)
{
    TextSpan span;
    span.text = text.simplified();
    span.face = {Voice::Child, weight, TypeRole::ChildsWords, cap, language};
    span.colour = colour;
    SheetText made;
    made.block = TextBlock(pairings().front(), {span}, language);
    made.breaks = made.block.lines(Breaking::Sense, width);
    made.cap = cap;
    made.lead = kVoiceLead * leadFactor(text, TypeRole::ChildsWords) * cap;
    made.language = language;
    return made;
}

RectMm SheetParts::head() const
{
    const RectMm all = inside();
    const Mm beside = kSheetMark + kFromMark;
    return {all.x + beside, all.y, all.width - 2 * beside, kHeadHeight};
}

RectMm SheetParts::body() const
{
    const RectMm all = inside();
    const Mm top = all.y + kHeadHeight + kFromHead;
    return {all.x, top, all.width, all.bottom() - kFootHeight - kFromHead - top};
}

void SheetParts::cornerMarks()
{
    const RectMm all = inside();
    for (const Mm x : {all.x, all.right() - kSheetMark}) {
        for (const Mm y : {all.y, all.bottom() - kSheetMark})
            m_page.fill({x, y, kSheetMark, kSheetMark}, 0xff000000);
    }
}

void SheetParts::foot(const QString& code, const QString& about, const QString& language)
{
    const RectMm all = inside();
    const CodeSquare square = codeSquareOf(code);
    const Mm side = square.side * kSheetModule;
    const Mm quiet = kCodeQuietModules * kSheetModule;
    const RectMm place{all.right() - kSheetMark - quiet - side, all.bottom() - side, side, side};
    const int figure = m_page.figure(code, place);
    for (const RectMm& dark : darkOf(square, place.topLeft(), kSheetModule))
        m_page.fill(dark, 0xff000000, figure);
    const Mm left = all.x + kSheetMark + kFromMark;
    const Mm width = place.x - quiet - left;
    const SheetText number =
        sheetText(code, QStringLiteral("en"), kFootCap, width, Weight::Regular, kQuiet);
    const SheetText title = sheetText(about, language, kFootCap, width, Weight::Regular, kInk);
    const Mm top = all.bottom() - number.height() - title.height();
    write(title, {left, top, width, title.height()}, Role::Caption);
    write(number, {left, top + title.height(), width, number.height()}, Role::Caption);
}

void SheetParts::frame(const RectMm& box)
{
    rule(box.topLeft(), box.width, kFrameLine, kInk);
    rule({box.x, box.bottom() - kFrameLine}, box.width, kFrameLine, kInk);
    for (const Mm x : {box.x, box.right() - kFrameLine})
        m_page.fill({x, box.y, kFrameLine, box.height}, kInk);
}

void SheetParts::rule(PointMm from, Mm length, Mm thickness, QRgb colour)
{
    m_page.fill({from.x, from.y, length, thickness}, colour);
}

void SheetParts::write(const SheetText& text, const RectMm& in, Role role)
{
    if (text.block.isEmpty())
        return;
    TextBlock::Place place;
    place.edgeIsRight = text.fromRight();
    place.edge = place.edgeIsRight ? in.right() : in.x;
    place.firstBaseline = in.y + (1 + kAboveCaps) * roomFactor(text) * text.cap;
    place.lead = text.lead;
    m_page.text(m_page.add(role, text.language), text.block, text.breaks, place);
}

void SheetParts::beside(const ClearedPrompt& prompt, const RectMm& place)
{
    if (prompt.picture) {
        const double aspect = prompt.picture->size.aspect();
        const Mm width = std::min(place.width, aspect * place.height);
        const Mm height = width / aspect;
        m_page.picture(*prompt.picture,
            {place.x + (place.width - width) / 2,
                place.y + (place.height - height) / 2,
                width,
                height});
        return;
    }
    const QPainterPath lines = promptSignPath(prompt.sign);
    if (lines.isEmpty())
        return;
    QPainterPathStroker stroker(
        QPen(Qt::black, kSignLine, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double scale = std::min(place.width, place.height).value() / kSignField;
    QTransform onto = QTransform::fromTranslate(place.x.value(), place.y.value());
    onto.scale(scale, scale);
    m_page.shape({onto.map(stroker.createStroke(lines)), kInk}, -1);
}

} // namespace wainscot
