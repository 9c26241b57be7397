#include "app/ui/first_steps/first_steps.h"

#include <QPaintEvent>
#include <QPainter>
#include <QStyle>
#include <QVBoxLayout>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

struct Told {
    QString heading;
    QString words;
    QString toPlace;
};

Told told(FirstStep step)
{
    switch (step) {
    case FirstStep::Class:
        return {FirstSteps::tr("Enter the class"),
            FirstSteps::tr("Paste the list of names, or type them one by one. Then note what each "
                           "family allows. Not said counts as no."),
            FirstSteps::tr("Go to the class")};
    case FirstStep::Words:
        return {FirstSteps::tr("Take words down"),
            FirstSteps::tr("Say what happened; three questions are ready. Type what a child says. "
                           "Enter keeps it, and the next question comes."),
            FirstSteps::tr("Go to the words")};
    case FirstStep::Pictures:
        return {FirstSteps::tr("Add the pictures"),
            FirstSteps::tr(
                "Drop photos and scanned drawings into the window. Nobody sees them until "
                "you say who is in them."),
            FirstSteps::tr("Go to the pictures")};
    case FirstStep::Groups:
        return {FirstSteps::tr("Put like with like"),
            FirstSteps::tr("Answers with words in common are proposed as groups. Move what you "
                           "understood otherwise. A meeting gives them back to the class."),
            FirstSteps::tr("Go to the groups")};
    case FirstStep::Panel:
        return {FirstSteps::tr("Propose a panel"),
            FirstSteps::tr(
                "One press makes a panel from all that may be shown. Drag, write, try other "
                "colours: every step can be undone, nothing needs saving."),
            FirstSteps::tr("Go to the panel")};
    case FirstStep::Wall:
        return {FirstSteps::tr("Hang it"),
            FirstSteps::tr(
                "Check says what to mend. Measure a wall once, and it says where each panel "
                "hangs. Print makes a PDF, or sheets for a small printer."),
            FirstSteps::tr("Go to the wall")};
    }
    return {};
}

} // namespace

// A picture of the window as large as its room, and until it is made a sentence.
class FirstSteps::Picture : public QWidget {
public:
    Picture()
    {
        setMinimumSize(scaled(320), scaled(180));
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    }
    void set(const QPixmap& picture)
    {
        m_picture = picture;
        update();
    }
    void say(const QString& sentence)
    {
        m_sentence = sentence;
        update();
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        const Tokens& t = tokens();
        QPainter painter(this);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        const QSizeF room = QSizeF(size()) - QSizeF(4, 5);
        if (m_picture.isNull()) {
            painter.fillRect(QRectF(QPointF(), room), t.field);
            painter.setPen(t.quiet);
            painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, m_sentence);
            return;
        }
        const QSizeF shown = QSizeF(m_picture.size()).scaled(room, Qt::KeepAspectRatio);
        QRectF place(QPointF(1, 1), shown);
        if (layoutDirection() == Qt::RightToLeft)
            place.moveRight(width() - 1);
        painter.fillRect(place.translated(2, 3), QColor(0, 0, 0, 46));
        painter.drawPixmap(place, m_picture, QRectF(m_picture.rect()));
        painter.setPen(QPen(t.line, 1));
        painter.drawRect(place);
    }

private:
    QPixmap m_picture;
    QString m_sentence;
};

