// What can be done with the panel in front of one: every action of Compose as one edit.
#pragma once

#include <QObject>
#include <QTimer>

#include <map>
#include <optional>

#include "app/jobs/drawn_display.h"
#include "app/ui/canvas/canvas.h"
#include "app/ui/session/session.h"
#include "app/ui/session/work.h"
#include "core/base/finding.h"

namespace wainscot::ui {

class Desk : public QObject {
    Q_OBJECT
public:
    Desk(Session& session, Work& work, QObject* parent = nullptr);

    // The display typeset as its audience may see it; nothing when there is none.
    [[nodiscard]] const DrawnDisplay* drawn() const { return m_drawn ? &*m_drawn : nullptr; }
    [[nodiscard]] const DrawnPanel* drawnPanel() const; // the panel one is at
    [[nodiscard]] std::optional<CanvasContent> content() const;
    [[nodiscard]] const Piece* piece(PieceId id) const;
    [[nodiscard]] const std::vector<Finding>& findings() const { return m_findings; }
    [[nodiscard]] std::vector<Finding> findingsOn(PieceId id) const; // gravest first

    // Trying, without touching the book.
    [[nodiscard]] Piece placedAt(const Piece& piece, const RectMm& cell) const;
    [[nodiscard]] DisplayList preview(const Piece& piece) const;
    // Names of the pieces a cell would lie over.
    [[nodiscard]] QStringList underneath(PieceId except, const RectMm& cell) const;

    // Doing. What a person places is pinned where it was put; what then lies under it makes room.
    void place(PieceId id, const RectMm& cell, const QString& label = {});
    void resizeBy(PieceId id, int step);
    void frame(PieceId id, const Framing& framing);
    void write(PieceId id, const QString& text, int gesture);
    void setPinned(PieceId id, bool pinned);
    void takeOff(PieceId id);
    void swap(PieceId one, PieceId other);
    PieceId add(const DrawerItem& item, const std::optional<RectMm>& cell);
    void arrangeAgain(int gesture = 0);
    void propose(); // a first panel, or a display that is empty
    void beginEmpty(); // a display with one empty panel, where there is none
    void addPanelAfter();
    void setAudience(Audience audience);
    void setPanelSize(SizeMm size);
    void setReadingDistance(Mm distance);

    // Why something may not be shown on this display; nothing = it may.
    [[nodiscard]] std::optional<QString> refusal(const DrawerItem& item) const;

Q_SIGNALS:
    void drawnAgain(); // content and findings
    void announced(const QString& sentence);

private:
    void redraw();
    void askFindings();
    void makeRoom(PieceId placed, int gesture);
    [[nodiscard]] std::optional<Piece> pieceFor(const DrawerItem& item) const;
    [[nodiscard]] RectMm bestPlace(const Piece& piece) const;
    [[nodiscard]] Mm captionBlock(const Piece& piece, Mm width) const;

    Session& m_session;
    Work& m_work;
    std::optional<DrawnDisplay> m_drawn;
    std::vector<Finding> m_findings;
    QTimer m_checkSoon;
    QThreadPool m_checker;
    int m_round = 0; // counts contents, so that late findings for an earlier one are dropped
};

} // namespace wainscot::ui
