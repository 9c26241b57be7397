// The panel on the stage: painted from its display list, with the pieces in hand.
//
// The canvas changes nothing itself. It shows what it is given, lets the person try, and says what
// was meant; the edit is made by its owner, who hands back the new content.
#pragma once

#include <QPixmap>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <optional>
#include <vector>

#include "app/ui/canvas/attempt.h"
#include "app/ui/canvas/grid_snap.h"
#include "app/ui/canvas/guides.h"
#include "app/ui/canvas/incoming.h"
#include "app/ui/canvas/view_map.h"
#include "core/base/finding.h"
#include "core/model/display.h"
#include "layout/screen/painter.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/style.h"

class QNativeGestureEvent;

namespace wainscot::ui {

// A piece as the canvas knows it.
struct CanvasPiece {
    Piece piece;
    QString name; // "Photo: Wren's wet hand"; said and read to who cannot see it
    std::optional<Severity> finding; // the gravest thing found on it
    SizePx pictureSize; // upright; empty for text
    QString waits = {}; // why this audience does not see it yet; empty = cleared
};

struct CanvasContent {
    PanelStyle style;
    DisplayList list;
    std::vector<CanvasPiece> pieces; // reading order; only those that are placed
    bool locked = false; // no arranging changes the panel
};

class Canvas : public QWidget {
    Q_OBJECT
public:
    explicit Canvas(PictureProvider& pictures, QWidget* parent = nullptr);
    ~Canvas() override;

    // What only the owner can tell.
    struct Helpers {
        // How a piece would be set if it stood as tried: its marks alone.
        std::function<DisplayList(const Piece&)> preview;
        // The piece in another cell, its picture's place following.
        std::function<Piece(const Piece&, const RectMm& cell)> placing;
        // The room that something from outside would take.
        std::function<SizeMm(const Incoming&)> sizing;
        // Why something from outside may not come here; nothing = it may.
        std::function<bool(const Incoming&)> welcome;
        // The other panel that hangs at a point of the canvas (px); invalid = none.
        std::function<PanelId(QPoint)> panelAt;
    };
    void setHelpers(Helpers helpers);

    void setContent(CanvasContent content);
    void clearContent();
    void refreshPictures(); // some that were loading are there now
    [[nodiscard]] const CanvasContent& content() const { return m_content; }
    [[nodiscard]] const CanvasPiece* find(PieceId id) const;

    // One or several pieces; the first is the one the note speaks of and the others come to.
    void takeInHand(PieceId id); // alone; an invalid id lets go of all
    void hold(std::vector<PieceId> ids);
    void holdAll();
    [[nodiscard]] PieceId inHand() const { return m_held.empty() ? PieceId() : m_held.front(); }
    [[nodiscard]] const std::vector<PieceId>& held() const { return m_held; }
    [[nodiscard]] bool isHeld(PieceId id) const;
    // While something is tried: where the pieces in the hand would stand, and what is dragged over.
    [[nodiscard]] std::vector<PlacedCell> triedCells() const;
    [[nodiscard]] const Incoming& incoming() const { return m_incoming; }
    // Shows a piece as tried (a caption being typed) until the next content or nothing is tried.
    void tryPiece(const std::optional<Piece>& piece);
    [[nodiscard]] const DisplayList* tried() const; // the marks of the piece in the hand, as tried
    // The rest of the panel as it would become; marks of pieces in the hand are left out.
    void showAround(const DisplayList& list);

    // The room the whole panel is fitted into; the stage keeps some for the note.
    void setFitRoom(const QRectF& room);
    void fitWhole();
    void zoomBy(double factor);
    void zoomToTrueSize(); // one millimetre on screen is one millimetre on paper
    [[nodiscard]] bool isFitted() const { return m_fitted; }
    [[nodiscard]] const ViewMap& view() const { return m_view; }
    [[nodiscard]] QRectF panelRect() const; // px
    [[nodiscard]] QRectF pieceRect(PieceId id) const; // px, as shown now
    void setRulers(bool shown, bool inches);
    [[nodiscard]] bool hasRulers() const { return m_rulers; }

    void setCropping(bool on); // the picture in hand moves inside its frame
    [[nodiscard]] bool isCropping() const { return m_mode == Mode::Crop; }
    void lift(); // what is in hand moves by arrow keys until it is set down
    [[nodiscard]] bool isLifted() const { return m_mode == Mode::Lift; }
    void setDown();
    void putBack(); // ends whatever is being tried
    [[nodiscard]] bool isBusy() const { return m_mode != Mode::Idle; }

