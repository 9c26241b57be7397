// The mark that hangs before a child's words on a slip, as the interface's language writes it.
#pragma once

#include <QRect>

class QPainter;
class QWidget;

namespace wainscot::ui {

// `place`: as if read from the left; the mark stands at its end. `relative`: of the words to the
// system font.
void paintOpeningMark(
    QPainter& painter, const QWidget& slip, const QRect& place, double relative = 1);

} // namespace wainscot::ui
