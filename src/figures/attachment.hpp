#pragma once

#include "figure.hpp"

#include <string>
#include <vector>

namespace cotter::figures {

// A shape of the attachment in mm of the thing itself: origin at the pipe's axis, y down, seen along the pipe.
struct Outline {
    std::vector<Point> points;
    bool mirrored = false;
    bool follows_barrel = false; // given for the middle barrel, and moved outward with the radius
};

struct StatePlace {
    std::string name;
    Point at;
    bool stands = false, wanted = false;
};

// A number in a circle with a leader to a part of it.
struct Note {
    enum class To { hole, head, pipe } to;
    std::string number;
};

struct AttachmentPicture {
    std::vector<Outline> outlines;
    std::vector<StatePlace> states;
    double barrel = 0, bore = 0; // mm; 0: no pipe
    double middle_barrel = 0;    // for which the outlines are given
    std::vector<Note> notes;     // at the left, from the top
};

// The attachment to scale with the pipe in it, its states, the one that stands (a pin in it) and the one that is
// wanted (ringed), fitted into width x height.
Figure attachment(const AttachmentPicture& picture, double width, double height);

} // namespace cotter::figures
