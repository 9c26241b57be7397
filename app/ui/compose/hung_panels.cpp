#include "app/ui/compose/hung_panels.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QScrollArea>

#include <algorithm>

#include "app/ui/compose/panel_picture.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/panel_edits.h"

namespace wainscot::ui {

namespace {

constexpr int kPaintEveryMs = 15;

class PlumLine : public QWidget {
public:
    using QWidget::QWidget;

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter(this).fillRect(rect(), tokens().hand);
    }
};

} // namespace

HungPanels::HungPanels(Session& session, Desk& desk, PictureProvider& pictures, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_desk(desk)
    , m_pictures(pictures)
    , m_rover(new Rover(this))
    , m_row(new QWidget)
    , m_mark(new PlumLine(m_row))
    , m_name(new QLineEdit(m_row))
{
    setAccessibleName(tr("Panels of this display"));
    m_area = scrolled(m_row);
    m_area->setWidgetResizable(false);
    m_area->setParent(this);
    m_area->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_mark->hide();
    m_name->hide();
    m_name->setAccessibleName(tr("Name of the panel"));
    m_name->installEventFilter(this);
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        if (!m_name->isVisible())
            return;
        m_name->hide();
        m_desk.renamePanel(m_naming, m_name->text());
    });
    m_paintSoon.setSingleShot(true);
    m_paintSoon.setInterval(kPaintEveryMs);
    connect(&m_paintSoon, &QTimer::timeout, this, &HungPanels::paintNext);
}

HungPanel* HungPanels::find(PanelId panel) const
{
    for (HungPanel* hung : m_panels) {
        if (hung->panel() == panel)
            return hung;
    }
    return nullptr;
}

void HungPanels::addPanel(PanelId panel)
{
    auto* hung = new HungPanel(panel, m_row);
    hung->installEventFilter(this);
    connect(hung, &HungPanel::clicked, this, [this, panel] {
        if (panel.isValid())
            Q_EMIT chosen(panel);
        else
            m_desk.addPanelAfter();
    });
    connect(hung, &HungPanel::carriedTo, this, [this, hung](QPoint global, bool letGo) {
        carry(hung, global, letGo);
    });
    connect(hung, &HungPanel::dropped, this, [this, panel](DrawerItem item) {
        m_desk.addTo(panel, item);
    });
    connect(hung, &HungPanel::menuAsked, this, [this, panel](QPoint global) {
        showMenu(panel, global);
    });
    hung->show();
    m_panels.push_back(hung);
}

// Panels that are there keep their widgets, so that focus and pictures stay.
void HungPanels::refresh()
{
    const DrawnDisplay* drawn = m_desk.drawn();
    std::vector<PanelId> wanted;
    if (drawn != nullptr && m_session.panel() != nullptr) {
        for (const DrawnPanel& panel : drawn->panels)
            wanted.push_back(panel.cleared.id());
        wanted.push_back({});
    }
    std::vector<PanelId> there;
    for (const HungPanel* hung : m_panels)
        there.push_back(hung->panel());
    if (there != wanted) {
        const PanelId focused = m_rover->stop() != nullptr && m_rover->stop()->hasFocus()
            ? static_cast<HungPanel*>(m_rover->stop())->panel()
            : PanelId();
        m_rover->setMembers({});
        std::vector<HungPanel*> old;
        old.swap(m_panels);
        for (const PanelId panel : wanted) {
            const auto known = std::find_if(old.begin(), old.end(), [panel](HungPanel* hung) {
                return hung != nullptr && hung->panel() == panel;
            });
            if (known != old.end())
                m_panels.push_back(std::exchange(*known, nullptr));
            else
                addPanel(panel);
        }
        for (HungPanel* hung : old) {
            if (hung == nullptr)
                continue;
            hung->hide();
            hung->deleteLater(); // it may be the sender
        }
        QVector<QWidget*> members;
        for (HungPanel* hung : m_panels)
            members << hung;
        m_rover->setMembers(members);
        if (HungPanel* again = focused.isValid() ? find(focused) : nullptr)
            again->setFocus();
    }
    if (wanted.empty())
        return;
    const double shape = drawn->display.panelSize.height / drawn->display.panelSize.width;
    for (const DrawnPanel& panel : drawn->panels) {
        HungPanel* hung = find(panel.cleared.id());
        const Panel* own = m_session.book().panels.find(panel.cleared.id());
        const bool locked = own != nullptr && own->locked;
        hung->say(tr("Panel %1 of %2").arg(panel.cleared.number()).arg(drawn->panels.size()),
            locked ? tr("locked: %1").arg(panel.cleared.title()) : panel.cleared.title(),
            shape);
        hung->setCurrent(panel.cleared.id() == m_session.panel()->id);
    }
    m_panels.back()->say(tr("New panel"), tr("after these"), shape);
    place();
    paintSoon();
}

void HungPanels::paintSoon()
{
    m_toPaint.clear();
    for (const HungPanel* hung : m_panels) {
        if (hung->panel().isValid())
            m_toPaint.push_back(hung->panel());
    }
    // The panel on the stage is the one that changed.
    std::stable_partition(m_toPaint.begin(), m_toPaint.end(), [this](PanelId id) {
        return m_session.panel() != nullptr && id == m_session.panel()->id;
    });
    m_paintSoon.start();
}

void HungPanels::paintNext()
{
    const DrawnDisplay* drawn = m_desk.drawn();
    if (m_toPaint.empty() || drawn == nullptr)
        return;
    const PanelId next = m_toPaint.front();
    m_toPaint.erase(m_toPaint.begin());
    HungPanel* hung = find(next);
    for (const DrawnPanel& panel : drawn->panels) {
        if (panel.cleared.id() != next || hung == nullptr)
            continue;
        hung->setPicture(panelPicture(panel.list, hung->width(), devicePixelRatioF(), m_pictures));
    }
    if (!m_toPaint.empty())
        m_paintSoon.start();
}

