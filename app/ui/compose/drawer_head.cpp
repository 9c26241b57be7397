// The head of the drawer: search, the four kinds, and what narrows them.
#include "app/ui/compose/drawer.h"

#include <QLocale>
#include <QMenu>
#include <QVBoxLayout>

#include "app/ui/kit/surfaces.h"
#include "app/ui/kit/tokens.h"
#include "core/voice/answers.h"

namespace wainscot::ui {

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
    connect(m_search, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_filter.search = text;
        m_rebuildSoon.start();
    });
    column->addWidget(m_search);
    column->addLayout(makeKinds());
    column->addLayout(makeChips());
    return head;
}

QLayout* Drawer::makeKinds()
{
    auto* kinds = new QHBoxLayout;
    kinds->setSpacing(air(0.5));
    const QStringList names{tr("Words"), tr("Photos"), tr("Work"), tr("Notes")};
    QVector<QWidget*> members;
    for (int i = 0; i < names.size(); ++i) {
        auto* kind = new Button(Button::Form::Task, names.at(i));
        kind->setChecked(i == 0);
        kind->setAutoExclusive(true);
        connect(kind, &Button::clicked, this, [this, i] {
            m_filter.kind = static_cast<DrawerKind>(i);
            rebuild();
        });
        kinds->addWidget(kind);
        m_kinds << kind;
        members << kind;
    }
    kinds->addStretch();
    m_kindRover = new Rover(this);
    m_kindRover->setMembers(members);
    return kinds;
}

QLayout* Drawer::makeChips()
{
    auto* both = new QVBoxLayout;
    both->setSpacing(air(1));
    auto* chips = new QHBoxLayout;
    chips->setSpacing(air(1.5));
    m_notOnWall = new Button(Button::Form::Chip, tr("Not on a wall"));
    m_starred = new Button(Button::Form::Chip, tr("Starred"));
    for (Button* chip : {m_notOnWall, m_starred}) {
        chip->setRelativeSize(0.92);
        connect(chip, &Button::toggled, this, [this] {
            m_filter.notOnWall = m_notOnWall->isChecked();
            m_filter.starred = m_starred->isChecked();
            rebuild();
        });
        chips->addWidget(chip);
    }
    const auto list = [this](void (Drawer::*choose)()) {
        auto* button = new Button(Button::Form::Word, QString());
        button->setOpensList(true);
        button->setRelativeSize(0.92);
        button->setMayShrink(true);
        connect(button, &Button::clicked, this, choose);
        return button;
    };
    m_byChild = list(&Drawer::chooseChild);
    chips->addStretch();
    both->addLayout(chips);
    auto* second = new QHBoxLayout;
    second->setSpacing(air(0.5));
    m_question = list(&Drawer::chooseQuestion);
    m_order = list(&Drawer::chooseOrder);
    second->addWidget(m_byChild);
    second->addWidget(m_question);
    second->addWidget(m_order);
    second->addStretch();
    both->addLayout(second);
    return both;
}

void Drawer::refreshHead()
{
    const Book& book = m_session.book();
    const Experience* experience = m_session.experience();
    const auto say = [](Button* button, const QString& text, const QString& what) {
        button->setText(text);
        button->setAccessibleName(what);
        button->setToolTip(what);
        button->updateGeometry();
    };
    const Child* child = book.children.find(m_filter.child);
    say(m_byChild,
        child != nullptr ? displayName(*child) : tr("Every child"),
        child != nullptr ? tr("Only %1").arg(displayName(*child)) : tr("Only of one child"));
    QString asked = tr("Every question");
    if (m_filter.prompt && experience != nullptr) {
        asked = tr("Told in a meeting");
        for (const Prompt& prompt : promptsOf(book, *experience)) {
            if (prompt.key == *m_filter.prompt)
                asked = prompt.text;
        }
    }
    if (const Meeting* meeting = book.meetings.find(m_filter.meeting))
        asked = tr("Meeting of %1").arg(QLocale().toString(meeting->on, QLocale::ShortFormat));
    say(m_question, asked, tr("Question or meeting: %1").arg(asked));
    const QString order = m_filter.byGroup ? tr("By group") : tr("By question");
    say(m_order, order, tr("In order: %1").arg(order));
    const bool words = m_filter.kind == DrawerKind::Words;
    m_question->setVisible(words);
    m_order->setVisible(words && !book.groups.isEmpty());
    m_notOnWall->setVisible(m_filter.kind != DrawerKind::Notes);
    m_starred->setVisible(m_filter.kind != DrawerKind::Notes);
    m_byChild->setVisible(!book.children.isEmpty());
}

void Drawer::chooseChild()
{
    QMenu menu(this);
    const auto offer = [&](const QString& text, ChildId child) {
        QAction* one = menu.addAction(text, this, [this, child] {
            m_filter.child = child;
            rebuild();
        });
        one->setCheckable(true);
        one->setChecked(m_filter.child == child);
    };
    offer(tr("Every child"), {});
    menu.addSeparator();
    for (const auto& [id, child] : m_session.book().children.rows())
        offer(displayName(child), id);
    menu.exec(m_byChild->mapToGlobal(QPoint(0, m_byChild->height())));
}

void Drawer::chooseQuestion()
{
    const Experience* experience = m_session.experience();
    if (experience == nullptr)
        return;
    QMenu menu(this);
    const auto offer =
        [&](const QString& text, const std::optional<QString>& prompt, MeetingId meeting) {
            QAction* one = menu.addAction(text, this, [this, prompt, meeting] {
                m_filter.prompt = prompt;
                m_filter.meeting = meeting;
                rebuild();
            });
            one->setCheckable(true);
            one->setChecked(m_filter.prompt == prompt && m_filter.meeting == meeting);
        };
    offer(tr("Every question"), std::nullopt, {});
    for (const Prompt& prompt : promptsOf(m_session.book(), *experience))
        offer(prompt.text, prompt.key, {});
    menu.addSeparator();
    offer(tr("Told in a meeting"), QString(), {});
    for (const auto& [id, meeting] : m_session.book().meetings.rows()) {
        if (meeting.experience == experience->id)
            offer(tr("Meeting of %1").arg(QLocale().toString(meeting.on, QLocale::ShortFormat)),
                std::nullopt,
                id);
    }
    menu.exec(m_question->mapToGlobal(QPoint(0, m_question->height())));
}

void Drawer::chooseOrder()
{
    QMenu menu(this);
    for (const bool byGroup : {false, true}) {
        QAction* one = menu.addAction(byGroup ? tr("By group") : tr("By question"));
        one->setCheckable(true);
        one->setChecked(m_filter.byGroup == byGroup);
        connect(one, &QAction::triggered, this, [this, byGroup] {
            m_filter.byGroup = byGroup;
            rebuild();
        });
    }
    menu.exec(m_order->mapToGlobal(QPoint(0, m_order->height())));
}

} // namespace wainscot::ui
