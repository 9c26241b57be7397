#include "app/ui/listen/idea_in_turn.h"

#include <QPainter>
#include <QTextLayout>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kMostLines = 3;
constexpr double kLine = 0.82; // of Andika's tall line
constexpr double kWho = 2.0; // relative to the system font
constexpr int kLeastPixels = 22;

QFont fontAt(int pixels)
{
    QFont font = wordsFont(1, QFont::Bold);
    font.setPixelSize(pixels);
    return font;
}

int lineHeight(int pixels)
{
    return int(QFontMetrics(fontAt(pixels)).lineSpacing() * kLine);
}

// Whole words only; a word wider than the line counts as too many lines.
int layOut(QTextLayout& layout, const QString& words, int pixels, int width)
{
    layout.setText(words);
    layout.setFont(fontAt(pixels));
    QTextOption option(Qt::AlignLeading);
    option.setWrapMode(QTextOption::WordWrap);
    option.setTextDirection(words.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    layout.setTextOption(option);
    layout.beginLayout();
    int lines = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition(QPointF(0, lines * lineHeight(pixels)));
        lines += line.naturalTextWidth() > width ? kMostLines + 1 : 1;
    }
    layout.endLayout();
    return lines;
}

// The least width at which the words take no more lines, so that no line is left with one word.
int evenWidth(const QString& words, int pixels, int width)
{
    QTextLayout layout;
    const int lines = layOut(layout, words, pixels, width);
    int small = 1;
    int large = width;
    while (small < large) {
        const int middle = (small + large) / 2;
        QTextLayout tried;
        if (layOut(tried, words, pixels, middle) <= lines)
            large = middle;
        else
            small = middle + 1;
    }
    return large;
}

} // namespace

IdeaInTurn::IdeaInTurn(QWidget* parent)
    : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumHeight(scaled(120));
}

void IdeaInTurn::setIdea(const QString& words, const QString& who)
{
    m_words = words.simplified();
    m_who = who;
    setAccessibleName(QStringLiteral("%1: %2").arg(who, m_words));
    update();
}

int IdeaInTurn::linesAt(int pixels) const
{
    QTextLayout layout;
    return layOut(layout, m_words, pixels, width());
}

int IdeaInTurn::roomForWords() const
{
    return height() - QFontMetrics(wordsFont(kWho)).height();
}

int IdeaInTurn::wordsSize() const
{
    // No larger than the standard's share of the window: 5.4 of the system font at 1366, 9.4 at
    // 1920.
    const int most = std::max(kLeastPixels, width() * 6 / 100);
    int small = kLeastPixels;
    int large = most;
    while (small < large) {
        const int middle = (small + large + 1) / 2;
        const int lines = linesAt(middle);
        if (lines <= kMostLines && lines * lineHeight(middle) <= roomForWords())
            small = middle;
        else
            large = middle - 1;
    }
    return small;
}

void IdeaInTurn::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    const int pixels = wordsSize();
    QTextLayout layout;
    const int even = evenWidth(m_words, pixels, width());
    const int lines = layOut(layout, m_words, pixels, even);
    painter.setPen(tokens().ink);
    layout.draw(&painter, QPointF(m_words.isRightToLeft() ? width() - even : 0, 0));
    painter.setFont(wordsFont(kWho));
    const QRect who(0,
        lines * lineHeight(pixels) + pixels / 6,
        width(),
        QFontMetrics(wordsFont(kWho)).height());
    painter.drawText(who,
        int(m_words.isRightToLeft() ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
        m_who);
}

} // namespace wainscot::ui
