#include "app/ui/gather/sheets_dialog.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QMenu>
#include <QPaintEvent>
#include <QPainter>

#include "app/ui/kit/tokens.h"
#include "core/base/language_name.h"

namespace wainscot::ui {

namespace {

constexpr SizeMm kA4{Mm(210), Mm(297)};
constexpr SizeMm kLetter{Mm(215.9), Mm(279.4)};

// All languages in which something of a set is written, the set's own first.
QStringList languagesOf(const PromptSet& set)
{
    QStringList codes{set.language};
    for (const Prompt& prompt : set.prompts) {
        for (const PromptWording& wording : prompt.others) {
            if (!wording.text.isEmpty() && !codes.contains(wording.language))
                codes << wording.language;
        }
    }
    return codes;
}

} // namespace

SheetPreview::SheetPreview(PictureShelf& shelf, QWidget* parent)
    : QWidget(parent)
    , m_shelf(shelf)
{
    setMinimumSize(scaled(380), scaled(430));
    setAccessibleName(tr("The page"));
    connect(&m_shelf, &PictureShelf::loaded, this, qOverload<>(&QWidget::update));
}

void SheetPreview::setPage(const DisplayList& page)
{
    m_page = page;
    update();
}

void SheetPreview::paintEvent(QPaintEvent* event)
{
    QPainter painter(this);
    painter.fillRect(event->rect(), tokens().wall);
    if (m_page.size.isEmpty())
        return;
    const QRect room = rect().adjusted(air(3), air(3), -air(3), -air(3));
    const double scale = std::min(
        room.width() / m_page.size.width.value(), room.height() / m_page.size.height.value());
    QRectF paper(0, 0, m_page.size.width.value() * scale, m_page.size.height.value() * scale);
    paper.moveCenter(QRectF(room).center());
    painter.fillRect(paper, Qt::white);
    painter.translate(paper.topLeft());
    painter.scale(scale, scale);
    (void)paint(painter, m_page, m_shelf, PaintPurpose::Screen);
}

SheetsDialog::SheetsDialog(Session& session, PictureShelf& shelf, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
    , m_shelf(shelf)
{
    setWindowTitle(tr("Sheets to answer on"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(5), air(5), air(5), air(5));
    column->setSpacing(air(3));
    auto* middle = new QHBoxLayout;
    middle->setSpacing(air(5));
    middle->addWidget(makeChoices());
    middle->addWidget(makePreview(), 1);
    column->addLayout(middle, 1);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(air(2));
    auto* stop = new Button(Button::Form::Word, tr("Not now"));
    m_print = new Button(Button::Form::Plain, tr("Print"), Icon::Sheet);
    m_pdf = new Button(Button::Form::Main, tr("Make the PDF"), Icon::Sheet);
    foot->addWidget(stop);
    foot->addStretch();
    foot->addWidget(m_print);
    foot->addWidget(m_pdf);
    column->addLayout(foot);
    connect(stop, &Button::clicked, this, &QDialog::reject);
    connect(m_pdf, &Button::clicked, this, &QDialog::accept);
    connect(m_print, &Button::clicked, this, [this] {
        m_wantsPrinter = true;
        accept();
    });
    setLetter(QLocale().measurementSystem() == QLocale::ImperialUSSystem);
    setChild({});
    resize(scaled(860), scaled(600));
}

QWidget* SheetsDialog::makeChoices()
{
    auto* choices = new QWidget;
    choices->setFixedWidth(scaled(290));
    auto* column = new QVBoxLayout(choices);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(2));
    column->addWidget(new Label(tr("Sheets to answer on"), 1.25, QFont::DemiBold));
    column->addWidget(new Label(tr("A box under each question, as large as the child's age needs."),
        0.95,
        QFont::Normal,
        true));
    m_for = new Button(Button::Form::Plain, {});
    m_for->setOpensList(true);
    connect(m_for, &Button::clicked, this, &SheetsDialog::chooseChild);
    column->addWidget(m_for, 0, Qt::AlignLeading);
    m_forChildren = addBox(*column, tr("A sheet for every child"), true);
    m_forScribe = addBox(*column, tr("A sheet for the scribe, with all children"), false);
    column->addSpacing(air(2));
    m_lines = addBox(*column, tr("Lines to write on"), false);
    m_two = addBox(*column, tr("Two on a page, to be cut"), false);
    m_paper = new Button(Button::Form::Plain, {});
    m_paper->setOpensList(true);
    connect(m_paper, &Button::clicked, this, &SheetsDialog::choosePaper);
    column->addWidget(m_paper, 0, Qt::AlignLeading);
    addLanguages(*column);
    column->addStretch();
    auto* card = new Card(Card::Tone::Note);
    auto* inner = new QVBoxLayout(card);
    m_said = new Label({}, 0.92);
    inner->addWidget(m_said);
    column->addWidget(card);
    return choices;
}

QWidget* SheetsDialog::makePreview()
{
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(1));
    m_preview = new SheetPreview(m_shelf);
    column->addWidget(m_preview, 1);
    auto* row = new QHBoxLayout;
    m_before = new Button(Button::Form::Word, tr("Page before"), Icon::Previous);
    m_after = new Button(Button::Form::Word, tr("Next page"), Icon::Next);
    m_at = new QLabel;
    m_at->setAlignment(Qt::AlignCenter);
    row->addWidget(m_before);
    row->addWidget(m_at, 1);
    row->addWidget(m_after);
    column->addLayout(row);
    connect(m_before, &Button::clicked, this, [this] { showPage(m_shown - 1); });
    connect(m_after, &Button::clicked, this, [this] { showPage(m_shown + 1); });
    return side;
}

void SheetsDialog::addLanguages(QVBoxLayout& column)
{
    const PromptSet* known = m_session.book().promptSets.find(m_session.experience()->promptSet);
    m_codes =
        languagesOf(known != nullptr ? *known : defaultPromptSet(m_session.book().info.language));
    if (m_codes.size() < 2)
        return;
    column.addSpacing(air(2));
    column.addWidget(new Label(tr("Ask in"), 1.0, QFont::DemiBold));
    for (const QString& code : m_codes)
        m_languages << addBox(column, languageInWords(code), m_languages.isEmpty());
}

QCheckBox* SheetsDialog::addBox(QVBoxLayout& column, const QString& text, bool on)
{
    auto* box = new QCheckBox(text);
    box->setChecked(on);
    connect(box, &QCheckBox::toggled, this, &SheetsDialog::refresh);
    column.addWidget(box);
    return box;
}

void SheetsDialog::chooseChild()
{
    QMenu menu(this);
    menu.addAction(tr("For the whole class"), this, [this] { setChild({}); });
    menu.addSeparator();
    for (const auto& [id, child] : m_session.book().children.rows())
        menu.addAction(child.name, this, [this, name = child.name] { setChild(name); });
    menu.exec(m_for->mapToGlobal(QPoint(0, m_for->height())));
}

void SheetsDialog::choosePaper()
{
    QMenu menu(this);
    menu.addAction(QStringLiteral("A4"), this, [this] { setLetter(false); });
    menu.addAction(QStringLiteral("Letter"), this, [this] { setLetter(true); });
    menu.exec(m_paper->mapToGlobal(QPoint(0, m_paper->height())));
}

void SheetsDialog::setLetter(bool letter)
{
    m_letter = letter;
    m_paper->setText(tr("On %1").arg(letter ? QStringLiteral("Letter") : QStringLiteral("A4")));
    m_paper->updateGeometry();
    refresh();
}

void SheetsDialog::setChild(const QString& name)
{
    m_child = name;
    m_for->setText(name.isEmpty() ? tr("For the whole class") : tr("For %1").arg(name));
    m_for->updateGeometry();
    refresh();
}

SheetsJob SheetsDialog::job() const
{
    SheetsJob job;
    job.experience = m_session.experience()->title;
    job.child = m_child;
    for (qsizetype i = 0; i < m_languages.size(); ++i) {
        if (m_languages[i]->isChecked())
            job.languages << m_codes[i];
    }
    job.wishes.paper = m_letter ? kLetter : kA4;
    job.wishes.perPage = m_two->isChecked() ? 2 : 1;
    job.wishes.lines = m_lines->isChecked();
    job.wishes.forChildren = m_forChildren->isChecked();
    job.wishes.forScribe = m_forScribe->isChecked();
    job.picturesFolder = m_session.picturesFolder();
    return job;
}

void SheetsDialog::refresh()
{
    if (m_pdf == nullptr)
        return; // not all is made yet
    const SheetsJob wanted = job();
    const Result<ClearedSheets> sheets = wanted.cleared(m_session.book(), m_session.today());
    m_pages.clear();
    if (sheets)
        m_pages = answerSheets(*sheets, wanted.wishes);
    const QString count = counted(int(m_pages.size()), tr("1 page."), tr("%1 pages."));
    if (m_pages.empty())
        m_said->setText(tr("Say whether they are for the children or for the scribe."));
    else if (sheets->leftOut().empty())
        m_said->setText(count);
    else
        m_said->setText(count + QLatin1Char(' ') + sheets->leftOut().front().why);
    m_pdf->setEnabled(!m_pages.empty());
    m_print->setEnabled(!m_pages.empty());
    showPage(m_shown);
}

void SheetsDialog::showPage(int page)
{
    const int last = std::max(0, int(m_pages.size()) - 1);
    m_shown = std::clamp(page, 0, last);
    m_preview->setPage(m_pages.empty() ? DisplayList{} : m_pages[std::size_t(m_shown)]);
    m_before->setEnabled(m_shown > 0);
    m_after->setEnabled(m_shown < last);
    m_at->setText(m_pages.empty() ? QString() : tr("%1 of %2").arg(m_shown + 1).arg(last + 1));
}

} // namespace wainscot::ui
