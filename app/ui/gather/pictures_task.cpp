#include "app/ui/gather/pictures_task.h"

#include <QDateEdit>
#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QMimeData>
#include <QPainter>
#include <QStackedWidget>
#include <QUrl>

#include <algorithm>

#include "app/ui/gather/child_chips.h"
#include "app/ui/kit/tokens.h"
#include "core/model/wall_photo.h"

namespace wainscot::ui {

PicturesTask::PicturesTask(Session& session, PictureShelf& shelf, QWidget* parent)
    : TaskPage(parent)
    , m_session(session)
    , m_shelf(shelf)
    , m_about(new QWidget)
    , m_pages(new QStackedWidget)
    , m_list(new PictureList(shelf))
{
    setAcceptDrops(true);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* page = new QWidget;
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    m_list->setFixedWidth(scaled(250));
    row->addWidget(m_list);
    row->addWidget(new Rule(Qt::Vertical));
    row->addWidget(makeMiddle(), 1);
    m_pages->addWidget(page);
    auto* empty = new QWidget;
    auto* column = new QVBoxLayout(empty);
    column->setContentsMargins(air(9), air(7), air(9), air(7));
    column->setSpacing(air(3));
    column->addWidget(new Label(tr("Drop photos and scanned drawings here. Nobody sees them until "
                                   "you say who is in them."),
        1.5,
        QFont::DemiBold));
    m_add = new Button(Button::Form::Plain, tr("Add pictures"), Icon::Plus);
    connect(m_add, &Button::clicked, this, &PicturesTask::filesAsked);
    column->addWidget(m_add, 0, Qt::AlignLeft);
    column->addStretch();
    m_pages->addWidget(empty);
    outer->addWidget(m_pages);

    auto* about = new QHBoxLayout(m_about);
    about->setContentsMargins(0, 0, 0, 0);
    about->setSpacing(air(1));
    auto* folder = new Button(Button::Form::Word, tr("A whole folder"));
    auto* files = new Button(Button::Form::Plain, tr("Add pictures"), Icon::Plus);
    connect(folder, &Button::clicked, this, &PicturesTask::folderAsked);
    connect(files, &Button::clicked, this, &PicturesTask::filesAsked);
    about->addWidget(folder);
    about->addWidget(files);
    connect(m_list, &PictureList::chosen, this, &PicturesTask::choose);
    connect(&m_shelf, &PictureShelf::loaded, this, [this] {
        if (isVisible())
            refresh();
    });
}

QWidget* PicturesTask::makeMiddle()
{
    auto* ground = new QWidget;
    auto* start = new QHBoxLayout(ground);
    start->setContentsMargins(air(7), air(4), air(7), air(4));
    auto* middle = new QWidget;
    middle->setMaximumWidth(scaled(760));
    start->addWidget(middle, 100);
    start->addStretch(1);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(2));
    m_large = new QLabel;
    m_large->setMinimumHeight(scaled(160));
    column->addWidget(m_large);
    m_who = new Label(tr("Who is in it?"), 1.15, QFont::DemiBold);
    column->addWidget(m_who);
    m_people = new ChildChips;
    connect(m_people, &ChildChips::turned, this, &PicturesTask::setSeen);
    column->addWidget(m_people);
    m_nobody = new Button(Button::Form::Chip, tr("Nobody can be recognised"));
    m_nobody->setCheckable(true);
    connect(m_nobody, &Button::clicked, this, &PicturesTask::nobodySeen);
    column->addWidget(m_nobody, 0, Qt::AlignLeft);
    m_kind = new QWidget;
    auto* kind = new QHBoxLayout(m_kind);
    kind->setContentsMargins(0, 0, 0, 0);
    kind->setSpacing(air(1.5));
    m_photo = new Button(Button::Form::Chip, tr("A photo"), Icon::Photo);
    m_work = new Button(Button::Form::Chip, tr("Something a child made"), Icon::Drew);
    for (Button* button : {m_photo, m_work}) {
        button->setCheckable(true);
        kind->addWidget(button);
        connect(button, &Button::clicked, this, [this, button] {
            if (picture() == nullptr)
                return;
            Picture changed = *picture();
            changed.kind = button == m_photo ? PictureKind::Photo : PictureKind::Work;
            keep(changed, tr("Kind of picture"));
        });
    }
    kind->addStretch();
    column->addWidget(m_kind);
    column->addWidget(makeWallRow());
    const auto field = [&](const QString& name, QString Picture::*part) {
        auto* row = new QHBoxLayout;
        row->setSpacing(air(2));
        auto* label = new Label(name, 1.0);
        label->setMinimumWidth(scaled(90));
        row->addWidget(label);
        auto* line = new QLineEdit;
        line->setAccessibleName(name);
        line->setTextMargins(air(1), 0, air(1), 0);
        row->addWidget(line, 1);
        column->addLayout(row);
        connect(line, &QLineEdit::editingFinished, this, [this, line, part, name] {
            if (picture() == nullptr || line->text().simplified() == (picture()->*part))
                return;
            Picture changed = *picture();
            changed.*part = line->text().simplified();
            keep(changed, name);
        });
        return line;
    };
    m_caption = field(tr("Caption"), &Picture::caption);
    m_by = field(tr("Taken by"), &Picture::by);
    column->addStretch();
    return scrolled(ground);
}