    // For tests and measurement: pixels asked to repaint and layers painted since the last call.
    struct Work {
        qint64 pixels = 0;
        int staticLayers = 0;
    };
    [[nodiscard]] Work takeWork();

Q_SIGNALS:
    void taken(wainscot::PieceId id); // what is held changed, by mouse or keys
    void placed(const std::vector<wainscot::ui::PlacedCell>& cells);
    void nudged(const std::vector<wainscot::ui::PlacedCell>& cells); // one of several small steps
    void swapAsked(wainscot::PieceId one, wainscot::PieceId other);
    void carried(const std::vector<wainscot::PieceId>& pieces, wainscot::PanelId to);
    void framed(wainscot::PieceId id, const wainscot::Framing& framing);
    void writingAsked(wainscot::PieceId id, QPointF at); // px; null = by a key
    void dropped(const wainscot::ui::Incoming& what, const wainscot::RectMm& cell);
    void trying(const wainscot::ui::Attempt& attempt); // at every change
    void rested(const wainscot::ui::Attempt& attempt); // the hand holds still
    void menuAsked(QPoint global); // what can be done with what is in hand
    void viewChanged();
    void rulersChanged();
    void modeChanged();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    enum class Mode { Idle, Pressed, Move, Resize, Crop, CropDrag, Lift, Pan, Band };
    // A piece in the hand: as it stands in the book, as it is tried, and its marks.
    struct Trial {
        Piece before;
        Piece now;
        DisplayList list;
    };

    [[nodiscard]] const CanvasPiece* pieceAt(QPointF at, bool exceptHeld = false) const;
    [[nodiscard]] Qt::Edges edgesAt(QPointF at) const;
    void setMode(Mode mode);
    void sayTaken();

    // Trying (canvas_trial.cpp).
    void beginTrying(bool all);
    void showTrial(const Piece& piece);
    void moveTrialTo(QPointF at, Qt::KeyboardModifiers modifiers);
    void moveTrialsBy(Mm dx, Mm dy);
    [[nodiscard]] RectMm wishedCell(Qt::KeyboardModifiers modifiers) const;
    void resizeTrialTo(QPointF at);
    void cropTrialTo(QPointF at);
    void zoomCrop(double factor);
    void setAttempt(const Attempt& attempt);
    void endTrying();
    void finishTrial();
    void finishMove();
    [[nodiscard]] std::vector<RectMm> otherCells() const;

    void press(QMouseEvent* event);
    void toggleHeld(PieceId id);
    void bandTo(QPointF at, bool add);
    void chooseNext(int step, bool add);
    bool liftedKey(QKeyEvent* event);
    bool cropKey(QKeyEvent* event);
    bool chosenKey(QKeyEvent* event);
    bool nudgeKey(QKeyEvent* event);
    [[nodiscard]] RectMm steppedCell(const RectMm& cell, QPoint step, Qt::KeyboardModifiers) const;
    void updateCursor(QPointF at);
    void viewMoved();
    bool nativeGesture(QNativeGestureEvent* event);
    bool gesture(QEvent* event);

    // Painting (canvas_paint.cpp, canvas_marks.cpp).
    [[nodiscard]] QRect dirtyRectOf(const RectMm& cell) const;
    void updateTrialRegion(const QRect& before);
    void updateGuides(const RectMm& cell);
    void clearGuides(bool forget = true);
    void paintPaper(QPainter& painter, const QRect& dirty);
    void paintMarks(QPainter& painter, const DisplayList& list, const QRect& dirty);
    void paintWaiting(QPainter& painter) const;
    [[nodiscard]] DisplayList withoutTrials() const;
    const QPixmap& staticLayer();
    void dropStaticLayer();
    void paintTrial(QPainter& painter, const QRect& dirty);
    void paintMovedMarks(QPainter& painter);
    void paintAttempt(QPainter& painter, const QRect& dirty) const;
    void paintHand(QPainter& painter, const RectMm& cell) const;
    void paintHeld(QPainter& painter) const;
    void paintSigns(QPainter& painter) const;
    void paintStrands(QPainter& painter) const;
    void paintLock(QPainter& painter) const;
    void paintGoal(
        QPainter& painter, const RectMm& cell, const QString& word, const QRect& dirty) const;
    void paintGuides(QPainter& painter) const;

    PictureProvider& m_pictures;
    Helpers m_helpers;
    CanvasContent m_content;
    bool m_hasContent = false;
    ViewMap m_view;
    QRectF m_fitRoom;
    bool m_fitted = true;
    bool m_rulers = false;
    bool m_inches = false;

    std::vector<PieceId> m_held;
    Mode m_mode = Mode::Idle;
    QPointF m_pressedAt;
    Qt::Edges m_edges;
    bool m_toggleOnRelease = false; // a click on one of several held; a drag takes all of them
    std::vector<Trial> m_trials; // the first is the piece in hand
    std::optional<DisplayList> m_around;
    Attempt m_attempt;
    QTimer m_rest;
    QPointF m_follow; // of the pointer while moving, px from where the piece stands
    QPixmap m_trialPixmap; // what is moved, painted once
    mutable QPixmap m_goalPixmap; // where it would go, likewise
    mutable QString m_goalWord;
    std::optional<RectMm> m_dropCell;
    Incoming m_incoming; // what is dragged over
    QRectF m_band;
    std::vector<PieceId> m_heldBeforeBand;
    std::vector<Guide> m_guides;
    std::vector<Distance> m_distances;
    QPixmap m_static; // the panel without the pieces being tried
    Work m_work;
};

} // namespace wainscot::ui

Q_DECLARE_METATYPE(wainscot::PieceId)
