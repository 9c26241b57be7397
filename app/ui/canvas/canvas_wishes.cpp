// Quiet signs of what a person has asked of the arrangement. They are on the canvas alone: what is
// printed is the display list, and they are not in it.
#include "app/ui/canvas/canvas.h"

#include <QPainter>

#include <algorithm>
#include <map>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr double kAbove = 5; // px at 10 pt text, from the top of a piece up to its strand
constexpr double kNail = 2.8;
constexpr double kLockNail = 3.4;
constexpr double kLockInset = 9;

void nail(QPainter& painter, QPointF at, double radius, const QColor& colour)
{
    painter.setPen(QPen(Qt::white, 1.2));
    painter.setBrush(colour);
    painter.drawEllipse(at, radius, radius);
}

} // namespace

// Pieces that are kept together hang from one strand each, with a nail at its start. With one of
// them in the hand the nails are tied to each other, so that one sees who belongs to it.
void Canvas::paintStrands(QPainter& painter) const
{
    std::map<int, std::vector<const CanvasPiece*>> together;
    for (const CanvasPiece& piece : m_content.pieces) {
        if (piece.piece.together > 0)
            together[piece.piece.together].push_back(&piece);
    }
    const Tokens paper = lightTokens(); // in the dark window too the paper is white
    for (const auto& [number, pieces] : together) {
        const bool inHand = std::any_of(pieces.begin(), pieces.end(), [this](const auto* piece) {
            return isHeld(piece->piece.id);
        });
        QPointF before;
        for (const CanvasPiece* piece : pieces) {
            const QRectF box = m_view.toPx(piece->piece.cell);
            const QPointF start(box.left(), box.top() - scaled(kAbove));
            if (inHand && !before.isNull()) {
                painter.setPen(QPen(paper.edge, 1, Qt::DotLine));
                painter.drawLine(before, start);
            }
            painter.setPen(QPen(paper.edge, 1.4, Qt::SolidLine, Qt::RoundCap));
            painter.drawLine(start, QPointF(box.right(), start.y()));
            nail(painter, start, scaled(kNail), paper.accent);
            before = start;
        }
    }
}

// A locked panel is nailed to the wall at its four corners.
void Canvas::paintLock(QPainter& painter) const
{
    const double inset = scaled(kLockInset);
    const QRectF corners = panelRect().adjusted(inset, inset, -inset, -inset);
    for (const QPointF at :
        {corners.topLeft(), corners.topRight(), corners.bottomLeft(), corners.bottomRight()})
        nail(painter, at, scaled(kLockNail), lightTokens().accent);
}

} // namespace wainscot::ui
