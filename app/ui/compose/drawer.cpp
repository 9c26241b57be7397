#include "app/ui/compose/drawer.h"

#include <QCoreApplication>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

QString inWords(Audience audience)
{
    const auto tr = [](const char* text) { return QCoreApplication::translate("Audience", text); };
    switch (audience) {
    case Audience::Classroom:
        return tr("the classroom");
    case Audience::Building:
        return tr("the hallway");
    case Audience::Families:
        return tr("families");
    case Audience::Public:
        return tr("everyone");
    }
    return {};
}

Drawer::Drawer(Session& session, Desk& desk, PictureShelf& shelf, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_desk(desk)
    , m_shelf(shelf)
{
    setAccessibleName(tr("What you have"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(makeHead());
    m_list = new QWidget;
    m_listLayout = new QVBoxLayout(m_list);
    m_listLayout->setContentsMargins(air(4), air(1), air(3), air(3));
    m_listLayout->setSpacing(air(1.5));
    column->addWidget(scrolled(m_list), 1);
    m_listRover = new Rover(this);
    setFixedWidth(scaled(308));

    m_rebuildSoon.setSingleShot(true);
    m_rebuildSoon.setInterval(0);
    connect(&m_rebuildSoon, &QTimer::timeout, this, &Drawer::rebuild);
    const auto soon = [this] { m_rebuildSoon.start(); };
    connect(&m_session, &Session::changed, this, soon);
    connect(&m_session, &Session::moved, this, soon);
    connect(&m_session, &Session::opened, this, soon);
    connect(&m_shelf, &PictureShelf::loaded, this, [this](const QString& sha) {
        for (ThingEntry* entry : m_bySha.values(sha)) {
            if (const Picture* picture =
                    m_session.book().pictures.find(PictureId(entry->item().id)))
                entry->setPicture(m_shelf.thumbnail(*picture));
        }
    });
    rebuild();
}

QWidget* Drawer::makeHead()
{
    auto* head = new QWidget;
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(air(4), air(3), air(4), air(2));
    column->setSpacing(air(2));
    auto* first = new QHBoxLayout;
    first->addWidget(new Label(tr("What you have"), 1.15, QFont::DemiBold), 1);
    auto* away = new Button(Button::Form::Word, tr("Put away"));
    away->setAccessibleName(tr("Put away: What you have"));
    away->setKeyHint(QStringLiteral("F4"));
    away->setQuiet(true);
    away->setRelativeSize(0.92);
    connect(away, &Button::clicked, this, &Drawer::putAwayAsked);
    first->addWidget(away);
    column->addLayout(first);

    m_search = new QLineEdit;
    m_search->setPlaceholderText(tr("Find words, a child, a caption"));
    m_search->setAccessibleName(tr("Find in what you have"));
    m_search->setMinimumHeight(scaled(30));
    m_search->setTextMargins(air(2), 0, air(2), 0);
    connect(m_search, &QLineEdit::textChanged, this, [this] { m_rebuildSoon.start(); });
    column->addWidget(m_search);

    auto* kinds = new QHBoxLayout;
    kinds->setSpacing(air(0.5));
    const QStringList names{tr("Words"), tr("Photos"), tr("Work"), tr("Notes")};
    QVector<QWidget*> members;
    for (int i = 0; i < names.size(); ++i) {
        auto* kind = new Button(Button::Form::Task, names.at(i));
        kind->setChecked(i == 0);
        kind->setAutoExclusive(true);
        connect(kind, &Button::clicked, this, [this, i] {
            m_kind = static_cast<Kind>(i);
            rebuild();
        });
        kinds->addWidget(kind);
        m_kinds << kind;
        members << kind;
    }
    kinds->addStretch();
    m_kindRover = new Rover(this);
    m_kindRover->setMembers(members);
    column->addLayout(kinds);

    auto* chips = new QHBoxLayout;
    chips->setSpacing(air(1.5));
    m_notOnWall = new Button(Button::Form::Chip, tr("Not on a wall"));
    m_starred = new Button(Button::Form::Chip, tr("Starred"));
    for (Button* chip : {m_notOnWall, m_starred}) {
        chip->setRelativeSize(0.92);
        connect(chip, &Button::toggled, this, &Drawer::rebuild);
        chips->addWidget(chip);
    }
    chips->addStretch();
    column->addLayout(chips);
    return head;
}

void Drawer::find()
{
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
}

void Drawer::show(DrawerItem::Kind kind, bool work)
{
    m_kind = kind == DrawerItem::Kind::Quote ? Kind::Words
        : kind == DrawerItem::Kind::Note     ? Kind::Notes
        : work                               ? Kind::Work
                                             : Kind::Photos;
    m_kinds.at(int(m_kind))->setChecked(true);
    rebuild();
}

QWidget* Drawer::firstStop() const
{
    QWidget* stop = m_listRover->stop();
    return stop != nullptr ? stop : m_search;
}

DrawerEntry* Drawer::entryFor(DrawerItem item) const
{
    for (auto* entry : m_list->findChildren<DrawerEntry*>()) {
        if (entry->item().kind == item.kind && entry->item().id == item.id)
            return entry;
    }
    return nullptr;
}

bool Drawer::matches(const QString& text) const
{
    return m_search->text().trimmed().isEmpty()
        || text.contains(m_search->text().trimmed(), Qt::CaseInsensitive);
}

QString Drawer::notFor() const
{
    const Display* display = m_session.display();
    return display != nullptr ? tr("not for %1").arg(inWords(display->audience)) : QString();
}

// On the panel one is at: "here"; on another of this display: its number; else the display's name.
QString Drawer::whereUsed(const DrawerItem& item) const
{
    const Book& book = m_session.book();
    for (const auto& [id, piece] : book.pieces.rows()) {
        const bool same = item.kind == DrawerItem::Kind::Quote ? piece.quote.number() == item.id
            : item.kind == DrawerItem::Kind::Picture           ? piece.picture.number() == item.id
                                                               : false;
        const Panel* panel = same ? book.panels.find(piece.panel) : nullptr;
        const Display* display = panel != nullptr ? book.displays.find(panel->display) : nullptr;
        if (display == nullptr)
            continue;
        return m_session.display() == display ? tr("on panel %1").arg(panel->number)
                                              : tr("on %1").arg(display->name);
    }
    return {};
}

void Drawer::addSection(const QString& heading, const QString& count)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(air(1));
    auto* name = new Label(heading, 1.0, QFont::DemiBold);
    name->setWordWrap(false);
    row->addWidget(name);
    row->addWidget(new Label(count, 0.88, QFont::Normal, true), 1);
    m_listLayout->addLayout(row);
}

void Drawer::addEmpty(const QString& text)
{
    m_listLayout->addWidget(new Label(text, 0.95, QFont::Normal, true));
}

void Drawer::addEntry(DrawerEntry* entry, QVector<QWidget*>& entries)
{
    entry->setUsed(whereUsed(entry->item()));
    if (const auto why = m_desk.refusal(entry->item()))
        entry->setForbidden(notFor(), *why);
    connect(entry, &DrawerEntry::wanted, this, &Drawer::wanted);
    m_listLayout->addWidget(entry);
    entries << entry;
}

void Drawer::rebuild()
{
    m_rebuildSoon.stop();
    const auto* had = qobject_cast<DrawerEntry*>(m_listRover->stop());
    const bool focused = had != nullptr && had->hasFocus();
    const DrawerItem before = had != nullptr ? had->item() : DrawerItem{};
    m_listRover->setMembers({});
    m_bySha.clear();
    while (QLayoutItem* item = m_listLayout->takeAt(0)) {
        if (QLayout* row = item->layout()) {
            while (QLayoutItem* part = row->takeAt(0)) {
                delete part->widget();
                delete part;
            }
        }
        delete item->widget();
        delete item;
    }
    QVector<QWidget*> entries;
    switch (m_kind) {
    case Kind::Words:
        addWords(entries);
        break;
    case Kind::Photos:
        addPictures(entries, PictureKind::Photo);
        break;
    case Kind::Work:
        addPictures(entries, PictureKind::Work);
        break;
    case Kind::Notes:
        addNotes(entries);
        break;
    }
    m_listLayout->addStretch();
    m_listRover->setMembers(entries);
    if (DrawerEntry* again = focused ? entryFor(before) : nullptr)
        again->setFocus();
}

void Drawer::addWords(QVector<QWidget*>& entries)
{
    const Experience* experience = m_session.experience();
    const Book& book = m_session.book();
    if (experience == nullptr)
        return;
    const auto quotes = quotesOf(book, experience->id);
    if (quotes.empty()) {
        addEmpty(tr("No words yet. Take down six answers or more, or gather them from a file."));
        return;
    }
    const PromptSet* set = book.promptSets.find(experience->promptSet);
    std::vector<Prompt> prompts = set != nullptr ? set->prompts : defaultPromptSet().prompts;
    prompts.push_back({QString(), tr("Told in a meeting")});
    for (const Prompt& prompt : prompts) {
        QVector<DrawerEntry*> slips;
        int all = 0;
        int free = 0;
        for (const Quote* quote : quotes) {
            if (quote->prompt.compare(prompt.key, Qt::CaseInsensitive) != 0)
                continue;
            ++all;
            const DrawerItem item{DrawerItem::Kind::Quote, quote->id.number()};
            const bool used = !whereUsed(item).isEmpty();
            free += used ? 0 : 1;
            const Child* child = book.children.find(quote->child);
            const QString who = child != nullptr ? displayName(*child) : QString();
            if ((m_notOnWall->isChecked() && used) || (m_starred->isChecked() && quote->stars == 0)
                || !matches(quote->words + QLatin1Char(' ') + who))
                continue;
            slips << new Slip(item, quote->words, who);
        }
        if (slips.isEmpty())
            continue;
        addSection(prompt.text, tr("%1, %2 not on a wall").arg(all).arg(free));
        for (DrawerEntry* slip : slips)
            addEntry(slip, entries);
    }
    if (entries.isEmpty())
        addEmpty(tr("Nothing here fits what you look for."));
}

void Drawer::addPictures(QVector<QWidget*>& entries, PictureKind kind)
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return;
    for (const Picture* picture : picturesOf(m_session.book(), experience->id)) {
        if (picture->kind != kind)
            continue;
        const DrawerItem item{DrawerItem::Kind::Picture, picture->id.number()};
        if ((m_notOnWall->isChecked() && !whereUsed(item).isEmpty())
            || (m_starred->isChecked() && picture->stars == 0)
            || !matches(picture->caption + QLatin1Char(' ') + picture->fileName))
            continue;
        QStringList people;
        for (const ChildId id : picture->people.children) {
            if (const Child* child = m_session.book().children.find(id))
                people << displayName(*child);
        }
        const QString who = !picture->people.lookedAt ? tr("not looked at yet")
            : people.isEmpty()                        ? tr("nobody to recognise")
                                                      : people.join(QStringLiteral(", "));
        auto* entry = new ThingEntry(
            item, picture->caption.isEmpty() ? picture->fileName : picture->caption, who, true);
        entry->setPicture(m_shelf.thumbnail(*picture));
        m_bySha.insert(picture->sha256, entry);
        addEntry(entry, entries);
    }
    if (entries.isEmpty()) {
        addEmpty(kind == PictureKind::Photo
                ? tr("No photos here. Gather a folder of photos in the Book menu.")
                : tr("No work here. Scanned drawings come in with the photos."));
    }
}

void Drawer::addNotes(QVector<QWidget*>& entries)
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return;
    const auto note = [&](PieceKind kind, const QString& text) {
        if (!matches(text + QLatin1Char(' ') + wordFor(kind)))
            return;
        const DrawerItem item{DrawerItem::Kind::Note, std::int64_t(kind)};
        addEntry(new ThingEntry(item,
                     text.isEmpty() ? tr("Empty, to be written on the panel") : text.simplified(),
                     wordFor(kind),
                     false),
            entries);
    };
    note(PieceKind::Title, experience->title);
    note(PieceKind::Question, {});
    note(PieceKind::Context, experience->context);
    note(PieceKind::Interpretation, experience->interpretation);
    note(PieceKind::NextStep, experience->nextSteps);
    note(PieceKind::Invitation, {});
    note(PieceKind::Credits, experience->credits);
}

void Drawer::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().window);
}

} // namespace wainscot::ui
