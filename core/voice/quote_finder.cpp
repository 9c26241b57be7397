#include "core/voice/quote_finder.h"

#include <algorithm>

namespace wainscot {

namespace {

QString textOf(const Book& book, const Quote& quote)
{
    QStringList text{quote.words, quote.firstWords};
    if (const Child* child = book.children.find(quote.child))
        text << child->name << child->shownAs;
    return text.join(QLatin1Char('\n'));
}

} // namespace

void QuoteFinder::follow(const Book& book)
{
    for (auto at = m_known.begin(); at != m_known.end();) {
        if (book.quotes.contains(at->first)) {
            ++at;
            continue;
        }
        m_index.remove(at->second.place);
        at = m_known.erase(at);
    }
    if (m_index.removed() > m_index.size() / 2) {
        m_index.clear();
        m_known.clear();
        m_quotes.clear();
    }
    for (const auto& [id, quote] : book.quotes.rows()) {
        const QString text = textOf(book, quote);
        const auto known = m_known.find(id);
        if (known != m_known.end() && known->second.text == text)
            continue;
        if (known != m_known.end())
            m_index.remove(known->second.place);
        m_known[id] = {text, m_index.add(text)};
        m_quotes.push_back(id);
    }
}

std::vector<QuoteId> QuoteFinder::find(const QString& typed) const
{
    std::vector<QuoteId> found;
    for (const FindIndex::Place place : m_index.find(FindQuery(typed)))
        found.push_back(m_quotes[place]);
    std::sort(found.begin(), found.end(), [](QuoteId a, QuoteId b) { return b < a; });
    return found;
}

} // namespace wainscot
