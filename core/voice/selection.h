// Who gets on the wall when there is not room for everything: the best set of words and pictures,
// proven best, such that every child is heard and every group is represented.
#pragma once

#include "core/model/ids.h"

#include <atomic>
#include <cstdint>
#include <vector>

namespace wainscot {

enum class CandidateKind {
    Words, // a quote: the voice of the child who said it
    Work, // something made: the voice of the children who made it
    Photo, // shows children, speaks for none
};

// One piece that could come onto the wall. Areas are whole square centimetres, so that answers are
// the same on every machine.
struct Candidate {
    std::int64_t id = 0; // the caller's; every candidate its own
    CandidateKind kind = CandidateKind::Words;
    std::vector<ChildId> voices; // whose own words or work it is; not looked at for a photo
    int group = 0; // number > 0 of the group of responses it belongs to; 0 = none
    int burst = 0; // number > 0 of the pieces it nearly equals (a burst of photos); 0 = none
    std::int64_t worth = 0; // see worth.h; 0 or more
    std::int64_t areaCm2 = 0; // the least room it takes, with its share of white; 1 or more
};

// REQUIRES: every candidate has been cleared for the audience (core/permit); this is not asked
// again.
struct SelectionProblem {
    std::vector<Candidate> candidates;
    std::vector<ChildId> children; // who has to be heard; leave out who is on the wall already
    std::int64_t roomCm2 = 0;
};

struct SelectionLimits {
    std::int64_t nodes = 200'000; // of the search; then the best so far is answered, with its gap
    const std::atomic<bool>* cancel = nullptr;
};

enum class WhyUnheard {
    NoVoice, // no words and no work of this child may be shown here
    NoRoom, // not even the least of them fits beside the others
    NearEqual, // only in what another piece nearly equals that was needed for somebody else
};

struct UnheardChild {
    ChildId child;
    WhyUnheard why = WhyUnheard::NoVoice;
    std::int64_t leastCm2 = 0; // the smallest of the child's own; 0 for NoVoice
};

// A group that has words (or a picture) of which none could be placed.
struct UnshownGroup {
    int group = 0;
    bool words = true; // false: the picture
};

struct SelectedSet {
    std::vector<std::int64_t> chosen; // ids, ascending
    std::int64_t worth = 0;
    std::int64_t mostWorth = 0; // no set is worth more; equals `worth` when proven
    bool proven = false;
    bool cancelled = false;
    std::vector<UnheardChild> unheard;
    std::vector<UnshownGroup> unshown;
    // Where the room is too small: the least that every child's voice and every group takes, and
    // how much more that is than there is. 0 = there is room.
    std::int64_t leastCm2 = 0;
    std::int64_t missingCm2 = 0;
    std::int64_t nodes = 0; // of all searches together
};

// The set of most worth that fits the room, with for each of `children` at least one piece of their
// own voice, for each group at least one quote and one picture if it has any, and of each burst at
// most one. Where that cannot be: as many children as possible, then as many groups with words,
// then with pictures, then the most worth. Who is left unheard is said with the reason.
[[nodiscard]] SelectedSet selectForWall(
    const SelectionProblem& problem, const SelectionLimits& limits = {});

} // namespace wainscot
