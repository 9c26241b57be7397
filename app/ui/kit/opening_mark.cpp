#include "app/ui/kit/opening_mark.h"

#include <QLocale>
#include <QPainter>
#include <QStyle>
#include <QWidget>

#include "app/ui/kit/tokens.h"
#include "layout/typeset/writing.h"

namespace wainscot::ui {

namespace {

constexpr double kToWords = 1.5; // size of the mark to that of the words

} // namespace

void paintOpeningMark(QPainter& painter, const QWidget& slip, const QRect& place, double relative)
{
    const Qt::LayoutDirection direction = slip.layoutDirection();
    painter.setFont(wordsFont(kToWords * relative, QFont::Bold));
    painter.setPen(tokens().quiet);
    painter.drawText(QStyle::visualRect(direction, slip.rect(), place),
        int(QStyle::visualAlignment(direction, Qt::AlignTrailing) | Qt::AlignTop
            | Qt::AlignAbsolute),
        quoteMarks(QLocale().bcp47Name()).opening.trimmed());
}

} // namespace wainscot::ui
