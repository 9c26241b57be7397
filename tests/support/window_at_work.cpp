#include "support/window_at_work.h"

#include <QApplication>
#include <QDir>
#include <QDragEnterEvent>
#include <QImage>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>

#include <gtest/gtest.h>

namespace wainscot::ui {

namespace {

void write(const QString& path, const char* text)
{
    QFile file(path);
    if (file.open(QIODevice::WriteOnly))
        file.write(text);
}

void writePhoto(const QString& path, int shade)
{
    QImage image(900, 600, QImage::Format_RGB32);
    image.fill(QColor::fromHsv(shade * 70 % 360, 60, 200));
    QPainter(&image).fillRect(200, 150, 300, 200, QColor::fromHsv(shade * 70 % 360, 160, 120));
    image.save(path, "JPG", 90);
}

constexpr auto kChildren = "name,photo,first_name,words,work,photo_with_name\n"
                           "Wren Abara,all,all,all,all,all\n"
                           "Kofi Lind,all,all,all,all,all\n"
                           "Ines Roth,none,all,none,none,none\n";
constexpr auto kQuotes = "child,prompt,words\n"
                         "Wren Abara,notice,The sky is in it.\n"
                         "Wren Abara,think,The sun drinks it with a straw.\n"
                         "Wren Abara,wonder,Does it know the way back?\n"
                         "Kofi Lind,notice,The edge went inside our line.\n"
                         "Kofi Lind,think,It goes in the ground to the worms.\n"
                         "Kofi Lind,wonder,Who gets the water from my boots?\n"
                         "Ines Roth,notice,It is shy.\n"
                         "Ines Roth,think,It went home.\n";
constexpr auto kPhotos = "file,caption,children\n"
                         "a.jpg,The first line of chalk,none\n"
                         "b.jpg,A jar for each day,none\n"
                         "c.jpg,The string from yesterday,none\n"
                         "d.jpg,Window,\n";

} // namespace

WindowAtWork::WindowAtWork(QSize size)
    : m_window(std::make_unique<MainWindow>())
{
    QDir(m_folder.path()).mkdir(QStringLiteral("photos"));
    write(file(QStringLiteral("children.csv")), kChildren);
    write(file(QStringLiteral("quotes.csv")), kQuotes);
    write(file(QStringLiteral("photos/photos.csv")), kPhotos);
    for (int i = 0; i < 4; ++i)
        writePhoto(file(QStringLiteral("photos/%1.jpg").arg(QChar('a' + i))), i + 1);
    m_window->resize(size);
    m_window->show();
    QApplication::setActiveWindow(m_window.get());
    (void)QTest::qWaitForWindowActive(m_window.get());
    const QString puddle = QStringLiteral("Puddle");
    m_window->beginBook(file(QStringLiteral("book")), QStringLiteral("The Wrens"));
    m_window->gatherChildren(file(QStringLiteral("children.csv")));
    settle();
    m_window->gatherWords(file(QStringLiteral("quotes.csv")), puddle);
    settle();
    m_window->gatherPhotos(file(QStringLiteral("photos")), puddle);
    settle();
    m_window->go(Place::Compose);
    settle();
}

void WindowAtWork::settle()
{
    m_window->work().waitForEnd();
    for (int i = 0; i < 5; ++i)
        QApplication::processEvents();
    compose().shelf().waitForAll();
    for (int i = 0; i < 5; ++i)
        QApplication::processEvents();
}

void WindowAtWork::propose()
{
    m_window->takeNextStep();
    settle();
    ASSERT_NE(session().panel(), nullptr);
}

PieceId WindowAtWork::first(PieceKind kind)
{
    for (const CanvasPiece& piece : canvas().content().pieces) {
        if (piece.piece.kind == kind)
            return piece.piece.id;
    }
    ADD_FAILURE() << "no piece of this kind on the panel";
    return {};
}

std::vector<PieceId> WindowAtWork::all(PieceKind kind)
{
    std::vector<PieceId> ids;
    for (const CanvasPiece& piece : canvas().content().pieces) {
        if (piece.piece.kind == kind)
            ids.push_back(piece.piece.id);
    }
    return ids;
}

QPoint WindowAtWork::middleOf(PieceId id)
{
    return canvas().pieceRect(id).center().toPoint();
}

void WindowAtWork::clickOn(PieceId id)
{
    QTest::mouseClick(&canvas(), Qt::LeftButton, {}, middleOf(id));
    settle();
}

// The toolkit's test functions move the mouse without the keys that are held, so this says them.
void WindowAtWork::carryTo(QPoint from, QPoint to, Qt::KeyboardModifiers modifiers)
{
    QTest::mousePress(&canvas(), Qt::LeftButton, modifiers, from);
    for (int step = 1; step <= 8; ++step) {
        const QPointF at = from + (to - from) * step / 8;
        QMouseEvent move(QEvent::MouseMove,
            at,
            canvas().mapToGlobal(at),
            Qt::NoButton,
            Qt::LeftButton,
            modifiers);
        QApplication::sendEvent(&canvas(), &move);
    }
}

void WindowAtWork::letGo(QPoint at, Qt::KeyboardModifiers modifiers)
{
    QTest::mouseRelease(&canvas(), Qt::LeftButton, modifiers, at);
    settle();
}

void WindowAtWork::drag(QPoint from, QPoint to, Qt::KeyboardModifiers modifiers)
{
    carryTo(from, to, modifiers);
    letGo(to, modifiers);
}

void WindowAtWork::rest()
{
    QTest::qWait(220);
    compose().desk().livePage().waitForAnswer();
    settle();
}

void WindowAtWork::dragOver(const QMimeData& mime, QPoint to)
{
    QDragEnterEvent enter(to, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&canvas(), &enter);
    if (!enter.isAccepted())
        return;
    QDragMoveEvent move(to, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&canvas(), &move);
}

void WindowAtWork::drop(const QMimeData& mime, QPoint to)
{
    dragOver(mime, to);
    QDropEvent event(to, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&canvas(), &event);
    settle();
}

void WindowAtWork::key(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QWidget* focus = QApplication::focusWidget();
    QTest::keyClick(focus != nullptr ? focus : m_window.get(), key, modifiers);
    settle();
}

void WindowAtWork::type(const QString& text)
{
    // As an input method commits it: key clicks know Latin-1 letters only.
    QInputMethodEvent event;
    event.setCommitString(text);
    QApplication::sendEvent(QApplication::focusWidget(), &event);
    settle();
}

std::vector<Piece> WindowAtWork::pieces()
{
    std::vector<Piece> all;
    if (session().panel() != nullptr) {
        for (const Piece* piece : piecesOf(book(), session().panel()->id))
            all.push_back(*piece);
    }
    return all;
}

void WindowAtWork::undoAll()
{
    while (session().canUndo())
        session().undo();
    settle();
}

} // namespace wainscot::ui
