#include "app/ui/hang/wall_picture.h"

#include <QCoreApplication>

#include <cmath>

#include "layout/wall/fittings.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WallPicture)
};

constexpr double kBetweenNames = 4;

QColor between(const QColor& a, const QColor& b, double share)
{
    const auto mixed = [share](int from, int to) { return qRound(from + (to - from) * share); };
    return QColor(mixed(a.red(), b.red()), mixed(a.green(), b.green()), mixed(a.blue(), b.blue()));
}

// In pixels of the picture, which is scaled as a whole onto paper: a font in points would grow with
// the printer's dots besides.
QFont pictureFont(double relative, QFont::Weight weight = QFont::Normal)
{
    QFont font = interfaceFont(relative, weight);
    font.setPixelSize(qMax(1, QFontInfo(font).pixelSize()));
    return font;
}

} // namespace

QString centimetres(Mm length)
{
    return QLocale().toString(length.value() / 10, 'f', 1);
}

QString millimetres(Mm length)
{
    return QString::number(qRound(length.value()));
}

WallPicture::WallPicture(const Wall& wall,
    const WallPlan& plan,
    const Tokens& colours,
    std::function<QPixmap(PanelId, int)> panelPixmap)
    : m_wall(wall)
    , m_plan(plan)
    , m_colours(colours)
    , m_panelPixmap(std::move(panelPixmap))
{
}

QRectF WallPicture::fitted(const QRectF& room) const
{
    const double scale =
        qMin(room.width() / m_wall.size.width.value(), room.height() / m_wall.size.height.value());
    const QSizeF size(m_wall.size.width.value() * scale, m_wall.size.height.value() * scale);
    return {QPointF(room.left() + (room.width() - size.width()) / 2,
                room.top() + (room.height() - size.height()) / 2),
        size};
}

QRectF WallPicture::onScreen(const RectMm& place, const QRectF& wall, SizeMm size)
{
    const double scale = wall.width() / size.width.value();
    return {wall.left() + place.x.value() * scale,
        wall.top() + place.y.value() * scale,
        place.width.value() * scale,
        place.height.value() * scale};
}

double WallPicture::y(const QRectF& wall, Mm aboveFloor) const
{
    return wall.bottom() - aboveFloor / m_wall.size.height * wall.height();
}

void WallPicture::paint(QPainter& painter, const QRectF& wall, int hand) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_colours.line, 1));
    painter.setBrush(m_colours.card);
    painter.drawRect(wall);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_colours.wall);
    painter.drawRect(
        QRectF(wall.left(), y(wall, Mm(80)), wall.width(), wall.bottom() - y(wall, Mm(80))));
    if (m_wall.viewers != Viewers::Children)
        paintBand(painter, wall, m_plan.grownUps, false);
    if (m_wall.viewers != Viewers::GrownUps)
        paintBand(painter, wall, m_plan.children, true);
    for (const Fitting& fitting : m_wall.fittings)
        paintFitting(painter, wall, fitting);
    for (const HangingLine& line : m_plan.list)
        paintPanel(painter, wall, line);
    const int panels = static_cast<int>(m_wall.panels.size());
    if (hand >= panels && hand - panels < static_cast<int>(m_wall.fittings.size()))
        paintHand(painter, wall, m_wall.fittings[static_cast<std::size_t>(hand - panels)].place);
    for (const HangingLine& line : m_plan.list) {
        if (hand >= 0 && hand < panels
            && m_wall.panels[static_cast<std::size_t>(hand)].panel == line.panel)
            paintHand(painter, wall, line.place);
    }
    painter.restore();
}

// Children's and grown-ups' bands differ in the direction of their lines, not in colour alone.
void WallPicture::paintBand(
    QPainter& painter, const QRectF& wall, const wall::EyeBand& band, bool children) const
{
    const QRectF rect(
        QPointF(wall.left(), y(wall, band.high)), QPointF(wall.right(), y(wall, band.low)));
    const QColor colour = children ? m_colours.accent : m_colours.note;
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush(
        between(m_colours.card, colour, 0.4), children ? Qt::FDiagPattern : Qt::BDiagPattern));
    painter.drawRect(rect);
    painter.setPen(QPen(colour, 1, Qt::DashLine));
    painter.drawLine(rect.topLeft(), rect.topRight());
    painter.drawLine(rect.bottomLeft(), rect.bottomRight());
}