QWidget* PicturesTask::makeWallRow()
{
    m_wall = new QWidget;
    auto* row = new QHBoxLayout(m_wall);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1.5));
    m_wallName = new Label({}, 1.0);
    m_wallName->setWordWrap(false);
    m_hungOn = new QDateEdit;
    m_hungOn->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_hungOn->setFrame(false); // the line inside has one
    m_hungOn->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    m_hungOn->setAccessibleName(tr("Day it hung so"));
    m_hungOn->findChild<QLineEdit*>()->setAccessibleName(tr("Day it hung so"));
    connect(m_hungOn, &QDateEdit::editingFinished, this, &PicturesTask::keepDay);
    row->addWidget(m_wallName);
    row->addWidget(m_hungOn);
    m_legible = new Button(Button::Form::Chip, tr("Nothing on the panels can be made out"));
    m_legible->setCheckable(true);
    connect(m_legible, &Button::clicked, this, &PicturesTask::keepLegible);
    row->addWidget(m_legible);
    row->addStretch();
    return m_wall;
}

std::vector<const Picture*> PicturesTask::all() const
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return {};
    auto pictures = picturesOf(m_session.book(), experience->id);
    const auto walls = wallPhotosOf(m_session.book(), experience->id);
    pictures.insert(pictures.end(), walls.begin(), walls.end());
    return pictures;
}

const Picture* PicturesTask::picture() const
{
    return m_session.book().pictures.find(m_chosen);
}

PictureId PicturesTask::nextToLookAt() const
{
    for (const Picture* one : all()) {
        if (!one->people.lookedAt && one->id != m_chosen)
            return one->id;
    }
    return {};
}

void PicturesTask::choose(PictureId id)
{
    m_chosen = id;
    refresh();
    Q_EMIT stateChanged();
}

void PicturesTask::showPicture()
{
    const Picture& shown = *picture();
    const QImage image = m_shelf.thumbnail(shown);
    const QSize room(scaled(520), scaled(230));
    m_large->setPixmap(image.isNull() ? QPixmap()
                                      : QPixmap::fromImage(image.scaled(
                                          room, Qt::KeepAspectRatio, Qt::SmoothTransformation)));
    m_large->setAccessibleName(shown.caption.isEmpty() ? shown.fileName : shown.caption);
    const bool work = shown.kind == PictureKind::Work;
    const bool ofWall = shown.display.isValid();
    m_who->setText(ofWall ? tr("Who stands in front of it? Whoever is on the panels counts too.")
            : !shown.people.lookedAt ? tr("Who is in it? Nobody sees it until you say so.")
            : work                   ? tr("Who made it?")
                                     : tr("Who is in it?"));
    m_people->setChildren(m_session.book(), shown.people.children);
    m_nobody->setChecked(shown.people.lookedAt && shown.people.children.empty());
    m_photo->setChecked(!work);
    m_work->setChecked(work);
    m_kind->setVisible(!ofWall);
    m_wall->setVisible(ofWall);
    if (ofWall)
        showWall(shown);
    if (!m_caption->hasFocus())
        m_caption->setText(shown.caption);
    if (!m_by->hasFocus())
        m_by->setText(shown.by);
}