FirstSteps::FirstSteps(QWidget* parent)
    : QDialog(parent)
    , m_rover(new Rover(this))
{
    setWindowTitle(tr("First steps"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(air(5), air(5), air(5), air(4));
    row->setSpacing(air(5));
    row->addWidget(makeList());
    auto* column = new QVBoxLayout;
    column->setSpacing(air(1.5));
    column->addLayout(makePage(), 1);
    column->addSpacing(air(2));
    column->addLayout(makeFoot());
    row->addLayout(column, 1);
    resize(scaled(980), scaled(600));
    if (parent != nullptr)
        resize(size().boundedTo(parent->size() - QSize(scaled(20), scaled(20))));
    show(FirstStep::Class);
    putStop();
}

QWidget* FirstSteps::makeList()
{
    auto* list = new QWidget;
    list->setFixedWidth(scaled(216));
    auto* column = new QVBoxLayout(list);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(0.5));
    column->addWidget(new Label(tr("First steps"), 1.25, QFont::DemiBold));
    column->addWidget(
        new Label(tr("From nothing to a panel on the wall."), 0.95, QFont::Normal, true));
    column->addSpacing(air(3));
    for (const FirstStep step : kFirstSteps) {
        auto* entry =
            new Button(Button::Form::Row, tr("%1. %2").arg(int(step) + 1).arg(told(step).heading));
        entry->setCheckable(true);
        entry->setMinimumHeight(scaled(34));
        entry->installEventFilter(this);
        connect(entry, &Button::clicked, this, [this, step] { show(step); });
        column->addWidget(entry);
        m_entries[std::size_t(step)] = entry;
    }
    column->addStretch();
    return list;
}

QLayout* FirstSteps::makePage()
{
    auto* column = new QVBoxLayout;
    column->setSpacing(air(1));
    m_picture = new Picture;
    m_picture->say(tr("The picture is being made."));
    column->addWidget(m_picture, 1);
    column->addSpacing(air(2));
    m_heading = new Label({}, 1.25, QFont::DemiBold);
    m_words = new Label({}, 1.05);
    column->addWidget(m_heading);
    column->addWidget(m_words);
    return column;
}

QLayout* FirstSteps::makeFoot()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(air(2));
    m_toPlace = new Button(Button::Form::Plain, {});
    m_count = new Label({}, 0.95, QFont::Normal, true);
    m_count->setWordWrap(false);
    m_earlier = new Button(Button::Form::Plain, tr("Before"), Icon::Previous);
    m_next = new Button(Button::Form::Plain, tr("Next"), Icon::Next);
    auto* close = new Button(Button::Form::Word, tr("Close"));
    close->setKeyHint(tr("Esc"));
    row->addWidget(m_toPlace);
    row->addStretch();
    row->addWidget(m_count);
    row->addWidget(m_earlier);
    row->addWidget(m_next);
    row->addWidget(close);
    connect(m_toPlace, &Button::clicked, this, [this] { Q_EMIT placeAsked(m_step); });
    connect(m_earlier, &Button::clicked, this, [this] { turn(-1); });
    connect(m_next, &Button::clicked, this, [this] { turn(1); });
    connect(close, &Button::clicked, this, &QDialog::reject);
    return row;
}

void FirstSteps::turn(int by)
{
    const int last = int(kFirstSteps.size()) - 1;
    show(FirstStep(qBound(0, int(m_step) + by, last)));
    putStop();
}

// The list is come into where one is.
void FirstSteps::putStop()
{
    m_rover->setMembers({});
    m_rover->setMembers(QVector<QWidget*>(m_entries.begin(), m_entries.end()), int(m_step));
}

void FirstSteps::show(FirstStep step)
{
    m_step = step;
    const Told said = told(step);
    m_heading->setText(said.heading);
    m_words->setText(said.words);
    m_toPlace->setText(said.toPlace);
    m_toPlace->setAccessibleName(said.toPlace);
    m_toPlace->updateGeometry();
    m_count->setText(tr("%1 of %2").arg(int(step) + 1).arg(kFirstSteps.size()));
    m_picture->set(m_pictures[std::size_t(step)]);
    m_picture->setAccessibleName(tr("Picture: %1").arg(said.heading));
    m_earlier->setEnabled(step != kFirstSteps.front());
    m_next->setEnabled(step != kFirstSteps.back());
    for (const FirstStep one : kFirstSteps)
        entry(one).setChecked(one == step);
}

void FirstSteps::setPicture(FirstStep step, const QPixmap& picture)
{
    m_pictures[std::size_t(step)] = picture;
    if (step == m_step)
        m_picture->set(picture);
}

void FirstSteps::setNoPictures(const QString& why)
{
    m_picture->say(why);
}

void FirstSteps::setMayGo(bool may)
{
    m_toPlace->setVisible(may);
}

bool FirstSteps::hasPicture(FirstStep step) const
{
    return !m_pictures[std::size_t(step)].isNull();
}

// Arrows in the list turn the pages as they go.
bool FirstSteps::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::FocusIn) {
        for (const FirstStep step : kFirstSteps) {
            if (&entry(step) == watched && step != m_step)
                show(step);
        }
    }
    return QDialog::eventFilter(watched, event);
}

void FirstSteps::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
