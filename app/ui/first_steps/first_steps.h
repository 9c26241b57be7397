// The first minutes in six steps, each with a picture of the window itself.
#pragma once

#include <QDialog>
#include <QPixmap>

#include <array>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

enum class FirstStep { Class, Words, Pictures, Groups, Panel, Wall };
inline constexpr std::array kFirstSteps{FirstStep::Class,
    FirstStep::Words,
    FirstStep::Pictures,
    FirstStep::Groups,
    FirstStep::Panel,
    FirstStep::Wall};

// Stays open beside the window until it is closed.
class FirstSteps : public QDialog {
    Q_OBJECT
public:
    explicit FirstSteps(QWidget* parent = nullptr);

    [[nodiscard]] FirstStep step() const { return m_step; }
    void show(FirstStep step);
    void setPicture(FirstStep step, const QPixmap& picture);
    void setNoPictures(const QString& why); // said where the picture would be
    void setMayGo(bool may); // whether there is a book to go to the place in
    [[nodiscard]] bool hasPicture(FirstStep step) const;
    [[nodiscard]] Button& entry(FirstStep step) { return *m_entries[std::size_t(step)]; }
    [[nodiscard]] Button& next() { return *m_next; }
    [[nodiscard]] Button& toPlace() { return *m_toPlace; }

Q_SIGNALS:
    void placeAsked(wainscot::ui::FirstStep step);

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    class Picture;
    [[nodiscard]] QWidget* makeList();
    [[nodiscard]] QLayout* makePage();
    [[nodiscard]] QLayout* makeFoot();
    void turn(int by);
    void putStop();

    Rover* m_rover;
    FirstStep m_step = FirstStep::Class;
    std::array<Button*, kFirstSteps.size()> m_entries{};
    std::array<QPixmap, kFirstSteps.size()> m_pictures;
    Picture* m_picture = nullptr;
    Label* m_heading = nullptr;
    Label* m_words = nullptr;
    Label* m_count = nullptr;
    Button* m_toPlace = nullptr;
    Button* m_earlier = nullptr;
    Button* m_next = nullptr;
};

} // namespace wainscot::ui
