// "What you have": the words, photos, work and notes of the experience, to be put on the panel.
#pragma once

#include <QLineEdit>
#include <QMultiMap>
#include <QTimer>
#include <QWidget>

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/compose/desk.h"
#include "app/ui/compose/drawer_rows.h"
#include "app/ui/compose/slip.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"

class QScrollArea;
class QVBoxLayout;

namespace wainscot::ui {

class Drawer : public QWidget {
    Q_OBJECT
public:
    Drawer(Session& session, Desk& desk, PictureShelf& shelf, QWidget* parent = nullptr);
    void find(); // puts the keyboard into the search field
    void show(DrawerItem::Kind kind, bool work = false);
    void setFilter(const DrawerFilter& filter);
    [[nodiscard]] const DrawerFilter& filter() const { return m_filter; }
    [[nodiscard]] QWidget* firstStop() const;
    [[nodiscard]] DrawerEntry* entryFor(DrawerItem item) const; // null when not listed now
    [[nodiscard]] const std::vector<DrawerRow>& rows() const { return m_rows; }

Q_SIGNALS:
    void wanted(wainscot::ui::DrawerItem item);
    void shownWanted(wainscot::ui::DrawerItem item); // go where it hangs
    void putAwayAsked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    // The head (drawer_head.cpp).
    QWidget* makeHead();
    QLayout* makeKinds();
    QLayout* makeChips();
    void refreshHead();
    void chooseChild();
    void chooseQuestion();
    void chooseOrder();

    void rebuild();
    void clearList();
    void addMore(); // the next lines of a long list, when one comes near its end
    QWidget* widgetFor(const DrawerRow& row);
    [[nodiscard]] QWidget* seriesButton(const DrawerRow& row);
    void markEntry(DrawerEntry* entry, int stars);
    void connectEntry(DrawerEntry* entry);
    void showMenu(DrawerEntry* entry, QPoint global);
    [[nodiscard]] QString notFor() const; // "not for the hallway"

    Session& m_session;
    Desk& m_desk;
    PictureShelf& m_shelf;
    QLineEdit* m_search = nullptr;
    Button* m_notOnWall = nullptr;
    Button* m_starred = nullptr;
    Button* m_byChild = nullptr;
    Button* m_question = nullptr;
    Button* m_order = nullptr;
    QVector<Button*> m_kinds;
    Rover* m_kindRover = nullptr;
    Rover* m_listRover = nullptr;
    QScrollArea* m_area = nullptr;
    QWidget* m_list = nullptr;
    QVBoxLayout* m_listLayout = nullptr;
    DrawerFilter m_filter;
    WhereUsed m_used;
    std::vector<DrawerRow> m_rows;
    std::size_t m_shown = 0; // rows that have widgets
    QVector<QWidget*> m_entries;
    QTimer m_rebuildSoon;
    QMultiMap<QString, ThingEntry*> m_bySha;
};

// "the classroom", "the hallway", "families", "everyone": as part of a sentence.
[[nodiscard]] QString inWords(Audience audience);

} // namespace wainscot::ui
