// A page without a mark is told from one with the faintest.
#include "core/media/pdf/blank_page.h"

#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QPainter>

#include <random>

namespace wainscot {
namespace {

// Copied paper: a tone, a shadow across it, grain; then a copier's JPEG at 150 dpi, drawn at 250.
class Paper {
public:
    explicit Paper(int grain)
        : m_sheet(1240, 1754, QImage::Format_RGB32)
    {
        std::mt19937 random(7);
        for (int y = 0; y < m_sheet.height(); ++y) {
            auto* line = reinterpret_cast<QRgb*>(m_sheet.scanLine(y));
            for (int x = 0; x < m_sheet.width(); ++x) {
                const int grey = 228 + 14 * x / m_sheet.width() + int(random() % unsigned(grain));
                line[x] = qRgb(grey, grey - 2, grey - 8);
            }
        }
    }
    QImage& sheet() { return m_sheet; }
    [[nodiscard]] bool isBlank() const
    {
        const QImage copied = QImage::fromData(test::jpegOf(m_sheet, 75));
        return isBlankPage(
            copied.scaled(2066, 2923, Qt::IgnoreAspectRatio, Qt::SmoothTransformation), 250);
    }

private:
    QImage m_sheet;
};

class BlankPage : public ::testing::TestWithParam<int> { };

TEST_P(BlankPage, IsPaperAlone)
{
    Paper paper(GetParam());
    EXPECT_TRUE(paper.isBlank());
    QPainter(&paper.sheet()).fillRect(400, 500, 3, 3, Qt::black);
    EXPECT_TRUE(paper.isBlank()) << "a speck of dust";
    QPainter(&paper.sheet()).fillRect(0, 0, paper.sheet().width(), 9, Qt::black);
    EXPECT_TRUE(paper.isBlank()) << "the edge of the sheet in the scanner";
}

TEST_P(BlankPage, IsNoneWithAFaintMark)
{
    Paper pencil(GetParam());
    {
        QPainter painter(&pencil.sheet());
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(QColor(200, 200, 196), 2)); // 0.3 mm, a sixth darker than the paper
        painter.drawLine(300, 300, 420, 350); // 2 cm
    }
    EXPECT_FALSE(pencil.isBlank());
    Paper crayon(GetParam());
    {
        QPainter painter(&crayon.sheet());
        painter.setPen(QPen(QColor(240, 236, 180), 12)); // 2 mm of yellow, as light as the paper
        painter.drawLine(300, 300, 360, 400);
    }
    EXPECT_FALSE(crayon.isBlank());
    Paper wash(GetParam());
    QPainter(&wash.sheet()).fillRect(200, 200, 500, 500, QColor(214, 222, 232)); // thin blue
    EXPECT_FALSE(wash.isBlank());
}

TEST_P(BlankPage, IsNoneWherePaintIsAllOver)
{
    Paper painted(GetParam());
    QPainter(&painted.sheet()).fillRect(painted.sheet().rect(), QColor(200, 20, 30));
    EXPECT_FALSE(painted.isBlank());
}

// Levels between its darkest and lightest: none, smooth paper, recycled paper.
INSTANTIATE_TEST_SUITE_P(Grain, BlankPage, ::testing::Values(1, 5, 12));

} // namespace
} // namespace wainscot
