#include "app/ui/keep/term_column.h"

#include <QGridLayout>
#include <QMenu>

#include <algorithm>
#include <map>
#include <memory>

#include "app/jobs/sentences.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

struct PartName {
    TermPart part;
    const char* name;
};
constexpr std::array kNames{
    PartName{TermPart::Walls, QT_TRANSLATE_NOOP("wainscot::ui::TermColumn", "Walls, as they hung")},
    PartName{TermPart::Words, QT_TRANSLATE_NOOP("wainscot::ui::TermColumn", "Words and groups")},
    PartName{TermPart::Meetings,
        QT_TRANSLATE_NOOP("wainscot::ui::TermColumn", "Meetings and changed minds")},
    PartName{TermPart::Pictures, QT_TRANSLATE_NOOP("wainscot::ui::TermColumn", "Pictures")},
    PartName{TermPart::LookingBack, QT_TRANSLATE_NOOP("wainscot::ui::TermColumn", "Looking back")},
    PartName{TermPart::Heard, QT_TRANSLATE_NOOP("wainscot::ui::TermColumn", "Who was heard")}};

QString inWords(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return TermColumn::tr("For the classroom");
    case Audience::Building:
        return TermColumn::tr("For the building");
    case Audience::Families:
        return TermColumn::tr("For families");
    case Audience::Public:
        return TermColumn::tr("For the public");
    }
    return {};
}

// From the first day anything happened to the last, at least half a year.
std::pair<QDate, QDate> daysOf(const Book& book, QDate today)
{
    QDate first = today;
    QDate last = today;
    for (const auto& [id, experience] : book.experiences.rows()) {
        if (experience.on) {
            first = std::min(first, *experience.on);
            last = std::max(last, *experience.on);
        }
    }
    return {first, last};
}

} // namespace

TermColumn::TermColumn(Session& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_from(new QLineEdit)
    , m_to(new QLineEdit)
    , m_for(new Button(Button::Form::Plain, inWords(m_audience)))
    , m_said(new Label(tr("Counting the pages."), 0.92))
{
    m_counter.setMaxThreadCount(1);
    setFixedWidth(scaled(312));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(5), air(4), air(5), air(4));
    column->setSpacing(air(2));
    column->addWidget(new Label(tr("The term's file"), 1.25, QFont::DemiBold));
    column->addWidget(
        new Label(tr("One document to keep. What families allow is asked again today."),
            1.0,
            QFont::Normal,
            true));
    auto* days = new QHBoxLayout;
    days->setSpacing(air(1.5));
    m_from->setAccessibleName(tr("First day, as 2026-09-01"));
    m_to->setAccessibleName(tr("Last day, as 2026-12-18"));
    days->addWidget(new Label(tr("From")));
    days->addWidget(m_from, 1);
    days->addWidget(new Label(tr("to")));
    days->addWidget(m_to, 1);
    column->addLayout(days);
    m_for->setOpensList(true);
    auto* grid = new QGridLayout;
    grid->setVerticalSpacing(air(1));
    grid->setColumnStretch(0, 1);
    grid->addWidget(m_for, 0, 0, Qt::AlignLeading);
    grid->addWidget(new Label(tr("Pages"), 0.88, QFont::Normal, true),
        0,
        1,
        Qt::AlignTrailing | Qt::AlignBottom);
    grid->addWidget(new Label(tr("Cover and contents")), 1, 0);
    m_pages << new Label({}, 1.0, QFont::Normal, true);
    grid->addWidget(m_pages.back(), 1, 1, Qt::AlignTrailing);
    for (const PartName& one : kNames) {
        auto* box = new QCheckBox(tr(one.name));
        box->setChecked(true);
        m_parts << box;
        m_pages << new Label({}, 1.0, QFont::Normal, true);
        const int row = int(m_parts.size()) + 1;
        grid->addWidget(box, row, 0);
        grid->addWidget(m_pages.back(), row, 1, Qt::AlignTrailing);
        connect(box, &QCheckBox::toggled, this, &TermColumn::refresh);
    }
    for (Label* pages : std::as_const(m_pages))
        pages->setWordWrap(false);
    column->addLayout(grid);
    auto* card = new Card(Card::Tone::Note);
    auto* inner = new QVBoxLayout(card);
    inner->addWidget(m_said);
    column->addWidget(card);
    column->addStretch();
    auto* pack = new Button(Button::Form::Word, tr("Pack the whole book to carry"), Icon::Sheet);
    column->addWidget(pack, 0, Qt::AlignLeading);
    connect(pack, &Button::clicked, this, &TermColumn::packAsked);
    connect(m_for, &Button::clicked, this, &TermColumn::chooseAudience);
    connect(m_from, &QLineEdit::editingFinished, this, &TermColumn::refresh);
    connect(m_to, &QLineEdit::editingFinished, this, &TermColumn::refresh);
}

