#include "past.hpp"

namespace cotter::rules {

namespace {

// What a thing names comes before it, as far as they do not name each other in a circle.
std::vector<std::size_t> named_first(const Links& links)
{
    std::vector<std::size_t> order, open, next(links.size(), 0);
    std::vector<bool> seen(links.size());
    for (std::size_t start = 0; start < links.size(); ++start) {
        if (!seen[start])
            open.push_back(start);
        seen[start] = true;
        while (!open.empty()) {
            const std::size_t at = open.back();
            if (next[at] == links[at].size()) {
                order.push_back(at);
                open.pop_back();
            } else if (const std::size_t to = links[at][next[at]++]; !seen[to]) {
                seen[to] = true;
                open.push_back(to);
            }
        }
    }
    return order;
}

// Whether anything was new in it.
bool add(Past& past, std::size_t of, std::size_t named)
{
    bool grew = !past[of][named];
    past[of][named] = true;
    for (std::size_t i = 0; i < past.size(); ++i)
        if (past[named][i] && !past[of][i])
            grew = past[of][i] = true;
    return grew;
}

} // namespace

// One round finds all of it; only a circle, which nobody can sign, needs more.
Past past_of(const Links& links)
{
    Past past(links.size(), std::vector<bool>(links.size()));
    const auto order = named_first(links);
    for (bool grew = true; grew;) {
        grew = false;
        for (const std::size_t of : order)
            for (const std::size_t named : links[of])
                grew = add(past, of, named) || grew;
    }
    return past;
}

} // namespace cotter::rules
