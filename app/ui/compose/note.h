// The note beside the panel: what can be done with the piece in hand, what was found on it first.
#pragma once

#include <QVBoxLayout>
#include <QWidget>

#include "app/ui/compose/desk.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

enum class PieceAction {
    Bigger,
    Smaller,
    Crop,
    Treat, // turn, straighten, cover: on the table
    Swap,
    Pin,
    TakeOff,
    Write,
    AllWords, // of a child, after a part of them was shown
    Why,
    OnceMore,
    People, // who is in the picture
    Names, // of who is in it, in the caption
    AlignLeft,
    AlignCentre,
    AlignRight,
    AlignTop,
    AlignMiddle,
    AlignFoot,
    SpreadAcross,
    SpreadDown,
    ArrangeThese,
    Together, // or no longer
    StartPanel,
};

class Note : public Card {
    Q_OBJECT
public:
    explicit Note(Desk& desk, QWidget* parent = nullptr);
    void showPiece(PieceId id, bool cropping, bool swapping);
    void setWhyShown(bool shown) { m_whyShown = shown; } // with the next piece that is shown
    [[nodiscard]] bool isWhyShown() const { return m_whyShown; }
    void showSeveral(const PieceIds& ids);
    // When nothing is in the hand: what would suit better than what was proposed.
    void showAdvice(const std::vector<Advice>& advice);
    [[nodiscard]] bool showsAdvice() const { return m_advises; }
    // While something is in the hand: what letting go would do, and then what would move for it.
    void showTrial(const QString& heading, const QString& sentence);
    void showMoves(const QStringList& moves);
    [[nodiscard]] int heightFor(int width) const;
    void setScrolls(bool scrolls); // when there is less room than it needs
    [[nodiscard]] QWidget* firstStop() const { return m_rover->stop(); }

Q_SIGNALS:
    void asked(wainscot::ui::PieceAction action);
    void mendAsked(const wainscot::Finding& finding);
    void leaveAsked(const wainscot::Finding& finding);
    void adviceTaken(const wainscot::Advice& advice);
    void adviceLeft();

private:
    void restart();
    void addHead(const Piece& piece, const QString& second);
    void addFindings(const std::vector<Finding>& findings);
    void addMends(const Finding& finding, QVBoxLayout& column);
    void addActions(const Piece& piece, bool cropping, bool swapping);
    void addFacts(const Piece& piece);
    Button* addAction(PieceAction action, Icon icon, const QString& text, const QString& key);

    Desk& m_desk;
    QWidget* m_content = nullptr;
    QVBoxLayout* m_column = nullptr;
    QScrollArea* m_area = nullptr;
    Rover* m_rover = nullptr;
    QVector<QWidget*> m_actions;
    bool m_whyShown = false;
    bool m_advises = false;
    QString m_trialHeading; // empty unless something is in the hand
};

} // namespace wainscot::ui
