// The answer in hand: the field, how it was told, whether the words are exact and were read back.
#pragma once

#include <QCheckBox>

#include <array>

#include "app/ui/gather/answer_field.h"
#include "app/ui/gather/capture_desk.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"

class QBoxLayout;
class QBoxLayout;
class QLineEdit;

namespace wainscot::ui {

class AnswerEditor : public QWidget {
    Q_OBJECT
public:
    explicit AnswerEditor(CaptureDesk& desk, QWidget* parent = nullptr);
    void showDraft(); // anew
    void setAttached(const QPixmap& picture); // the sheet or drawing; none when empty
    void refreshStates(); // leaves the field alone
    [[nodiscard]] AnswerField& field() { return *m_field; }
    void askWhyNot(); // opens the line for the adult's note

Q_SIGNALS:
    void pictureAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fold();
    void makeChips(QBoxLayout& column);
    void makeTicks(QBoxLayout& column);
    void makeReason(QBoxLayout& column);
    void keepNote();

    CaptureDesk& m_desk;
    AnswerField* m_field;
    Label* m_first; // what was first said, while the words are worked up
    std::array<Button*, 5> m_chips{};
    Rover* m_rover;
    QCheckBox* m_exact;
    QCheckBox* m_readBack;
    Button* m_sheet;
    Button* m_passes;
    Button* m_whyNot;
    QBoxLayout* m_lines; // the ticks, and what can be done
    QWidget* m_reason;
    QLineEdit* m_reasonLine;
    QLabel* m_attached;
    bool m_showing = false;
};

} // namespace wainscot::ui
