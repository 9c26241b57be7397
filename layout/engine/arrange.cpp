#include "layout/engine/solve.h"

namespace wainscot::engine {

Outcome arrange(const Request& request, const TextMeasurer& text)
{
    TextMemo memo(text);
    return solve(request, freeSystems(request.page.columns), memo);
}

} // namespace wainscot::engine
