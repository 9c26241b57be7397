#include "layout/typeset/prompt_sign_path.h"

namespace wainscot {

QPainterPath promptSignPath(PromptSign sign)
{
    QPainterPath path;
    switch (sign) {
    case PromptSign::None:
        break;
    case PromptSign::Eye:
        path.moveTo(4, 20);
        path.quadTo(20, 4, 36, 20);
        path.quadTo(20, 36, 4, 20);
        path.addEllipse(QPointF(20, 20), 5, 5);
        break;
    case PromptSign::Ear:
        path.moveTo(13, 18);
        path.cubicTo(10, 4, 32, 4, 30, 18);
        path.cubicTo(29, 25, 23, 25, 23, 31);
        path.cubicTo(22, 37, 14, 37, 14, 31);
        path.moveTo(18, 18);
        path.cubicTo(18, 11, 26, 12, 25, 18);
        break;
    case PromptSign::Hand:
        for (const double x : {14.0, 19.0, 24.0, 29.0}) {
            path.moveTo(x, 20);
            path.lineTo(x, x == 14 || x == 29 ? 10 : 6);
        }
        path.moveTo(7, 20);
        path.cubicTo(10, 24, 10, 36, 20, 36);
        path.cubicTo(30, 36, 31, 28, 31, 18);
        break;
    case PromptSign::Mouth:
        path.moveTo(5, 19);
        path.cubicTo(12, 11, 17, 13, 20, 15);
        path.cubicTo(23, 13, 28, 11, 35, 19);
        path.cubicTo(28, 32, 12, 32, 5, 19);
        path.moveTo(9, 20);
        path.quadTo(20, 23, 31, 20);
        break;
    case PromptSign::Nose:
        path.moveTo(21, 6);
        path.cubicTo(20, 18, 10, 24, 11, 30);
        path.cubicTo(12, 35, 18, 33, 21, 33);
        path.moveTo(28, 27);
        path.cubicTo(31, 30, 30, 34, 26, 34);
        break;
    case PromptSign::Thought:
        path.moveTo(12, 26);
        path.cubicTo(2, 26, 4, 13, 13, 14);
        path.cubicTo(15, 4, 28, 6, 28, 13);
        path.cubicTo(38, 13, 38, 26, 28, 26);
        path.closeSubpath();
        path.addEllipse(QPointF(13, 31), 2.4, 2.4);
        path.addEllipse(QPointF(8, 35.5), 1.4, 1.4);
        break;
    case PromptSign::Question:
        path.moveTo(12, 14);
        path.cubicTo(12, 3, 29, 4, 28, 14);
        path.cubicTo(27, 20, 20, 20, 20, 27);
        path.addEllipse(QPointF(20, 33), 1.6, 1.6);
        break;
    }
    return path;
}

} // namespace wainscot