void WallPicture::paintFitting(QPainter& painter, const QRectF& wall, const Fitting& fitting) const
{
    const bool fire = wall::isForFire(fitting.kind) && fitting.kind != FittingKind::Door;
    const QRectF rect = onScreen(fitting.place, wall, m_wall.size);
    if (fire) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(QBrush(m_colours.stop, Qt::Dense6Pattern));
        painter.drawRect(onScreen(wall::keptClear(fitting, m_wall.size), wall, m_wall.size));
    }
    painter.setPen(QPen(fire ? m_colours.stop : m_colours.edge, 1.2));
    painter.setBrush(fitting.kind == FittingKind::Window ? m_colours.noteTint
            : fitting.kind == FittingKind::ExitSign      ? m_colours.accentTint
                                                         : m_colours.window);
    painter.drawRect(rect);
    if (fitting.kind == FittingKind::Window)
        painter.drawLine(QLineF(rect.center().x(), rect.top(), rect.center().x(), rect.bottom()));
    if (fitting.kind == FittingKind::Door)
        painter.drawEllipse(
            QPointF(rect.right() - rect.width() * 0.1, rect.center().y()), 2.5, 2.5);
    for (double x = rect.left() + 8; fitting.kind == FittingKind::Radiator && x < rect.right();
         x += 8)
        painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()));
    painter.setFont(pictureFont(0.85));
    painter.setPen(m_colours.quiet);
    const QString name = inWords(fitting.kind);
    const QFontMetricsF metrics(painter.font(), painter.device());
    const bool inside = metrics.horizontalAdvance(name) + 8 < rect.width()
        && metrics.height() + 4 < rect.height() && fitting.kind != FittingKind::Radiator;
    if (inside)
        painter.drawText(rect.adjusted(4, 2, -4, -2), Qt::AlignLeft | Qt::AlignTop, name);
    else
        painter.drawText(
            QPointF(rect.center().x() - metrics.horizontalAdvance(name) / 2, rect.top() - 4), name);
}

void WallPicture::paintPanel(QPainter& painter, const QRectF& wall, const HangingLine& line) const
{
    const QRectF rect = onScreen(line.place, wall, m_wall.size);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0, 0, 0, 46));
    painter.drawRect(rect.translated(2, 3));
    painter.setBrush(Qt::white);
    painter.drawRect(rect);
    const double ratio = painter.device()->devicePixelRatioF();
    const QPixmap pixmap =
        m_panelPixmap ? m_panelPixmap(line.panel, qCeil(rect.width() * ratio)) : QPixmap();
    if (!pixmap.isNull()) {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawPixmap(rect, pixmap, QRectF(pixmap.rect()));
    }
}

void WallPicture::paintNails(QPainter& painter, const QRectF& wall) const
{
    constexpr double kNailRadius = 2.2;
    constexpr double kDiscRadius = 9;
    constexpr double kLeastDisc = 4.5; // a number would be too small to be read
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_plan.list.size(); ++i) {
        const HangingLine& line = m_plan.list[i];
        painter.setPen(QPen(m_colours.card, 1));
        painter.setBrush(m_colours.ink);
        for (const Nail& nail : line.nails())
            painter.drawEllipse(QPointF(wall.left() + nail.left / m_wall.size.width * wall.width(),
                                    y(wall, nail.up)),
                kNailRadius,
                kNailRadius);
        const QRectF panel = onScreen(line.place, wall, m_wall.size);
        const double radius = qMin(kDiscRadius, 0.45 * qMin(panel.width(), panel.height()));
        if (radius < kLeastDisc)
            continue;
        QRectF disc(0, 0, 2 * radius, 2 * radius);
        disc.moveCenter(panel.center());
        painter.drawEllipse(disc);
        painter.setFont(pictureFont(0.9 * radius / kDiscRadius, QFont::DemiBold));
        painter.setPen(m_colours.card);
        painter.drawText(disc, Qt::AlignCenter, QString::number(i + 1));
    }
    painter.restore();
}

void WallPicture::paintLabel(QPainter& painter, const QPointF& middle, const QString& text) const
{
    painter.setFont(pictureFont(1.0, QFont::DemiBold));
    const QFontMetricsF metrics(painter.font(), painter.device());
    QRectF box(0, 0, metrics.horizontalAdvance(text) + 12, metrics.height() + 4);
    box.moveCenter(middle);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_colours.card);
    painter.drawRect(box);
    painter.setPen(m_colours.ink);
    painter.drawText(box, Qt::AlignCenter, text);
}

