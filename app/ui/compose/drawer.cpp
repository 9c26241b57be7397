#include "app/ui/compose/drawer.h"

#include <QCoreApplication>
#include <QMenu>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr std::size_t kMore = 60; // rows added at a time: three windows full

struct AudienceWords {
    Q_DECLARE_TR_FUNCTIONS(Audience)
};

} // namespace

QString inWords(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return AudienceWords::tr("the classroom");
    case Audience::Building:
        return AudienceWords::tr("the hallway");
    case Audience::Families:
        return AudienceWords::tr("families");
    case Audience::Public:
        return AudienceWords::tr("everyone");
    }
    return {};
}

Drawer::Drawer(Session& session, Desk& desk, PictureShelf& shelf, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_desk(desk)
    , m_shelf(shelf)
{
    setAccessibleName(tr("What you have"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(makeHead());
    m_list = new QWidget;
    m_listLayout = new QVBoxLayout(m_list);
    m_listLayout->setContentsMargins(air(4), air(1), air(3), air(3));
    m_listLayout->setSpacing(air(1.5));
    m_area = scrolled(m_list);
    column->addWidget(m_area, 1);
    m_listRover = new Rover(this);
    setFixedWidth(scaled(308));

    m_rebuildSoon.setSingleShot(true);
    m_rebuildSoon.setInterval(0);
    connect(&m_rebuildSoon, &QTimer::timeout, this, &Drawer::rebuild);
    const auto soon = [this] { m_rebuildSoon.start(); };
    connect(&m_session, &Session::changed, this, soon);
    connect(&m_session, &Session::moved, this, soon);
    connect(&m_session, &Session::opened, this, [this] {
        m_filter = {m_filter.kind, {}, false, false, {}, std::nullopt, {}, false, {}};
        m_rebuildSoon.start();
    });
    connect(m_area->verticalScrollBar(), &QScrollBar::valueChanged, this, [this](int at) {
        if (at > m_area->verticalScrollBar()->maximum() - m_area->height())
            addMore();
    });
    connect(&m_shelf, &PictureShelf::loaded, this, [this](const QString& sha) {
        for (ThingEntry* entry : m_bySha.values(sha)) {
            if (const Picture* picture =
                    m_session.book().pictures.find(PictureId(entry->item().id)))
                entry->setPicture(m_shelf.thumbnail(*picture));
        }
    });
    rebuild();
}

void Drawer::find()
{
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
}

void Drawer::show(DrawerItem::Kind kind, bool work)
{
    DrawerFilter filter = m_filter;
    filter.kind = kind == DrawerItem::Kind::Quote ? DrawerKind::Words
        : kind != DrawerItem::Kind::Picture       ? DrawerKind::Notes
        : work                                    ? DrawerKind::Work
                                                  : DrawerKind::Photos;
    setFilter(filter);
}

void Drawer::setFilter(const DrawerFilter& filter)
{
    m_filter = filter;
    m_search->setText(filter.search);
    m_notOnWall->setChecked(filter.notOnWall);
    m_starred->setChecked(filter.starred);
    m_kinds.at(int(filter.kind))->setChecked(true);
    rebuild();
}

QWidget* Drawer::firstStop() const
{
    QWidget* stop = m_listRover->stop();
    return stop != nullptr ? stop : m_search;
}

DrawerEntry* Drawer::entryFor(DrawerItem item) const
{
    for (QWidget* widget : m_entries) {
        auto* entry = qobject_cast<DrawerEntry*>(widget);
        if (entry != nullptr && entry->item() == item)
            return entry;
    }
    return nullptr;
}

QString Drawer::notFor() const
{
    const Display* display = m_session.display();
    return display != nullptr ? tr("not for %1").arg(inWords(display->audience)) : QString();
}

void Drawer::markEntry(DrawerEntry* entry, int stars)
{
    entry->setUsed(m_used(entry->item()));
    const auto why = m_desk.refusal(entry->item());
    entry->setForbidden(why ? notFor() : QString(), why.value_or(QString()));
    entry->setStarred(stars > 0);
}

void Drawer::connectEntry(DrawerEntry* entry)
{
    connect(entry, &DrawerEntry::wanted, this, &Drawer::wanted);
    connect(entry, &DrawerEntry::starAsked, &m_desk, &Desk::star);
    connect(entry, &DrawerEntry::menuAsked, this, [this, entry](QPoint global) {
        showMenu(entry, global);
    });
}

void Drawer::showMenu(DrawerEntry* entry, QPoint global)
{
    const DrawerItem item = entry->item();
    QMenu menu(this);
    menu.addAction(tr("Onto the panel"), this, [this, item] { Q_EMIT wanted(item); })
        ->setEnabled(!entry->isForbidden());
    menu.addAction(tr("Go where it hangs"), this, [this, item] { Q_EMIT shownWanted(item); })
        ->setEnabled(!m_used(item).isEmpty());
    if (item.kind == DrawerItem::Kind::Picture
        && seriesOf(m_session.book(), PictureId(item.id)).size() > 1) {
        menu.addAction(
            tr("First of its series"), this, [this, item] { m_desk.putFirst(PictureId(item.id)); });
    }
    if (item.kind == DrawerItem::Kind::Quote || item.kind == DrawerItem::Kind::Picture)
        menu.addAction(entry->isStarred() ? tr("Take the star away") : tr("Star it"),
            this,
            [=, this] { m_desk.star(item); });
    menu.exec(global);
}

QWidget* Drawer::widgetFor(const DrawerRow& row)
{
    switch (row.what) {
    case DrawerRow::What::Section: {
        auto* section = new QWidget;
        auto* line = new QHBoxLayout(section);
        line->setContentsMargins(0, air(1), 0, 0);
        line->setSpacing(air(1));
        auto* name = new Label(row.text, 1.0, QFont::DemiBold);
        name->setWordWrap(false);
        line->addWidget(name);
        auto* second = new OneLine(0.88, QFont::Normal, true);
        second->setText(row.second);
        line->addWidget(second, 1);
        return section;
    }
    case DrawerRow::What::Sentence:
        return new Label(row.text, 0.95, QFont::Normal, true);
    case DrawerRow::What::Words:
        return new Slip(row.item, row.text, row.second);
    case DrawerRow::What::Text:
        return new ThingEntry(row.item, row.text, row.second, false);
    case DrawerRow::What::Series:
        return seriesButton(row);
    case DrawerRow::What::Picture:
        break;
    }
    auto* entry = new ThingEntry(row.item, row.text, row.second, true);
    if (const Picture* picture = m_session.book().pictures.find(PictureId(row.item.id))) {
        entry->setPicture(m_shelf.thumbnail(*picture));
        m_bySha.insert(picture->sha256, entry);
    }
    return entry;
}

QWidget* Drawer::seriesButton(const DrawerRow& row)
{
    auto* button = new Button(Button::Form::Word, row.text);
    button->setQuiet(true);
    button->setRelativeSize(0.92);
    button->setMayShrink(true);
    const PictureId first(row.item.id);
    connect(button, &Button::clicked, this, [this, first] {
        DrawerFilter filter = m_filter;
        if (filter.opened.erase(first) == 0)
            filter.opened.insert(first);
        setFilter(filter);
        // The keyboard stays on what was pressed, which is another button now.
        for (std::size_t i = 0; i < m_shown; ++i) {
            if (m_rows[i].what == DrawerRow::What::Series && m_rows[i].item.id == first.number())
                m_listLayout->itemAt(int(i))->widget()->setFocus();
        }
    });
    return button;
}

void Drawer::clearList()
{
    m_listRover->setMembers({});
    m_bySha.clear();
    m_entries.clear();
    m_shown = 0;
    while (QLayoutItem* item = m_listLayout->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater(); // it may be the sender
        }
        delete item;
    }
    m_listLayout->addStretch();
}

void Drawer::addMore()
{
    const std::size_t end = std::min(m_rows.size(), m_shown + kMore);
    if (m_shown == end)
        return;
    for (; m_shown < end; ++m_shown) {
        const DrawerRow& row = m_rows[m_shown];
        QWidget* widget = widgetFor(row);
        m_listLayout->insertWidget(m_listLayout->count() - 1, widget);
        widget->show(); // now, so that it can have the keyboard at once
        if (auto* entry = qobject_cast<DrawerEntry*>(widget)) {
            markEntry(entry, row.stars);
            connectEntry(entry);
            m_entries << entry;
        } else if (row.what == DrawerRow::What::Series) {
            m_entries << widget;
        }
    }
    m_listRover->setMembers(m_entries, int(m_entries.indexOf(m_listRover->stop())));
}

// Where only the marks have changed, the lines stay: what has the keyboard keeps it, and a long
// list its place.
void Drawer::rebuild()
{
    m_rebuildSoon.stop();
    refreshHead();
    const Experience* experience = m_session.experience();
    const Display* display = m_session.display();
    m_used = WhereUsed(m_session.book(), display != nullptr ? display->id : DisplayId());
    std::vector<DrawerRow> rows;
    if (experience != nullptr)
        rows = drawerRows(m_session.book(), *experience, m_filter, m_used);
    const bool same = std::equal(
        rows.begin(), rows.end(), m_rows.begin(), m_rows.end(), [](const auto& a, const auto& b) {
            return a.what == b.what && a.item == b.item && a.text == b.text
                && (a.what == DrawerRow::What::Section || a.second == b.second);
        });
    const auto* had = qobject_cast<DrawerEntry*>(m_listRover->stop());
    const bool focused = had != nullptr && had->hasFocus();
    const DrawerItem before = had != nullptr ? had->item() : DrawerItem{};
    const std::size_t shown = m_shown;
    m_rows = std::move(rows);
    if (same && shown > 0) {
        for (std::size_t i = 0; i < m_shown; ++i) {
            if (auto* entry = qobject_cast<DrawerEntry*>(m_listLayout->itemAt(int(i))->widget()))
                markEntry(entry, m_rows[i].stars);
        }
        return;
    }
    const int scrolledTo = m_area->verticalScrollBar()->value();
    clearList();
    do
        addMore();
    while (m_shown < std::min(shown, m_rows.size()));
    m_list->layout()->activate();
    m_area->verticalScrollBar()->setValue(scrolledTo);
    if (DrawerEntry* again = focused ? entryFor(before) : nullptr)
        again->setFocus();
}

void Drawer::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
