// The small drawing beside a question, for those who do not read, and the button that chooses it.
#pragma once

#include <QAbstractButton>
#include <QImage>

#include "core/model/prompt.h"

class QPainter;

namespace wainscot::ui {

// Open lines on a field of 40 x 40, drawn into `place`.
void drawPromptSign(QPainter& painter, PromptSign sign, const QRectF& place, const QColor& line);
[[nodiscard]] QPixmap signPixmap(PromptSign sign, int side, double ratio); // on no ground
[[nodiscard]] QString inWords(PromptSign sign);

class SignButton : public QAbstractButton {
    Q_OBJECT
public:
    explicit SignButton(PromptSign sign, QWidget* parent = nullptr);
    // Shown instead of the sign; null = the sign again.
    void setPicture(const QImage& picture);
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void chosen(wainscot::PromptSign sign);
    void pictureAsked(); // one of the book's instead of a sign

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void offer();
    PromptSign m_sign;
    QImage m_picture;
};

} // namespace wainscot::ui