// The mark of the hand, and how far it is from the left edge and from the floor.
void WallPicture::paintHand(QPainter& painter, const QRectF& wall, const RectMm& place) const
{
    const QRectF rect = onScreen(place, wall, m_wall.size);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_colours.hand, 2));
    painter.drawRect(rect.adjusted(-1, -1, 1, 1));
    painter.setPen(QPen(m_colours.ink, 1));
    const double above = qMax(wall.top() + 16, rect.top() - 30);
    painter.drawLine(QLineF(wall.left(), above, rect.left(), above));
    painter.drawLine(QLineF(wall.left(), above - 5, wall.left(), above + 5));
    painter.drawLine(QLineF(rect.left(), above - 5, rect.left(), above + 5));
    const double x = rect.center().x();
    const double floor = wall.bottom();
    if (floor - rect.bottom() > 1)
        painter.drawLine(QLineF(x, rect.bottom(), x, floor));
    const Mm bottom = m_wall.size.height - place.bottom();
    paintLabel(painter,
        {(wall.left() + rect.left()) / 2, above},
        Words::tr("%1 mm from the left").arg(millimetres(place.x)));
    if (floor - rect.bottom() > 24)
        paintLabel(painter,
            {x, (rect.bottom() + floor) / 2},
            Words::tr("%1 mm up").arg(millimetres(bottom)));
}

std::vector<WallPicture::BandName> WallPicture::bandNames(
    const QPainter& painter, const QRectF& wall) const
{
    std::vector<BandName> names; // from above
    const auto add = [&](const wall::EyeBand& band, const QString& who, const QString& how) {
        BandName name;
        name.band = (y(wall, band.low) + y(wall, band.high)) / 2;
        name.lines = {{who, true},
            {Words::tr("%1 to %2 cm").arg(centimetres(band.low), centimetres(band.high)), false},
            {how, false}};
        QSizeF size;
        for (const BandLine& line : name.lines) {
            const QFontMetricsF metrics(
                line.large ? pictureFont(1.0, QFont::DemiBold) : pictureFont(0.85),
                painter.device());
            size = {qMax(size.width(), metrics.horizontalAdvance(line.text)),
                size.height() + metrics.height()};
        }
        name.box = QRectF(QPointF(wall.right() + 14, name.band - size.height() / 2), size);
        names.push_back(name);
    };
    if (m_wall.viewers != Viewers::Children)
        add(m_plan.grownUps, Words::tr("Grown-ups' eyes"), Words::tr("standing, 5th to 95th"));
    if (m_wall.viewers != Viewers::GrownUps)
        add(m_plan.children,
            Words::tr("Children's eyes"),
            Words::tr("%1 to %2 years, estimate").arg(m_wall.youngest).arg(m_wall.oldest));
    if (names.size() == 2) {
        // Both give way by half of what they lack.
        const double lacking = names[0].box.bottom() + kBetweenNames - names[1].box.top();
        if (lacking > 0) {
            names[0].box.translate(0, -lacking / 2);
            names[1].box.translate(0, lacking / 2);
        }
    }
    return names;
}

void WallPicture::paintScales(QPainter& painter, const QRectF& wall) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(pictureFont(0.88));
    painter.setPen(m_colours.quiet);
    const double perMetre = wall.width() / m_wall.size.width.value() * 1000;
    const QFontMetricsF metrics(painter.font(), painter.device());
    const int step = perMetre < 34 ? 5 : 1;
    for (int metre = 0; metre * 1000 <= m_wall.size.width.value(); metre += step) {
        const double x = wall.left() + metre * perMetre;
        painter.drawLine(QLineF(x, wall.bottom(), x, wall.bottom() + 6));
        const QString text = Words::tr("%1 m").arg(metre);
        painter.drawText(
            QPointF(x - metrics.horizontalAdvance(text) / 2, wall.bottom() + 8 + metrics.ascent()),
            text);
    }
    for (int metre = 0; metre * 1000 <= m_wall.size.height.value(); ++metre) {
        const double at = wall.bottom() - metre * perMetre;
        painter.drawLine(QLineF(wall.left() - 6, at, wall.left(), at));
        const QString text = metre == 0 ? Words::tr("floor") : Words::tr("%1 m").arg(metre);
        painter.drawText(QPointF(wall.left() - 9 - metrics.horizontalAdvance(text),
                             at + metrics.ascent() / 2 - 1),
            text);
    }
    for (const BandName& name : bandNames(painter, wall)) {
        QPointF at = name.box.topLeft();
        for (const BandLine& line : name.lines) {
            const QFont font = line.large ? pictureFont(1.0, QFont::DemiBold) : pictureFont(0.85);
            painter.setFont(font);
            painter.setPen(line.large ? m_colours.ink : m_colours.quiet);
            const QFontMetricsF letters(font, painter.device());
            painter.drawText(at + QPointF(0, letters.ascent()), line.text);
            at.ry() += letters.height();
        }
        // Where it had to make way, a line leads back to its band.
        const QPointF middle(name.box.left() - 3, name.box.center().y());
        painter.setPen(QPen(m_colours.quiet, 1));
        painter.drawLine(QLineF(wall.right() + 1, name.band, middle.x(), middle.y()));
    }
    painter.restore();
}

} // namespace wainscot::ui
