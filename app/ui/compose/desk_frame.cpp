// Pictures in their frames: turned, straightened, evened, covered; and what the paper gets of them.
#include "app/ui/compose/desk.h"

#include "app/jobs/kept_limits.h"
#include "app/ui/compose/drawer_rows.h"
#include "app/ui/session/picture_edits.h"
#include "app/ui/session/piece_edits.h"
#include "layout/check/limits.h"
#include "layout/check/rules.h"

namespace wainscot::ui {

namespace {

bool holds(const RectFraction& outer, const RectFraction& inner)
{
    constexpr double hair = 1e-9;
    return inner.x >= outer.x - hair && inner.y >= outer.y - hair
        && inner.x + inner.width <= outer.x + outer.width + hair
        && inner.y + inner.height <= outer.y + outer.height + hair;
}

} // namespace

void Desk::turnPicture(PictureId id, int quarters)
{
    const Picture* own = m_session.book().pictures.find(id);
    if (own == nullptr)
        return;
    Picture turned = *own;
    for (int i = 0; i < quarters; ++i)
        turned = quarterTurned(turned);
    m_session.perform(changePicture(m_session.book(), turned, tr("Turned picture")));
}

void Desk::treat(PictureId id, const Treatment& treatment, const QString& label, int gesture)
{
    const Picture* own = m_session.book().pictures.find(id);
    if (own == nullptr)
        return;
    Edit edit = changePicture(m_session.book(), treatedAs(*own, treatment), label, gesture);
    if (!edit.isEmpty())
        m_session.perform(std::move(edit));
}

void Desk::straighten(PictureId id, const std::optional<Corners>& corners, int gesture)
{
    const Picture* own = m_session.book().pictures.find(id);
    if (own == nullptr || (corners && !canStraighten(*corners, uprightSize(*own))))
        return;
    Treatment treatment = own->treatment;
    treatment.straightening.reset();
    if (corners)
        treatment.straightening = Straightening{*corners, uprightSize(*own)};
    treat(id, treatment, corners ? tr("Straightened picture") : tr("Picture as it lay"), gesture);
}

void Desk::coverParts(PictureId id, const std::vector<CoveredRegion>& covers, int gesture)
{
    const Picture* own = m_session.book().pictures.find(id);
    if (own == nullptr)
        return;
    const std::size_t before = own->treatment.covered.size();
    Treatment treatment = own->treatment;
    treatment.covered = covers;
    treat(id,
        treatment,
        covers.size() > before       ? tr("Covered a part")
            : covers.size() < before ? tr("Took a cover off")
                                     : tr("Changed a cover"),
        gesture);
}

void Desk::evenLight(PictureId id, bool even)
{
    const Picture* own = m_session.book().pictures.find(id);
    if (own == nullptr)
        return;
    Treatment treatment = own->treatment;
    treatment.evenLight = even;
    treat(id, treatment, even ? tr("Evened out the light") : tr("Light as it was"), 0);
}

// Photos that would cut the part move in their frames until they show it, as far as they can.
void Desk::markMustStay(PictureId id, const std::optional<RectFraction>& part, int gesture)
{
    const Book& book = m_session.book();
    const Picture* own = book.pictures.find(id);
    if (own == nullptr)
        return;
    EditBuilder builder(
        book, part ? tr("Marked what must stay") : tr("Nothing must stay"), gesture);
    Picture marked = *own;
    marked.mustStay = part;
    builder.put(marked);
    for (const auto& [pieceId, piece] : book.pieces.rows()) {
        if (!part || piece.kind != PieceKind::Photo || piece.picture != id
            || piece.picturePlace.isEmpty())
            continue;
        const double shape = piece.picturePlace.width / piece.picturePlace.height;
        if (holds(visiblePart(own->size, shape, piece.framing), *part))
            continue;
        Piece moved = piece;
        moved.framing.focus = {part->x + part->width / 2, part->y + part->height / 2};
        builder.put(moved);
    }
    Edit edit = builder.take();
    if (!edit.isEmpty())
        m_session.perform(std::move(edit));
}

void Desk::putFirst(PictureId id)
{
    EditBuilder builder(m_session.book(), tr("First of its series"));
    for (const Picture* one : seriesOf(m_session.book(), id)) {
        Picture changed = *one;
        changed.stars = one->id == id ? std::max(1, one->stars) : 0;
        builder.put(changed);
    }
    Edit edit = builder.take();
    if (!edit.isEmpty())
        m_session.perform(std::move(edit));
}

QString Desk::namesFor(const Piece& piece) const
{
    const Picture* own = m_session.book().pictures.find(piece.picture);
    const PermissionRules* allowed = rules();
    return own != nullptr && allowed != nullptr ? allowed->namesInPicture(*own) : QString();
}

void Desk::nameInCaption(PieceId id)
{
    const Piece* own = piece(id);
    if (own == nullptr || !isPicture(own->kind))
        return;
    Piece named = *own;
    const bool leaves = named.text.contains(kNamesHere);
    if (leaves) {
        for (const char* form : {": %1", " %1.", "%1"})
            named.text.remove(QString::fromLatin1(form).arg(kNamesHere));
        named.text = named.text.trimmed();
    } else {
        // "The first line: Wren and Kofi"; behind a whole sentence a short one of its own.
        named.text = named.text.trimmed();
        const bool ended =
            !named.text.isEmpty() && QStringLiteral(".!?").contains(named.text.back());
        named.text += QString::fromLatin1(named.text.isEmpty() ? "%1"
                : ended                                        ? " %1."
                                                               : ": %1")
                          .arg(kNamesHere);
    }
    if (!own->cell.isEmpty())
        named = placedAt(named, own->cell);
    const QString label = leaves ? tr("Left the names out") : tr("Names in the caption");
    m_session.perform(replacePiece(m_session.book(), named, label));
}

double Desk::pixelsAnInch(const Piece& piece) const
{
    const Picture* own = m_session.book().pictures.find(piece.picture);
    const RectMm& place = piece.picturePlace;
    if (own == nullptr || place.isEmpty())
        return 0;
    const bool whole = piece.kind == PieceKind::Work || own->kind == PictureKind::Work;
    const RectFraction part =
        whole ? RectFraction() : visiblePart(own->size, place.width / place.height, piece.framing);
    return std::min(own->size.width * part.width / place.width.value(),
               own->size.height * part.height / place.height.value())
        * kMmPerInch;
}

// The limits of the check, with their sources.
QString Desk::sharpnessInWords(const Piece& piece) const
{
    const double ppi = pixelsAnInch(piece);
    if (ppi <= 0 || !m_drawn)
        return {};
    const check::Limits limits = keptLimits();
    const auto& needed = check::limitOf(check::Limit::PictureSharpness);
    const auto& floor = check::limitOf(check::Limit::PictureFloor);
    const double least = limits.of(check::Limit::PictureFloor);
    const double metres = m_drawn->display.readingDistance.value() / 1000 * check::kCloseFactor;
    const double limit = limits.of(check::Limit::PictureSharpness) / metres;
    const QString verdict = ppi < limit * 0.995 ? tr("It will look soft.")
        : ppi < least                           ? tr("Sharp from there, soft from nearby.")
                                                : tr("Sharp.");
    return tr("On paper %1 pixels an inch. %2\nFrom %3 m %4 are needed (%5), from nearby %6 (%7).")
        .arg(qRound(ppi))
        .arg(verdict, QLocale().toString(metres, 'f', 1))
        .arg(qRound(limit))
        .arg(QString::fromUtf8(needed.source))
        .arg(qRound(least))
        .arg(QString::fromUtf8(floor.source));
}

} // namespace wainscot::ui
