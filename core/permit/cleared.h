// What may be shown to an audience. The only things that can be printed are made here.
#pragma once

#include "core/base/geometry.h"
#include "core/model/book.h"
#include "core/permit/name_finder.h"

#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

// A picture whose people are cleared for the audience.
struct ClearedPicture {
    PictureId id;
    QString sha256;
    QString format;
    SizePx size; // after orientation and straightening
    int orientation = 1;
    Treatment treatment;
    RectFraction visible; // part of the treated picture to show; nothing else may leave the book
    std::optional<RectFraction> mustStay;
    QString alternative; // said instead of shown (from the caption)
};

struct ClearedPiece {
    PieceId id;
    PieceKind kind = PieceKind::Quote;
    RectMm cell;
    RectMm picturePlace;
    QString heading;
    QString text; // a child's words, an adult's text or a caption, names in permitted form
    QString language; // BCP 47
    QString name; // under a quote: "Mei, 5" or "a child, 4 to 5"
    QString status; // after the name: "drawn", "worked up together"; empty = said, exact words
    QString translatedFrom; // language of the child's own words where these are an adult's wording
    QString secondText; // a picture's caption once more, in another language
    QString secondLanguage;
    std::optional<ClearedPicture> picture;
    int group = 0;
    int order = 0;
    bool dominant = false;
    bool pinned = false;
    QString pairing; // of this piece alone; empty = the display's
    QString palette;
    int size = 0; // wishes of the teacher, as in Piece
    int together = 0;
    bool startsPanel = false;
};

struct LeftOut {
    QString what; // "quote", "photo", "work", "name"
    std::int64_t id = 0; // of the quote, picture or child
    PieceId piece; // invalid when it never became one
    QString why; // one plain sentence, naming the child or the picture
};

// One panel as one audience may see it. Only the permission rules can build one; the paper writer
// and the printer take nothing else.
class ClearedPanel {
public:
    [[nodiscard]] const Display& display() const { return m_display; }
    [[nodiscard]] int number() const { return m_number; } // 1-based
    [[nodiscard]] PanelId id() const { return m_id; }
    [[nodiscard]] SizeMm size() const { return m_display.panelSize; }
    [[nodiscard]] Audience audience() const { return m_display.audience; }
    [[nodiscard]] const QString& title() const { return m_title; }
    [[nodiscard]] const std::vector<ClearedPiece>& pieces() const { return m_pieces; } // by order
    [[nodiscard]] const std::vector<LeftOut>& leftOut() const { return m_leftOut; }

private:
    friend class PermissionRules;
    ClearedPanel() = default;
    Display m_display;
    PanelId m_id;
    int m_number = 1;
    QString m_title;
    std::vector<ClearedPiece> m_pieces;
    std::vector<LeftOut> m_leftOut;
};

// Decides for one display: its audience, and who is seen and named anywhere on it.
// Photo: everybody in it needs permission to be seen. Work: everybody who made it. Quote: the one
// who said it. Names give way to pictures: who is seen in a cleared photo anywhere on the display
// and has no permission to be seen and named together is not named on it.
class PermissionRules {
public:
    // `on` is the day ages are told for. Who is seen is taken from the panels of the display in
    // the book; while it has no pieces, from every picture its experience could put there.
    // `coming`: pictures that may come onto the display besides. REQUIRES: the book outlives it
    PermissionRules(const Book& book,
        const Display& display,
        QDate on,
        const std::vector<PictureId>& coming = {});

    // The panel as it stands in the book.
    [[nodiscard]] ClearedPanel clear(const Panel& panel) const;
    // The panel with pieces that are not in the book yet (an arrangement being tried).
    [[nodiscard]] ClearedPanel clear(const Panel& panel, std::vector<Piece> pieces) const;

    // Why something may not be shown; nothing = cleared. The sentence is ready to read.
    // A photo of a wall may be shown where everything may that hung there, names too, as far as the
    // panels in it can be made out.
    [[nodiscard]] std::optional<QString> refusal(const Quote& quote) const;
    [[nodiscard]] std::optional<QString> refusal(const Picture& picture) const;
    // Why the label of a group may not be shown: it is made of the children's words, and one of
    // its words was said only by children who may not be quoted.
    [[nodiscard]] std::optional<QString> labelRefusal(const Group& group) const;

    // "Mei, 5", "a child, 4 to 5", "a child". The exact age goes only with a name, and outside the
    // building not with name and photo together; the band only where two children share it.
    [[nodiscard]] QString shownName(const Child& child) const;
    // An adult's or a child's text with the names of children who may not be named taken out:
    // "a child" in an adult's text, "[a child]" in a child's words, in the language of the text
    // where there is a wording (wall_text.h), else in the wall's. Of who may be named, the name
    // as it is shown on walls stays.
    [[nodiscard]] QString withPermittedNames(const QString& text, bool childsWords) const;
    // Who is in a picture, for its caption: "Mei, Kofi and Lin"; "Mei and a child", "Mei and 2
    // children" where some may not be named, "a child", "2 children" where nobody may. In a photo a
    // name needs the permission for photo together with name. Empty: nobody is in it, nobody has
    // looked, or it may not be shown.
    [[nodiscard]] QString namesInPicture(const Picture& picture) const;
    // A caption with kNamesHere filled in, "A child ..." where a sentence starts with it. Names
    // that were typed are not looked at (withPermittedNames does).
    [[nodiscard]] QString withNamesInPicture(const QString& caption, const Picture& picture) const;
    // Why a child is not named; nothing = may be named.
    [[nodiscard]] std::optional<QString> namingRefusal(const Child& child) const;

private:
    friend class PieceClearing;
    [[nodiscard]] bool mayBeNamed(const Child& child) const;
    [[nodiscard]] std::optional<QString> namingRefusal(
        const Child& child, const Picture& picture) const;
    [[nodiscard]] std::optional<QString> refusalOfWall(const Picture& photo) const;
    [[nodiscard]] bool isSeen(ChildId child) const;
    [[nodiscard]] QString ageBand(int years) const;
    void see(const Picture* picture);
    void seePieceOf(const Piece& piece);
    [[nodiscard]] QString wallLanguage() const; // the display's, else the book's
    // "a child", in a language that has words for walls, else in the wall's.
    [[nodiscard]] QString aChild(const QString& language) const;
    struct Where {
        QString language; // of the text, BCP 47
        PieceId piece;
    };
    // As above; adds to `leftOut` whose names were taken out and why.
    [[nodiscard]] QString withPermittedNames(const QString& text,
        bool childsWords,
        const Where& where,
        std::vector<LeftOut>& leftOut) const;

    const Book& m_book;
    Display m_display;
    QDate m_on;
    std::vector<ChildId> m_seen; // children recognisable in a cleared picture on the display
    NameFinder m_names;
};

} // namespace wainscot
