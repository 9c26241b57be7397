#include "core/model/template_file.h"
#include "core/store/rows.h"

namespace wainscot {

TableForm formOf(const Display* /*kind*/)
{
    return {"displays",
        "id, experience_id, name, audience, panel_width_mm, panel_height_mm, "
        "reading_distance_mm, pairing, palette, plan, language, voice_step"};
}

QVariantList valuesOf(const Display& display)
{
    return {sqlId(display.id),
        sqlId(display.experience),
        sqlText(display.name),
        nameOf(display.audience),
        display.panelSize.width.value(),
        display.panelSize.height.value(),
        display.readingDistance.value(),
        sqlText(display.pairing),
        sqlText(display.palette),
        sqlText(display.plan),
        sqlText(display.language),
        display.voiceStep};
}

void readRow(RowReader& row, Display& display)
{
    display.id = row.id<DisplayId>();
    display.experience = row.id<ExperienceId>();
    display.name = row.text();
    display.audience = row.known(audienceFromName(row.text()));
    display.panelSize.width = row.mm();
    display.panelSize.height = row.mm();
    display.readingDistance = row.mm();
    display.pairing = row.text();
    display.palette = row.text();
    display.plan = row.text();
    display.language = row.text();
    display.voiceStep = row.number();
}

TableForm formOf(const Panel* /*kind*/)
{
    return {"panels", "id, display_id, number, is_locked, left_findings"};
}

QVariantList valuesOf(const Panel& panel)
{
    return {sqlId(panel.id),
        sqlId(panel.display),
        panel.number,
        int(panel.locked),
        sqlText(textOf(panel.left))};
}

void readRow(RowReader& row, Panel& panel)
{
    panel.id = row.id<PanelId>();
    panel.display = row.id<DisplayId>();
    panel.number = row.number();
    panel.locked = row.yes();
    panel.left = row.known(leftFindingsFromText(row.text()));
}

TableForm formOf(const Piece* /*kind*/)
{
    return {"pieces",
        "id, panel_id, kind, quote_id, picture_id, heading, words, language, group_number, "
        "reading_order, is_dominant, x_mm, y_mm, width_mm, height_mm, picture_x_mm, "
        "picture_y_mm, picture_width_mm, picture_height_mm, is_pinned, focus_x, focus_y, zoom, "
        "second_language, shown_words, pairing, palette, size_wish, together_number, "
        "starts_panel"};
}

QVariantList valuesOf(const Piece& piece)
{
    QVariantList values{sqlId(piece.id),
        sqlId(piece.panel),
        nameOf(piece.kind),
        sqlId(piece.quote),
        sqlId(piece.picture),
        sqlText(piece.heading),
        sqlText(piece.text),
        sqlText(piece.language),
        piece.group,
        piece.order,
        int(piece.dominant)};
    for (const RectMm& rect : {piece.cell, piece.picturePlace}) {
        values << rect.x.value() << rect.y.value() << rect.width.value() << rect.height.value();
    }
    return values << int(piece.pinned) << piece.framing.focus.x << piece.framing.focus.y
                  << piece.framing.zoom << sqlText(piece.secondLanguage)
                  << sqlText(piece.shownWords) << sqlText(piece.pairing) << sqlText(piece.palette)
                  << piece.size << piece.together << int(piece.startsPanel);
}

void readRow(RowReader& row, Piece& piece)
{
    piece.id = row.id<PieceId>();
    piece.panel = row.id<PanelId>();
    piece.kind = row.known(pieceKindFromName(row.text()));
    piece.quote = row.id<QuoteId>();
    piece.picture = row.id<PictureId>();
    piece.heading = row.text();
    piece.text = row.text();
    piece.language = row.text();
    piece.group = row.number();
    piece.order = row.number();
    piece.dominant = row.yes();
    piece.cell = row.rectMm();
    piece.picturePlace = row.rectMm();
    piece.pinned = row.yes();
    piece.framing.focus.x = row.real();
    piece.framing.focus.y = row.real();
    piece.framing.zoom = row.real();
    piece.secondLanguage = row.text();
    piece.shownWords = row.text();
    piece.pairing = row.text();
    piece.palette = row.text();
    piece.size = row.number();
    piece.together = row.number();
    piece.startsPanel = row.yes();
}

// What hangs on a wall points at panels softly: a place of a panel that is gone stays for undo.
TableForm formOf(const Wall* /*kind*/)
{
    return {"walls", "id, form"};
}

QVariantList valuesOf(const Wall& wall)
{
    return {sqlId(wall.id), QString::fromUtf8(wallToJson(wall))};
}

void readRow(RowReader& row, Wall& wall)
{
    const auto id = row.id<WallId>();
    const auto read = wallFromJson(row.text().toUtf8());
    wall = row.known(read ? std::optional(*read) : std::nullopt);
    wall.id = id;
}

// A template is kept as the text of its file, so there is one form of it to read and to check.
TableForm formOf(const PanelTemplate* /*kind*/)
{
    return {"templates", "id, form"};
}

QVariantList valuesOf(const PanelTemplate& made)
{
    return {sqlId(made.id), QString::fromUtf8(templateToJson(made))};
}

void readRow(RowReader& row, PanelTemplate& made)
{
    const auto id = row.id<TemplateId>();
    const auto read = templateFromJson(row.text().toUtf8(), {});
    made = row.known(read ? std::optional(*read) : std::nullopt);
    made.id = id;
}

} // namespace wainscot
