// A window on a small book in a folder of its own, driven by real mouse and key events.
#pragma once

#include <QTemporaryDir>
#include <QTest>

#include <memory>

#include "app/ui/frame/main_window.h"

namespace wainscot::ui {

class WindowAtWork {
public:
    // Three children, eight answers, four photos; one child may not be quoted in the hallway and
    // nobody has looked at one photo.
    explicit WindowAtWork(QSize size = {1366, 768});

    [[nodiscard]] MainWindow& window() { return *m_window; }
    [[nodiscard]] Session& session() { return m_window->session(); }
    [[nodiscard]] ComposePlace& compose() { return m_window->compose(); }
    [[nodiscard]] Canvas& canvas() { return compose().canvas(); }
    [[nodiscard]] const Book& book() { return session().book(); }
    [[nodiscard]] QString file(const QString& name) const { return m_folder.filePath(name); }

    void propose(); // and waits for the panel
    void settle(); // until no work runs and nothing waits to be done
    [[nodiscard]] PieceId first(PieceKind kind); // on the panel, in reading order
    [[nodiscard]] std::vector<PieceId> all(PieceKind kind);
    [[nodiscard]] const Piece& piece(PieceId id) { return *book().pieces.find(id); }
    [[nodiscard]] QPoint middleOf(PieceId id);
    void clickOn(PieceId id);
    void drag(QPoint from, QPoint to, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    // Presses and moves there, and holds still until the panel shows what it would become.
    void carryTo(QPoint from, QPoint to, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void letGo(QPoint at, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void rest(); // the hand holds still
    // As the toolkit delivers what another widget or program drags over the panel.
    void dragOver(const QMimeData& mime, QPoint to);
    void drop(const QMimeData& mime, QPoint to);
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier); // to what has focus
    void type(const QString& text);
    [[nodiscard]] std::vector<Piece> pieces(); // of the panel, as they are now
    void undoAll();

private:
    QTemporaryDir m_folder;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace wainscot::ui
