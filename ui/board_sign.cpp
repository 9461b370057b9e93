#include "board_sign.hpp"

#include <algorithm>

namespace cotter::ui {

std::optional<figures::Sign> sign_of(const desk::BoardRow& row)
{
    if (row.stopped())
        return figures::Sign::stop;
    const bool caution = std::any_of(row.findings.begin(), row.findings.end(),
                                     [](const auto& each) { return weight(each.code) == rules::Weight::caution; });
    return caution ? std::optional{figures::Sign::warning} : std::nullopt;
}

} // namespace cotter::ui
