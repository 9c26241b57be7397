// What can be done with the panel in front of one: every action of Compose as one edit.
#pragma once

#include <QObject>
#include <QTimer>

#include <map>
#include <optional>

#include "app/jobs/alternatives_job.h"
#include "app/jobs/drawn_display.h"
#include "app/jobs/kinds_job.h"
#include "app/ui/canvas/canvas.h"
#include "app/ui/compose/live_page.h"
#include "app/ui/session/align.h"
#include "app/ui/session/mends.h"
#include "app/ui/session/session.h"
#include "app/ui/session/work.h"
#include "core/base/finding.h"

class QMimeData;

namespace wainscot::ui {

using PieceIds = std::vector<PieceId>;

// A piece that is dragged over the panel and not in the book yet.
inline constexpr PieceId kFreshPiece{std::numeric_limits<std::int64_t>::max()};

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
    void checkAgain(); // soon, after limits or paper were set otherwise
    // Why something may not be shown on this display; nothing = it may.
    [[nodiscard]] std::optional<QString> refusal(const DrawerItem& item) const;
    [[nodiscard]] std::optional<QString> refusal(const Piece& piece) const;

    // Trying, without touching the book (desk_trying.cpp).
    [[nodiscard]] Piece placedAt(const Piece& piece, const RectMm& cell) const;
    [[nodiscard]] DisplayList preview(const Piece& piece) const;
    // Names of the pieces a cell would lie over.
    [[nodiscard]] QStringList underneath(PieceId except, const RectMm& cell) const;
    [[nodiscard]] SizeMm roomFor(const Incoming& incoming) const;
    // Works out what the panel would become; `livePage` answers when it is known.
    void tryCells(const std::vector<PlacedCell>& cells);
    void tryIncoming(const Incoming& incoming, const RectMm& cell);
    [[nodiscard]] LivePage& livePage() { return m_live; }
    [[nodiscard]] DisplayList typesetAs(const std::vector<Piece>& pieces) const;
    // Why a piece stands where it does and is as large as it is: sentences, the weightiest first.
    [[nodiscard]] QStringList whyHere(PieceId id) const;
    // "Noor: one row down." for every piece that would stand elsewhere, in reading order.
    [[nodiscard]] QStringList movesTo(const std::vector<Piece>& pieces) const;

    // Pieces (desk_pieces.cpp). What a person places is pinned where it was put; what then lies
    // under it makes room.
    void place(const std::vector<PlacedCell>& cells, const QString& label = {});
    void nudge(const std::vector<PlacedCell>& cells); // several in a row are one step of undo
    void resizeBy(PieceId id, int step);
    void align(const PieceIds& ids, Line line);
    void spread(const PieceIds& ids, Qt::Orientation along);
    void frame(PieceId id, const Framing& framing);
    // What was typed into a piece. Of a child's words a part may be shown, with its traces. Words
    // that no longer fit their place make themselves room, in the same step.
    void write(PieceId id, const QString& text);
    [[nodiscard]] bool isWritable(const Piece& piece) const;
    [[nodiscard]] Piece asWritten(const Piece& piece, const QString& typed) const;
    [[nodiscard]] QString fullWords(const Piece& piece) const; // of a quote, as they were said
    void setPinned(const PieceIds& ids, bool pinned);
    void takeOff(const PieceIds& ids);
    void swap(PieceId one, PieceId other);
    PieceIds duplicate(const PieceIds& ids);
    void carry(const PieceIds& ids, PanelId to);

    // Pictures, on every panel that shows them (desk_frame.cpp).
    void turnPicture(PictureId id, int quarters); // clockwise
    void straighten(PictureId id, const std::optional<Corners>& corners, int gesture);
    void coverParts(PictureId id, const std::vector<CoveredRegion>& covers, int gesture);
    void evenLight(PictureId id, bool even);
    void markMustStay(PictureId id, const std::optional<RectFraction>& part, int gesture);
    // The children in a picture named in its caption, or left out again; the caption keeps only
    // where they go, and permission says each time in which form.
    void nameInCaption(PieceId id);
    [[nodiscard]] QString namesFor(const Piece& piece) const; // on this wall; empty = nobody
    [[nodiscard]] double pixelsAnInch(const Piece& piece) const; // on paper; 0 for no picture
    // "On paper 214 pixels an inch. Sharp. Needed from 1.2 m: 73 (...)"
    [[nodiscard]] QString sharpnessInWords(const Piece& piece) const;

