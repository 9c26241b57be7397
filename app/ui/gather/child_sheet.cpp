#include "app/ui/gather/child_sheet.h"

#include <QGridLayout>

#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

ChildSheet::ChildSheet(Session& session, ChildId child, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
    , m_child(child)
    , m_name(new QLineEdit)
    , m_shownAs(new QLineEdit)
    , m_born(new QLineEdit)
    , m_languages(new QLineEdit)
    , m_age(new Label({}, 0.9, QFont::Normal, true))
{
    const Child known = *session.book().children.find(child);
    setWindowTitle(known.name);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(air(5), air(4), air(5), air(4));
    grid->setHorizontalSpacing(air(3));
    grid->setVerticalSpacing(air(2));
    int line = 0;
    const auto add = [&](const QString& name, QLineEdit* field, const QString& text) {
        field->setText(text);
        field->setAccessibleName(name);
        field->setMinimumWidth(scaled(280));
        grid->addWidget(new Label(name), line, 0);
        grid->addWidget(field, line++, 1);
    };
    add(tr("Name"), m_name, known.name);
    add(tr("Shown on a wall as"), m_shownAs, known.shownAs);
    m_shownAs->setPlaceholderText(displayName(known));
    add(tr("Born"), m_born, known.born ? textOf(*known.born) : QString());
    m_born->setPlaceholderText(tr("2021-04-17 or 2021-04; may stay empty"));
    grid->addWidget(m_age, line++, 1);
    add(tr("Languages"), m_languages, known.languages);
    m_languages->setPlaceholderText(tr("Portuguese and some English"));
    auto* keep = new Button(Button::Form::Main, tr("Keep it"));
    grid->addWidget(keep, line, 1, Qt::AlignTrailing);
    connect(keep, &Button::clicked, this, &ChildSheet::accept);
    connect(m_born, &QLineEdit::textChanged, this, &ChildSheet::tellAge);
    tellAge();
}

void ChildSheet::tellAge()
{
    const QString text = m_born->text().trimmed();
    const auto born = birthDateFromText(text);
    const auto months = born ? ageInMonths(*born, m_session.today()) : std::nullopt;
    m_age->setText(months    ? tr("%1 (years;months) today").arg(ageNotation(*months))
            : text.isEmpty() ? tr("Without a date, no age is shown.")
                             : tr("Year and month, then the day: 2021-04-17."));
}

void ChildSheet::accept()
{
    const QString name = m_name->text().simplified();
    const auto born = birthDateFromText(m_born->text());
    if (name.isEmpty()) {
        m_name->setFocus();
        return;
    }
    if (!born && !m_born->text().trimmed().isEmpty()) {
        m_born->setFocus();
        return;
    }
    Child child = *m_session.book().children.find(m_child);
    child.name = name;
    child.shownAs = m_shownAs->text().simplified();
    child.born = born;
    child.languages = m_languages->text().simplified();
    EditBuilder edit(m_session.book(), tr("About %1").arg(displayName(child)));
    edit.put(child);
    if (m_session.perform(edit.take()))
        QDialog::accept();
}

} // namespace wainscot::ui
