#include "app/ui/gather/cell_note.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QMenu>

#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "app/ui/compose/drawer.h"
#include "app/ui/kit/tokens.h"
#include "core/base/in_words.h"
#include "core/permit/family_answers.h"
#include "core/voice/participation.h"

namespace wainscot::ui {

namespace {

constexpr std::array kAnswers{
    FamilyAnswer::Yes, FamilyAnswer::No, FamilyAnswer::Withdrawn, FamilyAnswer::NotSaid};

QString dayInWords(const std::optional<QDate>& day)
{
    return day ? QLocale().toString(*day, QLocale::LongFormat) : CellNote::tr("an unknown day");
}

} // namespace

CellNote::CellNote(Session& session, QWidget* parent)
    : Card(Tone::Card, parent)
    , m_session(session)
    , m_head(new Label({}, 1.08, QFont::DemiBold))
    , m_story(new Label({}, 0.95, QFont::Normal, true))
    , m_rover(new Rover(this))
    , m_by(new QLineEdit)
    , m_on(new QDateEdit)
    , m_display(new Button(Button::Form::Plain, tr("Show it"), Icon::Stop))
    , m_about(new Button(Button::Form::Word, tr("Name, birth, languages"), Icon::Note))
    , m_files(new Label({}, 0.95))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(4), air(2.5), air(4), air(2.5));
    column->setSpacing(air(1.5));
    auto* first = new QHBoxLayout;
    first->setSpacing(air(3));
    auto* words = new QVBoxLayout;
    words->setSpacing(air(0.5));
    words->addWidget(m_head);
    words->addWidget(m_story);
    first->addLayout(words, 1);
    first->addWidget(m_display, 0, Qt::AlignTop);
    first->addWidget(m_about, 0, Qt::AlignTop);
    column->addLayout(first);
    auto* second = new QHBoxLayout;
    second->setSpacing(air(1.5));
    makeAnswers(*second);
    second->addSpacing(air(3));
    second->addWidget(new Label(tr("said by"), 0.95, QFont::Normal, true));
    m_by->setTextMargins(air(1), 0, air(1), 0);
    m_by->setPlaceholderText(tr("her mother"));
    m_by->setAccessibleName(tr("Who said so"));
    m_by->setMaximumWidth(scaled(200));
    second->addWidget(m_by, 1);
    second->addWidget(new Label(tr("on"), 0.95, QFont::Normal, true));
    m_on->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_on->setFrame(false); // the line inside has one
    m_on->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    m_on->setAccessibleName(tr("On which day"));
    m_on->findChild<QLineEdit*>()->setAccessibleName(tr("On which day"));
    second->addWidget(m_on);
    second->addStretch();
    column->addLayout(second);
    m_files->setVisible(false);
    column->addWidget(m_files);
    connect(m_by, &QLineEdit::editingFinished, this, &CellNote::keepRecord);
    connect(m_on, &QDateEdit::editingFinished, this, &CellNote::keepRecord);
    connect(m_display, &Button::clicked, this, &CellNote::offerDisplays);
    connect(m_about, &Button::clicked, this, [this] { Q_EMIT childAsked(m_child); });
}

void CellNote::makeAnswers(QBoxLayout& row)
{
    const std::array<QString, 4> names{tr("Yes"), tr("No"), tr("Withdrawn"), tr("Not said")};
    QVector<QWidget*> stops;
    for (std::size_t i = 0; i < kAnswers.size(); ++i) {
        auto* chip = new Button(Button::Form::Chip, names[i]);
        chip->setCheckable(true);
        chip->setAutoExclusive(true);
        connect(chip, &Button::clicked, this, [this, answer = kAnswers[i]] {
            Q_EMIT answerChosen(answer);
        });
        m_answers[i] = chip;
        row.addWidget(chip);
        stops << chip;
    }
    m_rover->setMembers(stops);
}

const PermissionRecord* CellNote::record() const
{
    const auto records = recordsOf(m_session.book(), m_child, m_audience, m_to);
    return records.empty() ? nullptr : records.back();
}

void CellNote::showCell(const Child* child, Audience audience, Permission to)
{
    setVisible(child != nullptr);
    if (child == nullptr)
        return;
    m_showing = true;
    m_child = child->id;
    m_audience = audience;
    m_to = to;
    const FamilyAnswer answer = familyAnswer(m_session.book(), *child, audience, to);
    m_head->setText(tr("%1, for %2: %3 %4")
                        .arg(displayName(*child),
                            inWords(audience),
                            inWords(to),
                            answer == FamilyAnswer::Yes ? tr("allowed") : inWords(answer)));
    check(answer);
    m_isSeveral = false;
    m_about->show();
    m_about->setAccessibleName(tr("Name, birth, languages: %1").arg(displayName(*child)));
    showRecord();
    showDisplays();
    showFiles();
    m_showing = false;
}

