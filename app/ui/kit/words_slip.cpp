#include "app/ui/kit/words_slip.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPixmap>
#include <QStyle>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/opening_mark.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

int footHeight()
{
    return QFontMetrics(interfaceFont(0.85)).height();
}

} // namespace

WordsSlip::WordsSlip(const QString& words, const QString& foot, double relative, QWidget* parent)
    : QAbstractButton(parent)
    , m_words(words)
    , m_foot(foot)
    , m_relative(relative)
{
    setAccessibleName(foot + QStringLiteral(": ") + words.simplified());
    // A slip takes its direction from its words, not from the interface.
    setLayoutDirection(words.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void WordsSlip::setAside(const QString& aside)
{
    m_aside = aside;
    setAccessibleDescription(aside);
    update();
}

void WordsSlip::setPicture(const QPixmap& picture)
{
    m_picture = picture;
    updateGeometry();
    update();
}

int WordsSlip::hangingRoom() const
{
    return air(4.5) + qRound(scaled(4) * (m_relative - 1) * 2);
}

int WordsSlip::endRoom() const
{
    return m_picture.isNull() ? air(2) : scaled(76);
}

int WordsSlip::heightForWidth(int width) const
{
    const QRect room(0, 0, qMax(20, width - hangingRoom() - endRoom()), 10000);
    const int words =
        QFontMetrics(wordsFont(m_relative)).boundingRect(room, Qt::TextWordWrap, m_words).height();
    const int least = m_picture.isNull() ? 0 : scaled(56);
    return qMax(words + footHeight() + air(3.5), least);
}

QSize WordsSlip::sizeHint() const
{
    const int across = width() > scaled(100) ? width() : scaled(220);
    return {scaled(220), heightForWidth(across)};
}

QSize WordsSlip::minimumSizeHint() const
{
    return {scaled(120), sizeHint().height()};
}

QRect WordsSlip::visual(const QRect& logical) const
{
    return QStyle::visualRect(layoutDirection(), rect(), logical);
}

void WordsSlip::paintWords(QPainter& painter) const
{
    const auto side = [this](Qt::Alignment logical) {
        return int(
            QStyle::visualAlignment(layoutDirection(), logical) | Qt::AlignTop | Qt::AlignAbsolute);
    };
    paintOpeningMark(painter,
        *this,
        {0, air(0.6), hangingRoom() - air(0.8), qRound(scaled(26) * m_relative)},
        m_relative);
    painter.setFont(wordsFont(m_relative));
    painter.setPen(tokens().ink);
    const QRect words(hangingRoom(),
        air(1.5),
        width() - hangingRoom() - endRoom(),
        height() - air(2.5) - footHeight());
    painter.drawText(visual(words), side(Qt::AlignLeading) | Qt::TextWordWrap, m_words);
}

void WordsSlip::paintFoot(QPainter& painter) const
{
    const QFont font = interfaceFont(0.85);
    const QFontMetrics metrics(font);
    painter.setFont(font);
    painter.setPen(tokens().quiet);
    const QRect place(hangingRoom(),
        height() - footHeight() - air(1),
        width() - hangingRoom() - endRoom(),
        footHeight());
    const auto side = [this](Qt::Alignment logical) {
        return int(QStyle::visualAlignment(layoutDirection(), logical) | Qt::AlignVCenter
            | Qt::AlignAbsolute);
    };
    const int half = m_aside.isEmpty() ? place.width() : place.width() / 2 - air(1);
    painter.drawText(
        visual(place), side(Qt::AlignLeading), metrics.elidedText(m_foot, Qt::ElideRight, half));
    if (!m_aside.isEmpty())
        painter.drawText(visual(place),
            side(Qt::AlignTrailing),
            metrics.elidedText(m_aside, Qt::ElideRight, half));
}

void WordsSlip::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // or a full stop lands at the wrong end
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter.setPen(QPen(underMouse() ? tokens().edge : tokens().line, 1));
    painter.setBrush(tokens().slip);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
    paintWords(painter);
    paintFoot(painter);
    if (!m_picture.isNull()) {
        const QRect frame(
            width() - endRoom() + air(1), air(1), endRoom() - air(2), height() - air(2));
        QRect place(QPoint(), m_picture.size().scaled(frame.size(), Qt::KeepAspectRatio));
        place.moveCenter(visual(frame).center());
        painter.drawPixmap(place, m_picture);
    }
    if (hasFocus())
        drawFocusRing(painter, rect());
}

void WordsSlip::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

void WordsSlip::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void WordsSlip::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

} // namespace wainscot::ui
