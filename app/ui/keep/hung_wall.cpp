#include "app/ui/keep/hung_wall.h"

#include <QPainter>
#include <QStyle>

#include "app/ui/compose/panel_picture.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr double kLongSide = 76; // px at 10 pt text

QString standsBefore(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return HungWall::tr("classroom");
    case Audience::Building:
        return HungWall::tr("hallway");
    case Audience::Families:
        return HungWall::tr("families");
    case Audience::Public:
        break;
    }
    return HungWall::tr("public");
}

} // namespace

HungWall::HungWall(Session& session, PictureShelf& pictures, DisplayId display, QWidget* parent)
    : QAbstractButton(parent)
    , m_session(session)
    , m_pictures(pictures)
    , m_display(display)
{
    const Display& own = *session.book().displays.find(display);
    const int panels = int(panelsOf(session.book(), display).size());
    m_panel = own.panelSize;
    m_says = standsBefore(own.audience);
    setAccessibleName(tr("%1, for the %2: %3")
                          .arg(own.name, m_says, counted(panels, tr("1 panel"), tr("%1 panels"))));
    setToolTip(accessibleName());
    setCursor(Qt::PointingHandCursor);
    connect(&pictures, &PictureShelf::loaded, this, [this] {
        m_picture = {};
        update();
    });
}

QSize HungWall::pictureSize() const
{
    const double side = scaled(kLongSide);
    const double longer = std::max(m_panel.width, m_panel.height).value();
    return {qMax(1, qRound(m_panel.width.value() * side / longer)),
        qMax(1, qRound(m_panel.height.value() * side / longer))};
}

QSize HungWall::sizeHint() const
{
    const QFontMetrics metrics(interfaceFont(0.88));
    return {pictureSize().width() + air(2) + metrics.horizontalAdvance(m_says) + air(1),
        pictureSize().height() + 6};
}

QRect HungWall::pictureRect() const
{
    return QStyle::visualRect(layoutDirection(), rect(), QRect(QPoint(2, 2), pictureSize()));
}

QLineF HungWall::upperEdge() const
{
    const QRect picture = pictureRect();
    return {QPointF(picture.left(), picture.top()), QPointF(picture.right() + 1, picture.top())};
}

void HungWall::paintEvent(QPaintEvent* /*event*/)
{
    const auto panels = panelsOf(m_session.book(), m_display);
    if (m_picture.isNull() && !panels.empty()) {
        const double ratio = devicePixelRatioF();
        m_picture = panelPicture(m_session.book(),
            panels.front()->id,
            qRound(pictureSize().width() * ratio),
            m_pictures);
        m_picture.setDevicePixelRatio(ratio);
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRect picture = pictureRect();
    painter.fillRect(picture.translated(2, 3), QColor(0, 0, 0, 46));
    painter.fillRect(picture, Qt::white);
    painter.drawPixmap(picture.topLeft(), m_picture);
    painter.setPen(tokens().quiet);
    painter.setFont(interfaceFont(0.88));
    const QRect beside = QStyle::visualRect(layoutDirection(),
        rect(),
        QRect(QPoint(2 + pictureSize().width() + air(2), 0),
            QSize(width() - pictureSize().width() - air(2), painter.fontMetrics().height() + 4)));
    painter.drawText(beside, Qt::AlignVCenter | Qt::AlignLeading, m_says);
    if (!hasFocus())
        return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, 4));
    painter.drawRect(picture);
    painter.setPen(QPen(tokens().accent, 2));
    painter.drawRect(picture);
}

} // namespace wainscot::ui
