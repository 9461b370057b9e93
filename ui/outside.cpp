#include "outside.hpp"

namespace cotter::ui {

std::string looked_at(const Outside& outside)
{
    return std::to_string(outside.book.state().head.seq) + " " + std::to_string(outside.now().count() / 60) + " " +
           std::string{words::code_of(words::language())};
}

void choose_looks(const Outside& outside, const Looks& chosen)
{
    set_looks(chosen);
    if (outside.keep_looks)
        outside.keep_looks(looks());
}

} // namespace cotter::ui
