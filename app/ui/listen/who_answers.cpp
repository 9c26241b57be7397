#include "app/ui/listen/who_answers.h"

#include <QCoreApplication>

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WhoAnswers)
};

} // namespace

QString whoAnswers(const Book& book, const Quote& quote)
{
    const Child* child = book.children.find(quote.child);
    if (child == nullptr)
        return {};
    const Quote* idea = book.quotes.find(quote.repliesTo);
    const Child* to = idea != nullptr ? book.children.find(idea->child) : nullptr;
    if (to == nullptr)
        return displayName(*child);
    if (to->id == child->id)
        return Words::tr("%1, thinking on").arg(displayName(*child));
    return Words::tr("%1, answering %2").arg(displayName(*child), displayName(*to));
}

} // namespace wainscot::ui
