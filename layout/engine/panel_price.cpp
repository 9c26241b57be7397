#include "layout/engine/panel_price.h"

#include "layout/engine/advice.h"
#include "layout/engine/page_price.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr double kWhite = 200; // squared share of the page
constexpr double kLeftOut = 30; // each piece there was no room for

double priceOf(const DroppedWish& wish)
{
    switch (wish.what) {
    case WishAbout::Plan:
        return 120;
    case WishAbout::Widths:
    case WishAbout::LargePicture:
        return 8;
    case WishAbout::Places:
    case WishAbout::Spans:
    case WishAbout::FixedPlaces:
        return 4;
    case WishAbout::OptionalPieces:
        break; // counted by piece
    }
    return 0;
}

} // namespace

double panelPrice(const Request& request, const Arrangement& page, const TextMeasurer& text)
{
    TextMemo memo(text);
    const double white = pageUse(page, request.page).white;
    double sum = PagePrice(request, memo).of(page).withFaults + kWhite * white * white;
    for (const DroppedWish& wish : page.droppedWishes)
        sum += priceOf(wish);
    return std::max(0.0, sum + kLeftOut * double(page.leftOut.size()));
}

} // namespace wainscot::engine
