#include "app/ui/gather/prompt_sign.h"

#include <QMenu>
#include <QPainter>

#include <array>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"
#include "layout/typeset/prompt_sign_path.h"

namespace wainscot::ui {

namespace {

constexpr std::array kSigns{PromptSign::None,
    PromptSign::Eye,
    PromptSign::Ear,
    PromptSign::Hand,
    PromptSign::Mouth,
    PromptSign::Nose,
    PromptSign::Thought,
    PromptSign::Question};

} // namespace

void drawPromptSign(QPainter& painter, PromptSign sign, const QRectF& place, const QColor& line)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(place.topLeft());
    painter.scale(place.width() / 40, place.height() / 40);
    painter.setPen(QPen(line, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(promptSignPath(sign));
    painter.restore();
}

QPixmap signPixmap(PromptSign sign, int side, double ratio)
{
    QPixmap pixmap(QSize(side, side) * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    drawPromptSign(painter, sign, QRectF(2, 2, side - 4, side - 4), tokens().ink);
    return pixmap;
}

QString inWords(PromptSign sign)
{
    switch (sign) {
    case PromptSign::None:
        return SignButton::tr("no sign");
    case PromptSign::Eye:
        return SignButton::tr("an eye");
    case PromptSign::Ear:
        return SignButton::tr("an ear");
    case PromptSign::Hand:
        return SignButton::tr("a hand");
    case PromptSign::Mouth:
        return SignButton::tr("a mouth");
    case PromptSign::Nose:
        return SignButton::tr("a nose");
    case PromptSign::Thought:
        return SignButton::tr("a thought");
    case PromptSign::Question:
        return SignButton::tr("a question mark");
    }
    return {};
}

SignButton::SignButton(PromptSign sign, QWidget* parent)
    : QAbstractButton(parent)
    , m_sign(sign)
{
    setToolTip(tr("The sign beside the question: %1").arg(inWords(sign)));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(this, &QAbstractButton::clicked, this, &SignButton::offer);
}

void SignButton::setPicture(const QImage& picture)
{
    m_picture = picture;
    setToolTip(picture.isNull() ? tr("The sign beside the question: %1").arg(inWords(m_sign))
                                : tr("The picture beside the question"));
    update();
}

QSize SignButton::sizeHint() const
{
    return {scaled(44), scaled(44)};
}

void SignButton::offer()
{
    QMenu menu(this);
    for (const PromptSign sign : kSigns) {
        const QPixmap pixmap = signPixmap(sign, scaled(32), devicePixelRatioF());
        menu.addAction(QIcon(pixmap), inWords(sign), this, [this, sign] { Q_EMIT chosen(sign); });
    }
    menu.addSeparator();
    menu.addAction(tr("A picture..."), this, &SignButton::pictureAsked);
    menu.exec(mapToGlobal(QPoint(0, height())));
}

void SignButton::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(underMouse() ? tokens().edge : tokens().line, 1));
    painter.setBrush(tokens().field);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    if (m_picture.isNull()) {
        drawPromptSign(painter, m_sign, rect().adjusted(6, 6, -6, -6), tokens().ink);
    } else {
        const QRect field = rect().adjusted(3, 3, -3, -3);
        QRect place(QPoint(), m_picture.size().scaled(field.size(), Qt::KeepAspectRatio));
        place.moveCenter(field.center());
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(place, m_picture);
    }
    if (hasFocus())
        drawFocusRing(painter, rect());
}

} // namespace wainscot::ui
