// The caret in the panel's own lines. A plain text field does the typing (keys, input methods,
// clipboard, its own undo); only where things stand comes from the panel, which draws the words.
#pragma once

#include <QBasicTimer>
#include <QPlainTextEdit>

#include <optional>
#include <vector>

#include "app/ui/canvas/view_map.h"
#include "app/ui/writing/caret_map.h"
#include "layout/typeset/writing.h"

namespace wainscot::ui {

class CaretField : public QPlainTextEdit {
    Q_OBJECT
public:
    explicit CaretField(QWidget* parent = nullptr);

    void begin(const QString& text, bool oneParagraph);
    // What the panel shows while one writes: the text with what an input method has not yet given.
    [[nodiscard]] QString shownText() const;
    [[nodiscard]] bool isComposing() const { return !m_preedit.isEmpty(); }
    [[nodiscard]] bool isOneParagraph() const { return m_oneParagraph; }
    // How the panel draws `shownText`, and where; `least` is covered in any case, px of the parent.
    void setLines(CaretMap lines, const ViewMap& view, const QRectF& least);
    void putCaretAt(QPointF parentPx);
    void setDoubtful(std::vector<TextRange> stretches); // words to look at again
    [[nodiscard]] QRectF caretRect() const; // px, own
    [[nodiscard]] QVariant inputMethodQuery(Qt::InputMethodQuery query) const override;

Q_SIGNALS:
    void shownTextChanged();
    void wheeled(QWheelEvent* event); // the panel's: it zooms and moves under the caret

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void timerEvent(QTimerEvent* event) override;
    void inputMethodEvent(QInputMethodEvent* event) override;
    void insertFromMimeData(const QMimeData* source) override;

private:
    [[nodiscard]] int shownOffset(int position) const; // behind what is being composed
    [[nodiscard]] int positionAt(QPointF px) const;
    [[nodiscard]] QRectF toPx(const RectMm& rect) const;
    void moveCaret(int position, bool select);
    bool moveByLine(const QKeyEvent& event);
    void restartBlinking();

    CaretMap m_lines;
    ViewMap m_view;
    std::vector<TextRange> m_doubtful;
    QString m_preedit;
    bool m_oneParagraph = false;
    bool m_caretShown = true;
    bool m_selecting = false; // by the mouse
    std::optional<Mm> m_wishedX; // of a caret that goes up or down
    QBasicTimer m_blink;
};

} // namespace wainscot::ui
