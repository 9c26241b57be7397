// What lies beside the words that are taken down, and what is there before anything happened.
#include "app/ui/gather/words_task.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

QWidget* WordsTask::makeStart()
{
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(air(4), air(4), air(3), air(3));
    column->addWidget(m_children);
    QScrollArea* area = scrolled(content);
    area->setFixedWidth(scaled(228));
    return area;
}

QWidget* WordsTask::makeEnd()
{
    const SideColumn side = sideColumn(scaled(264), air(1.5));
    QVBoxLayout* column = side.content;
    column->addWidget(new Label(tr("Just taken down"), 1.0, QFont::DemiBold));
    m_recent = new QVBoxLayout;
    m_recent->setSpacing(air(1.5));
    column->addLayout(m_recent);
    column->addSpacing(air(3));
    column->addWidget(new Label(tr("Keys"), 1.0, QFont::DemiBold));
    auto* keys = new QGridLayout;
    keys->setHorizontalSpacing(air(3));
    keys->setVerticalSpacing(air(1.5));
    keys->setColumnStretch(1, 1);
    int line = 0;
    for (const auto& [key, does] : {std::pair(tr("Enter"), tr("keep, next question")),
             std::pair(tr("Ctrl+Enter"), tr("keep, next child")),
             std::pair(tr("Shift+Enter"), tr("new line")),
             std::pair(tr("Alt+1 \u2026 5"), tr("how it was told")),
             std::pair(tr("Ctrl+R"), tr("read back")),
             std::pair(tr("F2"), tr("passes for now")),
             std::pair(tr("F3"), tr("note why not")),
             std::pair(tr("Ctrl+J"), tr("go to a child"))}) {
        auto* name = new Label(key, 0.88, QFont::DemiBold);
        name->setWordWrap(false);
        keys->addWidget(name, line, 0);
        keys->addWidget(new Label(does, 0.88, QFont::Normal, true), line++, 1);
    }
    column->addLayout(keys);
    column->addStretch();
    return side.whole;
}

QWidget* WordsTask::makeEmpty()
{
    auto* page = new QWidget;
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(air(9), air(7), air(9), air(7));
    auto* middle = new QWidget;
    middle->setMaximumWidth(scaled(620));
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(3));
    m_emptySays = new Label({}, 1.5, QFont::DemiBold);
    m_title = new QLineEdit;
    m_title->setTextMargins(air(1), 0, air(1), 0);
    m_title->setFont(interfaceFont(1.25));
    m_title->setPlaceholderText(tr("Where does the puddle go?"));
    m_title->setAccessibleName(tr("What happened"));
    connect(m_title, &QLineEdit::returnPressed, this, &WordsTask::nameExperience);
    m_toClass = new Button(Button::Form::Plain, tr("Enter the class"), Icon::Plus);
    connect(m_toClass, &Button::clicked, this, &WordsTask::classAsked);
    column->addWidget(m_emptySays);
    column->addWidget(m_title);
    column->addWidget(m_toClass, 0, Qt::AlignLeft);
    column->addStretch();
    row->addStretch(1);
    row->addWidget(middle, 100);
    row->addStretch(1);
    return page;
}

} // namespace wainscot::ui
