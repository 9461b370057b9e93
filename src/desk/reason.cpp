#include "reason.hpp"

namespace cotter::desk {

std::string in_english(const Reason& reason)
{
    std::string text = reason.about.empty() ? reason.text : reason.about + ": " + reason.text;
    std::size_t at = 0;
    for (const std::string& each : reason.values) {
        at = text.find("{}", at);
        if (at == std::string::npos)
            break;
        text.replace(at, 2, each);
        at += each.size();
    }
    return text;
}

} // namespace cotter::desk
