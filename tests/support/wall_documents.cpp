#include "tests/support/wall_documents.h"

#include "tests/support/wall_texts.h"

#include <array>

namespace wainscot::walls {

namespace {

using engine::Dice;

struct Paper {
    const char* name;
    SizeMm size;
    double metres; // a table's sheet is read from nearby
};

// Sparse, normal and heavy documents each have the sheets that somebody would hang them on.
constexpr std::array kSmallPaper{
    Paper{"A3 landscape", {Mm(420), Mm(297)}, 1.0},
    Paper{"A2 portrait", {Mm(420), Mm(594)}, 1.0},
    Paper{"A1 landscape", {Mm(841), Mm(594)}, 1.5},
    Paper{"A3 portrait", {Mm(297), Mm(420)}, 1.0},
    Paper{"A2 landscape", {Mm(594), Mm(420)}, 1.0},
};
constexpr std::array kLargePaper{
    Paper{"A1 landscape", {Mm(841), Mm(594)}, 1.5},
    Paper{"A1 portrait", {Mm(594), Mm(841)}, 1.5},
    Paper{"24x36 in portrait", {Mm(609.6), Mm(914.4)}, 1.5},
    Paper{"A2 portrait", {Mm(420), Mm(594)}, 1.0},
    Paper{"A2 landscape", {Mm(594), Mm(420)}, 1.0},
    Paper{"24x36 in landscape", {Mm(914.4), Mm(609.6)}, 1.5},
};
constexpr std::array kLanguages{"en", "en", "de", "es", "en", "zh-Hans", "de"};

// What cameras and telephones make, and panoramas; then drawings and objects, whole.
constexpr std::array kTuningPhotos{SizePx{6000, 4000},
    SizePx{4032, 3024},
    SizePx{3024, 4032},
    SizePx{4000, 6000},
    SizePx{9600, 3200},
    SizePx{4608, 3456},
    SizePx{5184, 3888}};
constexpr std::array kTuningWorks{SizePx{3508, 2480}, SizePx{2480, 3508}, SizePx{2000, 4600}};
constexpr std::array kUnseenPhotos{SizePx{5472, 3648},
    SizePx{4624, 3468},
    SizePx{3468, 4624},
    SizePx{3648, 5472},
    SizePx{11000, 2900},
    SizePx{4000, 4000},
    SizePx{3000, 5333}};
constexpr std::array kUnseenWorks{SizePx{3300, 2550}, SizePx{2550, 3300}, SizePx{1900, 5100}};

bool isAdults(PieceKind kind)
{
    return kind == PieceKind::Interpretation || kind == PieceKind::NextStep;
}

int leastPieces(Size size)
{
    return size == Size::Sparse ? 7 : size == Size::Normal ? 15 : 60;
}

class Maker {
public:
    Maker(Set set, int number)
        : m_set(set)
        , m_dice(std::uint64_t(number) * 2 + (set == Set::Unseen ? 900001 : 4000))
        , m_language(QString::fromLatin1(kLanguages[std::size_t(number) % kLanguages.size()]))
        , m_texts(
              set == Set::Unseen ? QStringLiteral("unseen") : QStringLiteral("tuning"), m_language)
    {
        m_out.number = number;
        m_out.size = number % 10 < 3 ? Size::Sparse : number % 10 < 8 ? Size::Normal : Size::Heavy;
        const auto turn = std::size_t(number / 10 * 3 + number % 10);
        const Paper& paper = m_out.size == Size::Sparse ? kSmallPaper[turn % kSmallPaper.size()]
                                                        : kLargePaper[turn % kLargePaper.size()];
        const char* sizes[] = {"sparse", "normal", "heavy"};
        m_out.name =
            QStringLiteral("%1 %2, %3, %4")
                .arg(number)
                .arg(QLatin1String(sizes[int(m_out.size)]), QLatin1String(paper.name), m_language);
        setUpDisplay(paper);
    }

