// Builds a small book for a test, a line for each thing.
#pragma once

#include "core/model/book.h"

#include <initializer_list>

namespace wainscot {

inline const QDate kTestDay{2025, 11, 7};

class ClassBook {
public:
    ClassBook(); // with one experience
    ChildId child(const char* name, Permissions permissions, const char* born = nullptr);
    QuoteId quote(ChildId who, const QString& words);
    PictureId picture(PictureKind kind, People people, const char* file = "IMG_1.jpg");
    DisplayId display(Audience audience);
    // On the only panel of the display, which is made when needed.
    PieceId hang(DisplayId display, QuoteId quote);
    PieceId hang(DisplayId display, PictureId picture, const QString& caption = {});
    PieceId hang(DisplayId display, PieceKind kind, const QString& text);

    [[nodiscard]] const Display& at(DisplayId id) const { return *book.displays.find(id); }
    [[nodiscard]] const Child& at(ChildId id) const { return *book.children.find(id); }
    [[nodiscard]] const Panel& panelOf(DisplayId display);

    Book book;
    ExperienceId experience;

private:
    PieceId hang(DisplayId display, Piece piece);
};

// Permissions for one audience.
[[nodiscard]] Permissions only(Audience audience, std::initializer_list<Permission> permissions);

} // namespace wainscot
