#include "outside.hpp"

namespace cotter::ui {

std::string looked_at(const Outside& outside)
{
    return std::to_string(outside.book.state().head.seq) + " " + std::to_string(outside.now().count() / 60) + " " +
           std::string{words::code_of(words::language())};
}

std::string looked_at(const Outside& outside, std::size_t units)
{
    constexpr std::size_t few = 500; // worked out anew each minute
    return units <= few ? looked_at(outside)
                        : std::to_string(outside.book.state().head.seq) + rules::to_string(outside.hand("").day) +
                              std::string{words::code_of(words::language())};
}

void choose_looks(const Outside& outside, const Looks& chosen)
{
    set_looks(chosen);
    if (outside.keep_looks)
        outside.keep_looks(looks());
}

} // namespace cotter::ui
