#pragma once

// What the page of a site's day says of a check and of a trench.

#include <string_view>

namespace cotter::words {

// `asked`: it hangs on a machine here; `whole`: gone through in full this shift; `stands`: nothing has changed since.
constexpr std::string_view says_of_check(bool asked, bool whole, bool stands)
{
    return !asked   ? "hangs on no machine here"
           : !whole ? "check not done in full this shift"
           : stands ? "check done"
                    : "part of the check to do again";
}

constexpr std::string_view says_of_trench(bool needed, bool holds)
{
    return !needed ? "nobody goes in, by the plan"
           : holds ? "inspected this shift by a competent person, and safe"
                   : "not found safe this shift: nobody goes in";
}

} // namespace cotter::words