    // What comes from outside (desk_items.cpp).
    PieceId add(const DrawerItem& item, const std::optional<RectMm>& cell);
    void addTo(PanelId panel, const DrawerItem& item);
    void take(const Incoming& incoming, const std::optional<RectMm>& cell);
    [[nodiscard]] QMimeData* copyOf(const PieceIds& ids) const;
    void star(DrawerItem item); // gives one, or takes it away
    void putFirst(PictureId id); // of the series of nearly equal photos: it alone has a star
    void setPeople(PictureId id, const People& people);

    // Arranging (desk_arrange.cpp).
    // `edited` make themselves room; without any the panel is arranged anew.
    void arrangeAgain(int gesture = 0, const PieceIds& edited = {});
    void arrangeOnly(const PieceIds& ids); // the others stay where they are
    void arrangeDisplay(); // every panel that is not locked, each with its own pieces
    void arrangePanels(const std::vector<PanelId>& which, const QString& label, int gesture);

    // Wishes (desk_wishes.cpp).
    [[nodiscard]] bool areTogether(const PieceIds& ids) const;
    void setTogether(const PieceIds& ids, bool together);
    void startPanelHere(PieceId id); // it and all that is read after it
    [[nodiscard]] bool isLocked() const; // the panel one is at
    void setLocked(bool locked);

    // Mends (desk_mends.cpp), of the panel one is at: one step of undo each. What somebody has to
    // decide or to write stays as it is.
    [[nodiscard]] Mend mendOf(const Finding& finding) const;
    void mend(const Finding& finding);
    // Why a finding was left as it is; empty = it was not. An empty reason takes it back.
    [[nodiscard]] QString reasonLeft(const Finding& finding) const;
    void leave(const Finding& finding, const QString& why);

    // Asks for up to three other ways; `waysFound` answers.
    void findOtherWays();
    void takeWay(const std::vector<Piece>& way);
    void propose(); // a first panel, or a display that is empty
    // What would suit better than what was proposed, until something is changed by hand.
    [[nodiscard]] const std::vector<Advice>& advice() const { return m_advice; }
    void takeAdvice(const Advice& advice); // arranges anew so, in one step
    void leaveAdvice();
    // The panel one is at as a kind of panel of one's own, by that name.
    void keepAsTemplate(const QString& name);
    // Tries every kind of panel on what there is; `kindsFound` answers.
    void findKinds();
    void takeKind(const KindOfPanel& kind);

