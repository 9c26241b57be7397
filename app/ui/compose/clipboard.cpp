#include "app/ui/compose/clipboard.h"

#include <algorithm>
#include <cmath>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMimeData>

#include "app/ui/canvas/incoming.h"

namespace wainscot::ui {

namespace {

QJsonArray toJson(const RectMm& rect)
{
    return {rect.x.value(), rect.y.value(), rect.width.value(), rect.height.value()};
}

// Any program can write a clipboard under our name: a cell no wall has is not taken.
constexpr double kFarthest = 10'000;

// A cell of some size, no larger and no farther from the panel's corner than ten metres.
std::optional<RectMm> rectFrom(const QJsonArray& values)
{
    const double x = values.at(0).toDouble();
    const double y = values.at(1).toDouble();
    const double width = values.at(2).toDouble();
    const double height = values.at(3).toDouble();
    if (std::abs(x) > kFarthest || std::abs(y) > kFarthest)
        return std::nullopt;
    if (width <= 0 || width > kFarthest || height <= 0 || height > kFarthest)
        return std::nullopt;
    return RectMm{Mm(x), Mm(y), Mm(width), Mm(height)};
}

Framing framingFrom(const QJsonArray& focus, double zoom)
{
    const auto share = [&](int at) { return std::clamp(focus.at(at).toDouble(0.5), 0.0, 1.0); };
    return {{share(0), share(1)}, std::clamp(zoom, 1.0, kMostFrameZoom)};
}

QJsonObject toJson(const Piece& piece)
{
    return {{QStringLiteral("kind"), nameOf(piece.kind)},
        {QStringLiteral("quote"), QString::number(piece.quote.number())},
        {QStringLiteral("picture"), QString::number(piece.picture.number())},
        {QStringLiteral("heading"), piece.heading},
        {QStringLiteral("text"), piece.text},
        {QStringLiteral("language"), piece.language},
        {QStringLiteral("cell"), toJson(piece.cell)},
        {QStringLiteral("focus"), QJsonArray{piece.framing.focus.x, piece.framing.focus.y}},
        {QStringLiteral("zoom"), piece.framing.zoom}};
}

std::optional<Piece> pieceFrom(const QJsonObject& values)
{
    const auto kind = pieceKindFromName(values[QStringLiteral("kind")].toString());
    const auto cell = rectFrom(values[QStringLiteral("cell")].toArray());
    if (!kind || !cell)
        return std::nullopt;
    Piece piece;
    piece.kind = *kind;
    // Only what a piece of its kind is made of; anything else would be brought in unseen.
    if (piece.kind == PieceKind::Quote)
        piece.quote = QuoteId(values[QStringLiteral("quote")].toString().toLongLong());
    if (isPicture(piece.kind))
        piece.picture = PictureId(values[QStringLiteral("picture")].toString().toLongLong());
    piece.heading = values[QStringLiteral("heading")].toString();
    piece.text = values[QStringLiteral("text")].toString();
    piece.language = values[QStringLiteral("language")].toString();
    piece.cell = *cell;
    piece.framing = framingFrom(
        values[QStringLiteral("focus")].toArray(), values[QStringLiteral("zoom")].toDouble(1));
    return piece;
}

} // namespace

QMimeData* mimeFor(const QString& folder,
    const std::vector<Piece>& pieces,
    const std::vector<ClearedPiece>& cleared)
{
    QJsonArray all;
    QStringList text;
    for (const Piece& piece : pieces) {
        all.append(toJson(piece));
        for (const ClearedPiece& seen : cleared) {
            if (seen.id != piece.id || seen.text.isEmpty())
                continue;
            text << (seen.name.isEmpty() ? seen.text
                                         : QStringLiteral("%1: %2").arg(seen.name, seen.text));
        }
    }
    const QJsonObject root{{QStringLiteral("book"), folder}, {QStringLiteral("pieces"), all}};
    auto* mime = new QMimeData;
    mime->setData(QString::fromLatin1(kPiecesMime), QJsonDocument(root).toJson());
    if (!text.isEmpty())
        mime->setText(text.join(QStringLiteral("\n\n")));
    return mime;
}

std::vector<Piece> piecesFrom(const QByteArray& bytes, const Book& book, const QString& folder)
{
    const QJsonObject root = QJsonDocument::fromJson(bytes).object();
    const bool sameBook = root[QStringLiteral("book")].toString() == folder;
    std::vector<Piece> pieces;
    for (const auto& value : root[QStringLiteral("pieces")].toArray()) {
        const std::optional<Piece> piece = pieceFrom(value.toObject());
        const bool gathered = piece && (piece->kind == PieceKind::Quote || isPicture(piece->kind));
        const bool there = piece && sameBook
            && (book.quotes.contains(piece->quote) || book.pictures.contains(piece->picture));
        if (piece && (!gathered || there))
            pieces.push_back(*piece);
    }
    return pieces;
}

} // namespace wainscot::ui
