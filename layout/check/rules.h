// The rules of the check, one function each, by what they look at. Internal to layout/check.
#pragma once

#include "core/base/finding.h"
#include "core/model/book.h"
#include "layout/check/limits.h"
#include "layout/check/panel_facts.h"

#include <optional>
#include <vector>

namespace wainscot::check {

// Collects findings of one panel; severity, rule, limit, unit and source come from the table.
class Notebook {
public:
    // REQUIRES: the limits outlive it
    Notebook(int panel, const Limits& limits)
        : m_panel(panel)
        , m_limits(limits)
    {
    }
    void add(Limit limit, PieceId piece, std::optional<double> measured, const QString& says);
    // The same where the limit follows from the panel: ppi from a distance, edges from a format.
    void addAgainst(Limit limit,
        double value,
        PieceId piece,
        std::optional<double> measured,
        const QString& says);
    [[nodiscard]] std::vector<Finding> take() { return std::move(m_findings); }

private:
    int m_panel = 0;
    const Limits& m_limits;
    std::vector<Finding> m_findings;
};

// Numbers as a person writes them: "12.5", "13".
[[nodiscard]] QString number(double value, int decimals = 1);
// The first words of a piece, to tell which one is meant: “We put a line …”.
[[nodiscard]] QString called(const PanelFacts& panel, PieceId piece);
[[nodiscard]] int wordCount(const QString& text);
// What a line is read as: which limit holds for it and from how far, in reading distances.
struct UseRule {
    Limit limit;
    double distances = 1;
    QString read; // "from close by"
};
[[nodiscard]] UseRule ruleOf(Use use);
// Greatest distance that a panel's title is meant to be read from, in reading distances.
inline constexpr double kFarFactor = 2.4;
// Captions and names are read from here, in reading distances.
inline constexpr double kCloseFactor = 0.8;

void checkTypeSizes(const PanelFacts& panel, Notebook& notes);
void checkSmallLetters(const PanelFacts& panel, Notebook& notes);
// From the eyes of those in front of the wall it hangs on; nothing while it hangs on none.
void checkMounted(const Book& book, const PanelFacts& panel, Notebook& notes);
void checkScale(const PanelFacts& panel, Notebook& notes);
void checkVoicesApart(const PanelFacts& panel, Notebook& notes);
void checkContrast(const PanelFacts& panel, Notebook& notes);

void checkLineLengths(const PanelFacts& panel, Notebook& notes);
void checkWordCounts(const PanelFacts& panel, Notebook& notes);
void checkSentences(const PanelFacts& panel, Notebook& notes);
void checkReadingLevel(const PanelFacts& panel, Notebook& notes);
void checkWordBalance(const PanelFacts& panel, Notebook& notes);

void checkOutside(const PanelFacts& panel, Notebook& notes);
void checkTrimEdge(const PanelFacts& panel, Notebook& notes);
void checkOverlaps(const PanelFacts& panel, Notebook& notes);
void checkPastCell(const PanelFacts& panel, Notebook& notes);
void checkGrid(const PanelFacts& panel, Notebook& notes);
void checkLeftEdges(const PanelFacts& panel, Notebook& notes);
void checkTints(const PanelFacts& panel, Notebook& notes);
void checkWhite(const PanelFacts& panel, Notebook& notes);
void checkEntry(const PanelFacts& panel, Notebook& notes);

void checkSharpness(const PanelFacts& panel, Notebook& notes);
void checkDominant(const PanelFacts& panel, Notebook& notes);
void checkWork(const PanelFacts& panel, Notebook& notes);
void checkMustStay(const PanelFacts& panel, Notebook& notes);
void checkCaptions(const PanelFacts& panel, Notebook& notes);
// Captions of this panel that stand under another picture here or on an earlier panel.
void checkRepeatedCaptions(
    const PanelFacts& panel, const std::vector<PanelFacts>& display, Notebook& notes);

void checkQuotesApart(const PanelFacts& panel, Notebook& notes);
void checkRag(const PanelFacts& panel, Notebook& notes);
void checkLigatures(const PanelFacts& panel, Notebook& notes);
// What is drawn beside the words that may be shown.
void checkDrawnWords(const PanelFacts& panel, Notebook& notes);
// What somebody chose to show of a child's words beside what was taken down.
void checkShownWords(const Book& book, const PanelFacts& panel, Notebook& notes);

void checkPermission(const PanelFacts& panel, Notebook& notes);

} // namespace wainscot::check
