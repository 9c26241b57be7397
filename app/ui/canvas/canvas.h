// The panel on the stage: painted from its display list, with one piece in hand.
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

#include "app/ui/canvas/grid_snap.h"
#include "app/ui/canvas/view_map.h"
#include "core/base/finding.h"
#include "core/model/display.h"
#include "layout/screen/painter.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/style.h"

namespace wainscot::ui {

// A piece as the canvas knows it.
struct CanvasPiece {
    Piece piece;
    QString name; // "Photo: Wren's wet hand"; said and read to who cannot see it
    std::optional<Severity> finding; // the gravest thing found on it
    SizePx pictureSize; // upright; empty for text
};

struct CanvasContent {
    PanelStyle style;
    DisplayList list;
    std::vector<CanvasPiece> pieces; // reading order; only those that are placed and cleared
};

// What is dragged onto the panel from the drawer.
struct DrawerItem {
    enum class Kind { Quote, Picture, Note };
    Kind kind = Kind::Quote;
    std::int64_t id = 0;
};
inline constexpr auto kDrawerMime = "application/x-wainscot-item";

class Canvas : public QWidget {
    Q_OBJECT
public:
    explicit Canvas(PictureProvider& pictures, QWidget* parent = nullptr);
    ~Canvas() override;

    // How a piece would be set if it stood as tried: its marks alone.
    using Preview = std::function<DisplayList(const Piece&)>;
    // The piece in another cell, its picture's place following.
    using Placing = std::function<Piece(const Piece&, const RectMm& cell)>;
    void setHelpers(Preview preview, Placing placing);

    void setContent(CanvasContent content);
    void clearContent();
    void refreshPictures(); // some that were loading are there now
    [[nodiscard]] const CanvasContent& content() const { return m_content; }
    [[nodiscard]] const CanvasPiece* find(PieceId id) const;

    void takeInHand(PieceId id); // an invalid id lets go
    [[nodiscard]] PieceId inHand() const { return m_hand; }
    // Shows a piece as tried (a caption being typed) until the next content or nothing is tried.
    void tryPiece(const std::optional<Piece>& piece);

    // The room the whole panel is fitted into; the stage keeps some for the note.
    void setFitRoom(const QRectF& room);
    void fitWhole();
    void zoomBy(double factor);
    void zoomToTrueSize(); // one millimetre on screen is one millimetre on paper
    [[nodiscard]] bool isFitted() const { return m_fitted; }
    [[nodiscard]] const ViewMap& view() const { return m_view; }
    [[nodiscard]] QRectF panelRect() const; // px
    [[nodiscard]] QRectF pieceRect(PieceId id) const; // px, as shown now

    void setCropping(bool on); // the picture in hand moves inside its frame
    [[nodiscard]] bool isCropping() const { return m_mode == Mode::Crop; }
    void lift(); // the piece in hand moves by arrow keys until it is set down
    [[nodiscard]] bool isLifted() const { return m_mode == Mode::Lift; }
    void setDown();
    void putBack(); // ends whatever is being tried
    [[nodiscard]] bool isBusy() const { return m_mode != Mode::Idle; }

    // For tests and measurement: marks painted and pixels asked to repaint since the last call.
    struct Work {
        qint64 pixels = 0;
        int staticLayers = 0;
    };
    [[nodiscard]] Work takeWork();

Q_SIGNALS:
    void taken(wainscot::PieceId id); // chosen by mouse or keys
    void placed(wainscot::PieceId id, const wainscot::RectMm& cell);
    void framed(wainscot::PieceId id, const wainscot::Framing& framing);
    void writingAsked(wainscot::PieceId id);
    void dropped(wainscot::ui::DrawerItem item, const wainscot::RectMm& cell);
    void trying(const wainscot::RectMm& cell); // while something is moved or resized
    void viewChanged();
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
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    enum class Mode { Idle, Pressed, Move, Resize, Crop, CropDrag, Lift, Pan };

    [[nodiscard]] const CanvasPiece* pieceAt(QPointF at) const;
    [[nodiscard]] Qt::Edges edgesAt(QPointF at) const;
    void setMode(Mode mode);
    void beginTrying();
    void showTrial(const Piece& piece);
    void moveTrialTo(QPointF at);
    void resizeTrialTo(QPointF at);
    void cropTrialTo(QPointF at);
    void zoomCrop(double factor);
    void finishTrial();
    void chooseNext(int step);
    bool liftedKey(QKeyEvent* event);
    bool cropKey(QKeyEvent* event);
    bool chosenKey(QKeyEvent* event);
    void updateCursor(QPointF at);
    void viewMoved();

    [[nodiscard]] QRect dirtyRectOf(const RectMm& cell) const;
    void updateTrialRegion(const QRect& before);
    void paintPaper(QPainter& painter, const QRect& dirty);
    void paintMarks(QPainter& painter, const DisplayList& list, const QRect& dirty);
    const QPixmap& staticLayer();
    void dropStaticLayer();
    void paintTrial(QPainter& painter, const QRect& dirty);
    void paintMovedMarks(QPainter& painter);
    void paintHand(QPainter& painter, const RectMm& cell) const;
    void paintSigns(QPainter& painter) const;
    void paintGoal(QPainter& painter, const RectMm& cell, bool words, const QRect& dirty) const;

    PictureProvider& m_pictures;
    Preview m_preview;
    Placing m_placing;
    CanvasContent m_content;
    bool m_hasContent = false;
    ViewMap m_view;
    QRectF m_fitRoom;
    bool m_fitted = true;

    PieceId m_hand;
    Mode m_mode = Mode::Idle;
    QPointF m_pressedAt;
    Qt::Edges m_edges;
    Piece m_before; // the piece in hand when trying began
    std::optional<Piece> m_trial;
    DisplayList m_trialList;
    QPointF m_follow; // of the pointer while moving, px from where the piece stands
    QPixmap m_trialPixmap; // the moved piece, painted once
    mutable QPixmap m_goalPixmap; // where it would go, likewise
    std::optional<RectMm> m_dropCell;
    QPixmap m_static; // the panel without the piece being tried
    Work m_work;
};

} // namespace wainscot::ui

Q_DECLARE_METATYPE(wainscot::PieceId)
