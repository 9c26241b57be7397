// "What you have": the words, photos, work and notes of the experience, to be put on the panel.
#pragma once

#include <QLineEdit>
#include <QMap>
#include <QWidget>

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/compose/desk.h"
#include "app/ui/compose/slip.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"

class QVBoxLayout;

namespace wainscot::ui {

class Drawer : public QWidget {
    Q_OBJECT
public:
    Drawer(Session& session, Desk& desk, PictureShelf& shelf, QWidget* parent = nullptr);
    void find(); // puts the keyboard into the search field
    void show(DrawerItem::Kind kind, bool work = false);
    [[nodiscard]] QWidget* firstStop() const;
    [[nodiscard]] DrawerEntry* entryFor(DrawerItem item) const; // null when not listed now

Q_SIGNALS:
    void wanted(wainscot::ui::DrawerItem item);
    void putAwayAsked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    enum class Kind { Words, Photos, Work, Notes };
    QWidget* makeHead();
    void rebuild();
    void addWords(QVector<QWidget*>& entries);
    void addPictures(QVector<QWidget*>& entries, PictureKind kind);
    void addNotes(QVector<QWidget*>& entries);
    void addSection(const QString& heading, const QString& count);
    void addEmpty(const QString& text);
    void addEntry(DrawerEntry* entry, QVector<QWidget*>& entries);
    [[nodiscard]] QString whereUsed(const DrawerItem& item) const;
    [[nodiscard]] bool matches(const QString& text) const;
    [[nodiscard]] QString notFor() const; // "not for the hallway"

    Session& m_session;
    Desk& m_desk;
    PictureShelf& m_shelf;
    QLineEdit* m_search = nullptr;
    Button* m_notOnWall = nullptr;
    Button* m_starred = nullptr;
    QVector<Button*> m_kinds;
    Rover* m_kindRover = nullptr;
    Rover* m_listRover = nullptr;
    QWidget* m_list = nullptr;
    QVBoxLayout* m_listLayout = nullptr;
    Kind m_kind = Kind::Words;
    QTimer m_rebuildSoon;
    QMultiMap<QString, ThingEntry*> m_bySha;
};

// "the classroom", "the hallway", "families", "everyone": as part of a sentence.
[[nodiscard]] QString inWords(Audience audience);

} // namespace wainscot::ui
