// The three columns under the wall: what was measured, the hanging list, what is in the hand.
#include "app/ui/hang/wall_page.h"

#include <QGridLayout>
#include <QLocale>

#include <algorithm>

#include "app/jobs/sentences.h"
#include "app/ui/kit/finding_mark.h"
#include "app/ui/kit/tokens.h"
#include "core/model/wall_photo.h"

namespace wainscot::ui {

namespace {

void empty(QWidget* part)
{
    qDeleteAll(part->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
    while (QLayoutItem* item = part->layout()->takeAt(0))
        delete item;
}

QVBoxLayout* columnOf(QWidget* part)
{
    return static_cast<QVBoxLayout*>(part->layout());
}

Label* cell(const QString& text, bool quiet = false)
{
    auto* label = new Label(text, quiet ? 0.85 : 1.0, QFont::Normal, quiet);
    label->setWordWrap(false);
    return label;
}

// "7.7 %", "144.1 cm"
QString withUnit(double value, const QString& unit)
{
    if (unit == QLatin1String("mm"))
        return WallPage::tr("%1 cm").arg(QLocale().toString(value / 10, 'f', 1));
    return QStringLiteral("%1 %2").arg(QLocale().toString(value, 'f', 1), unitInWords(unit));
}

} // namespace

void WallPage::fillMeasured()
{
    empty(m_measured);
    QVBoxLayout* column = columnOf(m_measured);
    column->addWidget(new Label(tr("What was measured"), 1.08, QFont::DemiBold));
    for (const Finding& finding : m_view->plan().findings) {
        auto* row = new QHBoxLayout;
        row->setSpacing(air(1.5));
        row->addWidget(markOf(finding.severity), 0, Qt::AlignTop);
        auto* words = new QVBoxLayout;
        words->setSpacing(0);
        words->addWidget(new Label(saysInLine(finding)));
        QString second;
        if (finding.limit)
            second = tr("Limit %1. ").arg(withUnit(*finding.limit, finding.unit));
        words->addWidget(new Label(second + sourceInWords(finding), 0.85, QFont::Normal, true));
        row->addLayout(words, 1);
        column->addLayout(row);
    }
    auto* limit = new Button(Button::Form::Word, tr("Choose another limit"));
    limit->setQuiet(true);
    limit->setOpensList(true);
    connect(limit, &Button::clicked, this, &WallPage::chooseLimit);
    column->addWidget(limit, 0, Qt::AlignLeft);
    column->addStretch();
}

void WallPage::fillList()
{
    empty(m_list);
    QVBoxLayout* column = columnOf(m_list);
    column->addWidget(new Label(tr("Hanging list"), 1.08, QFont::DemiBold));
    const WallPlan& plan = m_view->plan();
    if (plan.list.empty()) {
        column->addWidget(new Label(m_session.panel() != nullptr
                ? tr("Nothing hangs here yet. Propose places, then drag what you like.")
                : tr("Make a panel in Compose first."),
            1.0,
            QFont::Normal,
            true));
        addPhotoButton(column);
        column->addStretch();
        return;
    }
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(air(4));
    grid->setVerticalSpacing(air(0.5));
    const auto put = [grid](int row, int at, const QString& text, bool quiet) {
        grid->addWidget(cell(text, quiet), row, at, at == 0 ? Qt::AlignLeft : Qt::AlignRight);
    };
    put(0, 1, tr("from left"), true);
    put(0, 2, tr("bottom"), true);
    put(0, 3, tr("top"), true);
    int row = 0;
    for (const HangingLine& line : plan.list) {
        put(++row, 0, line.name, false);
        put(row, 1, millimetres(line.left()), false);
        put(row, 2, millimetres(line.bottom), false);
        put(row, 3, millimetres(line.top), false);
    }
    grid->setColumnStretch(0, 1);
    column->addLayout(grid);
    column->addWidget(new Label(
        tr("Millimetres; inches and nails on the printed list."), 0.85, QFont::Normal, true));
    auto* print = new Button(Button::Form::Plain, tr("Print the list"), Icon::Sheet);
    connect(print, &Button::clicked, this, &WallPage::askPrint);
    column->addWidget(print, 0, Qt::AlignLeft);
    addPhotoButton(column);
    column->addStretch();
}

// Once it hangs: how many there are, and one more.
void WallPage::addPhotoButton(QVBoxLayout* column)
{
    const Display* display = m_session.display();
    if (display == nullptr || m_session.panel() == nullptr)
        return;
    const int photos = static_cast<int>(wallPhotosOf(m_session.book(), display->id).size());
    auto* add = new Button(Button::Form::Word, tr("Add a photo of the wall"), Icon::Photo);
    add->setQuiet(true);
    add->setToolTip(tr("It goes into the term's file, after the panels"));
    connect(add, &Button::clicked, this, [this] { Q_EMIT photosGiven({}); });
    column->addWidget(add, 0, Qt::AlignLeft);
    if (photos > 0)
        column->addWidget(new Label(
            tr("%1: %2 of it").arg(display->name, counted(photos, tr("1 photo"), tr("%1 photos"))),
            0.85,
            QFont::Normal,
            true));
}

void WallPage::addField(
    QWidget* into, const QString& name, Mm value, const std::function<void(Wall&, Mm)>& set)
{
    auto* grid = static_cast<QGridLayout*>(into->layout());
    const int at = grid->count() / 2;
    auto* edit = new QLineEdit(millimetres(value));
    edit->setAccessibleName(tr("%1 in millimetres").arg(name));
    edit->setMaximumWidth(scaled(84));
    edit->setAlignment(Qt::AlignRight);
    connect(edit, &QLineEdit::editingFinished, this, [this, edit, name, value, set] {
        if (!edit->isModified()) // only gone through: half a millimetre that is not shown stays
            return;
        bool isNumber = false;
        const double typed = QLocale().toDouble(edit->text(), &isNumber);
        if (!isNumber || wall() == nullptr) {
            edit->setText(millimetres(value));
            return;
        }
        Wall changed = *wall();
        set(changed, Mm(typed));
        if (!(changed == *wall()))
            keep(changed, tr("Measured: %1").arg(name));
    });
    grid->addWidget(new Label(name, 1.0, QFont::Normal, true), at / 2, (at % 2) * 2);
    grid->addWidget(edit, at / 2, (at % 2) * 2 + 1);
}

// Of what is in the hand, else of the wall itself.
void WallPage::fillHand()
{
    // A field that is being typed in stays: its own change comes round here.
    if (m_handColumn->isAncestorOf(focusWidget()) && m_view->inHand() == m_filledHand)
        return;
    m_filledHand = m_view->inHand();
    empty(m_handColumn);
    if (wall() == nullptr)
        return;
    QVBoxLayout* column = columnOf(m_handColumn);
    const int hand = m_view->inHand();
    column->addWidget(new Label(
        hand < 0 ? wall()->name : capitalised(m_view->nameOf(hand)), 1.08, QFont::DemiBold));
    auto* fields = new QWidget;
    auto* grid = new QGridLayout(fields);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(air(2));
    grid->setVerticalSpacing(air(1));
    column->addWidget(fields);
    if (hand < 0) {
        const auto side = [](Mm length) {
            return std::clamp(length, kLeastWallSide, kGreatestWallSide);
        };
        addField(fields, tr("Width"), wall()->size.width, [side](Wall& wall, Mm length) {
            wall.size.width = side(length);
        });
        addField(fields, tr("Height"), wall()->size.height, [side](Wall& wall, Mm length) {
            // What stands on the floor stays on it.
            const Mm higher = side(length) - wall.size.height;
            wall.size.height = side(length);
            for (Fitting& fitting : wall.fittings)
                fitting.place.y += higher;
            for (PanelOnWall& hung : wall.panels)
                hung.corner.y += higher;
        });
        column->addWidget(new Label(
            tr("Millimetres. Take a door or a panel to measure it."), 0.85, QFont::Normal, true));
    } else {
        addHandFields(fields, hand);
        auto* off = new Button(Button::Form::Plain, tr("Take off"), Icon::TakeOff);
        off->setAccessibleName(tr("Take off: %1").arg(m_view->nameOf(hand)));
        connect(off, &Button::clicked, this, &WallPage::takeOff);
        column->addWidget(off, 0, Qt::AlignLeft);
    }
    column->addStretch();
}

void WallPage::addHandFields(QWidget* fields, int hand)
{
    const int panels = static_cast<int>(wall()->panels.size());
    const RectMm place = m_view->placeOf(hand);
    if (hand < panels) {
        const auto index = static_cast<std::size_t>(hand);
        const Mm height = place.height;
        addField(fields, tr("From left"), place.x, [index](Wall& wall, Mm length) {
            wall.panels[index].corner.x = length;
        });
        addField(fields,
            tr("Bottom"),
            wall()->size.height - place.bottom(),
            [index, height](Wall& wall, Mm length) {
                wall.panels[index].corner.y = wall.size.height - length - height;
            });
        return;
    }
    const auto index = static_cast<std::size_t>(hand - panels);
    addField(fields, tr("From left"), place.x, [index](Wall& wall, Mm length) {
        wall.fittings[index].place.x = length;
    });
    addField(
        fields, tr("Up"), wall()->size.height - place.bottom(), [index](Wall& wall, Mm length) {
            RectMm& own = wall.fittings[index].place;
            own.y = wall.size.height - length - own.height;
        });
    addField(fields, tr("Width"), place.width, [index](Wall& wall, Mm length) {
        wall.fittings[index].place.width = std::max(Mm(10), length);
    });
    addField(fields, tr("Height"), place.height, [index](Wall& wall, Mm length) {
        RectMm& own = wall.fittings[index].place;
        const Mm bottom = own.bottom();
        own.height = std::max(Mm(10), length);
        own.y = bottom - own.height;
    });
}

} // namespace wainscot::ui
