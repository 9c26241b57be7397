// A seeded page as it stood, and the same document after one edit.
#pragma once

#include "tests/support/engine_documents.h"

#include <optional>

namespace wainscot::engine {

enum class EditKind { LongerCaption, LongerQuote, QuoteAdded, PhotoRemoved };
[[nodiscard]] const char* nameOf(EditKind kind);

struct Edited {
    std::unique_ptr<Document> document; // after the edit; one page
    Arrangement before; // where everything stood before it
    std::vector<ItemId> touched; // changed or new
};

// Nothing when the document does not fit one page before or has no such piece.
[[nodiscard]] std::optional<Edited> editedDocument(EditKind kind, int seed);

// The places before of what the edit did not touch and did not remove.
[[nodiscard]] std::vector<Placement> untouched(const Edited& edited);

} // namespace wainscot::engine
