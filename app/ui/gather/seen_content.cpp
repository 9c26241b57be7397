// What stands on the page of what you saw.
#include "app/ui/gather/seen_task.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>

#include <algorithm>

#include "app/jobs/observation_edits.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/kit/writing_card.h"
#include "app/ui/places/pages.h"

namespace wainscot::ui {

namespace {

constexpr int kFieldLines = 5;

} // namespace

QWidget* SeenTask::makeMiddle()
{
    auto* ground = new QWidget;
    auto* start = new QHBoxLayout(ground);
    start->setContentsMargins(air(9), air(5), air(9), air(4));
    auto* middle = new QWidget;
    middle->setMaximumWidth(scaled(760));
    start->addWidget(middle, 100);
    start->addStretch(1);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(2));
    column->addWidget(new Label(tr("What do you see?"), 1.25, QFont::DemiBold));
    auto* card = new WritingCard(tr("What do you see?"), kFieldLines, 1.15);
    m_words = card->field();
    m_words->installEventFilter(this);
    connect(m_words, &QPlainTextEdit::textChanged, this, &SeenTask::stateChanged);
    column->addWidget(card);
    column->addWidget(
        new Label(tr("Ctrl+Enter keeps it and begins another."), 0.9, QFont::Normal, true));
    column->addSpacing(air(2));
    column->addWidget(new Label(tr("Who was there?"), 1.0, QFont::DemiBold));
    m_people = new ChildChips;
    connect(m_people, &ChildChips::turned, this, &SeenTask::setSeen);
    column->addWidget(m_people);
    column->addSpacing(air(2));
    auto* when = new QHBoxLayout;
    when->setSpacing(air(2));
    when->addWidget(new Label(tr("When"), 1.0, QFont::DemiBold));
    m_time = new QDateTimeEdit;
    m_time->setDisplayFormat(QStringLiteral("yyyy-MM-dd HH:mm"));
    m_time->setAccessibleName(tr("When"));
    when->addWidget(m_time);
    when->addStretch();
    column->addLayout(when);
    auto* photo = new QHBoxLayout;
    photo->setSpacing(air(3));
    m_picture = new QLabel;
    photo->addWidget(m_picture);
    m_add = new Button(Button::Form::Word, tr("A picture..."), Icon::Photo);
    connect(m_add, &Button::clicked, this, &SeenTask::askPicture);
    photo->addWidget(m_add);
    photo->addStretch();
    column->addLayout(photo);
    column->addStretch();
    return scrolled(ground);
}

void SeenTask::buildList()
{
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(air(4), air(4), air(3), air(3));
    column->setSpacing(air(0.5));
    QVector<QWidget*> stops;
    const Experience* experience = m_session.experience();
    const auto all = experience != nullptr ? observationsOf(m_session.book(), experience->id)
                                           : std::vector<const Observation*>();
    column->addWidget(new Label(
        all.empty() ? tr("Nothing noted yet.") : tr("What you saw"), 1.0, QFont::DemiBold));
    int current = 0;
    for (const Observation* seen : all) {
        const QString words = seen->words.simplified();
        auto* row =
            new Button(Button::Form::Row, words.isEmpty() ? tr("A picture without words") : words);
        row->setMayShrink(true);
        row->setCheckable(true);
        row->setChecked(seen->id == m_draft.id);
        row->setDetail(whoWasThere(*seen));
        connect(row, &Button::clicked, this, [this, id = seen->id] { choose(id); });
        column->addWidget(row);
        if (seen->id == m_draft.id)
            current = int(stops.size());
        stops << row;
    }
    column->addStretch();
    replaceContent(*m_list, content);
    m_notes->setMembers(stops, current);
}

// "9:42, Wren, Kofi"
QString SeenTask::whoWasThere(const Observation& seen) const
{
    QStringList parts;
    if (seen.at)
        parts << (seen.at->date() == m_session.today()
                ? QLocale().toString(seen.at->time(), QLocale::ShortFormat)
                : QLocale().toString(*seen.at, QLocale::ShortFormat));
    for (const ChildId id : seen.children) {
        if (const Child* child = m_session.book().children.find(id))
            parts << displayName(*child);
    }
    return parts.isEmpty() ? QStringLiteral(" ") : parts.join(QStringLiteral(", "));
}

void SeenTask::showPicture()
{
    const Picture* picture = m_session.book().pictures.find(m_draft.picture);
    const QImage image = picture != nullptr ? m_shelf.thumbnail(*picture) : QImage();
    m_picture->setVisible(!image.isNull());
    if (!image.isNull())
        m_picture->setPixmap(QPixmap::fromImage(
            image.scaled(scaled(180), scaled(120), Qt::KeepAspectRatio, Qt::SmoothTransformation)));
    m_add->setText(picture != nullptr ? tr("Another picture...") : tr("A picture..."));
    m_add->updateGeometry();
}

} // namespace wainscot::ui
