#include "app/ui/gather/permission_grid.h"

#include <QPainter>

#include "app/ui/compose/drawer.h"
#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"
#include "core/permit/family_answers.h"

namespace wainscot::ui {

PermissionGrid::PermissionGrid(Session& session, QObject* parent)
    : QAbstractTableModel(parent)
    , m_session(session)
{
}

void PermissionGrid::refresh()
{
    std::vector<ChildId> children;
    for (const auto& [id, child] : m_session.book().children.rows())
        children.push_back(id);
    if (children != m_children) {
        beginResetModel();
        m_children = std::move(children);
        endResetModel();
    } else if (!m_children.empty()) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        Q_EMIT headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
    }
}

int PermissionGrid::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_children.size());
}

int PermissionGrid::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(kAudiences.size() * kPermissions.size());
}

const Child* PermissionGrid::child(int row) const
{
    if (row < 0 || row >= rowCount())
        return nullptr;
    return m_session.book().children.find(m_children[std::size_t(row)]);
}

Audience PermissionGrid::audience(int column)
{
    return kAudiences[std::size_t(column) / kPermissions.size()];
}

Permission PermissionGrid::permission(int column)
{
    return kPermissions[std::size_t(column) % kPermissions.size()];
}

QVariant PermissionGrid::data(const QModelIndex& index, int role) const
{
    const Child* who = child(index.row());
    if (who == nullptr || (role != Qt::UserRole && role != Qt::AccessibleTextRole))
        return {};
    const FamilyAnswer answer =
        familyAnswer(m_session.book(), *who, audience(index.column()), permission(index.column()));
    if (role == Qt::UserRole)
        return int(answer);
    return tr("%1, %2, %3: %4")
        .arg(displayName(*who),
            inWords(audience(index.column())),
            inWords(permission(index.column())),
            inWords(answer));
}

QVariant PermissionGrid::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)
        return {};
    if (orientation == Qt::Horizontal)
        return inWords(permission(section));
    const Child* who = child(section);
    return who != nullptr ? displayName(*who) : QString();
}

void drawFamilyAnswer(QPainter& painter, FamilyAnswer answer, const QRectF& cell)
{
    const Tokens& t = tokens();
    const QPointF at = cell.center();
    const double unit = scaled(10) / 10.0;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    switch (answer) {
    case FamilyAnswer::Yes:
        painter.setPen(QPen(t.accent, 1.8 * unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(QPolygonF({at + QPointF(-4.5, 0) * unit,
            at + QPointF(-1.5, 3.2) * unit,
            at + QPointF(4.5, -3.6) * unit}));
        break;
    case FamilyAnswer::No:
        painter.setPen(QPen(t.quiet, 2.4 * unit, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(at - QPointF(4.5, 0) * unit, at + QPointF(4.5, 0) * unit);
        break;
    case FamilyAnswer::NotSaid:
        painter.setPen(QPen(t.edge, 1.3 * unit));
        painter.drawEllipse(at, 2.8 * unit, 2.8 * unit);
        break;
    case FamilyAnswer::Withdrawn: {
        QRectF box(0, 0, 16 * unit, 16 * unit);
        box.moveCenter(at);
        drawIcon(painter, Icon::Stop, box, t.stop, t.stopTint);
        break;
    }
    }
}

QString inWords(FamilyAnswer answer)
{
    switch (answer) {
    case FamilyAnswer::NotSaid:
        return PermissionGrid::tr("not said, counts as no");
    case FamilyAnswer::Yes:
        return PermissionGrid::tr("yes");
    case FamilyAnswer::No:
        return PermissionGrid::tr("no");
    case FamilyAnswer::Withdrawn:
        return PermissionGrid::tr("withdrawn");
    }
    return {};
}

QString inWords(Permission permission)
{
    switch (permission) {
    case Permission::Photo:
        return PermissionGrid::tr("photo");
    case Permission::FirstName:
        return PermissionGrid::tr("name");
    case Permission::Words:
        return PermissionGrid::tr("words");
    case Permission::Work:
        return PermissionGrid::tr("work");
    case Permission::PhotoWithName:
        return PermissionGrid::tr("photo and name");
    }
    return {};
}

} // namespace wainscot::ui
