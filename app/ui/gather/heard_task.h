// Who was heard: on this, over the term, and whom to listen to next.
#pragma once

#include "app/ui/gather/heard_grid.h"
#include "app/ui/gather/mark_table.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/places/task_page.h"

class QVBoxLayout;

namespace wainscot::ui {

class HeardTask : public TaskPage {
    Q_OBJECT
public:
    explicit HeardTask(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] MarkTable& table() { return *m_table; }
    // Up to three children, in the class's order: those with a question open, then those heard in
    // the fewest weeks.
    [[nodiscard]] std::vector<ChildId> listenToNext() const;
    [[nodiscard]] Saying saying() override;
    void refresh() override;
    [[nodiscard]] QWidget* about() override { return m_about; }
    [[nodiscard]] QWidget* firstStop() const override { return m_table; }

Q_SIGNALS:
    void childAsked(wainscot::ChildId child, bool whyNot); // take words down, or note why not
    void groupsAsked(); // everybody was heard: on to Listen

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QWidget* makeEnd();
    [[nodiscard]] QWidget* makeLegend();
    void refreshNext();
    void addCard(const Child& child);
    void offerNext(); // as a list, where there is no room beside the table
    [[nodiscard]] QString reasonFor(ChildId child) const;

    Session& m_session;
    HeardGrid m_grid;
    QWidget* m_about;
    Button* m_folded;
    Label* m_empty;
    MarkTable* m_table;
    QWidget* m_legend;
    QVBoxLayout* m_cards = nullptr;
    Label* m_intro = nullptr;
    QWidget* m_end; // made last: it fills those above
};

} // namespace wainscot::ui
