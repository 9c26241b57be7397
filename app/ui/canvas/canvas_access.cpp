#include "app/ui/canvas/canvas_access.h"

#include <QAccessibleWidget>
#include <QPointer>

#include <map>

#include "app/ui/canvas/canvas.h"

namespace wainscot::ui {

namespace {

// One piece. It has no object of its own: it looks the piece up by id each time it is asked.
class PieceAccess final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    PieceAccess(Canvas* canvas, PieceId piece)
        : m_canvas(canvas)
        , m_piece(piece)
    {
    }
    [[nodiscard]] bool isValid() const override
    {
        return m_canvas != nullptr && found() != nullptr;
    }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override
    {
        return QAccessible::queryAccessibleInterface(m_canvas);
    }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text kind) const override
    {
        const CanvasPiece* piece = found();
        if (piece == nullptr)
            return {};
        if (kind == QAccessible::Name)
            return piece->name;
        if (kind == QAccessible::Description && !piece->waits.isEmpty())
            return piece->waits;
        if (kind == QAccessible::Description && piece->piece.pinned)
            return Canvas::tr("Pinned by you");
        return {};
    }
    void setText(QAccessible::Text, const QString&) override { }
    [[nodiscard]] QRect rect() const override
    {
        const QRect own = m_canvas->pieceRect(m_piece).toAlignedRect();
        return {m_canvas->mapToGlobal(own.topLeft()), own.size()};
    }
    [[nodiscard]] QAccessible::Role role() const override
    {
        const CanvasPiece* piece = found();
        return piece != nullptr && isPicture(piece->piece.kind) ? QAccessible::Graphic
                                                                : QAccessible::StaticText;
    }
    [[nodiscard]] QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.selectable = true;
        state.selected = m_canvas->isHeld(m_piece);
        state.focused = m_canvas->inHand() == m_piece && m_canvas->hasFocus();
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }
    [[nodiscard]] QStringList actionNames() const override { return {setFocusAction()}; }
    void doAction(const QString& action) override
    {
        if (action != setFocusAction())
            return;
        m_canvas->setFocus();
        m_canvas->takeInHand(m_piece);
        Q_EMIT m_canvas->taken(m_piece);
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    [[nodiscard]] const CanvasPiece* found() const
    {
        return m_canvas != nullptr ? m_canvas->find(m_piece) : nullptr;
    }
    QPointer<Canvas> m_canvas;
    PieceId m_piece;
};

class CanvasAccess final : public QAccessibleWidget {
public:
    explicit CanvasAccess(Canvas* canvas)
        : QAccessibleWidget(canvas, QAccessible::Canvas)
        , m_canvas(canvas)
    {
    }
    ~CanvasAccess() override
    {
        for (const auto& [piece, id] : m_ids)
            QAccessible::deleteAccessibleInterface(id);
    }
    [[nodiscard]] int childCount() const override { return int(pieces().size()); }
    [[nodiscard]] QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount())
            return nullptr;
        const PieceId piece = pieces()[std::size_t(index)].piece.id;
        const auto known = m_ids.find(piece);
        if (known != m_ids.end())
            return QAccessible::accessibleInterface(known->second);
        auto* made = new PieceAccess(m_canvas, piece);
        m_ids[piece] = QAccessible::registerAccessibleInterface(made);
        return made;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override
    {
        for (int i = 0; i < childCount(); ++i) {
            if (child(i)->rect().contains(x, y))
                return child(i);
        }
        return nullptr;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* wanted) const override
    {
        for (int i = 0; i < childCount(); ++i) {
            if (child(i) == wanted)
                return i;
        }
        return -1;
    }

private:
    [[nodiscard]] const std::vector<CanvasPiece>& pieces() const
    {
        return m_canvas->content().pieces;
    }
    Canvas* m_canvas;
    mutable std::map<PieceId, QAccessible::Id> m_ids;
};

QAccessibleInterface* make(const QString& className, QObject* object)
{
    if (className == QLatin1String("wainscot::ui::Canvas"))
        return new CanvasAccess(static_cast<Canvas*>(object));
    return nullptr;
}

} // namespace

void installCanvasAccess()
{
    static bool installed = false;
    if (!installed)
        QAccessible::installFactory(make);
    installed = true;
}

} // namespace wainscot::ui
