// What comes onto the panel from outside the canvas: from the drawer, the file manager, the
// clipboard or another program.
#pragma once

#include <QImage>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <optional>

class QMimeData;

namespace wainscot::ui {

// A line of the drawer.
struct DrawerItem {
    enum class Kind { Quote, Picture, Note, Observation };
    Kind kind = Kind::Quote;
    std::int64_t id = 0; // of the quote, picture or observation; for a note its PieceKind
    friend bool operator==(const DrawerItem&, const DrawerItem&) = default;
};

// "quote 12": how an item travels in a drag, and back; nothing when it is none.
[[nodiscard]] QByteArray toBytes(DrawerItem item);
[[nodiscard]] std::optional<DrawerItem> drawerItemFrom(const QByteArray& bytes);

// The first of these that is there is meant.
struct Incoming {
    std::optional<DrawerItem> item;
    QByteArray pieces; // copied in this program, see compose/clipboard.h
    QStringList files; // pictures on this computer
    QImage image; // pixels without a file; null while they are only dragged over
    bool hasImage = false;
    QString text; // plain, whatever form it came in
    [[nodiscard]] bool isEmpty() const;
    [[nodiscard]] bool isPicture() const { return !files.isEmpty() || hasImage; }
};

inline constexpr auto kDrawerMime = "application/x-wainscot-item";
inline constexpr auto kPiecesMime = "application/x-wainscot-pieces";

// `whole` reads the pixels too: once, at the drop, not at every move of a drag.
[[nodiscard]] Incoming incomingFrom(const QMimeData& mime, bool whole);

} // namespace wainscot::ui