TermColumn::~TermColumn()
{
    m_counter.waitForDone();
}

void TermColumn::begin()
{
    const auto [first, last] = daysOf(m_session.book(), m_session.today());
    m_from->setText(first.toString(Qt::ISODate));
    m_to->setText(last.toString(Qt::ISODate));
}

void TermColumn::setDays(QDate from, QDate to)
{
    m_from->setText(from.toString(Qt::ISODate));
    m_to->setText(to.toString(Qt::ISODate));
    refresh();
}

void TermColumn::setAudience(Audience audience)
{
    m_audience = audience;
    m_for->setText(inWords(audience));
    m_for->setAccessibleName(m_for->text());
    m_for->updateGeometry();
    refresh();
}

void TermColumn::chooseAudience()
{
    QMenu menu(this);
    for (const Audience audience : kAudiences)
        connect(menu.addAction(inWords(audience)), &QAction::triggered, this, [this, audience] {
            setAudience(audience);
        });
    menu.exec(m_for->mapToGlobal(QPoint(0, m_for->height())));
}

KeepJob TermColumn::job() const
{
    KeepJob job;
    job.from = QDate::fromString(m_from->text().trimmed(), Qt::ISODate);
    job.to = QDate::fromString(m_to->text().trimmed(), Qt::ISODate);
    job.audience = m_audience;
    job.parts = {TermPart::Opening};
    for (std::size_t i = 0; i < kNames.size(); ++i) {
        if (m_parts[qsizetype(i)]->isChecked())
            job.parts.insert(kNames[i].part);
    }
    const bool letter = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    if (letter)
        job.paper = {inches(8.5), inches(11)};
    return job;
}

// All pages are laid out to be counted, which takes a while for a long term.
void TermColumn::refresh()
{
    JobRun run;
    run.today = m_session.today();
    m_counter.clear();
    m_counter.start([this, job = job(), book = m_session.book(), run, round = ++m_round] {
        auto planned = std::make_shared<Result<KeepOutcome>>(job.plan(book, run));
        QMetaObject::invokeMethod(
            this,
            [this, planned, round] {
                if (round == m_round)
                    showCount(*planned);
            },
            Qt::QueuedConnection);
    });
}

void TermColumn::showCount(const Result<KeepOutcome>& planned)
{
    const bool any = planned && planned->experiences > 0;
    m_counted = any ? planned->pages : 0;
    const auto pages = [](int number) { return QLocale().toString(number); };
    m_pages.front()->setText(any ? pages(planned->frontPages) : QString());
    for (std::size_t i = 0; i < kNames.size(); ++i) {
        const auto at =
            any ? planned->pagesOf.find(kNames[i].part) : decltype(planned->pagesOf.end())();
        m_pages[qsizetype(i) + 1]->setText(
            any && at != planned->pagesOf.end() ? pages(at->second) : pages(0));
    }
    if (!any) {
        m_said->setText(tr("Nothing in the book has a day between these two."));
    } else {
        const QString held =
            tr("%1, %2 pages.")
                .arg(counted(planned->experiences, tr("1 experience"), tr("%1 experiences")))
                .arg(planned->pages);
        const int left = int(planned->leftOut.size());
        if (left == 0)
            m_said->setText(held + QLatin1Char(' ') + tr("Nothing is left out."));
        else
            m_said->setText(held + QLatin1Char(' ')
                + tr("Left out %1:").arg(counted(left, tr("1 thing"), tr("%1 things")))
                + QLatin1Char('\n') + reasonsOf(planned->leftOut).join(QLatin1Char('\n')));
    }
}

} // namespace wainscot::ui