    Document make()
    {
        text(PieceKind::Title, "title");
        if (m_out.size != Size::Sparse || m_dice.between(0, 2) > 0)
            text(PieceKind::Context, "context");
        text(PieceKind::Credits, "credits");
        const int pieces = m_out.size == Size::Sparse ? m_dice.between(7, 9)
            : m_out.size == Size::Normal              ? m_dice.between(15, 25)
                                                      : m_dice.between(60, 90);
        int left = pieces - int(m_out.pieces.size()) - 2;
        photo(0).dominant = true;
        --left;
        const bool labelled = m_dice.between(0, 1) == 0;
        int group = 1;
        for (; left > 0; ++group)
            left -= addGroup(group, left, labelled);
        addAdults();
        // Where the adults' words found no room, the children have more of theirs.
        std::vector<Piece> adults;
        while (isAdults(m_out.pieces.back().kind)) {
            adults.insert(adults.begin(), m_out.pieces.back());
            m_out.pieces.pop_back();
        }
        const int least = leastPieces(m_out.size) - int(adults.size());
        for (; int(m_out.pieces.size()) < least; ++group)
            addGroup(group, least - int(m_out.pieces.size()), labelled);
        m_out.pieces.insert(m_out.pieces.end(), adults.begin(), adults.end());
        for (std::size_t k = 0; k < m_out.pieces.size(); ++k)
            m_out.pieces[k].order = int(k);
        return std::move(m_out);
    }

private:
    void setUpDisplay(const Paper& paper)
    {
        Experience experience;
        experience.id = m_out.book.experiences.newId();
        experience.title = m_out.name;
        m_out.book.experiences.put(experience);
        Display& display = m_out.display;
        display.id = m_out.book.displays.newId();
        display.experience = experience.id;
        display.name = m_out.name;
        display.panelSize = paper.size;
        display.readingDistance = Mm(1000 * paper.metres);
        display.language = m_language;
        const auto& faces = pairings();
        const auto& colours = palettes();
        display.pairing = m_language.startsWith(QLatin1String("zh")) || m_dice.between(0, 2) > 0
            ? faces.front().name
            : faces[std::size_t(m_dice.between(0, int(faces.size()) - 1))].name;
        display.palette = colours[std::size_t(m_dice.between(0, int(colours.size()) - 1))].name;
        m_out.panel.id = m_out.book.panels.newId();
        m_out.panel.display = display.id;
    }

    Piece& add(PieceKind kind, int group)
    {
        Piece piece;
        piece.id = PieceId(++m_lastPiece);
        piece.panel = m_out.panel.id;
        piece.kind = kind;
        piece.group = group;
        m_out.pieces.push_back(piece);
        return m_out.pieces.back();
    }

    Piece& text(PieceKind kind, const char* from, int group = 0)
    {
        Piece& piece = add(kind, group);
        piece.text = m_texts.draw(QString::fromLatin1(from), m_dice);
        m_adultWords += kind == PieceKind::Context ? wordsIn(piece.text) : 0;
        return piece;
    }

    ChildId child()
    {
        const QString name = m_texts.draw(QStringLiteral("child"), m_dice);
        if (const Child* known = childByName(m_out.book, name))
            return known->id;
        Child child;
        child.id = m_out.book.children.newId();
        child.name = name;
        child.born = BirthDate{2020, 5, 0};
        child.permissions = Permissions::all();
        m_out.book.children.put(child);
        return child.id;
    }

    void quote(int group)
    {
        const int length = m_dice.between(0, 9);
        Quote quote;
        quote.id = m_out.book.quotes.newId();
        quote.experience = m_out.display.experience;
        quote.child = child();
        quote.words = m_texts.draw(length < 3 ? QStringLiteral("short")
                : length < 8                  ? QStringLiteral("medium")
                                              : QStringLiteral("long"),
            m_dice);
        quote.language = m_language;
        quote.dictation = m_dice.between(0, 5) == 0 ? Dictation::WorkedUp : Dictation::Exact;
        m_out.book.quotes.put(quote);
        m_childWords += wordsIn(quote.words);
        add(PieceKind::Quote, group).quote = quote.id;
    }