void PicturesTask::showWall(const Picture& photo)
{
    const Display* display = m_session.book().displays.find(photo.display);
    m_wallName->setText(
        tr("%1, as it hung on").arg(display != nullptr ? display->name : QString()));
    const QSignalBlocker quiet(m_hungOn);
    m_hungOn->setDate(photo.hungOn.value_or(m_session.today()));
    m_legible->setChecked(!photo.panelsLegible);
}

void PicturesTask::keepDay()
{
    if (picture() == nullptr || picture()->hungOn == m_hungOn->date())
        return;
    Picture changed = *picture();
    changed.hungOn = m_hungOn->date();
    keep(changed, tr("Day of the photo"));
}

void PicturesTask::keepLegible()
{
    if (picture() == nullptr)
        return;
    Picture changed = *picture();
    changed.panelsLegible = !changed.panelsLegible;
    keep(changed, tr("What can be made out"));
}

void PicturesTask::refresh()
{
    const auto pictures = all();
    const bool here = std::any_of(pictures.begin(), pictures.end(), [this](const Picture* one) {
        return one->id == m_chosen;
    });
    if (!here) {
        m_chosen = {};
        const PictureId next = nextToLookAt();
        m_chosen = next.isValid() || pictures.empty() ? next : pictures.front()->id;
    }
    m_pages->setCurrentIndex(pictures.empty() ? 1 : 0);
    m_about->setVisible(!pictures.empty());
    m_list->refresh(m_session.book(), pictures, m_chosen);
    if (picture() != nullptr)
        showPicture();
}

QWidget* PicturesTask::firstStop() const
{
    return m_pages->currentIndex() == 0 ? static_cast<QWidget*>(m_list) : m_add;
}

void PicturesTask::keep(const Picture& changed, const QString& label)
{
    EditBuilder edit(m_session.book(), label);
    edit.put(changed);
    m_session.perform(edit.take());
}

void PicturesTask::setSeen(ChildId child, bool seen)
{
    if (picture() == nullptr)
        return;
    Picture changed = *picture();
    auto& people = changed.people.children;
    std::erase(people, child);
    if (seen)
        people.push_back(child);
    // Taking the last name away says nothing about who is in it.
    changed.people.lookedAt = !people.empty();
    keep(changed, tr("Who is in the picture"));
}

void PicturesTask::nobodySeen()
{
    if (picture() == nullptr)
        return;
    Picture changed = *picture();
    const bool undo = changed.people.lookedAt && changed.people.children.empty();
    changed.people = {!undo, {}};
    keep(changed, tr("Who is in the picture"));
}

TaskPage::Saying PicturesTask::saying()
{
    const auto pictures = all();
    const auto open = std::count_if(
        pictures.begin(), pictures.end(), [](const Picture* one) { return !one->people.lookedAt; });
    if (pictures.empty())
        return {tr("No picture yet."),
            tr("Photos and scanned drawings; originals are never changed."),
            tr("Add pictures"),
            [this] { Q_EMIT filesAsked(); }};
    const QString all = counted(int(pictures.size()), tr("1 picture."), tr("%1 pictures."));
    const QString missing = open == 0
        ? tr("Somebody has said who is in each of them.")
        : counted(int(open), tr("1 is not looked at yet."), tr("%1 are not looked at yet."));
    const PictureId next = nextToLookAt();
    if (next.isValid())
        return {all, missing, tr("Next to look at"), [this, next] { choose(next); }};
    return {all, missing, tr("Take words down"), [this] { Q_EMIT wordsAsked(); }};
}

void PicturesTask::dragEnterEvent(QDragEnterEvent* event)
{
    if (event->mimeData()->hasUrls() && m_session.experience() != nullptr)
        event->acceptProposedAction();
}

void PicturesTask::dropEvent(QDropEvent* event)
{
    QStringList files;
    for (const QUrl& url : event->mimeData()->urls()) {
        if (url.isLocalFile())
            files << url.toLocalFile();
    }
    if (files.isEmpty())
        return;
    event->acceptProposedAction();
    Q_EMIT filesDropped(files);
}

void PicturesTask::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
