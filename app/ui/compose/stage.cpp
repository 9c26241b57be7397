#include "app/ui/compose/stage.h"

#include <QCoreApplication>
#include <QPainter>
#include <QStyle>

#include "app/ui/canvas/ruler.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

// From the piece, or the panel's edge at its height, to the note. It starts at the edge when the
// piece is not beside it, so that it never crosses words.
class Stage::Thread : public QWidget {
public:
    explicit Thread(QWidget* parent)
        : QWidget(parent)
    {
        setAttribute(Qt::WA_TransparentForMouseEvents);
    }
    void setEnds(QPoint from, QPoint to, bool nailAtStart)
    {
        const int pad = 5;
        setGeometry(QRect(from, to).normalized().adjusted(-pad, -pad, pad, pad));
        m_from = from - pos();
        m_to = to - pos();
        m_nailAtStart = nailAtStart;
        update();
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(tokens().hand, 1.5));
        painter.drawLine(m_from, m_to);
        painter.setPen(Qt::NoPen);
        painter.setBrush(tokens().hand);
        painter.drawEllipse(QPointF(m_to), 3.5, 3.5);
        if (m_nailAtStart)
            painter.drawEllipse(QPointF(m_from), 3.5, 3.5);
    }

private:
    QPoint m_from;
    QPoint m_to;
    bool m_nailAtStart = false;
};

Stage::Stage(Session& session, Desk& desk, PictureProvider& pictures, QWidget* parent)
    : QWidget(parent)
    , m_canvas(new Canvas(pictures, this))
    , m_thread(new Thread(this))
    , m_note(new Note(desk, this))
    , m_hung(new HungPanels(session, desk, pictures, this))
    , m_editor(new WordsEditor(this))
    , m_empty(new EmptyStage(this))
    , m_choice(new PanelChoice(this))
    , m_stepBack(new StepBack(pictures, this))
    , m_pictureTable(new PictureTable(session, desk, this))
{
    connect(m_canvas, &Canvas::viewChanged, this, &Stage::placeNote);
    connect(m_canvas, &Canvas::rulersChanged, this, &Stage::place);
    connect(&m_editor->field(), &CaretField::wheeled, m_canvas, [this](QWheelEvent* event) {
        QCoreApplication::sendEvent(m_canvas, event);
    });
    connect(m_editor, &WordsEditor::cardChanged, this, &Stage::placeEditor);
    m_note->hide();
    m_thread->hide();
    setEmpty(true);
}

void Stage::setEmpty(bool empty)
{
    m_empty->setVisible(empty);
    m_canvas->setVisible(!empty);
    if (empty) {
        m_note->hide();
        m_thread->hide();
        m_hung->hide();
        m_editor->hide();
    }
    place();
}

void Stage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    place();
}

void Stage::place()
{
    m_empty->setGeometry(rect());
    m_choice->setGeometry(rect());
    m_stepBack->setGeometry(rect());
    m_pictureTable->setGeometry(rect());
    m_canvas->setGeometry(rect());
    if (!m_canvas->isVisibleTo(this))
        return;
    const int margin = air(4);
    const SizeMm size = m_canvas->content().list.size;
    const double shape = size.isEmpty() ? 1.4 : size.width / size.height;
    const int noteWidth = scaled(272);
    const int ruler = m_canvas->hasRulers() ? scaled(kRulerPx) : 0;
    double panelHeight = height() - 2 * margin - ruler;
    double panelWidth = panelHeight * shape;
    const int most = scaled(width() > 1500 ? 190 : 132);
    const double free = width() - panelWidth - noteWidth - air(7) - air(9) - 2 * margin;
    int hungWidth = int(qBound(0.0, free, double(most)));
    bool hung = hungWidth >= scaled(64);
    double total = panelWidth + air(7) + noteWidth + (hung ? air(9) + hungWidth : 0);
    if (total > width() - 2 * margin) {
        // A wide panel gives up width rather than losing the note; the others go first.
        hung = width() > scaled(1150);
        hungWidth = hung ? scaled(width() > 1500 ? 132 : 96) : 0;
        panelWidth = width() - 2 * margin - air(7) - noteWidth - (hung ? air(6) + hungWidth : 0);
        panelHeight = panelWidth / shape;
        total = panelWidth + air(7) + noteWidth + (hung ? air(6) + hungWidth : 0);
    }
    const auto visual = [this](const QRect& r) {
        return QStyle::visualRect(layoutDirection(), rect(), r);
    };
    const int left = int((width() - total) / 2);
    m_canvas->setFitRoom(visual(
        QRect(left, int((height() + ruler - panelHeight) / 2), int(panelWidth), int(panelHeight))));
    m_noteColumn =
        visual(QRect(left + int(panelWidth) + air(7), margin, noteWidth, height() - 2 * margin));
    m_hung->setVisible(hung);
    if (hung)
        m_hung->setGeometry(visual(QRect(left + int(total) - hungWidth, 0, hungWidth, height())));
    placeNote();
}

void Stage::placeNote()
{
    const QRectF piece = m_canvas->pieceRect(m_canvas->inHand());
    const bool held = m_canvas->isVisibleTo(this) && !piece.isEmpty();
    const bool shown = held || (m_canvas->isVisibleTo(this) && m_note->showsAdvice());
    m_note->setVisible(shown);
    m_thread->setVisible(held);
    placeEditor();
    if (!shown)
        return;
    const int needed = m_note->heightFor(m_noteColumn.width()) + 4;
    const int high = qMin(needed, m_noteColumn.height());
    m_note->setScrolls(high < needed);
    const int top =
        qBound(m_noteColumn.top(), int(piece.top()) - scaled(40), m_noteColumn.bottom() + 1 - high);
    m_note->setGeometry(m_noteColumn.left(), top, m_noteColumn.width(), high);
    m_note->raise();
    if (held)
        placeThread(piece);
    if (m_editor->isVisible())
        m_editor->raiseBoth();
    if (m_choice->isVisible())
        m_choice->raise();
    if (m_stepBack->isVisible())
        m_stepBack->raise();
    if (m_pictureTable->isVisible())
        m_pictureTable->raise();
}

void Stage::placeThread(const QRectF& piece)
{
    const int top = m_note->geometry().top();
    const int high = m_note->height();
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const QRectF panel = m_canvas->panelRect();
    const int y =
        qBound(top + scaled(20), int(piece.top() + piece.height() * 0.3), top + high - scaled(20));
    const int end = mirrored ? m_note->geometry().right() + 4 : m_note->geometry().left() - 4;
    const double edge = mirrored ? panel.left() : panel.right();
    const double side = mirrored ? piece.left() : piece.right();
    const bool beside =
        std::abs(edge - side) < panel.width() * 0.08 && y > piece.top() && y < piece.bottom();
    const int start = int(beside ? side : edge);
    m_thread->setVisible(mirrored ? start > end : start < end);
    m_thread->setEnds({start, y}, {end, y}, !beside);
    m_thread->raise();
}

// The caret follows the words when they are drawn anew and when the panel moves.
void Stage::placeEditor()
{
    if (!m_editor->isVisible())
        return;
    const CanvasContent& content = m_canvas->content();
    const DisplayList* tried = m_canvas->tried();
    m_editor->showLines(
        tried != nullptr ? *tried : content.list, m_canvas->view(), content.style.scale.body);
    m_editor->place(
        m_canvas->pieceRect(m_editor->piece()), rect().adjusted(air(2), air(2), -air(2), -air(2)));
}

} // namespace wainscot::ui
