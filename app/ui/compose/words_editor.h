// Where an adult's text is written, at the piece itself: every key shows on the panel at once, in
// the lines it will have on paper.
#pragma once

#include <QPlainTextEdit>

#include "app/ui/kit/surfaces.h"
#include "core/model/display.h"

namespace wainscot::ui {

class WordsEditor : public Card {
    Q_OBJECT
public:
    explicit WordsEditor(QWidget* parent = nullptr);
    // `language` of the text, BCP 47: the reading level is told for English only.
    void begin(const Piece& piece, const QString& name, const QString& language);
    [[nodiscard]] PieceId piece() const { return m_piece; }
    [[nodiscard]] QString text() const;
    void place(const QRectF& piece, const QRect& room); // below the piece, else above it

Q_SIGNALS:
    void written(const QString& text); // at every key
    void finished();
    void putBack();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void tellReading();

    QPlainTextEdit* m_field;
    Label* m_reading;
    QString m_language;
    PieceId m_piece;
    bool m_oneParagraph = false;
    bool m_beginning = false;
};

} // namespace wainscot::ui
