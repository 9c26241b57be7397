#include "core/model/wall_photo.h"

#include <algorithm>

namespace wainscot {

namespace {

bool isIn(const Picture& picture, ChildId child)
{
    const auto& people = picture.people.children;
    return std::find(people.begin(), people.end(), child) != people.end();
}

// Calls visit(piece) for what the display's panels hold.
template <class Visit> void forEachPiece(const Book& book, DisplayId display, Visit visit)
{
    for (const Panel* panel : panelsOf(book, display)) {
        for (const Piece* piece : piecesOf(book, panel->id))
            visit(*piece);
    }
}

} // namespace

std::vector<const Picture*> wallPhotosOf(const Book& book, DisplayId display)
{
    std::vector<const Picture*> photos;
    for (const auto& [id, picture] : book.pictures.rows()) {
        if (display.isValid() && picture.display == display)
            photos.push_back(&picture);
    }
    std::stable_sort(photos.begin(), photos.end(), [](const Picture* a, const Picture* b) {
        return a->hungOn && (!b->hungOn || *a->hungOn < *b->hungOn);
    });
    return photos;
}

std::vector<const Picture*> wallPhotosOf(const Book& book, ExperienceId experience)
{
    std::vector<const Picture*> photos;
    for (const auto& [id, picture] : book.pictures.rows()) {
        if (picture.display.isValid() && picture.experience == experience)
            photos.push_back(&picture);
    }
    return photos;
}

bool isOnDisplay(const Book& book, DisplayId display, ChildId child)
{
    bool found = false;
    forEachPiece(book, display, [&](const Piece& piece) {
        const Quote* quote = book.quotes.find(piece.quote);
        const Picture* picture = book.pictures.find(piece.picture);
        found = found || (quote != nullptr && quote->child == child)
            || (picture != nullptr && isIn(*picture, child));
    });
    return found;
}

bool shows(const Book& book, const Picture& picture, ChildId child)
{
    const bool tells = picture.display.isValid() && picture.panelsLegible;
    return isIn(picture, child) || (tells && isOnDisplay(book, picture.display, child));
}

} // namespace wainscot
