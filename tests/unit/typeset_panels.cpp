#include "tests/unit/typeset_panels.h"

#include <algorithm>

namespace wainscot::testing {

PanelBuilder::PanelBuilder(
    SizeMm size, Mm readingDistance, const QString& pairing, const QString& palette)
{
    Experience experience;
    experience.id = m_book.experiences.newId();
    experience.title = QStringLiteral("The puddle");
    m_book.experiences.put(experience);
    m_display.id = m_book.displays.newId();
    m_display.experience = experience.id;
    m_display.name = QStringLiteral("Hallway");
    m_display.panelSize = size;
    m_display.readingDistance = readingDistance;
    m_display.pairing = pairing;
    m_display.palette = palette;
    m_panel.id = m_book.panels.newId();
    m_panel.display = m_display.id;
}

Piece& PanelBuilder::add(PieceKind kind, RectMm cell)
{
    Piece piece;
    piece.id = PieceId(static_cast<std::int64_t>(m_pieces.size()) + 1);
    piece.panel = m_panel.id;
    piece.kind = kind;
    piece.cell = cell;
    piece.group = m_group;
    piece.order = static_cast<int>(m_pieces.size());
    piece.language = m_language;
    m_pieces.push_back(piece);
    return m_pieces.back();
}

Piece& PanelBuilder::text(PieceKind kind, RectMm cell, const QString& text, const QString& heading)
{
    Piece& piece = add(kind, cell);
    piece.text = text;
    piece.heading = heading;
    return piece;
}

ChildId PanelBuilder::child(const QString& name)
{
    if (const Child* known = childByName(m_book, name))
        return known->id;
    Child child;
    child.id = m_book.children.newId();
    child.name = name;
    child.born = BirthDate{2020, 5, 0};
    child.permissions = Permissions::all();
    m_book.children.put(child);
    return child.id;
}

Piece& PanelBuilder::quote(
    RectMm cell, const QString& words, const QString& name, Dictation dictation)
{
    Quote quote;
    quote.id = m_book.quotes.newId();
    quote.experience = m_display.experience;
    quote.child = child(name);
    quote.words = words;
    quote.language = m_language;
    quote.dictation = dictation;
    m_book.quotes.put(quote);
    Piece& piece = add(PieceKind::Quote, cell);
    piece.quote = quote.id;
    return piece;
}

Piece& PanelBuilder::photo(RectMm cell, const QString& caption, int lines, SizePx size)
{
    Picture picture;
    picture.id = m_book.pictures.newId();
    picture.experience = m_display.experience;
    picture.size = size;
    picture.format = QStringLiteral("jpeg");
    picture.people.lookedAt = true;
    m_book.pictures.put(picture);
    Piece& piece = add(PieceKind::Photo, cell);
    piece.picture = picture.id;
    piece.text = caption;
    const Mm cap = style().scale.caption();
    piece.picturePlace = cell;
    if (lines > 0)
        piece.picturePlace.height -= 0.85 * cap + cap + (lines - 1) * 1.95 * cap;
    return piece;
}

Piece& PanelBuilder::work(RectMm cell, SizePx size, const QString& caption)
{
    Piece& piece = photo(cell, caption, 0, size);
    Picture picture = *m_book.pictures.find(piece.picture);
    picture.kind = PictureKind::Work;
    m_book.pictures.put(picture);
    piece.kind = PieceKind::Work;
    piece.picturePlace = {};
    return piece;
}

ClearedPanel PanelBuilder::cleared() const
{
    const PermissionRules rules(m_book, m_display, QDate(2025, 11, 6));
    return rules.clear(m_panel, m_pieces);
}

PanelBuilder puddlePanel()
{
    PanelBuilder p(
        {Mm(841), Mm(594)}, Mm(1500), QStringLiteral("Schoolroom"), QStringLiteral("Wet Slate"));
    p.text(PieceKind::Title, p.cell(0, 0, 4, 7), QStringLiteral("Where does the puddle go?"));
    p.text(PieceKind::Context,
        p.cell(0, 8, 4, 5),
        QStringLiteral("It rained until ten. Five children found this puddle by the bicycle shed "
                       "and asked to keep it. We had one rule: no stamping."));
    p.text(PieceKind::Credits,
        p.cell(0, 13, 4, 2),
        QStringLiteral("Room 2, 3–6 November. Words taken down as spoken and read back by "
                       "M. Adeyemi."));
    p.photo(p.cell(4, 0, 5, 15),
        QStringLiteral("Wednesday. White was Monday’s edge, blue was Tuesday’s, pink is today’s."),
        2);
    p.group(1);
    p.text(PieceKind::Label, p.cell(9, 0, 3, 1), QStringLiteral("Monday"));
    p.photo(p.cell(9, 1, 3, 8),
        QStringLiteral(
            "Freya drew the first line. Tomasz walked it twice to see that it was closed."),
        2);
    p.quote(p.cell(9, 9, 3, 6),
        QStringLiteral("We put a line so it can’t go without us seeing."),
        QStringLiteral("Freya"));
    p.group(2);
    p.text(PieceKind::Label, p.cell(0, 16, 3, 1), QStringLiteral("Tuesday"));
    p.quote(p.cell(0, 17, 3, 6),
        QStringLiteral("It got smaller but it didn’t spill anywhere."),
        QStringLiteral("Kwame"));
    p.photo(p.cell(0, 23, 3, 9),
        QStringLiteral("String round the edge, then along the wall: nineteen of Noor’s feet."),
        2);
    p.group(3);
    p.text(PieceKind::Label, p.cell(3, 16, 3, 1), QStringLiteral("Wednesday"));
    p.photo(
        p.cell(3, 17, 3, 7), QStringLiteral("Mei’s wet hand on the wall, minute by minute."), 1);
    p.quote(p.cell(3, 24, 3, 8),
        QStringLiteral("My wet hand went off the wall. So the puddle went off the ground."),
        QStringLiteral("Mei"));
    p.group(4);
    p.text(PieceKind::Label, p.cell(6, 16, 3, 1), QStringLiteral("Thursday"));
    p.quote(p.cell(6, 17, 3, 6),
        QStringLiteral("It is up there and it is coming back, but not the same one."),
        QStringLiteral("Yusuf"));
    p.photo(p.cell(6, 23, 3, 9), QStringLiteral("Ten o’clock. Nothing inside the yellow line."), 2);
    p.group(0);
    p.text(PieceKind::Interpretation,
        p.cell(9, 17, 3, 9),
        QStringLiteral("The line was their own idea. It turned “it is smaller” into something "
                       "they could show each other, and then test: one hand, one wall, one "
                       "minute."),
        QStringLiteral("What we make of it"));
    p.text(PieceKind::NextStep,
        p.cell(9, 27, 3, 5),
        QStringLiteral("Two jugs on the sill, one with a lid. Which goes first?"),
        QStringLiteral("Next week"));
    return p;
}

PanelBuilder drawingPanel()
{
    PanelBuilder p(
        {Mm(420), Mm(297)}, Mm(1000), QStringLiteral("Fieldbook"), QStringLiteral("Damson"));
    const PanelStyle style = p.style();
    const auto indented = [&](RectMm cell) {
        cell.x += style.grid.gutter;
        cell.width -= style.grid.gutter;
        return cell;
    };
    p.work(p.cell(0, 0, 8, 18), {3508, 2480});
    p.quote(indented(p.cell(8, 0, 4, 20)),
        QStringLiteral("This is the cloud. It is thirsty because it works all day.\n"
                       "That is the straw. It is red so the water knows where to go.\n"
                       "It says slurp, but very quiet, so you only hear it if you are small."),
        QStringLiteral("Ilse"));
    p.text(PieceKind::Interpretation,
        p.cell(0, 19, 5, 5),
        QStringLiteral("Ilse drew one line for the straw, looked at it, and drew a second one "
                       "beside it: “So there is a hole.”"));
    p.text(PieceKind::Credits,
        indented(p.cell(8, 20, 4, 4)),
        QStringLiteral("Told to M. Adeyemi while drawing, 4 November. Her exact words, read back "
                       "to her."));
    return p;
}

PanelBuilder manyScriptsPanel()
{
    PanelBuilder p(
        {Mm(420), Mm(594)}, Mm(1000), QStringLiteral("Many Scripts"), QStringLiteral("Pond Iron"));
    p.text(PieceKind::Title, p.cell(0, 0, 12, 6), QStringLiteral("Where does the puddle go?"));
    p.language(QStringLiteral("ar"));
    p.quote(p.cell(6, 8, 6, 7),
        QStringLiteral("يدي المبلولة راحت عن الحيط، يعني البركة راحت عن الأرض."),
        QStringLiteral("ماي"));
    p.language(QStringLiteral("hi"));
    p.quote(p.cell(0, 8, 6, 7),
        QStringLiteral("मेरा गीला हाथ दीवार से गया, तो पानी भी ज़मीन से गया।"),
        QStringLiteral("मीरा"));
    p.language(QStringLiteral("zh-Hans"));
    p.quote(p.cell(0, 17, 6, 7),
        QStringLiteral("我的湿手印从墙上走了，所以水坑也从地上走了。"),
        QStringLiteral("小美"));
    p.language(QStringLiteral("he"));
    p.quote(p.cell(6, 17, 6, 7),
        QStringLiteral("היד הרטובה שלי הלכה מהקיר, אז השלולית הלכה מהאדמה."),
        QStringLiteral("נועה"));
    p.language(QStringLiteral("ar"));
    p.text(PieceKind::Context,
        p.cell(6, 26, 6, 4),
        QStringLiteral("في الأسبوع الماضي اعتنى الأطفال ببركة ماء. رسموا حولها خطًّا بالطباشير كلّ "
                       "صباح، وقاسوها بخيط. يوم الخميس لم تعد هناك."));
    p.language(QStringLiteral("zh-Hans"));
    p.text(PieceKind::Context,
        p.cell(0, 26, 6, 4),
        QStringLiteral(
            "上星期，孩子们照看了一个水坑。他们每天早上用粉笔沿着水边画线，还用绳子量它有多"
            "大。到了星期四，水坑不见了。"));
    return p;
}

PanelBuilder familiesPanel()
{
    PanelBuilder p(
        {Mm(420), Mm(594)}, Mm(1000), QStringLiteral("Many Scripts"), QStringLiteral("Pond Iron"));
    p.text(PieceKind::Title, p.cell(0, 0, 6, 6), QStringLiteral("Where does the puddle go?"));
    p.photo(p.cell(0, 6, 12, 14), {}, 0);
    p.text(PieceKind::Context,
        p.cell(0, 22, 6, 4),
        QStringLiteral("Last week the children kept a puddle. They chalked round it every morning "
                       "and measured it with string. On Thursday it was not there."));
    p.quote(p.cell(0, 27, 5, 6),
        QStringLiteral("My wet hand went off the wall. So the puddle went off the ground."),
        QStringLiteral("Mei"),
        Dictation::WorkedUp);
    p.text(PieceKind::Invitation,
        p.cell(0, 41, 6, 8),
        QStringLiteral("Which puddle, river or rain do you remember from when you were small? "
                       "Write or draw it here, in any language."),
        QStringLiteral("For our families"));
    p.language(QStringLiteral("ar"));
    p.text(PieceKind::Title, p.cell(6, 0, 6, 6), QStringLiteral("إلى أين تذهب بركة الماء؟"));
    p.text(PieceKind::Context,
        p.cell(6, 22, 6, 4),
        QStringLiteral("في الأسبوع الماضي اعتنى الأطفال ببركة ماء. رسموا حولها خطًّا بالطباشير كلّ "
                       "صباح، وقاسوها بخيط. يوم الخميس لم تعد هناك."));
    p.quote(p.cell(7, 27, 5, 6),
        QStringLiteral("راحت لفوق، وبترجع، بس مش نفسها."),
        QStringLiteral("يوسف"));
    p.text(PieceKind::Invitation,
        p.cell(6, 41, 6, 8),
        QStringLiteral("أيّ بركة أو نهر أو مطر تتذكّرونه من طفولتكم؟ اكتبوا أو ارسموا هنا، بأيّ "
                       "لغة تحبّون."),
        QStringLiteral("لعائلاتنا"));
    return p;
}

PanelBuilder voicesPanel()
{
    PanelBuilder p(
        {Mm(594), Mm(841)}, Mm(1500), QStringLiteral("Reading Room"), QStringLiteral("Rowan"));
    p.setVoiceStep(3);
    const Mm gutter = p.style().grid.gutter;
    const auto indented = [&](RectMm cell) {
        cell.x += gutter;
        cell.width -= gutter;
        return cell;
    };
    p.text(PieceKind::Title,
        p.cell(0, 0, 12, 7),
        QStringLiteral("Where does the puddle go when it goes?"));
    p.photo(p.cell(0, 7, 7, 13), QStringLiteral("The big one by the gate, Tuesday at nine."), 1);
    p.quote(indented(p.cell(7, 7, 5, 6)),
        QStringLiteral("It doesn’t go. It gets thin."),
        QStringLiteral("Kwame"));
    p.quote(indented(p.cell(7, 13, 5, 7)),
        QStringLiteral("Into the ground. The ground was thirsty."),
        QStringLiteral("Amara"));
    p.quote(p.cell(0, 21, 6, 9),
        QStringLiteral(
            "It goes in the drain, but the drain is over there, so it has to walk at night."),
        QStringLiteral("Davi"));
    p.quote(
        p.cell(0, 31, 6, 6), QStringLiteral("I asked it. It didn’t say."), QStringLiteral("Hana"));
    p.quote(p.cell(0, 37, 6, 4), QStringLiteral("Dogs."), QStringLiteral("Luca"));
    p.quote(p.cell(6, 22, 6, 8),
        QStringLiteral("It climbs in the air, but so small you can’t see it climbing."),
        QStringLiteral("Mei"));
    p.quote(p.cell(6, 30, 6, 8),
        QStringLiteral("My coat took some. Look, it is on my sleeve."),
        QStringLiteral("Freya"));
    p.quote(p.cell(6, 38, 6, 8),
        QStringLiteral("It is up there and it is coming back, but not the same one."),
        QStringLiteral("Yusuf"));
    p.text(PieceKind::Interpretation,
        p.cell(0, 41, 5, 5),
        QStringLiteral("We asked everyone, one at a time, on the same wet morning. Nobody was "
                       "told yes or no."));
    return p;
}

} // namespace wainscot::testing
