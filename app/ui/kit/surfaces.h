// Grounds, hairlines, labels and scroll areas.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/ui/kit/icons.h"

namespace wainscot::ui {

// A note: rounded ground with a border, in colours asked for at the moment of painting.
class Card : public QFrame {
    Q_OBJECT
public:
    enum class Tone { Card, Field, Stop, Look, Note };
    explicit Card(Tone tone = Tone::Card, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Tone m_tone;
};

// A plain ground of one of the window's colours.
class Ground : public QWidget {
    Q_OBJECT
public:
    enum class Tone { Window, Wall, Field };
    explicit Ground(Tone tone, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Tone m_tone;
};

// A hairline.
class Rule : public QWidget {
    Q_OBJECT
public:
    explicit Rule(Qt::Orientation orientation = Qt::Horizontal, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

// Text that wraps and asks for the height it needs.
class Label : public QLabel {
    Q_OBJECT
public:
    explicit Label(const QString& text,
        double relative = 1.0,
        QFont::Weight weight = QFont::Normal,
        bool quiet = false,
        QWidget* parent = nullptr);
};

// Text on one line, shortened at its end when there is no room; the whole of it is the tooltip.
class OneLine : public QWidget {
    Q_OBJECT
public:
    explicit OneLine(double relative = 1.0,
        QFont::Weight weight = QFont::Normal,
        bool quiet = false,
        QWidget* parent = nullptr);
    void setText(const QString& text);
    [[nodiscard]] const QString& text() const { return m_text; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_text;
    bool m_quiet;
};

// An icon beside its word; decoration, so it has no name of its own.
class IconMark : public QWidget {
    Q_OBJECT
public:
    IconMark(Icon icon, const QColor& colour, double side = 16, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Icon m_icon;
    QColor m_colour;
};

// A number with its noun: "1 panel", "3 panels". `many` holds %1.
[[nodiscard]] QString counted(int number, const QString& one, const QString& many);
// Scrolls downwards only; no stop of the keyboard itself.
[[nodiscard]] QScrollArea* scrolled(QWidget* content);

// What lies beside a task, of a width, behind a rule; it scrolls where the window is low.
struct SideColumn {
    QWidget* whole = nullptr;
    QVBoxLayout* content = nullptr;
};
[[nodiscard]] SideColumn sideColumn(int width, int spacing);

} // namespace wainscot::ui
