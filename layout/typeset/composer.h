// Makes the text of one piece, part by part: what the pieces of every kind share.
#pragma once

#include "layout/typeset/piece_text.h"

#include <QStringList>

namespace wainscot {

// Leading, baseline to baseline, in cap heights.
inline constexpr double kVoiceLead = 1.82;
inline constexpr double kCaptionLead = 1.95;

// Characters a line: mean characters at least and at most, and what no line may exceed.
struct CharacterLimits {
    double least = 0;
    double most = 0;
    int never = 0;
};
inline constexpr CharacterLimits kVoiceLimits{14, 32, 36};
inline constexpr CharacterLimits kBodyLimits{26, 50, 55};
inline constexpr CharacterLimits kCaptionLimits{20, 52, 52};

class Composer {
public:
    Composer(const ClearedPiece& piece, const PanelStyle& style, const QString& language);

    PieceText title(int step);
    PieceText quote();
    PieceText question();
    PieceText invitation();
    PieceText adult(std::optional<QRgb> tint); // context, interpretation, next step
    PieceText small(QRgb colour, Weight weight, Role role); // caption, label, credits

private:
    // Lines of a text as typed; each is a paragraph.
    [[nodiscard]] QStringList paragraphs() const;
    [[nodiscard]] TextSpan span(
        const QString& text, Voice voice, TypeRole role, Weight weight, Mm cap, QRgb colour) const;
    // An adult's text; where it quotes a child, in the child's colour.
    [[nodiscard]] std::vector<TextSpan> adultSpans(
        const QString& text, TypeRole role, Weight weight, Mm cap, QRgb colour) const;
    // REQUIRES: spans of one size
    [[nodiscard]] TextPart make(std::vector<TextSpan> spans, TypeRole role) const;

    [[nodiscard]] TextPart words(const QString& paragraph, const QString& closing, Mm cap) const;
    [[nodiscard]] TextBlock openingMark(const QString& mark, const QString& words, Mm cap) const;
    [[nodiscard]] QString comma() const;
    [[nodiscard]] bool isTranslation() const;
    [[nodiscard]] QRgb markColour() const;

    void addHeading();
    void addBody(QRgb colour, Weight weight, Breaking breaking);
    void addName(Mm voiceCap);
    void add(TextPart part);
    void setSpec(CharacterLimits limits, Mm mean, Mm lead);
    PieceText take();

    static Mm em(const QString& family, Weight weight, Mm cap);
    static Mm meanCharacter(const QString& family, Weight weight, Mm cap);

    const ClearedPiece& m_piece;
    const PanelStyle& m_style;
    const TypeScale& m_scale;
    QString m_language;
    PieceText m_text;
};

} // namespace wainscot
