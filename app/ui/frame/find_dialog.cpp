#include "app/ui/frame/find_dialog.h"

#include <QLocale>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

#include "app/ui/kit/tokens.h"
#include "app/ui/kit/words_slip.h"

namespace wainscot::ui {

namespace {

constexpr std::size_t kMostShown = 40; // more are read by nobody

} // namespace

FindDialog::FindDialog(const Book& book, const QuoteFinder& finder, QWidget* parent)
    : QDialog(parent)
    , m_book(book)
    , m_finder(finder)
    , m_typed(new QLineEdit)
    , m_says(new Label({}, 0.92, QFont::Normal, true))
    , m_list(new QVBoxLayout)
    , m_rover(new Rover(this))
{
    setWindowTitle(tr("Find in the whole book"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(5), air(5), air(5), air(5));
    column->setSpacing(air(2));
    m_typed->setPlaceholderText(tr("Words, or a child's name"));
    m_typed->setAccessibleName(tr("Find in the whole book"));
    m_typed->setMinimumHeight(scaled(30));
    m_typed->setTextMargins(air(2), 0, air(2), 0);
    column->addWidget(m_typed);
    column->addWidget(m_says);
    auto* content = new Ground(Ground::Tone::Window);
    auto* outer = new QVBoxLayout(content);
    outer->setContentsMargins(0, 0, 0, 0);
    m_list->setSpacing(air(1));
    outer->addLayout(m_list);
    outer->addStretch();
    m_area = scrolled(content);
    column->addWidget(m_area, 1);
    resize(scaled(560), scaled(520));
    connect(m_typed, &QLineEdit::textChanged, this, &FindDialog::look);
    connect(m_typed, &QLineEdit::returnPressed, this, [this] {
        if (!m_found.empty())
            choose(m_found.front());
    });
    look({});
}

void FindDialog::look(const QString& typed)
{
    m_found = m_finder.find(typed);
    m_stops.clear();
    while (QLayoutItem* item = m_list->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    const std::size_t shown = std::min(m_found.size(), kMostShown);
    for (std::size_t i = 0; i < shown; ++i)
        show(m_found[i]);
    m_rover->setMembers(m_stops);
    m_area->verticalScrollBar()->setValue(0);
    const QString all = counted(int(m_found.size()), tr("1 answer"), tr("%1 answers"));
    m_says->setText(typed.trimmed().isEmpty()
            ? tr("Every child, every year. Accents and capitals do not matter.")
            : m_found.empty() ? tr("No words like this in the book.")
            : shown < m_found.size()
            ? tr("%1. The latest %2 are shown; type more to find others.").arg(all).arg(shown)
            : tr("%1, the latest first.").arg(all));
}

void FindDialog::show(QuoteId id)
{
    const Quote* quote = m_book.quotes.find(id);
    const Child* child = m_book.children.find(quote->child);
    const Experience* experience = m_book.experiences.find(quote->experience);
    QStringList foot;
    if (child != nullptr)
        foot << displayName(*child);
    if (experience != nullptr)
        foot << experience->title;
    if (quote->on)
        foot << QLocale().toString(*quote->on, QLocale::ShortFormat);
    auto* slip = new WordsSlip(quote->words, foot.join(QStringLiteral(", ")), 1.0);
    slip->setAccessibleName(quote->words);
    slip->setAccessibleDescription(foot.join(QStringLiteral(", ")));
    connect(slip, &WordsSlip::clicked, this, [this, id] { choose(id); });
    m_list->addWidget(slip);
    m_stops << slip;
}

void FindDialog::choose(QuoteId id)
{
    accept();
    Q_EMIT chosen(id);
}

} // namespace wainscot::ui
