#include "tests/support/puddle_book.h"

namespace wainscot {

ArrangeJob hallway()
{
    ArrangeJob job;
    job.experience = kPuddleTitle;
    job.display = QStringLiteral("Hallway");
    job.audience = Audience::Building;
    return job;
}

Puddle fourDays()
{
    Puddle puddle;
    const ChildId mei = puddle.child("Mei Lin", Permissions::all(), "2020-06-01");
    const ChildId kofi = puddle.child("Kofi Mensah", Permissions::all(), "2020-06-01");
    const ChildId juno = puddle.child("Juno Berg", Permissions::all(), "2020-06-01");
    const ChildId wren = puddle.child("Wren Hall", Permissions::all(), "2020-06-01");
    puddle.said(mei, 3, "We put a line so it can’t go without us seeing.", 3);
    puddle.said(mei, 4, "My wet hand went off the wall in the sun.", 3);
    puddle.said(mei, 5, "The ground was thirsty in the night, I heard it.", 3);
    puddle.said(kofi, 4, "It got smaller but it didn’t spill anywhere.");
    puddle.said(juno, 5, "The edge went inside and nobody pushed it.");
    puddle.said(wren, 6, "It goes up so quiet that the sky is not fuller.");
    for (const int day : {3, 4, 5, 5, 6})
        puddle.took(day);
    return puddle;
}

} // namespace wainscot
