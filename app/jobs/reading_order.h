// The order in which the pieces of a panel are read, by the plan it is made for.
#pragma once

#include "core/model/display.h"

#include <vector>

namespace wainscot {

// Sorts the pieces and numbers them from 1. Pieces of one rank keep their order.
void sortForReading(std::vector<Piece>& pieces, const QString& plan);

} // namespace wainscot
