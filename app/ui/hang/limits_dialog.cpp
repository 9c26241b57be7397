#include "app/ui/hang/limits_dialog.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLocale>
#include <QTimer>

#include <algorithm>
#include <array>

#include "app/jobs/sentences.h"
#include "app/jobs/wall_plan.h"
#include "app/ui/kit/finding_mark.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(LimitsDialog)
};

struct Family {
    const char* begins; // how the names of its rules begin
    const char* heading;
};

constexpr std::array kFamilies{
    Family{"type.", QT_TRANSLATE_NOOP("LimitsDialog", "Type")},
    Family{"contrast.", QT_TRANSLATE_NOOP("LimitsDialog", "Contrast")},
    Family{"line.", QT_TRANSLATE_NOOP("LimitsDialog", "Lines")},
    Family{"words.", QT_TRANSLATE_NOOP("LimitsDialog", "Words")},
    Family{"place.", QT_TRANSLATE_NOOP("LimitsDialog", "Places")},
    Family{"ink.", QT_TRANSLATE_NOOP("LimitsDialog", "Ink")},
    Family{"entry.", QT_TRANSLATE_NOOP("LimitsDialog", "The way in")},
    Family{"picture.", QT_TRANSLATE_NOOP("LimitsDialog", "Pictures")},
    Family{"caption.", QT_TRANSLATE_NOOP("LimitsDialog", "Captions")},
    Family{"quote.", QT_TRANSLATE_NOOP("LimitsDialog", "Children's words")},
    Family{"seam.", QT_TRANSLATE_NOOP("LimitsDialog", "Seams between sheets")},
};

QString inWords(const char* text)
{
    return QCoreApplication::translate("Says", text);
}

// As short as the number is: 25, 1.35.
class NumberField final : public QDoubleSpinBox {
public:
    [[nodiscard]] QString textFromValue(double value) const override
    {
        QLocale plain = locale();
        plain.setNumberOptions(QLocale::OmitGroupSeparator);
        return plain.toString(value, 'g', 7);
    }
};

} // namespace

LimitsDialog::LimitsDialog(
    const check::Limits& limits, Mm standsOut, const QString& at, QWidget* parent)
    : QDialog(parent)
{
    setWindowTitle(tr("Limits"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(air(5), air(5), air(5), air(5));
    outer->setSpacing(air(3));
    outer->addWidget(new Label(tr("Limits"), 1.25, QFont::DemiBold));
    outer->addWidget(
        new Label(tr("They hold for every book on this computer. For fire, heights and "
                     "privacy ask your school."),
            0.95,
            QFont::Normal,
            true));
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, air(3), 0);
    column->setSpacing(air(2));
    for (const Family& family : kFamilies) {
        addHeading(*column, Words::tr(family.heading));
        for (const check::LimitRow& row : check::allLimits()) {
            if (check::isMeasure(row)
                && QLatin1String(row.rule).startsWith(QLatin1String(family.begins)))
                addLimit(*column, row, limits.of(row.limit));
        }
    }
    addStandOut(*column, standsOut);
    QScrollArea* area = scrolled(content);
    outer->addWidget(area, 1);
    auto* foot = new QHBoxLayout;
    auto* stop = new Button(Button::Form::Word, tr("Not now"));
    auto* usual = new Button(Button::Form::Plain, tr("All as usual"));
    auto* done = new Button(Button::Form::Main, tr("Keep these limits"));
    foot->addWidget(stop);
    foot->addStretch();
    foot->addWidget(usual);
    foot->addWidget(done);
    outer->addLayout(foot);
    connect(stop, &Button::clicked, this, &QDialog::reject);
    connect(usual, &Button::clicked, this, &LimitsDialog::takeAllAsUsual);
    connect(done, &Button::clicked, this, &QDialog::accept);
    resize(scaled(640), scaled(600));
    QDoubleSpinBox* first = at.isEmpty() ? nullptr : field(at);
    if (first != nullptr) {
        first->setFocus();
        // Once everything has its place.
        QTimer::singleShot(0, area, [area, first] { area->ensureWidgetVisible(first, 0, 120); });
    }
}

void LimitsDialog::addHeading(QVBoxLayout& column, const QString& text)
{
    column.addSpacing(air(2));
    column.addWidget(new Label(text, 1.1, QFont::DemiBold));
}

void LimitsDialog::addLimit(QVBoxLayout& column, const check::LimitRow& row, double value)
{
    m_lines.push_back({&row,
        addField(column,
            inWords(check::nameOf(row.limit)),
            unitInWords(QString::fromLatin1(row.unit)),
            inWords(row.source),
            value,
            row.value)});
}

void LimitsDialog::addStandOut(QVBoxLayout& column, Mm standsOut)
{
    addHeading(column, tr("On the wall"));
    m_standsOut = addField(column,
        tr("How far panels stand out from the wall"),
        unitInWords(QStringLiteral("mm")),
        tr("10 mm is common practice, no source. Measured against 2010 ADA Standards 307.2"),
        standsOut.value(),
        kUsualStandOut.value());
    m_standsOut->setMaximum(500);
}

QDoubleSpinBox* LimitsDialog::addField(QVBoxLayout& column,
    const QString& name,
    const QString& unit,
    const QString& source,
    double value,
    double usual)
{
    auto* line = new QHBoxLayout;
    line->setSpacing(air(2));
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(new Label(name, 1.0, QFont::DemiBold));
    words->addWidget(new Label(capitalised(source), 0.85, QFont::Normal, true));
    line->addLayout(words, 1);
    auto* field = new NumberField;
    field->setRange(0, check::Limits::kGreatest);
    field->setDecimals(2);
    field->setValue(value);
    field->setFixedWidth(scaled(100));
    field->setAccessibleName(QStringLiteral("%1, %2").arg(name, unit));
    line->addWidget(field, 0, Qt::AlignTop);
    auto* unitLabel = new Label(unit, 0.92);
    unitLabel->setFixedSize(scaled(90), field->sizeHint().height());
    unitLabel->setAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    line->addWidget(unitLabel, 0, Qt::AlignTop);
    auto* back = new Button(Button::Form::Word, tr("As usual"));
    back->setAccessibleName(tr("%1 as usual").arg(name));
    back->setEnabled(value != usual);
    line->addWidget(back, 0, Qt::AlignTop);
    column.addLayout(line);
    connect(field, &QDoubleSpinBox::valueChanged, back, [back, usual](double now) {
        back->setEnabled(now != usual);
    });
    connect(back, &Button::clicked, field, [field, usual] { field->setValue(usual); });
    m_usual << back;
    return field;
}

check::Limits LimitsDialog::limits() const
{
    check::Limits limits;
    for (const Line& line : m_lines)
        (void)limits.set(line.row->limit, line.field->value()); // the field knows its range
    return limits;
}

QDoubleSpinBox* LimitsDialog::field(const QString& rule) const
{
    const auto at = std::find_if(m_lines.begin(), m_lines.end(), [&](const Line& line) {
        return rule == QLatin1String(line.row->rule);
    });
    return at != m_lines.end() ? at->field : nullptr;
}

void LimitsDialog::takeAllAsUsual()
{
    for (const Line& line : m_lines)
        line.field->setValue(line.row->value);
    m_standsOut->setValue(kUsualStandOut.value());
}

int LimitsDialog::changed() const
{
    return int(std::count_if(
        m_usual.begin(), m_usual.end(), [](const Button* button) { return button->isEnabled(); }));
}

} // namespace wainscot::ui
