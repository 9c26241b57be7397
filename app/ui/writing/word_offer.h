// A word no dictionary knows, and what it might have been meant to be. Nothing is changed by
// itself.
#pragma once

#include <QWidget>

#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"

namespace wainscot::ui {

class WordOffer : public QWidget {
    Q_OBJECT
public:
    explicit WordOffer(QWidget* parent = nullptr);
    void offer(const QString& word, const QStringList& suggestions);
    [[nodiscard]] QStringList suggestions() const { return m_suggestions; }
    // Alt with 1, 2, 3 takes a suggestion, Alt with 0 keeps the word. False = not a key of these.
    bool takeKey(const QKeyEvent& key);

Q_SIGNALS:
    void chosen(const QString& word);
    void kept(); // it is right as it stands, from now on

private:
    Label* m_word;
    QVector<Button*> m_buttons; // three suggestions, then "Keep it"
    QStringList m_suggestions;
};

} // namespace wainscot::ui
