// Ask: the questions of this experience, and the sets to choose them from.
#pragma once

#include "app/ui/canvas/picture_shelf.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/places/task_page.h"
#include "app/ui/session/session.h"

class QVBoxLayout;

namespace wainscot::ui {

class SignButton;

class AskTask : public TaskPage {
    Q_OBJECT
public:
    AskTask(Session& session, PictureShelf& shelf, QWidget* parent = nullptr);

    // Those of the book, in the order they came, then the ready ones that are not in it.
    [[nodiscard]] const std::vector<PromptSet>& sets() const { return m_sets; }
    void choose(int set); // to look at; nothing is asked by it yet
    void use(); // the chosen set, for the experience
    // Beside a question of the chosen set, counted from 0; invalid = its sign again.
    void setPicture(int prompt, PictureId picture);
    [[nodiscard]] Saying saying() override;
    void refresh() override;
    [[nodiscard]] QWidget* about() override { return m_about; }
    [[nodiscard]] QWidget* firstStop() const override { return m_rover->stop(); }

Q_SIGNALS:
    void wordsAsked();
    void sheetsAsked(); // to answer on

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void build();
    void buildList();
    void buildSet();
    void addHead(QVBoxLayout& column, const PromptSet& set);
    void addPrompt(QVBoxLayout& column, int at);
    void addWording(QVBoxLayout& column, int at, int wording); // -1: the main one
    void askPicture(int at);
    void showPictures();
    [[nodiscard]] const PromptSet* chosen() const;
    [[nodiscard]] bool isAsked(const PromptSet& set) const;
    void keep(const PromptSet& set, const QString& label); // changed; comes into the book if new
    void keepText(const PromptSet& set, const QString& label);
    [[nodiscard]] static QStringList shapeOf(const PromptSet& set);
    void addLanguage();
    void makeOwn();

    Session& m_session;
    PictureShelf& m_shelf;
    std::vector<PromptSet> m_sets;
    int m_chosen = 0;
    QStringList m_shape;
    QWidget* m_about;
    std::vector<SignButton*> m_signs; // by question of the chosen set
    QScrollArea* m_list = nullptr;
    QScrollArea* m_set = nullptr;
    Rover* m_rover;
};

} // namespace wainscot::ui
