// Pictures: drop photos and scanned drawings, say who is in them. Nobody sees them before.
#pragma once

#include <QLineEdit>

#include "app/ui/gather/picture_list.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/places/task_page.h"
#include "app/ui/session/session.h"

class QDateEdit;
class QStackedWidget;

namespace wainscot::ui {

class ChildChips;

class PicturesTask : public TaskPage {
    Q_OBJECT
public:
    PicturesTask(Session& session, PictureShelf& shelf, QWidget* parent = nullptr);

    void choose(PictureId id);
    [[nodiscard]] const Picture* picture() const; // the chosen one
    [[nodiscard]] PictureList& list() { return *m_list; }
    void setSeen(ChildId child, bool seen);
    void nobodySeen();
    [[nodiscard]] Saying saying() override;
    void refresh() override;
    [[nodiscard]] QWidget* about() override { return m_about; }
    [[nodiscard]] QWidget* firstStop() const override;

Q_SIGNALS:
    void filesDropped(const QStringList& files);
    void filesAsked();
    void folderAsked();
    void wordsAsked();

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QWidget* makeMiddle();
    [[nodiscard]] QWidget* makeWallRow(); // of a photo of a wall
    void showPicture();
    void showWall(const Picture& photo);
    void keepDay();
    void keepLegible();
    void keep(const Picture& changed, const QString& label);
    [[nodiscard]] std::vector<const Picture*> all() const;
    [[nodiscard]] PictureId nextToLookAt() const;

    Session& m_session;
    PictureShelf& m_shelf;
    PictureId m_chosen;
    QWidget* m_about;
    QStackedWidget* m_pages;
    PictureList* m_list;
    QLabel* m_large = nullptr;
    Label* m_who = nullptr;
    Button* m_nobody = nullptr;
    QWidget* m_kind = nullptr;
    QWidget* m_wall = nullptr;
    Label* m_wallName = nullptr;
    QDateEdit* m_hungOn = nullptr;
    Button* m_legible = nullptr;
    Button* m_photo = nullptr;
    Button* m_work = nullptr;
    ChildChips* m_people = nullptr;
    QLineEdit* m_caption = nullptr;
    QLineEdit* m_by = nullptr;
    Button* m_add = nullptr;
};

} // namespace wainscot::ui
