#include "figure.hpp"

namespace cotter::figures {

double text_width(const std::string& text, double capital)
{
    double characters = 0;
    for (const char c : text)
        characters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0; // count UTF-8 starts
    return characters * capital * 0.95;
}

} // namespace cotter::figures
