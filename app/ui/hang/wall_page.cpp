#include "app/ui/hang/wall_page.h"

#include <QCoreApplication>
#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QMenu>
#include <QMimeData>
#include <QUrl>

#include <algorithm>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

Button* listButton(const QString& text)
{
    auto* button = new Button(Button::Form::Word, text);
    button->setOpensList(true);
    return button;
}

void say(Button* button, const QString& text)
{
    button->setText(text);
    button->setAccessibleName(text);
    button->updateGeometry();
}

QString inWords(Viewers viewers)
{
    switch (viewers) {
    case Viewers::Children:
        return WallPage::tr("For children");
    case Viewers::GrownUps:
        return WallPage::tr("For grown-ups");
    case Viewers::Both:
        return WallPage::tr("For children and grown-ups");
    }
    return {};
}

} // namespace

WallPage::WallPage(Session& session, PictureShelf& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_stack(new QStackedWidget)
    , m_view(new WallView(session, pictures))
{
    setAcceptDrops(true);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(m_stack);
    auto* empty = new Ground(Ground::Tone::Field);
    auto* middle = new QVBoxLayout(empty);
    middle->setContentsMargins(air(9), air(7), air(9), air(7));
    middle->setSpacing(air(4));
    middle->addWidget(
        new Label(tr("Measure one wall: width, height, door."), 1.5, QFont::DemiBold));
    middle->addWidget(new Label(tr("It takes two minutes and lasts the year."), 1.05));
    m_measure = new Button(Button::Form::Plain, tr("Measure a wall"), Icon::Plus);
    connect(m_measure, &Button::clicked, this, &WallPage::measureWall);
    middle->addWidget(m_measure, 0, Qt::AlignLeft);
    middle->addStretch();
    m_stack->addWidget(empty);
    auto* plan = new QWidget;
    auto* column = new QVBoxLayout(plan);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_view, 1);
    makeBelow(column);
    m_stack->addWidget(plan);
    makeEnd();
    connect(m_view, &WallView::handChanged, this, [this] {
        fillHand();
        Q_EMIT changed();
    });
    connect(m_view, &WallView::moved, this, [this](const Wall& wall, int gesture) {
        keep(wall, tr("Moved %1").arg(m_view->nameOf(m_view->inHand())), gesture);
    });
}

void WallPage::makeEnd()
{
    m_end = new QWidget;
    auto* row = new QHBoxLayout(m_end);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    m_name = listButton(tr("Wall"));
    m_viewers = listButton(inWords(Viewers::Both));
    auto* fitting = listButton(tr("Add a door, a window"));
    m_propose = new Button(Button::Form::Plain, tr("Propose places"), Icon::Arrange);
    m_propose->setToolTip(tr("On one line at the eyes, clear of doors and signs"));
    connect(m_name, &Button::clicked, this, &WallPage::chooseWall);
    connect(m_viewers, &Button::clicked, this, &WallPage::chooseViewers);
    connect(fitting, &Button::clicked, this, &WallPage::chooseFitting);
    connect(m_propose, &Button::clicked, this, &WallPage::proposePlaces);
    for (Button* button : {m_name, fitting, m_viewers, m_propose})
        row->addWidget(button);
}

void WallPage::makeBelow(QVBoxLayout* column)
{
    m_below = new Ground(Ground::Tone::Window);
    auto* row = new QHBoxLayout(m_below);
    row->setContentsMargins(air(5), air(3), air(5), air(3));
    row->setSpacing(air(4));
    const auto part = [&](QWidget*& widget, int share) {
        if (row->count() > 0)
            row->addWidget(new Rule(Qt::Vertical));
        widget = new QWidget;
        auto* inner = new QVBoxLayout(widget);
        inner->setContentsMargins(0, 0, 0, 0);
        inner->setSpacing(air(1));
        row->addWidget(scrolled(widget), share);
    };
    part(m_measured, 4);
    part(m_list, 4);
    part(m_handColumn, 3);
    column->addWidget(new Rule);
    column->addWidget(m_below);
}

