#include "core/edit/edit.h"

namespace wainscot {

History::History(Book& book, EditSink& sink)
    : m_book(book)
    , m_sink(sink)
{
}

Result<> History::perform(Edit edit)
{
    if (edit.isEmpty())
        return Done{};
    if (!fits(edit, m_book))
        return Error{ErrorCode::WrongUse, edit.label, QStringLiteral("the book has changed")};
    if (auto saved = m_sink.save(edit); !saved)
        return saved;
    apply(edit, m_book);

    const bool continues = edit.gesture > 0 && m_done > 0 && m_done == m_edits.size()
        && m_edits.back().gesture == edit.gesture;
    m_edits.erase(m_edits.begin() + static_cast<std::ptrdiff_t>(m_done), m_edits.end());
    if (continues) {
        merge(m_edits.back(), edit);
        if (m_edits.back().isEmpty())
            m_edits.pop_back();
    } else {
        m_edits.push_back(std::move(edit));
    }
    m_done = m_edits.size();
    return Done{};
}

Result<> History::undo()
{
    if (!canUndo())
        return Done{};
    const Edit& edit = m_edits[m_done - 1];
    if (auto saved = m_sink.saveReverted(edit); !saved)
        return saved;
    revert(edit, m_book);
    --m_done;
    return Done{};
}

Result<> History::redo()
{
    if (!canRedo())
        return Done{};
    const Edit& edit = m_edits[m_done];
    if (auto saved = m_sink.save(edit); !saved)
        return saved;
    apply(edit, m_book);
    ++m_done;
    return Done{};
}

QString History::undoLabel() const
{
    return canUndo() ? m_edits[m_done - 1].label : QString();
}

QString History::redoLabel() const
{
    return canRedo() ? m_edits[m_done].label : QString();
}

} // namespace wainscot
