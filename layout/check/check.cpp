#include "layout/check/check.h"

#include "core/base/says.h"
#include "layout/check/rules.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <set>

namespace wainscot::check {

namespace {

using Rule = void (*)(const PanelFacts&, Notebook&);

constexpr std::array<Rule, 29> kPanelRules{
    checkPermission,
    checkOutside,
    checkTypeSizes,
    checkSmallLetters,
    checkScale,
    checkVoicesApart,
    checkContrast,
    checkLineLengths,
    checkWordCounts,
    checkSentences,
    checkReadingLevel,
    checkWordBalance,
    checkTrimEdge,
    checkOverlaps,
    checkPastCell,
    checkGrid,
    checkLeftEdges,
    checkTints,
    checkWhite,
    checkEntry,
    checkSharpness,
    checkDominant,
    checkWork,
    checkMustStay,
    checkCaptions,
    checkQuotesApart,
    checkRag,
    checkLigatures,
    checkDrawnWords,
};

bool hasPiece(const std::vector<PanelFacts>& panels, PieceKind kind)
{
    return std::any_of(panels.begin(), panels.end(), [&](const PanelFacts& panel) {
        return std::any_of(panel.pieces.begin(),
            panel.pieces.end(),
            [&](const ClearedPiece& piece) { return piece.kind == kind; });
    });
}

// A day somewhere in the adult's small print: any digit or a day's label.
bool tellsWhen(const std::vector<PanelFacts>& panels)
{
    static const QRegularExpression digit(QStringLiteral("\\d"));
    for (const PanelFacts& panel : panels) {
        for (const ClearedPiece& piece : panel.pieces) {
            const bool smallPrint = piece.kind == PieceKind::Credits
                || piece.kind == PieceKind::Label || piece.kind == PieceKind::Context;
            if (smallPrint && piece.text.contains(digit))
                return true;
        }
    }
    return false;
}

std::set<ChildId> speakersOf(const Book& book, const Display& display)
{
    std::set<ChildId> speakers;
    for (const Panel* panel : panelsOf(book, display.id)) {
        for (const Piece* piece : piecesOf(book, panel->id)) {
            if (const Quote* quote = book.quotes.find(piece->quote))
                speakers.insert(quote->child);
        }
    }
    return speakers;
}

// Children who may be quoted, were heard, and do not speak on the display.
std::vector<const Child*> unheard(const Book& book, const Display& display)
{
    const std::set<ChildId> speakers = speakersOf(book, display);
    std::set<ChildId> told;
    for (const Quote* quote : quotesOf(book, display.experience))
        told.insert(quote->child);
    std::vector<const Child*> found;
    for (const auto& [id, child] : book.children.rows()) {
        const bool mayBeQuoted = child.permissions.allows(Permission::Words, display.audience);
        if (mayBeQuoted && told.count(id) > 0 && speakers.count(id) == 0)
            found.push_back(&child);
    }
    return found;
}

} // namespace

std::vector<Finding> checkPanel(const PanelFacts& panel)
{
    Notebook notes(panel.number, panel.limits);
    for (const Rule rule : kPanelRules)
        rule(panel, notes);
    return notes.take();
}

std::vector<Finding> checkDisplay(
    const Book& book, const Display& display, const std::vector<PanelFacts>& panels)
{
    const Limits limits = panels.empty() ? Limits() : panels.front().limits;
    Notebook notes(0, limits);
    if (!hasPiece(panels, PieceKind::Credits)) {
        notes.add(Limit::CreditsMissing,
            {},
            0,
            Says::tr("Nothing says who took the words down, and how."));
    }
    if (!tellsWhen(panels)) {
        notes.add(
            Limit::DateMissing, {}, 0, Says::tr("Nothing on this display says when it happened."));
    }
    std::vector<Finding> findings = notes.take();
    for (const Child* child : unheard(book, display)) {
        Notebook about(0, limits);
        about.add(Limit::VoiceMissing,
            {},
            0,
            Says::tr("%1 was heard but does not speak on this display.").arg(displayName(*child)));
        findings.push_back(about.take().front());
        findings.back().child = child->id.number();
    }
    for (const PanelFacts& panel : panels) {
        Notebook about(panel.number, limits);
        checkRepeatedCaptions(panel, panels, about);
        checkShownWords(book, panel, about);
        checkMounted(book, panel, about);
        const std::vector<Finding> found = about.take();
        findings.insert(findings.end(), found.begin(), found.end());
    }
    return findings;
}

void sortFindings(std::vector<Finding>& findings)
{
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        return std::pair(a.severity, a.panel) < std::pair(b.severity, b.panel);
    });
}

} // namespace wainscot::check