// The wall keeps the most room, also with large text; the columns scroll.
void WallPage::resizeEvent(QResizeEvent* event)
{
    constexpr double kBelowAtMost = 0.42; // of the page
    QWidget::resizeEvent(event);
    m_below->setFixedHeight(qMin(scaled(192), qRound(kBelowAtMost * height())));
}

const Wall* WallPage::wall() const
{
    const auto& walls = m_session.book().walls;
    if (const Wall* shown = walls.find(m_shown))
        return shown;
    return walls.isEmpty() ? nullptr : &walls.rows().begin()->second;
}

QWidget* WallPage::firstStop()
{
    return wall() != nullptr ? static_cast<QWidget*>(m_view) : m_measure;
}

void WallPage::refresh()
{
    const Wall* shown = wall();
    m_stack->setCurrentIndex(shown != nullptr ? 1 : 0);
    m_end->setVisible(shown != nullptr);
    if (shown == nullptr)
        return;
    m_shown = shown->id;
    m_view->setWall(*shown);
    say(m_name, shown->name);
    say(m_viewers, inWords(shown->viewers));
    m_propose->setEnabled(m_session.panel() != nullptr);
    fillMeasured();
    fillList();
    fillHand();
}

void WallPage::keep(const Wall& wall, const QString& label, int gesture)
{
    EditBuilder edit(m_session.book(), label, gesture);
    edit.put(wall);
    m_session.perform(edit.take());
}

void WallPage::measureWall()
{
    EditBuilder edit(m_session.book(), tr("Measured a wall"));
    Wall wall;
    wall.id = edit.newId<Wall>();
    wall.name = tr("Wall %1").arg(m_session.book().walls.size() + 1);
    m_shown = wall.id;
    edit.put(wall);
    if (m_session.perform(edit.take()))
        Q_EMIT announced(tr("Write its width and height, then add doors and windows."));
}

void WallPage::proposePlaces()
{
    const Display* display = m_session.display();
    if (wall() == nullptr || display == nullptr)
        return;
    const Wall placed = withProposedPlaces(m_session.book(), *wall(), display->id);
    const auto wanted = panelsOf(m_session.book(), display->id).size();
    const auto placedNow =
        std::count_if(placed.panels.begin(), placed.panels.end(), [&](const PanelOnWall& hung) {
            const Panel* panel = m_session.book().panels.find(hung.panel);
            return panel != nullptr && panel->display == display->id;
        });
    keep(placed, tr("Proposed places"));
    if (std::size_t(placedNow) < wanted)
        Q_EMIT announced(tr("%1 of %2 panels have room on this wall.").arg(placedNow).arg(wanted));
    else
        Q_EMIT announced(
            tr("Placed at the eyes, with equal gaps. Drag what should hang elsewhere."));
}

void WallPage::add(FittingKind kind)
{
    if (wall() == nullptr)
        return;
    Wall changed = *wall();
    changed.fittings.push_back({kind, usualPlace(kind, changed.size)});
    keep(changed, tr("Added: %1").arg(inWords(kind)));
    m_view->take(m_view->things() - 1);
    m_view->setFocus();
}

void WallPage::takeOff()
{
    const int hand = m_view->inHand();
    if (wall() == nullptr || hand < 0)
        return;
    Wall changed = *wall();
    const QString name = m_view->nameOf(hand);
    const int panels = static_cast<int>(changed.panels.size());
    if (hand < panels)
        changed.panels.erase(changed.panels.begin() + hand);
    else
        changed.fittings.erase(changed.fittings.begin() + (hand - panels));
    m_view->take(-1);
    keep(changed, tr("Took off: %1").arg(name));
}

void WallPage::setViewers(Viewers viewers)
{
    if (wall() == nullptr)
        return;
    Wall changed = *wall();
    changed.viewers = viewers;
    keep(changed, inWords(viewers));
}

void WallPage::setCoverLimit(const QString& name)
{
    if (wall() == nullptr)
        return;
    Wall changed = *wall();
    changed.coverLimit = name;
    keep(changed, tr("Another limit"));
}

