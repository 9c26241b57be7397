// Whatever is done on a panel, undone to the start it is the start: 1,000 seeded sequences of the
// desk's own edits, with what makes room for them.
#include <QCoreApplication>
#include <QDir>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <random>

#include "app/ui/compose/desk.h"
#include "core/store/book_store.h"
#include "tests/support/book_equality.h"

namespace wainscot::ui {
namespace {

constexpr int kSequences = 1000;
constexpr int kStepsEach = 4;

// A display with two panels of a few pieces each, on a disk in memory where there is one.
class DeskAtWork {
public:
    DeskAtWork()
        : m_place((QDir(QStringLiteral("/dev/shm")).exists() ? QStringLiteral("/dev/shm")
                                                             : QDir::tempPath())
            + QStringLiteral("/desk-XXXXXX"))
        , m_desk(m_session, m_work)
    {
        const QString folder = m_place.filePath(QStringLiteral("book"));
        auto store = BookStore::create(folder, {QStringLiteral("Puddle"), {}});
        EXPECT_TRUE(store.ok());
        fill((*store)->history(), (*store)->book());
        store->reset();
        EXPECT_TRUE(m_session.open(folder).ok());
    }
    Session& session() { return m_session; }
    Desk& desk() { return m_desk; }
    void settle()
    {
        m_work.waitForEnd();
        QCoreApplication::processEvents();
    }

private:
    static void fill(History& history, const Book& book)
    {
        EditBuilder edit(book, QStringLiteral("Sample"));
        Child child;
        child.id = edit.newId<Child>();
        child.name = QStringLiteral("Wren Abara");
        child.permissions = Permissions::all();
        edit.put(child);
        Experience experience;
        experience.id = edit.newId<Experience>();
        experience.title = QStringLiteral("Puddle");
        edit.put(experience);
        Display display;
        display.id = edit.newId<Display>();
        display.experience = experience.id;
        display.name = QStringLiteral("Hallway");
        display.panelSize = {Mm(420), Mm(594)};
        edit.put(display);
        for (int number = 1; number <= 2; ++number) {
            const Panel panel{edit.newId<Panel>(), display.id, number};
            edit.put(panel);
            Picture picture;
            picture.id = edit.newId<Picture>();
            picture.experience = experience.id;
            picture.sha256 = QString(64, QLatin1Char(number == 1 ? 'a' : 'b'));
            picture.format = QStringLiteral("jpeg");
            picture.size = {4000, 3000};
            picture.people.lookedAt = true;
            edit.put(picture);
            Piece shown;
            shown.id = edit.newId<Piece>();
            shown.panel = panel.id;
            shown.kind = number == 1 ? PieceKind::Photo : PieceKind::Work;
            shown.picture = picture.id;
            shown.order = 4;
            shown.cell = {Mm(30), Mm(300), Mm(200), Mm(160)};
            shown.picturePlace = {Mm(40), Mm(310), Mm(180), Mm(135)};
            edit.put(shown);
            for (int i = 0; i < 3; ++i) {
                Quote quote;
                quote.id = edit.newId<Quote>();
                quote.experience = experience.id;
                quote.child = child.id;
                quote.words = QStringLiteral("The sun drinks it, %1.").arg(i);
                edit.put(quote);
                Piece piece;
                piece.id = edit.newId<Piece>();
                piece.panel = panel.id;
                piece.quote = quote.id;
                piece.order = i + 1;
                piece.cell = {Mm(30 + 120 * i), Mm(120), Mm(105), Mm(60)};
                edit.put(piece);
            }
        }
        EXPECT_TRUE(history.perform(edit.take()).ok());
    }

    QTemporaryDir m_place;
    Session m_session;
    Work m_work;
    Desk m_desk;
};

class RandomHand {
public:
    RandomHand(unsigned seed, DeskAtWork& at)
        : m_random(seed)
        , m_at(at)
    {
    }

