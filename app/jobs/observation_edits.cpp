#include "app/jobs/observation_edits.h"

#include <algorithm>

namespace wainscot {

std::vector<const Observation*> observationsOf(const Book& book, ExperienceId experience)
{
    std::vector<const Observation*> all;
    for (const auto& [id, seen] : book.observations.rows()) {
        if (seen.experience == experience)
            all.push_back(&seen);
    }
    std::stable_sort(all.begin(), all.end(), [](const Observation* a, const Observation* b) {
        if (a->at.has_value() != b->at.has_value())
            return a->at.has_value();
        return a->at.has_value() && *a->at < *b->at;
    });
    return all;
}

Edit keepObservationEdit(const Book& book, Observation seen, const QString& label, int gesture)
{
    EditBuilder edit(book, label, gesture);
    seen.words = seen.words.trimmed();
    if (!seen.words.isEmpty() || seen.picture.isValid()) {
        if (!seen.id.isValid())
            seen.id = edit.newId<Observation>();
        edit.put(seen);
    }
    return edit.take();
}

Edit removeObservationEdit(const Book& book, ObservationId seen, const QString& label)
{
    EditBuilder edit(book, label);
    if (book.observations.contains(seen))
        edit.remove<Observation>(seen);
    return edit.take();
}

} // namespace wainscot
