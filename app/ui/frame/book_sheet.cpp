#include "app/ui/frame/book_sheet.h"

#include <QGridLayout>

#include "app/jobs/about_book.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/languages/languages.h"
#include "core/base/wall_text.h"

namespace wainscot::ui {

BookSheet::BookSheet(Session& session, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
    , m_name(new QLineEdit)
    , m_language(new QComboBox)
    , m_about(new Label({}, 0.9, QFont::Normal, true))
{
    const BookInfo& info = session.book().info;
    setWindowTitle(tr("Name and language"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(air(5), air(4), air(5), air(4));
    grid->setHorizontalSpacing(air(3));
    grid->setVerticalSpacing(air(2));
    grid->addWidget(new Label(tr("Name of the class")), 0, 0);
    grid->addWidget(m_name, 0, 1);
    grid->addWidget(new Label(tr("Language of its walls")), 1, 0);
    grid->addWidget(m_language, 1, 1);
    grid->addWidget(m_about, 2, 1);
    m_name->setText(info.title);
    m_name->setAccessibleName(tr("Name of the class"));
    m_name->setMinimumWidth(scaled(320));
    m_language->setEditable(true);
    m_language->setAccessibleName(tr("Language of its walls"));
    for (const QString& code : wallLanguages())
        m_language->addItem(nameOfLanguage(code), code);
    if (const int at = m_language->findData(info.language); at >= 0)
        m_language->setCurrentIndex(at);
    else
        m_language->setEditText(info.language);
    m_about->setWordWrap(true);
    m_about->setMinimumHeight(m_about->fontMetrics().lineSpacing() * 3); // does not jump
    auto* keep = new Button(Button::Form::Main, tr("Keep it"));
    grid->addWidget(keep, 3, 1, Qt::AlignTrailing);
    connect(keep, &Button::clicked, this, &BookSheet::accept);
    connect(m_language, &QComboBox::editTextChanged, this, &BookSheet::tell);
    tell();
}

QString BookSheet::written() const
{
    const int at = m_language->findText(m_language->currentText(), Qt::MatchFixedString);
    return at >= 0 ? m_language->itemData(at).toString() : m_language->currentText();
}

void BookSheet::tell()
{
    const auto code = languageCode(written());
    m_about->setText(!code ? tr("Choose one, or write its code (BCP 47): en, es, pt-BR.")
            : hasWallTexts(*code)
            ? tr("Questions, dates and small print are written in it. What people wrote stays.")
            : tr(
                "Read aloud and printed as such. Dates and small print that Wainscot writes are in "
                "English."));
}

void BookSheet::accept()
{
    const auto code = languageCode(written());
    BookInfo info = m_session.book().info;
    info.title = m_name->text().simplified();
    if (info.title.isEmpty()) {
        m_name->setFocus();
        return;
    }
    if (!code) {
        m_language->setFocus();
        return;
    }
    info.language = *code;
    if (m_session.perform(aboutBook(m_session.book(), info, tr("Name and language"))))
        QDialog::accept();
}

} // namespace wainscot::ui
