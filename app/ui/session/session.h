// The open book and where one is in it. Every edit goes through here and is kept at once.
#pragma once

#include <QDateTime>
#include <QObject>

#include <memory>

#include "app/jobs/erase_plan.h"
#include "core/edit/edit.h"
#include "core/model/book.h"

namespace wainscot::ui {

class Session : public QObject {
    Q_OBJECT
public:
    explicit Session(QObject* parent = nullptr);
    ~Session() override;

    // Opens the book in a folder (or its database file). The book that was open closes first only
    // if the new one opens. Errors as of the store, among them InUse and TooNew.
    Result<> open(const QString& path);
    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] bool isReadOnly() const;
    [[nodiscard]] const Book& book() const; // an empty one while none is open
    [[nodiscard]] QString folder() const;
    [[nodiscard]] QString picturesFolder() const;
    [[nodiscard]] QString originalPath(const QString& sha256) const;
    bool keepOriginal(const QString& file); // false: `refused` says why
    [[nodiscard]] QString proxiesFolder() const;

    // Where one is. Choosing an experience chooses its first display and that one's first panel.
    [[nodiscard]] const Experience* experience() const;
    [[nodiscard]] const Display* display() const;
    [[nodiscard]] const Panel* panel() const;
    void chooseExperience(ExperienceId id);
    void chooseDisplay(DisplayId id);
    void choosePanel(PanelId id);

    // False when it could not be kept; `refused` says why, and nothing has changed.
    bool perform(Edit edit);
    // Nothing of it stays in the book's files or small copies, and nothing before it can be undone.
    bool eraseForever(const ErasePlan& plan);
    bool undo();
    bool redo();
    [[nodiscard]] bool canUndo() const;
    [[nodiscard]] bool canRedo() const;
    [[nodiscard]] QString undoLabel() const;
    [[nodiscard]] QString redoLabel() const;
    [[nodiscard]] int newGesture();
    // What was done since the book was opened, oldest first; undone steps are not among it.
    [[nodiscard]] std::vector<const Edit*> stepsDone() const;
    [[nodiscard]] QDate today() const { return QDate::currentDate(); } // ages are told for it
    [[nodiscard]] const QDateTime& keptAt() const { return m_keptAt; } // of the last edit

Q_SIGNALS:
    void opened();
    void changed(); // what the book holds
    void moved(); // another experience, display or panel
    void refused(const QString& sentence);

private:
    struct Open;
    bool finish(const Result<>& result);
    void settle(); // to something that exists
    std::unique_ptr<Open> m_open;
    ExperienceId m_experience;
    DisplayId m_display;
    PanelId m_panel;
    QDateTime m_keptAt;
};

} // namespace wainscot::ui
