#include "tests/support/check_panel.h"

#include <algorithm>

namespace wainscot::check {

namespace {

class PanelMaker {
public:
    PanelMaker()
    {
        facts.display.panelSize = {Mm(841), Mm(594)};
        facts.display.audience = Audience::Building;
        facts.style = panelStyle(facts.display);
    }

    void addPiece(Pieces id, PieceKind kind, const RectMm& cell, const QString& text, int group = 0)
    {
        ClearedPiece piece;
        piece.id = PieceId(id);
        piece.kind = kind;
        piece.cell = cell;
        piece.text = text;
        piece.group = group;
        piece.order = id;
        facts.pieces.push_back(piece);
    }

    void addLine(Pieces id, Use use, Mm cap, Mm baseline, const QString& text)
    {
        const ClearedPiece& piece = pieceOf(facts, id);
        const bool voice = use == Use::Voice || use == Use::Title;
        TextLine line;
        line.piece = piece.id;
        line.kind = piece.kind;
        line.use = use;
        line.text = text;
        line.family = voice ? facts.style.pairing.voiceFamily : facts.style.pairing.adultFamily;
        line.cap = cap;
        line.smallLetters = 0.7 * cap;
        line.left = piece.cell.x;
        line.right = piece.cell.x + piece.cell.width * 0.8;
        line.baseline = baseline;
        line.colour = use == Use::Voice ? facts.style.palette.child : facts.style.palette.ink;
        facts.lines.push_back(line);
    }

    void addPicture(Pieces id, const RectMm& place, SizePx size)
    {
        ClearedPicture picture;
        picture.id = PictureId(id);
        picture.size = size;
        picture.alternative = QStringLiteral("the puddle");
        pieceOf(facts, id).picture = picture;
        pieceOf(facts, id).picturePlace = place;
        facts.pictures.push_back({PieceId(id), pieceOf(facts, id).kind, place, picture});
    }

