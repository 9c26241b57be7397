#include "app/ui/writing/word_offer.h"

#include <QHBoxLayout>
#include <QKeyEvent>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kMostSuggestions = 3;

} // namespace

WordOffer::WordOffer(QWidget* parent)
    : QWidget(parent)
    , m_word(new Label({}, 0.88, QFont::DemiBold))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    m_word->setWordWrap(false);
    row->addWidget(m_word);
    for (int i = 0; i <= kMostSuggestions; ++i) {
        const bool keeps = i == kMostSuggestions;
        auto* button = new Button(Button::Form::Word, keeps ? tr("Keep it") : QString());
        button->setToolTip(tr("Alt+%1").arg(keeps ? 0 : i + 1));
        button->setFocusPolicy(Qt::NoFocus); // the caret stays where it is
        button->setRelativeSize(0.9);
        connect(button, &Button::clicked, this, [this, i, keeps] {
            if (keeps)
                Q_EMIT kept();
            else if (i < m_suggestions.size())
                Q_EMIT chosen(m_suggestions.at(i));
        });
        m_buttons << button;
        row->addWidget(button);
    }
    row->addStretch(1);
    hide();
}

void WordOffer::offer(const QString& word, const QStringList& suggestions)
{
    m_suggestions = suggestions.mid(0, kMostSuggestions);
    m_word->setText(tr("%1:").arg(word));
    for (int i = 0; i < kMostSuggestions; ++i) {
        Button* button = m_buttons.at(i);
        button->setVisible(i < m_suggestions.size());
        if (i < m_suggestions.size()) {
            button->setText(m_suggestions.at(i));
            button->setAccessibleName(tr("Write %1 for %2").arg(m_suggestions.at(i), word));
        }
    }
    m_buttons.last()->setAccessibleName(tr("Keep %1: it is right").arg(word));
    setVisible(!word.isEmpty());
}

bool WordOffer::takeKey(const QKeyEvent& key)
{
    if (!isVisible() || key.modifiers() != Qt::AltModifier)
        return false;
    const int number = key.key() - Qt::Key_0;
    if (number < 0 || number > kMostSuggestions)
        return false;
    Button* button = number == 0 ? m_buttons.last() : m_buttons.at(number - 1);
    if (button->isVisible())
        button->click();
    return true;
}

} // namespace wainscot::ui
