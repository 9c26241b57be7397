#include "app/ui/kit/button.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyle>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

Button::Button(Form form, const QString& text, Icon icon, QWidget* parent)
    : QAbstractButton(parent)
    , m_form(form)
    , m_icon(icon)
{
    setText(text);
    setAccessibleName(QString(text).remove(QLatin1Char('&')));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setFont(interfaceFont());
    setCheckable(form == Form::Chip || form == Form::Task);
    setSizePolicy(
        form == Form::Row ? QSizePolicy::Expanding : QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void Button::setDetail(const QString& detail)
{
    m_detail = detail;
    setAccessibleDescription(detail);
    updateGeometry();
    update();
}

void Button::setKeyHint(const QString& key)
{
    m_key = key;
    updateGeometry();
}

void Button::setRelativeSize(double relative)
{
    m_relative = relative;
    updateGeometry();
}

void Button::setQuiet(bool quiet)
{
    m_quiet = quiet;
    update();
}

void Button::setOpensList(bool opens)
{
    m_opensList = opens;
    updateGeometry();
}

void Button::setWordless(bool wordless)
{
    if (m_wordless == wordless)
        return;
    m_wordless = wordless;
    setToolTip(wordless ? text() : QString());
    updateGeometry();
    update();
}

void Button::setMayShrink(bool may)
{
    m_mayShrink = may;
    setSizePolicy(may ? QSizePolicy::Preferred : QSizePolicy::Fixed, QSizePolicy::Fixed);
}

int Button::padding() const
{
    switch (m_form) {
    case Form::Main:
        return air(5);
    case Form::Plain:
        return air(3);
    case Form::Word:
        return air(1.5);
    case Form::Row:
        return air(2);
    case Form::Chip:
    case Form::Task:
        return air(2.5);
    }
    return air(2);
}

QFont Button::textFont() const
{
    const bool strong = m_form == Form::Main || (m_form == Form::Task && isChecked());
    return interfaceFont(m_relative, strong ? QFont::DemiBold : QFont::Normal);
}

QFont Button::detailFont() const
{
    return interfaceFont(m_relative * 0.88);
}

QString Button::shownText() const
{
    return m_wordless ? QString() : text();
}

QSize Button::sizeHint() const
{
    // A task keeps its width when it is chosen, so it is measured at its stronger weight.
    const QFontMetrics metrics(interfaceFont(m_relative,
        m_form == Form::Main || m_form == Form::Task ? QFont::DemiBold : QFont::Normal));
    const QFontMetrics second(detailFont());
    const QString words = QString(shownText()).remove(QLatin1Char('&'));
    int width = qMax(metrics.horizontalAdvance(words), second.horizontalAdvance(m_detail));
    if (m_icon != Icon::None)
        width += scaled(16) + (words.isEmpty() ? 0 : air(1.5));
    if (m_form == Form::Chip)
        width += scaled(8) + air(1.5);
    if (!m_key.isEmpty() && !m_wordless)
        width += air(3) + second.horizontalAdvance(m_key);
    if (m_opensList)
        width += scaled(12) + air(1);
    int height = metrics.height();
    if (m_form == Form::Main)
        height += air(4);
    else
        height += m_form == Form::Word || m_form == Form::Row ? air(2) : air(3);
    if (!m_detail.isEmpty())
        height += second.height();
    return {width + 2 * padding() + 1, qMax(height, qMax(26, scaled(26)))};
}

QSize Button::minimumSizeHint() const
{
    QSize size = sizeHint();
    if (m_form == Form::Row || m_mayShrink)
        size.setWidth(qMin(size.width(), scaled(60)));
    return size;
}

QRect Button::visual(const QRect& logical) const
{
    return QStyle::visualRect(layoutDirection(), rect(), logical);
}

void Button::paintGround(QPainter& painter) const
{
    const Tokens& t = tokens();
    const QRectF box = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    const bool over = underMouse() && isEnabled();
    switch (m_form) {
    case Form::Main:
        painter.setPen(Qt::NoPen);
        painter.setBrush(
            isEnabled() ? (over ? t.accent.lighter(t.dark ? 108 : 115) : t.accent) : t.edge);
        painter.drawRoundedRect(box, 3, 3);
        break;
    case Form::Plain:
        painter.setPen(QPen(t.edge, 1));
        painter.setBrush(over ? t.field : t.card);
        painter.drawRoundedRect(box, 3, 3);
        break;
    case Form::Chip:
        painter.setPen(QPen(isChecked() ? t.accent : t.edge, 1));
        painter.setBrush(isChecked() ? t.accentTint : QColor(Qt::transparent));
        painter.drawRoundedRect(box, 3, 3);
        break;
    case Form::Row:
    case Form::Word:
    case Form::Task:
        if (!over && !(isChecked() && m_form != Form::Task) && !isDown())
            break;
        painter.setPen(Qt::NoPen);
        painter.setOpacity(isChecked() && m_form != Form::Task ? 1 : 0.55);
        painter.setBrush(isChecked() && m_form != Form::Task ? t.accentTint : t.line);
        painter.drawRoundedRect(box, 3, 3);
        painter.setOpacity(1);
        break;
    }
}

void Button::paintIcon(QPainter& painter, int& start) const
{
    const Tokens& t = tokens();
    if (m_form == Form::Chip) {
        const int side = scaled(8);
        const QRectF dot = visual(QRect(start, (height() - side) / 2, side, side));
        painter.setPen(isChecked() ? QPen(Qt::NoPen) : QPen(t.edge, 1.5));
        painter.setBrush(isChecked() ? QBrush(t.accent) : QBrush(Qt::NoBrush));
        painter.drawEllipse(dot.adjusted(0.5, 0.5, -0.5, -0.5));
        start += side + air(1.5);
    }
    if (m_icon == Icon::None)
        return;
    QRect place(start, (height() - scaled(16)) / 2, scaled(16), scaled(16));
    if (shownText().isEmpty())
        place.moveLeft((width() - scaled(16)) / 2);
    const bool main = m_form == Form::Main;
    const QColor line = !isEnabled() || m_quiet ? t.quiet : (main ? t.onAccent : t.ink);
    drawIcon(painter, m_icon, visual(place), line, main ? t.onAccent : t.accent);
    start += scaled(16) + air(1.5);
}

void Button::paintEnd(QPainter& painter, int& end) const
{
    const Tokens& t = tokens();
    if (!m_key.isEmpty() && !m_wordless) {
        const int keyWidth = QFontMetrics(detailFont()).horizontalAdvance(m_key);
        painter.setFont(detailFont());
        painter.setPen(m_form == Form::Main ? t.onAccent : t.quiet);
        painter.drawText(
            visual(QRect(end - keyWidth, 0, keyWidth, height())), Qt::AlignCenter, m_key);
        end -= keyWidth + air(2);
    }
    if (m_opensList) {
        const QRect place(end - scaled(12), (height() - scaled(12)) / 2, scaled(12), scaled(12));
        drawIcon(painter, Icon::Down, visual(place), t.quiet, t.quiet);
        end -= scaled(12) + air(1);
    }
}

void Button::paintText(QPainter& painter, const QRect& place) const
{
    const Tokens& t = tokens();
    const bool main = m_form == Form::Main;
    const QColor ink = main ? t.onAccent : (m_quiet || !isEnabled() ? t.quiet : t.ink);
    const bool centred = main || (m_form == Form::Plain && m_icon == Icon::None);
    const Qt::Alignment across =
        QStyle::visualAlignment(layoutDirection(), centred ? Qt::AlignHCenter : Qt::AlignLeading);
    const int flags = int((across | Qt::AlignVCenter) | Qt::AlignAbsolute) | Qt::TextShowMnemonic;
    const QFontMetrics metrics(textFont());
    const QFontMetrics second(detailFont());
    const int block = metrics.height() + (m_detail.isEmpty() ? 0 : second.height());
    const QRect first(place.left(), (height() - block) / 2, place.width(), metrics.height());
    painter.setFont(textFont());
    painter.setPen(ink);
    painter.drawText(visual(first),
        flags,
        metrics.elidedText(shownText(), Qt::ElideRight, first.width() + 2, Qt::TextShowMnemonic));
    if (!m_detail.isEmpty()) {
        const QRect below(first.left(), first.bottom() + 1, first.width(), second.height());
        painter.setFont(detailFont());
        painter.setPen(main ? t.onAccent : t.quiet);
        painter.drawText(visual(below),
            flags & ~Qt::TextShowMnemonic,
            second.elidedText(m_detail, Qt::ElideRight, below.width() + 2));
    }
    if (m_form == Form::Task && isChecked()) {
        painter.setPen(QPen(t.accent, 2.5, Qt::SolidLine, Qt::RoundCap));
        const QRect line =
            visual(QRect(place.left(), height() - 3, metrics.horizontalAdvance(shownText()), 1));
        painter.drawLine(line.left(), height() - 2, line.right(), height() - 2);
    }
}

void Button::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintGround(painter);
    int start = padding();
    int end = width() - padding();
    paintIcon(painter, start);
    paintEnd(painter, end);
    paintText(painter, QRect(start, 0, end - start, height()));
    if (hasFocus())
        drawFocusRing(painter, rect());
}

void Button::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void Button::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void Button::keyPressEvent(QKeyEvent* event)
{
    // Enter presses as Space does; QAbstractButton alone knows Space only.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

} // namespace wainscot::ui
