// The idea the class talks about, as large as fits in three lines.
#pragma once

#include <QWidget>

namespace wainscot::ui {

class IdeaInTurn : public QWidget {
    Q_OBJECT
public:
    explicit IdeaInTurn(QWidget* parent = nullptr);
    void setIdea(const QString& words, const QString& who);
    // px; of the words as they are shown
    [[nodiscard]] int wordsSize() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int linesAt(int pixels) const;
    [[nodiscard]] int roomForWords() const; // px of height
    QString m_words;
    QString m_who;
};

} // namespace wainscot::ui
