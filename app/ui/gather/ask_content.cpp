// What stands on the page of questions.
#include "app/ui/gather/ask_task.h"

#include <QHBoxLayout>
#include <QLineEdit>

#include "app/ui/gather/prompt_sign.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/places/pages.h"
#include "app/ui/session/prompt_edits.h"
#include "core/base/language_name.h"
#include "core/model/ready_prompts.h"

namespace wainscot::ui {

namespace {

// "hearing, 3 to 4"
QString suits(const PromptSet& set)
{
    QStringList parts{set.sense, set.ages};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

} // namespace

void AskTask::buildList()
{
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(air(4), air(4), air(3), air(3));
    column->setSpacing(air(0.5));
    QVector<QWidget*> stops;
    bool ready = false;
    column->addWidget(new Label(tr("Sets of questions"), 1.0, QFont::DemiBold));
    for (int i = 0; i < int(m_sets.size()); ++i) {
        const PromptSet& set = m_sets[std::size_t(i)];
        if (!set.id.isValid() && !ready) {
            ready = true;
            column->addSpacing(air(3));
            column->addWidget(new Label(tr("Ready to be taken"), 1.0, QFont::DemiBold));
        }
        auto* row = new Button(Button::Form::Row, set.name);
        row->setCheckable(true);
        row->setChecked(i == m_chosen);
        const QString more = suits(set);
        row->setDetail(isAsked(set) ? tr("asked here")
                : more.isEmpty()    ? QStringLiteral(" ")
                                    : more);
        connect(row, &Button::clicked, this, [this, i] { choose(i); });
        column->addWidget(row);
        stops << row;
    }
    column->addStretch();
    replaceContent(*m_list, content);
    m_rover->setMembers(stops, m_chosen);
}

void AskTask::buildSet()
{
    auto* ground = new QWidget;
    auto* centred = new QHBoxLayout(ground);
    centred->setContentsMargins(air(9), air(5), air(9), air(4));
    auto* middle = new QWidget;
    middle->setMaximumWidth(scaled(760));
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(2));
    centred->addStretch(1);
    centred->addWidget(middle, 100);
    centred->addStretch(1);
    m_signs.clear();
    if (const PromptSet* set = chosen()) {
        m_shape = shapeOf(*set);
        addHead(*column, *set);
        for (int i = 0; i < int(set->prompts.size()); ++i)
            addPrompt(*column, i);
        auto* more = new Button(Button::Form::Word, tr("Add a question"), Icon::Plus);
        connect(more, &Button::clicked, this, [this] {
            PromptSet changed = *chosen();
            const QString text = tr("What do you ...?");
            changed.prompts.push_back({keyForPrompt(text, changed), text});
            keep(changed, tr("Add a question"));
        });
        auto* foot = new QHBoxLayout;
        foot->addWidget(more);
        foot->addStretch();
        if (isAsked(*set)) {
            auto* sheets =
                new Button(Button::Form::Plain, tr("Print sheets to answer on"), Icon::Sheet);
            connect(sheets, &Button::clicked, this, &AskTask::sheetsAsked);
            foot->addWidget(sheets);
        }
        column->addLayout(foot);
    }
    column->addStretch();
    replaceContent(*m_set, ground);
    showPictures();
}

void AskTask::addHead(QVBoxLayout& column, const PromptSet& set)
{
    auto* name = new QLineEdit(set.name);
    name->setFont(interfaceFont(1.5, QFont::DemiBold));
    name->setTextMargins(air(1), 0, air(1), 0);
    name->setAccessibleName(tr("Name of the set"));
    connect(name, &QLineEdit::editingFinished, this, [this, name] {
        PromptSet changed = *chosen();
        changed.name = name->text().simplified();
        if (!changed.name.isEmpty())
            keepText(changed, tr("Name of a set"));
    });
    column.addWidget(name);
    auto* row = new QHBoxLayout;
    row->setSpacing(air(2));
    const auto field = [&](const QString& label, const QString& text, QString PromptSet::*part) {
        row->addWidget(new Label(label, 0.95, QFont::Normal, true));
        auto* line = new QLineEdit(text);
        line->setAccessibleName(label);
        line->setTextMargins(air(1), 0, air(1), 0);
        connect(line, &QLineEdit::editingFinished, this, [this, line, part] {
            PromptSet changed = *chosen();
            changed.*part = line->text().simplified();
            keepText(changed, tr("What a set suits"));
        });
        row->addWidget(line, 1);
    };
    field(tr("Sense"), set.sense, &PromptSet::sense);
    field(tr("Ages"), set.ages, &PromptSet::ages);
    column.addLayout(row);
    const Experience* experience = m_session.experience();
    const int outside =
        experience != nullptr ? answersOutside(m_session.book(), experience->id, set) : 0;
    if (outside > 0 && !isAsked(set))
        column.addWidget(new Label(counted(outside,
                                       tr("1 answer here belongs to another question and stays "
                                          "with it."),
                                       tr("%1 answers here belong to other questions and stay "
                                          "with them.")),
            0.95,
            QFont::Normal,
            true));
}

void AskTask::addPrompt(QVBoxLayout& column, int at)
{
    const PromptSet& set = *chosen();
    const Prompt& prompt = set.prompts[std::size_t(at)];
    auto* card = new Card;
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(air(3), air(2.5), air(3), air(2.5));
    row->setSpacing(air(3));
    auto* sign = new SignButton(prompt.sign);
    sign->setAccessibleName(tr("Sign beside the question: %1").arg(prompt.text));
    connect(sign, &SignButton::chosen, this, [this, at](PromptSign chosenSign) {
        PromptSet changed = *chosen();
        changed.prompts[std::size_t(at)].sign = chosenSign;
        changed.prompts[std::size_t(at)].picture = {};
        keep(changed, tr("Sign beside a question"));
    });
    connect(sign, &SignButton::pictureAsked, this, [this, at] { askPicture(at); });
    m_signs.push_back(sign);
    row->addWidget(sign, 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(air(1.5));
    addWording(*words, at, -1);
    for (int i = 0; i < int(prompt.others.size()); ++i)
        addWording(*words, at, i);
    row->addLayout(words, 1);
    const auto action = [&](const QString& text, Icon icon, bool can, auto change) {
        auto* button = new Button(Button::Form::Word, text, icon);
        button->setWordless(true);
        button->setAccessibleName(text + QStringLiteral(": ") + prompt.text);
        button->setToolTip(text);
        button->setEnabled(can);
        connect(button, &Button::clicked, this, [this, text, change] {
            PromptSet changed = *chosen();
            change(changed.prompts);
            keep(changed, text);
        });
        row->addWidget(button, 0, Qt::AlignVCenter);
    };
    const int last = int(set.prompts.size()) - 1;
    action(tr("Ask it earlier"), Icon::Up, at > 0, [at](std::vector<Prompt>& prompts) {
        std::swap(prompts[std::size_t(at)], prompts[std::size_t(at) - 1]);
    });
    action(tr("Ask it later"), Icon::Down, at < last, [at](std::vector<Prompt>& prompts) {
        std::swap(prompts[std::size_t(at)], prompts[std::size_t(at) + 1]);
    });
    action(
        tr("Take the question out"), Icon::TakeOff, last > 0, [at](std::vector<Prompt>& prompts) {
            prompts.erase(prompts.begin() + at);
        });
    column.addWidget(card);
}

void AskTask::addWording(QVBoxLayout& column, int at, int wording)
{
    const PromptSet& set = *chosen();
    const Prompt& prompt = set.prompts[std::size_t(at)];
    const bool main = wording < 0;
    const QString language = main ? set.language : prompt.others[std::size_t(wording)].language;
    const QString text = main ? prompt.text : prompt.others[std::size_t(wording)].text;
    auto* row = new QHBoxLayout;
    row->setSpacing(air(2));
    auto* field = new QLineEdit(text);
    if (main)
        field->setFont(interfaceFont(1.25));
    field->setAccessibleName(tr("Question %1 in %2").arg(at + 1).arg(languageInWords(language)));
    field->setTextMargins(air(1), 0, air(1), 0);
    field->setLayoutDirection(QLocale(language).textDirection());
    connect(field, &QLineEdit::editingFinished, this, [this, field, at, wording] {
        PromptSet changed = *chosen();
        Prompt& asked = changed.prompts[std::size_t(at)];
        QString& into = wording < 0 ? asked.text : asked.others[std::size_t(wording)].text;
        if (wording < 0 && field->text().trimmed().isEmpty())
            return; // a question without words is taken out, not emptied
        into = field->text().trimmed();
        keepText(changed, tr("Wording of a question"));
    });
    row->addWidget(field, 1);
    auto* name = new Label(languageInWords(language), 0.88, QFont::Normal, true);
    name->setWordWrap(false);
    name->setMinimumWidth(scaled(76));
    row->addWidget(name);
    column.addLayout(row);
}

} // namespace wainscot::ui
