// The adult's side of the sample class: titles, reflections, stars and meetings.
#pragma once

#include "samples/sample_class.h"

namespace wainscot::samples {

// The class with everything but file paths.
[[nodiscard]] SampleClass sampleTexts();

} // namespace wainscot::samples
