#include "app/jobs/wall_plan.h"

#include "core/base/says.h"
#include "layout/wall/fittings.h"
#include "layout/wall/propose.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr Mm kNarrow{250}; // a panel that hangs from one nail
constexpr double kPercent = 100;
// The metric values printed beside the inches of ADA 307.2.
constexpr Mm kKneeHeight{685};
constexpr Mm kHeadHeight{2030};
constexpr Mm kMostStandOut{100};

const Display* displayOf(const Book& book, PanelId panel)
{
    const Panel* own = book.panels.find(panel);
    return own != nullptr ? book.displays.find(own->display) : nullptr;
}

std::vector<HangingLine> listOf(const Book& book, const Wall& wall)
{
    std::vector<HangingLine> list;
    for (const PanelOnWall& hung : wall.panels) {
        const Display* display = displayOf(book, hung.panel);
        if (display == nullptr)
            continue;
        HangingLine line;
        line.panel = hung.panel;
        line.name =
            Says::tr("%1, panel %2").arg(display->name).arg(book.panels.find(hung.panel)->number);
        line.size = display->panelSize;
        line.place = {hung.corner.x, hung.corner.y, line.size.width, line.size.height};
        line.bottom = wall.size.height - line.place.bottom();
        line.top = wall.size.height - line.place.y;
        list.push_back(line);
    }
    std::stable_sort(list.begin(), list.end(), [](const auto& a, const auto& b) {
        return a.place.x < b.place.x;
    });
    return list;
}

std::vector<CutLine> boardsFor(const std::vector<HangingLine>& list)
{
    std::vector<CutLine> boards;
    for (const HangingLine& line : list) {
        const SizeMm board{line.size.width + 2 * kBoardBorder, line.size.height + 2 * kBoardBorder};
        const auto at = std::find_if(
            boards.begin(), boards.end(), [&](const CutLine& one) { return one.board == board; });
        if (at == boards.end())
            boards.push_back({board, 1});
        else
            ++at->count;
    }
    std::stable_sort(boards.begin(), boards.end(), [](const auto& a, const auto& b) {
        return a.board.width * a.board.height.value() > b.board.width * b.board.height.value();
    });
    return boards;
}

QString centimetres(Mm length)
{
    return QString::number(length.value() / 10, 'f', 1);
}

Finding finding(Severity severity, const char* rule, int panel, const QString& says)
{
    Finding one;
    one.severity = severity;
    one.rule = QString::fromLatin1(rule);
    one.panel = panel;
    one.says = says;
    return one;
}

Finding measured(Finding one, double value, double limit, const char* unit, const char* source)
{
    one.measured = value;
    one.limit = limit;
    one.unit = QString::fromLatin1(unit);
    one.source = QString::fromUtf8(source);
    return one;
}

QString besideTheEyes(bool above, bool forGrownUps)
{
    if (forGrownUps)
        return above
            ? Says::tr("The middle of %1 hangs at %2 cm, above grown-ups' eyes (%3 to %4 cm).")
            : Says::tr("The middle of %1 hangs at %2 cm, below grown-ups' eyes (%3 to %4 cm).");
    return above
        ? Says::tr("The middle of %1 hangs at %2 cm, above the children's eyes (%3 to %4 cm).")
        : Says::tr("The middle of %1 hangs at %2 cm, below the children's eyes (%3 to %4 cm).");
}

constexpr auto kPractice = QT_TRANSLATE_NOOP("Says", "common practice, no source");
constexpr auto kNothingOver =
    QT_TRANSLATE_NOOP("Says", "IFC 1030.6, second-hand: nothing over exits, signs, extinguishers");

class Measuring {
public:
    Measuring(const Wall& wall, WallPlan& plan, Mm standsOut)
        : m_wall(wall)
        , m_plan(plan)
        , m_standsOut(standsOut)
        , m_covered{wall.size, {}}
    {
        for (const HangingLine& line : plan.list)
            m_covered.panels.push_back(line.place);
    }

    void measure()
    {
        cover();
        runs();
        for (std::size_t i = 0; i < m_plan.list.size(); ++i) {
            const int number = static_cast<int>(i) + 1;
            edges(m_plan.list[i], number);
            clearance(m_plan.list[i], number);
            eyes(m_plan.list[i], number);
            if (auto walkedInto = protrusionOf(m_plan.list[i], number, m_standsOut))
                add(*std::move(walkedInto));
        }
    }

private:
    void add(Finding one) { m_plan.findings.push_back(std::move(one)); }

