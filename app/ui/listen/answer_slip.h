// A child's answer on a strand: the shared words underlined, to be dragged or lifted by keyboard.
#pragma once

#include <QAbstractButton>

#include "core/model/ids.h"
#include "core/voice/compared_words.h"

class QTextLayout;

namespace wainscot::ui {

// What a dragged answer is carried as: its number.
inline constexpr auto kAnswerMime = "application/x-wainscot-answer";

class AnswerSlip : public QAbstractButton {
    Q_OBJECT
public:
    // `foot`: who, and what was asked. `relative`: of the words to the system font.
    AnswerSlip(QuoteId quote,
        const QString& words,
        const QString& foot,
        double relative,
        QWidget* parent = nullptr);
    [[nodiscard]] QuoteId quote() const { return m_quote; }
    [[nodiscard]] QString forFinding() const { return m_words + QLatin1Char(' ') + m_foot; }
    void setShared(const std::vector<WordSpan>& shared); // underlined
    [[nodiscard]] const std::vector<WordSpan>& shared() const { return m_shared; }
    void setLifted(bool lifted); // in the hand of the keyboard
    void setMovable(bool movable); // else it cannot be dragged or lifted
    void setQuiet(bool quiet); // put back among the others
    void setState(const QString& state); // read after the words: "read out"
    // By whom a hand holds it, at the end of its foot; all of it in the tooltip.
    void setHeld(const QString& foot, const QStringList& all);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {scaledWidth(), 0}; }

Q_SIGNALS:
    void liftAsked(wainscot::QuoteId quote); // Space
    void keyInHand(int key); // arrows, Enter, Esc while lifted
    void menuAsked(wainscot::QuoteId quote, QPoint global);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    [[nodiscard]] static int scaledWidth();
    [[nodiscard]] int hangingRoom() const;
    int layOut(QTextLayout& layout, int width) const; // its height
    void sayName();
    void paintFoot(QPainter& painter, const QRect& place) const;
    void startDrag();

    QuoteId m_quote;
    QString m_words;
    QString m_foot;
    QString m_state;
    QString m_held;
    std::vector<WordSpan> m_shared;
    double m_relative;
    bool m_isLifted = false;
    bool m_isMovable = true;
    bool m_isQuiet = false;
    QPoint m_pressedAt;
};

} // namespace wainscot::ui
