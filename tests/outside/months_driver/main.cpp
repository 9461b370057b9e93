// Reads lines "YYYY-MM-DD N" and writes the day that is N months later, one a line.

#include "day.hpp"

#include <iostream>
#include <string>

int main()
{
    std::ios::sync_with_stdio(false);
    std::string text;
    std::int64_t months = 0;
    while (std::cin >> text >> months) {
        const auto day = cotter::rules::parse_day(text);
        if (!day) {
            std::cerr << "not a day: " << text << '\n';
            return 1;
        }
        std::cout << cotter::rules::to_string(cotter::rules::add_months(*day, cotter::rules::Months{months})) << '\n';
    }
    return 0;
}
