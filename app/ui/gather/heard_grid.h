// Who was heard as a table: this experience's questions, the term week by week, and how often a
// child was quoted, pictured and on a wall. Marks are counted, children are not compared.
#pragma once

#include <QAbstractTableModel>

#include "app/ui/session/session.h"
#include "core/voice/answers.h"
#include "core/voice/term.h"

class QPainter;

namespace wainscot::ui {

class HeardGrid : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit HeardGrid(Session& session, QObject* parent = nullptr);
    void refresh();

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    // AccessibleTextRole: "Ines, week 39: said".
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(
        int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

    [[nodiscard]] const AnswersOfClass& answers() const { return m_answers; }
    [[nodiscard]] const Term& term() const { return m_term; }
    [[nodiscard]] int prompts() const { return int(m_answers.prompts.size()); }
    [[nodiscard]] int weeks() const { return int(m_term.weeks.size()); }
    [[nodiscard]] const Child* child(int row) const;
    void draw(QPainter& painter, const QModelIndex& cell, const QRectF& place) const;

private:
    enum class Part { Prompt, Week, Tally };
    [[nodiscard]] Part partOf(int column) const;
    [[nodiscard]] int tally(int row, int column) const;
    [[nodiscard]] QString inWordsAt(const QModelIndex& index) const;

    Session& m_session;
    AnswersOfClass m_answers;
    Term m_term;
};

// The days whose term is shown: up to today, or up to the last day of a book of an earlier year.
[[nodiscard]] std::pair<QDate, QDate> termShown(const Book& book, QDate today);

} // namespace wainscot::ui
