#include "core/model/book.h"

#include "core/base/language_name.h"
#include "core/model/plain_name.h"

#include <algorithm>

namespace wainscot {

namespace {

bool sameName(const QString& a, const QString& b)
{
    return plainName(a).compare(plainName(b), Qt::CaseInsensitive) == 0;
}

template <class T, class Matches> const T* firstWhere(const Table<T>& table, Matches matches)
{
    for (const auto& [id, value] : table.rows()) {
        if (matches(value))
            return &value;
    }
    return nullptr;
}

template <class T, class Matches>
std::vector<const T*> allWhere(const Table<T>& table, Matches matches)
{
    std::vector<const T*> found;
    for (const auto& [id, value] : table.rows()) {
        if (matches(value))
            found.push_back(&value);
    }
    return found;
}

} // namespace

const Child* childByName(const Book& book, const QString& name)
{
    return firstWhere(
        book.children, [&](const Child& child) { return sameName(child.name, name); });
}

const Experience* experienceByTitle(const Book& book, const QString& title)
{
    return firstWhere(book.experiences,
        [&](const Experience& experience) { return sameName(experience.title, title); });
}

const Display* displayByName(const Book& book, const QString& name)
{
    return firstWhere(
        book.displays, [&](const Display& display) { return sameName(display.name, name); });
}

const PanelTemplate* templateByName(const Book& book, const QString& name)
{
    return firstWhere(
        book.templates, [&](const PanelTemplate& made) { return sameName(made.name, name); });
}

const QString& languageOf(const Book& book, const Experience& experience)
{
    return experience.language.isEmpty() ? book.info.language : experience.language;
}

bool sameLanguage(const QString& a, const QString& b)
{
    return mainLanguage(a) == mainLanguage(b);
}

const Translation* translationOf(
    const Book& book, ExperienceId experience, Translated what, const QString& language)
{
    return firstWhere(book.translations, [&](const Translation& one) {
        return one.experience == experience && one.what == what
            && sameLanguage(one.language, language);
    });
}

const Translation* translationOf(const Book& book, QuoteId quote, const QString& language)
{
    return firstWhere(book.translations, [&](const Translation& one) {
        return one.what == Translated::Words && one.quote == quote
            && sameLanguage(one.language, language);
    });
}

const Translation* translationOf(const Book& book, PictureId picture, const QString& language)
{
    return firstWhere(book.translations, [&](const Translation& one) {
        return one.what == Translated::Caption && one.picture == picture
            && sameLanguage(one.language, language);
    });
}

std::vector<const Quote*> quotesOf(const Book& book, ExperienceId experience)
{
    return allWhere(
        book.quotes, [&](const Quote& quote) { return quote.experience == experience; });
}

std::vector<const Picture*> picturesOf(const Book& book, ExperienceId experience)
{
    return allWhere(book.pictures, [&](const Picture& picture) {
        return picture.experience == experience && !picture.display.isValid();
    });
}

std::vector<const Panel*> panelsOf(const Book& book, DisplayId display)
{
    auto panels =
        allWhere(book.panels, [&](const Panel& panel) { return panel.display == display; });
    std::stable_sort(panels.begin(), panels.end(), [](const Panel* a, const Panel* b) {
        return a->number < b->number;
    });
    return panels;
}

std::vector<const Piece*> piecesOf(const Book& book, PanelId panel)
{
    auto pieces = allWhere(book.pieces, [&](const Piece& piece) { return piece.panel == panel; });
    std::stable_sort(pieces.begin(), pieces.end(), [](const Piece* a, const Piece* b) {
        return a->order < b->order;
    });
    return pieces;
}

} // namespace wainscot
