// How a child was heard, as a mark: its shape tells the kind of voice, never its colour alone.
#pragma once

#include <QColor>
#include <QPointF>
#include <QString>

#include "core/voice/answers.h"

class QPainter;

namespace wainscot::ui {

// Said = disc, wrote = square, drew = triangle, signed or pointed = lozenge, not yet = ring,
// passed = bar, noted why not = bar over a nail. `side`: of the square it fills, in px.
void drawVoiceMark(QPainter& painter,
    const AnswerMark& mark,
    QPointF centre,
    double side,
    const QColor& full,
    const QColor& open);

// "said", "not yet", "passes for now": for names and legends.
[[nodiscard]] QString inWords(const AnswerMark& mark);
[[nodiscard]] QString inWords(Telling telling);

} // namespace wainscot::ui
