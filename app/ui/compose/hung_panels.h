// The panels of the display in their order, each as a small live picture, and the place for a new
// one. One stop of the keyboard; arrows go from panel to panel.
#pragma once

#include <QTimer>
#include <QWidget>

#include <vector>

#include "app/ui/compose/desk.h"
#include "app/ui/compose/hung_panel.h"
#include "app/ui/kit/rover.h"
#include "layout/screen/painter.h"

class QLineEdit;
class QScrollArea;

namespace wainscot::ui {

class HungPanels : public QWidget {
    Q_OBJECT
public:
    HungPanels(Session& session, Desk& desk, PictureProvider& pictures, QWidget* parent = nullptr);
    void refresh(); // from the desk; pictures are painted one by one when there is a moment
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }
    // The panel that hangs at a point of the screen and is not the one on the stage.
    [[nodiscard]] PanelId panelAt(QPoint global) const;
    void showGoal(PanelId panel); // what is in the hand would go there; invalid = nowhere
    void askName(PanelId panel); // writes over its name
    void paintSoon(); // some pictures that were loading are there now
    [[nodiscard]] HungPanel* find(PanelId panel) const;
    void paintAllNow(); // for tests and pictures of the window

Q_SIGNALS:
    void chosen(wainscot::PanelId panel);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void addPanel(PanelId panel);
    void place();
    void paintNext();
    void carry(HungPanel* panel, QPoint global, bool letGo);
    [[nodiscard]] int numberAt(QPoint global) const; // 1-based place in the row
    void showMenu(PanelId panel, QPoint global);
    bool keyOn(HungPanel* panel, QKeyEvent* event);

    Session& m_session;
    Desk& m_desk;
    PictureProvider& m_pictures;
    Rover* m_rover;
    QScrollArea* m_area;
    QWidget* m_row; // in the scroll area
    QWidget* m_mark; // where a carried panel would hang
    QLineEdit* m_name;
    PanelId m_naming;
    std::vector<HungPanel*> m_panels; // the last is the place for a new one
    std::vector<PanelId> m_toPaint;
    QTimer m_paintSoon;
};

} // namespace wainscot::ui
