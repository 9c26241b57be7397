// Dragging one photo among 200: CPU of a move against CPU of a full repaint, in one run, and how
// often a picture was asked for while it moved.
#include <QApplication>
#include <QImage>
#include <QTest>

#include <sys/resource.h>

#include <cstdio>

#include "app/ui/canvas/canvas.h"
#include "core/permit/cleared.h"
#include "layout/typeset/typesetter.h"

namespace wainscot {
namespace {

double cpuSeconds()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    const auto seconds = [](const timeval& t) {
        return double(t.tv_sec) + 1e-6 * double(t.tv_usec);
    };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

// Every picture in the size the screen keeps.
class OneImage final : public PictureProvider {
public:
    [[nodiscard]] ProvidedPicture picture(const ClearedPicture&, SizePx) override
    {
        ++asked;
        return {m_image, {}};
    }
    int asked = 0;

private:
    QImage m_image = [] {
        QImage image(1600, 1067, QImage::Format_RGB32);
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x)
                image.setPixel(x, y, qRgb((x * 7 + y) & 255, (x + y * 3) & 255, (x ^ y) & 255));
        }
        return image;
    }();
};

// 200 large photos on an A0 sheet, or as many pieces of which a third are photos.
Book bookOf200(Display& display, int everyNth)
{
    Book book;
    Child child;
    child.id = ChildId(1);
    child.name = QStringLiteral("Wren");
    child.permissions = Permissions::all();
    book.children.put(child);
    Experience experience;
    experience.id = ExperienceId(1);
    book.experiences.put(experience);
    display.id = DisplayId(1);
    display.experience = experience.id;
    display.panelSize = {Mm(1189), Mm(841)};
    display.readingDistance = Mm(500);
    book.displays.put(display);
    book.panels.put({PanelId(1), display.id, 1});
    const Grid grid = panelStyle(display).grid;
    for (int i = 0; i < 200; ++i) {
        Piece piece;
        piece.id = PieceId(i + 1);
        piece.panel = PanelId(1);
        piece.order = i;
        const double width = grid.panel.width.value() / 20;
        const double height = grid.panel.height.value() / 10;
        piece.cell = {Mm(i % 20 * width), Mm(i / 20 * height), Mm(width * 0.9), Mm(height * 0.8)};
        if (i % everyNth == 0) {
            Picture picture;
            picture.id = PictureId(i + 1);
            picture.experience = experience.id;
            picture.sha256 = QString::number(i);
            picture.size = {6000, 4000};
            picture.people.lookedAt = true;
            book.pictures.put(picture);
            piece.kind = PieceKind::Photo;
            piece.picture = picture.id;
            piece.picturePlace = piece.cell;
        } else {
            Quote quote;
            quote.id = QuoteId(i + 1);
            quote.experience = experience.id;
            quote.child = child.id;
            quote.words = QStringLiteral("The sun drinks it with a straw.");
            book.quotes.put(quote);
            piece.quote = quote.id;
        }
        book.pieces.put(piece);
    }
    return book;
}

bool measure(int everyNth)
{
    Display display;
    const Book book = bookOf200(display, everyNth);
    const PermissionRules rules(book, display, QDate(2025, 11, 7));
    const Panel panel = *book.panels.find(PanelId(1));
    const PanelStyle style = panelStyle(display);
    ui::CanvasContent content{style, typeset(rules.clear(panel), style), {}};
    for (const auto& [id, piece] : book.pieces.rows())
        content.pieces.push_back({piece, QStringLiteral("piece"), {}, {6000, 4000}});

    OneImage pictures;
    ui::Canvas canvas(pictures);
    canvas.setHelpers(
        {[&](const Piece& piece) { return typeset(rules.clear(panel, {piece}), style); },
            [](const Piece& piece, const RectMm& cell) {
                Piece placed = piece;
                placed.cell = cell;
                placed.picturePlace = cell;
                return placed;
            },
            {},
            {},
            {}});
    canvas.resize(1600, 1100);
    canvas.setContent(content);
    canvas.show();
    QApplication::processEvents();

    constexpr int kFull = 20;
    double start = cpuSeconds();
    for (int i = 0; i < kFull; ++i) {
        canvas.refreshPictures(); // drops the static layer
        canvas.repaint();
    }
    const double full = (cpuSeconds() - start) / kFull;

    constexpr int kMoves = 600;
    const QPoint from = canvas.pieceRect(PieceId(91)).center().toPoint();
    QTest::mousePress(&canvas, Qt::LeftButton, {}, from);
    QTest::mouseMove(&canvas, from + QPoint(10, 0));
    QApplication::processEvents();
    (void)canvas.takeWork();
    pictures.asked = 0;
    start = cpuSeconds();
    for (int i = 0; i < kMoves; ++i) {
        QTest::mouseMove(&canvas, from + QPoint(10 + i % 200, i % 120));
        QApplication::processEvents();
    }
    const double move = (cpuSeconds() - start) / kMoves;
    const ui::Canvas::Work work = canvas.takeWork();
    QTest::mouseRelease(&canvas, Qt::LeftButton, {}, from);

    std::printf("200 pieces, every %d. a large photo\n", everyNth);
    std::printf("  full repaint: %.2f ms CPU\n", full * 1000);
    std::printf(
        "  one move: %.3f ms CPU, %.1f %% of the pixels, %d layers, %d pictures asked for\n",
        move * 1000,
        100.0 * double(work.pixels) / kMoves / (canvas.width() * canvas.height()),
        work.staticLayers,
        pictures.asked);
    std::printf("  ratio: %.4f (limit 0.02)\n", move / full);
    return move / full < 0.02 && pictures.asked == 0;
}

} // namespace
} // namespace wainscot

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const bool photos = wainscot::measure(1);
    (void)wainscot::measure(3); // for comparison: words are cheaper to repaint
    return photos ? 0 : 1;
}
