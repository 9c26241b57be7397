#include "app/ui/sight/step_back.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLocale>
#include <QMenu>
#include <QPainter>
#include <QVBoxLayout>

#include "app/jobs/program_settings.h"
#include "app/ui/kit/tokens.h"
#include "core/base/in_words.h"
#include "layout/wall/eyes.h"

namespace wainscot::ui {

namespace {

constexpr int kMiddles[] = {900, 1000, 1100, 1200, 1350, 1500};
const QString kEyesKey = QStringLiteral("stepBack/eyes");
const QString kSightKey = QStringLiteral("stepBack/sight");
const QString kMiddleKey = QStringLiteral("stepBack/middle");

QString metres(Mm length)
{
    return QLocale().toString(length.value() / 1000, 'f', 2);
}

QString eyesInWords(int preset)
{
    static const char* const words[] = {QT_TRANSLATE_NOOP("StepBack", "a three-year-old"),
        QT_TRANSLATE_NOOP("StepBack", "a five-year-old"),
        QT_TRANSLATE_NOOP("StepBack", "an eight-year-old"),
        QT_TRANSLATE_NOOP("StepBack", "a grown-up"),
        QT_TRANSLATE_NOOP("StepBack", "a grown-up, seated")};
    return QCoreApplication::translate("StepBack", words[preset]);
}

QString sightInWords(int preset)
{
    static const char* const words[] = {QT_TRANSLATE_NOOP("StepBack", "usual sight"),
        QT_TRANSLATE_NOOP("StepBack", "somewhat weaker sight"),
        QT_TRANSLATE_NOOP("StepBack", "weaker sight"),
        QT_TRANSLATE_NOOP("StepBack", "much weaker sight")};
    return QCoreApplication::translate("StepBack", words[preset]);
}

Button* listButton()
{
    auto* button = new Button(Button::Form::Word, QString());
    button->setOpensList(true);
    button->setMayShrink(true);
    return button;
}

} // namespace

StepBack::StepBack(PictureProvider& pictures, QWidget* parent)
    : QWidget(parent)
    , m_heading(new Label(QString(), 1.25, QFont::DemiBold))
    , m_scale(new Label(QString(), 0.92, QFont::Normal, true))
    , m_eyes(listButton())
    , m_sight(listButton())
    , m_middle(listButton())
    , m_larger(new Button(Button::Form::Chip, tr("Larger, to look closely")))
    , m_picture(new EyePicture(pictures))
    , m_walk(new WalkLine)
    , m_column(new QWidget)
    , m_area(scrolled(m_column))
{
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(air(4), air(2), air(4), air(2));
    whole->setSpacing(air(1.5));
    whole->addLayout(makeHead());
    auto* row = new QHBoxLayout;
    row->setSpacing(air(4));
    row->addWidget(m_picture, 1);
    m_area->setFixedWidth(scaled(272));
    row->addWidget(m_area);
    whole->addLayout(row, 1);
    whole->addWidget(m_walk);
    connect(m_walk, &WalkLine::valueChanged, this, [this](int mm) {
        m_standing.distance = Mm(mm);
        look();
    });
    connect(m_larger, &Button::toggled, this, [this](bool on) {
        m_picture->setFilling(on);
        say();
    });
    hide();
}

QLayout* StepBack::makeHead()
{
    auto* head = new QVBoxLayout;
    head->setSpacing(air(0.5));
    auto* first = new QHBoxLayout;
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(m_heading);
    words->addWidget(m_scale);
    first->addLayout(words, 1);
    auto* leave = new Button(Button::Form::Plain, tr("Back to the panel"));
    leave->setKeyHint(tr("Esc"));
    connect(leave, &Button::clicked, this, &StepBack::close);
    first->addWidget(leave, 0, Qt::AlignTop);
    head->addLayout(first);
    auto* second = new QHBoxLayout;
    second->setSpacing(air(1));
    for (Button* button : {m_eyes, m_sight, m_middle})
        second->addWidget(button);
    m_larger->setCheckable(true);
    second->addStretch();
    second->addWidget(m_larger);
    head->addLayout(second);
    connect(m_eyes, &Button::clicked, this, &StepBack::chooseEyes);
    connect(m_sight, &Button::clicked, this, &StepBack::chooseSight);
    connect(m_middle, &Button::clicked, this, &StepBack::chooseMiddle);
    return head;
}

void StepBack::open(const DrawnPanel& panel, std::function<QString(PieceId)> nameOf)
{
    m_nameOf = std::move(nameOf);
    const ProgramSettings settings;
    const auto kept = [&](const QString& key, int usual, std::size_t count) {
        const int value = settings.value(key, usual).toInt();
        return value >= 0 && value < int(count) ? value : usual;
    };
    m_eyesPreset = kept(kEyesKey, 1, wall::eyesPresets().size());
    m_sightPreset = kept(kSightKey, 0, wall::sightPresets().size());
    m_standing.eyes = wall::eyesPresets()[std::size_t(m_eyesPreset)].height;
    m_standing.acuity = wall::sightPresets()[std::size_t(m_sightPreset)].acuity;
    m_standing.middle = Mm(qBound(500, settings.value(kMiddleKey, 1200).toInt(), 2500));
    const QSignalBlocker quiet(m_walk);
    m_walk->setValue(int(2 * panel.cleared.display().readingDistance.value()));
    m_standing.distance = Mm(m_walk->value());
    show();
    raise();
    setPanel(panel);
    m_walk->setFocus(Qt::TabFocusReason);
}

void StepBack::setPanel(const DrawnPanel& panel)
{
    m_picture->setView(nullptr, m_standing, {});
    m_panel = panel;
    m_facts = check::factsOf(m_panel->cleared, m_panel->style, m_panel->list);
    look();
}

void StepBack::close()
{
    if (!isVisible())
        return;
    hide();
    m_picture->setView(nullptr, m_standing, {});
    Q_EMIT closed();
}

void StepBack::setEyes(int preset)
{
    m_eyesPreset = preset;
    m_standing.eyes = wall::eyesPresets()[std::size_t(preset)].height;
    ProgramSettings().setValue(kEyesKey, preset);
    look();
}

void StepBack::setSight(int preset)
{
    m_sightPreset = preset;
    m_standing.acuity = wall::sightPresets()[std::size_t(preset)].acuity;
    ProgramSettings().setValue(kSightKey, preset);
    look();
}

void StepBack::setMiddle(Mm above)
{
    m_standing.middle = above;
    ProgramSettings().setValue(kMiddleKey, int(above.value()));
    look();
}

void StepBack::chooseEyes()
{
    QMenu menu(this);
    for (int i = 0; i < int(wall::eyesPresets().size()); ++i) {
        const wall::EyesPreset& preset = wall::eyesPresets()[std::size_t(i)];
        QAction* one =
            menu.addAction(tr("Eyes of %1, %2 m").arg(eyesInWords(i), metres(preset.height)));
        one->setCheckable(true);
        one->setChecked(i == m_eyesPreset);
        connect(one, &QAction::triggered, this, [this, i] { setEyes(i); });
    }
    menu.exec(m_eyes->mapToGlobal(QPoint(0, m_eyes->height())));
}

void StepBack::chooseSight()
{
    QMenu menu(this);
    for (int i = 0; i < int(wall::sightPresets().size()); ++i) {
        const wall::SightPreset& preset = wall::sightPresets()[std::size_t(i)];
        QAction* one = menu.addAction(
            tr("%1 (acuity %2)").arg(sightInWords(i), QLocale().toString(preset.acuity)));
        one->setCheckable(true);
        one->setChecked(i == m_sightPreset);
        connect(one, &QAction::triggered, this, [this, i] { setSight(i); });
    }
    menu.exec(m_sight->mapToGlobal(QPoint(0, m_sight->height())));
}

void StepBack::chooseMiddle()
{
    QMenu menu(this);
    for (const int mm : kMiddles) {
        QAction* one = menu.addAction(tr("Its middle hangs at %1 m").arg(metres(Mm(mm))));
        one->setCheckable(true);
        one->setChecked(m_standing.middle == Mm(mm));
        connect(one, &QAction::triggered, this, [this, mm] { setMiddle(Mm(mm)); });
    }
    menu.exec(m_middle->mapToGlobal(QPoint(0, m_middle->height())));
}

void StepBack::look()
{
    if (!m_panel)
        return;
    m_texts = seenFrom(m_facts, m_panel->list.size, m_standing);
    m_picture->setView(&m_panel->list, m_standing, m_texts);
    say();
    list();
}

void StepBack::say()
{
    const auto put = [](Button* button, const QString& text) {
        button->setText(text);
        button->setAccessibleName(text);
        button->updateGeometry();
    };
    put(m_eyes, tr("Eyes of %1, %2 m").arg(eyesInWords(m_eyesPreset), metres(m_standing.eyes)));
    put(m_sight, capitalised(sightInWords(m_sightPreset)));
    put(m_middle, tr("Its middle hangs at %1 m").arg(metres(m_standing.middle)));
    m_heading->setText(tr("From %1 m").arg(metres(m_standing.distance)));
    setAccessibleName(m_heading->text());
    const int percent = qRound(m_picture->magnified() * 100);
    m_scale->setText(percent == 100
            ? tr("As large as it appears from there, if you sit 60 cm from this screen.")
            : tr("Shown at %1 % of how large it appears from there.").arg(percent));
}

void StepBack::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().wall);
}

void StepBack::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        close();
    else
        QWidget::keyPressEvent(event);
}

} // namespace wainscot::ui