    void cover()
    {
        m_plan.coveredShare = wall::coveredShare(m_covered);
        const double percent = m_plan.coveredShare * kPercent;
        const bool kept = wall::keepsLimit(m_covered, m_plan.limit);
        add(measured(finding(kept ? Severity::Note : Severity::Look,
                         "wall.covered",
                         0,
                         Says::tr("%1 % of this wall is covered, doors and windows counted "
                                  "in; ask your fire authority.")
                             .arg(percent, 0, 'f', 1)),
            percent,
            m_plan.limit.share * kPercent,
            "%",
            m_plan.limit.source));
    }

    void runs()
    {
        const wall::RunLimit& limit = wall::runLimit();
        const Mm widest = wall::runsOf(m_covered, limit.apart).widest;
        if (widest <= limit.widest)
            return;
        add(measured(finding(Severity::Look,
                         "wall.run",
                         0,
                         Says::tr("Panels hang in one run of %1 cm without a gap of %2 cm; "
                                  "ask your fire authority.")
                             .arg(centimetres(widest), centimetres(limit.apart))),
            widest.value(),
            limit.widest.value(),
            "mm",
            limit.source));
    }

    void edges(const HangingLine& line, int number)
    {
        const Mm over = std::max({-line.place.x,
            -line.place.y,
            line.place.right() - m_wall.size.width,
            line.place.bottom() - m_wall.size.height});
        if (over > Mm(0.5))
            add(measured(finding(Severity::Stop,
                             "wall.edge",
                             number,
                             Says::tr("%1 reaches %2 cm over the edge of the wall.")
                                 .arg(line.name, centimetres(over))),
                over.value(),
                0,
                "mm",
                QT_TRANSLATE_NOOP("Says", "the measures of the wall")));
    }

    void clearance(const HangingLine& line, int number)
    {
        for (const Fitting& fitting : m_wall.fittings) {
            const RectMm clear = wall::keptClear(fitting, m_wall.size);
            if (intersection(clear, line.place).isEmpty())
                continue;
            const bool fire = wall::isForFire(fitting.kind);
            Finding one = finding(fire ? Severity::Stop : Severity::Look,
                "wall.clear",
                number,
                Says::tr("%1 hangs over what stays clear at the %2.")
                    .arg(line.name, inWords(fitting.kind)));
            one.source = QString::fromLatin1(fire ? kNothingOver : kPractice);
            add(one);
        }
    }

    // Whether the middle of a panel is where the eyes of those in front of it are.
    void eyes(const HangingLine& line, int number)
    {
        const bool forGrownUps = m_wall.viewers == Viewers::GrownUps;
        const wall::EyeBand& band = forGrownUps ? m_plan.grownUps : m_plan.children;
        const Mm middle = line.middle();
        if (middle >= band.low && middle <= band.high)
            return;
        const bool above = middle > band.high;
        add(measured(finding(Severity::Look,
                         "wall.eyes",
                         number,
                         besideTheEyes(above, forGrownUps)
                             .arg(line.name,
                                 centimetres(middle),
                                 centimetres(band.low),
                                 centimetres(band.high))),
            middle.value(),
            (above ? band.high : band.low).value(),
            "mm",
            band.source));
    }

    const Wall& m_wall;
    WallPlan& m_plan;
    Mm m_standsOut;
    wall::Covered m_covered;
};

} // namespace

const wall::CoverLimit& coverLimitCalled(const QString& name)
{
    const auto limits = wall::coverLimits();
    const auto called = [&](const QString& one) {
        return std::find_if(limits.begin(), limits.end(), [&](const wall::CoverLimit& limit) {
            return one == QLatin1String(limit.name);
        });
    };
    const auto at = called(name);
    return at != limits.end() ? *at : *called(QStringLiteral("20"));
}

