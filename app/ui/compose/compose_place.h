// Compose: bring words and pictures onto panels.
#pragma once

#include <QAction>
#include <QWidget>

#include "app/jobs/display_past.h"
#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/compose/drawer.h"
#include "app/ui/compose/stage.h"
#include "app/ui/session/display_history.h"

namespace wainscot::ui {

class ComposePlace : public QWidget {
    Q_OBJECT
public:
    ComposePlace(Session& session, Work& work, QWidget* parent = nullptr);

    [[nodiscard]] Desk& desk() { return m_desk; }
    [[nodiscard]] Canvas& canvas() { return m_stage->canvas(); }
    [[nodiscard]] Stage& stage() { return *m_stage; }
    [[nodiscard]] Drawer& drawer() { return *m_drawer; }
    [[nodiscard]] PictureShelf& shelf() { return m_shelf; }

    // Everything that can be done here, in the order of the menus; each with its key.
    struct Actions {
        QAction* write = nullptr;
        QAction* allWords = nullptr;
        QAction* bigger = nullptr;
        QAction* smaller = nullptr;
        QAction* crop = nullptr;
        QAction* treat = nullptr;
        QAction* swap = nullptr;
        QAction* pin = nullptr;
        QAction* takeOff = nullptr;
        QAction* lift = nullptr;
        QAction* onceMore = nullptr;
        QAction* people = nullptr;
        QAction* names = nullptr;
        QAction* why = nullptr;
        QVector<QAction*> lines; // align and spread, in the order of PieceAction
        QAction* arrangeThese = nullptr;
        QAction* together = nullptr;
        QAction* startPanel = nullptr;
        QAction* all = nullptr;
        QAction* copy = nullptr;
        QAction* cut = nullptr;
        QAction* paste = nullptr;
        QAction* toEarlier = nullptr;
        QAction* toLater = nullptr;
        QAction* arrangeAgain = nullptr;
        QAction* proposeAnew = nullptr;
        QAction* arrangeDisplay = nullptr;
        QAction* otherWays = nullptr;
        QAction* addPanel = nullptr;
        QAction* namePanel = nullptr;
        QAction* panelOnceMore = nullptr;
        QAction* takeDownPanel = nullptr;
        QAction* lockPanel = nullptr;
        QAction* history = nullptr;
        QAction* kinds = nullptr;
        QAction* keepAsKind = nullptr;
        QAction* colours = nullptr;
        QAction* letters = nullptr;
        QAction* pieceColours = nullptr;
        QAction* pieceLetters = nullptr;
        QAction* nextFinding = nullptr;
        QAction* earlierFinding = nullptr;
        QAction* mend = nullptr;
        QAction* drawer = nullptr;
        QAction* find = nullptr;
        QAction* whole = nullptr;
        QAction* nearer = nullptr;
        QAction* further = nullptr;
        QAction* trueSize = nullptr;
        QAction* stepBack = nullptr;
        QAction* rulers = nullptr;
        QAction* inches = nullptr;
    };
    [[nodiscard]] const Actions& actions() const { return m_actions; }

    [[nodiscard]] bool isWriting() const;
    void endWriting(bool keep);
    void take(DrawerItem item); // onto the panel at the best place
    void goToFinding(int step);
    // With one press what can be; else the piece comes into the hand, with the caret in its words
    // where they have to be written.
    void mend(const Finding& finding);
    void leave(const Finding& finding); // asks why
    [[nodiscard]] QWidget* firstStop() const; // the panel, or the ways to begin one
    // Regions for F6, in order; those that are hidden are left out.
    [[nodiscard]] QVector<QWidget*> regions() const;

Q_SIGNALS:
    void stateChanged(); // what the sill says may be another
    void announced(const QString& sentence);
    void gatherAsked();
    void firstStepsAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeTaskLine();
    void makeActions();
    void makePieceActions();
    void makePanelActions();
    void makeFindingActions();
    void mendWhatIsInHand();
    void makeViewActions();
    QAction* action(const QString& text,
        const QKeySequence& key,
        std::function<void()> does,
        bool onlyOnPanel = false);
    void connectCanvas();
    void connectOffers();
    void connectStage();
    [[nodiscard]] bool mayCome(const Incoming& incoming);
    void sayAttempt(const Attempt& attempt);
    void workOutAttempt(const Attempt& attempt);
    void refresh();
    void refreshTaskLine();
    void refreshNote();
    void beginWriting(PieceId id, QPointF at); // where the caret goes, px; null = all is chosen
    void perform(PieceAction action);
    bool performOnSeveral(PieceAction action, const PieceIds& held);
    void askPeople(PictureId id);
    void showMenu(QPoint global);
    void copyHeld(bool cut);
    void paste();
    void carryBy(int step); // what is in hand to the panel before or after
    void setRulers();
    void stepBack(); // see the panel from where people stand
    void showHistory();
    void offerHistory(const std::vector<DisplayStep>& steps, const std::vector<DisplayThen>& past);
    void showWays(const std::vector<OtherWay>& ways);
    void showKinds(const std::vector<KindOfPanel>& kinds);
    void askTemplateName();
    void chooseColours(bool ofPiece);
    void chooseLetters(bool ofPiece);
    // One of several things to become, shown as the panel it would be.
    struct Offer {
        QString name;
        QString about;
        std::function<QPixmap()> paint; // when there is a moment
        std::function<void()> take;
    };
    [[nodiscard]] Offer offerOf(
        const QString& name, bool isNow, const std::function<Edit()>& edit, bool rearrange);
    [[nodiscard]] Offer offerOfThen(
        const QString& name, const QString& about, const std::shared_ptr<const Book>& then);
    void offer(const QString& heading, const QString& sentence, std::vector<Offer> offers);
    void paintNextOffer();
    void showWhereItHangs(DrawerItem item);
    void swapWith(PieceId other);
    void chooseAudience();
    void chooseSize();
    void chooseDistance();
    void emptyPanel(DrawerItem::Kind kind);

    Session& m_session;
    Work& m_work;
    PictureShelf m_shelf;
    Desk m_desk;
    Drawer* m_drawer = nullptr;
    QWidget* m_rule = nullptr;
    Stage* m_stage = nullptr;
    QWidget* m_taskLine = nullptr;
    Button* m_audience = nullptr;
    Button* m_size = nullptr;
    Button* m_distance = nullptr;
    Button* m_again = nullptr;
    Button* m_otherWays = nullptr;
    Button* m_zoom = nullptr;
    Actions m_actions;
    PieceId m_swapping; // the piece that waits for another to trade places with
    Piece m_writing; // as it was before
    std::vector<Offer> m_offers; // while they are shown
    std::size_t m_offersPainted = 0;
    QTimer m_paintOffers;
    bool m_refreshLater = false; // something came while a piece was in the hand
    bool m_drawerWanted = true;
};

} // namespace wainscot::ui
