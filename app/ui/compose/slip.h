// A child's words, and the other things in the drawer, each as a line that can be taken.
#pragma once

#include <QAbstractButton>
#include <QPixmap>

#include "app/ui/canvas/canvas.h"

namespace wainscot::ui {

// Something that can be put on the panel: pressed (Enter, double click) or dragged there.
class DrawerEntry : public QAbstractButton {
    Q_OBJECT
public:
    explicit DrawerEntry(DrawerItem item, QWidget* parent = nullptr);
    [[nodiscard]] DrawerItem item() const { return m_item; }

    // Where it is used ("on panel 2") and why it may not hang here; the reason is the tooltip.
    void setUsed(const QString& where);
    void setForbidden(const QString& mark, const QString& why); // empty: it may
    [[nodiscard]] bool isForbidden() const { return !m_forbidden.isEmpty(); }
    void setStarred(bool starred);
    [[nodiscard]] bool isStarred() const { return m_isStarred; }

Q_SIGNALS:
    void wanted(wainscot::ui::DrawerItem item); // to be taken onto the panel
    void starAsked(wainscot::ui::DrawerItem item); // given or taken away
    void menuAsked(QPoint global);

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void paintStar(QPainter& painter) const;
    // The foot of an entry: who at the start, the mark at the end.
    void paintFoot(QPainter& painter, const QRect& place, const QString& who) const;
    void describe(const QString& name);
    [[nodiscard]] const QString& used() const { return m_used; }

private:
    void sayName();
    DrawerItem m_item;
    bool m_isStarred = false;
    QString m_name;
    QString m_used;
    QString m_forbidden;
    QPoint m_pressedAt;
};

// A child's words: the face for new readers, a hanging mark, the name beneath. Nothing else looks
// like it.
class Slip : public DrawerEntry {
    Q_OBJECT
public:
    Slip(DrawerItem item, const QString& words, const QString& who, QWidget* parent = nullptr);
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int endRoom() const; // beside the words; a star needs its own
    QString m_words;
    QString m_who;
};

// A picture or an adult's text: a small picture or none, a heading, a second line.
class ThingEntry : public DrawerEntry {
    Q_OBJECT
public:
    ThingEntry(DrawerItem item,
        const QString& heading,
        const QString& second,
        bool hasPicture,
        QWidget* parent = nullptr);
    void setPicture(const QImage& picture);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_heading;
    QString m_second;
    bool m_hasPicture;
    QPixmap m_picture;
};

} // namespace wainscot::ui
