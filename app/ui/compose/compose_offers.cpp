// Panels to choose from: other ways to arrange this one, other kinds, other colours and letters.
#include "app/ui/compose/compose_place.h"

#include <QInputDialog>

#include "app/ui/compose/panel_picture.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

void ComposePlace::offer(const QString& heading, const QString& sentence, std::vector<Offer> offers)
{
    const Display* display = m_session.display();
    const SizeMm size = display != nullptr ? display->panelSize : Display().panelSize;
    std::vector<PanelChoice::Way> shown;
    shown.reserve(offers.size());
    for (const Offer& one : offers)
        shown.push_back({one.name, one.about, {}});
    m_offers = std::move(offers);
    m_offersPainted = 0;
    m_stage->stepBack().close();
    m_stage->choice().open(heading, sentence, shown, size.height / size.width);
    m_paintOffers.start();
}

// One at a time, so that a key is never waited for.
void ComposePlace::paintNextOffer()
{
    if (!m_stage->choice().isVisible() || m_offersPainted >= m_offers.size())
        return;
    m_stage->choice().setPicture(int(m_offersPainted), m_offers[m_offersPainted].paint());
    ++m_offersPainted;
    m_paintOffers.start();
}

ComposePlace::Offer ComposePlace::offerOf(
    const QString& name, bool isNow, const std::function<Edit()>& edit, bool rearrange)
{
    const PanelId panel = m_session.panel()->id;
    return {name,
        isNow ? tr("as it is now") : QString(),
        [this, edit, panel] {
            Book then = m_session.book();
            apply(edit(), then);
            return panelPicture(then, panel, kOfferWidthPx, m_shelf);
        },
        [this, edit, rearrange] {
            Edit taken = edit();
            taken.gesture = m_session.newGesture();
            const int gesture = taken.gesture;
            if (!taken.isEmpty() && m_session.perform(std::move(taken)) && rearrange)
                m_desk.arrangeAgain(gesture);
        }};
}

void ComposePlace::showWays(const std::vector<OtherWay>& ways)
{
    if (m_session.display() == nullptr || canvas().isBusy() || isWriting())
        return;
    static const QStringList names{tr("One way"), tr("Another way"), tr("A third way")};
    std::vector<Offer> offers;
    for (const OtherWay& way : ways) {
        const int moves = int(m_desk.movesTo(way.pieces).size());
        offers.push_back({names.value(int(offers.size())),
            counted(moves, tr("1 piece stands elsewhere"), tr("%1 pieces stand elsewhere")),
            [this, list = way.drawn.list] {
                return panelPicture(list, kOfferWidthPx, devicePixelRatioF(), m_shelf);
            },
            [this, pieces = way.pieces] { m_desk.takeWay(pieces); }});
    }
    offer(ways.size() == 3 ? tr("Three other ways") : tr("Other ways"),
        tr("The same pieces, arranged differently. What is pinned stays."),
        std::move(offers));
}

void ComposePlace::showKinds(const std::vector<KindOfPanel>& kinds)
{
    if (canvas().isBusy() || isWriting())
        return;
    std::vector<Offer> offers;
    for (const KindOfPanel& kind : kinds) {
        const QString panels = counted(kind.outcome.panels, tr("1 panel"), tr("%1 panels"));
        offers.push_back({kind.name,
            tr("%1, words of %2")
                .arg(panels, counted(int(kind.children), tr("1 child"), tr("%1 children"))),
            [this, list = kind.list] {
                return panelPicture(list, kOfferWidthPx, devicePixelRatioF(), m_shelf);
            },
            [this, kind] { m_desk.takeKind(kind); }});
    }
    offer(tr("Kinds of panel"),
        tr("Proposed anew from what may be shown. What is pinned stays. It can be undone."),
        std::move(offers));
}

void ComposePlace::askTemplateName()
{
    const QString name = QInputDialog::getText(this,
        tr("A kind of your own"),
        tr("Its name. It keeps places and sizes, none of the words and pictures."));
    if (!name.simplified().isEmpty())
        m_desk.keepAsTemplate(name);
}

void ComposePlace::chooseColours(bool ofPiece)
{
    const Display* display = m_session.display();
    const Piece* piece = m_desk.piece(canvas().inHand());
    if (display == nullptr || m_session.panel() == nullptr || (ofPiece && piece == nullptr))
        return;
    std::vector<Offer> offers;
    for (const Palette& palette : palettes()) {
        const QString own = ofPiece ? piece->palette : display->palette;
        const bool isNow =
            own == palette.name || (own.isEmpty() && display->palette == palette.name);
        offers.push_back(offerOf(
            palette.name,
            isNow,
            [this, ofPiece, name = palette.name, id = canvas().inHand()] {
                return ofPiece ? paletteEdit(m_session.book(), id, name)
                               : paletteEdit(m_session.book(), m_session.display()->id, name);
            },
            false));
    }
    offer(ofPiece ? tr("Colours of this piece") : tr("Colours"),
        tr("Each keeps words at seven to one against paper and tints, or more."),
        std::move(offers));
}

void ComposePlace::chooseLetters(bool ofPiece)
{
    const Display* display = m_session.display();
    const Piece* piece = m_desk.piece(canvas().inHand());
    if (display == nullptr || m_session.panel() == nullptr || (ofPiece && piece == nullptr))
        return;
    std::vector<Offer> offers;
    for (const Pairing& pairing : pairings()) {
        const QString own = ofPiece ? piece->pairing : display->pairing;
        const bool isNow =
            own == pairing.name || (own.isEmpty() && display->pairing == pairing.name);
        Offer one = offerOf(
            pairing.name,
            isNow,
            [this, ofPiece, name = pairing.name, id = canvas().inHand()] {
                return ofPiece ? pairingEdit(m_session.book(), id, name)
                               : pairingEdit(m_session.book(), m_session.display()->id, name);
            },
            true);
        if (!isNow)
            one.about = pairing.use;
        offers.push_back(std::move(one));
    }
    offer(ofPiece ? tr("Letters of this piece") : tr("Letters"),
        tr("One face for children, another for adults. The panel is arranged for its widths."),
        std::move(offers));
}

} // namespace wainscot::ui
