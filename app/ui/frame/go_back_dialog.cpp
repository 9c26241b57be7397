#include "app/ui/frame/go_back_dialog.h"

#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>

#include "app/ui/compose/panel_picture.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/icons.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr double kPictureWidth = 132; // px at 10 pt text
constexpr double kPictureHeight = 92;

QString dayOf(const EarlierState& state)
{
    return QLocale().toString(state.at.date(), QLocale::LongFormat)
        + state.at.toString(QStringLiteral(", HH:mm"));
}

QString contentOf(const EarlierState& state)
{
    return QStringList{
        counted(state.children, EarlierDaySlip::tr("1 child"), EarlierDaySlip::tr("%1 children")),
        counted(state.quotes, EarlierDaySlip::tr("1 answer"), EarlierDaySlip::tr("%1 answers")),
        counted(state.panels, EarlierDaySlip::tr("1 panel"), EarlierDaySlip::tr("%1 panels"))}
        .join(QStringLiteral(", "));
}

} // namespace

EarlierDaySlip::EarlierDaySlip(EarlierDay day, PictureShelf& pictures, QWidget* parent)
    : QAbstractButton(parent)
    , m_day(std::move(day))
    , m_pictures(pictures)
    , m_panel(tellingPanel(*m_day.book))
{
    setAccessibleName(dayOf(m_day.state) + QStringLiteral(": ") + contentOf(m_day.state));
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    connect(&pictures, &PictureShelf::loaded, this, [this] {
        m_picture = {};
        update();
    });
}

QSize EarlierDaySlip::sizeHint() const
{
    return {scaled(kPictureWidth + 300), scaled(kPictureHeight) + 2 * air(2)};
}

QRect EarlierDaySlip::pictureRect() const
{
    const QRect place(air(2), air(2), scaled(kPictureWidth), scaled(kPictureHeight));
    return QStyle::visualRect(layoutDirection(), rect(), place);
}

// As large as its place allows; the place alone where nothing hung that day.
void EarlierDaySlip::paintPicture(QPainter& painter)
{
    const QRect place = pictureRect();
    const Panel* panel = m_day.book->panels.find(m_panel);
    if (panel == nullptr) {
        painter.setPen(tokens().quiet);
        painter.setFont(interfaceFont(0.88));
        painter.drawText(place, Qt::AlignCenter | Qt::TextWordWrap, tr("Nothing hung yet"));
        return;
    }
    const SizeMm size = m_day.book->displays.find(panel->display)->panelSize;
    const QSize shown = QSizeF(size.width.value(), size.height.value())
                            .scaled(place.size(), Qt::KeepAspectRatio)
                            .toSize();
    if (m_picture.isNull()) {
        const double ratio = devicePixelRatioF();
        m_picture = panelPicture(*m_day.book, m_panel, qRound(shown.width() * ratio), m_pictures);
        m_picture.setDevicePixelRatio(ratio);
    }
    const QRect at = QStyle::alignedRect(layoutDirection(), Qt::AlignCenter, shown, place);
    painter.fillRect(at.translated(2, 3), QColor(0, 0, 0, 46));
    painter.drawPixmap(at, m_picture);
}

void EarlierDaySlip::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), underMouse() ? tokens().accentTint : tokens().card);
    paintPicture(painter);
    const int from = 2 * air(2) + scaled(kPictureWidth);
    const QRect words = QStyle::visualRect(layoutDirection(),
        rect(),
        QRect(from, air(2), width() - from - air(2), height() - 2 * air(2)));
    const QFontMetrics first(interfaceFont(1.05, QFont::DemiBold));
    const QFontMetrics second(interfaceFont(0.92));
    const int top = words.center().y() - (first.height() + second.height()) / 2;
    painter.setPen(tokens().ink);
    painter.setFont(interfaceFont(1.05, QFont::DemiBold));
    painter.drawText(QRect(words.left(), top, words.width(), first.height()),
        Qt::AlignLeading | Qt::AlignVCenter,
        first.elidedText(dayOf(m_day.state), Qt::ElideRight, words.width()));
    painter.setPen(tokens().quiet);
    painter.setFont(interfaceFont(0.92));
    painter.drawText(QRect(words.left(), top + first.height(), words.width(), second.height()),
        Qt::AlignLeading | Qt::AlignVCenter,
        second.elidedText(contentOf(m_day.state), Qt::ElideRight, words.width()));
    if (hasFocus())
        drawFocusRing(painter, QRectF(rect()).adjusted(3, 3, -3, -3));
}

void EarlierDaySlip::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

GoBackDialog::GoBackDialog(
    const std::vector<EarlierDay>& days, PictureShelf& pictures, QWidget* parent)
    : QDialog(parent)
    , m_rover(new Rover(this))
{
    setWindowTitle(tr("Go back to an earlier day"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(5), air(5), air(5), air(5));
    column->setSpacing(air(2));
    column->addWidget(
        new Label(tr("The book as it was before the first change of:"), 1.25, QFont::DemiBold));
    column->addWidget(new Label(
        tr("Permissions, who is in pictures and what is covered stay as today. Undo brings today "
           "back."),
        0.95,
        QFont::Normal,
        true));
    auto* content = new Ground(Ground::Tone::Window);
    auto* list = new QVBoxLayout(content);
    list->setContentsMargins(0, 0, 0, 0);
    list->setSpacing(air(1));
    for (const EarlierDay& day : days) {
        auto* slip = new EarlierDaySlip(day, pictures);
        connect(
            slip, &QAbstractButton::clicked, this, [this, name = day.state.name] { choose(name); });
        list->addWidget(slip);
        m_slips << slip;
    }
    list->addStretch();
    column->addWidget(scrolled(content), 1);
    auto* stay = new Button(Button::Form::Word, tr("Leave everything"));
    connect(stay, &Button::clicked, this, &QDialog::reject);
    column->addWidget(stay, 0, Qt::AlignLeading);
    m_rover->setMembers(m_slips);
    m_slips.front()->setFocus();
    resize(scaled(560), scaled(520));
}

void GoBackDialog::choose(const QString& state)
{
    m_chosen = state;
    accept();
}

} // namespace wainscot::ui
