// Which kind of panel suits what an experience holds.
#pragma once

#include "app/jobs/arrange_job.h"
#include "app/jobs/material.h"

namespace wainscot {

// What was asked for; else what the display has on paper of that size (`known`, null = a new one);
// else drawing, evening, thread or voices where there is what they need; else days.
[[nodiscard]] QString choosePlan(
    const ArrangeJob& job, const Display* known, const Material& material);

} // namespace wainscot
