// Groups: like with like on strands, to be moved by hand; proposals are only proposals.
#pragma once

#include <QLineEdit>
#include <QScrollArea>

#include <optional>

#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/listen/strand.h"
#include "app/ui/places/task_page.h"
#include "app/ui/session/session.h"

class QMenu;
class QVBoxLayout;

namespace wainscot::ui {

class GroupHead;

class GroupsPage : public TaskPage {
    Q_OBJECT
public:
    explicit GroupsPage(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] Saying saying() override;
    void refresh() override;
    void leave() override;
    [[nodiscard]] QWidget* about() override { return m_about; }
    [[nodiscard]] QWidget* firstStop() const override;

    [[nodiscard]] const QVector<Strand*>& strands() const { return m_strands; }
    [[nodiscard]] AnswerSlip* slipOf(QuoteId quote) const;
    // Groups are shown as they would be; nothing is kept until it is asked for.
    void previewAnew();
    [[nodiscard]] bool isPreviewing() const { return m_preview.has_value(); }
    void keepPreview();
    void dropPreview();
    void proposeMore(int step); // -1: one group fewer
    void find(); // puts the keyboard into the field that narrows the slips
    [[nodiscard]] QLineEdit& findField() { return *m_find; }

Q_SIGNALS:
    void meetingAsked(const std::vector<wainscot::GroupId>& groups);
    void gatherAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override; // keys of the field

private:
    struct Preview {
        Edit edit;
        Book book; // as it would be
        int moved = 0;
    };
    [[nodiscard]] const Book& shown() const;
    void perform(const Edit& edit, const QString& nothing = {});
    void propose();
    void refreshAbout();
    void makeAbout();
    void makeFind();
    void showFound();
    void makeContent();
    void addGroup(const Group& group, const std::map<QuoteId, std::vector<WordSpan>>& shared);
    void addLoose(const std::vector<QuoteId>& answers);
    void addBeginning();
    void fillStrand(Strand* strand,
        const std::vector<QuoteId>& answers,
        const std::map<QuoteId, std::vector<WordSpan>>& shared);
    void connectHead(GroupHead* head, const Group& group);
    void showHeld(AnswerSlip* slip) const;
    void move(QuoteId answer, const Strand* to, QuoteId beside = {});
    void keepPair(QuoteId answer, QuoteId other, bool apart);
    void offerPlaces(QuoteId answer, QPoint global);
    void offerOthers(QMenu& menu, QuoteId answer, bool apart);
    void offerLettingGo(QMenu& menu, QuoteId answer);
    void lift(QuoteId answer);
    void steer(int key);
    void endLift();
    [[nodiscard]] QString nameOf(QuoteId answer) const;
    [[nodiscard]] QString whoAndWhat(QuoteId answer) const;
    [[nodiscard]] QString saidOfHand(const QString& groups, const Experience& experience) const;

    Session& m_session;
    QWidget* m_about;
    QLineEdit* m_find;
    Button* m_fewer;
    Button* m_more;
    Button* m_anew;
    OneLine* m_count;
    QVBoxLayout* m_outer;
    QScrollArea* m_area = nullptr;
    QVBoxLayout* m_column = nullptr;
    QVector<Strand*> m_strands; // groups, on their own, a beginning
    Rover* m_rover;
    QVector<QWidget*> m_stops;
    std::optional<Preview> m_preview;
    QuoteId m_lifted;
    int m_aim = 0; // the strand the lifted answer would go to
};

} // namespace wainscot::ui
