// Pictures, children's work and captions.
#include "layout/check/rules.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/says.h"

namespace wainscot::check {

namespace {

bool standsWithQuote(const PanelFacts& panel, const ClearedPiece& piece)
{
    return piece.group > 0
        && std::any_of(panel.pieces.begin(), panel.pieces.end(), [&](const ClearedPiece& other) {
               return other.group == piece.group && other.kind == PieceKind::Quote;
           });
}

const PictureFact* pictureOf(const PanelFacts& panel, PieceId piece)
{
    const auto at = std::find_if(panel.pictures.begin(),
        panel.pictures.end(),
        [&](const PictureFact& picture) { return picture.piece == piece; });
    return at == panel.pictures.end() ? nullptr : &*at;
}

const FillFact* matOf(const PanelFacts& panel, const PictureFact& picture)
{
    for (const FillFact& fill : panel.fills) {
        if (fill.piece == picture.piece && fill.rect.contains(picture.place.topLeft()))
            return &fill;
    }
    return nullptr;
}

void checkCaption(const PanelFacts& panel, const ClearedPiece& piece, Notebook& notes)
{
    const auto lines = panel.linesOf(piece.id);
    if (lines.empty()) {
        if (!standsWithQuote(panel, piece) && panel.display.plan != QLatin1String("drawing")) {
            notes.add(Limit::CaptionMissing,
                piece.id,
                0,
                Says::tr("%1 has no caption: what cannot be seen in it?")
                    .arg(called(panel, piece.id)));
        }
        return;
    }
    const auto count = static_cast<double>(lines.size());
    if (count > panel.limits.of(Limit::CaptionLines)) {
        notes.add(Limit::CaptionLines,
            piece.id,
            count,
            Says::tr("The caption of %1 takes %2 lines; two are read.")
                .arg(called(panel, piece.id))
                .arg(lines.size()));
    }
    const PictureFact* picture = pictureOf(panel, piece.id);
    const TextLine& first = *lines.front();
    if (picture == nullptr || first.cap <= Mm(0))
        return;
    const FillFact* mat = matOf(panel, *picture);
    const Mm bottom = mat != nullptr ? mat->rect.bottom() : picture->place.bottom();
    const double distance = (first.capLine() - bottom) / first.cap;
    if (distance > panel.limits.of(Limit::CaptionDistance) + 0.02) {
        notes.add(Limit::CaptionDistance,
            piece.id,
            distance,
            Says::tr("The caption of %1 has come off its picture: %2 cap heights below it.")
                .arg(called(panel, piece.id), number(distance)));
    }
}

// Where a drawing is the panel, it is the largest thing on it.
void checkShare(const PanelFacts& panel, const PictureFact& picture, Notebook& notes)
{
    if (panel.display.plan != QLatin1String("drawing"))
        return;
    const SizeMm size = panel.display.panelSize;
    const double share = 100 * picture.place.areaMm2() / (size.width.value() * size.height.value());
    if (share < panel.limits.of(Limit::WorkShare)) {
        notes.add(Limit::WorkShare,
            picture.piece,
            share,
            Says::tr("%1 takes %2 % of the panel; a larger panel or a shorter reading "
                     "distance gives it room.")
                .arg(called(panel, picture.piece), number(share, 0)));
    }
}

} // namespace

void checkSharpness(const PanelFacts& panel, Notebook& notes)
{
    const double metres = panel.style.readingDistance.value() / 1000 * kCloseFactor;
    const double needed = panel.limits.of(Limit::PictureSharpness) / metres;
    const double floor = panel.limits.of(Limit::PictureFloor);
    for (const PictureFact& picture : panel.pictures) {
        const double ppi = picture.ppi();
        if (ppi < needed * 0.995) {
            notes.addAgainst(Limit::PictureSharpness,
                needed,
                picture.piece,
                ppi,
                Says::tr("%1 prints at %2 pixels an inch and will look soft from %3 m; show "
                         "it smaller or show more of it.")
                    .arg(called(panel, picture.piece), number(ppi, 0), number(metres)));
        } else if (ppi < floor) {
            notes.add(Limit::PictureFloor,
                picture.piece,
                ppi,
                Says::tr("%1 prints at %2 pixels an inch: fine from %3 m, soft from nearby.")
                    .arg(called(panel, picture.piece), number(ppi, 0), number(metres)));
        }
    }
}

void checkDominant(const PanelFacts& panel, Notebook& notes)
{
    std::vector<double> areas;
    for (const PictureFact& picture : panel.pictures)
        areas.push_back(picture.place.areaMm2());
    if (areas.size() < 2 || panel.display.plan == QLatin1String("drawing"))
        return;
    std::sort(areas.rbegin(), areas.rend());
    const double ratio = areas[0] / areas[1];
    if (ratio < panel.limits.of(Limit::Dominant)) {
        notes.add(Limit::Dominant,
            {},
            ratio,
            Says::tr("The largest picture has %1 times the area of the next; from %2 times "
                     "on it leads the eye.")
                .arg(number(ratio), number(panel.limits.of(Limit::Dominant))));
    }
}

void checkWork(const PanelFacts& panel, Notebook& notes)
{
    for (const PictureFact& picture : panel.pictures) {
        if (picture.kind != PieceKind::Work)
            continue;
        const RectFraction& seen = picture.picture.visible;
        const double share = seen.width * seen.height;
        if (share < panel.limits.of(Limit::WorkWhole) - 0.001) {
            notes.add(Limit::WorkWhole,
                picture.piece,
                share,
                Says::tr("%1 is cut to %2 % of itself; a child's work is shown whole.")
                    .arg(called(panel, picture.piece), number(100 * share, 0)));
        }
        checkShare(panel, picture, notes);
        const FillFact* mat = matOf(panel, picture);
        if (mat == nullptr)
            continue;
        const std::array borders{(picture.place.x - mat->rect.x).value(),
            (picture.place.y - mat->rect.y).value(),
            (mat->rect.right() - picture.place.right()).value(),
            (mat->rect.bottom() - picture.place.bottom()).value()};
        const auto [least, most] = std::minmax_element(borders.begin(), borders.end());
        if (*most - *least > 2 * panel.limits.of(Limit::MatEven)) {
            notes.add(Limit::MatEven,
                picture.piece,
                (*most - *least) / 2,
                Says::tr("The mat of %1 is %2 mm wide on one side and %3 mm on another.")
                    .arg(called(panel, picture.piece), number(*least), number(*most)));
        }
    }
}

void checkMustStay(const PanelFacts& panel, Notebook& notes)
{
    for (const PictureFact& picture : panel.pictures) {
        if (!picture.picture.mustStay)
            continue;
        const RectFraction& stay = *picture.picture.mustStay;
        const RectFraction& seen = picture.picture.visible;
        // A side of the picture that is not cropped cannot cut anything.
        double least = 1;
        if (seen.x > 1e-6)
            least = std::min(least, stay.x - seen.x);
        if (seen.y > 1e-6)
            least = std::min(least, stay.y - seen.y);
        if (seen.x + seen.width < 1 - 1e-6)
            least = std::min(least, seen.x + seen.width - stay.x - stay.width);
        if (seen.y + seen.height < 1 - 1e-6)
            least = std::min(least, seen.y + seen.height - stay.y - stay.height);
        if (100 * least < panel.limits.of(Limit::MustStay) - 1e-6) {
            notes.add(Limit::MustStay,
                picture.piece,
                100 * least,
                least < 0 ? Says::tr("The marked part of %1 is cut off.")
                                .arg(called(panel, picture.piece))
                          : Says::tr("The marked part of %1 comes within %2 % of the edge.")
                                .arg(called(panel, picture.piece), number(100 * least)));
        }
    }
}

void checkRepeatedCaptions(
    const PanelFacts& panel, const std::vector<PanelFacts>& display, Notebook& notes)
{
    const auto captionOf = [](const ClearedPiece& piece) {
        return isPicture(piece.kind) && piece.picture ? piece.text.simplified().toCaseFolded()
                                                      : QString();
    };
    for (const ClearedPiece& piece : panel.pieces) {
        const QString caption = captionOf(piece);
        if (caption.isEmpty())
            continue;
        int before = 0;
        for (const PanelFacts& one : display) {
            if (one.number > panel.number)
                continue;
            before += static_cast<int>(
                std::count_if(one.pieces.begin(), one.pieces.end(), [&](const ClearedPiece& other) {
                    const bool earlier = one.number < panel.number || other.order < piece.order;
                    // The same picture again may say the same again.
                    return earlier && captionOf(other) == caption
                        && other.picture->id != piece.picture->id;
                }));
        }
        if (before + 1 > panel.limits.of(Limit::CaptionRepeated)) {
            notes.add(Limit::CaptionRepeated,
                piece.id,
                before + 1,
                Says::tr("%1 has the caption of another picture; what is to be seen in this one?")
                    .arg(called(panel, piece.id)));
        }
    }
}

void checkCaptions(const PanelFacts& panel, Notebook& notes)
{
    for (const ClearedPiece& piece : panel.pieces) {
        if (isPicture(piece.kind) && piece.picture)
            checkCaption(panel, piece, notes);
    }
}

} // namespace wainscot::check