void HungPanels::paintAllNow()
{
    while (!m_toPaint.empty())
        paintNext();
}

PanelId HungPanels::panelAt(QPoint global) const
{
    if (!isVisible() || !rect().contains(mapFromGlobal(global)))
        return {};
    for (const HungPanel* hung : m_panels) {
        if (hung->rect().contains(hung->mapFromGlobal(global)) && m_session.panel() != nullptr
            && hung->panel() != m_session.panel()->id)
            return hung->panel();
    }
    return {};
}

void HungPanels::showGoal(PanelId panel)
{
    for (HungPanel* hung : m_panels)
        hung->setGoal(panel.isValid() && hung->panel() == panel);
}

int HungPanels::numberAt(QPoint global) const
{
    int number = 1;
    for (const HungPanel* hung : m_panels) {
        const int y = hung->mapFromGlobal(global).y();
        if (hung->panel().isValid() && y > hung->height() / 2)
            ++number;
    }
    return number;
}

void HungPanels::carry(HungPanel* panel, QPoint global, bool letGo)
{
    const int to = numberAt(global); // before the panel of this number
    m_mark->setVisible(!letGo);
    if (!letGo) {
        const HungPanel* before = m_panels.at(std::size_t(to - 1));
        m_mark->setGeometry(0, before->y() - air(2), width(), 2);
        m_mark->raise();
        return;
    }
    const Panel* own = m_session.book().panels.find(panel->panel());
    if (own != nullptr)
        m_desk.movePanel(own->id, to > own->number ? to - 1 : to);
}

void HungPanels::showMenu(PanelId panel, QPoint global)
{
    const Panel* own = m_session.book().panels.find(panel);
    if (own == nullptr)
        return;
    const int number = own->number;
    QMenu menu(this);
    menu.addAction(tr("Name it"), this, [this, panel] { askName(panel); })->setShortcut(Qt::Key_F2);
    menu.addAction(tr("Once more"), this, [this, panel] { m_desk.duplicatePanel(panel); });
    menu.addAction(tr("One place up"),
            this,
            [this, panel, number] { m_desk.movePanel(panel, number - 1); })
        ->setEnabled(number > 1);
    menu.addAction(tr("One place down"),
            this,
            [this, panel, number] { m_desk.movePanel(panel, number + 1); })
        ->setEnabled(number + 1 < int(m_panels.size()));
    menu.addAction(tr("Take down"), this, [this, panel] { m_desk.removePanel(panel); });
    menu.exec(global);
}

void HungPanels::askName(PanelId panel)
{
    const HungPanel* hung = find(panel);
    if (hung == nullptr)
        return;
    m_naming = panel;
    const Piece* title = titleOf(m_session.book(), panel);
    m_name->setText(title != nullptr ? title->text : QString());
    m_name->setGeometry(hung->nameRect().translated(hung->pos()).adjusted(0, -3, 0, 3));
    m_name->show();
    m_name->raise();
    m_name->setFocus();
    m_name->selectAll();
}

bool HungPanels::keyOn(HungPanel* panel, QKeyEvent* event)
{
    const Panel* own = m_session.book().panels.find(panel->panel());
    if (own == nullptr)
        return false;
    const PanelId id = own->id;
    const int number = own->number;
    const bool alt = event->modifiers() == Qt::AltModifier;
    const bool control = event->modifiers() == Qt::ControlModifier;
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
        if (!alt)
            return false;
        m_desk.movePanel(id, number + (event->key() == Qt::Key_Up ? -1 : 1));
        return true;
    case Qt::Key_F2:
        askName(id);
        return true;
    case Qt::Key_D:
        if (!control)
            return false;
        m_desk.duplicatePanel(id);
        return true;
    case Qt::Key_Delete:
        m_desk.removePanel(id);
        return true;
    default:
        return false;
    }
}

bool HungPanels::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_name) {
        if (event->type() == QEvent::KeyPress
            && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
            m_name->hide();
            if (HungPanel* hung = find(m_naming))
                hung->setFocus();
            return true;
        }
        return QWidget::eventFilter(watched, event);
    }
    auto* hung = qobject_cast<HungPanel*>(watched);
    if (hung == nullptr)
        return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusIn)
        m_area->ensureWidgetVisible(hung, 0, air(2));
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Delete
            || (key->key() == Qt::Key_D && key->modifiers() == Qt::ControlModifier)) {
            event->accept();
            return true;
        }
    }
    if (event->type() == QEvent::KeyPress && keyOn(hung, static_cast<QKeyEvent*>(event)))
        return true;
    return QWidget::eventFilter(watched, event);
}

void HungPanels::place()
{
    m_area->setGeometry(rect());
    const auto totalFor = [this](int wide) {
        int total = 0;
        for (const HungPanel* panel : m_panels)
            total += panel->heightFor(wide) + air(4);
        return total;
    };
    // All at once where that leaves them large enough to tell apart; else they scroll.
    int wide = width();
    while (wide > scaled(64) && totalFor(wide) + air(4) > height())
        --wide;
    const int total = totalFor(wide);
    m_row->resize(width(), qMax(height(), total + air(4)));
    int top = qMax(air(2), (height() - total) / 2);
    for (HungPanel* panel : m_panels) {
        const int high = panel->heightFor(wide);
        panel->setGeometry((width() - wide) / 2, top, wide, high);
        top += high + air(4);
    }
}

void HungPanels::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    place();
}

} // namespace wainscot::ui
