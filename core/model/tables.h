// Which table of a book holds values of a kind, for code that treats all kinds alike.
#pragma once

#include "core/model/book.h"

#include <type_traits>

namespace wainscot {

// The table of `T` in a book; const for a const book.
template <class T, class AnyBook> [[nodiscard]] auto& tableOf(AnyBook& book)
{
    static_assert(std::is_same_v<std::remove_const_t<AnyBook>, Book>);
    if constexpr (std::is_same_v<T, Child>)
        return book.children;
    else if constexpr (std::is_same_v<T, PermissionRecord>)
        return book.permissionRecords;
    else if constexpr (std::is_same_v<T, PromptSet>)
        return book.promptSets;
    else if constexpr (std::is_same_v<T, Experience>)
        return book.experiences;
    else if constexpr (std::is_same_v<T, Quote>)
        return book.quotes;
    else if constexpr (std::is_same_v<T, NoAnswer>)
        return book.noAnswers;
    else if constexpr (std::is_same_v<T, Observation>)
        return book.observations;
    else if constexpr (std::is_same_v<T, Picture>)
        return book.pictures;
    else if constexpr (std::is_same_v<T, Group>)
        return book.groups;
    else if constexpr (std::is_same_v<T, KeptPair>)
        return book.keptPairs;
    else if constexpr (std::is_same_v<T, Meeting>)
        return book.meetings;
    else if constexpr (std::is_same_v<T, Reflection>)
        return book.reflections;
    else if constexpr (std::is_same_v<T, Goal>)
        return book.goals;
    else if constexpr (std::is_same_v<T, Display>)
        return book.displays;
    else if constexpr (std::is_same_v<T, Panel>)
        return book.panels;
    else if constexpr (std::is_same_v<T, Piece>)
        return book.pieces;
    else if constexpr (std::is_same_v<T, Wall>)
        return book.walls;
    else if constexpr (std::is_same_v<T, Translation>)
        return book.translations;
    else {
        static_assert(std::is_same_v<T, PanelTemplate>);
        return book.templates;
    }
}

// Calls visit(table) for every table, in an order in which what is pointed at comes first.
template <class AnyBook, class Visit> void forEachTable(AnyBook& book, Visit visit)
{
    visit(book.children);
    visit(book.permissionRecords);
    visit(book.goals);
    visit(book.promptSets);
    visit(book.experiences);
    visit(book.meetings);
    visit(book.quotes);
    visit(book.noAnswers);
    visit(book.groups);
    visit(book.keptPairs);
    visit(book.reflections);
    visit(book.observations);
    visit(book.pictures);
    visit(book.displays);
    visit(book.panels);
    visit(book.pieces);
    visit(book.walls);
    visit(book.translations);
    visit(book.templates);
}

} // namespace wainscot