WallPlan planOf(const Book& book, const Wall& wall, Mm standsOut)
{
    WallPlan plan;
    plan.list = listOf(book, wall);
    plan.boards = boardsFor(plan.list);
    plan.limit = coverLimitCalled(wall.coverLimit);
    plan.children = wall::childrensEyes(wall.youngest, wall.oldest);
    plan.grownUps = wall::grownUpsEyes();
    Measuring(wall, plan, standsOut).measure();
    std::stable_sort(plan.findings.begin(), plan.findings.end(), [](const auto& a, const auto& b) {
        return a.severity < b.severity; // gravest first
    });
    return plan;
}

Wall withProposedPlaces(const Book& book, const Wall& wall, DisplayId display)
{
    Wall placed = wall;
    std::erase_if(placed.panels, [&](const PanelOnWall& hung) {
        const Panel* panel = book.panels.find(hung.panel);
        return panel == nullptr || panel->display == display;
    });
    const Display* shown = book.displays.find(display);
    if (shown == nullptr)
        return placed;
    wall::HangingWish wish;
    wish.wall = wall.size;
    wish.centre = wall.viewers == Viewers::GrownUps
        ? wall::grownUpsEyes().middle
        : wall::childrensEyes(wall.youngest, wall.oldest).middle;
    for (const Fitting& fitting : wall.fittings)
        wish.keepClear.push_back(wall::keptClear(fitting, wall.size));
    for (const HangingLine& other : listOf(book, placed))
        wish.keepClear.push_back(other.place);
    const std::vector<const Panel*> panels = panelsOf(book, display);
    wish.panels.assign(panels.size(), shown->panelSize);
    const auto places = wall::proposePlaces(wish);
    for (std::size_t i = 0; i < panels.size(); ++i) {
        if (places[i])
            placed.panels.push_back({panels[i]->id, places[i]->topLeft()});
    }
    return placed;
}

std::optional<Finding> protrusionOf(const HangingLine& line, int number, Mm standsOut)
{
    const bool inTheWay = line.top > kKneeHeight && line.bottom < kHeadHeight;
    if (standsOut <= kMostStandOut || !inTheWay)
        return std::nullopt;
    return measured(finding(Severity::Look,
                        "wall.stands_out",
                        number,
                        Says::tr("%1 stands out %2 cm between knee and head; a cane does not "
                                 "find it. Ask your school.")
                            .arg(line.name, centimetres(standsOut))),
        standsOut.value(),
        kMostStandOut.value(),
        "mm",
        QT_TRANSLATE_NOOP("Says", "2010 ADA Standards 307.2: 27 to 80 in above the floor, 4 in"));
}

QString inWords(FittingKind kind)
{
    switch (kind) {
    case FittingKind::Door:
        return Says::tr("door");
    case FittingKind::Window:
        return Says::tr("window");
    case FittingKind::Radiator:
        return Says::tr("radiator");
    case FittingKind::Socket:
        return Says::tr("socket");
    case FittingKind::Switch:
        return Says::tr("switch");
    case FittingKind::ExitSign:
        return Says::tr("exit sign");
    case FittingKind::Extinguisher:
        return Says::tr("extinguisher");
    case FittingKind::Alarm:
        return Says::tr("alarm");
    }
    return {};
}

QString inchesInWords(Mm length)
{
    const auto eighths = static_cast<int>(std::lround(length.value() / kMmPerInch * 8));
    const int whole = std::abs(eighths) / 8;
    static const std::array kParts{QString(),
        QStringLiteral("1/8"),
        QStringLiteral("1/4"),
        QStringLiteral("3/8"),
        QStringLiteral("1/2"),
        QStringLiteral("5/8"),
        QStringLiteral("3/4"),
        QStringLiteral("7/8")};
    const QString& part = kParts[static_cast<std::size_t>(std::abs(eighths) % 8)];
    QString text = whole > 0 || part.isEmpty() ? QString::number(whole) : QString();
    if (!part.isEmpty())
        text += (text.isEmpty() ? QString() : QStringLiteral(" ")) + part;
    return QStringLiteral("%1%2 in").arg(eighths < 0 ? QStringLiteral("-") : QString(), text);
}

std::vector<Nail> HangingLine::nails() const
{
    const Mm up = top - kNailDrop;
    if (size.width < kNarrow)
        return {{left() + size.width / 2, up}};
    const Mm inwards = size.width / 10;
    return {{left() + inwards, up}, {right() - inwards, up}};
}

} // namespace wainscot