void CellNote::showSeveral(int cells, std::optional<FamilyAnswer> same)
{
    m_isSeveral = true;
    m_head->setText(tr("%1 answers of families are chosen").arg(cells));
    m_story->setText(tr("What you choose goes to all of them, in one step."));
    check(same);
    m_on->setEnabled(false);
    m_display->hide();
    m_about->hide();
}

// None of exclusive chips can only be shown while they are not exclusive.
void CellNote::check(std::optional<FamilyAnswer> answer)
{
    for (std::size_t i = 0; i < kAnswers.size(); ++i) {
        m_answers[i]->setAutoExclusive(false);
        m_answers[i]->setChecked(kAnswers[i] == answer);
        m_answers[i]->setAutoExclusive(true);
    }
}

void CellNote::showRecord()
{
    const auto records = recordsOf(m_session.book(), m_child, m_audience, m_to);
    m_on->setEnabled(!records.empty());
    if (records.empty()) {
        m_on->setDate(m_session.today());
        m_story->setText(tr("Nobody has noted who said so. Space changes what is allowed."));
        return;
    }
    const PermissionRecord& last = *records.back();
    m_by->setText(last.by);
    m_on->setDate(last.on.value_or(m_session.today()));
    QString story = last.by.isEmpty() ? tr("Noted on %1.").arg(dayInWords(last.on))
                                      : tr("%1 said so on %2.").arg(last.by, dayInWords(last.on));
    story = capitalised(story);
    if (!last.note.isEmpty())
        story += QLatin1Char(' ') + last.note;
    if (last.answer(m_to) == FamilyAnswer::Withdrawn && records.size() > 1)
        story += QLatin1Char(' ')
            + tr("It had been allowed since %1.").arg(dayInWords(records[records.size() - 2]->on));
    m_story->setText(story);
}

void CellNote::showDisplays()
{
    const Book& book = m_session.book();
    const Child* child = book.children.find(m_child);
    QStringList names;
    m_still.clear();
    if (!child->permissions.allows(m_to, m_audience)) {
        for (const Display* display : displaysWith(book, m_child)) {
            if (display->audience != m_audience)
                continue;
            m_still.push_back(display->id);
            names << display->name;
        }
    }
    m_display->setVisible(!m_still.empty());
    if (m_still.empty())
        return;
    m_display->setText(counted(int(m_still.size()), tr("1 display holds"), tr("%1 displays hold"))
        + QLatin1Char(' ') + tr("%1: show it").arg(displayName(*child)));
    m_display->setToolTip(tr("%1. What is not allowed is not printed; look at what is left.")
                              .arg(names.join(QStringLiteral(", "))));
    m_display->updateGeometry();
}

// What was made for this audience and holds more than may be seen of the child now.
void CellNote::showFiles()
{
    const Child* child = m_session.book().children.find(m_child);
    const auto files =
        OutdatedFilesJob{child->name}.run(m_session.book(), madeFilesIn(m_session.folder()), {});
    QStringList names;
    for (const OutdatedFile& one : files ? *files : std::vector<OutdatedFile>()) {
        if (one.file.audience == m_audience)
            names << inWords(one.file);
    }
    m_files->setVisible(!names.isEmpty());
    m_files->setText(tr("To be made anew: %1.").arg(listInWords(names)));
}

// The only one at once; of several, a list to go through with hammer and ladder.
void CellNote::offerDisplays()
{
    if (m_still.size() == 1) {
        Q_EMIT displayAsked(m_still.front());
        return;
    }
    QMenu menu(this);
    for (const DisplayId id : m_still) {
        menu.addAction(m_session.book().displays.find(id)->name, this, [this, id] {
            Q_EMIT displayAsked(id);
        });
    }
    menu.exec(m_display->mapToGlobal(QPoint(0, m_display->height())));
}

void CellNote::keepRecord()
{
    const PermissionRecord* known = record();
    if (m_showing || m_isSeveral || known == nullptr)
        return;
    PermissionRecord told = *known;
    told.by = saidBy();
    if (known->on || m_on->date() != m_session.today())
        told.on = m_on->date();
    EditBuilder edit(m_session.book(), tr("Who said so"));
    edit.put(told);
    m_session.perform(edit.take());
}

} // namespace wainscot::ui
