#include "layout/paper/display_data.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cmath>

namespace wainscot {

namespace {

double hundredths(Mm length)
{
    return std::round(length.value() * 100) / 100;
}

// Only what there is: a key without a value tells nothing.
void put(QJsonObject& object, const char* key, const QString& text)
{
    if (!text.isEmpty())
        object.insert(QLatin1String(key), text);
}

QJsonObject pieceAsData(const ClearedPiece& piece)
{
    QJsonObject data{{QStringLiteral("kind"), nameOf(piece.kind)},
        {QStringLiteral("x_mm"), hundredths(piece.cell.x)},
        {QStringLiteral("y_mm"), hundredths(piece.cell.y)},
        {QStringLiteral("width_mm"), hundredths(piece.cell.width)},
        {QStringLiteral("height_mm"), hundredths(piece.cell.height)}};
    put(data, "heading", piece.heading);
    put(data, "text", piece.text);
    put(data, "language", piece.language);
    put(data, "name", piece.name);
    put(data, "status", piece.status);
    put(data, "translated_from", piece.translatedFrom);
    put(data, "second_text", piece.secondText);
    put(data, "second_language", piece.secondLanguage);
    if (piece.picture)
        put(data, "picture_shows", piece.picture->alternative);
    return data;
}

QJsonObject panelAsData(const ClearedPanel& panel)
{
    QJsonArray pieces;
    for (const ClearedPiece& piece : panel.pieces())
        pieces.append(pieceAsData(piece));
    return {{QStringLiteral("panel"), panel.number()},
        {QStringLiteral("title"), panel.title()},
        {QStringLiteral("width_mm"), hundredths(panel.size().width)},
        {QStringLiteral("height_mm"), hundredths(panel.size().height)},
        {QStringLiteral("pieces"), pieces}};
}

} // namespace

QByteArray displayData(std::span<const PaperPanel> panels)
{
    QJsonArray all;
    for (const PaperPanel& panel : panels)
        all.append(panelAsData(panel.panel));
    QJsonObject data{{QStringLiteral("panels"), all}};
    if (!panels.empty()) {
        const Display& display = panels.front().panel.display();
        put(data, "audience", nameOf(display.audience));
        put(data, "language", display.language);
    }
    return QJsonDocument(data).toJson(QJsonDocument::Indented);
}

} // namespace wainscot