    // Panels and the display (desk_display.cpp).
    void beginEmpty(); // a display with one empty panel, where there is none
    void addPanelAfter();
    void duplicatePanel(PanelId panel);
    void movePanel(PanelId panel, int number); // 1-based
    void removePanel(PanelId panel);
    void renamePanel(PanelId panel, const QString& title);
    void bringBack(const Book& then, const QString& step);
    void setAudience(Audience audience);
    void setPanelSize(SizeMm size);
    void setReadingDistance(Mm distance);
    void changeDisplay(const Display& changed, const QString& label, bool rearrange);

Q_SIGNALS:
    void drawnAgain(); // content and findings
    void announced(const QString& sentence);
    void waysFound(const std::vector<wainscot::OtherWay>& ways);
    void advised(); // there is advice, or none any more
    void kindsFound(const std::vector<wainscot::KindOfPanel>& kinds);
    void brought(const std::vector<wainscot::PieceId>& pieces); // new ones, to be taken in hand

private:
    void redraw();
    void askFindings();
    [[nodiscard]] ArrangeJob jobForDisplay() const; // the one one is at, or a first one
    void startProposal(const ArrangeJob& job, const QString& label);
    void takeProposal(ArrangeOutcome& outcome, const QString& label);
    void makeRoom(const PieceIds& placed, int gesture);
    [[nodiscard]] bool holdsItsWords(PieceId id) const;
    void takeOver(const std::vector<Piece>& arranged, const QString& label, int gesture);
    void ask(std::vector<Piece> tried, const PieceIds& inHand);
    [[nodiscard]] const PermissionRules* rules() const;
    [[nodiscard]] std::shared_ptr<const PanelMeasurer> measurerFor(const ClearedPanel& panel) const;
    [[nodiscard]] ClearedPanel clearedAs(
        std::vector<Piece> pieces) const; // waiting ones hold a place
    [[nodiscard]] std::vector<Piece> asTried(const std::vector<PlacedCell>& cells) const;
    [[nodiscard]] std::optional<Piece> pieceFor(const DrawerItem& item) const;
    [[nodiscard]] Piece pieceForText(const QString& text) const;
    [[nodiscard]] std::optional<Piece> likely(const Incoming& incoming) const;
    [[nodiscard]] SizeMm roomFor(const Piece& piece) const;
    [[nodiscard]] RectMm bestPlace(const Piece& piece, const std::vector<RectMm>& taken = {}) const;
    [[nodiscard]] RectMm freePlace(
        const Grid& grid, SizeMm room, const std::vector<RectMm>& taken) const;
    [[nodiscard]] Mm captionBlock(const Piece& piece, Mm width) const;
    void treat(PictureId id, const Treatment& treatment, const QString& label, int gesture);
    PieceId put(Piece piece,
        const std::optional<RectMm>& cell,
        int gesture,
        const QString& label = {}); // "Onto the panel: ..."
    // The cell with as many rows as the piece's words need at its width.
    [[nodiscard]] GridCell holdingWords(PieceId id, GridCell cell) const;
    [[nodiscard]] bool isMendedBy(const Finding& finding, const Piece& tried) const;
    void mendPlace(PieceId id, const Finding& finding, const QString& does);
    void mendFrame(PieceId id, const Finding& finding, const QString& does);
    void mendSecondPicture(const Finding& finding, const QString& does);
    void mendOverlap(PieceId id, const QString& does);
    void mendVoices(int step, const QString& does);
    void mendLook(PieceId id, bool letters, const QString& does);
    void mendWithText(PieceKind kind, const QString& text, const QString& does);
    void mendVoice(const Finding& finding, const QString& does);
    void mendWords(PieceId id, const QString& does);
    void mendHanging(const QString& does);
    void takePictures(const QStringList& files, const std::optional<RectMm>& cell);
    void takeImage(const QImage& image, const std::optional<RectMm>& cell);
    void takePieces(const QByteArray& bytes, const std::optional<RectMm>& cell);
    void takeText(const QString& text, const std::optional<RectMm>& cell);
    [[nodiscard]] bool takeWords(const QString& text, const std::optional<RectMm>& cell);
    [[nodiscard]] std::vector<Piece> copies(const PieceIds& ids) const;

    Session& m_session;
    Work& m_work;
    std::optional<DrawnDisplay> m_drawn;
    mutable std::optional<PermissionRules> m_rules; // of the display one is at, made when asked for
    // Text measured for the pieces on the panel; cells do not matter to it.
    mutable std::shared_ptr<const PanelMeasurer> m_measurer;
    mutable std::vector<ClearedPiece> m_measured;
    LivePage m_live;
    std::vector<Finding> m_findings;
    QTimer m_checkSoon;
    QThreadPool m_checker;
    std::vector<Advice> m_advice;
    int m_round = 0; // counts contents, so that late findings for an earlier one are dropped
    int m_nudging = 0; // gesture of the present row of nudges
    PieceIds m_nudged;
    bool m_ownEdit = false; // the present change is a nudge
};

} // namespace wainscot::ui
