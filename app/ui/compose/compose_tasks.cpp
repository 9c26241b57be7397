// The line above the stage: for whom, how large, from how far.
#include "app/ui/compose/compose_place.h"

#include <QHBoxLayout>
#include <QMenu>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

QString metres(Mm distance)
{
    return QString::number(distance.value() / 1000, 'g', 2);
}

Button* listButton(const QString& accessible)
{
    auto* button = new Button(Button::Form::Word, accessible);
    button->setOpensList(true);
    return button;
}

} // namespace

QWidget* ComposePlace::makeTaskLine()
{
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(air(4), air(2), air(4), air(1));
    row->setSpacing(air(1));
    m_audience = listButton(tr("For the hallway"));
    m_size = listButton(tr("A1"));
    m_distance = listButton(tr("Read from 1.5 m"));
    m_zoom = listButton(tr("Whole panel"));
    m_again = new Button(Button::Form::Plain, tr("Arrange again"), Icon::Arrange);
    m_again->setToolTip(tr("The same pieces, around those that are pinned"));
    m_otherWays = new Button(Button::Form::Plain, tr("Three other ways"), Icon::Ways);
    m_otherWays->setToolTip(tr("The same pieces, arranged differently"));
    connect(m_otherWays, &Button::clicked, this, [this] { m_desk.findOtherWays(); });
    connect(m_audience, &Button::clicked, this, &ComposePlace::chooseAudience);
    connect(m_size, &Button::clicked, this, &ComposePlace::chooseSize);
    connect(m_distance, &Button::clicked, this, &ComposePlace::chooseDistance);
    connect(m_again, &Button::clicked, this, [this] { m_desk.arrangeAgain(); });
    connect(m_zoom, &Button::clicked, this, [this] {
        QMenu menu(this);
        menu.addActions({m_actions.whole,
            m_actions.nearer,
            m_actions.further,
            m_actions.trueSize,
            m_actions.stepBack});
        menu.exec(m_zoom->mapToGlobal(QPoint(0, m_zoom->height())));
    });
    for (Button* button : {m_audience, m_size, m_distance})
        row->addWidget(button);
    row->addStretch();
    row->addWidget(m_again);
    row->addSpacing(air(1));
    row->addWidget(m_otherWays);
    row->addSpacing(air(1));
    row->addWidget(m_zoom);
    return line;
}

void ComposePlace::refreshTaskLine()
{
    const Display* display = m_session.display();
    for (Button* button : {m_audience, m_size, m_distance, m_again, m_otherWays, m_zoom})
        button->setVisible(display != nullptr && m_session.panel() != nullptr);
    if (display == nullptr)
        return;
    const auto say = [](Button* button, const QString& text) {
        button->setText(text);
        button->setAccessibleName(text);
        button->updateGeometry();
    };
    say(m_audience, tr("For %1").arg(inWords(display->audience)));
    const bool upright = display->panelSize.height > display->panelSize.width;
    const SizeMm standing = upright ? display->panelSize : display->panelSize.transposed();
    QString name = tr("%1 \u00d7 %2 mm")
                       .arg(qRound(display->panelSize.width.value()))
                       .arg(qRound(display->panelSize.height.value()));
    const std::pair<const char*, SizeMm> known[] = {{"A0", {Mm(841), Mm(1189)}},
        {"A1", {Mm(594), Mm(841)}},
        {"A2", {Mm(420), Mm(594)}},
        {"A3", {Mm(297), Mm(420)}}};
    for (const auto& [paper, size] : known) {
        if (standing == size)
            name = (upright ? tr("%1 upright") : tr("%1 wide")).arg(QLatin1String(paper));
    }
    say(m_size, name);
    say(m_distance, tr("Read from %1 m").arg(metres(display->readingDistance)));
    say(m_zoom,
        canvas().isFitted() ? tr("Whole panel")
                            : tr("%1 px for 1 mm").arg(canvas().view().scale(), 0, 'f', 1));
}

void ComposePlace::chooseAudience()
{
    QMenu menu(this);
    for (const Audience audience : kAudiences) {
        QAction* one = menu.addAction(tr("For %1").arg(inWords(audience)));
        one->setCheckable(true);
        one->setChecked(m_session.display()->audience == audience);
        connect(one, &QAction::triggered, this, [this, audience] { m_desk.setAudience(audience); });
    }
    menu.exec(m_audience->mapToGlobal(QPoint(0, m_audience->height())));
}

void ComposePlace::chooseSize()
{
    QMenu menu(this);
    const std::pair<const char*, SizeMm> papers[] = {{"A0", {Mm(841), Mm(1189)}},
        {"A1", {Mm(594), Mm(841)}},
        {"A2", {Mm(420), Mm(594)}},
        {"A3", {Mm(297), Mm(420)}}};
    for (const auto& [name, size] : papers) {
        for (const bool upright : {true, false}) {
            const SizeMm wanted = upright ? size : size.transposed();
            QAction* one = menu.addAction(
                (upright ? tr("%1 upright") : tr("%1 wide")).arg(QLatin1String(name)));
            one->setCheckable(true);
            one->setChecked(m_session.display()->panelSize == wanted);
            connect(
                one, &QAction::triggered, this, [this, wanted] { m_desk.setPanelSize(wanted); });
        }
    }
    menu.exec(m_size->mapToGlobal(QPoint(0, m_size->height())));
}

void ComposePlace::chooseDistance()
{
    QMenu menu(this);
    for (const int mm : {750, 1000, 1500, 2000, 3000}) {
        QAction* one = menu.addAction(tr("Read from %1 m").arg(metres(Mm(mm))));
        one->setCheckable(true);
        one->setChecked(m_session.display()->readingDistance == Mm(mm));
        connect(one, &QAction::triggered, this, [this, mm] { m_desk.setReadingDistance(Mm(mm)); });
    }
    menu.exec(m_distance->mapToGlobal(QPoint(0, m_distance->height())));
}

} // namespace wainscot::ui