    PanelFacts facts;
};

void addEntry(PanelMaker& maker)
{
    const Grid& grid = maker.facts.style.grid;
    const TypeScale& scale = maker.facts.style.scale;
    maker.addPiece(kTitle,
        PieceKind::Title,
        grid.cell(0, 0, 4, 5),
        QStringLiteral("Where does the puddle go?"));
    maker.addLine(kTitle,
        Use::Title,
        scale.title(),
        grid.y(0) + scale.title(),
        QStringLiteral("Where does the puddle go?"));
    maker.addPiece(kContext,
        PieceKind::Context,
        grid.cell(0, 6, 4, 3),
        QStringLiteral("It rained until ten. We had one rule."));
    maker.addLine(kContext,
        Use::Body,
        scale.body,
        grid.y(6) + scale.body,
        QStringLiteral("It rained until ten. We had one rule."));
    maker.addPiece(kCredits,
        PieceKind::Credits,
        grid.cell(0, 12, 4, 2),
        QStringLiteral("3 November. Words taken down as spoken."));
    maker.addLine(kCredits,
        Use::Small,
        scale.caption(),
        grid.y(12) + scale.caption(),
        QStringLiteral("3 November. Words taken down as spoken."));
    maker.addPiece(kLead, PieceKind::Photo, grid.cell(4, 0, 5, 15), QStringLiteral("The edge."));
    maker.addPicture(kLead, grid.cell(4, 0, 5, 12), {4000, 2600});
    const Mm foot = grid.cell(4, 0, 5, 12).bottom();
    maker.addLine(kLead,
        Use::Small,
        scale.caption(),
        foot + 1.85 * scale.caption(),
        QStringLiteral("The edge."));
}

void addDay(PanelMaker& maker)
{
    const Grid& grid = maker.facts.style.grid;
    const TypeScale& scale = maker.facts.style.scale;
    RectMm label = grid.cell(9, 0, 3, 1);
    label.height = scale.caption();
    maker.addPiece(kLabel, PieceKind::Label, label, QStringLiteral("Tuesday, 3 November"), 1);
    maker.addLine(kLabel,
        Use::Small,
        scale.caption(),
        grid.y(0) + scale.caption(),
        QStringLiteral("Tuesday, 3 November"));
    maker.addPiece(kPhoto, PieceKind::Photo, grid.cell(9, 1, 3, 6), {}, 1);
    maker.addPicture(kPhoto, grid.cell(9, 1, 3, 6), {4000, 2200});
    maker.addPiece(kQuote,
        PieceKind::Quote,
        grid.cell(9, 7, 3, 7),
        QStringLiteral("We put a line so it cannot go without us seeing it at all"),
        1);
    const Mm first = grid.y(7) + scale.voice();
    maker.addLine(
        kQuote, Use::Voice, scale.voice(), first, QStringLiteral("We put a line so it cannot go"));
    maker.addLine(kQuote,
        Use::Voice,
        scale.voice(),
        first + 1.82 * scale.voice(),
        QStringLiteral("without us seeing it at all"));
    const Mm last = first + 1.82 * scale.voice();
    maker.addLine(kQuote,
        Use::Small,
        scale.caption(),
        last + 0.78 * scale.voice() + scale.caption(),
        QStringLiteral("Freya, 5"));
    for (TextLine& line : maker.facts.lines)
        line.endsParagraph = line.text != QLatin1String("We put a line so it cannot go");
}

void addAdultAndWork(PanelMaker& maker)
{
    const Grid& grid = maker.facts.style.grid;
    const TypeScale& scale = maker.facts.style.scale;
    const RectMm meaning = grid.cell(9, 17, 3, 3);
    const Mm padding = 0.62 * grid.rowUnit;
    maker.addPiece(kMeaning,
        PieceKind::Interpretation,
        meaning,
        QStringLiteral("The line was their own idea."));
    maker.addLine(kMeaning,
        Use::Body,
        scale.body,
        meaning.y + padding + scale.body,
        QStringLiteral("The line was their own idea."));
    const Mm tint = 2 * padding + scale.body;
    maker.facts.fills.push_back({PieceId(kMeaning),
        {meaning.x, meaning.y, meaning.width, tint},
        maker.facts.style.palette.tint1});
    lineOf(maker.facts, kMeaning).ground = maker.facts.style.palette.tint1;

    const RectMm mat = grid.cell(0, 17, 3, 6);
    maker.addPiece(kWork, PieceKind::Work, grid.cell(0, 17, 3, 8), QStringLiteral("A straw."));
    maker.addPicture(kWork, mat.grown(-0.6 * grid.gutter), {3000, 1800});
    maker.facts.fills.push_back({PieceId(kWork), mat, maker.facts.style.palette.tint1});
    maker.addLine(kWork,
        Use::Small,
        scale.caption(),
        mat.bottom() + 1.85 * scale.caption(),
        QStringLiteral("A straw."));
}

} // namespace

PanelFacts goodPanel()
{
    PanelMaker maker;
    addEntry(maker);
    addDay(maker);
    addAdultAndWork(maker);
    return maker.facts;
}

ClearedPiece& pieceOf(PanelFacts& panel, Pieces piece)
{
    return *std::find_if(panel.pieces.begin(), panel.pieces.end(), [&](const ClearedPiece& one) {
        return one.id == PieceId(piece);
    });
}

TextLine& lineOf(PanelFacts& panel, Pieces piece, std::size_t index)
{
    for (TextLine& line : panel.lines) {
        if (line.piece == PieceId(piece) && index-- == 0)
            return line;
    }
    return panel.lines.front();
}

PictureFact& pictureOf(PanelFacts& panel, Pieces piece)
{
    return *std::find_if(panel.pictures.begin(), panel.pictures.end(), [&](const PictureFact& one) {
        return one.piece == PieceId(piece);
    });
}

} // namespace wainscot::check
