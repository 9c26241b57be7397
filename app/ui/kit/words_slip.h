// A child's words that are kept: the face for new readers, a hanging mark, a quiet line beneath.
#pragma once

#include <QAbstractButton>

namespace wainscot::ui {

class WordsSlip : public QAbstractButton {
    Q_OBJECT
public:
    // `relative`: of the words to the system font. Pressed by Enter, Space or a click.
    WordsSlip(
        const QString& words, const QString& foot, double relative, QWidget* parent = nullptr);
    void setAside(const QString& aside); // quietly at the end of the foot: an adult's translation
    void setPicture(const QPixmap& picture); // beside the words: a drawing, a sheet
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    [[nodiscard]] int hangingRoom() const;
    [[nodiscard]] int endRoom() const;
    [[nodiscard]] QRect visual(const QRect& logical) const;
    void paintWords(QPainter& painter) const;
    void paintFoot(QPainter& painter) const;

    QString m_words;
    QString m_foot;
    QString m_aside;
    QPixmap m_picture;
    double m_relative;
};

} // namespace wainscot::ui
