// Finding among all children's words of the book, while one types.
#pragma once

#include <QDialog>
#include <QLineEdit>

#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"
#include "core/voice/quote_finder.h"

class QVBoxLayout;

namespace wainscot::ui {

class FindDialog : public QDialog {
    Q_OBJECT
public:
    // REQUIRES: book and finder outlive it; the finder follows the book.
    FindDialog(const Book& book, const QuoteFinder& finder, QWidget* parent = nullptr);
    [[nodiscard]] const std::vector<QuoteId>& found() const { return m_found; }

Q_SIGNALS:
    void chosen(wainscot::QuoteId quote);

private:
    void look(const QString& typed);
    void show(QuoteId id);
    void choose(QuoteId id);

    const Book& m_book;
    const QuoteFinder& m_finder;
    QLineEdit* m_typed;
    Label* m_says;
    QScrollArea* m_area;
    QVBoxLayout* m_list;
    Rover* m_rover;
    QVector<QWidget*> m_stops;
    std::vector<QuoteId> m_found;
};

} // namespace wainscot::ui
