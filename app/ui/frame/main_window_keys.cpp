// The list of all keys, made from the menus themselves, so that it can never tell another key.
#include "app/ui/frame/main_window.h"

#include <QDialog>
#include <QGridLayout>
#include <QVBoxLayout>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

class KeyTable {
public:
    explicit KeyTable(QWidget* content)
        : m_grid(new QGridLayout(content))
    {
        m_grid->setContentsMargins(air(5), air(4), air(5), air(4));
        m_grid->setHorizontalSpacing(air(7));
        m_grid->setVerticalSpacing(air(1));
    }
    void addHeading(const QString& heading)
    {
        if (m_row > 0)
            m_grid->setRowMinimumHeight(m_row++, air(2));
        m_grid->addWidget(new Label(heading, 1.08, QFont::DemiBold), m_row++, 0, 1, 2);
    }
    void add(const QString& name, const QString& key)
    {
        m_grid->addWidget(new Label(name), m_row, 0);
        auto* keys = new Label(key, 1.0, QFont::DemiBold);
        keys->setWordWrap(false);
        m_grid->addWidget(keys, m_row++, 1);
    }
    void addMenu(const QMenu& menu)
    {
        for (const QAction* action : menu.actions()) {
            if (action->menu() != nullptr)
                addMenu(*action->menu());
            else if (!action->shortcut().isEmpty())
                add(action->text().section(QLatin1Char(':'), 0, 0),
                    action->shortcut().toString(QKeySequence::NativeText));
        }
    }

private:
    QGridLayout* m_grid;
    int m_row = 0;
};

} // namespace

void MainWindow::showKeys()
{
    QDialog dialog(this);
    dialog.setWindowTitle(tr("All keys"));
    auto* content = new QWidget;
    KeyTable table(content);
    table.addHeading(tr("On the panel"));
    table.add(tr("Between pieces; with Shift several"), tr("Arrows, Home, End"));
    table.add(tr("Lift; arrows move, Alt finer, Shift resizes"), tr("Space"));
    table.add(tr("A step of the grid, without lifting"), tr("Ctrl+Arrows"));
    table.add(tr("Half a millimetre"), tr("Alt+Arrows"));
    table.add(tr("Resize by a step"), tr("Ctrl+Shift+Arrows"));
    table.add(tr("Set down; write on a piece; take a slip onto the panel"), tr("Enter"));
    table.add(tr("Put back; let go"), tr("Esc"));
    table.addHeading(tr("While the mouse carries a piece"));
    table.add(tr("Trade places with the piece under it"), tr("Shift"));
    table.add(tr("Off the grid, by half millimetres"), tr("Ctrl"));
    table.addHeading(tr("In what you have"));
    table.add(tr("Onto the panel at the best place"), tr("Enter"));
    table.add(tr("Star, or take the star away"), QStringLiteral("*"));
    table.addHeading(tr("On a hung panel"));
    table.add(tr("One place up or down"), tr("Alt+Up, Alt+Down"));
    table.add(tr("Name it; once more; take down"), tr("F2; Ctrl+D; Del"));
    table.addHeading(tr("In a meeting"));
    table.add(tr("That child speaks"), tr("A letter"));
    table.add(tr("We agree; we do not agree; a changed mind"), tr("F2; F5; F3"));
    table.add(tr("For another day; back; next group"), tr("F4; F8; F9"));
    table.addHeading(tr("In what you saw"));
    table.add(tr("Keep the note and begin another"), tr("Ctrl+Enter"));
    for (const QAction* menu : m_menus->actions()) {
        table.addHeading(QString(menu->text()).remove(QLatin1Char('&')));
        table.addMenu(*menu->menu());
    }
    auto* column = new QVBoxLayout(&dialog);
    QScrollArea* area = scrolled(content);
    area->setFocusPolicy(Qt::StrongFocus); // so that arrows turn the list
    area->setAccessibleName(tr("All keys"));
    column->addWidget(area);
    auto* done = new Button(Button::Form::Plain, tr("Close"));
    connect(done, &Button::clicked, &dialog, &QDialog::accept);
    column->addWidget(done, 0, Qt::AlignTrailing);
    dialog.resize(scaled(580), qMin(scaled(640), height() - scaled(40)));
    area->setFocus();
    dialog.exec();
}

} // namespace wainscot::ui
