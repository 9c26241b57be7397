// Sizes, scale, faces and colours of type.
#include "core/base/says.h"
#include "layout/check/contrast.h"
#include "layout/check/rules.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace wainscot::check {

namespace {

// The smallest measurable letters of each piece and use.
std::map<std::pair<PieceId, Use>, const TextLine*> smallestLines(const PanelFacts& panel)
{
    std::map<std::pair<PieceId, Use>, const TextLine*> smallest;
    for (const TextLine& line : panel.lines) {
        if (line.cap <= Mm(0))
            continue;
        const TextLine*& known = smallest[{line.piece, line.use}];
        if (known == nullptr || line.cap < known->cap)
            known = &line;
    }
    return smallest;
}

Mm smallestCap(const PanelFacts& panel, Use use)
{
    Mm cap(0);
    for (const TextLine& line : panel.lines) {
        if (line.use == use && line.cap > Mm(0) && (cap <= Mm(0) || line.cap < cap))
            cap = line.cap;
    }
    return cap;
}

Mm largestCap(const PanelFacts& panel, Use use)
{
    Mm cap(0);
    for (const TextLine& line : panel.lines) {
        if (line.use == use)
            cap = std::max(cap, line.cap);
    }
    return cap;
}

// Step of the 5:4 scale nearest to a cap height.
int nearestStep(Mm cap, const TypeScale& scale)
{
    return static_cast<int>(std::lround(std::log(cap / scale.body) / std::log(1.25)));
}

// Sizes are measured in faces of the pairing only: other scripts are sized by eye against them.
bool isPairingFace(const TextLine& line, const PanelStyle& style)
{
    return line.family == style.pairing.voiceFamily || line.family == style.pairing.adultFamily;
}

} // namespace

UseRule ruleOf(Use use)
{
    switch (use) {
    case Use::Title:
        return {Limit::TitleAngle, kFarFactor, Says::tr("from afar")};
    case Use::Voice:
        return {Limit::VoiceAngle, 1, Says::tr("from the reading distance")};
    case Use::Small:
        return {Limit::SmallAngle, kCloseFactor, Says::tr("from close by")};
    case Use::Body:
        break;
    }
    return {Limit::BodyAngle, 1, Says::tr("from the reading distance")};
}

void checkTypeSizes(const PanelFacts& panel, Notebook& notes)
{
    const Mm reading = panel.style.readingDistance;
    for (const auto& [key, line] : smallestLines(panel)) {
        const UseRule rule = ruleOf(key.second);
        const Mm distance = reading * rule.distances;
        const double seen = arcminutes(line->cap, distance);
        const double least = panel.limits.of(rule.limit);
        // Sizes are whole sixteenths of a point, so half a percent is rounding.
        if (seen >= least * 0.995)
            continue;
        notes.add(rule.limit,
            key.first,
            seen,
            Says::tr("The letters of %1 are %2 mm high; read %3 (%4 m) they should be %5 mm.")
                .arg(called(panel, key.first),
                    number(line->cap.value()),
                    rule.read,
                    number(distance.value() / 1000),
                    number(capHeightForAngle(distance, least).value())));
    }
}

void checkSmallLetters(const PanelFacts& panel, Notebook& notes)
{
    const double least = panel.limits.of(Limit::XHeight);
    for (const auto& [key, line] : smallestLines(panel)) {
        const Mm distance = panel.style.readingDistance * ruleOf(key.second).distances;
        const double seen = arcminutes(line->smallLetters, distance);
        if (line->smallLetters <= Mm(0) || seen >= least * 0.995)
            continue;
        notes.add(Limit::XHeight,
            key.first,
            seen,
            Says::tr("The small letters of %1 are %2 mm high; from %3 m they should be %4 mm.")
                .arg(called(panel, key.first),
                    number(line->smallLetters.value()),
                    number(distance.value() / 1000),
                    number(capHeightForAngle(distance, least).value())));
    }
}

void checkScale(const PanelFacts& panel, Notebook& notes)
{
    std::set<int> steps;
    for (const TextLine& line : panel.lines) {
        if (line.cap <= Mm(0) || !isPairingFace(line, panel.style))
            continue;
        const int step = nearestStep(line.cap, panel.style.scale);
        steps.insert(step);
        const double off = 100 * std::abs(line.cap / panel.style.scale.cap(step) - 1);
        if (off > panel.limits.of(Limit::OffScale)) {
            notes.add(Limit::OffScale,
                line.piece,
                off,
                Says::tr("The size of %1 is %2 % off the type scale: no text is made smaller "
                         "or larger to fit.")
                    .arg(called(panel, line.piece), number(off)));
        }
    }
    const auto count = static_cast<double>(steps.size());
    if (count > panel.limits.of(Limit::Steps)) {
        notes.add(Limit::Steps,
            {},
            count,
            Says::tr("There are %1 sizes of type on this panel; four are enough.")
                .arg(steps.size()));
    }
}

void checkVoicesApart(const PanelFacts& panel, Notebook& notes)
{
    const Mm voice = smallestCap(panel, Use::Voice);
    const Mm body = largestCap(panel, Use::Body);
    if (voice > Mm(0) && body > Mm(0) && voice / body < panel.limits.of(Limit::Louder) * 0.995) {
        notes.add(Limit::Louder,
            {},
            voice / body,
            Says::tr("The children's words are %1 times as large as the adult's text; at "
                     "least %2 times makes them the loudest.")
                .arg(number(voice / body, 2), number(panel.limits.of(Limit::Louder), 2)));
    }
    const Pairing& faces = panel.style.pairing;
    for (const TextLine& line : panel.lines) {
        const bool childInAdultFace = line.use == Use::Voice && line.family == faces.adultFamily;
        const bool adultInVoiceFace = line.use == Use::Body && line.family == faces.voiceFamily;
        if (childInAdultFace || adultInVoiceFace) {
            notes.add(Limit::Faces,
                line.piece,
                std::nullopt,
                Says::tr("%1 is set in the other voice's face (%2).")
                    .arg(called(panel, line.piece), line.family));
        }
    }
    const Palette& palette = panel.style.palette;
    const double child = contrast(palette.child, 0xffffffff);
    const double adult = contrast(palette.adult, 0xffffffff);
    if (child / adult < panel.limits.of(Limit::VoicesContrast)) {
        notes.add(Limit::VoicesContrast,
            {},
            child / adult,
            Says::tr("The children's colour stands out %1 times as much as the adult's; it "
                     "should be %2 times.")
                .arg(number(child / adult, 2), number(panel.limits.of(Limit::VoicesContrast), 2)));
    }
}

void checkContrast(const PanelFacts& panel, Notebook& notes)
{
    std::set<std::pair<PieceId, Limit>> said;
    for (const TextLine& line : panel.lines) {
        const double ratio = contrast(line.colour, line.ground);
        const bool running = line.use == Use::Voice || line.use == Use::Body;
        const Limit limit = running && ratio >= panel.limits.of(Limit::TextContrast)
            ? Limit::RunningContrast
            : Limit::TextContrast;
        if (ratio >= panel.limits.of(limit) || !said.insert({line.piece, limit}).second)
            continue;
        notes.add(limit,
            line.piece,
            ratio,
            Says::tr("The colour of %1 stands out from its ground by %2 : 1; at least %3 : 1 "
                     "is asked for.")
                .arg(called(panel, line.piece),
                    number(ratio, 2),
                    number(panel.limits.of(limit), 1)));
    }
}

} // namespace wainscot::check
