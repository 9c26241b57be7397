// The pictures of the guide: the window itself, unseen, on the small sample class. So they are in
// the colours, the size of text and the language one reads in.
#pragma once

#include <QObject>
#include <QPixmap>

#include <memory>

#include "app/ui/first_steps/first_steps.h"
#include "app/ui/session/work.h"

namespace wainscot::ui {

class MainWindow;

class StepPictures : public QObject {
    Q_OBJECT
public:
    explicit StepPictures(QObject* parent = nullptr);
    ~StepPictures() override;

    void make(); // all of them, one after another; nothing while that is under way
    [[nodiscard]] bool isMaking() const { return m_work.isBusy() || m_window != nullptr; }

Q_SIGNALS:
    void made(wainscot::ui::FirstStep step, const QPixmap& picture);
    void failed(const QString& sentence);

private:
    void open(const QString& book);
    void takeNext();
    void grab(FirstStep step);
    Work m_work;
    std::unique_ptr<MainWindow> m_window; // while pictures are being taken of it
    std::size_t m_taken = 0;
};

} // namespace wainscot::ui
