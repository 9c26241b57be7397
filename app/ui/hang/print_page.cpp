#include "app/ui/hang/print_page.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <span>

#include "app/ui/kit/tokens.h"
#include "app/ui/session/sheet_settings.h"
#include "layout/wall/cover.h"

namespace wainscot::ui {

namespace {

// Pictures and grounds in square millimetres; a picture on its mat counts once.
double colouredMm2(const DisplayList& list)
{
    std::vector<RectMm> places;
    for (const Mark& mark : list.marks) {
        if (const auto* picture = std::get_if<PlacedPicture>(&mark.shape))
            places.push_back(picture->place);
        else if (const auto* fill = std::get_if<Fill>(&mark.shape);
                 fill && fill->colour != 0xffffffff)
            places.push_back(fill->rect);
    }
    return wall::coveredAreaMm2({list.size, places});
}

} // namespace

PrintPage::PrintPage(Session& session, PictureShelf& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_picture(new SheetsPicture(session, pictures))
    , m_count(new Label({}, 1.5, QFont::DemiBold))
    , m_detail(new Label({}, 1.0))
    , m_white(new QCheckBox)
    , m_printer(new Button(Button::Form::Plain, tr("Any printer")))
    , m_edge(new Label({}, 0.88))
    , m_paper(new Button(Button::Form::Plain, tr("Paper"), Icon::Sheet))
    , m_overlap(new Button(Button::Form::Plain, tr("Overlap")))
    , m_margin(new Button(Button::Form::Plain, tr("Margin")))
    , m_ruler(new QLineEdit)
    , m_withData(new QCheckBox(tr("With what the panels say, as data")))
    , m_each(new QCheckBox(tr("A file for each panel")))
    , m_eachTrimmed(new QCheckBox(tr("A file for each panel")))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(air(9), air(7), air(9), air(5));
    row->setSpacing(air(9));
    row->addWidget(m_picture, 5);
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(2));
    column->addWidget(m_count);
    column->addWidget(m_detail);
    makeSettings(column);
    auto* ruler = new QHBoxLayout;
    ruler->setSpacing(air(2));
    ruler->addWidget(new Label(tr("The 100 mm ruler on the first sheet measures")));
    m_ruler->setMaximumWidth(scaled(72));
    m_ruler->setAlignment(Qt::AlignRight);
    m_ruler->setAccessibleName(tr("What the 100 mm ruler measures, in millimetres"));
    ruler->addWidget(m_ruler);
    ruler->addWidget(new Label(tr("mm")));
    ruler->addStretch();
    column->addLayout(ruler);
    makeWays(column);
    column->addStretch();
    row->addWidget(scrolled(side), 6);
    m_withData->setToolTip(tr("For a program that reads it in other years"));
    connect(m_ruler, &QLineEdit::editingFinished, this, [this] {
        bool isNumber = false;
        const double typed = QLocale().toDouble(m_ruler->text(), &isNumber);
        setRuler(Mm(isNumber ? typed : 100));
    });
    say();
}

QString PrintPage::paper() const
{
    return keptPaper();
}

void PrintPage::setPaper(const QString& name)
{
    keep(SheetSetting::Paper, name);
    say();
    Q_EMIT changed();
}

void PrintPage::setRuler(Mm measured)
{
    keepRuler(measured);
    say();
    Q_EMIT changed();
}

SheetWishes PrintPage::wishes() const
{
    return keptSheets();
}

bool PrintPage::withData() const
{
    return m_withData->isChecked();
}

std::vector<SheetPlan> PrintPage::plans() const
{
    std::vector<SheetPlan> plans;
    const auto even = planSheets(m_panelSize, wishes().options());
    for (const DisplayList& list : m_lists) {
        if (even)
            plans.push_back(withQuietSeams(*even, list));
    }
    return plans;
}

int PrintPage::sheetsOf(const std::vector<SheetPlan>& plans)
{
    int sheets = 0;
    for (const SheetPlan& plan : plans)
        sheets += plan.count() - (keptLeaveOutWhite() ? plan.whiteCount() : 0);
    return sheets;
}

int PrintPage::sheets() const
{
    return sheetsOf(plans());
}

void PrintPage::refresh(const DrawnDisplay* drawn)
{
    m_panels = drawn != nullptr ? int(drawn->panels.size()) : 0;
    m_panelSize = m_panels > 0 ? drawn->display.panelSize : SizeMm{};
    for (QCheckBox* each : {m_each, m_eachTrimmed})
        each->setVisible(m_panels > 1);
    m_lists.clear();
    m_at = 0;
    double coloured = 0;
    const auto panels = drawn != nullptr ? std::span<const DrawnPanel>(drawn->panels)
                                         : std::span<const DrawnPanel>();
    for (const DrawnPanel& panel : panels) {
        if (m_session.panel() != nullptr && panel.cleared.id() == m_session.panel()->id)
            m_at = m_lists.size();
        m_lists.push_back(panel.list);
        coloured += colouredMm2(panel.list);
    }
    const double paper = m_panels * m_panelSize.width.value() * m_panelSize.height.value();
    m_coloured = paper > 0 ? qRound(100 * coloured / paper) : 0;
    say();
}

void PrintPage::say()
{
    const std::vector<SheetPlan> all = plans();
    const QString paper = keptPaper();
    m_paper->setText(paper);
    m_overlap->setText(tr("Overlap %1 mm").arg(QLocale().toString(keptOverlap().value())));
    m_margin->setText(tr("Margin %1 mm").arg(QLocale().toString(keptMargin().value())));
    if (!m_ruler->hasFocus())
        m_ruler->setText(QLocale().toString(keptRuler().value(), 'f', 1));
    sayPrinter();
    for (Button* button : {m_printer, m_paper, m_overlap, m_margin}) {
        button->setAccessibleName(button->text());
        button->updateGeometry();
    }
    int white = 0;
    for (const SheetPlan& plan : all)
        white += plan.whiteCount();
    m_white->setVisible(white > 0);
    m_white->setText(
        tr("Leave out %1")
            .arg(counted(white, tr("1 sheet that stays white"), tr("%1 sheets that stay white"))));
    m_white->setChecked(keptLeaveOutWhite());
    m_picture->show(all.empty() ? std::nullopt : std::optional(all[m_at]), keptLeaveOutWhite());
    if (all.empty()) {
        m_count->setText(tr("There is no panel yet."));
        m_detail->setText(tr("Make one in Compose first."));
        return;
    }
    const SheetPlan& one = all[m_at];
    const bool turned = one.sheet.width > one.sheet.height;
    m_count->setText(
        tr("%1 of %2").arg(counted(sheetsOf(all), tr("1 sheet"), tr("%1 sheets")), paper));
    m_detail->setText(tr("%1 rows of %2 for each panel%3, and one that shows how they go together.")
                          .arg(one.rows)
                          .arg(one.columns)
                          .arg(turned ? tr(", the paper turned") : QString())
        + QLatin1Char(' ')
        + tr("Pictures and grounds take colour on %1 % of the paper.").arg(m_coloured));
}

QString PrintPage::summary() const
{
    const int count = sheets();
    return count > 0 ? tr("%1 on %2 of %3.")
                           .arg(counted(m_panels, tr("1 panel"), tr("%1 panels")),
                               counted(count, tr("1 sheet"), tr("%1 sheets")),
                               keptPaper())
                     : tr("There is nothing to print yet.");
}

QWidget* PrintPage::firstStop() const
{
    return m_printer;
}

void PrintPage::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().field);
}

} // namespace wainscot::ui
