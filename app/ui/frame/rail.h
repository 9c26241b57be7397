// The rail along the top: five places as nails; the one you are in is a plate hung from its nail.
#pragma once

#include <QAbstractButton>
#include <QWidget>

#include <array>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"

namespace wainscot::ui {

enum class Place { Gather, Listen, Compose, Hang, Keep };
inline constexpr int kPlaces = 5;

class PlaceNail : public QAbstractButton {
    Q_OBJECT
public:
    enum class Nail { Untouched, InWork, NothingMissing };
    explicit PlaceNail(const QString& name, QWidget* parent = nullptr);
    void setLine(const QString& line, Nail nail);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void paintRail(QPainter& painter, double y) const;
    void paintNail(QPainter& painter, QPointF at) const;
    QString m_line;
    Nail m_nail = Nail::Untouched;
};

class Rail : public QWidget {
    Q_OBJECT
public:
    explicit Rail(QWidget* parent = nullptr);
    void setPlace(Place place);
    void setLine(Place place, const QString& line, PlaceNail::Nail nail);
    [[nodiscard]] QString line(Place place) const;
    void setExperience(const QString& title, const QString& about);
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }
    [[nodiscard]] Button* experience() const { return m_experience; }

Q_SIGNALS:
    void chosen(wainscot::ui::Place place);
    void experienceAsked();

private:
    std::array<PlaceNail*, kPlaces> m_nails{};
    Button* m_experience;
    Rover* m_rover;
};

[[nodiscard]] QString nameOf(Place place);

} // namespace wainscot::ui