    void doSomething()
    {
        Desk& desk = m_at.desk();
        const PieceIds held = someHeld();
        if (held.empty()) {
            desk.add({DrawerItem::Kind::Note, std::int64_t(PieceKind::Context)}, std::nullopt);
            return;
        }
        switch (number(0, 15)) {
        case 0:
            desk.place(movedBy(held, number(-60, 60), number(-60, 60)));
            break;
        case 1:
            desk.nudge(movedBy(held, 0.5, 0));
            desk.nudge(movedBy(held, 0, 0.5));
            break;
        case 2:
            desk.align(held, static_cast<Line>(number(0, 5)));
            break;
        case 3:
            desk.spread(held, number(0, 1) == 0 ? Qt::Horizontal : Qt::Vertical);
            break;
        case 4:
            desk.takeOff(held);
            break;
        case 5:
            desk.duplicate(held);
            break;
        case 6:
            desk.setPinned(held, number(0, 1) == 0);
            break;
        case 7:
            desk.swap(held.front(), held.back());
            break;
        case 8:
            desk.resizeBy(held.front(), number(0, 1) == 0 ? 1 : -1);
            break;
        case 9:
            desk.carry(held, somePanel());
            break;
        case 10:
            desk.movePanel(somePanel(), number(1, 3));
            break;
        case 11:
            desk.duplicatePanel(somePanel());
            break;
        case 12:
            desk.write(held.front(), QStringLiteral("Text %1").arg(number(0, 99)));
            break;
        case 13:
            desk.setAudience(kAudiences[std::size_t(number(0, 3))]);
            break;
        case 14:
            desk.turnPicture(somePicture(), number(1, 3));
            break;
        case 15:
            treat(somePicture());
            break;
        default:
            break;
        }
    }
    int number(int from, int to) { return std::uniform_int_distribution<int>(from, to)(m_random); }

private:
    PieceIds someHeld()
    {
        PieceIds ids;
        if (m_at.session().panel() == nullptr)
            return ids;
        for (const Piece* piece : piecesOf(m_at.session().book(), m_at.session().panel()->id)) {
            if (number(0, 1) == 0)
                ids.push_back(piece->id);
        }
        return ids;
    }
    PictureId somePicture()
    {
        const auto& pictures = m_at.session().book().pictures.rows();
        return std::next(pictures.begin(), number(0, int(pictures.size()) - 1))->first;
    }
    void treat(PictureId id)
    {
        Desk& desk = m_at.desk();
        const double in = number(0, 20) / 100.0;
        switch (number(0, 3)) {
        case 0:
            desk.straighten(id, Corners{{{in, 0.1}, {0.9, in}, {1 - in, 0.9}, {0.1, 1 - in}}}, 0);
            break;
        case 1:
            desk.coverParts(id, {{{in, in, 0.3, 0.2}, Cover::Mosaic}}, 0);
            break;
        case 2:
            desk.evenLight(id, number(0, 1) == 0);
            break;
        default:
            desk.markMustStay(id, RectFraction{in, in, 0.4, 0.5}, 0);
        }
    }
    PanelId somePanel()
    {
        const auto panels = panelsOf(m_at.session().book(), m_at.session().display()->id);
        return panels[std::size_t(number(0, int(panels.size()) - 1))]->id;
    }
    std::vector<PlacedCell> movedBy(const PieceIds& ids, double dx, double dy)
    {
        std::vector<PlacedCell> cells;
        for (const PieceId id : ids)
            cells.push_back({id, m_at.desk().piece(id)->cell.movedBy(Mm(dx), Mm(dy))});
        return cells;
    }
    std::mt19937 m_random;
    DeskAtWork& m_at;
};

TEST(UndoOnTheDesk, LeadsBackToTheStartAfterAThousandRandomSequences)
{
    DeskAtWork at;
    const Book start = at.session().book();
    int changed = 0;
    for (unsigned seed = 1; seed <= kSequences; ++seed) {
        SCOPED_TRACE(seed);
        RandomHand hand(seed, at);
        for (int step = 0; step < kStepsEach; ++step) {
            hand.doSomething();
            if (hand.number(0, 5) == 0)
                at.session().undo();
        }
        at.settle();
        changed += sameBook(at.session().book(), start) ? 0 : 1;
        while (at.session().canUndo())
            ASSERT_TRUE(at.session().undo());
        ASSERT_TRUE(sameBook(at.session().book(), start));
    }
    EXPECT_GT(changed, kSequences * 8 / 10) << "most sequences do something";
}

} // namespace
} // namespace wainscot::ui
