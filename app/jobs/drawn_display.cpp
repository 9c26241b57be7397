#include "app/jobs/drawn_display.h"

#include "core/base/says.h"
#include "layout/typeset/typesetter.h"

#include <QRegularExpression>

namespace wainscot {

namespace {

constexpr int kLongTellingWords = 45;

} // namespace

PanelStyle styleFor(const ClearedPanel& panel)
{
    static const QRegularExpression spaces(QStringLiteral("\\s+"));
    qsizetype words = 0;
    for (const ClearedPiece& piece : panel.pieces()) {
        if (piece.kind == PieceKind::Quote)
            words += piece.text.split(spaces, Qt::SkipEmptyParts).size();
    }
    const bool longTelling =
        panel.display().plan == QLatin1String("drawing") && words > kLongTellingWords;
    const PlanStyle plan = planStyle(panel.display().plan);
    const int asked = panel.display().voiceStep;
    const int usual = longTelling ? plan.voiceStep - 1 : plan.voiceStep;
    return panelStyle(panel.display(), asked != 0 ? asked : usual, plan.titleStep);
}

std::vector<LeftOut> DrawnDisplay::leftOut() const
{
    std::vector<LeftOut> all;
    for (const DrawnPanel& panel : panels)
        all.insert(all.end(), panel.cleared.leftOut().begin(), panel.cleared.leftOut().end());
    return all;
}

std::vector<ClearedPanel> DrawnDisplay::clearedPanels() const
{
    std::vector<ClearedPanel> all;
    all.reserve(panels.size());
    for (const DrawnPanel& panel : panels)
        all.push_back(panel.cleared);
    return all;
}

Result<DrawnDisplay> drawDisplay(const Book& book, const QString& name, QDate today)
{
    const Display* display = displayByName(book, name);
    if (display == nullptr) {
        return Error{ErrorCode::NotFound,
            Says::tr("The display \"%1\"").arg(name),
            Says::tr("this book has no display of that name")};
    }
    DrawnDisplay drawn;
    drawn.display = *display;
    const PermissionRules rules(book, *display, today);
    for (const Panel* panel : panelsOf(book, display->id)) {
        ClearedPanel cleared = rules.clear(*panel);
        PanelStyle style = styleFor(cleared);
        DisplayList list = typeset(cleared, style);
        drawn.panels.push_back({std::move(cleared), std::move(style), std::move(list)});
    }
    return drawn;
}

} // namespace wainscot
