#include "app/ui/session/display_history.h"

#include "app/ui/session/panel_edits.h"

#include <algorithm>

namespace wainscot::ui {

namespace {

// Whether a change is one of the display, seen from the books before and after it.
class Touches {
public:
    Touches(const Book& before, const Book& after, DisplayId display)
        : m_before(before)
        , m_after(after)
        , m_display(display)
    {
    }
    bool operator()(const ValueChange<Display>& change) const { return change.id == m_display; }
    bool operator()(const ValueChange<Panel>& change) const
    {
        return isOn(change.before) || isOn(change.after);
    }
    bool operator()(const ValueChange<Piece>& change) const
    {
        return (change.before && isOn(m_before.panels.find(change.before->panel)))
            || (change.after && isOn(m_after.panels.find(change.after->panel)));
    }
    template <class Other> bool operator()(const Other& /*change*/) const { return false; }

private:
    [[nodiscard]] bool isOn(const std::optional<Panel>& panel) const
    {
        return panel && panel->display == m_display;
    }
    [[nodiscard]] bool isOn(const Panel* panel) const
    {
        return panel != nullptr && panel->display == m_display;
    }
    const Book& m_before;
    const Book& m_after;
    DisplayId m_display;
};

} // namespace

std::vector<DisplayStep> historyOf(
    const Book& now, const std::vector<const Edit*>& steps, DisplayId display, std::size_t most)
{
    std::vector<DisplayStep> history;
    Book book = now;
    for (std::size_t i = steps.size(); i-- > 0;) {
        Book before = book;
        revert(*steps[i], before);
        const Touches touches(before, book, display);
        const bool touched = std::any_of(steps[i]->changes.begin(),
            steps[i]->changes.end(),
            [&touches](const Change& change) { return std::visit(touches, change); });
        if (touched && book.displays.contains(display)) {
            if (history.size() == most)
                break;
            history.push_back({steps[i]->label, book});
        }
        book = std::move(before);
    }
    if (book.displays.contains(display))
        history.push_back({QString(), book});
    return history;
}

Book todayWith(const Book& today, const Book& then, DisplayId display)
{
    Book shown = today;
    apply(displayAsIn(today, then, display, {}), shown);
    return shown;
}

} // namespace wainscot::ui
