// What comes onto the panel: from the drawer, the file manager, the clipboard, another program.
#include "app/ui/compose/desk.h"

#include <algorithm>

#include "app/ui/compose/clipboard.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"
#include "core/base/wall_text.h"
#include "layout/typeset/measurer.h"

namespace wainscot::ui {

namespace {

constexpr int kLabelLetters = 28; // a single short line is a day or a place, more is a text

Piece textPiece(PieceKind kind, const QString& text)
{
    Piece piece;
    piece.kind = kind;
    piece.text = text;
    return piece;
}

} // namespace

std::optional<Piece> Desk::pieceFor(const DrawerItem& item) const
{
    const Book& book = m_session.book();
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return std::nullopt;
    Piece piece;
    switch (item.kind) {
    case DrawerItem::Kind::Quote:
        piece.kind = PieceKind::Quote;
        piece.quote = QuoteId(item.id);
        return piece;
    case DrawerItem::Kind::Observation: {
        const Observation* seen = book.observations.find(ObservationId(item.id));
        return seen != nullptr ? std::optional(textPiece(PieceKind::Context, seen->words))
                               : std::nullopt;
    }
    case DrawerItem::Kind::Picture: {
        const Picture* picture = book.pictures.find(PictureId(item.id));
        if (picture == nullptr)
            return std::nullopt;
        piece.kind = picture->kind == PictureKind::Work ? PieceKind::Work : PieceKind::Photo;
        piece.picture = picture->id;
        piece.text = picture->caption;
        return piece;
    }
    case DrawerItem::Kind::Note:
        break;
    }
    piece.kind = static_cast<PieceKind>(item.id);
    switch (piece.kind) {
    case PieceKind::Title:
        return textPiece(piece.kind, experience->title);
    case PieceKind::Context:
        return textPiece(piece.kind, experience->context);
    case PieceKind::Interpretation:
        piece.heading = wallText(WallText::WhatWeMakeOfIt, languageOf(book, *experience));
        piece.text = experience->interpretation;
        return piece;
    case PieceKind::NextStep:
        piece.heading = wallText(WallText::Next, languageOf(book, *experience));
        piece.text = experience->nextSteps;
        return piece;
    case PieceKind::Credits:
        return textPiece(piece.kind, experience->credits);
    default:
        return piece;
    }
}

Piece Desk::pieceForText(const QString& text) const
{
    const QString plain = text.trimmed();
    const bool label = plain.size() <= kLabelLetters && !plain.contains(QLatin1Char('\n'));
    return textPiece(label ? PieceKind::Label : PieceKind::Context, plain);
}

// While it is dragged over nobody knows yet what a file holds: a photo of the usual shape.
std::optional<Piece> Desk::likely(const Incoming& incoming) const
{
    if (incoming.item)
        return pieceFor(*incoming.item);
    if (incoming.isPicture()) {
        Piece photo;
        photo.kind = PieceKind::Photo;
        return photo;
    }
    if (!incoming.text.trimmed().isEmpty())
        return pieceForText(incoming.text);
    return std::nullopt;
}

SizeMm Desk::roomFor(const Incoming& incoming) const
{
    const DrawnPanel* drawn = drawnPanel();
    const std::optional<Piece> piece = likely(incoming);
    if (drawn == nullptr)
        return {};
    const Grid& grid = drawn->style.grid;
    return piece ? roomFor(*piece) : SizeMm{grid.width(3), grid.height(6)};
}

// A quarter of the panel wide, as high as the picture's shape or the words need.
SizeMm Desk::roomFor(const Piece& piece) const
{
    const DrawnPanel* drawn = drawnPanel();
    const Grid& grid = drawn->style.grid;
    const int columns = piece.kind == PieceKind::Title
        ? grid.columns
        : std::clamp(grid.columns / 4, 1, grid.columns);
    const Mm width = grid.width(columns);
    Mm height = grid.rowUnit;
    if (isPicture(piece.kind)) {
        const Picture* picture = m_session.book().pictures.find(piece.picture);
        const double aspect = picture != nullptr ? picture->size.aspect() : 1.5;
        height = width / aspect + captionBlock(piece, width);
    } else {
        Piece named = piece;
        named.id = kFreshPiece;
        const ClearedPanel cleared = rules()->clear(*m_session.panel(), {named});
        const PanelMeasurer text(cleared.pieces(), drawn->style, m_drawn->display.language);
        height = std::max(height, text.measure(named.id.number(), width).height);
    }
    int rows = 1;
    while (rows < grid.rows && grid.height(rows) < height)
        ++rows;
    return {width, grid.height(rows)};
}

RectMm Desk::bestPlace(const Piece& piece, const std::vector<RectMm>& taken) const
{
    std::vector<RectMm> all = taken;
    for (const Piece* there : piecesOf(m_session.book(), m_session.panel()->id))
        all.push_back(there->cell);
    const SizeMm room = piece.cell.isEmpty() ? roomFor(piece) : piece.cell.size();
    return freePlace(drawnPanel()->style.grid, room, all);
}

// The free place of the grid nearest the top; else the foot of the panel.
RectMm Desk::freePlace(const Grid& grid, SizeMm room, const std::vector<RectMm>& taken) const
{
    const GridCell size = nearestCell(grid, {grid.x(0), grid.y(0), room.width, room.height});
    for (int row = 0; row + size.rows <= grid.rows; ++row) {
        for (int column = 0; column + size.columns <= grid.columns; ++column) {
            const RectMm cell = grid.cell(column, row, size.columns, size.rows);
            const bool free = std::none_of(taken.begin(), taken.end(), [&](const RectMm& other) {
                return !intersection(other, cell).isEmpty();
            });
            if (free)
                return {cell.x, cell.y, room.width, room.height};
        }
    }
    const RectMm foot =
        grid.cell(grid.columns - size.columns, grid.rows - size.rows, size.columns, size.rows);
    return {foot.x, foot.y, room.width, room.height};
}

// Adds it where it was dropped, with what then makes room; else where there is room.
PieceId Desk::put(Piece piece, const std::optional<RectMm>& cell, int gesture, const QString& label)
{
    if (drawnPanel() == nullptr)
        return {};
    piece.panel = m_session.panel()->id;
    piece = placedAt(piece, cell ? *cell : bestPlace(piece));
    piece.pinned = cell.has_value();
    // What was shown around the hand is what comes about.
    std::optional<std::vector<Piece>> arranged;
    if (cell) {
        std::vector<Piece> tried = asTried({});
        Piece fresh = piece;
        fresh.id = kFreshPiece;
        fresh.panel = {};
        fresh.order = tried.empty() ? 1 : tried.back().order + 1;
        tried.push_back(fresh);
        if (const std::vector<Piece>* known = m_live.answerTo(tried))
            arranged = *known;
    }
    PieceId added;
    Edit edit = addPiece(m_session.book(),
        piece,
        label.isEmpty() ? tr("Onto the panel: %1").arg(wordFor(piece.kind)) : label,
        added);
    edit.gesture = gesture;
    if (!m_session.perform(std::move(edit)))
        return {};
    if (arranged)
        takeOver(*arranged, {}, gesture);
    else
        makeRoom({added}, gesture);
    return added;
}

PieceId Desk::add(const DrawerItem& item, const std::optional<RectMm>& cell)
{
    if (const auto why = refusal(item)) {
        Q_EMIT announced(*why);
        return {};
    }
    const std::optional<Piece> piece = pieceFor(item);
    return piece ? put(*piece, cell, m_session.newGesture()) : PieceId();
}

void Desk::addTo(PanelId panel, const DrawerItem& item)
{
    m_session.choosePanel(panel);
    const PieceId added = add(item, std::nullopt);
    if (added.isValid())
        Q_EMIT brought({added});
}

void Desk::take(const Incoming& incoming, const std::optional<RectMm>& cell)
{
    if (incoming.item) {
        const PieceId added = add(*incoming.item, cell);
        if (added.isValid())
            Q_EMIT brought({added});
    } else if (!incoming.pieces.isEmpty()) {
        takePieces(incoming.pieces, cell);
    } else if (!incoming.files.isEmpty()) {
        takePictures(incoming.files, cell);
    } else if (!incoming.image.isNull()) {
        takeImage(incoming.image, cell);
    } else if (!incoming.text.trimmed().isEmpty()) {
        takeText(incoming.text, cell);
    }
}

void Desk::takePieces(const QByteArray& bytes, const std::optional<RectMm>& cell)
{
    const std::vector<Piece> pieces = piecesFrom(bytes, m_session.book(), m_session.folder());
    if (pieces.empty() || drawnPanel() == nullptr)
        return;
    EditBuilder builder(m_session.book(), tr("Pasted"));
    int last = 0;
    for (const Piece* other : piecesOf(m_session.book(), m_session.panel()->id))
        last = std::max(last, other->order);
    PieceIds added;
    std::vector<RectMm> taken;
    for (Piece piece : pieces) {
        piece.id = builder.newId<Piece>();
        piece.panel = m_session.panel()->id;
        piece.order = ++last;
        const bool here = cell && added.empty();
        const RectMm at = here ? RectMm{cell->x, cell->y, piece.cell.width, piece.cell.height}
                               : bestPlace(piece, taken);
        taken.push_back(at);
        piece = placedAt(piece, at);
        builder.put(piece);
        added.push_back(piece.id);
    }
    if (m_session.perform(builder.take()))
        Q_EMIT brought(added);
}

// "Wren: The sun drinks it" are a child's words; everything else is an adult's.
void Desk::takeText(const QString& text, const std::optional<RectMm>& cell)
{
    if (takeWords(text, cell))
        return;
    const PieceId added = put(pieceForText(text), cell, m_session.newGesture());
    if (added.isValid())
        Q_EMIT brought({added});
}

bool Desk::takeWords(const QString& text, const std::optional<RectMm>& cell)
{
    const auto colon = text.indexOf(QLatin1Char(':'));
    const QString who = text.left(std::max<qsizetype>(0, colon)).trimmed();
    const Child* child = nullptr;
    for (const auto& [id, one] : m_session.book().children.rows()) {
        if (!who.isEmpty()
            && (one.name.compare(who, Qt::CaseInsensitive) == 0
                || displayName(one).compare(who, Qt::CaseInsensitive) == 0))
            child = &one;
    }
    if (child == nullptr || m_session.experience() == nullptr)
        return false;
    const int gesture = m_session.newGesture();
    EditBuilder builder(m_session.book(), tr("Words of %1").arg(displayName(*child)), gesture);
    Quote quote;
    quote.id = builder.newId<Quote>();
    quote.experience = m_session.experience()->id;
    quote.child = child->id;
    quote.words = text.mid(colon + 1).trimmed();
    builder.put(quote);
    if (!m_session.perform(builder.take()))
        return true;
    if (const auto why = refusal({DrawerItem::Kind::Quote, quote.id.number()})) {
        Q_EMIT announced(tr("Kept in what you have. %1").arg(*why));
        return true;
    }
    Piece piece;
    piece.kind = PieceKind::Quote;
    piece.quote = quote.id;
    const PieceId added = put(piece, cell, gesture);
    if (added.isValid())
        Q_EMIT brought({added});
    return true;
}

QMimeData* Desk::copyOf(const PieceIds& ids) const
{
    const DrawnPanel* drawn = drawnPanel();
    const std::vector<ClearedPiece> none;
    return mimeFor(
        m_session.folder(), copies(ids), drawn != nullptr ? drawn->cleared.pieces() : none);
}

void Desk::star(DrawerItem item)
{
    EditBuilder builder(m_session.book(), tr("Star"));
    const auto turned = [&builder](auto thing) {
        thing.stars = thing.stars > 0 ? 0 : 1;
        builder.put(thing);
    };
    if (item.kind == DrawerItem::Kind::Quote && m_session.book().quotes.contains(QuoteId(item.id)))
        turned(*m_session.book().quotes.find(QuoteId(item.id)));
    if (item.kind == DrawerItem::Kind::Picture
        && m_session.book().pictures.contains(PictureId(item.id)))
        turned(*m_session.book().pictures.find(PictureId(item.id)));
    m_session.perform(builder.take());
}

void Desk::setPeople(PictureId id, const People& people)
{
    const Picture* picture = m_session.book().pictures.find(id);
    if (picture == nullptr)
        return;
    EditBuilder builder(m_session.book(), tr("Who is in the picture"));
    Picture changed = *picture;
    changed.people = people;
    builder.put(changed);
    m_session.perform(builder.take());
}

} // namespace wainscot::ui
