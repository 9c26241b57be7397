#include "app/ui/session/mends.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

#include "core/model/child.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Mend)
};

struct Row {
    const char* rule; // the finding's name, or how a family of them begins
    MendWay way;
    const char* does;
};

constexpr std::array kRows{
    Row{"permission.piece", MendWay::TakeOff, QT_TRANSLATE_NOOP("Mend", "Take it off")},
    Row{"place.outside", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Move it onto the paper")},
    Row{"place.edge", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Move it away from the edge")},
    Row{"place.grid", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Put it on the grid")},
    Row{"place.past_cell", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Give its words room")},
    Row{"place.tint", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Fit its ground to the words")},
    Row{"place.overlap", MendWay::MakeRoom, QT_TRANSLATE_NOOP("Mend", "Make room for it")},
    Row{"place.left_edges", MendWay::ArrangeAgain, QT_TRANSLATE_NOOP("Mend", "Arrange again")},
    Row{"entry.missing", MendWay::AddTitle, QT_TRANSLATE_NOOP("Mend", "Add the title")},
    Row{"entry.clear", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Move it down from the title")},
    Row{"entry.ratio",
        MendWay::QuieterVoices,
        QT_TRANSLATE_NOOP("Mend", "Children's words a step smaller")},
    Row{"type.loud",
        MendWay::LouderVoices,
        QT_TRANSLATE_NOOP("Mend", "Children's words a step larger")},
    Row{"type.voice",
        MendWay::LouderVoices,
        QT_TRANSLATE_NOOP("Mend", "Children's words a step larger")},
    Row{"type.mounted", MendWay::HangAtEyes, QT_TRANSLATE_NOOP("Mend", "Hang it at their eyes")},
    Row{"type.faces", MendWay::Letters, QT_TRANSLATE_NOOP("Mend", "Take the display's letters")},
    Row{"contrast.", MendWay::Colours, QT_TRANSLATE_NOOP("Mend", "Take colours that stand out")},
    Row{"line.", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Make its lines shorter")},
    Row{"words.level", MendWay::Write, QT_TRANSLATE_NOOP("Mend", "Say it more plainly")},
    Row{"words.", MendWay::Write, QT_TRANSLATE_NOOP("Mend", "Shorten it")},
    Row{"caption.missing", MendWay::Write, QT_TRANSLATE_NOOP("Mend", "Write the caption")},
    Row{"caption.repeated", MendWay::Write, QT_TRANSLATE_NOOP("Mend", "Write its own caption")},
    Row{"caption.lines", MendWay::Write, QT_TRANSLATE_NOOP("Mend", "Shorten the caption")},
    Row{"caption.distance",
        MendWay::Place,
        QT_TRANSLATE_NOOP("Mend", "Bring caption and picture together")},
    Row{"picture.sharpness", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Smaller, so it is sharp")},
    Row{"picture.floor", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Smaller, so it is sharp")},
    Row{"picture.mat", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Even out its mat")},
    Row{"picture.must_stay", MendWay::Frame, QT_TRANSLATE_NOOP("Mend", "Show the marked part")},
    Row{"picture.work_whole", MendWay::Frame, QT_TRANSLATE_NOOP("Mend", "Show the whole of it")},
    Row{"picture.dominant",
        MendWay::NextSmaller,
        QT_TRANSLATE_NOOP("Mend", "The second picture smaller")},
    Row{"quote.apart", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Move it down from the name")},
    Row{"quote.last_word", MendWay::Place, QT_TRANSLATE_NOOP("Mend", "Break its lines anew")},
    Row{"quote.verbatim", MendWay::AllWords, QT_TRANSLATE_NOOP("Mend", "Show all the words")},
    Row{"credits.missing", MendWay::AddCredits, QT_TRANSLATE_NOOP("Mend", "Add the credits")},
    Row{"credits.date", MendWay::AddDay, QT_TRANSLATE_NOOP("Mend", "Add the day")},
    Row{"voices.child", MendWay::AddVoice, QT_TRANSLATE_NOOP("Mend", "Find a place for %1")},
};

bool isAdultText(PieceKind kind)
{
    return kind == PieceKind::Context || kind == PieceKind::Interpretation
        || kind == PieceKind::NextStep || kind == PieceKind::Question;
}

} // namespace

const Panel* panelNumbered(const Book& book, const Display* display, int number)
{
    if (display == nullptr)
        return nullptr;
    for (const Panel* panel : panelsOf(book, display->id)) {
        if (panel->number == number)
            return panel;
    }
    return nullptr;
}

QString reasonIn(const Panel& panel, const Finding& finding)
{
    const auto left = std::find_if(panel.left.begin(), panel.left.end(), [&](const auto& one) {
        return one.rule == finding.rule && one.piece.number() == finding.piece;
    });
    return left != panel.left.end() ? left->why : QString();
}

Edit leaveFinding(const Book& book, const Panel& panel, const Finding& finding, const QString& why)
{
    Panel changed = panel;
    std::erase_if(changed.left, [&](const LeftFinding& left) {
        return left.rule == finding.rule && left.piece.number() == finding.piece;
    });
    if (!why.isEmpty())
        changed.left.push_back({finding.rule, PieceId(finding.piece), why});
    EditBuilder edit(book, Words::tr("Left it as it is"));
    edit.put(changed);
    return edit.take();
}

Mend mendFor(const Book& book, const Finding& finding)
{
    const auto row = std::find_if(kRows.begin(), kRows.end(), [&](const Row& one) {
        const QLatin1String rule(one.rule);
        return rule.endsWith(QLatin1Char('.')) ? finding.rule.startsWith(rule)
                                               : finding.rule == rule;
    });
    if (row == kRows.end())
        return {MendWay::Show,
            finding.piece > 0 ? Words::tr("Go to it") : Words::tr("Go to the panel")};
    Mend mend{row->way, Words::tr(row->does)};
    if (row->way == MendWay::AddVoice) {
        const Child* child = book.children.find(ChildId(finding.child));
        mend.does = mend.does.arg(child != nullptr ? displayName(*child) : QString());
    }
    return mend;
}

PieceId pieceToWrite(const Book& book, PanelId panel, const Finding& finding)
{
    if (finding.piece > 0)
        return PieceId(finding.piece);
    const Piece* longest = nullptr;
    for (const Piece* piece : piecesOf(book, panel)) {
        if (isAdultText(piece->kind)
            && (longest == nullptr || piece->text.size() > longest->text.size()))
            longest = piece;
    }
    return longest != nullptr ? longest->id : PieceId();
}

const Quote* wordsToAdd(const Book& book, ExperienceId experience, const Finding& finding)
{
    const Quote* best = nullptr;
    for (const Quote* quote : quotesOf(book, experience)) {
        if (quote->child == ChildId(finding.child)
            && (best == nullptr || quote->stars > best->stars))
            best = quote;
    }
    return best;
}

} // namespace wainscot::ui
