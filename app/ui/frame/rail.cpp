#include "app/ui/frame/rail.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QPaintEvent>
#include <QPainter>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

int railHeight()
{
    return scaled(17) + QFontMetrics(interfaceFont(1.12)).height()
        + QFontMetrics(interfaceFont(0.85)).height() + air(3);
}

struct PlaceWords {
    Q_DECLARE_TR_FUNCTIONS(Place)
};

} // namespace

QString nameOf(Place place)
{
    switch (place) {
    case Place::Gather:
        return PlaceWords::tr("Gather");
    case Place::Listen:
        return PlaceWords::tr("Listen");
    case Place::Compose:
        return PlaceWords::tr("Compose");
    case Place::Hang:
        return PlaceWords::tr("Hang");
    case Place::Keep:
        return PlaceWords::tr("Keep");
    }
    return {};
}

PlaceNail::PlaceNail(const QString& name, QWidget* parent)
    : QAbstractButton(parent)
{
    setText(name);
    setAccessibleName(name);
    setCheckable(true);
    setAutoExclusive(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void PlaceNail::setLine(const QString& line, Nail nail)
{
    m_line = line;
    m_nail = nail;
    setAccessibleDescription(line);
    update();
}

QSize PlaceNail::sizeHint() const
{
    return {scaled(150), railHeight()};
}

QSize PlaceNail::minimumSizeHint() const
{
    return {scaled(90), railHeight()};
}

void PlaceNail::paintRail(QPainter& painter, double y) const
{
    painter.setPen(QPen(tokens().edge, 1));
    painter.drawLine(QPointF(0, y - 1), QPointF(width(), y - 1));
    painter.drawLine(QPointF(0, y + 1.5), QPointF(width(), y + 1.5));
}

void PlaceNail::paintNail(QPainter& painter, QPointF at) const
{
    const Tokens& t = tokens();
    const double radius = scaled(9) / 2.0;
    switch (m_nail) {
    case Nail::NothingMissing:
        painter.setPen(QPen(t.window, 2));
        painter.setBrush(t.accent);
        painter.drawEllipse(at, radius + 1, radius + 1);
        break;
    case Nail::InWork:
        painter.setPen(QPen(t.accent, 2));
        painter.setBrush(t.window);
        painter.drawEllipse(at, radius, radius);
        painter.setPen(Qt::NoPen);
        painter.setBrush(t.accent);
        painter.drawEllipse(at, radius * 0.42, radius * 0.42);
        break;
    case Nail::Untouched:
        painter.setPen(QPen(t.edge, 1.6));
        painter.setBrush(t.window);
        painter.drawEllipse(at, radius * 0.85, radius * 0.85);
        break;
    }
}

void PlaceNail::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double y = scaled(7);
    const QPointF nail(width() / 2.0, y);
    const QRectF plate(2, scaled(17), width() - 4, height() - scaled(17) - 2);
    paintRail(painter, y);
    if (isChecked()) {
        painter.setPen(QPen(t.quiet, 1.2));
        painter.drawLine(nail, plate.topLeft() + QPointF(8, 0));
        painter.drawLine(nail, plate.topRight() - QPointF(8, 0));
        painter.setPen(QPen(t.edge, 1));
        painter.setBrush(t.slip);
        painter.drawRect(plate.adjusted(0.5, 0.5, -0.5, -0.5));
    } else if (underMouse()) {
        painter.setOpacity(0.5);
        painter.fillRect(plate, t.line);
        painter.setOpacity(1);
    }
    paintNail(painter, nail);
    const QFont name = interfaceFont(1.12, isChecked() ? QFont::DemiBold : QFont::Normal);
    const QFont second = interfaceFont(0.85);
    QRectF line(4, scaled(17) + air(0.6), width() - 8, QFontMetrics(name).height());
    painter.setFont(name);
    painter.setPen(t.ink);
    painter.drawText(line, Qt::AlignCenter, text());
    line.translate(0, line.height());
    painter.setFont(second);
    painter.setPen(t.quiet);
    painter.drawText(line,
        Qt::AlignHCenter | Qt::AlignTop,
        QFontMetrics(second).elidedText(m_line, Qt::ElideRight, width() - 12));
    if (hasFocus())
        drawFocusRing(painter, plate);
}

void PlaceNail::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void PlaceNail::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

Rail::Rail(QWidget* parent)
    : QWidget(parent)
    , m_experience(new Button(Button::Form::Word, QString()))
    , m_rover(new Rover(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(air(4), air(0.5), air(4), air(1));
    row->setSpacing(air(2));
    m_experience->setOpensList(true);
    m_experience->setRelativeSize(1.05);
    m_experience->setMayShrink(true);
    m_experience->setMaximumWidth(scaled(300));
    m_experience->setFixedHeight(railHeight());
    connect(m_experience, &Button::clicked, this, &Rail::experienceAsked);
    row->addWidget(m_experience);
    row->addSpacing(air(3));
    auto* places = new QHBoxLayout;
    places->setSpacing(0);
    QVector<QWidget*> members;
    for (int i = 0; i < kPlaces; ++i) {
        const Place place = static_cast<Place>(i);
        auto* nail = new PlaceNail(nameOf(place));
        nail->setToolTip(QStringLiteral("%1  Ctrl+%2").arg(nameOf(place)).arg(i + 1));
        connect(nail, &PlaceNail::clicked, this, [this, place] { Q_EMIT chosen(place); });
        places->addWidget(nail, 1);
        m_nails[std::size_t(i)] = nail;
        members << nail;
    }
    m_rover->setMembers(members, int(Place::Compose));
    row->addLayout(places, 1);
}

void Rail::setPlace(Place place)
{
    m_nails[std::size_t(place)]->setChecked(true);
}

void Rail::setLine(Place place, const QString& line, PlaceNail::Nail nail)
{
    m_nails[std::size_t(place)]->setLine(line, nail);
}

QString Rail::line(Place place) const
{
    return m_nails[std::size_t(place)]->accessibleDescription();
}

void Rail::setExperience(const QString& title, const QString& about)
{
    m_experience->setVisible(!title.isEmpty());
    m_experience->setText(title);
    m_experience->setDetail(about);
    m_experience->setToolTip(title + QLatin1Char('\n') + about);
    m_experience->setAccessibleName(tr("Experience: %1").arg(title));
}

} // namespace wainscot::ui
