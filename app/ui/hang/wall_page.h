// Hang, Wall: the wall to scale, what was measured on it, the hanging list, and the measures of
// what is in the hand.
#pragma once

#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <functional>

#include "app/ui/hang/wall_view.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"

class QPrinter;

namespace wainscot::ui {

class WallPage : public QWidget {
    Q_OBJECT
public:
    WallPage(Session& session, PictureShelf& pictures, QWidget* parent = nullptr);

    [[nodiscard]] QWidget* taskLineEnd() const { return m_end; }
    [[nodiscard]] WallView& view() const { return *m_view; }
    [[nodiscard]] const Wall* wall() const; // the one shown; null = none was measured
    void refresh(); // from the book
    [[nodiscard]] QWidget* firstStop();

    // What the buttons and menus do.
    void measureWall(); // a new one, to be measured
    void proposePlaces();
    void add(FittingKind kind);
    void takeOff(); // what is in the hand
    void setViewers(Viewers viewers);
    void setCoverLimit(const QString& name);
    void setAges(int youngest, int oldest);
    void showWall(WallId id);
    // The picture, the list in millimetres and inches, and the boards to cut.
    bool printList(QPrinter& printer);
    void rememberPrinted(); // the list went to the printer

Q_SIGNALS:
    void changed(); // what the sill says
    void announced(const QString& sentence);
    // Of the display as it really hangs; nothing = to be chosen.
    void photosGiven(const QStringList& files);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void makeEnd();
    void addPhotoButton(QVBoxLayout* column);
    void makeBelow(QVBoxLayout* column);
    void keep(const Wall& wall, const QString& label, int gesture = 0);
    void fillMeasured();
    void fillList();
    void fillHand();
    void addHandFields(QWidget* fields, int hand);
    void addField(
        QWidget* into, const QString& name, Mm value, const std::function<void(Wall&, Mm)>& set);
    void chooseWall();
    void chooseViewers();
    void chooseLimit();
    void chooseFitting();
    void askPrint();

    Session& m_session;
    WallId m_shown;
    int m_filledHand = -2; // what the fields of the third column are about
    QStackedWidget* m_stack;
    WallView* m_view;
    QWidget* m_end = nullptr;
    Button* m_name = nullptr;
    Button* m_viewers = nullptr;
    Button* m_propose = nullptr;
    Button* m_measure = nullptr; // where there is no wall yet
    QWidget* m_measured = nullptr;
    QWidget* m_list = nullptr;
    QWidget* m_below = nullptr; // the three columns under the wall
    QWidget* m_handColumn = nullptr;
};

} // namespace wainscot::ui