    Piece& picture(PieceKind kind, SizePx size, int group)
    {
        Picture picture;
        picture.id = m_out.book.pictures.newId();
        picture.experience = m_out.display.experience;
        picture.kind = kind == PieceKind::Work ? PictureKind::Work : PictureKind::Photo;
        picture.size = size;
        picture.format = QStringLiteral("jpeg");
        picture.people.lookedAt = true;
        if (kind == PieceKind::Photo && m_dice.between(0, 1) == 0) {
            const double width = 0.25 + 0.4 * m_dice.share();
            const double height = 0.3 + 0.35 * m_dice.share();
            picture.mustStay = RectFraction{
                (1 - width) * m_dice.share(), (1 - height) * m_dice.share(), width, height};
        }
        m_out.book.pictures.put(picture);
        Piece& piece = add(kind, group);
        piece.picture = picture.id;
        if (picture.mustStay)
            piece.framing.focus = {picture.mustStay->x + picture.mustStay->width / 2,
                picture.mustStay->y + picture.mustStay->height / 2};
        piece.text = m_texts.draw(QStringLiteral("caption"), m_dice);
        return piece;
    }

    Piece& photo(int group)
    {
        const auto& sizes = m_set == Set::Unseen ? kUnseenPhotos : kTuningPhotos;
        const int most = group == 0 ? 1 : int(sizes.size()) - 1; // the leading one lies across
        return picture(PieceKind::Photo, sizes[std::size_t(m_dice.between(0, most))], group);
    }

    void work(int group)
    {
        const auto& sizes = m_set == Set::Unseen ? kUnseenWorks : kTuningWorks;
        picture(
            PieceKind::Work, sizes[std::size_t(m_dice.between(0, int(sizes.size()) - 1))], group);
    }

    // A moment: a photo or a work with what was said, in either order, or one piece alone.
    int addGroup(int group, int most, bool labelled)
    {
        const std::size_t before = m_out.pieces.size();
        int size = std::min(most, m_dice.between(1, 4));
        if (labelled && most >= 2) {
            text(PieceKind::Label, "label", group);
            size = std::max(2, size) - 1;
        }
        const bool alone = size == 1 && !labelled;
        const bool pictureFirst = m_dice.between(0, 2) > 0;
        for (int k = 0; k < size; ++k) {
            if ((k % 2 == 0) != pictureFirst || (k >= 2 && m_dice.between(0, 1) == 0))
                quote(alone ? 0 : group);
            else if (m_dice.between(0, 4) == 0)
                work(alone ? 0 : group);
            else
                photo(alone ? 0 : group + 1000).group = alone ? 0 : group;
        }
        return int(m_out.pieces.size() - before);
    }

    // What the adult makes of it, as far as the children keep the larger share of the words.
    void addAdults()
    {
        if (m_adultWords > 1.3 * m_childWords) {
            m_adultWords = 0;
            std::erase_if(
                m_out.pieces, [](const Piece& piece) { return piece.kind == PieceKind::Context; });
        }
        // A word on a pale ground takes about 1370 mm2 at 1.5 m; the style allows 8 % of the panel.
        const Display& display = m_out.display;
        const double metres = display.readingDistance.value() / 1000;
        const double area = display.panelSize.width.value() * display.panelSize.height.value();
        const int room = int(0.075 * area / (1370 * metres * metres / 2.25));
        int tinted = 0;
        const auto fits = [&](const QString& text) {
            const int words = wordsIn(text);
            return m_adultWords + words <= 1.3 * m_childWords && tinted + words <= room;
        };
        const QString meaning = m_texts.draw(QStringLiteral("interpretation"), m_dice);
        if (fits(meaning)) {
            m_adultWords += wordsIn(meaning);
            tinted += wordsIn(meaning);
            Piece& piece = add(PieceKind::Interpretation, 0);
            piece.text = meaning;
            piece.heading = QStringLiteral("What we make of it");
        }
        const QString next = m_texts.draw(QStringLiteral("next"), m_dice);
        if (fits(next)) {
            Piece& piece = add(PieceKind::NextStep, 0);
            piece.text = next;
            piece.heading = QStringLiteral("Next week");
        }
    }

    Set m_set;
    Dice m_dice;
    QString m_language;
    TextPool m_texts;
    Document m_out;
    int m_adultWords = 0;
    int m_childWords = 0;
    std::int64_t m_lastPiece = 0;
};

} // namespace

Document makeDocument(Set set, int number)
{
    return Maker(set, number).make();
}

ClearedPanel cleared(const Document& document, std::vector<Piece> pieces)
{
    const PermissionRules rules(document.book, document.display, QDate(2026, 11, 6));
    return rules.clear(document.panel, std::move(pieces));
}

} // namespace wainscot::walls
