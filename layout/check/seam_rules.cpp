// What the seams cut where a panel is printed in parts.
#include "layout/check/check.h"

#include <algorithm>
#include <set>

#include "core/base/says.h"
#include "layout/check/rules.h"
#include "layout/typeset/marked_part.h"

namespace wainscot::check {

namespace {

constexpr double kDescent = 0.35; // of letters below the baseline, in cap heights
constexpr Mm kTouched{0.2}; // a seam that runs along something does not cut it

bool isCut(const RectMm& place, const Seams& seams)
{
    const auto through = [](const std::vector<Mm>& at, Mm from, Mm to) {
        return std::any_of(at.begin(), at.end(), [&](Mm one) {
            return one > from + kTouched && one < to - kTouched;
        });
    };
    return through(seams.upright, place.x, place.right())
        || through(seams.level, place.y, place.bottom());
}

RectMm placeOf(const TextLine& line)
{
    const Mm height = line.cap > Mm(0) ? line.cap : line.em;
    return {line.left, line.baseline - height, line.right - line.left, height * (1 + kDescent)};
}

// How many there are, and the first of them.
struct Cut {
    int count = 0;
    PieceId first;
    void add(PieceId piece)
    {
        first = count == 0 ? piece : first;
        ++count;
    }
};

struct Cuts {
    Cut marked;
    Cut works;
    Cut lines;
};

Cuts cutsOf(const PanelFacts& panel, const Seams& seams)
{
    Cuts cuts;
    for (const PictureFact& picture : panel.pictures) {
        if (picture.kind == PieceKind::Work && isCut(picture.place, seams))
            cuts.works.add(picture.piece);
        if (picture.picture.mustStay && isCut(markedPart(picture.picture, picture.place), seams))
            cuts.marked.add(picture.piece);
    }
    for (const TextLine& line : panel.lines) {
        if (isCut(placeOf(line), seams))
            cuts.lines.add(line.piece);
    }
    return cuts;
}

class Telling {
public:
    explicit Telling(const PanelFacts& panel)
        : m_panel(panel)
        , m_notes(panel.number, panel.limits)
    {
    }
    void tell(Limit limit, const Cut& cut, PieceId piece, const QString& says)
    {
        if (cut.count > m_panel.limits.of(limit))
            m_notes.add(limit, piece, cut.count, says);
    }
    std::vector<Finding> take() { return m_notes.take(); }

private:
    const PanelFacts& m_panel;
    Notebook m_notes;
};

} // namespace

std::vector<Finding> checkSeams(const PanelFacts& panel, const Seams& seams)
{
    const Cuts cuts = cutsOf(panel, seams);
    Telling telling(panel);
    telling.tell(Limit::SeamMarked,
        cuts.marked,
        cuts.marked.first,
        Says::tr("On %1, a seam goes through a marked part of %2.")
            .arg(seams.sheets, called(panel, cuts.marked.first)));
    telling.tell(Limit::SeamWork,
        cuts.works,
        cuts.works.first,
        Says::tr("On %1, a seam goes through a child's work: %2.")
            .arg(seams.sheets, called(panel, cuts.works.first)));
    // Of the panel, not of a piece: they are all over it.
    telling.tell(Limit::SeamLines,
        cuts.lines,
        {},
        Says::tr("On %1, seams go through lines of text. A larger overlap lets them move.")
            .arg(seams.sheets));
    return telling.take();
}

} // namespace wainscot::check
