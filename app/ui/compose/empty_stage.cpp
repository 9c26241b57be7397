#include "app/ui/compose/empty_stage.h"

#include <QPaintEvent>
#include <QPainter>
#include <QStyle>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

struct PaleFrame {
    QRectF share; // of the sheet
    bool picture;
};

// The days of an experience on a wide sheet: title and words at the start, the large picture beside
// them, then each day with its picture and a child's words.
const std::vector<PaleFrame>& paleFrames()
{
    static const std::vector<PaleFrame> frames{
        {{0.04, 0.05, 0.30, 0.15}, false},
        {{0.04, 0.25, 0.30, 0.14}, false},
        {{0.36, 0.05, 0.37, 0.46}, true},
        {{0.75, 0.05, 0.21, 0.25}, true},
        {{0.75, 0.33, 0.21, 0.18}, false},
        {{0.04, 0.57, 0.21, 0.18}, false},
        {{0.04, 0.78, 0.21, 0.17}, true},
        {{0.27, 0.57, 0.21, 0.24}, true},
        {{0.27, 0.84, 0.21, 0.11}, false},
        {{0.50, 0.57, 0.21, 0.16}, false},
        {{0.50, 0.76, 0.21, 0.19}, true},
        {{0.75, 0.57, 0.21, 0.20}, false},
        {{0.75, 0.80, 0.21, 0.15}, false},
    };
    return frames;
}

} // namespace

EmptyStage::EmptyStage(QWidget* parent)
    : QWidget(parent)
    , m_card(new Card(Card::Tone::Card, this))
    , m_rover(new Rover(this))
{
    m_column = new QVBoxLayout(m_card);
    m_column->setContentsMargins(air(7), air(6), air(7), air(6));
    m_column->setSpacing(air(2.5));
}

Button* EmptyStage::addWay(Icon icon, const QString& text, const QString& detail)
{
    auto* way = new Button(Button::Form::Row, text, icon);
    way->setDetail(detail);
    way->setMinimumHeight(scaled(46));
    m_column->addWidget(way);
    return way;
}

void EmptyStage::refresh(int words, int pictures, bool hasExperience)
{
    m_rover->setMembers({});
    while (QLayoutItem* item = m_column->takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->hide();
            item->widget()->deleteLater(); // it may be the sender
        }
        delete item;
    }
    m_column->addWidget(new Label(tr("Nothing hangs here yet."), 1.5, QFont::DemiBold));
    const QString what = tr("A panel shows one question, the children's own words and the pictures "
                            "of them at work.");
    QVector<QWidget*> ways;
    if (!hasExperience || words + pictures == 0) {
        m_column->addWidget(
            new Label(what + QLatin1Char(' ') + tr("Words and pictures come first."), 1.05));
        auto* gather = addWay(Icon::Words,
            tr("Go to Gather"),
            tr("Bring in the class, what was said and the pictures."));
        connect(gather, &Button::clicked, this, &EmptyStage::gatherAsked);
        ways << gather;
    } else {
        m_column->addWidget(new Label(what + QLatin1Char(' ')
                + tr("You have %1 and %2.")
                      .arg(counted(words, tr("1 answer"), tr("%1 answers")),
                          counted(pictures, tr("1 picture"), tr("%1 pictures"))),
            1.05));
        auto* propose = addWay(
            Icon::Arrange, tr("Propose a panel"), tr("From everything here that may be shown."));
        connect(propose, &Button::clicked, this, &EmptyStage::proposeAsked);
        auto* child = addWay(Icon::Words,
            tr("Start with one child's words"),
            tr("An empty panel. Drag them there, or press Enter on them."));
        connect(child, &Button::clicked, this, &EmptyStage::wordsAsked);
        auto* picture = addWay(
            Icon::Photo, tr("Start with a picture"), tr("An empty panel, and your pictures."));
        connect(picture, &Button::clicked, this, &EmptyStage::picturesAsked);
        ways << propose << child << picture;
    }
    auto* guide =
        addWay(Icon::Note, tr("Show the first steps"), tr("Six short steps with pictures."));
    connect(guide, &Button::clicked, this, &EmptyStage::firstStepsAsked);
    ways << guide;
    m_rover->setMembers(ways);
    place();
}

void EmptyStage::place()
{
    const int margin = air(4);
    const int cardWidth = qMin(scaled(430), width() / 2 - margin);
    double sheetWidth = qMin<double>(width() - cardWidth - 2 * margin - air(10), scaled(760));
    double sheetHeight = sheetWidth / 1.4142;
    if (sheetHeight > height() - 2 * margin) {
        sheetHeight = height() - 2 * margin;
        sheetWidth = sheetHeight * 1.4142;
    }
    const double total = sheetWidth + air(10) + cardWidth;
    const int left = qMax(margin, int((width() - total) / 2));
    const auto visual = [this](const QRect& r) {
        return QStyle::visualRect(layoutDirection(), rect(), r);
    };
    m_sheet =
        visual(QRect(left, int((height() - sheetHeight) / 2), int(sheetWidth), int(sheetHeight)));
    const int wanted = m_column->heightForWidth(cardWidth);
    const int cardHeight =
        qMin(wanted > 0 ? wanted : m_card->sizeHint().height(), height() - 2 * margin);
    m_card->setGeometry(visual(QRect(
        left + int(sheetWidth) + air(10), (height() - cardHeight) / 2, cardWidth, cardHeight)));
    update();
}

void EmptyStage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    place();
}

void EmptyStage::paintEvent(QPaintEvent* event)
{
    QPainter painter(this);
    painter.fillRect(event->rect(), tokens().wall);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(m_sheet.translated(2, 3), QColor(0, 0, 0, 46));
    painter.fillRect(m_sheet.translated(1, 1), QColor(0, 0, 0, 30));
    painter.fillRect(m_sheet, Qt::white);
    painter.setPen(QPen(QColor(0xb9, 0xbd, 0xb6), 1.4, Qt::DashLine));
    for (const PaleFrame& frame : paleFrames()) {
        painter.setBrush(frame.picture ? QColor(0xf3, 0xf4, 0xf1) : QColor(Qt::white));
        painter.drawRect(QRectF(m_sheet.left() + frame.share.x() * m_sheet.width(),
            m_sheet.top() + frame.share.y() * m_sheet.height(),
            frame.share.width() * m_sheet.width(),
            frame.share.height() * m_sheet.height()));
    }
}

} // namespace wainscot::ui