void WallPage::setAges(int youngest, int oldest)
{
    if (wall() == nullptr)
        return;
    Wall changed = *wall();
    changed.youngest = youngest;
    changed.oldest = oldest;
    keep(changed, tr("Children of %1 to %2").arg(youngest).arg(oldest));
}

void WallPage::showWall(WallId id)
{
    m_shown = id;
    m_view->take(-1);
    refresh();
    Q_EMIT changed();
}

void WallPage::dragEnterEvent(QDragEnterEvent* event)
{
    if (event->mimeData()->hasUrls() && m_session.panel() != nullptr)
        event->acceptProposedAction();
}

void WallPage::dropEvent(QDropEvent* event)
{
    QStringList files;
    const QList<QUrl> urls = event->mimeData()->urls();
    for (const QUrl& url : urls) {
        if (url.isLocalFile())
            files << url.toLocalFile();
    }
    if (files.isEmpty())
        return;
    event->acceptProposedAction();
    Q_EMIT photosGiven(files);
}

void WallPage::chooseWall()
{
    QMenu menu(this);
    for (const auto& [id, one] : m_session.book().walls.rows()) {
        QAction* action = menu.addAction(one.name);
        action->setCheckable(true);
        action->setChecked(id == m_shown);
        connect(action, &QAction::triggered, this, [this, id = id] { showWall(id); });
    }
    menu.addSeparator();
    connect(menu.addAction(tr("Another name...")), &QAction::triggered, this, [this] {
        bool done = false;
        const QString name = QInputDialog::getText(
            this, tr("The wall's name"), tr("Name:"), QLineEdit::Normal, wall()->name, &done);
        if (done && !name.trimmed().isEmpty()) {
            Wall changed = *wall();
            changed.name = name.trimmed();
            keep(changed, tr("Named a wall"));
        }
    });
    connect(menu.addAction(tr("Measure another wall")),
        &QAction::triggered,
        this,
        &WallPage::measureWall);
    menu.exec(m_name->mapToGlobal(QPoint(0, m_name->height())));
}

void WallPage::chooseViewers()
{
    QMenu menu(this);
    for (const Viewers viewers : {Viewers::Children, Viewers::GrownUps, Viewers::Both}) {
        QAction* one = menu.addAction(inWords(viewers));
        one->setCheckable(true);
        one->setChecked(wall()->viewers == viewers);
        connect(one, &QAction::triggered, this, [this, viewers] { setViewers(viewers); });
    }
    menu.addSeparator();
    for (const auto& [from, to] :
        {std::pair(3, 4), std::pair(4, 6), std::pair(6, 8), std::pair(9, 12)}) {
        QAction* one = menu.addAction(tr("Children of %1 to %2 years").arg(from).arg(to));
        one->setCheckable(true);
        one->setChecked(wall()->youngest == from && wall()->oldest == to);
        connect(
            one, &QAction::triggered, this, [this, from = from, to = to] { setAges(from, to); });
    }
    menu.exec(m_viewers->mapToGlobal(QPoint(0, m_viewers->height())));
}

void WallPage::chooseLimit()
{
    QMenu menu(this);
    for (const wall::CoverLimit& limit : wall::coverLimits()) {
        QAction* one = menu.addAction(tr("%1 %: %2")
                                          .arg(limit.share * 100, 0, 'f', 0)
                                          .arg(QCoreApplication::translate("Says", limit.source)));
        const QString name = QString::fromLatin1(limit.name);
        one->setCheckable(true);
        one->setChecked(wall()->coverLimit == name);
        connect(one, &QAction::triggered, this, [this, name] { setCoverLimit(name); });
    }
    menu.exec(QCursor::pos());
}

void WallPage::chooseFitting()
{
    QMenu menu(this);
    for (const FittingKind kind : kFittingKinds)
        connect(menu.addAction(tr("Add: %1").arg(inWords(kind))),
            &QAction::triggered,
            this,
            [this, kind] { add(kind); });
    menu.exec(m_name->mapToGlobal(QPoint(m_name->width(), m_name->height())));
}

} // namespace wainscot::ui
