// Child x audience x permission as a table of marks: what stands out is what is not a yes.
#pragma once

#include <QAbstractTableModel>

#include "app/ui/session/session.h"
#include "core/model/book.h"

class QPainter;

namespace wainscot::ui {

class PermissionGrid : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit PermissionGrid(Session& session, QObject* parent = nullptr);
    void refresh(); // cells stay where they are unless children came or went

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    // Qt::UserRole: the FamilyAnswer as a number. AccessibleTextRole: "Ines, families, photo:
    // withdrawn".
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(
        int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

    [[nodiscard]] const Child* child(int row) const;
    [[nodiscard]] static Audience audience(int column);
    [[nodiscard]] static Permission permission(int column);

private:
    Session& m_session;
    std::vector<ChildId> m_children;
};

// Yes = tick, no = bar, not said = small ring, withdrawn = the stop square.
void drawFamilyAnswer(QPainter& painter, FamilyAnswer answer, const QRectF& cell);
[[nodiscard]] QString inWords(FamilyAnswer answer);
[[nodiscard]] QString inWords(Permission permission);

} // namespace wainscot::ui
