#include "app/jobs/small_print.h"

#include "app/jobs/draft_pieces.h"
#include "app/jobs/sentences.h"
#include "core/base/in_words.h"

namespace wainscot {

namespace {

std::vector<const Quote*> quotesOn(const Book& book, const Display& display)
{
    std::vector<const Quote*> quotes;
    for (const Panel* panel : panelsOf(book, display.id)) {
        for (const Piece* piece : piecesOf(book, panel->id)) {
            if (const Quote* quote = book.quotes.find(piece->quote))
                quotes.push_back(quote);
        }
    }
    return quotes;
}

} // namespace

QString creditsOf(const Book& book, const Display& display)
{
    const Experience* experience = book.experiences.find(display.experience);
    if (experience == nullptr)
        return {};
    Material material;
    material.book = &book;
    material.experience = *experience;
    material.display = display;
    return creditsLine(material, quotesOn(book, display));
}

QString daysOf(const Book& book, const Display& display)
{
    const Experience* experience = book.experiences.find(display.experience);
    if (experience == nullptr)
        return {};
    std::set<QDate> days;
    for (const Quote* quote : quotesOn(book, display)) {
        if (quote->on)
            days.insert(*quote->on);
    }
    if (days.empty() && experience->on)
        days.insert(*experience->on);
    return days.empty() ? QString()
                        : daysInWords(*days.begin(), *days.rbegin(), languageOf(book, *experience));
}

} // namespace wainscot
