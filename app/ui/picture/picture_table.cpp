#include "app/ui/picture/picture_table.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "app/ui/kit/tokens.h"
#include "app/ui/session/picture_edits.h"
#include "app/ui/session/piece_edits.h"
#include "core/media/decode.h"

namespace wainscot::ui {

namespace {

constexpr SizePx kUprightPx{1600, 1600};

} // namespace

// How the page comes out while its corners are dragged.
class PictureTable::Result : public QWidget {
public:
    explicit Result(QWidget* parent = nullptr)
        : QWidget(parent)
    {
        setFixedHeight(scaled(112));
        setAccessibleName(PictureTable::tr("How the page comes out"));
    }
    void setImage(const QImage& image)
    {
        m_image = image;
        update();
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        if (m_image.isNull())
            return;
        QPainter painter(this);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        const QSizeF room = QSizeF(size()) - QSizeF(4, 4);
        QRectF place(QPointF(), QSizeF(m_image.size()).scaled(room, Qt::KeepAspectRatio));
        place.moveCenter(QRectF(rect()).center());
        painter.fillRect(place.translated(1, 2), QColor(0, 0, 0, 46));
        painter.drawImage(place, m_image);
    }

private:
    QImage m_image;
};

PictureTable::PictureTable(Session& session, Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_desk(desk)
    , m_heading(new Label(QString(), 1.25, QFont::DemiBold))
    , m_sheet(new PictureSheet)
    , m_help(new Label(QString(), 0.92, QFont::Normal, true))
    , m_facts(new Label(QString(), 0.85, QFont::Normal, true))
    , m_result(new Result)
    , m_taskRover(new Rover(this))
    , m_coverRover(new Rover(this))
    , m_rowRover(new Rover(this))
{
    m_reader.setMaxThreadCount(1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(air(4), air(2), air(4), air(3));
    whole->setSpacing(air(2));
    whole->addLayout(makeHead());
    auto* row = new QHBoxLayout;
    row->setSpacing(air(4));
    row->addWidget(m_sheet, 1);
    row->addWidget(makeNote());
    whole->addLayout(row, 1);
    connectSheet();
    hide();
}

PictureTable::~PictureTable()
{
    m_reader.clear();
    m_reader.waitForDone();
}

QLayout* PictureTable::makeHead()
{
    auto* head = new QHBoxLayout;
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(m_heading);
    words->addWidget(new Label(
        tr("What is done here is done to the picture, wherever it hangs. The original stays."),
        0.92,
        QFont::Normal,
        true));
    head->addLayout(words, 1);
    auto* leave = new Button(Button::Form::Plain, tr("Back to the panel"));
    leave->setKeyHint(tr("Esc"));
    connect(leave, &Button::clicked, this, &PictureTable::close);
    head->addWidget(leave, 0, Qt::AlignTop);
    return head;
}

QLayout* PictureTable::makeTasks()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(air(1));
    const std::pair<PictureSheet::Task, QString> tasks[] = {
        {PictureSheet::Task::Stay, tr("Must stay")},
        {PictureSheet::Task::Straighten, tr("Straighten")},
        {PictureSheet::Task::Cover, tr("Cover")}};
    QVector<QWidget*> members;
    for (const auto& [task, text] : tasks) {
        auto* button = new Button(Button::Form::Task, text);
        button->setCheckable(true);
        connect(button, &Button::clicked, this, [this, task = task] {
            setTask(task);
            m_sheet->setFocus(); // its keys are what comes next
        });
        row->addWidget(button);
        m_tasks << button;
        members << button;
    }
    row->addStretch();
    m_taskRover->setMembers(members);
    return row;
}

QLayout* PictureTable::makeCovers()
{
    auto* row = new QHBoxLayout;
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    const std::pair<Cover, QString> covers[] = {{Cover::Mosaic, tr("In patches")},
        {Cover::Blur, tr("Blurred")},
        {Cover::Flat, tr("Plain")}};
    QVector<QWidget*> members;
    for (const auto& [cover, text] : covers) {
        auto* chip = new Button(Button::Form::Chip, text);
        chip->setCheckable(true);
        chip->setAccessibleName(tr("Cover: %1").arg(text));
        connect(chip, &Button::clicked, this, [this, cover = cover] {
            m_sheet->setCover(cover);
            refreshNote();
        });
        row->addWidget(chip);
        m_covers << chip;
        members << chip;
    }
    row->addStretch();
    m_coverRover->setMembers(members);
    return row;
}

Button* PictureTable::addRow(QLayout* layout, const QString& text, const QString& key, Icon icon)
{
    auto* button = new Button(Button::Form::Row, text, icon);
    button->setKeyHint(key);
    button->setMinimumHeight(scaled(30));
    layout->addWidget(button);
    return button;
}

QWidget* PictureTable::makeNote()
{
    auto* content = new QWidget;
    auto* note = new Card;
    note->setFixedWidth(scaled(304)); // three tasks side by side in full words
    note->setAccessibleName(tr("What can be done with the picture"));
    auto* outer = new QVBoxLayout(note);
    outer->setContentsMargins(1, 1, 1, 1);
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(air(3.5), air(3), air(3.5), air(3));
    column->setSpacing(air(1));
    column->addLayout(makeTasks());
    column->addWidget(m_help);
    m_oval = new Button(Button::Form::Chip, tr("Oval"));
    m_oval->setCheckable(true);
    connect(m_oval, &Button::clicked, this, [this] { m_sheet->setOval(m_oval->isChecked()); });
    m_coverRow = new QWidget;
    m_coverRow->setLayout(makeCovers());
    column->addWidget(m_coverRow);
    column->addWidget(m_oval, 0, Qt::AlignLeft);
    column->addWidget(m_result);
    m_add = addRow(column, QString(), tr("Enter"), Icon::Plus);
    m_remove = addRow(column, QString(), tr("Del"), Icon::TakeOff);
    column->addSpacing(air(1));
    column->addWidget(new Rule);
    column->addSpacing(air(1));
    m_turnRight = addRow(column, tr("Turn to the right"), QStringLiteral("R"), Icon::TurnRight);
    m_turnLeft = addRow(column, tr("Turn to the left"), QStringLiteral("L"), Icon::TurnLeft);
    m_even = addRow(column, tr("Even out the light"), QStringLiteral("E"), Icon::EvenLight);
    m_even->setCheckable(true);
    m_asItCame = addRow(column, tr("Show as it came"), QStringLiteral("B"), Icon::Undo);
    m_asItCame->setCheckable(true);
    m_rowRover->setMembers({m_add, m_remove, m_turnRight, m_turnLeft, m_even, m_asItCame});
    column->addSpacing(air(1));
    column->addWidget(m_facts);
    column->addStretch();
    outer->addWidget(scrolled(content));
    connect(m_turnRight, &Button::clicked, this, [this] { m_desk.turnPicture(m_picture, 1); });
    connect(m_turnLeft, &Button::clicked, this, [this] { m_desk.turnPicture(m_picture, 3); });
    connect(m_even, &Button::clicked, this, [this] {
        m_desk.evenLight(m_picture, m_even->isChecked());
    });
    connect(m_asItCame, &Button::toggled, m_sheet, &PictureSheet::setAsItCame);
    connect(m_add, &Button::clicked, this, [this] {
        if (m_sheet->task() == PictureSheet::Task::Straighten)
            m_sheet->keepCorners();
        else
            m_sheet->addPart();
    });
    connect(m_remove, &Button::clicked, this, [this] {
        if (m_sheet->task() == PictureSheet::Task::Straighten)
            m_desk.straighten(m_picture, std::nullopt, 0);
        else
            m_sheet->removeChosen();
    });
    return note;
}

// Steps of one handle are one step of undo.
int PictureTable::gestureFor(int handle)
{
    if (handle != m_handle) {
        m_handle = handle;
        m_gesture = m_session.newGesture();
    }
    return m_gesture;
}

void PictureTable::connectSheet()
{
    connect(m_sheet,
        &PictureSheet::stayMarked,
        this,
        [this](const std::optional<RectFraction>& part, int handle) {
            m_desk.markMustStay(m_picture, part, gestureFor(handle));
        });
    connect(m_sheet, &PictureSheet::cornersSet, this, [this](const Corners& corners, int handle) {
        m_desk.straighten(m_picture, corners, gestureFor(handle));
    });
    connect(m_sheet,
        &PictureSheet::coversSet,
        this,
        [this](const std::vector<CoveredRegion>& covers, int handle) {
            m_desk.coverParts(m_picture, covers, gestureFor(handle));
        });
    connect(m_sheet, &PictureSheet::trying, this, [this] {
        if (m_sheet->task() == PictureSheet::Task::Straighten)
            m_result->setImage(m_sheet->tried({480, 340}));
    });
    connect(m_sheet, &PictureSheet::choiceChanged, this, &PictureTable::refreshNote);
    connect(m_sheet, &PictureSheet::said, this, &PictureTable::said);
    connect(m_sheet, &PictureSheet::leaveAsked, this, &PictureTable::close);
}

const Picture* PictureTable::picture() const
{
    return m_session.book().pictures.find(m_picture);
}

void PictureTable::open(PieceId piece)
{
    const Piece* own = m_desk.piece(piece);
    if (own == nullptr || !isPicture(own->kind))
        return;
    m_piece = piece;
    m_picture = own->picture;
    const Picture* shown = picture();
    if (shown == nullptr)
        return;
    m_upright = {};
    m_sheet->setUpright({});
    m_asItCame->setChecked(false);
    read(*shown);
    setTask(shown->kind == PictureKind::Work ? PictureSheet::Task::Straighten
                                             : PictureSheet::Task::Stay);
    QWidget::show();
    raise();
    refresh();
    m_sheet->setFocus(Qt::TabFocusReason);
}

void PictureTable::close()
{
    if (!isVisible())
        return;
    hide();
    ++m_reading;
    m_upright = {}; // what is covered stays in no memory longer than needed
    m_sheet->setUpright({});
    Q_EMIT closed();
}

void PictureTable::read(const Picture& picture)
{
    PictureRecipe recipe;
    recipe.path = m_session.originalPath(picture.sha256);
    recipe.format = picture.format;
    recipe.orientation = picture.orientation;
    m_orientation = picture.orientation;
    const int asked = ++m_reading;
    m_reader.start([this, recipe, asked] {
        const auto read = decodeUpright(recipe, kUprightPx);
        const QImage image = read ? *read : QImage();
        QMetaObject::invokeMethod(
            this,
            [this, image, asked] {
                if (asked != m_reading)
                    return;
                m_upright = image;
                if (image.isNull())
                    Q_EMIT said(tr("The picture cannot be read."));
                m_sheet->setUpright(image);
                refresh();
            },
            Qt::QueuedConnection);
    });
}

void PictureTable::waitForPicture()
{
    m_reader.waitForDone();
}

void PictureTable::refresh()
{
    if (!isVisible())
        return;
    const Picture* shown = picture();
    if (shown == nullptr || m_desk.piece(m_piece) == nullptr)
        return close(); // it was undone or taken off
    const int quarters = quartersBetween(m_orientation, shown->orientation);
    if (quarters != 0 && !m_upright.isNull()) {
        m_upright = m_upright.transformed(QTransform().rotate(90.0 * quarters));
        m_sheet->setUpright(m_upright);
    }
    m_orientation = shown->orientation;
    m_sheet->setPicture(*shown);
    m_heading->setText(beginningOf(nameFor(m_session.book(), *m_desk.piece(m_piece)), 80));
    refreshNote();
}

void PictureTable::setTask(PictureSheet::Task task)
{
    m_sheet->setTask(task);
    refreshNote();
}

void PictureTable::refreshNote()
{
    const Picture* shown = picture();
    if (shown == nullptr)
        return;
    const PictureSheet::Task task = m_sheet->task();
    for (int i = 0; i < m_tasks.size(); ++i)
        m_tasks.at(i)->setChecked(i == int(task));
    const bool straightens = task == PictureSheet::Task::Straighten;
    const bool covers = task == PictureSheet::Task::Cover;
    m_coverRow->setVisible(covers);
    m_oval->setVisible(covers);
    m_oval->setChecked(m_sheet->isOval());
    m_result->setVisible(straightens);
    static constexpr Cover kOrder[] = {Cover::Mosaic, Cover::Blur, Cover::Flat};
    for (int i = 0; i < m_covers.size(); ++i)
        m_covers.at(i)->setChecked(m_sheet->cover() == kOrder[i]);
    if (straightens) {
        m_help->setText(tr("Drag the four corners onto the corners of the page. Space takes the "
                           "next one, arrows move it, with Alt finely."));
        m_add->setText(tr("Straighten so"));
        m_remove->setText(tr("Leave it as it lies"));
        m_remove->setEnabled(shown->treatment.straightening.has_value());
        m_result->setImage(m_sheet->tried({480, 340}));
    } else if (covers) {
        m_help->setText(tr("Draw over what nobody shall recognise. Arrows move the part in hand, "
                           "with Shift they size it; Space takes the next."));
        m_add->setText(tr("Cover a part"));
        m_remove->setText(tr("Take this cover off"));
        m_remove->setEnabled(m_sheet->chosen() >= 0);
    } else {
        m_help->setText(tr("Draw round the part that no crop may cut. Arrows move it, with Shift "
                           "they size it."));
        m_add->setText(tr("Mark the middle"));
        m_remove->setText(tr("Nothing must stay"));
        m_remove->setEnabled(shown->mustStay.has_value());
    }
    m_even->setChecked(shown->treatment.evenLight);
    m_asItCame->setEnabled(!shown->treatment.isNothing() && task == PictureSheet::Task::Stay);
    const Piece* piece = m_desk.piece(m_piece);
    m_facts->setText(piece != nullptr ? m_desk.sharpnessInWords(*piece) : QString());
}

void PictureTable::paintEvent(QPaintEvent* /*event*/)
{
    QPainter(this).fillRect(rect(), tokens().wall);
}

void PictureTable::keyPressEvent(QKeyEvent* event)
{
    switch (event->modifiers() == Qt::NoModifier ? event->key() : 0) {
    case Qt::Key_Escape:
        close();
        break;
    case Qt::Key_R:
        m_turnRight->click();
        break;
    case Qt::Key_L:
        m_turnLeft->click();
        break;
    case Qt::Key_E:
        m_even->click();
        break;
    case Qt::Key_B:
        m_asItCame->click();
        break;
    default:
        // Nothing of the panel under the table is reached by a plain letter.
        if (event->modifiers() != Qt::NoModifier)
            QWidget::keyPressEvent(event);
    }
}

} // namespace wainscot::ui
