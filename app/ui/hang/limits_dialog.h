// Every limit the check measures against, each with who set it; one's own can be written instead.
#pragma once

#include <QDialog>
#include <QDoubleSpinBox>

#include <vector>

#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "core/base/quantity.h"
#include "layout/check/limits.h"

class QVBoxLayout;

namespace wainscot::ui {

class LimitsDialog : public QDialog {
    Q_OBJECT
public:
    // `at`: the rule one comes from; empty = the first.
    LimitsDialog(
        const check::Limits& limits, Mm standsOut, const QString& at, QWidget* parent = nullptr);

    // As written in the fields.
    [[nodiscard]] check::Limits limits() const;
    [[nodiscard]] Mm standsOut() const { return Mm(m_standsOut->value()); }
    [[nodiscard]] QDoubleSpinBox* field(const QString& rule) const; // null = no such limit
    void takeAllAsUsual();
    [[nodiscard]] int changed() const; // fields that are not as usual

private:
    struct Line {
        const check::LimitRow* row = nullptr;
        QDoubleSpinBox* field = nullptr;
    };
    void addHeading(QVBoxLayout& column, const QString& text);
    void addLimit(QVBoxLayout& column, const check::LimitRow& row, double value);
    void addStandOut(QVBoxLayout& column, Mm standsOut);
    // The field with its unit; `usual` is taken back by a button beside it.
    QDoubleSpinBox* addField(QVBoxLayout& column,
        const QString& name,
        const QString& unit,
        const QString& source,
        double value,
        double usual);

    std::vector<Line> m_lines;
    QDoubleSpinBox* m_standsOut = nullptr;
    QVector<Button*> m_usual;
};

} // namespace wainscot::ui
