// One piece as one audience may see it. Private to core/permit.
#pragma once

#include "core/permit/cleared.h"

#include <optional>
#include <vector>

namespace wainscot {

class PieceClearing {
public:
    // REQUIRES: both outlive it
    PieceClearing(const PermissionRules& rules, std::vector<LeftOut>& leftOut)
        : m_rules(rules)
        , m_leftOut(leftOut)
    {
    }

    // Nothing when the piece may not be shown; the reason is added to what is left out.
    [[nodiscard]] std::optional<ClearedPiece> clear(const Piece& piece);

private:
    [[nodiscard]] bool addQuote(const Piece& piece, ClearedPiece& cleared);
    [[nodiscard]] bool translate(const Piece& piece, const Quote& quote, ClearedPiece& cleared);
    [[nodiscard]] bool addPicture(const Piece& piece, ClearedPiece& cleared);
    [[nodiscard]] QString named(
        const QString& text, bool childsWords, PieceId piece, const QString& language);
    // A caption, or any adult's text of a piece that shows no picture.
    [[nodiscard]] QString captioned(
        const QString& text, PictureId id, PieceId piece, const QString& language);
    [[nodiscard]] QString firstLanguage(const QString& own, ExperienceId experience) const;
    void leaveOut(const char* what, std::int64_t id, PieceId piece, const QString& why);

    const PermissionRules& m_rules;
    std::vector<LeftOut>& m_leftOut;
};

// All of a picture; what is said instead of it is still to come. REQUIRES: it may be shown
[[nodiscard]] ClearedPicture pixelsOf(const Picture& picture);

// Adds an entry unless the same thing is listed for the same piece already.
void addLeftOut(std::vector<LeftOut>& leftOut, const LeftOut& entry);

} // namespace wainscot
